/**
 * Rows: cuts that lie side by side, cut off the bolt by one straight cut across. A whole width is a row by itself; in any
 * other row narrower cuts lie in columns, and a column may hold several cuts one after another. So every plan can be cut
 * out as a workroom does it: straight across, then along, then across.
 */
import { nextPosition, placeAfter } from './repeat-circle.ts';
import type { Stretch, Task } from './task.ts';

export interface Lain {
  readonly kind: number;
  readonly shape: number;
}

export interface Column {
  readonly across: number;
  readonly side: 'left' | 'right' | null;
  readonly run: readonly Lain[];
}

export interface Row {
  /** One column of each side at most. */
  readonly columns: readonly Column[];
  readonly across: number;
}

/** A cut in its place on a stretch. */
export interface Placed extends Lain {
  readonly at: number;
  readonly x: number;
}

export function makeRow(columns: readonly Column[]): Row {
  return { columns, across: columns.reduce((sum, column) => sum + column.across, 0) };
}

export function columnOf(task: Task, run: readonly Lain[]): Column {
  let across = 0;
  let side: Column['side'] = null;
  for (const lain of run) {
    const kind = task.kinds[lain.kind];
    across = Math.max(across, kind?.shapes[lain.shape]?.across ?? 0);
    side = side ?? kind?.side ?? null;
  }
  return { across, side, run };
}

/** Where a column ends that starts at `from` or later; `start` is the place in the repeat at position 0. */
export function columnEnd(task: Task, run: readonly Lain[], from: number, start: number): number {
  let end = from;
  for (const lain of run) {
    const kind = task.kinds[lain.kind];
    end = nextPosition(end, kind?.phase ?? -1, start, task.size) + (kind?.shapes[lain.shape]?.length ?? 0);
  }
  return end;
}

export function rowEnd(task: Task, row: Row, from: number, start: number): number {
  let end = from;
  for (const column of row.columns) end = Math.max(end, columnEnd(task, column.run, from, start));
  return end;
}

/**
 * The row as one run for sequencing. It can start at the place of any of its columns; the one from which it is shortest
 * is taken, which is exact for columns that start alike. Without any place: phase -1.
 */
export function runOfRow(task: Task, row: Row): { readonly phase: number; readonly length: number } {
  let best: { phase: number; length: number } | null = null;
  for (const column of row.columns) {
    const phase = lockOf(task, column);
    if (phase < 0) continue;
    const length = rowEnd(task, row, 0, phase);
    if (best === null || length < best.length || (length === best.length && phase < best.phase))
      best = { phase, length };
  }
  return best ?? { phase: -1, length: rowEnd(task, row, 0, 0) };
}

/** The place at which a column must start so that nothing of it waits; -1: anywhere. */
function lockOf(task: Task, column: Column): number {
  let before = 0;
  for (const lain of column.run) {
    const kind = task.kinds[lain.kind];
    if (kind !== undefined && kind.phase >= 0) return placeAfter(kind.phase, -before, task.size);
    before += kind?.shapes[lain.shape]?.length ?? 0;
  }
  return -1;
}

export function fitsAcross(row: Row, stretch: Stretch): boolean {
  return row.across <= stretch.width && row.columns.every((column) => fitsSide(column, stretch));
}

export function fitsSide(column: Column, stretch: Stretch): boolean {
  if (column.side === null) return true;
  return column.side === 'left' ? stretch.left : stretch.right;
}

/**
 * The rows in their order from the stretch's start: every cut at the first right place, the left column along the left
 * edge, the right one along the right edge, the others between them. `start`: the place at the reel's own start.
 */
export function placeRows(
  task: Task,
  rows: readonly Row[],
  stretch: Stretch,
): { readonly placed: readonly Placed[]; readonly end: number; readonly start: number } {
  const placed: Placed[] = [];
  const start = task.size === 0 ? 0 : placeAfter(stretch.start ?? bestStart(task, rows), -stretch.from, task.size);
  let end = stretch.from;
  for (const row of rows) {
    let x = stretch.x + (row.columns.find((column) => column.side === 'left')?.across ?? 0);
    let next = end;
    for (const column of row.columns) {
      let left = x;
      if (column.side === 'left') left = stretch.x;
      else if (column.side === 'right') left = stretch.x + stretch.width - column.across;
      else x += column.across;
      let at = end;
      for (const lain of column.run) {
        const kind = task.kinds[lain.kind];
        const shape = kind?.shapes[lain.shape];
        at = nextPosition(at, kind?.phase ?? -1, start, task.size);
        const inset = column.side === 'right' ? column.across - (shape?.across ?? 0) : 0;
        placed.push({ ...lain, at, x: left + inset });
        at += shape?.length ?? 0;
      }
      next = Math.max(next, at);
    }
    end = next;
  }
  return { placed, end, start };
}

/**
 * Where a bolt that may start anywhere best starts for rows in this order. Only the first row with a place to keep decides:
 * its end steps at the places of its columns alone, so one of these is best.
 */
function bestStart(task: Task, rows: readonly Row[]): number {
  let before = 0;
  for (const row of rows) {
    const locks = row.columns.map((column) => lockOf(task, column)).filter((lock) => lock >= 0);
    if (locks.length === 0) {
      before += rowEnd(task, row, 0, 0);
      continue;
    }
    const starts = locks.map((lock) => placeAfter(lock, -before, task.size));
    const ends = starts.map((start) => rows.reduce((end, each) => rowEnd(task, each, end, start), 0));
    return starts[ends.indexOf(Math.min(...ends))] ?? 0;
  }
  return 0;
}
