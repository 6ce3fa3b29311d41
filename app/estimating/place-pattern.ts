/**
 * Where the pattern stands on what hangs, and so where in the repeat every cut of it begins. A placed motif takes no longer
 * cuts: each begins further into the repeat, and what lies before it is used or wasted as the plan finds.
 */
import type { Cloth, Repeat } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PatternPlace } from '#shared/treatments/pattern-place.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { intoRepeat } from './into-repeat.ts';
import { hungCloth } from './panels/hung-cloth.ts';
import type { HungCloth } from './panels/hung-cloth.ts';
import { downToTick, toNearestTick, upForShrinkage } from './round.ts';

export interface PlacedPattern {
  readonly place: PatternPlace['place'];
  /** Where in the repeat a level cut begins, from 0 up to the repeat. */
  readonly phase: Ticks;
  /** From the finished top down to the middle of the placed motif, as it hangs; below zero where it lies above. */
  readonly below: number;
  /** The same way along the cloth: longer where it hangs in folds. */
  readonly along: number;
  /** From the top of the cut down to it, as the cloth lies on the bolt; below zero above the cut. */
  readonly down: number;
  /** Middle of the motif from the start of the repeat. */
  readonly motif: Ticks;
  /** Nobody said where in the repeat the motif lies: its middle is taken. */
  readonly assumed: boolean;
  /** The turn above the finished top. */
  readonly turn: Ticks;
}

/** Null on plain cloth, and where nothing is placed or the height of the top is not known. */
export function placePattern(treatment: Treatment, cloth: Pick<Cloth, 'repeat'>, lined: boolean): PlacedPattern | null {
  const { pattern, practice } = treatment;
  if (pattern === null || cloth.repeat === null) return null;
  return placeMotif(pattern, cloth.repeat, hungCloth(treatment, lined), practice.shrinkage);
}

export function placeMotif(
  pattern: PatternPlace,
  { vertical: size }: Pick<Repeat, 'vertical'>,
  hung: HungCloth,
  shrinkage: number,
): PlacedPattern | null {
  const motif = pattern.motif ?? downToTick(size / 2);
  const along = alongCloth(pattern, hung, size);
  if (along === null) return null;
  // Washing takes its share of the repeat as of the cloth: on the bolt the same way is longer.
  const way = along + hung.turn;
  const washed = upForShrinkage(ticks(Math.abs(way)), shrinkage);
  const down = way < 0 ? 0 - washed : washed;
  return {
    place: pattern.place,
    phase: ticks(intoRepeat(motif - down, size)),
    below: asHung(along, hung.fullness),
    along,
    down,
    motif,
    assumed: pattern.motif === null,
    turn: hung.turn,
  };
}

/** A whole motif at an edge takes half a repeat of cloth from it; heights count as the cloth hangs. */
function alongCloth({ place, level, top }: PatternPlace, { length, fullness }: HungCloth, size: Ticks): number | null {
  const cloth = (hanging: number): number => toNearestTick((hanging * fullness) / 1000);
  switch (place) {
    case 'top':
      return downToTick(size / 2);
    case 'hem':
      return cloth(length) - downToTick(size / 2);
    case 'middle':
      return cloth(downToTick(length / 2));
    case 'level':
      return level === null || top === null ? null : cloth(top - level);
  }
}

function asHung(along: number, fullness: number): number {
  return fullness === 1000 ? along : toNearestTick((along * 1000) / fullness);
}
