/**
 * One line of a bolt: the strip of cloth to scale with its repeats, every cut in its place with its name and length, waste
 * hatched, flaws crossed, remnants named, and a measure along the lower edge.
 */
import type { KeptRemnant, LaidBolt } from '#app/plan/cut-plan.ts';
import { formatClothLength, formatLengthWithUnit } from '#shared/format-length.ts';
import { TICKS_PER_METRE, TICKS_PER_YARD } from '#shared/length.ts';
import type { Sheet } from './cloth-sheet.ts';
import { boxOf, clipAlong, sayLength, setLabel, writing } from './cloth-sheet.ts';
import { drawLaidCut } from './draw-laid-cut.ts';
import type { ClothLine, CutPlanInput, PlanStyle } from './drawn-cut-plan.ts';
import { hatch } from './hatch.ts';
import { fitText } from './label-field.ts';
import { line, MIDDLE_TO_BASELINE, rect, strokes, text } from './make-shapes.ts';
import { onesToCover, wholeOnesIn } from './round-shapes.ts';
import type { Bounds, Shape } from './shape.ts';
import { textWidth } from './text-widths.ts';

/** How far below the strip its measure reaches. */
export function measureDepth(style: PlanStyle): number {
  return style.figure * 1.75;
}

export function drawClothLine(clothLine: ClothLine, input: CutPlanInput, style: PlanStyle): readonly Shape[] {
  const sheet: Sheet = { input, style, line: clothLine };
  const { bolt } = clothLine;
  const strip = boxOf(sheet, { from: clothLine.from, to: clothLine.to, x: 0, across: bolt.width });
  const kept = input.plan.remnants.filter((each) => each.on === bolt.id);
  const isKept = (free: LaidBolt['waste'][number]) =>
    kept.some((each) => each.from === free.from && each.x === free.x && each.across === free.across);
  return [
    rect(strip.x, strip.y, strip.width, strip.height, { fill: 'card' }),
    ...bolt.waste.filter((free) => !isKept(free)).flatMap((free) => drawWaste(sheet, free)),
    ...drawRepeats(sheet, strip),
    ...bolt.flaws.flatMap((flaw) => drawFlaw(sheet, flaw)),
    ...kept.flatMap((each) => drawRemnant(sheet, each)),
    ...bolt.cuts.flatMap((cut) => drawLaidCut(sheet, cut)),
    ...drawEdges(sheet, strip),
    ...drawMeasure(sheet, strip),
    ...drawOrderEnd(sheet, strip),
  ];
}

/**
 * A fine line where each repeat begins, from selvage to selvage; in half-drop cloth it meets the other selvage half a
 * repeat further, so that the drop is seen. Ticks at both edges.
 */
function drawRepeats(sheet: Sheet, strip: Bounds): readonly Shape[] {
  const { input, line: at, style } = sheet;
  const { repeat } = input;
  const start = at.bolt.startPhase;
  if (repeat === null || start === null) return [];
  const size = repeat.vertical;
  const drop = repeat.match === 'half-drop' ? size / 2 : 0;
  const first = onesToCover((at.from - drop + start) / size) - 1;
  const last = wholeOnesIn((at.to + start) / size);
  const lines: [number, number, number, number][] = [];
  const ticks: [number, number, number, number][] = [];
  const [top, foot] = [strip.y, strip.y + strip.height];
  const tick = style.figure * 0.32;
  for (let count = first; count <= last; count += 1) {
    const left = count * size - start;
    const right = left + drop;
    const clipped = clipAlong(left, right, at.from, at.to);
    const toX = (along: number): number => at.x + (along - at.from) * at.scale;
    if (clipped !== null)
      lines.push([
        toX(left + (right - left) * clipped[0]),
        top + strip.height * clipped[0],
        toX(left + (right - left) * clipped[1]),
        top + strip.height * clipped[1],
      ]);
    if (left >= at.from && left <= at.to) ticks.push([toX(left), top - tick, toX(left), top]);
    if (right >= at.from && right <= at.to) ticks.push([toX(right), foot, toX(right), foot + tick]);
  }
  return [
    strokes(lines, { stroke: 'rule', strokeWidth: style.hair }),
    strokes(ticks, { stroke: 'pencil', strokeWidth: style.hair }),
  ];
}

function drawWaste(sheet: Sheet, free: LaidBolt['waste'][number]): readonly Shape[] {
  const box = boxOf(sheet, free);
  if (box.width < 0.3) return [];
  return [hatch(box, sheet.style.figure * 0.42, { stroke: 'faint', strokeWidth: sheet.style.hair * 0.8 })];
}

function drawFlaw(sheet: Sheet, flaw: LaidBolt['flaws'][number]): readonly Shape[] {
  const { style } = sheet;
  const box = boxOf(sheet, { ...flaw, x: 0, across: sheet.line.bolt.width });
  if (box.width <= 0) return [];
  const pen = { stroke: 'pencil', strokeWidth: style.hair } as const;
  const words = fitText('flaw', { font: 'sans', weight: 'semibold', size: style.figure }, box.height);
  const middle = box.x + box.width / 2;
  const length = textWidth(words, 'sans', 'semibold', style.figure);
  const isWide = box.width > style.figure * 1.3;
  return [
    rect(box.x, box.y, box.width, box.height, { fill: 'paper', ...pen }),
    hatch(box, style.figure * 0.55, pen),
    hatch(box, style.figure * 0.55, pen, false),
    ...(isWide && words !== ''
      ? [
          rect(middle - style.figure * 0.6, box.y + (box.height - length) / 2 - 2, style.figure * 1.2, length + 4, {
            fill: 'paper',
          }),
          text(middle + style.figure * MIDDLE_TO_BASELINE, box.y + box.height / 2, words, {
            ...{ size: style.figure, paint: 'ink', weight: 'semibold', anchor: 'middle', turn: -90 },
          }),
        ]
      : []),
  ];
}

