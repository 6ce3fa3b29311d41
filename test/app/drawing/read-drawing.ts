/** Ways of looking into a drawing that several tests share. */
import type { Bounds, Drawing, Group, Path, Rect, Shape, Text } from '#app/drawing/shape.ts';
import { overlap, textBox } from '#app/drawing/label-field.ts';

/** Every shape with its groups opened, in painting order. */
export function flatten(shapes: readonly Shape[]): Exclude<Shape, Group>[] {
  return shapes.flatMap((shape) => (shape.kind === 'group' ? flatten(shape.shapes) : [shape]));
}

export function groupsOf(shapes: readonly Shape[]): Group[] {
  return shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...groupsOf(shape.shapes)] : []));
}

export function targetOf(drawing: Drawing, key: string): Group {
  const found = groupsOf(drawing.shapes).find((group) => group.key === key);
  if (!found) throw new Error(`no target ${key}`);
  return found;
}

export function textsOf(drawing: Drawing): Text[] {
  return flatten(drawing.shapes).filter((shape): shape is Text => shape.kind === 'text');
}

export function wordsOf(drawing: Drawing): string[] {
  return textsOf(drawing).map((label) => label.text);
}

export function rectsFilled(shapes: readonly Shape[], fill: string): Rect[] {
  return flatten(shapes).filter((shape): shape is Rect => shape.kind === 'rect' && shape.style.fill === fill);
}

export function pathsOf(shapes: readonly Shape[]): Path[] {
  return flatten(shapes).filter((shape): shape is Path => shape.kind === 'path');
}

/** Every number anywhere in it that is not finite, by its path. */
export function brokenNumbers(value: unknown, path = 'drawing'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => brokenNumbers(part, `${path}.${name}`));
}

/** Pairs of words that stand on one another. */
export function clashes(drawing: Drawing): string[] {
  const labels = textsOf(drawing).map((label) => ({ label, box: shrink(textBox(label)) }));
  return labels.flatMap(({ label, box }, place) =>
    labels
      .slice(place + 1)
      .filter((other) => overlap(box, other.box))
      .map((other) => `"${label.text}" on "${other.label.text}"`),
  );
}

/** Words that stick out of the sheet. */
export function strays(drawing: Drawing): string[] {
  return textsOf(drawing)
    .filter((label) => {
      const box = shrink(textBox(label));
      return box.x < 0 || box.y < 0 || box.x + box.width > drawing.width || box.y + box.height > drawing.height;
    })
    .map((label) => `"${label.text}"`);
}

/** Boxes may touch: a hundredth of a point is not seen. */
function shrink(box: Bounds): Bounds {
  return { x: box.x + 0.01, y: box.y + 0.01, width: box.width - 0.02, height: box.height - 0.02 };
}
