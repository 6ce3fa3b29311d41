/** The one rounding down of the take-off: how many whole pieces come out of a cloth. Never used for what is ordered. */

/** `num / den` down to a whole number; `num` not negative, `den` above zero, both whole. */
export function downToWhole(num: number, den: number): number {
  return Number(BigInt(num) / BigInt(den));
}
