/** Paints of a drawing as the numbers that a PDF wants. */
import type { Paint } from '#app/drawing/shape.ts';
import { PAPER_PALETTE } from './paper-style.ts';
import { roundPoints } from './round-points.ts';

/** Red, green, blue from 0 to 1 (device RGB, as screens mean `#rrggbb`). */
export type Rgb = readonly [number, number, number];

export function rgbOf(paint: Paint): Rgb {
  const hex = paint.startsWith('#') ? paint : PAPER_PALETTE[paint as keyof typeof PAPER_PALETTE];
  if (!/^#[0-9a-f]{6}$/iu.test(hex)) throw new Error(`not a colour: ${hex}; write it as #rrggbb`);
  const part = (from: number) => roundPoints(Number.parseInt(hex.slice(from, from + 2), 16) / 255);
  return [part(1), part(3), part(5)];
}
