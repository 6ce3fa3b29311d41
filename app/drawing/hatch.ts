/** Oblique hatching of a rectangle, each stroke ending at its edges. */
import { strokes } from './make-shapes.ts';
import { onesToCover } from './round-shapes.ts';
import type { Bounds, Path, Style } from './shape.ts';

/** Strokes rising to the right (or falling), `step` points apart along the base. */
export function hatch(box: Bounds, step: number, style: Style, rising = true): Path {
  const { x, y, width, height } = box;
  const count = onesToCover((width + height) / step);
  const segments = Array.from({ length: count }, (_, index): readonly [number, number, number, number] => {
    const along = (index + 0.5) * step;
    const [x1, y1] = along <= width ? [along, height] : [width, height - (along - width)];
    const [x2, y2] = along <= height ? [0, height - along] : [along - height, 0];
    return rising ? [x + width - x1, y + y1, x + width - x2, y + y2] : [x + x1, y + y1, x + x2, y + y2];
  });
  return strokes(
    segments.filter(([x1, y1, x2, y2]) => Math.abs(x1 - x2) + Math.abs(y1 - y2) > 0.5),
    style,
  );
}
