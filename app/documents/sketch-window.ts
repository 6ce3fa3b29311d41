/**
 * The small drawing of the measure sheet: a window in its wall and in section, each measurement asked by its number.
 * Nothing is to scale. Points, y downwards.
 */
import { wholeLines } from './round-points.ts';
import type { Drawing, NamedPaint, Shape } from '#app/drawing/shape.ts';

/** What is asked, by number; the table of the sheet uses the same. */
export const MEASURES = {
  width: 1,
  height: 2,
  sill: 3,
  floor: 4,
  above: 5,
  left: 6,
  right: 7,
  projection: 8,
  depth: 9,
} as const;

export const SKETCH_WIDTH = 352;
export const SKETCH_HEIGHT = 190;

const CEILING = 8;
const FLOOR = 178;
const WALL = { left: 6, right: 262 };
const FRAME = { left: 92, right: 182, top: 48, bottom: 122 };
const OPENING = { left: 97, right: 177, top: 53, bottom: 117 };
/** The section through the wall, room to the left. */
const SECTION = { room: 318, street: 336 };

export function sketchWindow(): Drawing {
  return {
    width: SKETCH_WIDTH,
    height: SKETCH_HEIGHT,
    title:
      'A window in its wall and in section, with the numbers of what to measure: 1 width of the opening, 2 its height, ' +
      '3 sill to floor, 4 top of the frame to floor, 5 top of the frame to ceiling, 6 and 7 wall to the left and right, ' +
      '8 how far anything stands out from the wall, 9 depth of the recess.',
    shapes: [...drawWall(), ...drawFrame(), ...drawSection(), ...drawMeasures()],
  };
}

function line(x1: number, y1: number, x2: number, y2: number, paint: NamedPaint, width = 0.6, dash?: number[]): Shape {
  return { kind: 'line', x1, y1, x2, y2, style: { stroke: paint, strokeWidth: width, ...(dash ? { dash } : {}) } };
}

function rect(
  x: number,
  y: number,
  right: number,
  bottom: number,
  style: Extract<Shape, { kind: 'rect' }>['style'],
): Shape {
  return { kind: 'rect', x, y, width: right - x, height: bottom - y, style };
}

function drawWall(): readonly Shape[] {
  const hatch = Array.from({ length: 42 }, (_, i): Shape => {
    const x = WALL.left + 6 + i * 6;
    return line(x, FLOOR + 1.5, x - 4, FLOOR + 5.5, 'rule', 0.5);
  });
  return [
    line(WALL.left, CEILING, WALL.right, CEILING, 'pencil', 0.7, [1, 2.4]),
    line(WALL.left, CEILING, WALL.left, FLOOR, 'pencil', 0.7),
    line(WALL.right, CEILING, WALL.right, FLOOR, 'pencil', 0.7),
    ...hatch,
    line(WALL.left, FLOOR, WALL.right, FLOOR, 'ink', 0.9),
    line(WALL.left, FLOOR - 5, WALL.right, FLOOR - 5, 'rule', 0.5),
  ];
}

function drawFrame(): readonly Shape[] {
  const middle = (OPENING.left + OPENING.right) / 2;
  const bar = OPENING.top + 26;
  return [
    rect(FRAME.left, FRAME.top, FRAME.right, FRAME.bottom, { fill: 'paper', stroke: 'pencil', strokeWidth: 0.8 }),
    rect(OPENING.left, OPENING.top, OPENING.right, OPENING.bottom, {
      fill: {
        from: { x: 0, y: OPENING.top, paint: 'glass-top' },
        to: { x: 0, y: OPENING.bottom, paint: 'glass-bottom' },
      },
      stroke: 'pencil',
      strokeWidth: 0.8,
    }),
    line(middle, OPENING.top, middle, OPENING.bottom, 'pencil', 0.8),
    line(OPENING.left, bar, OPENING.right, bar, 'pencil', 0.8),
    rect(FRAME.left - 6, FRAME.bottom, FRAME.right + 6, FRAME.bottom + 4, {
      fill: 'paper',
      stroke: 'pencil',
      strokeWidth: 0.8,
    }),
  ];
}

