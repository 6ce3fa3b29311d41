/** Blank sheets to be filled in with a pencil: a head, the sketch, and a table with a column for each of three windows. */
import type { LengthUnit } from '#shared/length.ts';
import type { Shape } from '#app/drawing/shape.ts';
import { artifact, figureItem, lineItem, ruleShape, textBlock } from './block.ts';
import type { FontSet } from './font-set.ts';
import { fitLine } from './fit-line.ts';
import { MEASURE_ADVICE, MEASURE_ROWS } from './measure-rows.ts';
import type { MeasureRow } from './measure-rows.ts';
import { moveItem } from './page-item.ts';
import type { LaidPage, PageItem } from './page-item.ts';
import { CONTENT_WIDTH, STYLES } from './paper-style.ts';
import type { PageFrame } from './paper-style.ts';
import { numbered, SKETCH_HEIGHT, SKETCH_WIDTH, sketchWindow } from './sketch-window.ts';
import { tickBox } from './tick-box.ts';

/** Columns of one page. */
export const WINDOWS_A_PAGE = 3;

const LABEL = 132;
const WINDOW = (CONTENT_WIDTH - LABEL) / WINDOWS_A_PAGE;
const ROW = 21.6;
const TOP = 38;

export interface MeasureRoom {
  readonly name: string;
  readonly windows: readonly string[];
}

export interface MeasureSheetWords {
  readonly letterhead: { readonly name: string };
  readonly client: string | null;
  readonly units: LengthUnit;
  readonly rooms: readonly MeasureRoom[];
}

interface Sheet {
  readonly room: string;
  readonly windows: readonly string[];
  readonly field: string;
}

/** One page a room, more for a room with more windows than columns; without rooms one blank page. */
export function layOutMeasureSheet(words: MeasureSheetWords, frame: PageFrame, fonts: FontSet): readonly LaidPage[] {
  const sheets = words.rooms.flatMap((room, i) => splitRoom(room, `rooms[${i}]`));
  const all = sheets.length === 0 ? [{ room: '', windows: [], field: 'rooms' }] : sheets;
  return all.map((sheet, i) => ({
    width: frame.width,
    height: frame.height,
    items: layOutSheet(words, sheet, { page: i + 1, pages: all.length }, frame, fonts),
  }));
}

function splitRoom(room: MeasureRoom, field: string): readonly Sheet[] {
  const count = Math.max(1, room.windows.length);
  const sheets: Sheet[] = [];
  for (let start = 0; start < count; start += WINDOWS_A_PAGE) {
    sheets.push({ room: room.name, windows: room.windows.slice(start, start + WINDOWS_A_PAGE), field });
  }
  return sheets;
}

function layOutSheet(
  words: MeasureSheetWords,
  sheet: Sheet,
  place: { readonly page: number; readonly pages: number },
  frame: PageFrame,
  fonts: FontSet,
): readonly PageItem[] {
  const head = headItems(words, sheet, fonts);
  const sketchTop = TOP + 98;
  const tableTop = sketchTop + SKETCH_HEIGHT + 9;
  const table = tableItems(sheet, fonts);
  const notesTop = tableTop + 20 + MEASURE_ROWS.length * ROW + 6;
  const items = [
    ...head.map((item) => moveItem(item, 0, TOP)),
    ...sketchItems(fonts).map((item) => moveItem(item, 0, sketchTop)),
    ...table.map((item) => moveItem(item, 0, tableTop)),
    ...noteItems(notesTop, frame.bottom - 4),
    lineItem(
      'Ring the words that apply. In the way: handles, pipes, switches, trims, furniture, doors that open.',
      STYLES.small,
      {
        x: 0,
        y: frame.bottom + 11,
        field: 'foot',
      },
    ),
    lineItem(
      `page ${place.page} of ${place.pages}`,
      STYLES.small,
      { x: CONTENT_WIDTH, y: frame.bottom + 11, field: 'page number', anchor: 'end' },
      'Artifact',
    ),
  ];
  return items.map((item) => moveItem(item, frame.left, 0));
}

function headItems(words: MeasureSheetWords, sheet: Sheet, fonts: FontSet): readonly PageItem[] {
  const name = fitLine(words.letterhead.name, STYLES.running, CONTENT_WIDTH - 90, fonts);
  const box = (x: number, y: number, label: string, ticked: boolean): PageItem[] => [
    artifact([tickBox(x, y, 9), ...(ticked ? tickMark(x, y) : [])]),
    lineItem(label, STYLES.small, { x: x + 14, y: y - 1, field: 'head' }),
  ];
  const blank = (label: string, x: number, right: number, y: number, given: string, field: string): PageItem[] => {
    const start = x + fonts.measure(label, STYLES.small, STYLES.small.size) + 5;
    const text = given === '' ? '' : fitLine(given, STYLES.strong, right - start, fonts);
    return [
      lineItem(label, STYLES.small, { x, y, field: 'head' }),
      artifact([ruleShape(start, right, y + 10.6, 'pencil', 0.6)]),
      ...(text === '' ? [] : [lineItem(text, STYLES.strong, { x: start + 1, y: y - 2.2, field })]),
    ];
  };
  return [
    lineItem(name, STYLES.running, { x: 0, y: 0, field: 'letterhead.name' }),
    lineItem('Measure sheet', STYLES.small, { x: CONTENT_WIDTH, y: 1.8, field: 'title', anchor: 'end' }, 'H1'),
    artifact([ruleShape(0, CONTENT_WIDTH, 19, 'ink', 0.9)]),
    ...blank('client', 0, 236, 32, words.client ?? '', 'client'),
    ...blank('room', 252, CONTENT_WIDTH, 32, sheet.room, `${sheet.field}.name`),
    ...blank('measured by', 0, 236, 55, '', ''),
    ...blank('date', 252, 352, 55, '', ''),
    ...blank('use of the room', 366, CONTENT_WIDTH, 55, '', ''),
    ...box(0, 80, 'rough', false),
    ...box(52, 80, 'final', false),
    lineItem('every length in', STYLES.small, { x: 252, y: 79, field: 'head' }),
    ...box(316, 80, 'inches', words.units === 'in'),
    ...box(372, 80, 'centimetres', words.units === 'cm'),
    ...box(446, 80, 'millimetres', words.units === 'mm'),
  ];
}

