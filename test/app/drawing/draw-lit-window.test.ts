/** The lit window: true proportions, and light that follows what was computed. */
import { expect, test } from 'vitest';
import { drawLitWindow } from '#app/drawing/draw-lit-window.ts';
import type { LitWindowInput } from '#app/drawing/drawn-window.ts';
import { luminanceOf } from '#app/drawing/mix-colours.ts';
import { HEADINGS } from '#shared/words.ts';
import { inches } from './awkward-rooms.ts';
import { brokenNumbers, flatten, pathsOf, rectsFilled } from './read-drawing.ts';

const usual: LitWindowInput = {
  heading: 'pinch-pleat',
  arrangement: 'pair',
  rodWidth: inches(72),
  finishedLength: inches(84),
  fullness: 2.47,
  halfWidths: 8,
  pleats: 20,
  floorClearance: inches(0.5),
  dayColour: '#d5b98d',
  roomLight: 0.05,
  openShare: 0.02,
  width: 208,
  height: 110,
  detail: 'screen',
};

function extentOf(input: LitWindowInput): { width: number; height: number } {
  const bodies = pathsOf(drawLitWindow(input).shapes).filter((path) => path.style.fill === input.dayColour);
  const corners = bodies.flatMap((body) =>
    body.steps.flatMap((step) => (step.to === 'move' || step.to === 'line' ? [step] : [])),
  );
  const [xs, ys] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

test.each([
  ['usual', 72, 84],
  ['wide', 140, 95],
  ['tall', 30, 108],
])('%s: rod face to length as measured', (_, rod, length) => {
  const { width, height } = extentOf({ ...usual, rodWidth: inches(rod), finishedLength: inches(length) });
  expect(width / height).toBeCloseTo(rod / length, 6);
});

test('one fold for each pleat of the cloth', () => {
  const shaded = pathsOf(drawLitWindow({ ...usual, pleats: 24 }).shapes).filter((path) => path.style.opacity === 0.85);
  const folds = shaded.map((path) => path.steps.filter((step) => step.to === 'close').length);
  expect(folds).toEqual([12, 12]);
});

test('a darker room has darker walls', () => {
  const walls = [0, 0.001, 0.01, 0.04, 0.1].map((roomLight) => {
    const first = drawLitWindow({ ...usual, roomLight }).shapes[0]!;
    const fill = first.kind === 'rect' ? first.style.fill : undefined;
    return luminanceOf(typeof fill === 'object' ? fill.to.paint : '');
  });
  walls.slice(1).forEach((wall, place) => expect(wall).toBeGreaterThan(walls[place]!));
});

test('light leaks where edges are open, and nowhere else', () => {
  const glow = (openShare: number) =>
    rectsFilled(drawLitWindow({ ...usual, roomLight: 0, openShare }).shapes, '#fff2c9').reduce(
      (sum, ring) => sum + (ring.style.opacity ?? 0),
      0,
    );
  expect(glow(0)).toBe(0);
  expect(glow(0.04)).toBeGreaterThan(glow(0.005));
});

test('nothing is drawn off the picture to the sides or above', () => {
  for (const shape of flatten(drawLitWindow({ ...usual, rodWidth: inches(300), openShare: 1, roomLight: 1 }).shapes)) {
    if (shape.kind !== 'rect') continue;
    expect(shape.x).toBeGreaterThanOrEqual(0);
    expect(shape.y).toBeGreaterThanOrEqual(0);
    expect(shape.x + shape.width).toBeLessThanOrEqual(usual.width + 0.5);
  }
});

test.each(HEADINGS)('%s is drawn, for every arrangement, from nothing at all', (heading) => {
  for (const arrangement of ['pair', 'one-way', 'single', 'pair-stationary'] as const) {
    const bare = {
      ...usual,
      heading,
      arrangement,
      rodWidth: null,
      finishedLength: null,
      fullness: null,
      halfWidths: null,
      pleats: null,
      floorClearance: null,
    };
    expect(brokenNumbers(drawLitWindow(bare))).toEqual([]);
  }
  expect(
    brokenNumbers(
      drawLitWindow({ ...usual, heading, roomLight: Number.NaN, openShare: Number.NaN, width: Number.NaN }),
    ),
  ).toEqual([]);
});
