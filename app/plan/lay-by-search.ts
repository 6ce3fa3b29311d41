/**
 * Many cuts of one dye lot: composes rows and shares them out over the bolts; the best layout found within the meter. The
 * bound beside it tells how good that is.
 */
import { composeRows } from './compose-rows.ts';
import { fewestBolts, fillBolts } from './fill-bolts.ts';
import type { Layout } from './layout.ts';
import { isLess, isSoldWhole } from './layout.ts';
import type { Meter } from './meter.ts';
import type { Packing } from './anneal-units.ts';
import { packUnits } from './pack-units.ts';
import { recomposeRows } from './recompose-rows.ts';
import type { Row } from './rows.ts';
import type { Task } from './task.ts';
import type { Board } from './unit-board.ts';
import { groupUnits, makeBoard } from './unit-board.ts';

/** All cuts of a task of one dye lot; `goal` is a proved bound, at which the search stops (Infinity is a quick look). */
export function layBySearch(task: Task, goal: number, meter: Meter, seed = 0): Layout {
  return layCuts(
    task,
    task.kinds.map((kind) => kind.ids.length),
    goal,
    meter,
    seed,
  );
}

function layCuts(task: Task, counts: readonly number[], goal: number, meter: Meter, seed: number): Layout {
  const stretches = task.stretches.map((_, at) => at);
  const longest = stretches.reduce((most, at) => {
    const stretch = task.stretches[at];
    return stretch?.width === task.width ? Math.max(most, stretch.to - stretch.from) : most;
  }, 0);
  const whole = layWhole(task, stretches, counts, meter);
  if (whole !== null) return whole;
  const candidates: { board: Board; rough: Packing }[] = [];
  for (const rows of composeRows(task, counts, longest)) {
    // One layout is always made, however little may be spent.
    if (candidates.length > 0 && meter.isOver()) break;
    const board = makeBoard(task, groupUnits(task, rows), stretches);
    candidates.push({ board, rough: packUnits(task, board, Infinity, meter) });
  }
  candidates.sort(compareRough);
  const [front] = candidates;
  const isOpen = front === undefined || front.rough.cost.unlaid > 0 || front.rough.cost.ordered > goal;
  // One long row of lanes cannot be taken apart.
  const loose = candidates.find(({ board }) => board.units.flatMap((unit) => unit.rows).filter(isNarrow).length > 1);
  if (loose !== undefined && goal < Infinity && isOpen && !meter.isOver()) {
    const own = loose.board.units.flatMap((unit) => unit.rows);
    const rows = recomposeRows(task, own, longest, meter.share(0.5));
    const board = makeBoard(task, groupUnits(task, rows), stretches);
    candidates.push({ board, rough: packUnits(task, board, Infinity, meter) });
    candidates.sort(compareRough);
  }
  let best: { board: Board; packing: Packing } | null = null;
  const tried = Math.min(candidates.length, goal === Infinity ? 1 : 3);
  for (const [rank, { board, rough }] of candidates.slice(0, tried).entries()) {
    const done = (rough.cost.unlaid === 0 && rough.cost.ordered <= goal) || meter.isOver();
    const packing =
      done || goal === Infinity ? rough : packUnits(task, board, goal, meter.share(1 / (tried - rank)), seed);
    const better = isLess(packing.cost, rough.cost) ? packing : rough;
    if (best === null || isLess(better.cost, best.packing.cost)) best = { board, packing: better };
    if (best.packing.cost.unlaid === 0 && best.packing.cost.ordered <= goal) break;
  }
  return best === null ? task.stretches.map(() => []) : best.board.layOut(best.packing.counts);
}

function isNarrow(row: Row): boolean {
  return row.columns.length > 1;
}

function compareRough(a: { rough: Packing }, b: { rough: Packing }): number {
  if (isLess(a.rough.cost, b.rough.cost)) return -1;
  return isLess(b.rough.cost, a.rough.cost) ? 1 : 0;
}

/** Plain whole widths on bolts that are alike and sold whole: bin completion; null when the cloth is otherwise. */
function layWhole(task: Task, stretches: readonly number[], counts: readonly number[], meter: Meter): Layout | null {
  if (task.size !== 0) return null;
  const [first] = stretches;
  const own = stretches.flatMap((at) => task.stretches[at] ?? []);
  const limit = own[0]?.to ?? 0;
  const alike = own.every((stretch) => {
    const reel = task.reels[stretch.reel];
    return stretch.from === 0 && stretch.to === limit && reel !== undefined && isSoldWhole(reel);
  });
  const kinds = task.kinds.flatMap((kind, at) => ((counts[at] ?? 0) > 0 ? [{ kind, at }] : []));
  const whole = kinds.every(({ kind }) => kind.shapes.length === 1 && (kind.shapes[0]?.across ?? 0) * 2 > task.width);
  if (first === undefined || limit === Infinity || !alike || !whole || kinds.length === 0) return null;
  const lengths = kinds.map(({ kind }) => kind.shapes[0]?.length ?? 0);
  const many = kinds.map(({ at }) => counts[at] ?? 0);
  for (let bolts = fewestBolts(lengths, many, limit); bolts <= own.length; bolts += 1) {
    const filled = fillBolts(lengths, many, limit, bolts, meter.share(0.4));
    if (filled === null) continue;
    const layout: (readonly Row[])[] = task.stretches.map(() => []);
    filled.forEach((part, at) => {
      layout[stretches[at] ?? first] = part.map((index) => {
        const { kind, at: own } = kinds[index] ?? { kind: null, at: 0 };
        const shape = kind?.shapes[0];
        const column = { across: shape?.across ?? 0, side: null, run: [{ kind: own, shape: 0 }] };
        return { columns: [column], across: column.across };
      });
    });
    return layout;
  }
  return null;
}