function tickMark(x: number, y: number): readonly Shape[] {
  return [
    {
      kind: 'path',
      steps: [
        { to: 'move', x: x + 1.8, y: y + 4.8 },
        { to: 'line', x: x + 3.9, y: y + 7 },
        { to: 'line', x: x + 7.6, y: y + 1.8 },
      ],
      style: { stroke: 'thread', strokeWidth: 1.2, cap: 'round' },
    },
  ];
}

function sketchItems(fonts: FontSet): readonly PageItem[] {
  const left = SKETCH_WIDTH + 16;
  const items: PageItem[] = [figureItem(sketchWindow(), 'sketch', 0, 0)];
  let y = 4;
  MEASURE_ADVICE.forEach((text, i) => {
    const width = CONTENT_WIDTH - left;
    const block = textBlock({ text, field: `advice[${i}]`, style: STYLES.small, width, fonts });
    items.push(...block.items.map((item) => moveItem(item, left, y)));
    y += block.height + 7;
  });
  return items;
}

/** The table: no boxes, lines to write on, and a faint upright between windows and between places. */
function tableItems(sheet: Sheet, fonts: FontSet): readonly PageItem[] {
  const top = 20;
  const bottom = top + MEASURE_ROWS.length * ROW;
  const columns = Array.from({ length: WINDOWS_A_PAGE }, (_, i) => LABEL + i * WINDOW);
  const names = columns.flatMap((x, i) => {
    const given = sheet.windows[i] ?? '';
    const text = given === '' ? 'window' : fitLine(given, STYLES.smallStrong, WINDOW - 12, fonts);
    const style = given === '' ? STYLES.small : STYLES.smallStrong;
    return [lineItem(text, style, { x: x + 6, y: 4, field: `${sheet.field}.windows[${i}]` })];
  });
  const rows = MEASURE_ROWS.flatMap((row, i) => rowItems(row, top + i * ROW, columns, fonts));
  return [
    ...names,
    artifact([
      ...columns.map((x): Shape => upright(x, 2, bottom, 'faint', 0.6)),
      ruleShape(0, CONTENT_WIDTH, top, 'ink', 0.9),
    ]),
    ...rows,
  ];
}

function upright(x: number, y1: number, y2: number, paint: 'faint' | 'rule', width: number): Shape {
  return { kind: 'line', x1: x, y1, x2: x, y2, style: { stroke: paint, strokeWidth: width } };
}

function rowItems(row: MeasureRow, y: number, columns: readonly number[], fonts: FontSet): readonly PageItem[] {
  const middle = y + ROW / 2;
  const label = lineItem(row.label, STYLES.reading, { x: row.number === null ? 0 : 18, y: middle - 6, field: 'rows' });
  const shapes: Shape[] = [ruleShape(0, CONTENT_WIDTH, y + ROW, 'rule')];
  const items: PageItem[] = [];
  for (const x of columns) {
    const part = WINDOW / Math.max(1, row.places.length);
    row.places.forEach((name, i) => {
      if (i > 0) shapes.push(upright(x + i * part, y + 3, y + ROW - 3, 'rule', 0.5));
      items.push(
        lineItem(
          name,
          { ...STYLES.small, size: 5.8, leading: 8, paint: 'pencil' },
          { x: x + i * part + 3, y: y + 1, field: 'rows' },
        ),
      );
    });
    items.push(...choiceItems(row.choices, x, middle, fonts));
  }
  if (row.number !== null) shapes.push(numbered(6.8, middle, row.number));
  return [artifact(shapes), label, ...items];
}

/** Words to ring, spread evenly over their column. */
function choiceItems(choices: readonly string[], x: number, middle: number, fonts: FontSet): readonly PageItem[] {
  if (choices.length === 0) return [];
  const style = STYLES.small;
  const widths = choices.map((word) => fonts.measure(word, style, style.size));
  const taken = widths.reduce((sum, width) => sum + width, 0);
  const gap = (WINDOW - 14 - taken) / Math.max(1, choices.length - 1);
  let at = x + 7;
  return choices.map((word, i) => {
    const item = lineItem(word, style, { x: at, y: middle - 5.6, field: 'rows' });
    at += (widths[i] ?? 0) + gap;
    return item;
  });
}

/** Lines to write on down to the foot of the page. */
function noteItems(top: number, bottom: number): readonly PageItem[] {
  const lines: Shape[] = [];
  for (let y = top + 19; y <= bottom; y += 19)
    lines.push(ruleShape(lines.length === 0 ? 28 : 0, CONTENT_WIDTH, y, 'rule'));
  if (lines.length === 0) return [];
  return [lineItem('notes', STYLES.small, { x: 0, y: top + 8, field: 'notes' }), artifact(lines)];
}
