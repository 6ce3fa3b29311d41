/** Named roundings that are no readings: a colour channel, a whole unit in a sentence, the place in a table. */

/** A share of one as a byte of `#rrggbb`, to the nearest, held within 0..255. */
export function toByte(share: number): number {
  return Math.round(255 * Math.min(1, Math.max(0, share)));
}

/** To the nearest whole unit, for a sentence or a working step only. */
export function toWhole(value: number): number {
  return Math.round(value);
}

/** The entry of an even table at or below a place in it. */
export function downToEntry(place: number): number {
  return Math.floor(place);
}

/** Up to a whole count. */
export function upToEntry(place: number): number {
  return Math.ceil(place);
}
