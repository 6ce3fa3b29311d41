/** Places in the repeat lie on a circle: from the end of one repeat cloth runs on into the next. */
import { intoRepeat } from '#app/estimating/into-repeat.ts';

/** From place to place forwards along the cloth, in [0, size). */
export function forward(from: number, to: number, size: number): number {
  return intoRepeat(to - from, size);
}

/** The place in the repeat `along` ticks further. */
export function placeAfter(place: number, along: number, size: number): number {
  return forward(0, place + along, size);
}

/** The first position from `from` on where `phase` lies; `start` is the place at position 0. No repeat: `from`. */
export function nextPosition(from: number, phase: number, start: number, size: number): number {
  return size === 0 || phase < 0 ? from : from + forward(placeAfter(start, from, size), phase, size);
}
