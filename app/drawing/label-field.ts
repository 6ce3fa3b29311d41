/** Keeps words and dimension lines off one another: a label is set only where nothing was set before it. */
import type { Bounds, Text } from './shape.ts';
import { textWidth } from './text-widths.ts';

/** Letters reach about this far above and below their baseline, as shares of the type size. */
const ASCENT = 0.78;
const DESCENT = 0.24;

/** The box of a line of text, in drawing units. */
export function textBox(label: Text): Bounds {
  const length = textWidth(label.text, label.font, label.weight, label.size);
  const before = { start: 0, middle: length / 2, end: length }[label.anchor];
  const [up, down] = [ASCENT * label.size, DESCENT * label.size];
  if (label.turn === -90) return { x: label.x - up, y: label.y - (length - before), width: up + down, height: length };
  return { x: label.x - before, y: label.y - up, width: length, height: up + down };
}

export function overlap(a: Bounds, b: Bounds): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export interface LabelField {
  /** Takes the place of these boxes if all of them are free and on the sheet; says whether it was so. */
  readonly take: (...boxes: readonly Bounds[]) => boolean;
}

/** The field of a sheet `width` by `height` points. */
export function makeLabelField(width: number, height: number): LabelField {
  const taken: Bounds[] = [];
  const isWithin = (box: Bounds) =>
    box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height;
  return {
    take: (...boxes) => {
      if (boxes.some((box) => !isWithin(box) || taken.some((other) => overlap(box, other)))) return false;
      taken.push(...boxes);
      return true;
    },
  };
}

/** `words` cut to `room` points with an ellipsis; empty when not even two letters fit. */
export function fitText(words: string, look: Pick<Text, 'font' | 'weight' | 'size'>, room: number): string {
  const measure = (candidate: string) => textWidth(candidate, look.font, look.weight, look.size);
  if (measure(words) <= room) return words;
  const letters = [...words];
  while (letters.length > 2) {
    letters.pop();
    const cut = `${letters.join('').trimEnd()}…`;
    if (measure(cut) <= room) return cut;
  }
  return '';
}
