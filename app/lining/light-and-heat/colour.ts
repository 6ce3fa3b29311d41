/**
 * Colour from spectra and back: XYZ and Lab under D65 (2 degrees), and sRGB (IEC 61966-2-1). Sixteen bands see white a
 * little differently from the full table, so Lab is taken against the white of the bands themselves, and XYZ is scaled
 * channel by channel on its way to and from sRGB: a flat spectrum is exactly neutral.
 */
import { BANDS_NM, WEIGHTS } from './observer.ts';
import { toByte } from './round-figures.ts';
import { StackFault } from '../stack-fault.ts';

/** Shares of one in the 16 bands of `BANDS_NM`. */
export type Spectrum = readonly number[];
export interface Xyz {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** XYZ of a spectrum under D65; Y of a perfect white is 100. Throws `StackFault` when bands are missing. */
export function xyzOf(spectrum: Spectrum): Xyz {
  if (spectrum.length !== BANDS_NM.length || !spectrum.every(Number.isFinite)) {
    throw new StackFault('missing-spectrum', {
      path: 'spectrum',
      wrong: `${spectrum.filter(Number.isFinite).length} of ${BANDS_NM.length} bands are given`,
      right: 'give every band from 400 to 700 nm by 20 nm',
    });
  }
  return { X: weigh(WEIGHTS.X, spectrum), Y: weigh(WEIGHTS.Y, spectrum), Z: weigh(WEIGHTS.Z, spectrum) };
}

function weigh(weights: readonly number[], spectrum: Spectrum): number {
  return weights.reduce((sum, weight, i) => sum + weight * (spectrum[i] ?? 0), 0);
}

/** The visible share of a spectrum: Y over 100. */
export function visibleShare(spectrum: Spectrum): number {
  return weigh(WEIGHTS.Y, spectrum) / 100;
}

/** A perfect white through the 16 bands. */
export const BAND_WHITE: Xyz = {
  X: WEIGHTS.X.reduce((sum, w) => sum + w, 0),
  Y: 100,
  Z: WEIGHTS.Z.reduce((sum, w) => sum + w, 0),
};

const EPSILON = 216 / 24389;
const KAPPA = 24389 / 27;

function labRoot(t: number): number {
  return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
}

/** CIE 1976 L*a*b* against the white of the bands. */
export function labOf(xyz: Xyz, white: Xyz = BAND_WHITE): Lab {
  const fx = labRoot(xyz.X / white.X);
  const fy = labRoot(xyz.Y / white.Y);
  const fz = labRoot(xyz.Z / white.Z);
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** The same colour at another brightness. A black stays black. */
export function scaleToY(xyz: Xyz, Y: number): Xyz {
  if (xyz.Y <= 0) return xyz;
  const k = Y / xyz.Y;
  return { X: k * xyz.X, Y, Z: k * xyz.Z };
}

// sRGB primaries with D65 at (0.3127, 0.3290), rows of linear RGB to XYZ (0..1).
const TO_XYZ = [
  [0.41239079926595934, 0.357584339383878, 0.1804807884018343],
  [0.21263900587151027, 0.715168678767756, 0.07219231536073371],
  [0.01933081871559182, 0.11919477979462598, 0.9505321522496607],
] as const;
const TO_RGB = [
  [3.2409699419045226, -1.537383177570094, -0.4986107602930034],
  [-0.9692436362808796, 1.8759675015077202, 0.04155505740717559],
  [0.05563007969699366, -0.20397695888897652, 1.0569715142428786],
] as const;
/** White of sRGB, Y = 100. */
export const SRGB_WHITE: Xyz = {
  X: 100 * (TO_XYZ[0][0] + TO_XYZ[0][1] + TO_XYZ[0][2]),
  Y: 100,
  Z: 100 * (TO_XYZ[2][0] + TO_XYZ[2][1] + TO_XYZ[2][2]),
};

function mix(row: readonly [number, number, number], v: readonly [number, number, number]): number {
  return row[0] * v[0] + row[1] * v[1] + row[2] * v[2];
}

/** Reads `#rrggbb` as three channels 0..1, as coded. Throws `StackFault` (`impossible-colour`) otherwise. */
export function readHex(hex: string): readonly [number, number, number] {
  const found = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(hex.trim());
  if (!found) {
    throw new StackFault('impossible-colour', {
      path: 'colour',
      wrong: `"${hex}" is not a colour`,
      right: 'write it as #rrggbb, for instance #c9b79a',
    });
  }
  const channel = (part: string | undefined): number => Number.parseInt(part ?? '0', 16) / 255;
  return [channel(found[1]), channel(found[2]), channel(found[3])];
}

/** XYZ (Y = 100 for white) of `#rrggbb`, against sRGB's own white. */
export function xyzOfHex(hex: string): Xyz {
  const [r, g, b] = readHex(hex);
  const linear: readonly [number, number, number] = [toLinear(r), toLinear(g), toLinear(b)];
  return { X: 100 * mix(TO_XYZ[0], linear), Y: 100 * mix(TO_XYZ[1], linear), Z: 100 * mix(TO_XYZ[2], linear) };
}

/** XYZ against one white as the same Lab against another. */
export function moveWhite(xyz: Xyz, from: Xyz, to: Xyz): Xyz {
  return { X: (xyz.X * to.X) / from.X, Y: (xyz.Y * to.Y) / from.Y, Z: (xyz.Z * to.Z) / from.Z };
}

/** The nearest `#rrggbb` of XYZ against sRGB's white; colours outside are drawn towards their own grey until they fit. */
export function hexOfXyz(xyz: Xyz): string {
  const v: readonly [number, number, number] = [xyz.X / 100, xyz.Y / 100, xyz.Z / 100];
  const linear = [mix(TO_RGB[0], v), mix(TO_RGB[1], v), mix(TO_RGB[2], v)];
  const grey = Math.min(1, Math.max(0, v[1]));
  const keep = linear.reduce((least, c) => Math.min(least, shareInside(c, grey)), 1);
  const code = linear.map((c) => hexByte(toCoded(grey + keep * (c - grey))));
  return `#${code.join('')}`;
}

/** How far one can go from `grey` towards `c` before leaving 0..1. */
function shareInside(c: number, grey: number): number {
  if (c > 1) return (1 - grey) / (c - grey);
  if (c < 0) return grey / (grey - c);
  return 1;
}

function hexByte(coded: number): string {
  return toByte(coded).toString(16).padStart(2, '0');
}

function toLinear(coded: number): number {
  return coded <= 0.04045 ? coded / 12.92 : ((coded + 0.055) / 1.055) ** 2.4;
}

function toCoded(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}
