/**
 * Where the pattern stands on a panel, and so where in the repeat every cut of it begins. A placed motif takes no longer
 * cuts: each begins further into the repeat, and what lies before it is used or wasted as the plan finds.
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment, PatternPlace } from '#shared/treatments/panels.ts';
import { headingTurn } from './heading-turn.ts';
import { downToTick, upForShrinkage, upToWhole } from './round.ts';

export interface PlacedPattern {
  readonly place: PatternPlace['place'];
  /** Where in the repeat a level cut begins, from 0 up to the repeat. */
  readonly phase: Ticks;
  /** From the top of the heading down to the middle of the placed motif; below zero where it lies above. */
  readonly below: number;
  /** Middle of the motif from the start of the repeat. */
  readonly motif: Ticks;
  /** Nobody said where in the repeat the motif lies: its middle is taken. */
  readonly assumed: boolean;
  /** The turn above the finished top. */
  readonly turn: Ticks;
}

/** Null on plain cloth, and where nothing is placed or the height of the heading is not known. */
export function placePattern(
  panels: PanelsTreatment,
  cloth: Pick<Cloth, 'repeat'>,
  lined: boolean,
): PlacedPattern | null {
  const { pattern, practice } = panels;
  if (pattern === null || cloth.repeat === null) return null;
  const size = cloth.repeat.vertical;
  const below = belowTop(pattern, panels.finishedLength, size);
  if (below === null) return null;
  const motif = pattern.motif ?? downToTick(size / 2);
  const turn = headingTurn(panels, lined);
  // Washing takes its share of the repeat as of the cloth: on the bolt the same way is longer.
  const way = below + turn;
  const washed = upForShrinkage(ticks(Math.abs(way)), practice.shrinkage);
  const onBolt = way < 0 ? 0 - washed : washed;
  return {
    place: pattern.place,
    phase: intoRepeat(motif - onBolt, size),
    below,
    motif,
    assumed: pattern.motif === null,
    turn,
  };
}

function belowTop({ place, level, top }: PatternPlace, length: Ticks, size: Ticks): number | null {
  switch (place) {
    case 'top':
      return downToTick(size / 2);
    case 'hem':
      return length - downToTick(size / 2);
    case 'middle':
      return downToTick(length / 2);
    case 'level':
      return level === null || top === null ? null : top - level;
  }
}

function intoRepeat(place: number, size: number): Ticks {
  return ticks(place < 0 ? place + upToWhole(-place, size) * size : place % size);
}
