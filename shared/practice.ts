/**
 * The decorator's own practice: allowances, fullness, rounding. Engines take it as data; nothing in it is a literal in
 * a formula. Defaults for inch and metric households stand in `practice-defaults.ts`.
 */
import type { Ticks } from './length.ts';
import type { ValancePractice } from './treatments/valance-practice.ts';
import type { CornicePractice } from './treatments/cornice-practice.ts';
import type { SwagsPractice } from './treatments/swags-practice.ts';
import type { RomanShadePractice } from './treatments/roman-shade.ts';
import type { BedSkirtPractice } from './treatments/bed-skirt.ts';
import type { ShowerCurtainPractice } from './treatments/shower-curtain.ts';
import type { Heading } from './words.ts';

/** Fullness as a whole number of thousandths: 2.5 times is 2500. */
export type Thousandths = number;

export const WIDTH_ROUNDINGS = ['up', 'half-up', 'nearest-half'] as const;
export const REPEAT_RULES = ['whole', 'add-one'] as const;
export const SEAM_MATCHES = ['usable', 'whole-repeats'] as const;
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

/** Distances along a heading. */
export interface HeadingSpacing {
  /** Between two grommets, at the most; they are spaced again evenly. */
  readonly grommet: Ticks;
  /** Between two grommets, at the least. */
  readonly grommetLeast: Ticks;
  /** From a side edge to its first grommet. */
  readonly grommetEdge: Ticks;
  /** Outer diameter of a grommet: no seam under it. */
  readonly grommetRing: Ticks;
  /** The most that is trimmed off at the wall side to move a seam from under a grommet. */
  readonly grommetTrim: Ticks;
  /** Between two gliders of a wave track. */
  readonly glider: Ticks;
  /** Flat cloth beyond the first and last glider, both ends of one panel together. */
  readonly waveEnds: Ticks;
  readonly tab: Ticks;
  /** Between two hooks of a gathered tape. */
  readonly hook: Ticks;
  /** Between two rings or clips of a flat panel. */
  readonly clip: Ticks;
}

export interface TabAllowances {
  /** Finished width of one tab. */
  readonly width: Ticks;
  /** From the top of the panel to the top of the rod. */
  readonly drop: Ticks;
  readonly seam: Ticks;
}

/** Treatments at one opening, one before another. */
export interface LayeringAllowances {
  /** Return of a drapery over another, at the least. */
  readonly drapery: Ticks;
  /** From the front of what hangs behind to what hangs before it, at the least. */
  readonly clear: Ticks;
  /** How far what covers the head goes past a rod underneath, on each side, at the least. */
  readonly past: Ticks;
}

export interface BandAllowances {
  /** Lost at each long edge of a strip. */
  readonly seam: Ticks;
}

/** Where the hem ends when the length is found from the fixing. */
export interface HangAllowances {
  /** Clear of the floor. */
  readonly floor: Ticks;
  /** Clear of the sill. */
  readonly sill: Ticks;
  /** Below the sill. */
  readonly apron: Ticks;
  /** Bent where it meets the floor. */
  readonly break: Ticks;
  /** Lying on the floor. */
  readonly puddle: Ticks;
  /** Lying on the floor in folds. */
  readonly fullPuddle: Ticks;
}

/** Rod pocket: rod diameter, a turn and some ease; a header above the pocket counts besides. */
export interface PocketAllowances {
  readonly turn: Ticks;
  readonly ease: Ticks;
}

/** Sheers show every turn and seam: deeper hems, narrower sides, fuller. */
export interface SheerPractice {
  readonly fullness: Readonly<Record<Heading, Thousandths>>;
  readonly leastFullness: Readonly<Record<Heading, Thousandths>>;
  readonly bottomHem: Ticks;
  readonly sideHem: Ticks;
}

export interface StackRange {
  readonly least: Ticks;
  readonly most: Ticks;
}

/** What is left over goes back on the shelf from this size on. */
export interface RemnantSize {
  readonly length: Ticks;
  readonly width: Ticks;
}

export interface Practice {
  readonly fullness: Readonly<Record<Heading, Thousandths>>;
  /** `whole`: fullness acts on face, overlap and returns; `face`: on face and overlap, the returns are added flat. */
  readonly fullnessOver: (typeof FULLNESS_BASES)[number];
  /** Added above the finished length of each face cut, by heading and by whether anything hangs behind. */
  readonly headingAllowance: Readonly<Record<Heading, { readonly unlined: Ticks; readonly lined: Ticks }>>;
  readonly bottomHem: Ticks;
  /** In total, of what lies on the floor: nobody sees it, so it is single. */
  readonly puddleHem: Ticks;
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
  /** What a joined width of a pattern brings: all that is usable, or whole repeats across, so that seams read on. */
  readonly seamMatch: (typeof SEAM_MATCHES)[number];
  readonly orderFrom: (typeof ORDER_BASES)[number];
  readonly orderExtra: (typeof ORDER_EXTRAS)[number];
  readonly orderStep: Ticks;
  readonly remnant: RemnantSize;
  /** The widest span between two brackets of a rod. */
  readonly bracketSpacing: Ticks;
  /** Pleats in one width at the usual fullness; half widths round down. */
  readonly pleatsPerWidth: number;
  /** The width of cloth that `pleatsPerWidth` counts on: much wider or narrower cloth is counted by its flat width. */
  readonly pleatsClothWidth: Ticks;
  readonly spacing: HeadingSpacing;
  readonly tab: TabAllowances;
  readonly pocket: PocketAllowances;
  readonly hang: HangAllowances;
  readonly band: BandAllowances;
  /** Of one treatment before another. */
  readonly layers: LayeringAllowances;
  /** What a motor takes of the track at its end. */
  readonly motor: StackRange;
  readonly sheer: SheerPractice;
  /** Wall that one width of cloth takes when drawn back, by what hangs behind. */
  readonly stackback: { readonly unlined: StackRange; readonly lined: StackRange; readonly interlined: StackRange };
  readonly lining: LayerAllowances;
  readonly interlining: LayerAllowances;
  readonly valance: ValancePractice;
  readonly cornice: CornicePractice;
  readonly swags: SwagsPractice;
  readonly romanShade: RomanShadePractice;
  readonly bedSkirt: BedSkirtPractice;
  readonly showerCurtain: ShowerCurtainPractice;
}
