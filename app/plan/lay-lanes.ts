/** Narrower cuts in lanes along the cloth, as even as can be. */
import type { Piece } from './piece.ts';
import { columnOf, makeRow } from './rows.ts';
import type { Column, Row } from './rows.ts';
import { makeSequencer } from './sequence-cuts.ts';
import type { Task } from './task.ts';

/** One long row: as many lanes as the widest cut allows, the longest cuts shared out first, each to the shortest lane. */
export function layLanes(task: Task, pieces: readonly Piece[]): Row | null {
  if (pieces.length < 2) return null;
  const widest = pieces.reduce((most, piece) => Math.max(most, piece.across), 0);
  const many = (task.width - (task.width % widest)) / widest;
  if (many < 2) return null;
  const lanes = Array.from({ length: many }, () => ({ pieces: [] as Piece[], length: 0 }));
  const longFirst = [...pieces].sort((a, b) => b.length - a.length || a.kind - b.kind);
  // A lane at each selvage for the cuts that belong there.
  const sideOf = (lane: number): Piece['side'] => (({ 0: 'left', 1: 'right' }) as const)[lane] ?? null;
  for (const piece of longFirst) {
    const fit = lanes.filter((_, lane) => piece.side === null || sideOf(lane) === piece.side);
    const lane = fit.reduce((best, each) => (each.length < best.length ? each : best));
    lane.pieces.push(piece);
    lane.length += roundedLength(task, piece);
  }
  evenOut(task, lanes, sideOf);
  return makeRow(lanes.filter((lane) => lane.pieces.length > 0).map((lane) => orderLane(task, lane.pieces)));
}

function roundedLength(task: Task, piece: Piece): number {
  if (task.size === 0 || piece.phase < 0) return piece.length;
  const over = piece.length % task.size;
  return over === 0 ? piece.length : piece.length - over + task.size;
}

interface Lane {
  readonly pieces: Piece[];
  length: number;
}

interface Move {
  readonly to: Lane;
  readonly out: Piece;
  readonly back: Piece | null;
  /** By how much the lane left gets shorter, and the other longer. */
  readonly shift: number;
  readonly gain: number;
}

/** Moves and swaps between the longest lane and the others while that makes the longest shorter. */
function evenOut(task: Task, lanes: readonly Lane[], sideOf: (lane: number) => Piece['side']): void {
  for (let round = 0; round < 200; round += 1) {
    const long = lanes.reduce((most, lane, index) => (lane.length > (lanes[most]?.length ?? 0) ? index : most), 0);
    const from = lanes[long];
    if (from === undefined) return;
    const best = listMoves(task, lanes, long, sideOf).reduce<Move | null>(
      (so, move) => (move.gain > (so?.gain ?? 0) ? move : so),
      null,
    );
    if (best === null) return;
    from.pieces.splice(from.pieces.indexOf(best.out), 1);
    best.to.pieces.push(best.out);
    if (best.back !== null) {
      best.to.pieces.splice(best.to.pieces.indexOf(best.back), 1);
      from.pieces.push(best.back);
    }
    from.length -= best.shift;
    best.to.length += best.shift;
  }
}

function listMoves(task: Task, lanes: readonly Lane[], long: number, sideOf: (lane: number) => Piece['side']): Move[] {
  const from = lanes[long];
  if (from === undefined) return [];
  const mayLie = (piece: Piece | null, lane: number): boolean =>
    piece === null || piece.side === null || sideOf(lane) === piece.side;
  return lanes.flatMap((to, index) => {
    if (index === long) return [];
    const top = Math.max(from.length, to.length);
    return from.pieces.flatMap((out) =>
      [null, ...to.pieces].flatMap((back) => {
        if (!mayLie(out, index) || !mayLie(back, long)) return [];
        const shift = roundedLength(task, out) - (back === null ? 0 : roundedLength(task, back));
        return [{ to, out, back, shift, gain: top - Math.max(from.length - shift, to.length + shift) }];
      }),
    );
  });
}

/** A lane in the order of least waste; cuts without a place last. */
function orderLane(task: Task, pieces: readonly Piece[]): Column {
  const phased = pieces.filter((piece) => piece.phase >= 0);
  const sequencer = makeSequencer(phased, [], Math.max(1, task.size));
  const order = sequencer.bestOrder(
    phased.map(() => 1),
    null,
  );
  const first = order.flatMap((index) => phased[index] ?? []);
  return columnOf(task, [...first, ...pieces.filter((piece) => piece.phase < 0)]);
}
