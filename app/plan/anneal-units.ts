/** Moves and swaps units between stretches, taken when they help, and now and then when they do not (annealing). */
import type { Cost } from './layout.ts';
import { isLess, isSoldWhole } from './layout.ts';
import type { Meter } from './meter.ts';
import { pickBelow } from './round-plan.ts';
import { makeStream } from './seeded.ts';
import type { Tally } from './tally.ts';
import type { Task } from './task.ts';
import type { Board } from './unit-board.ts';

export interface State {
  /** Units on each stretch; the last is the pool of those without a place. */
  readonly counts: number[][];
  readonly tally: Tally;
}

export interface Packing {
  readonly counts: readonly (readonly number[])[];
  readonly cost: Cost;
}

/** Cloth used, and the unevenness of bolts (more where they are sold whole), are weighed beside cloth ordered. */
const USED_WEIGHT = 0.4;
const UNEVEN_WEIGHT = 0.005;
const UNEVEN_WHOLE_WEIGHT = 0.03;
const UNLAID_WEIGHT = 8;
/** How much longer a layout may at first become, as a share of a unit's mean length. */
const FIRST_HEAT = 0.1;

export function packingOf(board: Board, state: State): Packing {
  const counts = state.counts.slice(0, board.stretches.length).map((each) => [...each]);
  return { counts, cost: costOfState(board, state) };
}

export function isDone(packing: Packing, goal: number): boolean {
  return packing.cost.unlaid === 0 && packing.cost.ordered <= goal;
}

function costOfState(board: Board, state: State): Cost {
  return {
    unlaid: poolLength(board, state.counts),
    ordered: state.tally.ordered(),
    used: state.tally.used(),
  };
}

function poolLength(board: Board, counts: readonly (readonly number[])[]): number {
  const pool = counts[board.stretches.length] ?? [];
  return pool.reduce((sum, many, unit) => sum + many * (board.units[unit]?.length ?? 0), 0);
}

/** The best packing met on the way from a state, which is used up; only stretches that are `open` take units. */
export function annealUnits(
  task: Task,
  board: Board,
  open: readonly boolean[],
  state: State,
  goal: number,
  seed: number,
  meter: Meter,
): Packing {
  const { counts, tally } = state;
  const many = board.stretches.length;
  const next = makeStream(seed + 17);
  const longest = task.stretches.reduce((most, each) => Math.max(most, each.to === Infinity ? 0 : each.to), 1);
  const weights = board.stretches.map((each) => {
    const reel = task.reels[task.stretches[each]?.reel ?? -1];
    return (reel !== undefined && isSoldWhole(reel) ? UNEVEN_WHOLE_WEIGHT : UNEVEN_WEIGHT) / longest;
  });
  const froms = board.stretches.map((each) => task.stretches[each]?.from ?? 0);
  const mean = board.units.reduce((sum, unit) => sum + unit.length, 0) / Math.max(1, board.units.length);
  const lengthOf = (unit: number): number => board.units[unit]?.length ?? 0;
  const unevenAt = (at: number): number => {
    const filled = tally.endOf(at) - (froms[at] ?? 0);
    return at < many ? filled * filled * (weights[at] ?? 0) : 0;
  };
  const pickUnit = (at: number): number => {
    const own = counts[at] ?? [];
    const off = pickBelow(next(), own.length);
    for (let so = 0; so < own.length; so += 1) {
      const unit = (off + so) % own.length;
      if ((own[unit] ?? 0) > 0) return unit;
    }
    return -1;
  };
  const put = (at: number, unit: number, count: number): void => {
    const own = counts[at];
    if (own !== undefined && unit >= 0) own[unit] = (own[unit] ?? 0) + count;
  };
  const swap = (a: number, out: number, b: number, back: number): void => {
    put(a, out, -1);
    put(b, out, 1);
    put(b, back, -1);
    put(a, back, 1);
  };
  const endAt = (at: number): number => (at < many ? board.measure(counts[at] ?? [], at) : 0);
  const fits = (unit: number, at: number): boolean =>
    unit < 0 || at === many || (open[at] === true && board.fits(unit, at));
  const setEnds = (a: number, endA: number, b: number, endB: number): void => {
    if (a < many) tally.setEnd(a, endA);
    tally.setEnd(b, endB);
  };

  let unlaid = poolLength(board, counts);
  let best = packingOf(board, state);
  const firstStep = meter.steps();
  const room = Math.max(1, meter.left());
  while (!meter.isOver()) {
    meter.count();
    const left = 1 - Math.min(1, (meter.steps() - firstStep) / room);
    const heat = mean * FIRST_HEAT * left * left + 1e-9;
    const a = pickBelow(next(), many + 1);
    const b = pickBelow(next(), many);
    if (a === b) continue;
    const out = pickUnit(a);
    if (out < 0) continue;
    const back = next() < 0.5 ? pickUnit(b) : -1;
    if (!fits(out, b) || !fits(back, a) || out === back) continue;
    swap(a, out, b, back);
    const [endA, endB] = [endAt(a), endAt(b)];
    let taken = false;
    if (endA < Infinity && endB < Infinity) {
      const [beforeA, beforeB] = [tally.endOf(a), tally.endOf(b)];
      const before = tally.ordered() + USED_WEIGHT * tally.used() - unevenAt(a) - unevenAt(b);
      setEnds(a, endA, b, endB);
      const pooled = a === many ? (back < 0 ? 0 : lengthOf(back)) - lengthOf(out) : 0;
      const change =
        tally.ordered() + USED_WEIGHT * tally.used() - unevenAt(a) - unevenAt(b) - before + UNLAID_WEIGHT * pooled;
      taken = change <= 0 || next() < Math.exp(-change / heat);
      if (taken) unlaid += pooled;
      else setEnds(a, beforeA, b, beforeB);
    }
    if (!taken) {
      swap(b, out, a, back);
      continue;
    }
    const cost = { unlaid, ordered: tally.ordered(), used: tally.used() };
    if (isLess(cost, best.cost)) best = packingOf(board, state);
    if (isDone(best, goal)) return best;
  }
  return best;
}
