/**
 * Documented defaults of the practice, for inch and for metric households. All are common practice (heading and hem of
 * 16 in together, doubled 4 in hem, doubled 1 1/2 in sides); a decorator overwrites any of them.
 */
import { lengthFrom } from './length.ts';
import type { LengthUnit, Ticks } from './length.ts';
import type {
  BandAllowances,
  HangAllowances,
  HeadingSpacing,
  LayerAllowances,
  LayeringAllowances,
  PocketAllowances,
  Practice,
  RemnantSize,
  StackRange,
  TabAllowances,
  Thousandths,
} from './practice.ts';
import { defaultValancePractice } from './treatments/valance-practice.ts';
import { defaultCornicePractice } from './treatments/cornice-practice.ts';
import { defaultSwagsPractice } from './treatments/swags-practice.ts';
import { defaultRomanShadePractice } from './treatments/roman-shade.ts';
import { defaultBedSkirtPractice } from './treatments/bed-skirt.ts';
import { defaultShowerCurtainPractice } from './treatments/shower-curtain.ts';
import { HEADINGS } from './words.ts';
import type { Heading } from './words.ts';

/** Usual fullness by heading, in thousandths (common practice; ranges: grommet 1.5-2, pinch 2-3, sheers to 4). */
export const USUAL_FULLNESS: Readonly<Record<Heading, Thousandths>> = {
  'pinch-pleat': 2500,
  goblet: 2250,
  'box-pleat': 3000,
  'pencil-pleat': 2250,
  'rod-pocket': 2250,
  tab: 1750,
  grommet: 1750,
  wave: 2000,
  flat: 1250,
};

/** What a heading still hangs well at: one width fewer is offered while it makes this. */
export const LEAST_FULLNESS: Readonly<Record<Heading, Thousandths>> = {
  'pinch-pleat': 2250,
  goblet: 2000,
  'box-pleat': 2750,
  'pencil-pleat': 2000,
  'rod-pocket': 2000,
  tab: 1500,
  grommet: 1500,
  wave: 1800,
  flat: 1100,
};

/** Sheers: three times, to four (common practice); the least is from memory. */
export const SHEER_FULLNESS = { fullness: 3000, leastFullness: 2500 } as const;

/** Headings that gather or pleat a sheer as full as it likes; eyelets, tabs and gliders keep their own fullness. */
export const FULL_SHEERS: readonly Heading[] = ['pinch-pleat', 'goblet', 'box-pleat', 'pencil-pleat', 'rod-pocket'];

/** A published table: 1 width 5, 1 1/2 7, 2 10, 2 1/2 12-13, 3 15, at 2.5 times. */
export const PLEATS_PER_WIDTH = 5;

/** Plain numbers of one unit system, in the wire form's shape: what the schema prints as defaults. */
export interface PracticeNumbers {
  readonly headingAllowance: Readonly<Record<Heading, number>>;
  readonly bottomHem: number;
  readonly puddleHem: number;
  readonly sideHem: number;
  readonly seam: number;
  readonly squaring: number;
  readonly orderStep: string;
  readonly remnant: Readonly<Record<keyof RemnantSize, number>>;
  readonly bracketSpacing: number;
  readonly pleatsClothWidth: number;
  readonly spacing: Readonly<Record<keyof HeadingSpacing, number>>;
  readonly tab: Readonly<Record<keyof TabAllowances, number>>;
  readonly pocket: Readonly<Record<keyof PocketAllowances, number>>;
  readonly hang: Readonly<Record<keyof HangAllowances, number>>;
  readonly band: Readonly<Record<keyof BandAllowances, number>>;
  readonly layers: Readonly<Record<keyof LayeringAllowances, number>>;
  readonly motor: Readonly<Record<keyof StackRange, number>>;
  readonly sheer: Readonly<Record<'bottomHem' | 'sideHem', number>>;
  readonly stackback: Readonly<Record<keyof Practice['stackback'], Readonly<Record<keyof StackRange, number>>>>;
  readonly lining: Readonly<Record<keyof LayerAllowances, number>>;
  readonly interlining: Readonly<Record<keyof LayerAllowances, number>>;
}

export const INCH_NUMBERS: PracticeNumbers = {
  headingAllowance: {
    'pinch-pleat': 8,
    goblet: 8,
    'box-pleat': 8,
    'pencil-pleat': 4,
    'rod-pocket': 6,
    tab: 2,
    grommet: 4.5,
    wave: 4,
    flat: 4,
  },
  bottomHem: 8,
  puddleHem: 4,
  sideHem: 3,
  seam: 0,
  squaring: 0,
  orderStep: '0.25 yd',
  remnant: { length: 36, width: 18 },
  bracketSpacing: 48,
  pleatsClothWidth: 54,
  spacing: {
    grommet: 6.5,
    grommetEdge: 2,
    ...{ grommetLeast: 4, grommetRing: 2.5, grommetTrim: 3 }, // from memory
    glider: 2.375,
    waveEnds: 2,
    tab: 7,
    hook: 3,
    clip: 6,
  },
  tab: { width: 2, drop: 3, seam: 0.5 },
  pocket: { turn: 0.5, ease: 0.5 },
  hang: { floor: 0.5, sill: 0.5, apron: 4, break: 1, puddle: 7, fullPuddle: 14 },
  band: { seam: 0.5 },
  // A drapery over another 6 to 6 1/2, a valance over a treatment its return and 2; how far past is from memory.
  layers: { drapery: 6, clear: 2, past: 1 },
  motor: { least: 2, most: 4 },
  sheer: { bottomHem: 10, sideHem: 2 },
  stackback: {
    unlined: { least: 4, most: 6 },
    lined: { least: 6, most: 8 },
    interlined: { least: 8, most: 12 },
  },
  lining: { headingAllowance: 3, bottomHem: 4, shorter: 1, narrower: 0, sideHem: 0 },
  interlining: { headingAllowance: 4, bottomHem: 0, shorter: 0, narrower: 0, sideHem: 0 },
};

