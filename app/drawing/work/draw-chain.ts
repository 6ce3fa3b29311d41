/**
 * Measures of a work drawing: every figure is written, however short its stretch. Where figures do not fit into their
 * line they stand outside it, in rows or spread apart, each with a fine line that leads to its stretch.
 */
import { line, MIDDLE_TO_BASELINE, strokes, text } from '../make-shapes.ts';
import type { Shape } from '../shape.ts';
import type { SheetStyle } from '../sheet-style.ts';
import { onesToCover } from '../round-shapes.ts';
import { textWidth } from '../text-widths.ts';
import type { Chain } from './work-piece.ts';

export interface DrawnChain {
  readonly shapes: readonly Shape[];
  /** How far it reaches from where it lies, outwards. */
  readonly depth: number;
  /** Where the lowest of its words end, of measures at a side. */
  readonly lowest?: number;
}

type Segment = readonly [number, number, number, number];

function widthOf(words: string, style: SheetStyle): number {
  return textWidth(words, 'sans', 'regular', style.figure);
}

function lead(style: SheetStyle): number {
  return style.figure * 1.18;
}

interface Label {
  readonly words: string;
  readonly middle: number;
  readonly breadth: number;
  readonly fits: boolean;
}

/** `at` the height of the line, `to` from ticks to points, `limits` between which words may stand. */
export function drawAcrossChain(
  chain: Chain,
  at: number,
  outward: 1 | -1,
  to: (ticks: number) => number,
  limits: { readonly left: number; readonly right: number },
  style: SheetStyle,
): DrawnChain {
  const labels = chain.parts.map((part): Label => {
    const breadth = widthOf(part.words, style);
    const [from, end] = [to(part.from), to(part.to)];
    return { words: part.words, middle: (from + end) / 2, breadth, fits: end - from >= breadth + 9 };
  });
  const lines: Segment[] = [];
  chain.parts.forEach((part, place) => {
    const label = labels[place];
    const [from, end] = [to(part.from), to(part.to)];
    if (label === undefined) return;
    const gap = label.breadth / 2 + 2.5;
    if (label.fits) lines.push([from, at, label.middle - gap, at], [label.middle + gap, at, end, at]);
    else lines.push([from, at, end, at]);
  });
  const stops = chain.parts.flatMap((part, place) => {
    const label = labels[place];
    const isClear = (x: number) =>
      label === undefined || !label.fits || Math.abs(x - label.middle) > label.breadth / 2 + style.figure * 0.3;
    return [to(part.from), ...(part.inner ?? []).map(to).filter(isClear), to(part.to)];
  });
  const placed = placeInRows(labels, limits);
  const step = lead(style);
  const rows = Math.max(0, ...placed.map((each) => each.row));
  return {
    shapes: [
      ...lines.map((each) => line(...each, { stroke: 'pencil', strokeWidth: style.hair })),
      ticks(
        stops.map((x) => ({ x, y: at })),
        style,
      ),
      ...placed.flatMap(({ label, x, row }): Shape[] => {
        const y = at + outward * row * step;
        const words = text(x, y + style.figure * MIDDLE_TO_BASELINE, label.words, {
          size: style.figure,
          paint: 'ink',
          anchor: 'middle',
        });
        if (row === 0) return [words];
        const leader: Segment = [label.middle, at + outward * 1.5, x, y - outward * style.figure * 0.55];
        return [line(...leader, { stroke: 'faint', strokeWidth: style.hair * 0.8 }), words];
      }),
    ],
    depth: rows * step + style.figure * 0.6,
  };
}

interface PlacedLabel {
  readonly label: Label;
  readonly x: number;
  readonly row: number;
}

/** Between two labels of a row. */
const BESIDE = 6;

/** Row 0 is the line itself. What does not fit there is spread along one row outside it, or along as many as it takes. */
function placeInRows(
  labels: readonly Label[],
  limits: { readonly left: number; readonly right: number },
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = labels
    .filter((label) => label.fits)
    .map((label) => ({ label, x: label.middle, row: 0 }));
  const outside = labels.filter((label) => !label.fits).sort((a, b) => a.middle - b.middle);
  const taken = outside.reduce((sum, label) => sum + label.breadth + BESIDE, 0);
  const rows = Math.max(1, onesToCover(taken / Math.max(1, limits.right - limits.left + BESIDE)));
  for (let row = 1; row <= rows; row += 1) {
    // The outermost go to the outer rows, so that no line leads through words.
    const own = outside.filter((_, place) => (place % rows) + 1 === row);
    spreadAlong(own, limits).forEach((x, place) => {
      const label = own[place];
      if (label !== undefined) placed.push({ label, x, row });
    });
  }
  return placed;
}

