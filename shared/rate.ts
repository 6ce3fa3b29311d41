/** Rates as a price list writes them: `42.00/yd`, `16.50/m`, or an amount for one piece. */
import { parseDecimal } from './decimal.ts';
import type { Decimal } from './decimal.ts';
import { ticksPer } from './length.ts';
import type { WrittenUnit } from './length.ts';

export interface LengthRate {
  readonly amount: Decimal;
  readonly per: Extract<WrittenUnit, 'yd' | 'm' | 'ft'>;
}

const UNIT_OF_LETTER: Readonly<Record<string, LengthRate['per']>> = { y: 'yd', f: 'ft', m: 'm' };

/** Reads a price per yard, metre or foot. Null when it is not one. */
export function parseLengthRate(text: string): LengthRate | null {
  const found = /^\s*([\d.,]+)\s*(?:\/|per\s)\s*(yd|yard|m|metre|meter|ft|foot)\s*$/i.exec(text);
  const amount = found?.[1] === undefined ? null : parseDecimal(found[1]);
  if (!found || amount === null) return null;
  return { amount, per: UNIT_OF_LETTER[(found[2] ?? '').charAt(0).toLowerCase()] ?? 'm' };
}

export function ticksPerRate(rate: LengthRate): number {
  return ticksPer(rate.per);
}
