/**
 * Shares units out over the stretches of one dye lot: best fit first, then annealing from several starts, and on choices of
 * the bolts that are sold whole, until the bound is met or the budget is spent.
 */
import type { Packing, State } from './anneal-units.ts';
import { annealUnits, isDone, packingOf } from './anneal-units.ts';
import { leastUse } from './bound-plan.ts';
import { isLess, isSoldWhole } from './layout.ts';
import type { Meter } from './meter.ts';
import { makeStream } from './seeded.ts';
import type { Task } from './task.ts';
import { makeTally } from './tally.ts';
import type { Board } from './unit-board.ts';

/** The search begins anew so often, each time with this share of what is left. */
const ROUNDS = [0.15, 0.25, 0.35, 0.5, 1] as const;
/** The most choices of whole bolts to buy that are tried. */
const CHOICES = 24;
/** Of what a round has left, each choice gets at least this: the cheapest first. */
const CHOICE_SHARE = 0.25;
/** `goal`: an order that no packing can beat, so that the search may stop there. A goal of Infinity is a quick look. */
export function packUnits(task: Task, board: Board, goal: number, meter: Meter, seed = 0): Packing {
  const open = board.stretches.map(() => true);
  const first = fillBestFit(task, board, open, byLength(board), meter);
  let best = packingOf(board, first);
  if (board.stretches.length === 0 || goal === Infinity || isDone(best, goal)) return best;
  if (board.stretches.length === 1 && best.cost.unlaid === 0) return best;
  const everything: BoltChoice = { open, cost: 0, least: 0 };
  const choices = [everything, ...chooseBolts(task, board)];
  for (const [number, part] of ROUNDS.entries()) {
    const round = meter.share(part);
    for (const [rank, choice] of choices.entries()) {
      const isDear = best.cost.unlaid === 0 && rank > 0 && choice.cost >= best.cost.ordered;
      if (round.isOver() || isDone(best, goal) || isDear) break;
      const key = number === 0 ? byLength(board) : shuffledBy(number);
      const state = fillBestFit(task, board, choice.open, key, meter);
      const share = round.share(Math.max(CHOICE_SHARE, 1 / (choices.length - rank)));
      const found = annealUnits(
        task,
        board,
        choice.open,
        state,
        Math.max(goal, choice.least),
        number + 101 * seed,
        share,
      );
      if (isLess(found.cost, best.cost)) best = found;
    }
  }
  return best;
}

function byLength(board: Board): (unit: number) => number {
  return (unit) => -(board.units[unit]?.length ?? 0);
}

interface BoltChoice {
  readonly open: readonly boolean[];
  /** What the whole bolts that are open cost. */
  readonly cost: number;
  /** The same where nothing else is sold: no layout on them costs less; else 0. */
  readonly least: number;
}

/** Which of the bolts that are sold whole to buy: choices that could hold everything, cheapest first; equal bolts count once. */
function chooseBolts(task: Task, board: Board): BoltChoice[] {
  const reelOf = (at: number): number => task.stretches[board.stretches[at] ?? -1]?.reel ?? -1;
  const reels = [...new Set(board.stretches.map((_, at) => reelOf(at)))];
  const whole = reels.filter((index) => {
    const reel = task.reels[index];
    return reel !== undefined && reel.base === 0 && isSoldWhole(reel);
  });
  if (whole.length < 2) return [];
  const nameOf = (index: number): string => `${task.reels[index]?.whole ?? 0}/${task.reels[index]?.start ?? ''}`;
  let choices: number[][] = [[]];
  for (const index of whole) {
    const twins = whole.filter((other) => other < index && nameOf(other) === nameOf(index));
    choices = choices.flatMap((so) => (twins.every((twin) => so.includes(twin)) ? [so, [...so, index]] : [so]));
    if (choices.length > 2_000) return [];
  }
  const sold = reels.filter((index) => task.reels[index]?.kind === 'bolt').length;
  return choices
    .map((bought) => {
      const open = board.stretches.map((_, at) => !whole.includes(reelOf(at)) || bought.includes(reelOf(at)));
      const cost = bought.reduce((sum, index) => sum + (task.reels[index]?.whole ?? 0), 0);
      return { open, cost, least: whole.length === sold ? cost : 0 };
    })
    .filter(({ open }) => {
      const stretches = board.stretches.flatMap((each, at) => (open[at] === true ? (task.stretches[each] ?? []) : []));
      return leastUse(task, stretches, 1) < Infinity;
    })
    .sort((a, b) => a.cost - b.cost)
    .slice(0, CHOICES);
}

function shuffledBy(seed: number): (unit: number) => number {
  const next = makeStream(seed * 7919);
  const keys: number[] = [];
  return (unit) => {
    while (keys.length <= unit) keys.push(next());
    return keys[unit] ?? 0;
  };
}

/** Each unit where it adds least to the order, then to the use; full stretches before empty ones. */
function fillBestFit(
  task: Task,
  board: Board,
  open: readonly boolean[],
  key: (unit: number) => number,
  meter: Meter,
): State {
  const many = board.stretches.length;
  const counts = Array.from({ length: many + 1 }, () => board.units.map(() => 0));
  const tally = makeTally(task, board);
  const order = board.units.map((_, unit) => unit).sort((a, b) => key(a) - key(b) || a - b);
  for (const unit of order) {
    let left = board.units[unit]?.rows.length ?? 0;
    for (; left > 0; left -= 1) {
      let best: { at: number; end: number; ordered: number; used: number } | null = null;
      for (let at = 0; at < many; at += 1) {
        const here = counts[at];
        if (here === undefined || open[at] !== true || !board.fits(unit, at)) continue;
        meter.count();
        here[unit] = (here[unit] ?? 0) + 1;
        const end = board.measure(here, at);
        here[unit] = (here[unit] ?? 0) - 1;
        if (end === Infinity) continue;
        const before = tally.endOf(at);
        tally.setEnd(at, end);
        const [ordered, used] = [tally.ordered(), tally.used()];
        tally.setEnd(at, before);
        if (best === null || ordered < best.ordered || (ordered === best.ordered && used < best.used))
          best = { at, end, ordered, used };
      }
      if (best === null) break;
      const here = counts[best.at];
      if (here !== undefined) here[unit] = (here[unit] ?? 0) + 1;
      tally.setEnd(best.at, best.end);
    }
    const pool = counts[many];
    if (pool !== undefined) pool[unit] = left;
  }
  return { counts, tally };
}
