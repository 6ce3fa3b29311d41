/** Exactly shares out a collection of cuts: over the stretches of a bolt, the bolts of a dye lot, and the dye lots. */
import type { CountCode } from './count-code.ts';
import type { Reel, Task } from './task.ts';

/** For each collection the least cost, the cloth used, and the part that the last of those sharing takes. */
interface Table {
  readonly cost: Float64Array;
  readonly used: Float64Array;
  readonly part: Int32Array;
}

function emptyTable(size: number): Table {
  const table = {
    cost: new Float64Array(size).fill(Infinity),
    used: new Float64Array(size).fill(Infinity),
    part: new Int32Array(size),
  };
  table.cost[0] = 0;
  table.used[0] = 0;
  return table;
}

/**
 * Which collection goes on which stretch, by least order and then least use; null when they cannot all be laid.
 * `ends`: where each collection ends on each stretch (Infinity: it does not fit).
 */
export function shareOut(
  task: Task,
  code: CountCode,
  ends: readonly Float64Array[],
  orderedOf: (reel: Reel, used: number) => number,
): number[] | null {
  const parts = Array.from({ length: code.size }, (_, at) => code.parts(at));
  const shares = task.stretches.map(() => 0);
  const lots = Array.from({ length: task.lots }, (_, lot) => lot);
  const byLot = lots.map((lot) => {
    const reels = task.reels.flatMap((reel, index) => (reel.lot === lot ? [{ reel, index }] : []));
    const bolts = reels.map(({ reel, index }) => {
      const own = task.stretches.flatMap((stretch, at) => (stretch.reel === index ? [at] : []));
      return { own, ...shareBolt(reel, own, code, ends, parts, orderedOf) };
    });
    const tables = bolts.reduce<Table[]>(
      (done, bolt) => [...done, addShare(done.at(-1) ?? emptyTable(code.size), bolt.total, code, parts)],
      [],
    );
    return { bolts, tables };
  });
  const bySet = shareSets(
    task,
    code,
    byLot.map((lot) => lot.tables.at(-1) ?? emptyTable(code.size)),
  );
  if (bySet === null) return null;
  byLot.forEach((lot, index) => {
    let rest = bySet[index] ?? 0;
    for (let at = lot.bolts.length - 1; at >= 0; at -= 1) {
      let part = lot.tables[at]?.part[rest] ?? 0;
      rest -= part;
      const bolt = lot.bolts[at];
      for (let last = (bolt?.own.length ?? 0) - 1; last >= 0; last -= 1) {
        const own = bolt?.steps[last]?.[part] ?? 0;
        shares[bolt?.own[last] ?? 0] = own;
        part -= own;
      }
    }
  });
  return shares;
}

/** One bolt: where each collection ends on it, over all its stretches; `steps` tells the part of each stretch. */
function shareBolt(
  reel: Reel,
  own: readonly number[],
  code: CountCode,
  ends: readonly Float64Array[],
  parts: readonly (readonly number[])[],
  orderedOf: (reel: Reel, used: number) => number,
): { total: Table; steps: Int32Array[] } {
  let end = new Float64Array(code.size).fill(Infinity);
  end[0] = reel.base;
  const steps: Int32Array[] = [];
  for (const stretch of own) {
    const next = end.slice();
    const step = new Int32Array(code.size);
    for (let at = 1; at < code.size; at += 1)
      for (const part of parts[at] ?? []) {
        const so = part === 0 ? Infinity : Math.max(ends[stretch]?.[part] ?? Infinity, end[at - part] ?? Infinity);
        if (so < (next[at] ?? Infinity)) {
          next[at] = so;
          step[at] = part;
        }
      }
    end = next;
    steps.push(step);
  }
  const total = emptyTable(code.size);
  for (let at = 0; at < code.size; at += 1) {
    const used = end[at] ?? Infinity;
    total.cost[at] = used === Infinity ? Infinity : orderedOf(reel, used);
    total.used[at] = reel.kind === 'remnant' && used < Infinity ? 0 : used;
  }
  return { total, steps };
}

function addShare(done: Table, bolt: Table, code: CountCode, parts: readonly (readonly number[])[]): Table {
  const sum = emptyTable(code.size);
  for (let at = 0; at < code.size; at += 1) {
    sum.cost[at] = Infinity;
    sum.used[at] = Infinity;
    for (const part of parts[at] ?? []) {
      const cost = (done.cost[at - part] ?? Infinity) + (bolt.cost[part] ?? Infinity);
      const used = (done.used[at - part] ?? Infinity) + (bolt.used[part] ?? Infinity);
      const best = sum.cost[at] ?? Infinity;
      if (cost < best || (cost === best && cost < Infinity && used < (sum.used[at] ?? Infinity))) {
        sum.cost[at] = cost;
        sum.used[at] = used;
        sum.part[at] = part;
      }
    }
  }
  return sum;
}

/** Whole sets over the dye lots; the collection of each lot. */
function shareSets(task: Task, code: CountCode, lots: readonly Table[]): number[] | null {
  const sets = [...new Set(task.kinds.map((kind) => kind.set))];
  const codes = sets.map((set) =>
    task.kinds.reduce((sum, kind, index) => sum + (kind.set === set ? kind.ids.length * code.stride(index) : 0), 0),
  );
  let best: { cost: number; used: number; of: number[] } | null = null;
  const total = lots.map(() => 0);
  const place = (at: number): void => {
    const set = sets[at];
    if (set === undefined) {
      const cost = total.reduce((sum, part, lot) => sum + (lots[lot]?.cost[part] ?? Infinity), 0);
      const used = total.reduce((sum, part, lot) => sum + (lots[lot]?.used[part] ?? Infinity), 0);
      if (cost < (best?.cost ?? Infinity) || (cost === best?.cost && used < best.used))
        best = { cost, used, of: [...total] };
      return;
    }
    for (let lot = 0; lot < lots.length; lot += 1) {
      const must = task.setLots[set];
      if (must !== null && must !== undefined && must !== lot) continue;
      total[lot] = (total[lot] ?? 0) + (codes[at] ?? 0);
      place(at + 1);
      total[lot] = (total[lot] ?? 0) - (codes[at] ?? 0);
    }
  };
  place(0);
  return (best as { of: number[] } | null)?.of ?? null;
}
