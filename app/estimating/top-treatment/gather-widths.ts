/** Widths of one gathered piece, by the same settings as panels: where fullness acts, hems, how widths are rounded. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice, Thousandths } from '#shared/practice.ts';
import { toNearestWhole, upToWhole } from '../round.ts';

export interface GatheredPiece {
  readonly width: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  readonly fullness: Thousandths;
  readonly sideHem: Ticks;
}

export interface GatheredWidths {
  readonly halves: number;
  readonly joins: number;
  /** Twice the flat width in ticks, hems and seams taken off. */
  readonly made2: number;
  readonly fullnessMade: number;
}

/** Flat width asked, in thousandths of a tick. */
export function flatAskedMilli(piece: GatheredPiece, over: Practice['fullnessOver']): number {
  const returns = piece.returns.left + piece.returns.right;
  return over === 'face' ? piece.fullness * piece.width + 1000 * returns : piece.fullness * (piece.width + returns);
}

export function flatAskedOf(piece: GatheredPiece, over: Practice['fullnessOver']): Ticks {
  return ticks(upToWhole(flatAskedMilli(piece, over), 1000));
}

export function fullnessOf(piece: GatheredPiece, over: Practice['fullnessOver'], made2: number): number {
  const returns = piece.returns.left + piece.returns.right;
  return over === 'face' ? (made2 / 2 - returns) / piece.width : made2 / 2 / (piece.width + returns);
}

export function gatherWidths(piece: GatheredPiece, usable: Ticks, practice: Practice): GatheredWidths {
  const milli = flatAskedMilli(piece, practice.fullnessOver);
  const step = practice.widthRounding === 'up' ? 2 : 1;
  let halves = step * roundedSteps(milli, usable, step, practice);
  let made = measure(piece, halves, usable, practice);
  while (practice.hemsInWidth && made.made2 * 1000 < 2 * milli) {
    halves += step;
    made = measure(piece, halves, usable, practice);
  }
  return made;
}

function roundedSteps(milli: number, usable: Ticks, step: number, practice: Practice): number {
  const round = practice.widthRounding === 'nearest-half' && !practice.hemsInWidth ? toNearestWhole : upToWhole;
  return Math.max(1, round(2 * milli, 1000 * usable * step));
}

function measure(piece: GatheredPiece, halves: number, usable: Ticks, practice: Practice): GatheredWidths {
  const joins = upToWhole(halves, 2) - 1;
  const made2 = halves * usable - 2 * (joins * 2 * practice.seam + 2 * piece.sideHem);
  return { halves, joins, made2, fullnessMade: fullnessOf(piece, practice.fullnessOver, made2) };
}
