/** One cut on its bolt: its outline, name and length, which way its top lies, whether it is dropped, fixed or chosen. */
import type { LaidCut } from '#app/plan/cut-plan.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { Sheet } from './cloth-sheet.ts';
import { boxOf, clipAlong, sayLength, setLabel, writing } from './cloth-sheet.ts';
import type { PlanStyle } from './drawn-cut-plan.ts';
import { line, lineTo, move, path, rect, strokes, text } from './make-shapes.ts';
import { onesToCover, wholeOnesIn } from './round-shapes.ts';
import type { Bounds, Group, Shape } from './shape.ts';

/** The cut as a group with its id as key; nothing where it lies on another line. */
export function drawLaidCut(sheet: Sheet, cut: LaidCut): readonly Shape[] {
  const { style, input, line: at } = sheet;
  const box = boxOf(sheet, { from: cut.at, to: cut.at + cut.length, x: cut.x, across: cut.across });
  if (box.width <= 0) return [];
  const isChosen = input.selected !== null && cut.set === input.selected;
  const begins = cut.at >= at.from;
  const drops = isDropped(sheet, cut);
  const shapes: Shape[] = [
    rect(box.x, box.y, box.width, box.height, { fill: 'frame' }),
    ...(input.colour === null
      ? []
      : [rect(box.x, box.y, box.width, box.height, { fill: input.colour, opacity: 0.32 })]),
    ...drawCutRepeats(sheet, cut, box),
    rect(box.x, box.y, box.width, box.height, { stroke: 'ink', strokeWidth: style.hair }),
    ...(begins ? drawTop(cut, box, style) : []),
    ...(isChosen ? [threadAlong(box, style)] : []),
    ...setLabel(sheet, box, {
      ...{ name: cut.label, short: lastWord(cut.label), size: saySize(sheet, cut), paint: 'ink' },
      air: style.figure * (drops ? 1.2 : 0.75),
    }),
    ...(begins && drops ? [setDrop(box, style)] : []),
  ];
  const label =
    `${cut.label}: ${formatLengthWithUnit(cut.length, input.wording.units, writing(sheet))} long, from ` +
    `${formatLengthWithUnit(cut.at, input.wording.units, writing(sheet))}${cut.laid === 'sideways' ? ', sideways' : ''}` +
    `${drops ? ', half a repeat lower' : ''}${cut.fixed ? ', fixed by hand' : ''}`;
  const group: Group = { kind: 'group', key: cut.id, label, bounds: box, shapes };
  return [group];
}

function saySize(sheet: Sheet, cut: LaidCut): string {
  const length = sayLength(sheet, cut.length);
  return cut.fixed ? `${length} · fixed` : length;
}

function lastWord(label: string): string {
  return label.split(' ').at(-1) ?? label;
}

/** The repeats show through the cut, paler than on the open cloth. */
function drawCutRepeats(sheet: Sheet, cut: LaidCut, box: Bounds): readonly Shape[] {
  const { repeat } = sheet.input;
  const { bolt, from, x, scale } = sheet.line;
  if (repeat === null || bolt.startPhase === null) return [];
  const drop = repeat.match === 'half-drop' ? repeat.vertical / 2 : 0;
  // Where the line of a repeat crosses the cut's two long edges, as shares of the cloth's width.
  const [top, foot] = [cut.x / bolt.width, (cut.x + cut.across) / bolt.width];
  const [start, end] = [(box.x - x) / scale + from, (box.x + box.width - x) / scale + from];
  const first = onesToCover((start - drop + bolt.startPhase) / repeat.vertical) - 1;
  const last = wholeOnesIn((end + bolt.startPhase) / repeat.vertical);
  const lines: [number, number, number, number][] = [];
  for (let count = first; count <= last; count += 1) {
    const left = count * repeat.vertical - bolt.startPhase;
    const [a, b] = [left + drop * top, left + drop * foot];
    const clipped = clipAlong(a, b, start, end);
    if (clipped === null || (a === b && (a === start || a === end))) continue;
    const toX = (along: number): number => x + (along - from) * scale;
    lines.push([
      toX(a + (b - a) * clipped[0]),
      box.y + box.height * clipped[0],
      toX(a + (b - a) * clipped[1]),
      box.y + box.height * clipped[1],
    ]);
  }
  return [strokes(lines, { stroke: 'rule', strokeWidth: sheet.style.hair * 0.8 })];
}

/** A small barb at the edge that is the top of the cut. */
function drawTop(cut: LaidCut, box: Bounds, style: PlanStyle): readonly Shape[] {
  const size = Math.min(style.figure * 0.42, box.width / 3, box.height / 4);
  const pen = { stroke: 'ink', strokeWidth: style.hair } as const;
  if (cut.laid === 'sideways') {
    // Near the corner: across the middle of a low cut it would lie on the name.
    const middle = Math.min(box.x + size * 1.3, box.x + box.width / 2);
    return [path([move(middle - size, box.y + size), lineTo(middle, box.y), lineTo(middle + size, box.y + size)], pen)];
  }
  const middle = box.y + box.height / 2;
  return [path([move(box.x + size, middle - size), lineTo(box.x, middle), lineTo(box.x + size, middle + size)], pen)];
}

function threadAlong(box: Bounds, style: PlanStyle): Shape {
  // Finer along a narrow cut, so that its name stays clear of it.
  const breadth = Math.min(style.thread, box.height * 0.06);
  const y = box.y + box.height - breadth / 2 - style.hair;
  const inset = style.thread;
  return line(box.x + inset, y, box.x + box.width - inset, y, {
    ...{ stroke: 'thread', strokeWidth: breadth, cap: 'round' },
  });
}

/** Half a repeat lower than the first width of its set. */
function isDropped(sheet: Sheet, cut: LaidCut): boolean {
  const { repeat, plan } = sheet.input;
  if (repeat?.match !== 'half-drop' || cut.phase === null) return false;
  const own = plan.bolts.flatMap((bolt) => bolt.cuts).filter((each) => each.set === cut.set);
  const first = own.reduce((best, each) => (orderOf(each.id) < orderOf(best.id) ? each : best), cut);
  return first.phase !== null && first.phase !== cut.phase;
}

/** By the number at the end of the id, so that 10 comes after 9. */
function orderOf(id: string): number {
  const digits = /(\d+)$/u.exec(id)?.[1];
  return digits === undefined ? 0 : Number(digits);
}

function setDrop(box: Bounds, style: PlanStyle): Shape {
  return text(box.x + style.figure * 0.3, box.y + style.figure * 0.95, '½', { size: style.figure, paint: 'pencil' });
}
