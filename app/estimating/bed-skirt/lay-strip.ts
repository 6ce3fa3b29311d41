/** A strip out of cloth: upright cuts as deep as the drop, or long strips sideways where the cloth may run so. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { piecesAcross } from '../pieces-across.ts';
import { upToWhole } from '../round.ts';

/** Whole widths whose sum less the joins reaches the strip. */
export function countStripWidths(strip: Ticks, usable: Ticks, seam: Ticks): number {
  return Math.max(1, upToWhole(strip - 2 * seam, usable - 2 * seam));
}

export interface SidewaysStrips {
  /** Side by side in the width of the cloth; sewn end to end they make one skirt. */
  readonly strips: number;
  readonly run: Ticks;
}

/**
 * Strips along the bolt: null when one drop does not fit across. Equal ones, so that the run is the strip over their
 * number, joins in, up to a tick.
 */
export function runStrips(
  cloth: Pick<Cloth, 'usableWidth' | 'repeat'>,
  strip: Ticks,
  drop: Ticks,
  seam: Ticks,
): SidewaysStrips | null {
  const strips = piecesAcross(cloth, drop);
  if (strips === 0) return null;
  return { strips, run: ticks(upToWhole(strip + (strips - 1) * 2 * seam, strips)) };
}
