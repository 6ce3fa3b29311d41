/** The roundings that drawings need; none of them touches a length or a price. */

/** A count of things drawn: the nearest whole number, within bounds. */
export function nearestCount(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, Math.round(value)));
}

/** How many whole ones fit. A hair is granted, so that 14.999999 of what was reckoned as 15 is 15. */
export function wholeOnesIn(value: number): number {
  return Math.floor(value + 1e-9);
}

/** How many are needed to cover it, by the same hair. */
export function onesToCover(value: number): number {
  return Math.ceil(value - 1e-9);
}

/** Three decimals, so that opacities compare and print alike everywhere. */
export function roundOpacity(value: number): number {
  return Math.round(value * 1000) / 1000;
}
