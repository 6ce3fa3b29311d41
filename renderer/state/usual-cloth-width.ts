import { lengthFrom } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';

/** Most cloth and most lining is about this wide (common practice); written into a new cloth to be seen and changed. */
export function usualClothWidth(unit: LengthUnit) {
  return unit === 'in' ? lengthFrom(54, 'in') : lengthFrom(137, 'cm');
}
