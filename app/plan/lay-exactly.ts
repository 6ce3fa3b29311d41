/**
 * Few cuts: the best layout of all, by dynamic programming over collections of cuts.
 *
 * Proof. On one stretch a row laid from position p ends at F(p), and F never falls as p grows (one can always wait). So
 * among all ways to lay a collection on a stretch the one that ends first is never worse, whatever is laid behind it:
 * reach(S) = least over the last row T of F_T(reach(S - T)) is exact. A bolt's end, then its order, follow from the
 * stretches that are used; bolts of one dye lot share out a collection in every way, dye lots share out whole sets in every
 * way. Every plan made of rows is among those compared.
 */
import type { CountCode } from './count-code.ts';
import { makeCountCode } from './count-code.ts';
import type { Layout } from './layout.ts';
import { orderedOf } from './layout.ts';
import { placeAfter } from './repeat-circle.ts';
import type { CatalogRow, ColumnRun } from './row-catalog.ts';
import { listRows } from './row-catalog.ts';
import { makeRow } from './rows.ts';
import type { Row } from './rows.ts';
import { shareOut } from './share-out.ts';
import type { Stretch, Task } from './task.ts';

export interface ExactLimits {
  /** Collections of cuts. */
  readonly states: number;
  /** Columns and rows to look at. */
  readonly rows: number;
  /** Steps of the whole. */
  readonly steps: number;
}

/** Where each collection ends on one stretch, and how to lay it. */
interface Reach {
  readonly end: Float64Array;
  readonly rowsOf: (code: number) => Row[];
}

/** The best layout; null when it would take too long, `undefined` when the cuts cannot all be laid. */
export function layExactly(task: Task, limits: ExactLimits): { layout: Layout; steps: number } | null | undefined {
  const counts = task.kinds.map((kind) => kind.ids.length);
  const code = makeCountCode(counts, limits.states);
  if (code === null) return null;
  const pairs = counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);
  if (pairs * task.stretches.length > limits.steps) return null;
  const rows = listRows(task, code, limits.rows);
  if (rows === null) return null;
  const starts = listStarts(task, code);
  const tries = task.stretches.reduce((sum, each) => sum + (each.start === null ? starts.length : 1), 0);
  if (rows.length * code.size * tries > limits.steps * 4) return null;
  const reaches = task.stretches.map((stretch) => reachOf(task, stretch, rows, code, starts));
  const shares = shareOut(
    task,
    code,
    reaches.map((reach) => reach.end),
    (reel, used) => orderedOf(reel, used),
  );
  if (shares === null) return undefined;
  return { layout: reaches.map((reach, index) => reach.rowsOf(shares[index] ?? 0)), steps: rows.length + code.size };
}

/**
 * Where a bolt that may start anywhere has to start: at a place right for its first cut, or so far before one as cuts
 * without a place take up.
 */
function listStarts(task: Task, code: CountCode): number[] {
  if (task.size === 0) return [0];
  const free = task.kinds.map((kind) => kind.phase < 0);
  const before = new Set<number>([0]);
  if (free.includes(true)) {
    for (const kind of task.kinds.filter((each) => each.phase < 0))
      for (const shape of kind.shapes)
        for (const so of [...before])
          for (let many = 1; many <= kind.ids.length && before.size < 200; many += 1)
            before.add((so + many * shape.length) % task.size);
  }
  const starts = new Set<number>();
  for (const kind of task.kinds)
    if (kind.phase >= 0) for (const so of before) starts.add(placeAfter(kind.phase, -so, task.size));
  if (starts.size === 0 || code.size === 1) starts.add(0);
  return [...starts].sort((a, b) => a - b);
}

function reachOf(
  task: Task,
  stretch: Stretch,
  catalog: readonly CatalogRow[],
  code: CountCode,
  starts: readonly number[],
): Reach {
  const rows = catalog.filter(
    (row) => row.across <= stretch.width && (!row.left || stretch.left) && (!row.right || stretch.right),
  );
  const tries = (stretch.start === null ? starts : [stretch.start]).map((start) =>
    reachFrom(task, stretch, rows, code, start),
  );
  const [first] = tries;
  if (first !== undefined && tries.length === 1) return first;
  const end = Float64Array.from({ length: code.size }, (_, at) => Math.min(...tries.map((each) => each.end[at] ?? 0)));
  return { end, rowsOf: (at) => tries.find((each) => each.end[at] === end[at])?.rowsOf(at) ?? [] };
}

function reachFrom(task: Task, stretch: Stretch, rows: readonly CatalogRow[], code: CountCode, start: number): Reach {
  const { size } = task;
  const end = new Float64Array(code.size).fill(Infinity);
  const last = new Int32Array(code.size).fill(-1);
  const origin = size === 0 ? 0 : placeAfter(start, -stretch.from, size);
  end[0] = stretch.from;
  for (let at = 0; at < code.size; at += 1) {
    const from = end[at] ?? Infinity;
    if (from === Infinity) continue;
    const place = size === 0 ? 0 : placeAfter(origin, from, size);
    rows.forEach((row, index) => {
      if (!code.fits(at, row.code)) return;
      let to = from;
      for (const column of row.columns) {
        const so = from + bestRun(column, place, size).length;
        if (so > to) to = so;
      }
      const total = at + row.code;
      if (to <= stretch.to && to < (end[total] ?? Infinity)) {
        end[total] = to;
        last[total] = index;
      }
    });
  }
  const rowsOf = (whole: number): Row[] => {
    const found: Row[] = [];
    for (let at = whole; at > 0;) {
      const row = rows[last[at] ?? -1];
      if (row === undefined) throw new Error('a collection of cuts without a row');
      at -= row.code;
      const place = size === 0 ? 0 : placeAfter(origin, end[at] ?? 0, size);
      found.push(makeRow(row.columns.map((column) => bestRun(column, place, size).run.column)));
    }
    return found.reverse();
  };
  return { end, rowsOf };
}

/** The run of a column that ends first from a place. */
function bestRun(column: readonly ColumnRun[], place: number, size: number): { length: number; run: ColumnRun } {
  let best: { length: number; run: ColumnRun } | null = null;
  for (const run of column) {
    const wait = run.lock < 0 ? 0 : placeAfter(run.lock, -place, size);
    if (best === null || wait + run.length < best.length) best = { length: wait + run.length, run };
  }
  if (best === null) throw new Error('a column without a run');
  return best;
}
