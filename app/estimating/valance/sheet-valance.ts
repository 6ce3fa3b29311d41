/** Measures that the workroom makes a valance by. Places are in ticks from the left end of the face, unrounded. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { toNearestTick, upToWhole } from '../round.ts';
import { betweenEnds, partEnds } from '../top-treatment/space-evenly.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import type { BoardCover } from '../top-treatment/cover-board.ts';
import type { LaidValance } from './lay-valance.ts';
import { countRepeated, finishedWidthOf, flatAddends, pocketOf, scallopedWidth, topOf } from './measure-valance.ts';

/** A line across the cut, from its top edge. */
export interface FoldLine {
  readonly name: 'turn' | 'pocket-stitch' | 'header-stitch' | 'top' | 'bottom';
  readonly at: Ticks;
}

export interface BoxPleatMarks {
  readonly count: number;
  readonly takeUp: Ticks;
  /** From the middle of one pleat to the next, or to the corner. */
  readonly space: number;
  readonly centres: readonly number[];
}
export interface ScallopMarks {
  readonly count: number;
  /** Finished width of one, and the same in the flat cloth. */
  readonly width: number;
  readonly flatWidth: number;
  readonly depth: Ticks;
  /** Points between scallops, both ends with them; on a rod from the end of the left return. */
  readonly points: readonly number[];
}
export interface PuffMarks {
  readonly count: number;
  readonly width: number;
  readonly flatWidth: number;
  /** Columns of rings, both edges with them. */
  readonly columns: readonly number[];
  readonly rows: number;
  readonly ringSpacing: Ticks;
}

export interface ValanceSheet {
  /** Cut of one, seams closed. */
  readonly cutWidth: Ticks;
  readonly cutLength: Ticks;
  /** Widths that stay whole in the middle, and the cut width of each of two side pieces; null when gathered or sideways. */
  readonly seamed: { readonly whole: number; readonly side: number } | null;
  /** The middle width is cut about a motif. */
  readonly aboutMotif?: boolean;
  readonly folds: readonly FoldLine[];
  readonly board: {
    readonly length: Ticks;
    readonly depth: Ticks;
    readonly thickness: Ticks;
    readonly cover: BoardCover | null;
  } | null;
  readonly rod: { readonly length: Ticks; readonly pocket: Ticks; readonly header: Ticks } | null;
  readonly pleats: BoxPleatMarks | null;
  readonly scallops: ScallopMarks | null;
  readonly puffs: PuffMarks | null;
}

export function sheetValance(valance: ValanceTreatment, laid: LaidValance, cover: BoardCover | null): ValanceSheet {
  const { hang } = valance;
  const making = valance.practice.valance;
  const { widths } = laid.face;
  const flatWidth = toNearestTick(laid.made2 / 2);
  return {
    cutWidth: isFull(valance) ? ticks(flatWidth + 2 * making.sideHem) : ticks(addUp(flatAddends(valance))),
    cutLength: laid.face.plain,
    seamed: widths.by === 'seams' ? { whole: widths.seamed.whole, side: widths.seamed.side } : null,
    ...(widths.by === 'seams' && widths.centred ? { aboutMotif: true } : {}),
    folds: foldLines(valance),
    board:
      hang.by === 'board'
        ? { length: valance.width, depth: hang.depth, thickness: making.boardThickness, cover }
        : null,
    rod:
      hang.by === 'rod' ? { length: finishedWidthOf(valance), pocket: pocketOf(valance), header: hang.header } : null,
    pleats: markPleats(valance),
    scallops: markScallops(valance, laid.made2),
    puffs: markPuffs(valance, laid.made2),
  };
}

/** The bottom of a balloon is drawn up: it has no line of its own. */
function foldLines(valance: ValanceTreatment): FoldLine[] {
  const { hang, practice, finishedLength } = valance;
  const top = ticks(addUp(topOf(valance)));
  const hem: FoldLine[] = valance.style === 'balloon' ? [] : [{ name: 'bottom', at: ticks(top + finishedLength) }];
  if (hang.by === 'board') return [{ name: 'top', at: top }, ...hem];
  const pocket = pocketOf(valance);
  return [
    { name: 'turn', at: practice.pocket.turn },
    { name: 'top', at: top },
    ...(hang.header > 0 ? [{ name: 'header-stitch' as const, at: ticks(top + hang.header) }] : []),
    { name: 'pocket-stitch', at: ticks(top + hang.header + pocket) },
    ...hem,
  ];
}

export function markPleats(valance: ValanceTreatment): BoxPleatMarks | null {
  if (valance.style !== 'box-pleated') return null;
  const { pleats, pleatsAt, takeUp, width } = valance;
  const corners = pleatsAt === 'corners';
  const centres = corners ? partEnds(width, Math.max(1, pleats - 1)) : betweenEnds(width, pleats);
  return { count: pleats, takeUp, space: width / (corners ? Math.max(1, pleats - 1) : pleats + 1), centres };
}

export function markScallops(valance: ValanceTreatment, made2: number): ScallopMarks | null {
  if (valance.style !== 'scalloped') return null;
  const width = scallopedWidth(valance);
  const count = countRepeated(valance.scallops, width, valance.practice.valance.scallopWidth);
  const flat = isFull(valance) ? made2 / 2 : width;
  return { count, width: width / count, flatWidth: flat / count, depth: valance.depth, points: partEnds(width, count) };
}

export function markPuffs(valance: ValanceTreatment, made2: number): PuffMarks | null {
  if (valance.style !== 'balloon') return null;
  const making = valance.practice.valance;
  const width = finishedWidthOf(valance);
  const count = countRepeated(valance.puffs, width, making.puffWidth);
  const rows = making.ringSpacing === 0 ? 1 : 1 + upToWhole(making.balloonTakeUp, making.ringSpacing);
  return {
    count,
    width: width / count,
    flatWidth: made2 / 2 / count,
    columns: partEnds(width, count),
    rows,
    ringSpacing: making.ringSpacing,
  };
}
