/**
 * Daylight as CIE standard illuminant D65, relative spectral power, 300 to 700 nm by 5 nm (CIE 15, table T.1; read in
 * a transcription). The bands that colour needs are every 20 nm from 400 to 700.
 */
import { downToEntry } from './round-figures.ts';

export const D65_FROM_NM = 300;
export const D65_STEP_NM = 5;
// prettier-ignore
export const D65: readonly number[] = [
  0.0341, 1.6643, 3.2945, 11.7652, 20.236, 28.6447, 37.0535, 38.5011, 39.9488, 42.4302,
  44.9117, 45.775, 46.6383, 49.3637, 52.0891, 51.0323, 49.9755, 52.3118, 54.6482, 68.7015,
  82.7549, 87.1204, 91.486, 92.4589, 93.4318, 90.057, 86.6823, 95.7736, 104.865, 110.936,
  117.008, 117.41, 117.812, 116.336, 114.861, 115.392, 115.923, 112.367, 108.811, 109.082,
  109.354, 108.578, 107.802, 106.296, 104.79, 106.239, 107.689, 106.047, 104.405, 104.225,
  104.046, 102.023, 100, 98.1671, 96.3342, 96.0611, 95.788, 92.2368, 88.6856, 89.3459,
  90.0062, 89.8026, 89.5991, 88.6489, 87.6987, 85.4936, 83.2886, 83.4939, 83.6992, 81.863,
  80.0268, 80.1207, 80.2146, 81.2462, 82.2778, 80.281, 78.2842, 74.0027, 69.7213, 70.6652,
  71.6091,
];

/** Power at a wavelength in nm, linear between the entries; 0 outside 300..700. */
export function daylightAt(nm: number): number {
  const place = (nm - D65_FROM_NM) / D65_STEP_NM;
  const low = downToEntry(place);
  if (low < 0 || place > D65.length - 1) return 0;
  const here = D65[low] ?? 0;
  return here + (place - low) * ((D65[low + 1] ?? here) - here);
}
