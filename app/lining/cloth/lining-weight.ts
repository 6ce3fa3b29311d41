/**
 * What the trade calls a lining by its weight, in ounces a square yard (common practice): 5 is a good light lining, 5 to 6
 * serves most work, 7 is firm, 10 a luxury weight. Quoted by the running yard of 54 in the same cloth reads half as much
 * again, so it is always asked which is meant.
 */
import { GSM_PER_OZ_YD2 } from '#shared/weight.ts';

/** Half a gram takes up the rounding of ounces to whole grams. */
const ROUNDING = 0.5;
const STEPS = [
  { from: 10, words: 'luxury' },
  { from: 7, words: 'firm' },
  { from: 5.5, words: 'middling' },
  { from: 0, words: 'light' },
] as const;
export type LiningWeight = (typeof STEPS)[number]['words'];

/** Grams a square metre to the trade's word. */
export function nameLiningWeight(gramsPerM2: number): LiningWeight {
  return STEPS.find((step) => gramsPerM2 + ROUNDING >= step.from * GSM_PER_OZ_YD2)?.words ?? 'light';
}
