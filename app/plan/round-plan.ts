/** The roundings of the cut plan, on whole ticks. */

/** How many whole `size` are in `length`; `size` above zero, `length` not negative. */
export function wholeTimes(length: number, size: number): number {
  return (length - (length % size)) / size;
}

/** Up to a multiple of `step`; 0 leaves it, and so does what has no end. */
export function upToStep(length: number, step: number): number {
  return step > 1 && length < Infinity && length % step !== 0 ? (wholeTimes(length, step) + 1) * step : length;
}

/** A lower bound may be lifted to a whole tick, since every length is one; a hair is granted to floating sums. */
export function upToWholeTick(length: number): number {
  return Math.ceil(length - 1e-6);
}

/** Half of the width, down, so that two always fit. */
export function halfDown(width: number): number {
  return (width - (width % 2)) / 2;
}

/** A whole number below `below` from a share in [0, 1). */
export function pickBelow(share: number, below: number): number {
  return Math.floor(share * below);
}

/** Whole ones in a floating count; a hair is granted, so that 2.9999999 of what was reckoned as 3 is 3. */
export function downToWhole(count: number): number {
  return Math.floor(count + 1e-6);
}

/** Whole pieces of `piece` that hold `length`, were it cut anywhere. */
export function upToWholePieces(length: number, piece: number): number {
  return Math.ceil(length / piece);
}
