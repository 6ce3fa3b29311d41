/** Cloth bought and used on the reels of a board, kept up to date as the ends of its stretches change. */
import { orderedOf } from './layout.ts';
import type { Task } from './task.ts';
import type { Board } from './unit-board.ts';

export interface Tally {
  /** Where a stretch of the board ends now: its start when it is empty. */
  readonly endOf: (at: number) => number;
  readonly setEnd: (at: number, end: number) => void;
  readonly ordered: () => number;
  /** On bolts alone. */
  readonly used: () => number;
}

export function makeTally(task: Task, board: Board): Tally {
  const ends = board.stretches.map((each) => task.stretches[each]?.from ?? 0);
  const froms = [...ends];
  const reelAt = board.stretches.map((each) => task.stretches[each]?.reel ?? -1);
  const stretchesOf = task.reels.map((_, reel) => reelAt.flatMap((each, at) => (each === reel ? [at] : [])));
  const onBoard = new Set(reelAt);
  const bought = task.reels.map(() => 0);
  const taken = task.reels.map(() => 0);
  let ordered = 0;
  let used = 0;
  const weigh = (index: number): void => {
    const reel = task.reels[index];
    if (reel === undefined) return;
    let end = reel.base;
    for (const at of stretchesOf[index] ?? []) {
      const so = ends[at] ?? 0;
      if (so > (froms[at] ?? 0) && so > end) end = so;
    }
    ordered -= bought[index] ?? 0;
    used -= taken[index] ?? 0;
    bought[index] = orderedOf(reel, end);
    taken[index] = reel.kind === 'bolt' ? end : 0;
    ordered += bought[index];
    used += taken[index];
  };
  onBoard.forEach(weigh);
  return {
    endOf: (at) => ends[at] ?? 0,
    setEnd: (at, end) => {
      ends[at] = end;
      weigh(reelAt[at] ?? -1);
    },
    ordered: () => ordered,
    used: () => used,
  };
}
