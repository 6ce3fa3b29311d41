/** A bed or a bath as a drawing takes it: what hangs on it is measured, what it stands for is assumed and drawn faint. */
import type { DrawnBedSkirt, DrawnFurniture, DrawnShowerCurtain } from './drawn-room.ts';
import { FINIAL, INCH, take, takeCount } from './measure-given.ts';
import type { Measure } from './measure-given.ts';

interface Placed {
  /** Left end of all that is drawn of it, and how wide that is, from the opening's left edge. */
  readonly at: number;
  readonly span: number;
  /** Highest point from the floor. */
  readonly high: number;
}

export interface ReckonedBed extends Placed {
  readonly kind: 'bed-skirt';
  readonly source: DrawnBedSkirt;
  /** Seen from its side, and beside that from its foot (of a day bed from its end). */
  readonly sideView: BedView;
  readonly footView: BedView;
  readonly drop: Measure;
  /** Hem from the floor. */
  readonly hem: number;
}
export interface BedView {
  /** Left end of the skirt from the left end of all. */
  readonly at: number;
  readonly wide: Measure;
  /** Box pleats, or folds, that are seen. */
  readonly folds: number;
}
export interface ReckonedBath extends Placed {
  readonly kind: 'shower-curtain';
  readonly source: DrawnShowerCurtain;
  readonly rod: Measure;
  readonly width: Measure;
  readonly length: Measure;
  readonly top: number;
  readonly hem: number;
  /** Eyelets of one piece. */
  readonly eyelets: number;
}
export type ReckonedFurniture = ReckonedBed | ReckonedBath;

/** Clear of the floor unless the drop says otherwise (common practice: half an inch). */
const BED_CLEARANCE = INCH / 2;
/** Assumed: a mattress this thick, a head board this high over the platform. */
export const MATTRESS = 11 * INCH;
export const HEAD_BOARD = 26 * INCH;
export const HEAD_BOARD_THICK = 2.5 * INCH;
const BETWEEN_VIEWS = 14 * INCH;
/** A shower curtain hangs clear of the floor by about this (from memory). */
const CURTAIN_CLEARANCE = 4 * INCH;
export const TUB = { length: 60 * INCH, height: 19 * INCH } as const;

export function reckonFurniture(source: DrawnFurniture, at: number, wall: Measure | null): ReckonedFurniture {
  return source.kind === 'bed-skirt' ? reckonBed(source, at) : reckonBath(source, at, wall);
}

function reckonBed(source: DrawnBedSkirt, at: number): ReckonedBed {
  const long = take(source.bed.length, 'bed');
  const wide = take(source.bed.width, 'bed', 60 * INCH);
  const drop = take(source.drop, 'drop');
  const headed = source.against === 'head';
  const head = headed ? HEAD_BOARD_THICK : 0;
  const full = source.fullness !== null && Number.isFinite(source.fullness) ? Math.max(1, source.fullness) : 2.5;
  const foldsOf = (measure: Measure, given: number | null) => {
    const folds = {
      gathered: (measure.ticks * full) / (7.7 * INCH),
      'box-pleated': measure.ticks / (6 * INCH),
      tailored: 1,
    }[source.style];
    return takeCount(source.style === 'box-pleated' ? given : null, folds, 1, 90);
  };
  const footAt = head + long.ticks + BETWEEN_VIEWS;
  return {
    kind: 'bed-skirt',
    source,
    at,
    span: footAt + wide.ticks,
    sideView: { at: head, wide: long, folds: foldsOf(long, source.pleats) },
    footView: { at: footAt, wide, folds: foldsOf(wide, null) },
    drop,
    hem: BED_CLEARANCE,
    high: BED_CLEARANCE + drop.ticks + (headed ? HEAD_BOARD : MATTRESS + 3 * INCH),
  };
}

function reckonBath(source: DrawnShowerCurtain, at: number, wall: Measure | null): ReckonedBath {
  const width = take(source.finishedWidth, 'rodWidth', 72 * INCH);
  const length = take(source.finishedLength, 'length', 72 * INCH);
  const rod = wall ?? take(null, 'rodWidth', Math.min(width.ticks, Math.max(TUB.length, width.ticks * 0.83)));
  const top = length.ticks + CURTAIN_CLEARANCE;
  const pieces = source.arrangement === 'pair' ? 2 : 1;
  return {
    kind: 'shower-curtain',
    source,
    at,
    span: rod.ticks + 2 * FINIAL,
    rod,
    width,
    length,
    top,
    hem: CURTAIN_CLEARANCE,
    high: top + 4 * INCH,
    eyelets: takeCount(source.eyelets, width.ticks / pieces / (6 * INCH), 2, 60),
  };
}
