/** What hangs at a window as it can be drawn: every measure known or assumed, in ticks, heights from the floor. */
import type { DrawnCornice, DrawnHung, DrawnPanels, DrawnRomanShade, DrawnSwags, DrawnValance } from './drawn-room.ts';
import type { Measure } from './measure-given.ts';

export interface ReckonedBase<Source extends DrawnHung> {
  readonly kind: Source['kind'];
  readonly source: Source;
  /** Rod face, board or shade, end to end; its middle is the opening's. */
  readonly rod: Measure;
  readonly above: Measure;
  /** Where the length starts, from the floor. */
  readonly top: number;
  readonly length: Measure;
  /** Hem from the floor; below 0 the cloth lies on it. */
  readonly hem: number;
  readonly returns: { readonly left: number; readonly right: number };
  /** From the middle of the opening to its outermost part. */
  readonly reach: number;
  /** What stands above `top`. */
  readonly over: number;
}

export interface ReckonedPanels extends ReckonedBase<DrawnPanels> {
  readonly kind: 'panels';
  readonly overlap: number;
  readonly stack: { readonly left: number; readonly right: number };
  readonly pieces: number;
  /** Folds of one piece. */
  readonly folds: number;
  /** 0 for a straight rod. */
  readonly arch: number;
}
export interface ReckonedValance extends ReckonedBase<DrawnValance> {
  readonly kind: 'valance';
  readonly header: number;
  /** Folds of what is gathered. */
  readonly folds: number;
  readonly pleats: number;
  readonly scallops: number;
  readonly scallopDepth: number;
  readonly puffs: number;
}
export interface ReckonedCornice extends ReckonedBase<DrawnCornice> {
  readonly kind: 'cornice';
}
export interface ReckonedTail {
  readonly longest: Measure;
  readonly shortest: Measure;
  readonly width: Measure;
  readonly pleats: number;
}
export interface ReckonedSwags extends ReckonedBase<DrawnSwags> {
  readonly kind: 'swags';
  readonly count: number;
  /** Finished width of one, and the left ends of all from the left end of the board. */
  readonly width: number;
  readonly lefts: readonly number[];
  readonly cascades: ReckonedTail | null;
  readonly jabots: ReckonedTail | null;
  /** Middles of the jabots, from the left end of the board. */
  readonly jabotsAt: readonly number[];
}
export interface ReckonedRomanShade extends ReckonedBase<DrawnRomanShade> {
  readonly kind: 'roman-shade';
  /** Rows of rings from the finished hem up, ascending. */
  readonly rows: readonly number[];
  /** Top to lowest point as it is drawn. */
  readonly shown: number;
  /** 0 without one. */
  readonly valance: number;
}
export type ReckonedTreatment = ReckonedPanels | ReckonedValance | ReckonedCornice | ReckonedSwags | ReckonedRomanShade;

/** The opening that it hangs at. */
export interface Hole {
  readonly width: Measure;
  readonly sill: number;
  /** Top of the opening from the floor. */
  readonly head: number;
  readonly ceiling: Measure;
}