/** Wall, sill, glass and a heater, cut through: what 8 and 9 are about. */
function drawSection(): readonly Shape[] {
  const { room, street } = SECTION;
  const glass = street - 5;
  const hatch = (from: number, to: number): Shape[] =>
    Array.from({ length: wholeLines(to - from - 8, 6) }, (_, i) => {
      const y = from + 8 + i * 6;
      return line(room, y, street, y - 8, 'rule', 0.5);
    });
  const block = (top: number, bottom: number): Shape[] => [
    ...hatch(top, bottom),
    rect(room, top, street, bottom, { stroke: 'pencil', strokeWidth: 0.7 }),
  ];
  return [
    ...block(CEILING, FRAME.top + 4),
    ...block(FRAME.bottom, FLOOR),
    line(glass - 1.2, FRAME.top + 4, glass - 1.2, FRAME.bottom, 'pencil', 0.8),
    line(glass + 1.2, FRAME.top + 4, glass + 1.2, FRAME.bottom, 'pencil', 0.8),
    rect(room - 14, FRAME.bottom - 1, glass - 2, FRAME.bottom + 3, {
      fill: 'paper',
      stroke: 'pencil',
      strokeWidth: 0.8,
    }),
    {
      kind: 'rect',
      x: room - 12,
      y: 138,
      width: 9,
      height: 32,
      radius: 2,
      style: { stroke: 'pencil', strokeWidth: 0.8 },
    },
    line(room - 34, FLOOR, street, FLOOR, 'ink', 0.9),
  ];
}

function drawMeasures(): readonly Shape[] {
  const { width, height, sill, floor, above, left, right, projection, depth } = MEASURES;
  const down = [OPENING.left + 12, (OPENING.left + OPENING.right) / 2 + 8, OPENING.right - 12];
  const across = [OPENING.top + 10, (OPENING.top + OPENING.bottom) / 2 + 6, OPENING.bottom - 10];
  const below = (FRAME.left + FRAME.right) / 2;
  return [
    ...across.flatMap((y) => measured(OPENING.left, y, OPENING.right, y)),
    ...down.flatMap((x) => measured(x, OPENING.top, x, OPENING.bottom)),
    numbered(OPENING.right - 26, across[1] ?? 0, width),
    numbered(down[0] ?? 0, OPENING.top + 22, height),
    ...measured(below - 26, FRAME.bottom + 4, below - 26, FLOOR),
    numbered(below - 26, 150, sill),
    ...measured(FRAME.right + 20, FRAME.top, FRAME.right + 20, FLOOR),
    line(FRAME.right + 2, FRAME.top, FRAME.right + 23, FRAME.top, 'pencil', 0.4),
    numbered(FRAME.right + 20, 134, floor),
    ...measured(below, CEILING, below, FRAME.top),
    numbered(below, 28, above),
    ...measured(WALL.left, 86, FRAME.left, 86),
    numbered((WALL.left + FRAME.left) / 2, 86, left),
    ...measured(FRAME.right, 86, WALL.right, 86),
    numbered((FRAME.right + 20 + WALL.right) / 2 + 4, 86, right),
    ...measured(SECTION.room - 14, 131, SECTION.room, 131),
    numbered(SECTION.room - 24, 131, projection),
    ...measured(SECTION.room, 86, SECTION.street - 7, 86),
    numbered(SECTION.room - 10, 86, depth),
  ];
}

/** A dimension line between oblique ticks. */
function measured(x1: number, y1: number, x2: number, y2: number): readonly Shape[] {
  const tick = (x: number, y: number): Shape => line(x - 2, y + 2, x + 2, y - 2, 'ink', 0.8);
  return [line(x1, y1, x2, y2, 'pencil', 0.5), tick(x1, y1), tick(x2, y2)];
}

export function numbered(x: number, y: number, number: number): Shape {
  return {
    kind: 'group',
    shapes: [
      { kind: 'circle', x, y, r: 6.2, style: { fill: 'paper', stroke: 'thread', strokeWidth: 0.8 } },
      {
        kind: 'text',
        x,
        y: y + 2.7,
        text: String(number),
        size: 7.8,
        anchor: 'middle',
        font: 'sans',
        weight: 'semibold',
        paint: 'ink',
      },
    ],
  };
}
