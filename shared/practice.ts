/**
 * The decorator's own practice: allowances, fullness, rounding. Engines take it as data; nothing in it is a literal in
 * a formula. Defaults for inch and metric households stand in `practice-defaults.ts`.
 */
import type { Ticks } from './length.ts';
import type { Heading } from './words.ts';

/** Fullness as a whole number of thousandths: 2.5 times is 2500. */
export type Thousandths = number;

export const WIDTH_ROUNDINGS = ['up', 'half-up', 'nearest-half'] as const;
export const REPEAT_RULES = ['whole', 'add-one'] as const;
export const ORDER_BASES = ['plan', 'handbook'] as const;
export const ORDER_EXTRAS = ['none', 'one-repeat', 'repeat-or-yard'] as const;
export const FULLNESS_BASES = ['whole', 'face'] as const;

export interface LayerAllowances {
  readonly headingAllowance: Ticks;
  readonly bottomHem: Ticks;
  /** How much shorter than the face's finished length its finished cut is taken. */
  readonly shorter: Ticks;
  /** How much narrower each piece is cut than the face, when the layer is reckoned on its own width. */
  readonly narrower: Ticks;
  /** Total turned at one side edge. */
  readonly sideHem: Ticks;
}

export interface Practice {
  readonly fullness: Readonly<Record<Heading, Thousandths>>;
  /** `whole`: fullness acts on face, overlap and returns; `face`: on face and overlap, the returns are added flat. */
  readonly fullnessOver: (typeof FULLNESS_BASES)[number];
  /** Added above the finished length of each face cut, by heading and by whether anything hangs behind. */
  readonly headingAllowance: Readonly<Record<Heading, { readonly unlined: Ticks; readonly lined: Ticks }>>;
  readonly bottomHem: Ticks;
  readonly sideHem: Ticks;
  readonly hemsInWidth: boolean;
  /** Lost from each of two widths where they are joined. */
  readonly seam: Ticks;
  readonly squaring: Ticks;
  /** Share lost in washing, in millionths: 3 % is 30000. */
  readonly shrinkage: number;
  readonly leastFullness: Readonly<Record<Heading, Thousandths>>;
  readonly widthRounding: (typeof WIDTH_ROUNDINGS)[number];
  readonly repeatRule: (typeof REPEAT_RULES)[number];
  readonly orderFrom: (typeof ORDER_BASES)[number];
  readonly orderExtra: (typeof ORDER_EXTRAS)[number];
  readonly orderStep: Ticks;
  /** The widest span between two brackets of a rod. */
  readonly bracketSpacing: Ticks;
  readonly lining: LayerAllowances;
  readonly interlining: LayerAllowances;
}
