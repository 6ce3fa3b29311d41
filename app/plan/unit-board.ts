/** Rows as counted units on the stretches of one dye lot, with the exact length of each stretch: what the search moves on. */
import type { Layout } from './layout.ts';
import { forward } from './repeat-circle.ts';
import type { Row } from './rows.ts';
import { fitsAcross, runOfRow } from './rows.ts';
import { makeSequencer } from './sequence-cuts.ts';
import type { Task } from './task.ts';

/** Rows alike for sequencing. */
export interface Unit {
  readonly phase: number;
  readonly length: number;
  readonly rows: readonly Row[];
}

export interface Board {
  readonly units: readonly Unit[];
  /** The task's stretches that belong to the lot. */
  readonly stretches: readonly number[];
  /** Whether a unit may lie on a stretch of the board at all. */
  readonly fits: (unit: number, stretch: number) => boolean;
  /** Where these units end on a stretch of the board; Infinity when it is overrun. */
  readonly measure: (counts: ArrayLike<number>, stretch: number) => number;
  /** Rows in order for counts on every stretch of the board. */
  readonly layOut: (counts: readonly ArrayLike<number>[]) => Layout;
}

export function groupUnits(task: Task, rows: readonly Row[]): Unit[] {
  const groups = new Map<string, Unit & { rows: Row[] }>();
  for (const row of rows) {
    const { phase, length } = runOfRow(task, row);
    const sides = row.columns.map((column) => column.side ?? '').join('');
    const key = [phase, length, row.across, sides].join('/');
    const group = groups.get(key) ?? { phase, length, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  }
  return [...groups.values()].sort((a, b) => b.length - a.length || a.phase - b.phase);
}

export function makeBoard(task: Task, units: readonly Unit[], stretches: readonly number[]): Board {
  const phased = units.flatMap((unit, index) => (unit.phase >= 0 ? [index] : []));
  const loose = units.flatMap((unit, index) => (unit.phase < 0 ? [index] : []));
  const starts = stretches.flatMap((each) => task.stretches[each]?.start ?? []);
  const sequencer =
    task.size === 0
      ? null
      : makeSequencer(
          phased.flatMap((index) => units[index] ?? []),
          starts,
          task.size,
        );
  const canLie = stretches.map((each) => {
    const stretch = task.stretches[each];
    return units.map((unit) => {
      const [row] = unit.rows;
      return stretch !== undefined && row !== undefined && fitsAcross(row, stretch);
    });
  });
  const own = (counts: ArrayLike<number>, of: readonly number[]): number[] => of.map((index) => counts[index] ?? 0);
  const sum = (counts: ArrayLike<number>, of: readonly number[]): number =>
    of.reduce((total, index) => total + (counts[index] ?? 0) * (units[index]?.length ?? 0), 0);

  /** Loose units go into the waste between the others, largest first, each into the smallest that holds it; the rest last. */
  const fill = (counts: ArrayLike<number>, start: number | null): { order: number[]; length: number } => {
    const order = (sequencer?.bestOrder(own(counts, phased), start) ?? []).map((index) => phased[index] ?? 0);
    const first = units[order[0] ?? -1];
    let place = start ?? first?.phase ?? 0;
    const gaps = order.map((index) => {
      const unit = units[index];
      const wait = forward(place, unit?.phase ?? 0, task.size);
      place = ((unit?.phase ?? 0) + (unit?.length ?? 0)) % task.size;
      return { room: wait, before: index, filled: [] as number[] };
    });
    const tail: number[] = [];
    for (const index of loose)
      for (let many = counts[index] ?? 0; many > 0; many -= 1) {
        const length = units[index]?.length ?? 0;
        const fit = gaps.filter((gap) => gap.room >= length);
        const gap = fit.reduce<(typeof gaps)[number] | null>(
          (best, each) => (best === null || each.room < best.room ? each : best),
          null,
        );
        if (gap === null) tail.push(index);
        else {
          gap.room -= length;
          gap.filled.push(index);
        }
      }
    const waste = sequencer?.leastWaste(own(counts, phased), start) ?? 0;
    const length = sum(counts, phased) + waste + tail.reduce((total, index) => total + (units[index]?.length ?? 0), 0);
    return { order: [...gaps.flatMap((gap) => [...gap.filled, gap.before]), ...tail], length };
  };
  const orderOf = (counts: ArrayLike<number>, start: number | null): number[] => {
    if (task.size === 0) return units.flatMap((_, index) => Array.from({ length: counts[index] ?? 0 }, () => index));
    return fill(counts, start).order;
  };

  return {
    units,
    stretches,
    fits: (unit, stretch) => canLie[stretch]?.[unit] ?? false,
    measure: (counts, at) => {
      const stretch = task.stretches[stretches[at] ?? -1];
      if (stretch === undefined) return Infinity;
      let length = sum(counts, phased);
      if (task.size === 0) length = 0;
      if (sequencer !== null) {
        const isLoose = loose.some((index) => (counts[index] ?? 0) > 0);
        length = isLoose
          ? fill(counts, stretch.start).length
          : length + sequencer.leastWaste(own(counts, phased), stretch.start);
      } else length = sum(counts, loose);
      const end = stretch.from + length;
      return end > stretch.to ? Infinity : end;
    },
    layOut: (counts) => {
      const used = units.map(() => 0);
      const layout: (readonly Row[])[] = task.stretches.map(() => []);
      counts.forEach((each, at) => {
        const stretch = stretches[at] ?? -1;
        layout[stretch] = orderOf(each, task.stretches[stretch]?.start ?? null).flatMap((index) => {
          const row = units[index]?.rows[used[index] ?? 0];
          used[index] = (used[index] ?? 0) + 1;
          return row ?? [];
        });
      });
      return layout;
    },
  };
}
