/** The 16 bands of colour: 400 to 700 nm by 20 nm, CIE 1931 2 degree observer (CIE 15), under D65. */
import { daylightAt } from './daylight.ts';

// prettier-ignore
export const BANDS_NM: readonly number[] = [
  400, 420, 440, 460, 480, 500, 520, 540, 560, 580, 600, 620, 640, 660, 680, 700,
];
// prettier-ignore
const X_BAR: readonly number[] = [
  0.01431, 0.13438, 0.34828, 0.2908, 0.09564, 0.0049, 0.06327, 0.2904,
  0.5945, 0.9163, 1.0622, 0.85445, 0.4479, 0.1649, 0.04677, 0.011359,
];
// prettier-ignore
const Y_BAR: readonly number[] = [
  0.000396, 0.004, 0.023, 0.06, 0.13902, 0.323, 0.71, 0.954,
  0.995, 0.87, 0.631, 0.381, 0.175, 0.061, 0.017, 0.004102,
];
// prettier-ignore
const Z_BAR: readonly number[] = [
  0.06785, 0.6456, 1.74706, 1.6692, 0.81295, 0.272, 0.07825, 0.0203,
  0.0039, 0.00165, 0.0008, 0.00019, 0.00002, 0, 0, 0,
];

/** D65 times each matching function, scaled so that a perfect white has Y = 100: XYZ = sum of weight times spectrum. */
const SCALE = 100 / BANDS_NM.reduce((sum, nm, i) => sum + daylightAt(nm) * (Y_BAR[i] ?? 0), 0);
export const WEIGHTS: { readonly X: readonly number[]; readonly Y: readonly number[]; readonly Z: readonly number[] } =
  {
    X: BANDS_NM.map((nm, i) => SCALE * daylightAt(nm) * (X_BAR[i] ?? 0)),
    Y: BANDS_NM.map((nm, i) => SCALE * daylightAt(nm) * (Y_BAR[i] ?? 0)),
    Z: BANDS_NM.map((nm, i) => SCALE * daylightAt(nm) * (Z_BAR[i] ?? 0)),
  };
