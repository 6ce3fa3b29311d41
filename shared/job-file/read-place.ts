/** What a treatment has to know of the place where it hangs, to be read: lengths of the room and of its opening. */
import type { LengthUnit, Ticks } from '../length.ts';
import { readLength } from './read-length.ts';
import { levelOf } from './read-pattern.ts';
import type { WireOpening, WireRoom } from './wire-job.ts';

export interface ReadPlace {
  readonly sill: Ticks | null;
  readonly height: Ticks | null;
  readonly ceiling: Ticks | null;
  /** Height of the pattern over the floor, one for the whole room; null where no treatment gives it. */
  readonly patternLevel: Ticks | null;
}

/** Of a part of a project that is read by itself: what the rest of its room says. */
export interface ReadAround {
  /** The level of the room's pattern, above the floor. */
  readonly patternLevel: Ticks | null;
}

export const READ_ALONE: ReadAround = { patternLevel: null };

export function readPlace(room: WireRoom, opening: WireOpening, unit: LengthUnit, around: ReadAround): ReadPlace {
  const length = (value: number | string | null | undefined): Ticks | null =>
    value === undefined || value === null ? null : readLength(value, unit);
  const ceiling = length(room.ceiling);
  return {
    sill: length(opening.sill),
    height: length(opening.height),
    ceiling,
    patternLevel: around.patternLevel ?? levelOfRoom(room, ceiling, length),
  };
}

/** The first level that a treatment of the room gives, whatever its kind: the others follow it. */
function levelOfRoom(
  room: WireRoom,
  ceiling: Ticks | null,
  length: (value: number | string) => Ticks | null,
): Ticks | null {
  const levels = room.openings.flatMap(({ treatments }) =>
    treatments.map(({ pattern }) => levelOf(pattern, ceiling, length)),
  );
  return levels.find((level) => level !== null) ?? null;
}
