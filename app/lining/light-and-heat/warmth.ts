/**
 * Winter: what drawn drapery adds to the window's thermal resistance. The sources spread eightfold, mostly by how well the
 * edges close, so it is a range chosen by the closing; the cloth moves it within that range, and adds its own
 * resistance only where air cannot pass round it.
 * Sources (light-and-heat 3): NatHERS add-on values 0.03, 0.06, 0.33; LBNL sealed to permeable 0.181 to 0.045; English
 * Heritage hot box, heavy curtains about 0.16; US DOE up to 10 % loose, up to 25 % sealed.
 */
import { draws } from './closing.ts';
import type { ClosingClass } from './closing.ts';

export type Range = readonly [number, number];

export interface Warmth {
  /** Added resistance, m2K/W. */
  readonly range: Range;
  readonly middle: number;
  /** The cloth's own resistance, middle of its range, m2K/W. */
  readonly cloth: number;
  /** W/m2K of the glass alone, and with the drapery drawn (low and high). */
  readonly U: number;
  readonly withDrapery: Range;
  /** Share of the heat loss saved, low and high. */
  readonly saved: Range;
}

/** Added resistance by how it closes, before the cloth, m2K/W. */
const BY_CLOSING: Readonly<Record<'open' | 'close' | 'sealed', Range>> = {
  open: [0.03, 0.06],
  close: [0.08, 0.12],
  sealed: [0.15, 0.25],
};
/** No source gives more than this for any drapery (NatHERS, heavy with pelmet). */
export const MOST_ADDED = 0.33;
/** Conductivity of still textile, W/mK, low and high. */
const CONDUCTIVITY: Range = [0.04, 0.06];
/** Half of an open range is what the sources disagree by for one cloth; the other half is what the cloth decides. */
const OPEN_SPREAD = 0.6;
/** A stack of this resistance takes an open range to its upper end, m2K/W. */
const FULL_CLOTH = 0.1;

/** `thicknesses` in mm, of all layers; `covered` is the share of the opening that the drawn treatment covers. */
export function reckonWarmth(
  closing: ClosingClass,
  thicknesses: readonly number[],
  U: number,
  covered: number,
): Warmth {
  const metres = thicknesses.reduce((sum, mm) => sum + mm, 0) / 1000;
  const cloth: Range = [metres / CONDUCTIVITY[1], metres / CONDUCTIVITY[0]];
  const middleCloth = (cloth[0] + cloth[1]) / 2;
  const range = addedRange(closing, cloth, middleCloth, covered);
  const withDrapery: Range = [closedU(U, range[1]), closedU(U, range[0])];
  return {
    range,
    middle: (range[0] + range[1]) / 2,
    cloth: middleCloth,
    U,
    withDrapery,
    saved: [1 - withDrapery[1] / U, 1 - withDrapery[0] / U],
  };
}

function addedRange(closing: ClosingClass, cloth: Range, middleCloth: number, covered: number): Range {
  if (!draws(closing)) return [0, BY_CLOSING.open[0] * covered];
  const [low, high] = BY_CLOSING[closing];
  if (closing === 'open') {
    const width = OPEN_SPREAD * (high - low);
    const from = low + (high - low - width) * Math.min(1, middleCloth / FULL_CLOTH);
    return [from, from + width];
  }
  return [Math.min(MOST_ADDED, low + cloth[0]), Math.min(MOST_ADDED, high + cloth[1])];
}

/** One R of inch households, h ft2 F/Btu, in m2K/W (exact definitions of foot, Fahrenheit and Btu IT). */
export const M2K_PER_R = (3600 * 0.3048 ** 2 * (5 / 9)) / 1055.05585262;

/** U' = 1 / (1/U + dR), W/m2K. */
export function closedU(U: number, dR: number): number {
  return 1 / (1 / U + dR);
}

/** The resistance that a measured change of U implies: dR = 1/U1 - 1/U0. */
export function addedResistance(U0: number, U1: number): number {
  return 1 / U1 - 1 / U0;
}

export type Permeability = 'high' | 'average' | 'low' | 'tight';

/** By analogy with shutters, ISO 10077-1 (from memory): a cross-check of the ranges. `Rsh` is the cloth's own, m2K/W. */
export function shutterResistance(permeability: Permeability, Rsh: number): number {
  const [factor, constant] = {
    high: [0.25, 0.09],
    average: [0.55, 0.11],
    low: [0.8, 0.14],
    tight: [0.95, 0.17],
  }[permeability] as [number, number];
  return factor * Rsh + constant;
}
