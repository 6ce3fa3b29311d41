/** Swags, cascades and jabots on a board, from measurement to order, each step with its working. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import type { EstimateGiven, Labour } from '../estimate.ts';
import { countBoardBrackets, coverBoard, coverPiece } from '../top-treatment/cover-board.ts';
import type { BoardCover } from '../top-treatment/cover-board.ts';
import { cutWelt, workWelt } from '../top-treatment/cut-welt.ts';
import { finishTop } from '../top-treatment/finish-top.ts';
import { addPieces } from '../top-treatment/lay-pieces.ts';
import type { TopEstimate } from '../top-treatment/top-estimate.ts';
import { adviseSwags } from './advise-swags.ts';
import { cutSwags, laySwags, swagPiece } from './lay-swags.ts';
import type { CutSwags, CutTail } from './lay-swags.ts';
import { boardDepthOf, finishedWidthOf, placeJabots } from './measure-swags.ts';
import type { FlatSwag, SwagRow } from './measure-swags.ts';
import { workSwags, workWeltRun } from './work-swags.ts';

export interface SwagsSheet {
  readonly row: SwagRow;
  readonly flat: FlatSwag;
  readonly onBias: boolean;
  /** Length of cloth for one swag. */
  readonly swagCut: Ticks;
  readonly tails: readonly CutTail[];
  /** Middles of the jabots, from the left end of the board, unrounded. */
  readonly jabots: readonly number[];
  readonly board: { readonly length: Ticks; readonly depth: Ticks; readonly thickness: Ticks };
  readonly cover: BoardCover | null;
}

/** The take-off of one row of swags under one stack. `checkSwags` must have found no fault. */
export function estimateSwags(
  swags: SwagsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): TopEstimate<SwagsSheet> {
  const { say, massOf, clothOf } = given;
  const { practice, quantity } = swags;
  const cut = cutSwags(swags);
  const contrast = swags.contrast === null ? null : clothOf(swags.contrast);
  const board = { length: swags.width, depth: boardDepthOf(swags), thickness: practice.swags.boardThickness };
  const cover = coverBoard(board, practice.swags, face, behind);
  const welt = swags.welt === null ? null : clothOf(swags.welt);
  const run = weltRun(swags, cut);
  let parcels = laySwags(swags, cut, face, behind, contrast, massOf);
  if (cover) parcels = addPieces(parcels, cover.cloth, [coverPiece(cover, quantity)]);
  if (welt) parcels = addPieces(parcels, welt, [cutWelt(run, welt, practice.swags)]);
  const taken = finishTop(parcels, practice, say, massOf);
  const sheet: SwagsSheet = {
    ...cut,
    swagCut: swagPiece(swags, cut, face, 0).cut.length,
    jabots: placeJabots(swags, cut.row),
    board,
    cover,
  };
  return {
    finished: { width: finishedWidthOf(swags), length: longestOf(swags) },
    halfWidths: null,
    fullnessMade: null,
    madeWidth: finishedWidthOf(swags),
    ...taken.figures,
    pleats: null,
    stackback: null,
    seamsLineUp: behind.every((layer) => layer.usableWidth === face.usableWidth),
    parts: partsOf(swags, welt ? run : ticks(0)),
    labour: labourOf(swags, cut, behind),
    offer: null,
    sheet,
    advice: adviseSwags(swags, cut, face, behind, say),
    working: [
      ...workSwags(swags, face, behind, contrast, sheet, say),
      ...(welt ? [workWeltRun(swags, cut, run, say), workWelt('welt', run, welt, practice.swags, say)] : []),
      ...taken.working,
    ],
  };
}

/** How far the longest of swags and tails hangs. */
function longestOf({ finishedLength, cascades, jabots }: SwagsTreatment): Ticks {
  return ticks(Math.max(finishedLength, cascades?.longest ?? 0, jabots?.longest ?? 0));
}

/** Welt along the lower edge of every swag as it is spread flat, both ends turned in; of all quantity. */
function weltRun(swags: SwagsTreatment, cut: CutSwags): Ticks {
  return ticks((cut.flat.width + swags.practice.swags.weltEnds) * cut.row.count * swags.quantity);
}

function partsOf(swags: SwagsTreatment, welt: Ticks): Part[] {
  const { quantity, practice, width } = swags;
  return [
    { part: 'board', length: width * quantity },
    { part: 'bracket', count: countBoardBrackets(width, practice) * quantity },
    ...(practice.swags.boardFixing === 'hook-tape'
      ? [{ part: 'hookTape', length: finishedWidthOf(swags) * quantity } as const]
      : []),
    ...(welt > 0 ? [{ part: 'welt', length: welt } as const] : []),
  ];
}

/** Interlining and blackout count one width for each swag and each tail that they lie in. */
function labourOf(swags: SwagsTreatment, cut: CutSwags, behind: readonly BackCloth[]): Labour[] {
  const { quantity } = swags;
  const tails = cut.tails.reduce((sum, tail) => sum + tail.count, 0) * quantity;
  const made = cut.row.count * quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  const dark = made + (swags.contrast === null ? tails : 0);
  return [
    { work: 'swag', count: made },
    ...(tails > 0 ? [{ work: 'cascade' as const, count: tails }] : []),
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: (made + tails) * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths: dark }] : []),
    { work: 'installPerBoard', count: quantity },
  ];
}
