/** What the lit window is drawn from: the treatment closed at noon with the light behind it. */
import type { Arrangement, Heading } from '#shared/words.ts';
import type { DrawnHung, DrawnOpening, Given, Hex } from './drawn-room.ts';

export interface LitScene {
  /** The cloth as seen from the room at noon (computed by `app/lining`). */
  readonly dayColour: Hex;
  /** Light left in the room against outdoors, 0..1: tints the walls. */
  readonly roomLight: number;
  /** Share of the window left open round the edges, 0..1: lights edges, top and floor. */
  readonly openShare: number;
  /** How bright the sky behind bare glass is, 0 (night) to 1; noon unless told. */
  readonly sky?: number;
  /** A white wall of the room in the same light (computed by `app/lining`); reckoned from `roomLight` unless told. */
  readonly wall?: Hex;
  /** In words, for the title: `at noon` unless told. */
  readonly when?: string;
  readonly width: number;
  readonly height: number;
  readonly detail: 'screen' | 'paper';
}

export interface LitPanelsInput extends LitScene {
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

/** A shade let down, or what leaves glass bare: the top of a window, panels that do not draw, a café curtain. */
export interface LitHungInput extends LitScene {
  readonly hung: DrawnHung;
  readonly opening: Pick<DrawnOpening, 'width' | 'height' | 'sill'>;
}

export type LitWindowInput = LitPanelsInput | LitHungInput;
