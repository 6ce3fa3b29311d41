/** What the lit window is drawn from: the treatment closed at noon with the light behind it. */
import type { Arrangement, Heading } from '#shared/words.ts';
import type { DrawnHung, DrawnOpening, DrawnPanels, Given, Hex } from './drawn-room.ts';

interface LitBase {
  /** The cloth as seen from the room at noon (computed by `app/lining`). */
  readonly dayColour: Hex;
  /** Light left in the room against outdoors, 0..1: tints the walls. */
  readonly roomLight: number;
  /** Share of the window left open round the edges, 0..1: lights edges, top and floor. */
  readonly openShare: number;
  /** In words, for the title: `at noon` unless told. */
  readonly when?: string;
  readonly width: number;
  readonly height: number;
  readonly detail: 'screen' | 'paper';
}

export interface LitPanelsInput extends LitBase {
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly rodWidth: Given;
  readonly finishedLength: Given;
  readonly fullness: number | null;
  readonly halfWidths: number | null;
  readonly pleats: number | null;
  /** Hem to floor; null draws a half inch. */
  readonly floorClearance: Given;
}

/** A shade let down, or what covers the top of a window alone and leaves the glass under it bare. */
export interface LitHungInput extends LitBase {
  readonly hung: Exclude<DrawnHung, DrawnPanels>;
  readonly opening: Pick<DrawnOpening, 'width' | 'height' | 'sill'>;
}

export type LitWindowInput = LitPanelsInput | LitHungInput;
