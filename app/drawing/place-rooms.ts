/** Where rooms and openings stand on the sheet: one scale for both axes, one floor line, room for the dimension lines. */
import { INCH } from './measure-given.ts';
import type { ReckonedOpening, ReckonedRoom } from './reckon-opening.ts';

export interface PlacedOpening {
  readonly reckoned: ReckonedOpening;
  /** Left edge of the opening itself, in points. */
  readonly x: number;
  /** All that is drawn of it, in points. */
  readonly left: number;
  readonly right: number;
}

export interface PlacedRoom {
  readonly reckoned: ReckonedRoom;
  readonly left: number;
  readonly right: number;
  readonly openings: readonly PlacedOpening[];
  readonly chosen: PlacedOpening | null;
  /** Where the upright dimension lines of the chosen opening start, and to which side they go on. */
  readonly lanes: { readonly from: number; readonly outer: 1 | -1 } | null;
}

export interface Arrangement {
  /** Points a tick. */
  readonly scale: number;
  readonly rooms: readonly PlacedRoom[];
}

export interface PlaceInput {
  readonly rooms: readonly ReckonedRoom[];
  readonly selected: string | null;
  readonly width: number;
  /** The scale that the height allows. */
  readonly mostScale: number;
  /** Breadth of the upright lanes of an opening, in points. */
  readonly laneBreadth: (opening: ReckonedOpening) => number;
}

/** Between neighbours whose places nobody has measured. */
const USUAL_GAP = 16 * INCH;
const EMPTY_WALL = 60 * INCH;
/** Air at both ends of a wall, in points. */
const WALL_AIR = 14;
/** Spare width goes into the gaps up to this much, then to the ends of the walls. */
const MOST_SPARE_GAP = 90;

interface Spacing {
  readonly scale: number;
  readonly spareGap: number;
  readonly spareWall: number;
  /** Room for dimension lines beside every opening, so that choosing another one moves nothing. */
  readonly steady: boolean;
}

export function placeRooms(input: PlaceInput): Arrangement {
  const tight = { spareGap: 0, spareWall: 0 };
  const needs = (spacing: Spacing) => widthOf(arrange(input, spacing));
  const steadyFits = needs({ ...tight, scale: input.mostScale, steady: true }) <= input.width;
  const base = { ...tight, steady: steadyFits };
  const scale = steadyFits ? input.mostScale : findScale(input, (at) => needs({ ...base, scale: at }));
  const spare = Math.max(0, input.width - needs({ ...base, scale }));
  const free = input.rooms.flatMap((room) => room.openings.slice(1)).filter((opening) => opening.at === null).length;
  const spareGap = free === 0 ? 0 : Math.min(MOST_SPARE_GAP, spare / (free + 1));
  const spareWall = Math.max(0, spare - spareGap * free) / Math.max(1, input.rooms.length);
  return { scale, rooms: arrange(input, { scale, spareGap, spareWall, steady: steadyFits }) };
}

/** The largest scale that fits the width; walls only ever grow with the scale, so halving finds it. */
function findScale(input: PlaceInput, needs: (scale: number) => number): number {
  let [low, high] = [0, input.mostScale];
  if (needs(high) <= input.width) return high;
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (needs(middle) <= input.width) low = middle;
    else high = middle;
  }
  return low > 0 ? low : input.mostScale / 100;
}

function widthOf(rooms: readonly PlacedRoom[]): number {
  return rooms.at(-1)?.right ?? 0;
}

function arrange(input: PlaceInput, spacing: Spacing): readonly PlacedRoom[] {
  const placed: PlacedRoom[] = [];
  for (const room of input.rooms) placed.push(arrangeRoom(input, room, widthOf(placed), spacing));
  return placed;
}

function arrangeRoom(input: PlaceInput, room: ReckonedRoom, start: number, spacing: Spacing): PlacedRoom {
  const { scale } = spacing;
  const local: PlacedOpening[] = [];
  for (const reckoned of room.openings) {
    const reserved = spacing.steady || reckoned.source.key === input.selected ? input.laneBreadth(reckoned) : 0;
    const x =
      reckoned.at === null
        ? nextFree(local, scale, spacing.spareGap) + reserved - reckoned.left * scale
        : reckoned.at * scale;
    local.push({ reckoned, x, left: x + reckoned.left * scale, right: x + reckoned.right * scale });
  }
  const chosen = local.find((opening) => opening.reckoned.source.key === input.selected) ?? null;
  const breadth = chosen === null ? 0 : input.laneBreadth(chosen.reckoned);
  const lanes = chosen === null || breadth === 0 ? null : findLanes(chosen, local, breadth);
  const measured = room.openings.some((opening) => opening.at !== null);
  const ends = lanes === null ? [] : [lanes.from + lanes.outer * breadth];
  const first = local.reduce<PlacedOpening | null>(
    (least, one) => (least === null || one.left < least.left ? one : least),
    null,
  );
  if (spacing.steady && first !== null) ends.push(first.left - input.laneBreadth(first.reckoned));
  const low = Math.min(
    ...(measured || local.length === 0 ? [0] : []),
    ...local.map((opening) => opening.left),
    ...ends,
  );
  const high = Math.max(
    ...(local.length === 0 ? [EMPTY_WALL * scale] : []),
    ...local.map((opening) => opening.right),
    ...ends,
  );
  const shift = start + WALL_AIR + spacing.spareWall / 2 - low;
  const move = (opening: PlacedOpening): PlacedOpening => ({
    reckoned: opening.reckoned,
    x: opening.x + shift,
    left: opening.left + shift,
    right: opening.right + shift,
  });
  return {
    reckoned: room,
    left: start,
    right: start + high - low + 2 * WALL_AIR + spacing.spareWall,
    openings: local.map(move),
    chosen: chosen === null ? null : move(chosen),
    lanes: lanes === null ? null : { from: lanes.from + shift, outer: lanes.outer },
  };
}

function nextFree(before: readonly PlacedOpening[], scale: number, spareGap: number): number {
  const last = before.at(-1);
  return last === undefined ? 0 : last.right + USUAL_GAP * scale + spareGap;
}

/** To the left of the opening if nothing stands there, else to its right, else left of everything in the room. */
function findLanes(
  chosen: PlacedOpening,
  all: readonly PlacedOpening[],
  breadth: number,
): { from: number; outer: 1 | -1 } {
  const others = all.filter((opening) => opening !== chosen);
  const isFree = (from: number, to: number) => others.every((other) => other.right <= from || other.left >= to);
  if (isFree(chosen.left - breadth, chosen.left)) return { from: chosen.left, outer: -1 };
  if (isFree(chosen.right, chosen.right + breadth)) return { from: chosen.right, outer: 1 };
  return { from: Math.min(...all.map((opening) => opening.left)), outer: -1 };
}
