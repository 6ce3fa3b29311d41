/**
 * A cutting of cloth with a pinked edge: its colour and weave by the light of the room, and one corner held against a
 * bright window, as light or dark as it would look there. A likeness to tell cloths apart by, not a sample of colour.
 */
import type { ClothRole, FaceFamily, InterliningFamily, LiningFamily } from '#shared/words.ts';
import type { Hex } from './drawn-room.ts';
import { hatch } from './hatch.ts';
import { circle, line, outline, path, rect, strokes } from './make-shapes.ts';
import type { Point } from './make-shapes.ts';
import { luminanceOf, mixColours, UNDYED } from './mix-colours.ts';
import { nearestCount, wholeOnesIn } from './round-shapes.ts';
import { scatter } from './scatter.ts';
import type { Bounds, Drawing, Shape } from './shape.ts';

export interface SwatchInput {
  readonly name: string;
  readonly role: ClothRole;
  readonly family: FaceFamily | LiningFamily | InterliningFamily;
  /** Null draws the usual colour. */
  readonly colour: Hex | null;
  /** Share of the daylight that it passes, 0..1. */
  readonly light: number;
  /** Length of a side, in points. Legible from 20 up. */
  readonly side: number;
}

type Weave = 'plain' | 'sprigs' | 'herringbone' | 'open' | 'slubs' | 'pile' | 'sateen' | 'ribs' | 'coat' | 'nap';

const WEAVES: Readonly<Record<SwatchInput['family'], Weave>> = {
  plain: 'plain',
  print: 'sprigs',
  woven: 'herringbone',
  sheer: 'open',
  silk: 'slubs',
  velvet: 'pile',
  standard: 'sateen',
  combination: 'nap',
  'dim-out': 'ribs',
  'blackout-3-pass': 'coat',
  'blackout-soft': 'ribs',
  'blackout-napped': 'nap',
  'black-sateen': 'sateen',
  thermal: 'coat',
  contrast: 'plain',
  light: 'nap',
  medium: 'nap',
  heavy: 'nap',
};

const PALE: Hex = '#fdfcf7';
const NATURAL: Hex = '#f3ecdb';
/** Light through the cloth is drawn from this to this, by a root of what passes: the eye tells dark shares apart. */
const DARKNESS = '#1d1b18';
const DAYLIGHT = '#ffe7a3';
const BRIGHTEST = 0.6;
const ROOT = 0.36;
/** Beside a bright window the room is dim. */
const DIMNESS = '#5d5546';

export function drawSwatch(input: SwatchInput): Drawing {
  const { side } = input;
  const tooth = side / nearestCount(side / 4.2, 8, 22);
  const own = input.colour ?? usualColour(input);
  const colour = mixColours(own, DIMNESS, 0.12);
  const box: Bounds = { x: tooth / 2, y: tooth / 2, width: side - tooth, height: side - tooth };
  const ink = inkOn(colour);
  const edge = outline(pinkedEdge(side, tooth));
  const lit = litColour(own, input.light);
  const corner: Point[] = [
    { x: box.x + box.width, y: box.y + box.height * 0.28 },
    { x: box.x + box.width, y: box.y + box.height },
    { x: box.x + box.width * 0.28, y: box.y + box.height },
  ];
  const [from, , to] = corner;
  return {
    width: side,
    height: side,
    title: `${input.name}, a cutting; the corner held to the light`,
    shapes: [
      path(edge, { fill: colour }),
      ...drawWeave(WEAVES[input.family], box, ink),
      path(outline(corner), { fill: lit }),
      ...(input.light > 0.02 ? [throughWeave(corner, lit, side)] : []),
      ...(from && to
        ? [line(from.x, from.y, to.x, to.y, { stroke: 'card', strokeWidth: Math.max(0.6, side / 60) })]
        : []),
      path(edge, { stroke: 'pencil', strokeWidth: 0.6 }),
    ],
  };
}

