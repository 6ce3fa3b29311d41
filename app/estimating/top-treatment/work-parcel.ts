/** The working of one cloth, from its cut to its order: what every top treatment says alike. */
import type { Cloth } from '#shared/cloth.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { planAlone } from '../cut-cloth.ts';
import { toNearestTick, upToWhole } from '../round.ts';
import { workOrderOf } from '../say-order.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { layPieces } from './lay-pieces.ts';
import type { Parcel, Piece } from './lay-pieces.ts';

/** A length as it is added up, with what it is. Zero lengths are left out of the sum. */
export interface Addend {
  readonly says: string;
  readonly length: number;
  /** Taken this many times; 1 unless told. */
  readonly times?: number;
}

/** The total of a sum of lengths. */
export function addUp(addends: readonly Addend[]): number {
  return addends.reduce((sum, { length, times = 1 }) => sum + times * length, 0);
}

/** `84 + 2 × 1½ − ½`. */
export function sayAddends(addends: readonly Addend[], say: Say): string {
  const shown = addends.filter(({ length, times = 1 }) => length !== 0 && times !== 0);
  if (shown.length === 0) return say.length(0);
  return shown
    .map(({ length, times = 1 }, index) => {
      const size = times === 1 ? say.length(Math.abs(length)) : `${times} × ${say.length(Math.abs(length))}`;
      const sign = length < 0 ? '− ' : '+ ';
      return index === 0 && length > 0 ? size : sign + size;
    })
    .join(' ');
}

/** `height, over the board, seam at the bottom`. */
export function nameAddends(addends: readonly Addend[]): string {
  return addends
    .filter(({ length, times = 1 }) => length !== 0 && times !== 0)
    .map(({ says }) => says)
    .join(', ');
}

/** Steps are told apart by what stands before their names: nothing for the face. */
export function keyOf(parcel: Parcel, first: Parcel | undefined): string {
  if (parcel === first) return '';
  return parcel.layer === 0 ? `${parcel.cloth.id}-` : `layer-${parcel.layer}-`;
}

export function workParcel(
  parcel: Parcel,
  line: TakeoffLine,
  practice: Practice,
  key: string,
  say: Say,
): WorkingStep[] {
  const { cloth, pieces } = parcel;
  const laid = layPieces(cloth, pieces);
  const who = key === '' ? '' : `${cloth.name}, `;
  const steps = pieces.flatMap((piece, index) => {
    const own = `${key}${index === 0 ? '' : `${index}-`}`;
    return [...workRepeats(piece, parcel, own, say), ...workPhases(piece, cloth, laid.taken[index] ?? 0, own, say)];
  });
  const parts = pieces.map((piece, index) =>
    sayPiece(piece, cloth.repeat?.match === 'half-drop', laid.taken[index] ?? 0, say),
  );
  const saved = laid.saved > 0 ? ` − ${say.length(laid.saved)}` : '';
  return [
    ...steps,
    step(
      `${key}laid-out`,
      `${who}laid out`,
      `${parts.join(' + ')}${saved}; by the chart ${say.cloth(line.handbook)}`,
      say.cloth(line.plan),
      `${pieces.map((piece) => piece.name).join(', ')}${saved === '' ? '' : '; the last matched cut does not run on to a whole repeat'}`,
    ),
    workOrderOf(`${key}order`, `${who}order`, cloth, line, practice, say),
  ];
}

function workRepeats(piece: Piece, { cloth }: Parcel, key: string, say: Say): WorkingStep[] {
  if (!cloth.repeat || !piece.phases) return [];
  const { plain, length, repeats } = piece.cut;
  const size = cloth.repeat.vertical;
  if (repeats === null)
    return [
      step(
        `${key}cut-length`,
        `${piece.name}, cut length`,
        `${say.length(plain)} + ${say.length(size)}`,
        say.length(length),
        'practice: one repeat added to each cut',
      ),
    ];
  return [
    step(
      `${key}cut-length`,
      `${piece.name}, cut length`,
      `${say.length(plain)} ÷ ${say.length(size)} = ${say.number(plain / size)}, up: ${repeats} × ${say.length(size)}`,
      say.length(length),
      'practice: up to whole repeats',
    ),
  ];
}

/** A half-drop stands in the sum by what both phases take together, worked out in a step of its own. */
function sayPiece(piece: Piece, halfDrop: boolean, taken: number, say: Say): string {
  if (halfDrop && piece.phases) return say.length(taken);
  return `${piece.count} × ${say.length(piece.cut.length)}`;
}

/** From a cut to the next: so far to the other phase, so far to the same one, and the last cut as it is. */
function workPhases(piece: Piece, cloth: Cloth, taken: number, key: string, say: Say): WorkingStep[] {
  if (cloth.repeat?.match !== 'half-drop' || !piece.phases) return [];
  const repeat = cloth.repeat.vertical;
  const { plain } = piece.cut;
  const same = upToWhole(plain, repeat) * repeat;
  const other = (Math.max(0, upToWhole(2 * plain - repeat, 2 * repeat)) + 0.5) * repeat;
  const alone = planAlone(piece.cut, piece.count, cloth.repeat, piece.phases);
  const changes = toNearestTick((alone - plain - (piece.count - 1) * same) / (other - same));
  const ways = [
    { count: changes, length: other },
    { count: piece.count - 1 - changes, length: same },
  ].filter(({ count }) => count > 0);
  return [
    step(
      `${key}phases`,
      `${piece.name}, both phases`,
      [...ways.map(({ count, length }) => `${count} × ${say.length(length)}`), say.length(plain)].join(' + '),
      taken === alone ? say.length(alone) : `${say.length(alone)}, to a whole repeat ${say.length(taken)}`,
      `half-drop: ${piece.phases.level} level and ${piece.phases.dropped} dropped, the better of alternating and grouped`,
    ),
  ];
}
