/** The widths of a flat face, with or without a motif in the middle of its front. */
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { PatternPlace } from '#shared/treatments/pattern-place.ts';
import { centreMotif } from '../centre-motif.ts';
import type { LaidWidths } from './laid-widths.ts';
import { seamCentred, seamWidths } from './seam-widths.ts';

export interface FlatFace {
  /** Cut width, both ends with it. */
  readonly total: Ticks;
  /** What the left end has more than the right one: the motif stands in the middle of the front, not of the cut. */
  readonly leftMore: number;
}

/** `checkPlacement` has refused a motif in the middle that no widths bring about. */
export function layFlat(
  { total, leftMore }: FlatFace,
  cloth: Pick<Cloth, 'usableWidth' | 'repeat'>,
  pattern: PatternPlace | null,
  seam: Ticks,
): Extract<LaidWidths, { by: 'seams' }> {
  const centred = centreMotif(pattern, cloth, seam);
  const seamed = centred === null ? null : seamCentred({ total, leftMore }, centred, seam);
  if (centred === null || seamed === null)
    return { by: 'seams', total, seamed: seamWidths(total, cloth.usableWidth, seam) };
  return { by: 'seams', total, seamed, centred };
}
