/** What the engines take for each value that she left empty: read from the same place from which they judge. */
import { fillCloth } from '#app/lining/cloth/resolve-cloth.ts';
import type { FilledCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { typicalWays } from '#app/lining/cloth/typical-values.ts';
import type { TypicalWays } from '#app/lining/cloth/typical-values.ts';
import type { Cloth } from '#shared/cloth.ts';
import { toCloth } from '#shared/job-file/read-cloth.ts';
import { writeCloth } from '#shared/job-file/write-cloth.ts';
import type { ClothRecord } from '#shared/records/records.ts';
import { usualClothWidth } from './usual-cloth-width.ts';

export type Typical = Pick<FilledCloth, 'visible' | 'uv' | 'solar' | 'street' | 'weight' | 'thickness'> & TypicalWays;

/** As the engines see it; a cloth without a width is taken as wide as most. */
export function engineCloth(record: ClothRecord): Cloth | null {
  const wire = writeCloth({ ...record, width: record.width ?? usualClothWidth('in') }, 'in');
  return wire === null ? null : toCloth(wire, 'in');
}

/** Null for a cloth that cannot be, which the desk does not keep. */
export function typicalOf(record: ClothRecord): Typical | null {
  const cloth = engineCloth(record);
  if (cloth === null) return null;
  try {
    return { ...fillCloth(cloth), ...typicalWays(cloth) };
  } catch (error) {
    if (error instanceof StackFault) return null;
    throw error;
  }
}
