/** Rates as a price list writes them: `42.00/yd`, `16.50/m`, or an amount for one piece. */
import { parseDecimal } from './decimal.ts';
import type { Decimal } from './decimal.ts';
import { ticksPer } from './length.ts';
import type { WrittenUnit } from './length.ts';

export interface LengthRate {
  readonly amount: Decimal;
  readonly per: Extract<WrittenUnit, 'yd' | 'm' | 'ft'>;
}

/** Reads a price per yard, metre or foot. Null when it is not one. */
export function parseLengthRate(text: string): LengthRate | null {
  const found = /^\s*([\d.,]+)\s*(?:\/|per\s)\s*(yd|yard|m|metre|meter|ft|foot)\s*$/i.exec(text);
  const amount = found?.[1] === undefined ? null : parseDecimal(found[1]);
  if (!found || amount === null) return null;
  const word = (found[2] ?? '').toLowerCase();
  const per = word.startsWith('y') ? 'yd' : word.startsWith('f') ? 'ft' : 'm';
  return { amount, per };
}

export function ticksPerRate(rate: LengthRate): number {
  return ticksPer(rate.per);
}
