/** Sizes of swags and tails: finished, flat and as they are cut. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { SwagsTreatment, Tail } from '#shared/treatments/swags.ts';
import { upToOrderStep, upToWhole } from '../round.ts';
import { pleatKnife } from '../top-treatment/knife-pleats.ts';
import type { KnifePleats } from '../top-treatment/knife-pleats.ts';
import { betweenEnds } from '../top-treatment/space-evenly.ts';
import type { Addend } from '../top-treatment/work-parcel.ts';
import { addUp } from '../top-treatment/work-parcel.ts';

export interface SwagRow {
  readonly count: number;
  /** Finished width of one. */
  readonly width: Ticks;
  /** From the left end of one to the left end of the next, in ticks, unrounded. */
  readonly pitch: number;
  readonly overlap: number;
  /** Left ends, from the left end of the board. */
  readonly lefts: readonly number[];
}

/** As few swags as keep each within the practice's widest, where their number is not given. */
export function countSwags(swags: SwagsTreatment): number {
  const { widestSwag } = swags.practice.swags;
  if (swags.swags !== null) return swags.swags;
  if (widestSwag === 0) return 1;
  if (swags.style === 'separate') return Math.max(1, upToWhole(swags.width, widestSwag));
  return Math.max(1, upToWhole(2 * swags.width, widestSwag) - 1);
}

/**
 * Overlapped: 2 × board / (n + 1), up to the practice's step; separate: board / n (common practice). The step is then
 * taken out of the overlaps, so that the row is as long as the board.
 */
export function rowOf(swags: SwagsTreatment): SwagRow {
  const count = countSwags(swags);
  const board = swags.width;
  if (count === 1) return { count, width: board, pitch: 0, overlap: 0, lefts: [0] };
  const exact = swags.style === 'separate' ? upToWhole(board, count) : upToWhole(2 * board, count + 1);
  const width = swags.style === 'separate' ? ticks(exact) : upToOrderStep(ticks(exact), swags.practice.swags.widthStep);
  const pitch = swags.style === 'separate' ? board / count : (board - width) / (count - 1);
  const lefts = Array.from({ length: count }, (_, index) => index * pitch);
  return { count, width, pitch, overlap: swags.style === 'separate' ? 0 : width - pitch, lefts };
}

/** On the bias unless it is wider or deeper than the practice lets it. */
export function isOnBias(swags: SwagsTreatment, width: Ticks): boolean {
  const { biasWidest, biasDeepest } = swags.practice.swags;
  return swags.onBias ?? (width <= biasWidest && swags.finishedLength <= biasDeepest);
}

export interface FlatSwag {
  /** Along the lower edge. */
  readonly width: Ticks;
  /** Down the middle, with its turns. */
  readonly depth: Ticks;
  /** Between the folds, on the board. */
  readonly top: Ticks;
  readonly folds: number;
}

export function flatOf(swags: SwagsTreatment, width: Ticks): FlatSwag {
  const { flatWidth, topShare, fold } = swags.practice.swags;
  return {
    width: ticks(upToWhole(width * flatWidth, 1000)),
    depth: ticks(addUp(depthAddends(swags))),
    top: ticks(upToWhole(width * topShare, 1000)),
    folds: fold === 0 ? 1 : Math.max(1, upToWhole(swags.finishedLength, fold)),
  };
}

export function depthAddends(swags: SwagsTreatment): Addend[] {
  const { flatDepth, boardTurn, seam } = swags.practice.swags;
  return [
    { says: 'depth with its folds', length: upToWhole(swags.finishedLength * flatDepth, 1000) },
    { says: 'on top of the board', length: boardTurn },
    { says: 'seam', length: seam },
    { says: 'squaring', length: swags.practice.squaring },
  ];
}

/** 1/√2 in millionths, up: the side of a square at 45 degrees that holds a rectangle of width and depth. */
const SLANT_MILLIONTHS = 707_107;

/** Length of cloth that a swag takes on the bias: the side of the square, whose corners stay empty. */
export function biasCut(flat: FlatSwag): Ticks {
  return ticks(upToWhole((flat.width + flat.depth) * SLANT_MILLIONTHS, 1_000_000));
}

export interface TailCut {
  readonly pleats: KnifePleats;
  /** Flat width of one, its return and seams with it: left and right differ where the returns do. */
  readonly flat: { readonly left: Ticks; readonly right: Ticks };
  readonly length: readonly Addend[];
}

/** `returns` of zero for a jabot, which hangs in front of the board. */
export function tailOf(swags: SwagsTreatment, tail: Tail, returns: SwagsTreatment['returns'] | null): TailCut {
  const { pleatFace, pleatDepth, seam, tailAllowance } = swags.practice.swags;
  const pleats = pleatKnife(tail.width, pleatFace, pleatDepth, tail.pleats);
  const flat = (side: 'left' | 'right'): Ticks => ticks(pleats.flat + (returns?.[side] ?? 0) + 2 * seam);
  return {
    pleats,
    flat: { left: flat('left'), right: flat('right') },
    length: [
      { says: 'longest point', length: tail.longest },
      { says: 'top and seam', length: tailAllowance },
      { says: 'squaring', length: swags.practice.squaring },
    ],
  };
}

/** Middles of the jabots: over the joints where there is one for each, else spread evenly over the board. */
export function placeJabots(swags: SwagsTreatment, row: SwagRow): number[] {
  if (!swags.jabots) return [];
  if (swags.jabots.count !== row.count - 1) return betweenEnds(swags.width, swags.jabots.count);
  return row.lefts.slice(1).map((left) => left + row.overlap / 2);
}

export function finishedWidthOf(swags: SwagsTreatment): Ticks {
  return ticks(swags.width + swags.returns.left + swags.returns.right);
}

/** From the wall to the front of the board. */
export function boardDepthOf(swags: SwagsTreatment): Ticks {
  const deeper = Math.max(swags.returns.left, swags.returns.right);
  return ticks(deeper > 0 ? deeper : swags.practice.swags.boardDepth);
}
