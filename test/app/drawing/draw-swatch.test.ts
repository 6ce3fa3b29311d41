/** A cutting of cloth: inside its square, lighter in the corner the more it passes, and never by chance. */
import { describe, expect, it } from 'vitest';
import { STARTER_BOOK } from '#app/lining/cloth/starter-book.ts';
import { drawSwatch } from '#app/drawing/draw-swatch.ts';
import type { SwatchInput } from '#app/drawing/draw-swatch.ts';
import { luminanceOf } from '#app/drawing/mix-colours.ts';
import type { Shape } from '#app/drawing/shape.ts';

const input: SwatchInput = { name: 'Fern', role: 'face', family: 'plain', colour: '#c9b79a', light: 0.2, side: 56 };

function pointsOf(shape: Shape): readonly (readonly [number, number])[] {
  switch (shape.kind) {
    case 'path':
      return shape.steps.flatMap((step) => (step.to === 'close' ? [] : [[step.x, step.y] as const]));
    case 'rect':
      return [
        [shape.x, shape.y],
        [shape.x + shape.width, shape.y + shape.height],
      ];
    case 'circle':
      return [
        [shape.x - shape.r, shape.y - shape.r],
        [shape.x + shape.r, shape.y + shape.r],
      ];
    case 'line':
      return [
        [shape.x1, shape.y1],
        [shape.x2, shape.y2],
      ];
    default:
      return [];
  }
}

/** The corner is the one closed triangle. */
function cornerOf(light: number): number {
  const corner = drawSwatch({ ...input, light }).shapes.find(
    (shape) => shape.kind === 'path' && shape.steps.length === 4,
  );
  const fill = corner?.kind === 'path' ? corner.style.fill : undefined;
  if (typeof fill !== 'string') throw new Error('the corner is filled with one colour');
  return luminanceOf(fill);
}

describe('a swatch', () => {
  it.each(
    STARTER_BOOK.flatMap(({ key, cloth: { name, role, family } }) =>
      [20, 26, 92].map((side) => [key, side, { ...input, name, role, family, colour: null, side }] as const),
    ),
  )('%s at %i points stays inside its square', (_key, side, given) => {
    for (const shape of drawSwatch(given).shapes)
      for (const [x, y] of pointsOf(shape)) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(-0.01);
        expect(Math.max(x, y)).toBeLessThanOrEqual(side + 0.01);
      }
  });

  it('the corner held to the light is lighter the more passes', () => {
    const seen = [0, 0.0001, 0.01, 0.05, 0.2, 0.35, 0.6].map(cornerOf);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(new Set(seen).size).toBe(seen.length);
  });

  it('is the same every time, and says what it is', () => {
    expect(drawSwatch(input)).toEqual(drawSwatch(input));
    expect(drawSwatch(input).title).toContain('Fern');
  });
});
