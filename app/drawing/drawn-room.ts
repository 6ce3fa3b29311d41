/**
 * What the elevation is drawn from. Every measurement may be missing (null), because the screen draws while somebody is
 * still typing: what is missing is assumed, drawn dashed, and never dimensioned. A `Room` of `shared/job.ts` fits in.
 */
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { DrawnTreatment } from './drawn-treatment.ts';

export type * from './drawn-treatment.ts';

export type Hex = `#${string}`;

/** A measurement of something drawn, in ticks; null when nobody has given it yet. */
export type Given = Ticks | null;

export interface DrawnOpening {
  readonly key: string;
  readonly name: string;
  readonly width: Given;
  readonly height: Given;
  readonly sill: Given;
  /** Left edge from the left end of the wall; null: after its neighbour. */
  readonly at: Given;
  readonly heatSourceBelow?: boolean;
  readonly treatments: readonly DrawnTreatment[];
}

export interface DrawnRoom {
  readonly key: string;
  readonly name: string;
  readonly ceiling: Given;
  readonly openings: readonly DrawnOpening[];
}

export interface SheetInput {
  /** Points wide: the drawing takes all of it. */
  readonly width: number;
  /** Points high at the most: the drawing takes what its scale needs. */
  readonly height: number;
  readonly units: LengthUnit;
  readonly decimal?: '.' | ',';
  /** Key of the chosen opening: it is fully dimensioned and marked by the thread; null: none. */
  readonly selected: string | null;
  /** `paper` sets smaller type and finer lines. */
  readonly detail: 'screen' | 'paper';
}

export interface RoomInput extends SheetInput {
  readonly room: DrawnRoom;
}

export interface RoomsInput extends SheetInput {
  /** Left to right. Rooms without the chosen opening are drawn paler on screen. */
  readonly rooms: readonly DrawnRoom[];
}
