/**
 * A motif in the middle of the finished width (common practice: a flat treatment shows its pattern whole, seams equally far
 * from the motif). The cut is then not taken from the selvage: it begins where a motif comes to stand in its middle, and
 * what lies outside is lost. Where nobody said where the motifs lie across, up to half a repeat may be lost at either side.
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PatternPlace } from '#shared/treatments/pattern-place.ts';
import { intoRepeat } from './into-repeat.ts';
import { wholeRepeats } from './repeats-across.ts';
import { downToWhole } from './round-down.ts';
import { toNearestWhole, upToWhole } from './round.ts';

interface Across {
  readonly usable: Ticks;
  /** The repeat across. */
  readonly across: Ticks;
  /** Middle of the motif nearest to the middle of the cloth, from the left edge of the usable width; null: nobody said. */
  readonly motif: Ticks | null;
  /** Lost from each of two widths at a join. */
  readonly seam: Ticks;
}

/** What a width gives to the pieces that read on beside a middle one. */
export interface BesideMotif {
  /** The widest piece, from a width of its own. */
  readonly beside: Ticks;
  /** The pieces of both sides out of one width: as much together; 0 where each takes its own. */
  readonly pair: Ticks;
}

export interface CentredCloth extends Across, BesideMotif {
  /** The widest piece with a motif in its middle. */
  readonly centre: Ticks;
  /** The widest piece between two others that changes nothing for the next one: whole repeats between its seams; or 0. */
  readonly between: Ticks;
}

/** Null unless it is asked, and the cloth repeats across. */
export function centreMotif(
  pattern: PatternPlace | null,
  cloth: Pick<Cloth, 'usableWidth' | 'repeat'>,
  seam: Ticks,
): CentredCloth | null {
  const across = cloth.repeat?.horizontal ?? null;
  if (pattern?.centred !== true || across === null || across === 0) return null;
  const usable = cloth.usableWidth;
  const motif = pattern.motifAcross === null ? null : motifNearMiddle(pattern.motifAcross, across, usable);
  const found = { usable, across, motif, seam };
  const centre = ticks(Math.max(0, motif === null ? usable - across : 2 * Math.min(motif, usable - motif)));
  const sides = besideMotif(found, centre);
  return { ...found, ...sides, centre, between: wholeRepeats(sides.beside, across, seam) ?? ticks(0) };
}

/**
 * The right piece begins where the pattern stands at the right seam, the left piece ends where it stands at the left one.
 * Wherever that is, a match is less than a whole repeat from an edge.
 */
export function besideMotif({ usable, across, motif, seam }: Across, middle: number): BesideMotif {
  if (motif === null)
    return { beside: ticks(Math.max(0, usable - across)), pair: ticks(Math.max(0, usable - 2 * across)) };
  const half = upToWhole(middle, 2);
  const begins = intoRepeat(motif + half - 2 * seam, across);
  const ends = usable - intoRepeat(usable - (motif - half + 2 * seam), across);
  return {
    beside: ticks(Math.max(0, Math.min(usable - begins, ends))),
    pair: ticks(Math.max(0, ends - begins)),
  };
}

/** Of all motifs across the cloth the one nearest to its middle. */
function motifNearMiddle(given: Ticks, across: Ticks, usable: Ticks): Ticks {
  const first = intoRepeat(given, across);
  return ticks(first + toNearestWhole(Math.max(0, usable - 2 * first), 2 * across) * across);
}

/** True where one width holds the piece with a motif in the middle of its front; `leftMore`: what its left end has more. */
export function holdsCentred({ usable, across, motif }: CentredCloth, width: Ticks, leftMore: number = 0): boolean {
  if (motif === null) return width + across <= usable;
  // Doubled, so that halves stay whole: the first motif that leaves enough on its left.
  const left2 = width + leftMore;
  const first2 = 2 * intoRepeat(motif, across);
  const place2 = first2 + upToWhole(Math.max(0, left2 - first2), 2 * across) * 2 * across;
  return place2 + (width - leftMore) <= 2 * usable;
}

/** Pieces that each have a motif in their middle, side by side in one width: whole repeats apart. */
export function centredAcross(cloth: CentredCloth, width: Ticks): number {
  if (!holdsCentred(cloth, width)) return 0;
  const { usable, across, motif } = cloth;
  const pitch = upToWhole(width, across) * across;
  // Nobody knows where the first one begins: at the worst a whole repeat in.
  const first = motif === null ? across : intoRepeat(motif - upToWhole(width, 2), across);
  return 1 + downToWhole(Math.max(0, usable - width - first), pitch);
}
