/** The part of a task that falls to one dye lot: some sets, and the cloth of the lot; and its layout as part of the whole. */
import type { Layout } from './layout.ts';
import type { Row } from './rows.ts';
import type { Kind, Task } from './task.ts';

export interface LotTask {
  readonly task: Task;
  /** A layout of the part, on the whole's stretches with the whole's kinds. */
  readonly lift: (layout: Layout) => Layout;
}

/** Within one lot sets no longer matter: cuts alike but for their set are of one kind. */
export function taskOfLot(task: Task, lot: number, sets: readonly number[]): LotTask {
  const groups = new Map<string, { kind: Kind; at: number[] }>();
  task.kinds.forEach((kind, at) => {
    if (!sets.includes(kind.set)) return;
    const key = JSON.stringify([kind.phase, kind.side, kind.shapes]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { kind: { ...kind, set: 0 }, at: kind.ids.map(() => at) });
    else {
      group.kind = { ...group.kind, ids: [...group.kind.ids, ...kind.ids] };
      group.at.push(...kind.ids.map(() => at));
    }
  });
  const kinds = [...groups.values()];
  const reelAt = task.reels.flatMap((reel, at) => (reel.lot === lot ? [at] : []));
  const stretchAt = task.stretches.flatMap((stretch, at) => (reelAt.includes(stretch.reel) ? [at] : []));
  return {
    task: {
      ...task,
      kinds: kinds.map((each) => each.kind),
      reels: reelAt.flatMap((at) => (task.reels[at] ? [{ ...task.reels[at], lot: 0 }] : [])),
      stretches: stretchAt.flatMap((at) => {
        const stretch = task.stretches[at];
        return stretch === undefined ? [] : [{ ...stretch, reel: reelAt.indexOf(stretch.reel) }];
      }),
      lots: 1,
      setLots: [null],
    },
    lift: (layout) => {
      const used = kinds.map(() => 0);
      const kindOf = (own: number): number => {
        const nth = used[own] ?? 0;
        used[own] = nth + 1;
        return kinds[own]?.at[nth] ?? 0;
      };
      const liftRow = (row: Row): Row => ({
        ...row,
        columns: row.columns.map((column) => ({
          ...column,
          run: column.run.map((lain) => ({ ...lain, kind: kindOf(lain.kind) })),
        })),
      });
      const whole: (readonly Row[])[] = task.stretches.map(() => []);
      stretchAt.forEach((at, index) => (whole[at] = (layout[index] ?? []).map(liftRow)));
      return whole;
    },
  };
}
