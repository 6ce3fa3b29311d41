/** Whole repeats across between two seams: only so do joined widths read on (common practice). */
import { TICKS_PER_INCH, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { downToWhole } from './round-down.ts';
import { toNearestWhole } from './round.ts';

/** Repeats are printed to an eighth of an inch or a few millimetres: this much is eased in at the seam. */
const EASED = ticks(TICKS_PER_INCH / 8);

/** The most of a width that is whole repeats across between its seams; null where not one goes into it. */
export function wholeRepeats(usable: Ticks, across: Ticks, seam: Ticks = ticks(0)): Ticks | null {
  const times = downToWhole(Math.max(0, usable - 2 * seam), across);
  return times === 0 ? null : ticks(times * across + 2 * seam);
}

/** True when the width is whole repeats across between its seams, give or take what a seam eases in. */
export function seamsMatch(usable: Ticks, across: Ticks, seam: Ticks = ticks(0)): boolean {
  const between = Math.max(0, usable - 2 * seam);
  const times = toNearestWhole(between, across);
  return times > 0 && Math.abs(between - times * across) <= EASED;
}