export const CENTIMETRE_NUMBERS: PracticeNumbers = {
  headingAllowance: {
    'pinch-pleat': 20,
    goblet: 20,
    'box-pleat': 20,
    'pencil-pleat': 10,
    'rod-pocket': 15,
    tab: 5,
    grommet: 11.5,
    wave: 10,
    flat: 10,
  },
  bottomHem: 20,
  puddleHem: 10,
  sideHem: 7.5,
  seam: 0,
  squaring: 0,
  orderStep: '0.1 m',
  remnant: { length: 100, width: 45 },
  bracketSpacing: 120,
  pleatsClothWidth: 137,
  spacing: {
    grommet: 16.5,
    grommetEdge: 5,
    ...{ grommetLeast: 10, grommetRing: 6.5, grommetTrim: 7.5 }, // from memory
    glider: 6,
    waveEnds: 5,
    tab: 18,
    hook: 8,
    clip: 15,
  },
  tab: { width: 5, drop: 7.5, seam: 1.5 },
  pocket: { turn: 1.5, ease: 1.5 },
  hang: { floor: 1.5, sill: 1.5, apron: 10, break: 2.5, puddle: 18, fullPuddle: 35 },
  band: { seam: 1.5 },
  layers: { drapery: 15, clear: 5, past: 2.5 },
  motor: { least: 5, most: 10 },
  sheer: { bottomHem: 25, sideHem: 5 },
  stackback: {
    unlined: { least: 10, most: 15 },
    lined: { least: 15, most: 20 },
    interlined: { least: 20, most: 30 },
  },
  lining: { headingAllowance: 7.5, bottomHem: 10, shorter: 2.5, narrower: 0, sideHem: 0 },
  interlining: { headingAllowance: 10, bottomHem: 0, shorter: 0, narrower: 0, sideHem: 0 },
};

/** The defaults of a household that measures in `unit`, parsed. */
export function defaultPractice(unit: LengthUnit): Practice {
  const numbers = unit === 'in' ? INCH_NUMBERS : CENTIMETRE_NUMBERS;
  const length = (value: number): Ticks => lengthFrom(value, unit === 'in' ? 'in' : 'cm');
  const lengths = <Name extends string>(given: Readonly<Record<Name, number>>): Record<Name, Ticks> =>
    Object.fromEntries(Object.entries<number>(given).map(([name, value]) => [name, length(value)])) as Record<
      Name,
      Ticks
    >;
  const both = (value: Ticks) => ({ unlined: value, lined: value });
  return {
    fullness: USUAL_FULLNESS,
    fullnessOver: 'whole',
    headingAllowance: byHeading((heading) => both(length(numbers.headingAllowance[heading]))),
    bottomHem: length(numbers.bottomHem),
    puddleHem: length(numbers.puddleHem),
    sideHem: length(numbers.sideHem),
    hemsInWidth: false,
    seam: length(numbers.seam),
    squaring: length(numbers.squaring),
    shrinkage: 0,
    leastFullness: LEAST_FULLNESS,
    widthRounding: 'up',
    repeatRule: 'whole',
    seamMatch: 'usable',
    orderFrom: 'plan',
    orderExtra: 'one-repeat',
    orderStep: unit === 'in' ? lengthFrom(0.25, 'yd') : lengthFrom(0.1, 'm'),
    remnant: lengths(numbers.remnant),
    bracketSpacing: length(numbers.bracketSpacing),
    pleatsPerWidth: PLEATS_PER_WIDTH,
    pleatsClothWidth: length(numbers.pleatsClothWidth),
    spacing: lengths(numbers.spacing),
    tab: lengths(numbers.tab),
    pocket: lengths(numbers.pocket),
    hang: lengths(numbers.hang),
    band: lengths(numbers.band),
    layers: lengths(numbers.layers),
    motor: lengths(numbers.motor),
    sheer: {
      fullness: fullSheers(SHEER_FULLNESS.fullness, USUAL_FULLNESS),
      leastFullness: fullSheers(SHEER_FULLNESS.leastFullness, LEAST_FULLNESS),
      ...lengths(numbers.sheer),
    },
    stackback: {
      unlined: lengths(numbers.stackback.unlined),
      lined: lengths(numbers.stackback.lined),
      interlined: lengths(numbers.stackback.interlined),
    },
    lining: lengths(numbers.lining),
    interlining: lengths(numbers.interlining),
    valance: defaultValancePractice(unit),
    cornice: defaultCornicePractice(unit),
    swags: defaultSwagsPractice(unit),
    romanShade: defaultRomanShadePractice(unit),
    bedSkirt: defaultBedSkirtPractice(unit),
    showerCurtain: defaultShowerCurtainPractice(unit),
  };
}

function fullSheers(full: Thousandths, others: Practice['fullness']): Practice['fullness'] {
  return byHeading((heading) => (FULL_SHEERS.includes(heading) ? full : others[heading]));
}

/** A record with one entry for each heading. */
export function byHeading<T>(make: (heading: Heading) => T): Record<Heading, T> {
  return Object.fromEntries(HEADINGS.map((heading) => [heading, make(heading)])) as Record<Heading, T>;
}
