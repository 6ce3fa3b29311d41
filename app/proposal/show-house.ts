/** The elevations that the paper prints, each drawn from what was measured and from what was taken off. */
import type { Job, Room } from '#shared/job.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { decimalSign } from '#shared/locale.ts';
import type { TreatmentResult } from '#shared/result.ts';
import { drawRoom, drawRooms } from '#app/drawing/draw-room.ts';
import type { DrawnRoom, DrawnTreatment } from '#app/drawing/drawn-room.ts';
import type { Drawing } from '#app/drawing/shape.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { describeDrawn } from '#app/drawing/describe-drawn.ts';

/** Content width of the paper, in points. */
const PAPER_WIDTH = 504;
const ROOM_HEIGHT = 164;
/** By the number of windows: the table of prices under it wants room too. */
const HOUSE_HEIGHTS = { few: 165, several: 118 };
const FEW = 3;
/** More windows than this would be drawn too small to be known again. */
const MOST_OPENINGS = 6;

export type ResultsByKey = ReadonlyMap<string, TreatmentResult>;

/** One room with the chosen opening dimensioned and marked. */
export function showRoom(job: Job, room: Room, openingKey: string, results: ResultsByKey): Drawing {
  return drawRoom({
    room: drawnRoom(job, room, results),
    width: PAPER_WIDTH,
    height: ROOM_HEIGHT,
    units: job.units,
    decimal: decimalSign(job.locale),
    selected: openingKey,
    detail: 'paper',
  });
}

/** All rooms on one floor line; null where nothing or too much would be seen. */
export function showHouse(job: Job, results: ResultsByKey): Drawing | null {
  const rooms = job.rooms.filter((room) => room.openings.some((opening) => opening.treatments.length > 0));
  const count = rooms.reduce((sum, room) => sum + room.openings.length, 0);
  if (count === 0 || count > MOST_OPENINGS) return null;
  return drawRooms({
    rooms: rooms.map((room) => drawnRoom(job, room, results)),
    width: PAPER_WIDTH,
    height: count <= FEW ? HOUSE_HEIGHTS.few : HOUSE_HEIGHTS.several,
    units: job.units,
    decimal: decimalSign(job.locale),
    selected: null,
    detail: 'paper',
  });
}

function drawnRoom(job: Job, room: Room, results: ResultsByKey): DrawnRoom {
  return {
    key: room.key,
    name: room.name,
    ceiling: room.ceiling,
    openings: room.openings.map((opening) => ({
      key: opening.key,
      name: opening.name,
      width: opening.width,
      height: opening.height,
      sill: opening.sill,
      at: opening.at,
      heatSourceBelow: opening.heatSourceBelow,
      treatments: opening.treatments.map((treatment) => drawnAdvised(job, treatment, results.get(treatment.key))),
    })),
  };
}

/** As the advised option makes it; before there is a result, from the measurements alone. */
export function drawnAdvised(job: Job, treatment: Treatment, result: TreatmentResult | undefined): DrawnTreatment {
  const made = result?.tiers[result.advised.tier] ?? null;
  return describeDrawn(treatment, made, (id) => resolveCloth(id, job.cloth));
}