/** Middles of labels along a row: as near to their stretches as their breadth and the limits allow. */
function spreadAlong(
  labels: readonly Label[],
  limits: { readonly left: number; readonly right: number },
): readonly number[] {
  const at = labels.map((label) => label.middle);
  const least = (place: number) => ((labels[place]?.breadth ?? 0) + (labels[place - 1]?.breadth ?? 0)) / 2 + BESIDE;
  for (let round = 0; round < 40; round += 1) {
    for (let place = 1; place < at.length; place += 1) {
      const short = least(place) - ((at[place] ?? 0) - (at[place - 1] ?? 0));
      if (short <= 0) continue;
      at[place - 1] = (at[place - 1] ?? 0) - short / 2;
      at[place] = (at[place] ?? 0) + short / 2;
    }
    labels.forEach((label, place) => {
      const half = label.breadth / 2;
      at[place] = Math.max(limits.left + half, Math.min(limits.right - half, at[place] ?? 0));
    });
  }
  return at;
}

/** `at` where the line lies; words stand outside it, none above `highest`, spread so that none lies on another. */
export function drawUprightChain(
  chain: Chain,
  at: number,
  outward: 1 | -1,
  to: (ticks: number) => number,
  highest: number,
  style: SheetStyle,
): DrawnChain {
  const stops = chain.parts.flatMap((part) => [part.from, ...(part.inner ?? []), part.to]).map(to);
  const [top, bottom] = [Math.min(...stops), Math.max(...stops)];
  const wanted = chain.parts.map((part) => (to(part.from) + to(part.to)) / 2);
  const spread = spreadApart(wanted, lead(style), highest + style.figure * 0.45);
  const out = at + outward * (5 + (isMoved(wanted, spread) ? 7 : 0));
  const breadth = breadthOfUpright(chain, style);
  return {
    shapes: [
      line(at, top, at, bottom, { stroke: 'pencil', strokeWidth: style.hair }),
      ticks(
        stops.map((y) => ({ x: at, y })),
        style,
      ),
      ...chain.parts.flatMap((part, place): Shape[] => {
        const [y, middle] = [spread[place] ?? 0, wanted[place] ?? 0];
        const words = text(out, y + style.figure * MIDDLE_TO_BASELINE, part.words, {
          size: style.figure,
          paint: 'ink',
          anchor: outward > 0 ? 'start' : 'end',
        });
        if (Math.abs(y - middle) < 1.5) return [words];
        const leader: Segment = [at + outward * 1.5, middle, out - outward * 1.5, y];
        return [line(...leader, { stroke: 'faint', strokeWidth: style.hair * 0.8 }), words];
      }),
    ],
    depth: breadth,
    lowest: Math.max(bottom, ...spread.map((y) => y + style.figure * 0.6)),
  };
}

export function breadthOfUpright(chain: Chain, style: SheetStyle): number {
  return Math.max(0, ...chain.parts.map((part) => widthOf(part.words, style))) + 16;
}

function isMoved(wanted: readonly number[], spread: readonly number[]): boolean {
  return wanted.some((value, place) => Math.abs(value - (spread[place] ?? value)) >= 1.5);
}

/** At least `step` apart, in the order given, as near to what was wanted as that allows. */
function spreadApart(wanted: readonly number[], step: number, highest: number): readonly number[] {
  const order = wanted.map((value, place) => ({ value, place })).sort((a, b) => a.value - b.value);
  const at = order.map(({ value }) => value);
  for (let round = 0; round < 60; round += 1) {
    let moved = false;
    for (let place = 1; place < at.length; place += 1) {
      const [before, own] = [at[place - 1] ?? 0, at[place] ?? 0];
      const short = step - (own - before);
      if (short <= 0.01) continue;
      at[place - 1] = before - short / 2;
      at[place] = own + short / 2;
      moved = true;
    }
    if (!moved) break;
  }
  for (let place = 0; place < at.length; place += 1) {
    const least = place === 0 ? highest : (at[place - 1] ?? highest) + step;
    at[place] = Math.max(at[place] ?? least, least);
  }
  const result = new Array<number>(wanted.length).fill(0);
  order.forEach(({ place }, index) => (result[place] = at[index] ?? 0));
  return result;
}

function ticks(stops: readonly { readonly x: number; readonly y: number }[], style: SheetStyle): Shape {
  const slant = style.figure * 0.22;
  return strokes(
    stops.map(({ x, y }) => [x - slant, y + slant, x + slant, y - slant] as const),
    { stroke: 'ink', strokeWidth: style.hair * 1.25, cap: 'round' },
  );
}
