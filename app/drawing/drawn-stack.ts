/** What the stack strip is drawn from: the layers of a stack from the room to the glass, and the light that each leaves. */
import type { FaceFamily, Glazing, InterliningFamily, LiningFamily } from '#shared/words.ts';
import type { Paint } from './shape.ts';
import type { Hex } from './drawn-room.ts';

interface LayerBase {
  /** What is written under it: `face`, `lining`, `soft blackout`. */
  readonly name: string;
  /** Null draws the family's usual colour. */
  readonly colour: Hex | null;
  /** Grams a square metre: heavier cloth is drawn thicker; null takes the family's usual. */
  readonly weight: number | null;
  /** Share of the daylight outside that is left on this layer's room side, 0..1 (computed by `app/lining`). */
  readonly light: number;
}
export interface DrawnFace extends LayerBase {
  readonly role: 'face';
  readonly family: FaceFamily;
}
export interface DrawnLining extends LayerBase {
  readonly role: 'lining';
  readonly family: LiningFamily;
}
export interface DrawnInterlining extends LayerBase {
  readonly role: 'interlining';
  readonly family: InterliningFamily;
}
export type DrawnLayer = DrawnFace | DrawnLining | DrawnInterlining;

export interface StripInput {
  /** Face first, then the layers behind it, room to street. */
  readonly layers: readonly DrawnLayer[];
  readonly glazing: Glazing;
  /** Share of the daylight outside that is left behind the glass, 0..1. */
  readonly lightBehindGlass: number;
  /** Points of daylight through the stitching are drawn. */
  readonly needleHoles: boolean;
  /** Points. Legible from 200 up. */
  readonly width: number;
  readonly detail: 'screen' | 'paper';
  /** The lamps are on and it is dark outside: no daylight is drawn. */
  readonly night?: boolean;
  /** What the strip lies on, into which the light fades: `card` unless told. */
  readonly ground?: Paint;
}
