/**
 * Many cuts: ways to set the narrower ones beside one another in rows, from which the search takes the best. The first
 * groups equal cuts of full rows; what is left over is stacked beside the longest, or shared out over lanes.
 */
import { layLanes } from './lay-lanes.ts';
import type { Piece } from './piece.ts';
import { listPieces } from './piece.ts';
import { columnEnd, columnOf, makeRow, runOfRow } from './rows.ts';
import type { Row } from './rows.ts';
import type { Task } from './task.ts';

/** Lists of rows, each of which holds all the cuts counted. `longest`: no row may be longer. */
export function composeRows(task: Task, counts: ArrayLike<number>, longest: number): Row[][] {
  const least = leastAcross(task, counts);
  const found: Row[][] = [];
  const seen = new Set<string>();
  const offer = (rows: Row[]): void => {
    if (rows.some((row) => runOfRow(task, row).length > longest)) return;
    const name = rows.map(nameRow).join(' ');
    if (!seen.has(name)) found.push(rows);
    seen.add(name);
  };
  for (const turned of [false, true]) {
    const pieces = listPieces(task, counts, turned);
    if (pieces === null) continue;
    const single = pieces.filter((piece) => piece.across + least > task.width).map((piece) => alone(task, piece));
    const narrow = pieces.filter((piece) => piece.across + least <= task.width);
    if (narrow.length === 0) {
      offer(single);
      continue;
    }
    const { rows, rest } = fullRows(task, narrow);
    for (const order of ORDERS) {
      offer([...single, ...rows, ...stackRows(task, [...rest].sort(order), longest)]);
      offer([...single, ...stackRows(task, [...narrow].sort(order), longest)]);
    }
    offer([...single, ...rows, ...rest.map((piece) => alone(task, piece))]);
    for (const part of [rest, narrow]) {
      const lanes = layLanes(task, part);
      if (lanes === null) continue;
      offer(part === rest ? [...single, ...rows, lanes] : [...single, lanes]);
    }
  }
  return found;
}

const ORDERS: readonly ((a: Piece, b: Piece) => number)[] = [
  (a, b) => b.length - a.length || b.across - a.across || a.kind - b.kind,
  (a, b) => b.length * b.across - a.length * a.across || a.kind - b.kind,
  (a, b) => b.across - a.across || b.length - a.length || a.kind - b.kind,
];

function nameRow(row: Row): string {
  return row.columns.map((column) => column.run.map((lain) => `${lain.kind}.${lain.shape}`).join('+')).join('|');
}

function leastAcross(task: Task, counts: ArrayLike<number>): number {
  let least = task.width;
  task.kinds.forEach((kind, index) => {
    if ((counts[index] ?? 0) > 0) for (const shape of kind.shapes) least = Math.min(least, shape.across);
  });
  return least;
}

function alone(task: Task, piece: Piece): Row {
  return makeRow([columnOf(task, [piece])]);
}

/** Rows of equal cuts that leave no room for one more; a left and a right half make such a row. */
function fullRows(task: Task, pieces: readonly Piece[]): { rows: Row[]; rest: Piece[] } {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const key = `${piece.length}/${piece.phase}/${piece.across}`;
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  const rows: Row[] = [];
  const rest: Piece[] = [];
  for (const group of groups.values()) {
    const left = group.filter((piece) => piece.side === 'left');
    const right = group.filter((piece) => piece.side === 'right');
    const free = group.filter((piece) => piece.side === null);
    const across = group[0]?.across ?? task.width;
    const fit = (task.width - (task.width % across)) / across;
    for (;;) {
      const row: Piece[] = [];
      const take = (from: Piece[]): void => {
        const piece = row.length < fit ? from.pop() : undefined;
        if (piece) row.push(piece);
      };
      take(left);
      take(right);
      while (row.length < fit && free.length > 0) take(free);
      if (row.length === 0) break;
      if (row.length === fit && fit > 1) rows.push(makeRow(row.map((piece) => columnOf(task, [piece]))));
      else rest.push(...row);
    }
  }
  return { rows, rest };
}

/**
 * The first cut left opens a row; the next that fit stand beside it, and on one another up to its end. `room`: how much
 * longer than its first cut each row may grow.
 */
export function stackRows(task: Task, pieces: readonly Piece[], longest: number, room: () => number = () => 0): Row[] {
  const left = [...pieces];
  const rows: Row[] = [];
  for (let first = left.shift(); first !== undefined; first = left.shift()) {
    let row = alone(task, first);
    const { phase } = runOfRow(task, row);
    const start = Math.max(0, phase);
    const end = Math.min(longest, first.length + room());
    for (let index = 0; index < left.length;) {
      const piece = left[index];
      const next = piece === undefined ? null : addPiece(task, row, piece, start, end);
      if (next === null) index += 1;
      else {
        row = next;
        left.splice(index, 1);
      }
    }
    rows.push(row);
  }
  return rows;
}

/** The row with one cut more, none of it beyond `end`; null when it fits nowhere. */
function addPiece(task: Task, row: Row, piece: Piece, start: number, end: number): Row | null {
  const sideTaken = row.columns.some((column) => column.side === piece.side && piece.side !== null);
  for (const [index, column] of row.columns.entries()) {
    if (piece.across > column.across || (piece.side !== null && piece.side !== column.side)) continue;
    const run = [...column.run, piece];
    if (columnEnd(task, run, 0, start) > end) continue;
    return makeRow(row.columns.map((each, at) => (at === index ? columnOf(task, run) : each)));
  }
  if (sideTaken || row.across + piece.across > task.width) return null;
  return columnEnd(task, [piece], 0, start) <= end ? makeRow([...row.columns, columnOf(task, [piece])]) : null;
}
