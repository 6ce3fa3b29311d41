import type { Shape } from '#app/drawing/shape.ts';

/** A box to tick with a pencil; `size` in points. */
export function tickBox(x: number, y: number, size: number): Shape {
  return {
    kind: 'rect',
    x,
    y,
    width: size,
    height: size,
    radius: 1.8,
    style: { stroke: 'ink', strokeWidth: 0.8 },
  };
}
