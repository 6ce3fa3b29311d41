/**
 * Measured dimension lines as on a drafting sheet: a thin line between oblique ticks, figures upright in a gap of the
 * line, or beside it where the gap would be too short. Figures that are not drawn to scale are underlined (the rule of
 * ASME Y14.5 and ISO 129-1 for dimensions out of scale, from memory).
 */
import type { LabelField } from './label-field.ts';
import { textBox } from './label-field.ts';
import { line, MIDDLE_TO_BASELINE, strokes, text } from './make-shapes.ts';
import type { Bounds, Shape, Style, Text } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';
import { textWidth } from './text-widths.ts';

export interface Figures {
  readonly words: string;
  /** False for what is not drawn to scale. */
  readonly sure: boolean;
}

export interface Dimension extends Figures {
  readonly along: 'across' | 'upright';
  /** The two ends, along the line. */
  readonly from: number;
  readonly to: number;
  /** Where the line lies, across it. */
  readonly at: number;
  /** Which side figures go to when they do not fit in the line. */
  readonly outer: 1 | -1;
}

/** Air between figures and the ends of the line beside them. */
const AIR = 3.5;

export function widthOfFigures(words: string, style: SheetStyle): number {
  return textWidth(words, 'sans', 'regular', style.figure);
}

/** What remains of the line at both sides of its figures, together. */
const LEAST_STUBS = 6;

/** How long a line must be for its figures to stand in it. */
export function leastLength(along: Dimension['along'], words: string, style: SheetStyle): number {
  return (along === 'across' ? widthOfFigures(words, style) : style.figure * 0.8) + 2 * AIR + LEAST_STUBS;
}

/** The dimension's shapes, or none where something else stands already: a figure left out is better than one on another. */
export function drawDimension(dimension: Dimension, style: SheetStyle, field: LabelField): readonly Shape[] {
  const [from, to] = [Math.min(dimension.from, dimension.to), Math.max(dimension.from, dimension.to)];
  const breadth = widthOfFigures(dimension.words, style);
  const across = dimension.along === 'across';
  const inLine = to - from >= leastLength(dimension.along, dimension.words, style);
  const gap = leastLength(dimension.along, dimension.words, style) - LEAST_STUBS;
  const middle = (from + to) / 2;
  const span = { from, to, middle, inLine };
  // Figures beside a line across go to its other end where the first is taken.
  const sides = across && !inLine ? [dimension.outer, -dimension.outer] : [dimension.outer];
  const label = sides
    .map((side) => (across ? labelAcross(dimension, span, side, style) : labelUpright(dimension, span, breadth, style)))
    .find((candidate) => field.take(textBox(candidate), lineBox(dimension, from, to)));
  if (label === undefined) return [];
  const pen: Style = { stroke: 'pencil', strokeWidth: style.hair };
  const pieces: readonly (readonly [number, number])[] = inLine
    ? [
        [from, middle - gap / 2],
        [middle + gap / 2, to],
      ]
    : [[from, to]];
  const { at } = dimension;
  const slant = style.figure * 0.24;
  return [
    strokes(
      pieces.map(([a, b]) => (across ? ([a, at, b, at] as const) : ([at, a, at, b] as const))),
      pen,
    ),
    strokes(
      [from, to].map((end) =>
        across
          ? ([end - slant, at + slant, end + slant, at - slant] as const)
          : ([at - slant, end + slant, at + slant, end - slant] as const),
      ),
      { stroke: 'ink', strokeWidth: style.hair * 1.25, cap: 'round' },
    ),
    label,
    ...(dimension.sure ? [] : [underline(label, breadth, style)]),
  ];
}

interface Span {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
  readonly inLine: boolean;
}

function labelAcross(dimension: Dimension, span: Span, side: number, style: SheetStyle): Text {
  const baseline = dimension.at + style.figure * MIDDLE_TO_BASELINE;
  const look = { size: style.figure, paint: 'pencil' } as const;
  if (span.inLine) return text(span.middle, baseline, dimension.words, { ...look, anchor: 'middle' });
  if (side > 0) return text(span.to + AIR + 2, baseline, dimension.words, look);
  return text(span.from - AIR - 2, baseline, dimension.words, { ...look, anchor: 'end' });
}

function labelUpright(dimension: Dimension, span: Span, breadth: number, style: SheetStyle): Text {
  const baseline = span.middle + style.figure * MIDDLE_TO_BASELINE;
  const x = span.inLine ? dimension.at : dimension.at + dimension.outer * (AIR + 1.5 + breadth / 2);
  return text(x, baseline, dimension.words, { size: style.figure, paint: 'pencil', anchor: 'middle' });
}

function lineBox(dimension: Dimension, from: number, to: number): Bounds {
  const thin = 0.5;
  return dimension.along === 'across'
    ? { x: from + thin, y: dimension.at - thin, width: Math.max(0, to - from - 2 * thin), height: 2 * thin }
    : { x: dimension.at - thin, y: from + thin, width: 2 * thin, height: Math.max(0, to - from - 2 * thin) };
}

function underline(label: Text, breadth: number, style: SheetStyle): Shape {
  const start = { start: label.x, middle: label.x - breadth / 2, end: label.x - breadth }[label.anchor];
  const y = label.y + style.figure * 0.2;
  return line(start, y, start + breadth, y, { stroke: 'pencil', strokeWidth: style.hair });
}
