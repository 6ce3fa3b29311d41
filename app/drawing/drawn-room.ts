/**
 * What the elevation is drawn from. Every measurement may be missing (null), because the screen draws while somebody is
 * still typing: what is missing is assumed, drawn dashed, and never dimensioned. A `Room` of `shared/job.ts` fits in.
 */
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Arrangement, Heading, MountPlace } from '#shared/words.ts';

export type Hex = `#${string}`;

/** A measurement of something drawn, in ticks; null when nobody has given it yet. */
export type Given = Ticks | null;

export interface DrawnPanels {
  readonly kind: 'panels';
  readonly key: string;
  readonly name: string;
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly mount: { readonly where: MountPlace; readonly above: Given };
  /** Rod face, bracket to bracket. */
  readonly rodWidth: Given;
  readonly finishedLength: Given;
  readonly returns: { readonly left: Given; readonly right: Given };
  readonly overlap: Given;
  /** Fullness as made (2.47), or as asked while nothing is made yet; null draws 2.5. */
  readonly fullness: number | null;
  /** Widths of all pieces together, in halves; null reckons them from fullness and a 54 in cloth. */
  readonly halfWidths: number | null;
  /** Pleats of all pieces together; null counts them from the widths (`countPleats`). */
  readonly pleats: number | null;
  /** Rod covered at each end by the open panels; null reckons it from the widths. A one-way draw has one side above 0. */
  readonly stackback: { readonly left: Given; readonly right: Given } | null;
  readonly drawn: 'open' | 'closed';
  /** Face colour towards the room; null draws undyed linen. */
  readonly colour: Hex | null;
}

/** Every kind that can be drawn; a new kind is one more variant, and the compiler names who must draw it. */
export type DrawnTreatment = DrawnPanels;

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