function usualColour({ role, family }: SwatchInput): Hex {
  if (role === 'face') return family === 'sheer' ? PALE : UNDYED;
  return role === 'interlining' ? NATURAL : PALE;
}

/** Yarns are darker than a pale cloth, paler than a dark one. */
function inkOn(colour: Hex): Hex {
  return luminanceOf(colour) > 0.12 ? mixColours(colour, '#2b1f12', 0.5) : mixColours(colour, '#fffaf0', 0.4);
}

function litColour(colour: Hex, light: number): Hex {
  const share = Math.max(0, Math.min(1, light / BRIGHTEST)) ** ROOT;
  return mixColours(mixColours(colour, DARKNESS, 0.86), mixColours(colour, DAYLIGHT, 0.5), share);
}

/** Zigzag all round, as pinking shears leave it. */
function pinkedEdge(side: number, tooth: number): Point[] {
  const count = nearestCount(side / tooth, 1, 60);
  const step = side / count;
  const inset = tooth / 2;
  const along = Array.from({ length: count }, (_, index) => index * step);
  const half = step / 2;
  return [
    ...along.flatMap((at) => [
      { x: at, y: inset },
      { x: at + half, y: 0 },
    ]),
    ...along.flatMap((at) => [
      { x: side - inset, y: at },
      { x: side, y: at + half },
    ]),
    ...along.flatMap((at) => [
      { x: side - at, y: side - inset },
      { x: side - at - half, y: side },
    ]),
    ...along.flatMap((at) => [
      { x: inset, y: side - at },
      { x: 0, y: side - at - half },
    ]),
  ];
}

/** Against the light yarns stand dark in the corner. */
function throughWeave(corner: readonly Point[], lit: Hex, side: number): Shape {
  const [right, low, left] = corner;
  const step = Math.max(2, side / 16);
  const segments: [number, number, number, number][] = [];
  if (right && low && left)
    for (let y = right.y + step; y < low.y; y += step)
      segments.push([left.x + (low.y - y) * ((right.x - left.x) / (low.y - right.y)), y, right.x, y]);
  return strokes(segments, { stroke: inkOn(lit), strokeWidth: 0.5, opacity: 0.3 });
}

function drawWeave(weave: Weave, box: Bounds, ink: Hex): readonly Shape[] {
  const pen = { stroke: ink, strokeWidth: 0.55, opacity: 0.42 } as const;
  const step = Math.max(2, box.width / 14);
  switch (weave) {
    case 'plain':
      return [strokes(overAndUnder(box, step * 1.15), pen)];
    case 'sprigs':
      return [strokes(overAndUnder(box, step), { ...pen, opacity: 0.16 }), ...sprigs(box, ink)];
    case 'herringbone':
      return [strokes(zigzags(box, step * 1.6), { ...pen, strokeWidth: 0.8 })];
    case 'open':
      return [strokes(net(box, step * 1.3), { ...pen, opacity: 0.34 })];
    case 'slubs':
      return [sheen(box, ink), strokes(slubs(box, step), { ...pen, opacity: 0.36 })];
    case 'pile':
      return [sheen(box, ink), strokes(tufts(box, step * 0.6), { ...pen, opacity: 0.3 })];
    case 'sateen':
      return [hatch(box, step * 0.8, { ...pen, opacity: 0.26 })];
    case 'ribs':
      return [strokes(ribs(box, step * 0.75), { ...pen, opacity: 0.28 })];
    case 'coat':
      return [rect(box.x + step, box.y + step, box.width - 2 * step, box.height - 2 * step, { ...pen, opacity: 0.3 })];
    case 'nap':
      return [strokes(hairs(box, step), { ...pen, cap: 'round' })];
  }
}

type Segments = [number, number, number, number][];

/** Evenly spaced places between two ends, a step apart. */
function places(from: number, length: number, step: number): number[] {
  const count = nearestCount(length / step, 1, 80);
  return Array.from({ length: count }, (_, index) => from + ((index + 0.5) * length) / count);
}

