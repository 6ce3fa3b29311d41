/** Single cuts of a task, for composing rows. */
import type { Lain } from './rows.ts';
import type { Task } from './task.ts';

export interface Piece extends Lain {
  readonly length: number;
  readonly across: number;
  readonly phase: number;
  readonly side: 'left' | 'right' | null;
}

/** All cuts as given, or all that may be turned turned; null when none may. */
export function listPieces(task: Task, counts: ArrayLike<number>, turned: boolean): Piece[] | null {
  const some = task.kinds.some((kind, index) => kind.shapes.length > 1 && (counts[index] ?? 0) > 0);
  if (turned && !some) return null;
  return task.kinds.flatMap((kind, index) => {
    const shape = turned ? kind.shapes.length - 1 : 0;
    const { length, across } = kind.shapes[shape] ?? { length: 0, across: 0 };
    const piece = { kind: index, shape, length, across, phase: kind.phase, side: kind.side };
    return Array.from({ length: counts[index] ?? 0 }, () => piece);
  });
}
