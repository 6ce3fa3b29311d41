/**
 * The work drawing of one treatment under one stack: each piece flat as it is cut and the piece as it is made, with every
 * measure of the take-off on it. Pieces are each to a scale of their own; all measures are finished or cut sizes as said.
 */
import type { Cloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import { formatLength } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { TierResult } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { drawPiece, leastWidth } from './work/draw-piece.ts';
import { markMotif } from './work/mark-motif.ts';
import { piecesOfBedSkirt } from './work/pieces-of-bed-skirt.ts';
import { piecesOfCornice } from './work/pieces-of-cornice.ts';
import { piecesOfPanels } from './work/pieces-of-panels.ts';
import { piecesOfRomanShade } from './work/pieces-of-roman-shade.ts';
import { piecesOfShowerCurtain } from './work/pieces-of-shower-curtain.ts';
import { piecesOfSwags } from './work/pieces-of-swags.ts';
import { piecesOfValance } from './work/pieces-of-valance.ts';
import type { WorkRow } from './work/work-piece.ts';
import type { WorkGiven } from './work/work-given.ts';
import type { Drawing, Shape } from './shape.ts';
import { moveDown } from './move-shape.ts';
import { SHEET_STYLES } from './sheet-style.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface WorkSheetInput {
  readonly treatment: Treatment;
  readonly made: TierResult;
  readonly clothOf: (id: string) => Cloth | null;
  readonly units: LengthUnit;
  readonly decimal?: '.' | ',';
  /** Points; the drawing is as high as its pieces need. */
  readonly width: number;
  readonly detail: 'screen' | 'paper';
}

/** The whole sheet as one drawing. */
export function drawWorkSheet(input: WorkSheetInput): Drawing {
  const rows = drawWorkRows(input);
  const { figure } = SHEET_STYLES[input.detail];
  const shapes: Shape[] = [];
  let y = 0;
  for (const row of rows) {
    shapes.push(...row.shapes.map((shape) => moveDown(shape, y)));
    y += row.height + figure * 1.6;
  }
  const width = widthOf(input);
  const title =
    rows.length === 0
      ? 'Work drawing: nothing is taken off yet.'
      : `Work drawing. ${rows.map((row) => row.title).join(' ')}`;
  return { width, height: Math.max(1, y - figure * 1.6), title, shapes };
}

/** The same row by row, so that a page can break between two. */
export function drawWorkRows(input: WorkSheetInput): readonly Drawing[] {
  const width = widthOf(input);
  const style = SHEET_STYLES[input.detail];
  const wording = { fractions: 'set', decimal: input.decimal ?? '.' } as const;
  const say = (length: number) => formatLength(length, input.units, wording);
  const given: WorkGiven = {
    treatment: input.treatment,
    made: input.made,
    clothOf: input.clothOf,
    say,
    sayUnit: (length) => `${say(length)} ${input.units}`,
    detail: input.detail,
  };
  const rows = markMotif(given, rowsOf(given));
  return rows.flatMap((row) => breakUp(row, width, style)).map((row) => drawRow(row, width, style));
}

function widthOf(input: WorkSheetInput): number {
  return Math.max(160, Number.isFinite(input.width) ? input.width : 500);
}

function shareOf(row: WorkRow, place: number): number {
  return row.shares?.[place] ?? 1 / row.pieces.length;
}

function spareOf(row: WorkRow, width: number, style: SheetStyle): number {
  return width - GAP * style.figure * (row.pieces.length - 1);
}

/** On a narrow sheet pieces stand one under the other. */
function breakUp(row: WorkRow, width: number, style: SheetStyle): readonly WorkRow[] {
  const spare = spareOf(row, width, style);
  const fits = row.pieces.every((piece, place) => spare * shareOf(row, place) >= leastWidth(piece, style));
  if (fits || row.pieces.length === 1) return [row];
  return row.pieces.map((piece) => ({ ...row, pieces: [piece], shares: [1] }));
}

/** Between two pieces, in type sizes. */
const GAP = 2.2;

/** Greatest height of a piece as a share of the sheet's width, unless its row says more or less. */
const USUAL_HEIGHT = 0.28;

function drawRow(row: WorkRow, width: number, style: SheetStyle): Drawing {
  const gap = style.figure * GAP;
  const spare = spareOf(row, width, style);
  let x = 0;
  const shapes: Shape[] = [];
  const heights = row.pieces.map((piece, place) => {
    const own = spare * shareOf(row, place);
    const drawn = drawPiece(piece, { x, y: 0, width: own, most: width * USUAL_HEIGHT * (row.high ?? 1) }, style);
    shapes.push(...drawn.shapes);
    x += own + gap;
    return drawn.height;
  });
  return { width, height: Math.max(1, ...heights), title: nameRow(row), shapes };
}

function nameRow(row: WorkRow): string {
  return row.pieces
    .map((piece) => `${[piece.title, ...piece.says].filter((part) => part !== '').join('; ')}.`)
    .join(' ');
}

/** Who lays out which kind; a new kind is one more line. */
function rowsOf(given: WorkGiven): readonly WorkRow[] {
  const { treatment } = given;
  switch (treatment.kind) {
    case 'panels':
      return piecesOfPanels({ ...given, treatment });
    case 'valance':
      return piecesOfValance({ ...given, treatment });
    case 'cornice':
      return piecesOfCornice({ ...given, treatment });
    case 'swags':
      return piecesOfSwags({ ...given, treatment });
    case 'roman-shade':
      return piecesOfRomanShade({ ...given, treatment });
    case 'bed-skirt':
      return piecesOfBedSkirt({ ...given, treatment });
    case 'shower-curtain':
      return piecesOfShowerCurtain({ ...given, treatment });
    default:
      return exhaustive(treatment);
  }
}
