/** A layout: which rows lie on which stretch, in order; and what it costs. */
import { upToStep } from './round-plan.ts';
import type { Row } from './rows.ts';
import { placeRows } from './rows.ts';
import type { Reel, Task } from './task.ts';

/** Rows of each stretch of the task, from its start. */
export type Layout = readonly (readonly Row[])[];

export interface Cost {
  /** Length of the cuts that found no place. */
  readonly unlaid: number;
  readonly ordered: number;
  /** To the last cuts' ends on the bolts: decides between layouts that order the same. */
  readonly used: number;
}

/** What is bought of a reel of which so much is used: up to its step, at most the whole; nothing of a remnant. */
export function orderedOf(reel: Reel, used: number): number {
  return reel.kind === 'remnant' ? 0 : Math.min(reel.whole, upToStep(used, reel.step));
}

/** Sold whole or not at all. */
export function isSoldWhole(reel: Reel): boolean {
  return reel.kind === 'bolt' && reel.whole < Infinity && orderedOf(reel, 1) === reel.whole;
}

export function isLess(a: Cost, b: Cost): boolean {
  if (a.unlaid !== b.unlaid) return a.unlaid < b.unlaid;
  return a.ordered !== b.ordered ? a.ordered < b.ordered : a.used < b.used;
}

/** Ends of the reels under a layout; Infinity where a stretch is overrun. */
export function reelEnds(task: Task, layout: Layout): number[] {
  const ends = task.reels.map((reel) => reel.base);
  task.stretches.forEach((stretch, index) => {
    const rows = layout[index] ?? [];
    if (rows.length === 0) return;
    const { end } = placeRows(task, rows, stretch);
    ends[stretch.reel] = Math.max(ends[stretch.reel] ?? 0, end > stretch.to ? Infinity : end);
  });
  return ends;
}

export function costOf(task: Task, layout: Layout): Cost {
  let total = 0;
  for (const kind of task.kinds) total += kind.ids.length * (kind.shapes[0]?.length ?? 0);
  let laid = 0;
  for (const rows of layout)
    for (const row of rows)
      for (const column of row.columns)
        for (const lain of column.run) laid += task.kinds[lain.kind]?.shapes[0]?.length ?? 0;
  let ordered = 0;
  let used = 0;
  reelEnds(task, layout).forEach((end, index) => {
    const reel = task.reels[index];
    if (reel === undefined) return;
    ordered += orderedOf(reel, end);
    used += reel.kind === 'bolt' ? end : 0;
  });
  return { unlaid: total - laid, ordered, used };
}

/** What the cuts that lie fast make one buy whatever the rest does. */
export function baseOrder(task: Task): number {
  return task.reels.reduce((sum, reel) => sum + orderedOf(reel, reel.base), 0);
}
