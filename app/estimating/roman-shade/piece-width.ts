/**
 * A finished width out of cloth: one width where it fits with room at the sides, else a whole width in the centre and
 * equal side pieces, so that no seam stands in the middle of the shade (common practice).
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadePractice } from '#shared/treatments/roman-shade.ts';
import { besideMotif, centredAcross, holdsCentred } from '../centre-motif.ts';
import { wholeRepeats } from '../repeats-across.ts';
import type { CentredCloth } from '../centre-motif.ts';
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
  /** Where a motif stands in the middle: what a width then gives. */
  readonly centred?: CentredCloth;
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
  return joinPieces({ finished, cutWidth, centres, side: ticks(side), joins }, added, rules);
}

/** Seams from the left finished edge; the widths in the centre share what the sides leave. */
function joinPieces(
  of: Pick<PiecedWidth, 'finished' | 'cutWidth' | 'centres' | 'side' | 'joins'>,
  added: Ticks,
  rules: Pick<Rules, 'seam'>,
): PiecedWidth {
  const { finished, cutWidth, centres, side, joins } = of;
  const centre = ticks(upToWhole(cutWidth + joins * 2 * rules.seam - 2 * side, centres));
  const first = side - rules.seam - toNearestWhole(added, 2);
  const seams = Array.from({ length: joins }, (_, index) =>
    ticks(first + toNearestWhole(Math.max(0, index * (finished - 2 * first)), centres)),
  );
  return { ...of, centre, seams };
}

/** More widths than any shade takes. */
const MOST_CENTRES = 1000;

/**
 * The same with a motif in the middle: the middle width gives what it has on both sides of a motif, further ones whole
 * repeats, the sides what reads on. Null where no number of widths does.
 */
export function pieceCentred(
  cloth: Cloth,
  finished: Ticks,
  added: Ticks,
  rules: Rules,
  centred: CentredCloth,
): PiecedWidth | null {
  const cutWidth = ticks(finished + added);
  if (fitsOneWidth(cloth, finished, added, rules) && holdsCentred(centred, cutWidth))
    return { finished, cutWidth, centres: 1, centre: cutWidth, side: ticks(0), joins: 0, seams: [], centred };
  for (let centres = 1; centres < MOST_CENTRES; centres += 2) {
    const found = joinAbout(centres, { finished, cutWidth }, added, rules, centred);
    if (found !== 'wider') return found;
  }
  return null;
}

/** `wider`: it takes more widths than these; null: no number of them brings it about. */
function joinAbout(
  centres: number,
  { finished, cutWidth }: Pick<PiecedWidth, 'finished' | 'cutWidth'>,
  added: Ticks,
  rules: Rules,
  centred: CentredCloth,
): PiecedWidth | 'wider' | null {
  const joins = centres + 1;
  const all = cutWidth + joins * 2 * rules.seam;
  const each = centres === 1 ? centred.centre : alikeAbout(centred);
  if (each <= 2 * rules.seam) return null;
  const side = ticks(Math.max(rules.leastSide, halvesUpToTick(Math.max(0, all - centres * each))));
  const centre = upToWhole(all - 2 * side, centres);
  // Several that had to become narrower are no whole repeats any more: the next may begin anywhere in the pattern.
  const known = centres === 1 || centre === each;
  const sides = besideMotif(known ? centred : { ...centred, motif: null }, centre);
  if (side > sides.beside || (centres > 1 && centre > sides.beside)) return 'wider';
  return {
    ...joinPieces({ finished, cutWidth, centres, side, joins }, added, rules),
    centred: { ...centred, ...sides },
  };
}

/** Several widths in the centre are cut alike: whole repeats, so that each reads on from the last as the first did. */
function alikeAbout(centred: CentredCloth): Ticks {
  const alike = (width: number): Ticks => wholeRepeats(ticks(width), centred.across, centred.seam) ?? ticks(0);
  const most = alike(centred.centre);
  const fits = most <= besideMotif(centred, most).beside;
  return fits ? most : alike(Math.min(centred.centre, centred.usable - centred.across));
}

/** Shades of one width that lie side by side in it. */
export function shadesAcross(cloth: Cloth, { cutWidth, centred }: PiecedWidth): number {
  return Math.max(1, centred === undefined ? piecesAcross(cloth, cutWidth) : centredAcross(centred, cutWidth));
}

/** Both sides of a patterned shade come from one cut where they fit and read on from it. */
function sidesPerCut(cloth: Cloth, { side, centred }: PiecedWidth, fit: number): number {
  if (cloth.repeat === null) return fit;
  if (centred !== undefined && 2 * side > centred.pair) return 1;
  return Math.min(2, fit);
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
    const across = shadesAcross(cloth, pieced);
    return { each: 1, all: upToWhole(quantity, across), dropped: 0 };
  }
  const plainAcross = Math.max(1, piecesAcross({ usableWidth: cloth.usableWidth, repeat: null }, pieced.side));
  const perCut = sidesPerCut(cloth, pieced, plainAcross);
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