function overAndUnder(box: Bounds, step: number): Segments {
  const half = step * 0.36;
  return places(box.y, box.height, step).flatMap((y, row) =>
    places(box.x, box.width, step).map((x, column): Segments[number] =>
      (row + column) % 2 === 0 ? [x - half, y, x + half, y] : [x, y - half, x, y + half],
    ),
  );
}

function zigzags(box: Bounds, step: number): Segments {
  const half = step / 2;
  return places(box.x, box.width, step).flatMap((x, column) =>
    places(box.y, box.height, step * 0.6).map((y): Segments[number] => {
      const rise = (column % 2 === 0 ? 1 : -1) * step * 0.28;
      return [x - half * 0.9, y + rise, x + half * 0.9, y - rise];
    }),
  );
}

function net(box: Bounds, step: number): Segments {
  return [...ribs(box, step), ...places(box.y, box.height, step).map(acrossAt(box))];
}

function acrossAt(box: Bounds): (y: number) => Segments[number] {
  return (y) => [box.x, y, box.x + box.width, y];
}

function ribs(box: Bounds, step: number): Segments {
  return places(box.x, box.width, step).map((x): Segments[number] => [x, box.y, x, box.y + box.height]);
}

function slubs(box: Bounds, step: number): Segments {
  return places(box.y, box.height, step * 0.55).map((y, row): Segments[number] => {
    const from = box.x + box.width * 0.62 * scatter(row, 0.618034);
    return [from, y, Math.min(box.x + box.width, from + box.width * (0.2 + 0.5 * scatter(row, 0.754877))), y];
  });
}

function tufts(box: Bounds, step: number): Segments {
  return places(box.y, box.height, step * 2).flatMap((y, row) =>
    places(box.x, box.width, step).map((x, column): Segments[number] => {
      const lean = step * 0.5 * (scatter(row * 31 + column, 0.618034) - 0.5);
      return [x, y - step * 0.5, x + lean, y + step * 0.5];
    }),
  );
}

function hairs(box: Bounds, step: number): Segments {
  const count = nearestCount((box.width * box.height) / (step * step * 0.9), 16, 260);
  return Array.from({ length: count }, (_, index): Segments[number] => {
    const turn = scatter(index, 0.618034) * 6.283;
    const [dx, dy] = [Math.cos(turn) * step * 0.55, Math.sin(turn) * step * 0.55];
    const x = box.x + step + (box.width - 2 * step) * scatter(index, 0.754877);
    const y = box.y + step + (box.height - 2 * step) * scatter(index, 0.56984);
    return [x - dx, y - dy, x + dx, y + dy];
  });
}

/** Three leaves and a dot, half a drop apart from column to column. */
function sprigs(box: Bounds, ink: Hex): readonly Shape[] {
  const columns = 3;
  const pitch = box.width / columns;
  const r = pitch * 0.13;
  return Array.from({ length: columns * 3 }, (_, index): readonly Shape[] => {
    const column = index % columns;
    const x = box.x + (column + 0.5) * pitch;
    const y = box.y + (wholeOnesIn(index / columns) + (column % 2 === 0 ? 0.3 : 0.74)) * pitch;
    const leaf = { fill: ink, opacity: 0.55 } as const;
    return [
      circle(x, y, r, leaf),
      circle(x - r * 1.5, y + r * 1.2, r * 0.7, leaf),
      circle(x + r * 1.5, y + r * 1.2, r * 0.7, leaf),
    ];
  }).flat();
}

/** Silk and pile catch the light on one side. */
function sheen(box: Bounds, ink: Hex): Shape {
  return rect(box.x, box.y, box.width, box.height, {
    fill: {
      from: { x: box.x, y: box.y, paint: '#ffffff' },
      to: { x: box.x + box.width, y: box.y + box.height * 0.4, paint: ink },
    },
    opacity: 0.24,
  });
}
