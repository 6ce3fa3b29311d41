/** Shades and top treatments before the light: true proportions, bare glass left bare, and light that follows. */
import { describe, expect, test } from 'vitest';
import { drawLitWindow } from '#app/drawing/draw-lit-window.ts';
import { litInput } from '#app/drawing/lit-input.ts';
import type { LitHungInput } from '#app/drawing/drawn-window.ts';
import { luminanceOf } from '#app/drawing/mix-colours.ts';
import { inches } from './awkward-rooms.ts';
import { EVERY_KIND, shade, swags, untyped, valance } from './every-kind.ts';
import { brokenNumbers, flatten, rectsFilled } from './read-drawing.ts';

const usual: LitHungInput = {
  hung: shade(),
  opening: { width: inches(60), height: inches(54), sill: inches(30) },
  dayColour: '#d5b98d',
  roomLight: 0.05,
  openShare: 0.02,
  width: 208,
  height: 110,
  detail: 'screen',
};

const hungKinds = EVERY_KIND.flatMap(({ name, treatments }) =>
  treatments.flatMap((hung) =>
    hung.kind === 'panels' || hung.kind === 'bed-skirt' || hung.kind === 'shower-curtain' ? [] : [{ name, hung }],
  ),
);

describe.each(hungKinds)('$name', ({ hung }) => {
  test('is drawn, and from nothing at all', () => {
    expect(brokenNumbers(drawLitWindow({ ...usual, hung }))).toEqual([]);
    const bare = drawLitWindow({
      ...usual,
      hung: untyped(hung),
      opening: { width: null, height: null, sill: null },
      roomLight: Number.NaN,
      openShare: Number.NaN,
      width: Number.NaN,
    });
    expect(brokenNumbers(bare)).toEqual([]);
  });

  test('stays within its picture', () => {
    const drawing = drawLitWindow({ ...usual, hung });
    for (const shape of flatten(drawing.shapes)) {
      if (shape.kind !== 'rect' || shape.height <= 0) continue;
      expect(shape.x).toBeGreaterThanOrEqual(-0.01);
      expect(shape.y).toBeGreaterThanOrEqual(-0.01);
      expect(shape.x + shape.width).toBeLessThanOrEqual(drawing.width + 0.5);
    }
  });
});

/** The glass is the one rectangle that is filled with the sky. */
function glassOf(input: LitHungInput) {
  return flatten(drawLitWindow(input).shapes).find(
    (shape) =>
      shape.kind === 'rect' && typeof shape.style.fill === 'object' && shape.style.fill.from.paint === '#fffdf2',
  );
}

test('a shade of 59¾ by 54 in lies over a glass of 60 by 54 in, to one scale', () => {
  const glass = glassOf(usual)!;
  const face = [...flatten(drawLitWindow(usual).shapes)]
    .reverse()
    .find(
      (shape) => shape.kind === 'rect' && typeof shape.style.fill === 'object' && shape.style.stroke !== undefined,
    )!;
  if (glass.kind !== 'rect' || face.kind !== 'rect') throw new Error('no glass or no shade');
  expect(face.width / glass.width).toBeCloseTo(59.75 / 60, 6);
  expect(face.height / glass.height).toBeCloseTo(1, 6);
});

test('a valance covers the top alone', () => {
  const drawing = drawLitWindow({ ...usual, hung: valance() });
  expect(drawing.title).toMatch(/As it hangs/u);
  const glass = glassOf({ ...usual, hung: valance() })!;
  if (glass.kind !== 'rect') throw new Error('no glass');
  // 16 in deep, 6 in above the frame: 10 of 54 in of glass are covered.
  const face = flatten(drawing.shapes).find(
    (shape) => shape.kind === 'path' && typeof shape.style.fill === 'object' && shape.steps.length === 5,
  )!;
  if (face.kind !== 'path') throw new Error('no valance');
  const bottom = Math.max(...face.steps.flatMap((step) => (step.to === 'close' ? [] : [step.y])));
  expect((bottom - glass.y) / glass.height).toBeCloseTo(10 / 54, 6);
});

test('a darker room has darker walls', () => {
  const walls = [0, 0.01, 0.1].map((roomLight) => {
    const first = drawLitWindow({ ...usual, hung: swags(), roomLight }).shapes[0]!;
    const fill = first.kind === 'rect' ? first.style.fill : undefined;
    return luminanceOf(typeof fill === 'object' ? fill.to.paint : '');
  });
  walls.slice(1).forEach((wall, place) => expect(wall).toBeGreaterThan(walls[place]!));
});

test('beside a shade light leaks by its open share, and not at all where nothing is open', () => {
  const slits = (openShare: number) =>
    rectsFilled(drawLitWindow({ ...usual, roomLight: 0, openShare }).shapes, '#fffae6').length;
  expect(slits(0)).toBe(0);
  expect(slits(0.05)).toBeGreaterThan(0);
});

test('by night the bare glass is dark, by day as bright as the sky', () => {
  const bright = (sky: number): number => {
    const shapes = flatten(drawLitWindow({ ...usual, hung: valance(), sky }).shapes);
    const glass = shapes.flatMap((shape) =>
      shape.kind === 'rect' && typeof shape.style.fill === 'object' && shape.height > 20
        ? [shape.style.fill.to.paint]
        : [],
    );
    return Math.max(...glass.slice(2).map((paint) => luminanceOf(paint as `#${string}`)));
  };
  expect(bright(0)).toBeLessThan(0.1);
  expect(bright(0.5)).toBeGreaterThan(bright(0));
  expect(bright(1)).toBeGreaterThan(bright(0.5));
});

test('panels that do not draw and a café curtain leave their glass bare; a bed skirt has no picture', () => {
  const scene = {
    dayColour: '#d5b98d',
    roomLight: 0.05,
    openShare: 0.02,
    width: 208,
    height: 110,
    detail: 'screen',
  } as const;
  const place = { opening: usual.opening, floorClearance: null };
  const panels = EVERY_KIND.flatMap(({ treatments }) => treatments).find((each) => each.kind === 'panels');
  if (panels?.kind !== 'panels') throw new Error('there are no panels');
  const still = litInput({ ...panels, arrangement: 'pair-stationary' }, place, scene);
  expect(still).toMatchObject({ hung: { kind: 'panels', drawn: 'open' } });
  expect(litInput({ ...panels, cafe: true }, place, scene)).toMatchObject({ hung: { drawn: 'closed' } });
  expect(litInput({ ...panels, arrangement: 'pair', cafe: false }, place, scene)).not.toHaveProperty('hung');
  const skirt = EVERY_KIND.flatMap(({ treatments }) => treatments).find((each) => each.kind === 'bed-skirt');
  expect(skirt && litInput(skirt, place, scene)).toBeNull();
  for (const arrangement of ['pair-stationary', 'pair'] as const)
    for (const cafe of [true, false]) {
      const input = litInput({ ...panels, arrangement, cafe }, place, scene);
      expect(input && brokenNumbers(drawLitWindow(input))).toEqual([]);
    }
});
