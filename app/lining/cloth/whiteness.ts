/**
 * How white a cloth is by daylight, in the numbers that finishers print on a sample: CIE whiteness and tint (CIE 15, second-hand)
 * and the yellowness index of ASTM E313 (second-hand), both under D65 at 2 degrees. Nothing is chosen by them: true colour is a
 * difference, CIEDE2000.
 */
import type { Xyz } from '../light-and-heat/colour.ts';

export interface Whiteness {
  /** 100 is a perfect white; a blue-white is above it. */
  readonly white: number;
  /** Above 0 greenish, below reddish. */
  readonly tint: number;
}

/** CIE whiteness and tint against the white that it is seen under. */
export function reckonWhiteness(xyz: Xyz, white: Xyz): Whiteness {
  const [seen, neutral] = [chromaticityOf(xyz), chromaticityOf(white)];
  return whitenessAt(xyz.Y, seen, neutral);
}

interface Chromaticity {
  readonly x: number;
  readonly y: number;
}

/** W = Y + 800 (xn − x) + 1700 (yn − y); T = 1000 (xn − x) − 650 (yn − y). */
export function whitenessAt(Y: number, seen: Chromaticity, neutral: Chromaticity): Whiteness {
  const [dx, dy] = [neutral.x - seen.x, neutral.y - seen.y];
  return { white: Y + 800 * dx + 1700 * dy, tint: 1000 * dx - 650 * dy };
}

/** 100 (1.2985 X − 1.1335 Z) ÷ Y: 0 is white, above it yellow, below it blue. */
export function reckonYellowness({ X, Y, Z }: Xyz): number {
  return (100 * (1.2985 * X - 1.1335 * Z)) / Y;
}

function chromaticityOf({ X, Y, Z }: Xyz): Chromaticity {
  const sum = X + Y + Z;
  return { x: X / sum, y: Y / sum };
}