/** Kept cloth: a dashed outline with its letter and size. */
function drawRemnant(sheet: Sheet, kept: KeptRemnant): readonly Shape[] {
  const { style, input } = sheet;
  const box = boxOf(sheet, kept);
  if (box.width < 1) return [];
  const inset = style.hair * 2;
  const outline = rect(box.x + inset, box.y + inset, box.width - 2 * inset, box.height - 2 * inset, {
    ...{ stroke: 'pencil', strokeWidth: style.hair, dash: [style.figure * 0.4, style.figure * 0.3] },
  });
  const size = `${sayLength(sheet, kept.to - kept.from)} × ${formatLengthWithUnit(kept.across, input.wording.units, writing(sheet))}`;
  return [
    outline,
    ...setLabel(sheet, box, {
      ...{ name: `remnant ${kept.name}`, short: kept.name, size, paint: 'pencil', air: style.figure * 0.5 },
    }),
  ];
}

/** Selvages as firm lines; an end as one too; a fold of the line, or an end not reached, as a broken one. */
function drawEdges(sheet: Sheet, strip: Bounds): readonly Shape[] {
  const { style, line: at } = sheet;
  const [left, right] = [strip.x, strip.x + strip.width];
  const [top, foot] = [strip.y, strip.y + strip.height];
  const firm = { stroke: 'ink', strokeWidth: style.hair * 1.25 } as const;
  const broken = { stroke: 'pencil', strokeWidth: style.hair, dash: [style.hair * 2.5, style.hair * 2.5] } as const;
  return [
    line(left, top, right, top, firm),
    line(left, foot, right, foot, firm),
    line(left, top, left, foot, at.isFirst ? firm : broken),
    line(right, top, right, foot, at.isLast ? firm : broken),
  ];
}

/** Metres or yards from the bolt's start, with shorter marks at the tenths or quarters. */
function drawMeasure(sheet: Sheet, strip: Bounds): readonly Shape[] {
  const { style, line: at, input } = sheet;
  const isInch = input.wording.units === 'in';
  const [whole, parts] = isInch ? [TICKS_PER_YARD, 4] : [TICKS_PER_METRE, 10];
  const step = whole / parts;
  const foot = strip.y + strip.height + style.figure * 0.42;
  const marks: [number, number, number, number][] = [];
  const figures: Shape[] = [];
  for (let count = onesToCover(at.from / step); count * step <= at.to; count += 1) {
    const x = at.x + (count * step - at.from) * at.scale;
    const isWhole = count % parts === 0;
    marks.push([x, foot, x, foot + style.figure * (isWhole ? 0.45 : 0.2)]);
    if (!isWhole) continue;
    const words = count === 0 ? `0 ${isInch ? 'yd' : 'm'}` : String(count / parts);
    // A figure at either end keeps to the sheet.
    const half = textWidth(words, 'sans', 'regular', style.figure * 0.88) / 2;
    const middle = Math.max(half, Math.min(input.width - half, x));
    figures.push(
      text(middle, foot + style.figure * 1.3, words, {
        ...{ size: style.figure * 0.88, paint: 'pencil', anchor: 'middle' },
      }),
    );
  }
  return [
    line(strip.x, foot, strip.x + strip.width, foot, { stroke: 'faint', strokeWidth: style.hair * 0.8 }),
    strokes(marks, { stroke: 'pencil', strokeWidth: style.hair * 0.8 }),
    ...figures,
  ];
}

/** The thread where the cloth that is bought ends. */
function drawOrderEnd(sheet: Sheet, strip: Bounds): readonly Shape[] {
  const { line: at, style, input } = sheet;
  const { bolt } = at;
  if (bolt.kind === 'remnant' || bolt.ordered <= at.from || bolt.ordered > at.to) return [];
  const x = at.x + (bolt.ordered - at.from) * at.scale;
  const words = formatClothLength(bolt.ordered, input.wording.units, writing(sheet));
  const length = textWidth(words, 'sans', 'semibold', style.figure);
  const fits = x + style.thread * 2 + length <= at.x + input.width;
  return [
    line(x, strip.y - style.figure * 0.5, x, strip.y + strip.height + style.figure * 0.5, {
      ...{ stroke: 'thread', strokeWidth: style.thread, cap: 'round' },
    }),
    fits
      ? text(x + style.thread * 2, strip.y + style.figure * 0.8, words, {
          ...{ size: style.figure, paint: 'ink', weight: 'semibold' },
        })
      : text(x, strip.y - style.figure * 0.85, words, {
          ...{ size: style.figure, paint: 'ink', weight: 'semibold', anchor: 'end' },
        }),
  ];
}
