/** How many pieces of one width lie side by side in one width of cloth. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import { downToWhole } from './round-down.ts';
import { upToWhole } from './round.ts';

/**
 * Plain cloth gives as many as fit. Patterned cloth has to show the same place of the pattern on each, so pieces begin a
 * whole number of horizontal repeats apart; where that repeat is unknown, one. `hidden` pieces take no notice of it.
 * 0 when not even one fits.
 */
export function piecesAcross(
  cloth: Pick<Cloth, 'usableWidth' | 'repeat'>,
  width: Ticks,
  hidden: boolean = false,
): number {
  if (width > cloth.usableWidth) return 0;
  if (cloth.repeat === null || hidden) return downToWhole(cloth.usableWidth, width);
  const { horizontal } = cloth.repeat;
  if (horizontal === null || horizontal === 0) return 1;
  const pitch = upToWhole(width, horizontal) * horizontal;
  return 1 + downToWhole(cloth.usableWidth - width, pitch);
}

/** The width that `count` pieces take from the left selvage, `count` not more than fit. */
export function widthTaken(cloth: Pick<Cloth, 'repeat'>, width: Ticks, count: number): number {
  if (count === 0) return 0;
  const horizontal = cloth.repeat?.horizontal ?? 0;
  const pitch = horizontal === 0 ? width : upToWhole(width, horizontal) * horizontal;
  return (count - 1) * pitch + width;
}
