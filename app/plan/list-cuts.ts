/** The cuts of one set as the plan takes them: whole widths, and half widths that may lie beside others. */
import type { Repeat } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PlannedCut } from './plan-input.ts';
import { placeAfter } from './repeat-circle.ts';
import { halfDown } from './round-plan.ts';

export interface CutSet {
  /** Unique: it names the set, and with a number each cut. */
  readonly set: string;
  readonly label: string;
  /** The length to cut, before any repeat. */
  readonly plainCut: Ticks;
  /** Half widths of one treatment (8 is 4 widths), shared evenly by its pieces. */
  readonly halfWidths: number;
  /** Panels of one treatment. */
  readonly pieces: number;
  readonly quantity: number;
  readonly repeat: Pick<Repeat, 'vertical' | 'match'> | null;
  /** Where in the repeat its level widths start; 0 unless the motif is placed otherwise. */
  readonly phase: Ticks;
}

/**
 * Widths run from each leading edge: level first, then in half-drop cloth by turns half a repeat lower; the half width of a
 * piece is its last, at the return. The half width at the left panel is a right half of the cloth and the other way round,
 * so that the pattern runs on (common practice); on plain cloth either will do.
 */
export function listCuts(given: CutSet): PlannedCut[] {
  const each = (given.halfWidths - (given.halfWidths % given.pieces)) / given.pieces;
  const cuts: PlannedCut[] = [];
  const whole = halfDown(each);
  for (let made = 0; made < given.quantity; made += 1)
    for (let piece = 0; piece < given.pieces; piece += 1) {
      for (let width = 0; width < whole; width += 1) cuts.push(cutAt(given, cuts.length, width, 'whole'));
      if (each % 2 === 0) continue;
      const side = sideOf(given, piece);
      cuts.push({ ...cutAt(given, cuts.length, whole, 'half'), ...(side === null ? {} : { side }) });
    }
  return cuts;
}

function cutAt(given: CutSet, index: number, width: number, across: 'whole' | 'half'): PlannedCut {
  const { repeat } = given;
  const drop = repeat?.match === 'half-drop' && width % 2 === 1 ? halfDown(repeat.vertical) : 0;
  return {
    id: `${given.set}#${index + 1}`,
    set: given.set,
    label: `${given.label} ${index + 1}`,
    length: given.plainCut,
    across,
    phase: repeat === null ? null : ticks(placeAfter(given.phase, drop, repeat.vertical)),
    direction: 'one-way',
    mayTurn: false,
  };
}

function sideOf(given: CutSet, piece: number): 'left' | 'right' | null {
  if (given.repeat === null || given.pieces === 1) return null;
  return piece % 2 === 0 ? 'right' : 'left';
}
