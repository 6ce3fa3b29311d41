/**
 * The cutting-stock problem with broken bolts allowed: how often each way to fill a bolt is used when a way may be used two
 * and a half times. Columns are generated as they are needed (P. C. Gilmore and R. E. Gomory, Operations Research 9, 1961,
 * 849-859): the simplex method on one row a kind, the next filling by a knapsack over the rows' prices.
 */
import type { Meter } from './meter.ts';
import { wholeTimes } from './round-plan.ts';

export interface Filling {
  /** How many of each kind. */
  readonly counts: readonly number[];
  /** How often: not whole. */
  readonly times: number;
}

const HAIR = 1e-9;
const MOST_ROUNDS = 2_000;

/** The fillings in use, at most one a kind; null when the meter is over first. Lengths in falling order, none above `limit`. */
export function relaxBolts(
  lengths: readonly number[],
  counts: readonly number[],
  limit: number,
  meter: Meter,
): Filling[] | null {
  const many = lengths.length;
  const unit = (at: number, value: number): number[] => lengths.map((_, kind) => (kind === at ? value : 0));
  const fillings = lengths.map((length, kind) => unit(kind, wholeTimes(limit, length)));
  // The inverse of the basis, row by row, and how often each of its fillings is used.
  const inverse = lengths.map((length, kind) => unit(kind, 1 / wholeTimes(limit, length)));
  const times = counts.map((count, kind) => count / wholeTimes(limit, lengths[kind] ?? 1));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    meter.count();
    if (meter.isOver()) return null;
    const prices = lengths.map((_, kind) => inverse.reduce((sum, row) => sum + (row[kind] ?? 0), 0));
    const entering = bestFilling(lengths, prices, limit);
    const worth = entering.reduce((sum, count, kind) => sum + count * (prices[kind] ?? 0), 0);
    if (worth <= 1 + HAIR)
      return fillings.map((filling, at) => ({ counts: filling, times: Math.max(0, times[at] ?? 0) }));
    const moves = inverse.map((row) => row.reduce((sum, cell, kind) => sum + cell * (entering[kind] ?? 0), 0));
    let leaving = -1;
    let step = Infinity;
    for (let at = 0; at < many; at += 1) {
      const move = moves[at] ?? 0;
      const reach = (times[at] ?? 0) / move;
      if (move > HAIR && reach < step) [leaving, step] = [at, reach];
    }
    if (leaving < 0) return null;
    const pivot = moves[leaving] ?? 1;
    const pivotRow = (inverse[leaving] ?? []).map((cell) => cell / pivot);
    for (let at = 0; at < many; at += 1) {
      const move = moves[at] ?? 0;
      times[at] = at === leaving ? step : (times[at] ?? 0) - step * move;
      inverse[at] =
        at === leaving ? pivotRow : (inverse[at] ?? []).map((cell, kind) => cell - move * (pivotRow[kind] ?? 0));
    }
    fillings[leaving] = entering;
  }
  return null;
}

/** Looks at so many part fillings for the one worth most; the best so far is taken then. */
const LOOKS = 200_000;

/** The filling worth most at these prices: depth first by worth a length, cut off by what the rest could still bring. */
function bestFilling(lengths: readonly number[], prices: readonly number[], limit: number): number[] {
  const order = lengths
    .map((length, kind) => ({ kind, length, price: prices[kind] ?? 0 }))
    .filter((each) => each.price > HAIR)
    .sort((a, b) => b.price / b.length - a.price / a.length || a.kind - b.kind);
  const now = lengths.map(() => 0);
  let best = [...now];
  let most = 0;
  let looked = 0;
  const add = (at: number, room: number, worth: number): void => {
    looked += 1;
    if (worth > most + HAIR) [best, most] = [[...now], worth];
    const each = order[at];
    if (each === undefined || looked > LOOKS || worth + (room * each.price) / each.length <= most + HAIR) return;
    for (let count = wholeTimes(room, each.length); count >= 0; count -= 1) {
      now[each.kind] = count;
      add(at + 1, room - count * each.length, worth + count * each.price);
    }
    now[each.kind] = 0;
  };
  add(0, limit, 0);
  return best;
}
