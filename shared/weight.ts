/** Cloth weight: grams a square metre inside, ounces outside where the trade says ounces. */
import { TICKS_PER_METRE } from './length.ts';
import type { Ticks } from './length.ts';

/** Exact by definition: ounce 28.349523125 g, yard 0.9144 m. */
export const GRAMS_PER_OUNCE = 28.349523125;
const METRES_PER_YARD = 0.9144;
export const GSM_PER_OZ_YD2 = GRAMS_PER_OUNCE / (METRES_PER_YARD * METRES_PER_YARD);

/** An amount, and per what: a square yard, a running yard (also called linear), or a square metre. */
const WEIGHT =
  /^\s*(\d+(?:[.,]\d+)?)\s*(oz\s*\/\s*(?:yd2|yd²|(?:sq\.?|square)\s*(?:yd|yard))|oz\s*\/\s*(?:(?:lin\.?|linear|running)\s*)?(?:yd|yard)|g\s*\/\s*(?:m2|m²|(?:sq\.?|square)\s*m))\s*$/i;

/**
 * Reads `7 oz/yd2` (a square yard), `5 oz/yd` (a running yard of a cloth this wide) or `240 g/m2` as grams a square
 * metre. Null when it is none of them: a bare `5 oz` is not guessed at.
 */
export function parseWeight(text: string, width: Ticks): number | null {
  const found = WEIGHT.exec(text);
  if (!found) return null;
  const amount = Number((found[1] ?? '').replace(',', '.'));
  const unit = (found[2] ?? '').toLowerCase().replace(/\s/g, '');
  if (unit.startsWith('g')) return amount;
  if (/yd2|yd²|sq|square/.test(unit)) return amount * GSM_PER_OZ_YD2;
  return (amount * GRAMS_PER_OUNCE) / (METRES_PER_YARD * (width / TICKS_PER_METRE));
}

/** An area in square metres of two lengths in ticks. */
export function areaOf(width: number, length: number): number {
  return (width / TICKS_PER_METRE) * (length / TICKS_PER_METRE);
}
