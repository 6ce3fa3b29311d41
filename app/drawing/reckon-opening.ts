/** Rooms and openings reckoned from what has been typed so far (`measure-given.ts` tells how what is missing is shown). */
import type { DrawnOpening, DrawnRoom } from './drawn-room.ts';
import { isFurniture } from './drawn-treatment.ts';
import type { DrawnFurniture, DrawnHung } from './drawn-treatment.ts';
import { BOUNDS, CASING, INCH, SILL_HORN, take } from './measure-given.ts';
import type { Measure } from './measure-given.ts';
import { reckonFurniture } from './reckon-furniture.ts';
import type { ReckonedFurniture } from './reckon-furniture.ts';
import { hangingOrder, reckonTreatment } from './reckon-treatment.ts';
import type { ReckonedTreatment } from './reckoned.ts';

export interface ReckonedOpening {
  readonly source: DrawnOpening;
  /** False where only a bed or a bath stands: `width` is then its span, and nothing of a window is drawn or measured. */
  readonly window: boolean;
  readonly width: Measure;
  readonly height: Measure;
  readonly sill: Measure;
  readonly at: number | null;
  /** As they hang, nearest the glass first. */
  readonly treatments: readonly ReckonedTreatment[];
  /** Beds and baths, beside the window where there is one. */
  readonly furniture: readonly ReckonedFurniture[];
  /** How far the drawing reaches from the opening's left edge, and how high above the floor. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

export interface ReckonedRoom {
  readonly source: DrawnRoom;
  readonly ceiling: Measure;
  readonly openings: readonly ReckonedOpening[];
  /** Ceiling, or what stands highest. */
  readonly top: number;
}

export function reckonRoom(room: DrawnRoom): ReckonedRoom {
  const ceiling = take(room.ceiling, 'ceiling');
  const openings = room.openings.map((opening) => reckonOpening(opening, ceiling));
  const highest = Math.max(0, ...openings.map((opening) => opening.top));
  const top = ceiling.given === null ? Math.max(ceiling.ticks, highest + 8 * INCH) : Math.max(ceiling.ticks, highest);
  return { source: room, ceiling, openings, top };
}

/** Between a window and what stands beside it, and between two things that stand there. */
const BESIDE = 16 * INCH;

export function reckonOpening(opening: DrawnOpening, ceiling: Measure): ReckonedOpening {
  const hung = opening.treatments.filter((treatment): treatment is DrawnHung => !isFurniture(treatment));
  const standing = opening.treatments.filter(isFurniture);
  if (standing.length > 0 && hung.length === 0) return reckonCorner(opening, standing);
  const window = reckonWindow(opening, hung, ceiling);
  if (standing.length === 0) return window;
  const furniture = placeFurniture(standing, window.right + BESIDE, null);
  return {
    ...window,
    furniture,
    right: endOf(furniture, window.right),
    top: Math.max(window.top, ...furniture.map((piece) => piece.high)),
  };
}

function reckonWindow(opening: DrawnOpening, hung: readonly DrawnHung[], ceiling: Measure): ReckonedOpening {
  const width = take(opening.width, 'width');
  const height = take(opening.height, 'height');
  // Nobody has measured the sill: a tall opening is taken for a door, others keep a usual sill under the ceiling.
  const headroom = Math.max(0, ceiling.ticks - 6 * INCH - height.ticks);
  const usualSill = height.ticks >= 72 * INCH ? 0 : Math.min(BOUNDS.sill.usual * INCH, headroom);
  const sill = take(opening.sill, 'sill', usualSill);
  const head = sill.ticks + height.ticks;
  const hole = { width, sill: sill.ticks, head, ceiling };
  const treatments = hangingOrder(hung.map((treatment) => reckonTreatment(treatment, hole)));
  const reach = Math.max(...treatments.map((treatment) => treatment.reach), width.ticks / 2 + CASING + SILL_HORN);
  return {
    source: opening,
    window: true,
    width,
    height,
    sill,
    at: placeOf(opening),
    treatments,
    furniture: [],
    left: width.ticks / 2 - reach,
    right: width.ticks / 2 + reach,
    top: Math.max(head + CASING, ...treatments.map((treatment) => treatment.top + treatment.over)),
  };
}

/** A bed or a bath has no window of its own: the opening stands for its place on the wall. */
function reckonCorner(opening: DrawnOpening, standing: readonly DrawnFurniture[]): ReckonedOpening {
  const wall = opening.width === null ? null : take(opening.width, 'rodWidth');
  const furniture = placeFurniture(standing, 0, wall);
  const span = endOf(furniture, 0);
  const none: Measure = { ticks: 0, given: null, sure: false };
  return {
    source: opening,
    window: false,
    width: { ticks: span, given: null, sure: false },
    height: none,
    sill: none,
    at: placeOf(opening),
    treatments: [],
    furniture,
    left: 0,
    right: span,
    top: Math.max(...furniture.map((piece) => piece.high)),
  };
}

function placeFurniture(
  standing: readonly DrawnFurniture[],
  start: number,
  wall: Measure | null,
): readonly ReckonedFurniture[] {
  const placed: ReckonedFurniture[] = [];
  for (const piece of standing) {
    const last = placed.at(-1);
    placed.push(reckonFurniture(piece, last === undefined ? start : last.at + last.span + BESIDE, wall));
  }
  return placed;
}

function endOf(furniture: readonly ReckonedFurniture[], fallback: number): number {
  const last = furniture.at(-1);
  return last === undefined ? fallback : last.at + last.span;
}

function placeOf(opening: DrawnOpening): number | null {
  return opening.at === null || !Number.isFinite(opening.at) ? null : take(opening.at, 'at').ticks;
}
