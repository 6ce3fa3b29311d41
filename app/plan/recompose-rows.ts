/**
 * Better rows of narrower cuts: a few rows are taken apart and put together again in another order, and kept so when that
 * is no longer, or now and then a little longer (ruin and recreate, after Schrimpf and others, Journal of Computational
 * Physics 159, 2000, 139-171).
 */
import { stackRows } from './compose-rows.ts';
import type { Meter } from './meter.ts';
import type { Piece } from './piece.ts';
import { pickBelow, upToStep } from './round-plan.ts';
import type { Row } from './rows.ts';
import { runOfRow } from './rows.ts';
import { makeStream } from './seeded.ts';
import type { Task } from './task.ts';

/** The same cuts in rows whose lengths, each up to a whole repeat, add up to no more. Rows of one cut of full width stay. */
export function recomposeRows(task: Task, rows: readonly Row[], longest: number, meter: Meter): Row[] {
  const fixed = rows.filter((row) => row.across === task.width && row.columns.length === 1);
  let now = rows.filter((row) => !fixed.includes(row));
  if (now.length < 2) return [...rows];
  const next = makeStream(now.length);
  const costOf = (some: readonly Row[]): number => some.reduce((sum, row) => sum + lengthOf(task, row), 0);
  let cost = costOf(now);
  let best = now;
  let least = cost;
  const whole = Math.max(1, meter.left());
  while (!meter.isOver()) {
    const heat = (cost / now.length) * 0.03 * (meter.left() / whole);
    const taken = pickRows(now, next);
    const pieces = taken.flatMap((row) => piecesOf(task, row));
    const order = orderOf(pieces, next);
    const reach = next() < 0.5 ? 0 : 0.25;
    const made = stackRows(task, order, longest, () => reach * next() * (order[0]?.length ?? 0));
    for (let count = 0; count < pieces.length; count += 1) meter.count();
    const change = costOf(made) - costOf(taken);
    if (made.some((row) => runOfRow(task, row).length > longest)) continue;
    if (change > 0 && next() >= Math.exp(-change / (heat + 1e-9))) continue;
    now = [...now.filter((row) => !taken.includes(row)), ...made];
    cost += change;
    if (cost < least) [best, least] = [now, cost];
  }
  return [...fixed, ...best];
}

function lengthOf(task: Task, row: Row): number {
  const { phase, length } = runOfRow(task, row);
  return phase < 0 ? length : upToStep(length, task.size);
}

function pickRows(rows: readonly Row[], next: () => number): Row[] {
  const many = 2 + pickBelow(next(), 3);
  const taken = new Set<Row>();
  for (let tries = 0; tries < many * 2 && taken.size < Math.min(many, rows.length); tries += 1) {
    const row = rows[pickBelow(next(), rows.length)];
    if (row !== undefined) taken.add(row);
  }
  return [...taken];
}

function piecesOf(task: Task, row: Row): Piece[] {
  return row.columns.flatMap((column) =>
    column.run.map((lain) => {
      const kind = task.kinds[lain.kind];
      const { length, across } = kind?.shapes[lain.shape] ?? { length: 0, across: 0 };
      return { ...lain, length, across, phase: kind?.phase ?? -1, side: kind?.side ?? null };
    }),
  );
}

/** Long first, more or less: chance shifts each cut by up to half its rank. */
function orderOf(pieces: readonly Piece[], next: () => number): Piece[] {
  const spread = next();
  return pieces
    .map((piece) => ({ piece, key: piece.length * (1 + spread * (next() - 0.5)) }))
    .sort((a, b) => b.key - a.key)
    .map(({ piece }) => piece);
}
