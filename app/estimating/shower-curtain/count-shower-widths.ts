/** Widths of a shower curtain, its seams, and eyelets that keep clear of them. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { toNearestWhole, upToWhole } from '../round.ts';

export function curtainPieces(curtain: Pick<ShowerCurtainTreatment, 'arrangement'>): 1 | 2 {
  return curtain.arrangement === 'pair' ? 2 : 1;
}

/** Flat cloth that all pieces take, `sideHem` turned at each edge. */
export function cutWidthOf(curtain: ShowerCurtainTreatment, sideHem: Ticks): Ticks {
  return ticks(curtain.finishedWidth + 2 * curtainPieces(curtain) * sideHem);
}

/**
 * Whole widths of all pieces together that reach `needed` with their joins off; an odd number gives each of a pair a half
 * width more.
 */
export function countShowerWidths(pieces: 1 | 2, needed: Ticks, usable: Ticks, seam: Ticks): number {
  const lost = 2 * seam;
  if (pieces === 1) return Math.max(1, upToWhole(needed - lost, usable - lost));
  const each = Math.max(1, upToWhole(needed - 2 * lost, 2 * (usable - lost)));
  const fewer = 2 * each - 1;
  return fewer * usable - 2 * (each - 1) * lost >= needed ? fewer : 2 * each;
}

/** Seams of one piece from its left finished edge; what is too wide is trimmed off both sides alike. */
export function placeSeams(curtain: ShowerCurtainTreatment, widths: number, usable: Ticks): Ticks[] {
  const pieces = curtainPieces(curtain);
  const { seam } = curtain.practice;
  const { sideHem } = curtain.practice.showerCurtain;
  const joins = upToWhole(widths, pieces) - 1;
  const joined2 = (2 * widths * usable) / pieces - 4 * joins * seam;
  const needed2 = (2 * cutWidthOf(curtain, sideHem)) / pieces;
  const trim = toNearestWhole(Math.max(0, joined2 - needed2), 4);
  return Array.from({ length: joins }, (_, index) =>
    ticks((index + 1) * usable - (2 * index + 1) * seam - trim - sideHem),
  );
}

export interface Eyelets {
  /** From the left finished edge of one piece. */
  readonly places: readonly Ticks[];
  /** Between two of them, in ticks, unrounded. */
  readonly spacing: number;
  /** False when one stands on a seam whichever way they are spaced. */
  readonly clearOfSeams: boolean;
}

/** Finished width of one piece, up to a tick. */
export function pieceFinished(curtain: ShowerCurtainTreatment): Ticks {
  return ticks(upToWhole(curtain.finishedWidth, curtainPieces(curtain)));
}

/** One for each spacing of the finished width, up; or as many as given. */
export function countEyelets(curtain: ShowerCurtainTreatment): number {
  if (curtain.eyelets !== null) return curtain.eyelets;
  return Math.max(2, upToWhole(pieceFinished(curtain), curtain.practice.showerCurtain.eyeletSpacing));
}

/** One eyelet more is taken where that keeps them off the seams; a number that was given stays. */
export function placeEyelets(curtain: ShowerCurtainTreatment, seams: readonly Ticks[]): Eyelets {
  const count = countEyelets(curtain);
  const first = spaceEyelets(curtain, count, seams);
  if (first.clearOfSeams || curtain.eyelets !== null) return first;
  const more = spaceEyelets(curtain, count + 1, seams);
  return more.clearOfSeams ? more : first;
}

function spaceEyelets(curtain: ShowerCurtainTreatment, count: number, seams: readonly Ticks[]): Eyelets {
  const { eyeletInset, eyeletWidth } = curtain.practice.showerCurtain;
  const run = pieceFinished(curtain) - 2 * eyeletInset;
  const gaps = count - 1;
  const places = Array.from({ length: count }, (_, index) => ticks(eyeletInset + toNearestWhole(index * run, gaps)));
  const clearOfSeams = seams.every((seam) => places.every((place) => 2 * Math.abs(place - seam) > eyeletWidth));
  return { places, spacing: run / gaps, clearOfSeams };
}
