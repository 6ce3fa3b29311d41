/** What a treatment has to know of the place where it hangs, to be read: lengths of the room and of its opening. */
import type { LengthUnit, Ticks } from '../length.ts';
import { readLength } from './read-length.ts';
import type { WireOpening, WireRoom } from './wire-job.ts';

export interface ReadPlace {
  readonly sill: Ticks | null;
  readonly height: Ticks | null;
  readonly ceiling: Ticks | null;
  /** Height of the pattern over the floor, one for the whole room; null where no treatment gives it. */
  readonly patternLevel: Ticks | null;
}

export function readPlace(room: WireRoom, opening: WireOpening, unit: LengthUnit): ReadPlace {
  const length = (value: number | string | null | undefined): Ticks | null =>
    value === undefined || value === null ? null : readLength(value, unit);
  return {
    sill: length(opening.sill),
    height: length(opening.height),
    ceiling: length(room.ceiling),
    patternLevel: length(levelOfRoom(room)),
  };
}

/** The first level that a treatment of the room gives: the others follow it. */
function levelOfRoom(room: WireRoom): number | string | undefined {
  const levels = room.openings.flatMap(({ treatments }) =>
    treatments.flatMap((each) => (each.kind === 'panels' ? [each.pattern?.level] : [])),
  );
  return levels.find((level) => level !== undefined);
}
