/**
 * Every row that the given cuts can form, for exact search: columns of the narrower cuts in every order that is not beaten
 * by another order from every starting place, and all ways to set such columns side by side.
 */
import { forward } from './repeat-circle.ts';
import type { Column, Lain } from './rows.ts';
import { columnOf } from './rows.ts';
import type { Task } from './task.ts';
import type { CountCode } from './count-code.ts';

/** A column that must start at `lock` (-1: anywhere) and is `length` long from there. */
export interface ColumnRun {
  readonly lock: number;
  readonly length: number;
  readonly column: Column;
}

export interface CatalogRow {
  readonly code: number;
  /** For each column its runs: at any place the best of them is taken. */
  readonly columns: readonly (readonly ColumnRun[])[];
  readonly across: number;
  readonly left: boolean;
  readonly right: boolean;
}

/** Null when there are more than `limit` combinations to look at. */
export function listRows(task: Task, code: CountCode, limit: number): CatalogRow[] | null {
  const runs = listColumns(task, code, limit);
  if (runs === null) return null;
  const rows: CatalogRow[] = [];
  const singles = runs.filter(([, each]) => each.some((run) => run.column.run.length === 1));
  for (const [at, each] of singles)
    for (const run of each)
      if (run.column.run.length === 1)
        rows.push({ code: at, columns: [[run]], across: run.column.across, ...sidesOf([run.column]) });
  const narrow = runs.flatMap(([at, each]) =>
    [...new Set(each.map((run) => run.column.across))]
      .filter((across) => across < task.width)
      .map((across) => ({
        at,
        runs: each.filter((run) => run.column.across <= across),
        across,
        side: each[0]?.column.side ?? null,
      })),
  );
  let looked = 0;
  const extend = (from: number, total: number, across: number, picked: number[]): boolean => {
    for (let index = from; index < narrow.length; index += 1) {
      looked += 1;
      if (looked > limit) return false;
      const column = narrow[index];
      if (column === undefined || across + column.across > task.width) continue;
      if (!code.fits(total, column.at)) continue;
      if (column.side !== null && picked.some((each) => narrow[each]?.side === column.side)) continue;
      const now = [...picked, index];
      const both = now.flatMap((each) => narrow[each] ?? []);
      if (now.length > 1)
        rows.push({
          code: total + column.at,
          columns: both.map((each) => each.runs),
          across: across + column.across,
          left: both.some((each) => each.side === 'left'),
          right: both.some((each) => each.side === 'right'),
        });
      if (!extend(index, total + column.at, across + column.across, now)) return false;
    }
    return true;
  };
  return extend(0, 0, 0, []) ? rows : null;
}

function sidesOf(columns: readonly Column[]): { left: boolean; right: boolean } {
  return {
    left: columns.some((column) => column.side === 'left'),
    right: columns.some((column) => column.side === 'right'),
  };
}

/** For each collection of cuts that can form one column, its runs of which none beats another everywhere. */
function listColumns(task: Task, code: CountCode, limit: number): [number, ColumnRun[]][] | null {
  const byCode = new Map<number, ColumnRun[]>([[0, []]]);
  const pieces = task.kinds.flatMap((kind, index) =>
    kind.shapes.map((shape, at) => ({ kind, index, shape, lain: { kind: index, shape: at } })),
  );
  let looked = 0;
  // Codes grow with every cut added, so that shorter columns are always listed first.
  for (let at = 1; at < code.size; at += 1) {
    const found: ColumnRun[] = [];
    for (const piece of pieces) {
      if (code.digit(at, piece.index) === 0) continue;
      const before = byCode.get(at - code.stride(piece.index));
      if (before === undefined) continue;
      if (before.length === 0 && at !== code.stride(piece.index)) continue;
      for (const run of before.length === 0 ? [null] : before) {
        looked += 1;
        if (looked > limit) return null;
        const next = appendTo(task, run, piece.lain);
        if (next !== null) keepBest(found, next, task.size);
      }
    }
    if (found.length > 0) byCode.set(at, found);
  }
  byCode.delete(0);
  return [...byCode];
}

function appendTo(task: Task, run: ColumnRun | null, lain: Lain): ColumnRun | null {
  const kind = task.kinds[lain.kind];
  const shape = kind?.shapes[lain.shape];
  if (kind === undefined || shape === undefined) return null;
  if (run === null) return { lock: kind.phase, length: shape.length, column: columnOf(task, [lain]) };
  const { column } = run;
  if (column.across === task.width || shape.across === task.width) return null;
  if (column.side !== null && kind.side !== null && column.side !== kind.side) return null;
  const next = columnOf(task, [...column.run, lain]);
  if (kind.phase < 0) return { lock: run.lock, length: run.length + shape.length, column: next };
  if (run.lock < 0) {
    const lock = forward(run.length, kind.phase, task.size);
    return { lock, length: run.length + shape.length, column: next };
  }
  const wait = forward(run.lock + run.length, kind.phase, task.size);
  return { lock: run.lock, length: run.length + wait + shape.length, column: next };
}

/** A run is beaten when another, started at the next place right for that one, still ends no later and is no wider. */
function keepBest(found: ColumnRun[], next: ColumnRun, size: number): void {
  if (found.some((each) => beats(each, next, size))) return;
  for (let index = found.length - 1; index >= 0; index -= 1) {
    const each = found[index];
    if (each !== undefined && beats(next, each, size)) found.splice(index, 1);
  }
  found.push(next);
}

function beats(a: ColumnRun, b: ColumnRun, size: number): boolean {
  if (a.column.across > b.column.across) return false;
  if (a.lock < 0) return a.length <= b.length;
  if (b.lock < 0) return a.length + size - 1 <= b.length;
  return forward(b.lock, a.lock, size) + a.length <= b.length;
}
