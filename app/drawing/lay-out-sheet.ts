/** Lays out one sheet: scale, floor line, and where rooms, openings and lanes of dimension lines stand. Points. */
import { planAcrossLanes, planUprightLanes, spaceUprightLanes } from './dimension-opening.ts';
import type { Wording } from './dimension-opening.ts';
import type { RoomsInput } from './drawn-room.ts';
import { placeRooms } from './place-rooms.ts';
import type { Arrangement } from './place-rooms.ts';
import { INCH } from './measure-given.ts';
import { reckonRoom } from './reckon-opening.ts';
import type { ReckonedOpening, ReckonedRoom } from './reckon-opening.ts';
import { SHEET_STYLES } from './sheet-style.ts';
import type { SheetStyle } from './sheet-style.ts';

/** All that the parts of one sheet share. Points. */
export interface Sheet extends Arrangement {
  readonly width: number;
  readonly height: number;
  readonly floor: number;
  readonly style: SheetStyle;
  readonly wording: Wording;
  readonly selected: string | null;
  readonly detail: 'screen' | 'paper';
  /** Where dimension lines across lie, from the lowest upwards. */
  readonly lanes: readonly number[];
  /** Baseline of the rooms' names. */
  readonly heads: number;
}

/** A wall that nobody has measured is taken for about 8 ft, so that an empty sheet has a sane scale. */
const LEAST_TOP = 84 * INCH;
/** Share of the sheet's width that upright dimension lines may take. */
const MOST_LANES = 0.36;
/** Air between the highest thing and the first dimension line above it. */
const OVER_AIR = 12;

/** Two dimension lines are never nearer than a lane, and the whole is never higher than asked (but for an unusably low sheet). */
export function layOutSheet(input: RoomsInput): Sheet {
  const style = SHEET_STYLES[input.detail];
  const width = Math.max(60, finite(input.width, 600));
  const most = Math.max(60, finite(input.height, 300));
  const wording: Wording = { units: input.units, decimal: input.decimal ?? '.' };
  const rooms = input.rooms.map(reckonRoom);
  const top = Math.max(LEAST_TOP, ...rooms.map((room) => room.top));
  const measured = rooms.filter((room) => input.selected === null || holds(room, input.selected));
  const laneCount = Math.max(
    0,
    ...measured.flatMap((room) => room.openings.map((one) => planAcrossLanes(one, wording).length)),
  );
  const head = style.room * 1.5;
  const foot = style.name * 1.9 + style.strong + (input.rooms.length > 1 || crowded(rooms) ? style.name * 1.35 : 0);
  const laneBreadth = (opening: ReckonedOpening) => {
    const { breadth } = spaceUprightLanes(planUprightLanes(opening, wording), style);
    return breadth > width * MOST_LANES ? 0 : breadth;
  };
  const room = most - head - foot;
  const highest = Math.max(0, ...measured.flatMap((one) => one.openings.map((opening) => opening.top)));
  const ceilings = measured.filter((one) => one.ceiling.given !== null).map((one) => one.ceiling.ticks);
  const reach = (scale: number) => laneReach(stackLanes({ laneCount, highest, ceilings, scale, style }), style);
  let mostScale = Math.max(1, room) / top;
  for (let step = 0; step < 8 && reach(mostScale) > room; step += 1) {
    mostScale = Math.max(1, room - (reach(mostScale) - highest * mostScale)) / highest;
  }
  const arrangement = placeRooms({ rooms, selected: input.selected, width, mostScale, laneBreadth });
  const { scale } = arrangement;
  const floor = head + Math.max(top * scale, reach(scale));
  return {
    ...arrangement,
    width,
    height: floor + foot,
    floor,
    style,
    wording,
    selected: input.selected,
    detail: input.detail,
    lanes: stackLanes({ laneCount, highest, ceilings, scale, style }).map((above) => floor - above),
    heads: style.room * 0.95,
  };
}

interface LaneStack {
  readonly laneCount: number;
  /** In ticks. */
  readonly highest: number;
  readonly ceilings: readonly number[];
  readonly scale: number;
  readonly style: SheetStyle;
}

/** Heights of the lanes across over the floor, in points: from the highest thing upwards, stepping over ceiling lines. */
function stackLanes({ laneCount, highest, ceilings, scale, style }: LaneStack): readonly number[] {
  const lanes: number[] = [];
  const clear = style.figure * 0.8;
  for (let lane = 0; lane < laneCount; lane += 1) {
    let above = (lanes.at(-1) ?? highest * scale + OVER_AIR - style.lane) + style.lane;
    for (const ceiling of [...ceilings].sort((a, b) => a - b)) {
      if (Math.abs(ceiling * scale - above) < clear) above = ceiling * scale + clear;
    }
    lanes.push(above);
  }
  return lanes;
}

function laneReach(lanes: readonly number[], style: SheetStyle): number {
  const last = lanes.at(-1);
  return last === undefined ? 0 : last + style.figure * 0.7;
}

function holds(room: ReckonedRoom, key: string): boolean {
  return room.openings.some((opening) => opening.source.key === key);
}

/** Several names in a row may need a second row. */
function crowded(rooms: readonly ReckonedRoom[]): boolean {
  return rooms.some((room) => room.openings.length > 1);
}

function finite(value: number, fallback: number): number {
  return Number.isFinite(value) ? value : fallback;
}
