/**
 * A finished width out of cloth: one width where it fits with room at the sides, else a whole width in the centre and
 * equal side pieces, so that no seam stands in the middle of the shade (common practice).
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadePractice } from '#shared/treatments/roman-shade.ts';
import { piecesAcross } from '../pieces-across.ts';
import { halvesUpToTick, toNearestWhole, upToWhole } from '../round.ts';

export interface PiecedWidth {
  readonly finished: Ticks;
  /** Cut width once joined: the finished width and what is added for both sides. */
  readonly cutWidth: Ticks;
  /** Widths in the centre: 1, or another odd number on very wide shades. */
  readonly centres: number;
  /** Cut width of each of them. */
  readonly centre: Ticks;
  /** Cut width of each side piece; 0 where one width does. */
  readonly side: Ticks;
  readonly joins: number;
  /** Seams from the left finished edge. */
  readonly seams: readonly Ticks[];
}

type Rules = Pick<RomanShadePractice, 'oneWidthMargin' | 'leastMargin' | 'leastSide' | 'seam'>;

export function fitsOneWidth(cloth: Cloth, finished: Ticks, added: Ticks, rules: Rules): boolean {
  return (
    finished + added <= cloth.usableWidth &&
    finished + rules.oneWidthMargin <= cloth.usableWidth &&
    finished + rules.leastMargin <= cloth.width
  );
}

/** `bare`: a layer that does not show, which needs no margin beside it. */
export function pieceWidth(cloth: Cloth, finished: Ticks, added: Ticks, rules: Rules, bare: boolean): PiecedWidth {
  const cutWidth = ticks(finished + added);
  const fits = bare ? cutWidth <= cloth.usableWidth : fitsOneWidth(cloth, finished, added, rules);
  if (fits) return { finished, cutWidth, centres: 1, centre: cutWidth, side: ticks(0), joins: 0, seams: [] };
  const usable = cloth.usableWidth;
  const lost = 2 * rules.seam;
  const least = Math.max(1, upToWhole(cutWidth + lost - 2 * usable, usable - lost));
  const centres = least % 2 === 1 ? least : least + 1;
  const joins = centres + 1;
  const side = Math.max(rules.leastSide, halvesUpToTick(Math.max(0, cutWidth - centres * usable + joins * lost)));
  const centre = ticks(upToWhole(cutWidth + joins * lost - 2 * side, centres));
  const first = side - rules.seam - toNearestWhole(added, 2);
  const seams = Array.from({ length: joins }, (_, index) =>
    ticks(first + toNearestWhole(Math.max(0, index * (finished - 2 * first)), centres)),
  );
  return { finished, cutWidth, centres, centre, side: ticks(side), joins, seams };
}

export interface PieceCuts {
  /** Full-width cuts of one treatment. */
  readonly each: number;
  /** Full-width cuts of all quantity. */
  readonly all: number;
  /** Of all, those half a repeat lower in half-drop cloth. */
  readonly dropped: number;
}

/**
 * Full-width cuts: shades that are narrow enough lie side by side. The two side pieces come from one cut where they fit
 * (its right part goes to the left, its left part to the right, so that the pattern runs on); plain cloth gives as many
 * as fit.
 */
export function cutPieces(cloth: Cloth, pieced: PiecedWidth, quantity: number): PieceCuts {
  const halfDrop = cloth.repeat?.match === 'half-drop';
  if (pieced.side === 0) {
    const across = Math.max(1, piecesAcross(cloth, pieced.cutWidth));
    return { each: 1, all: upToWhole(quantity, across), dropped: 0 };
  }
  const plainAcross = Math.max(1, piecesAcross({ usableWidth: cloth.usableWidth, repeat: null }, pieced.side));
  const perCut = cloth.repeat === null ? plainAcross : Math.min(2, plainAcross);
  const sideCuts = upToWhole(2 * quantity, perCut);
  const centreCuts = pieced.centres * quantity;
  const arms = (pieced.centres - 1) / 2;
  // Counted outwards from the middle width, every second one is dropped.
  const droppedCentres = 2 * upToWhole(arms, 2) * quantity;
  const sidesDropped = (arms + 1) % 2 === 1;
  return {
    each: pieced.centres + upToWhole(2, perCut),
    all: centreCuts + sideCuts,
    dropped: halfDrop ? droppedCentres + (sidesDropped ? sideCuts : 0) : 0,
  };
}
