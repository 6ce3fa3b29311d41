/** The named roundings of the take-off. All are exact on whole ticks; nothing here ever sees 4.000000001. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';

/** `num / den` up to a whole number; exact quotients stay. `den` above zero, both whole. */
export function upToWhole(num: number, den: number): number {
  return Number(ceiling(BigInt(num), BigInt(den)));
}

/** `num / den` to the nearest whole number, halves up; `num` is not negative. */
export function toNearestWhole(num: number, den: number): number {
  return Number((2n * BigInt(num) + BigInt(den)) / (2n * BigInt(den)));
}

/** `num / den` to the nearest whole number, halves down: 7 1/2 is 7, and 9.55 is 10. `num` is not negative. */
export function toNearestHalvesDown(num: number, den: number): number {
  return Math.max(0, upToWhole(2 * num - den, 2 * den));
}

/** Whole times that `den` goes into `num`: neither is negative, `den` above zero. */
export function downToWhole(num: number, den: number): number {
  return Number(BigInt(num) / BigInt(den));
}

/** A whole number up to the next even one. */
export function upToEven(count: number): number {
  return count + (count % 2);
}

/** A length up to whole repeats: 115.2 of 27 takes 5, and exactly 5 stays 5. */
export function upToWholeRepeat(length: Ticks, repeat: Ticks): Ticks {
  return ticks(upToWhole(length, repeat) * repeat);
}

/** An order up to the supplier's step; a step of zero leaves it as it is. */
export function upToOrderStep(length: Ticks, step: Ticks): Ticks {
  return step === 0 ? length : ticks(upToWhole(length, step) * step);
}

/** A float of ticks to the nearest tick: for lengths that were measured by an angle or spaced out evenly. */
export function toNearestTick(length: number): Ticks {
  return ticks(Math.round(length));
}

/** A float of ticks up to a whole one: a cut may be too long, never too short. */
export function upToTick(length: number): Ticks {
  return ticks(Math.ceil(length - 1e-6));
}

/** A float of ticks down to a whole one: a bound may be too low, never too high. */
export function downToTick(length: number): Ticks {
  return ticks(Math.floor(length + 1e-6));
}

/** A half of a tick up to a whole one: halves of odd repeats are the only place where one arises. */
export function halvesUpToTick(halfTicks: number): Ticks {
  return ticks(upToWhole(halfTicks, 2));
}

/** A length that loses a share in washing, made longer so that what is left suffices; up to a tick. Share in millionths. */
export function upForShrinkage(length: Ticks, millionths: number): Ticks {
  return ticks(upToWhole(length * 1_000_000, 1_000_000 - millionths));
}

function ceiling(num: bigint, den: bigint): bigint {
  const whole = num / den;
  return num > 0n && num % den !== 0n ? whole + 1n : whole;
}
