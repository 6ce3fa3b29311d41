/** Money is whole minor units of one currency (cents, pence), rounded once, in one named place, by one named rule. */
import { divideRounded } from './decimal.ts';
import type { Decimal, Rounding } from './decimal.ts';

declare const minorBrand: unique symbol;
export type Minor = number & { readonly [minorBrand]: 'Minor' };

export const CURRENCIES = [
  'USD',
  'CAD',
  'AUD',
  'NZD',
  'GBP',
  'EUR',
  'CHF',
  'SEK',
  'NOK',
  'DKK',
  'PLN',
  'ZAR',
  'JPY',
] as const;
export type Currency = (typeof CURRENCIES)[number];

/** Digits behind the decimal sign, ISO 4217. */
export const MINOR_DIGITS: Readonly<Record<Currency, number>> = {
  USD: 2,
  CAD: 2,
  AUD: 2,
  NZD: 2,
  GBP: 2,
  EUR: 2,
  CHF: 2,
  SEK: 2,
  NOK: 2,
  DKK: 2,
  PLN: 2,
  ZAR: 2,
  JPY: 0,
};

export function minor(value: number): Minor {
  if (!Number.isSafeInteger(value)) throw new Error(`not a whole number of minor units: ${value}`);
  return value as Minor;
}

export function sumMoney(amounts: readonly Minor[]): Minor {
  return minor(amounts.reduce((sum, amount) => sum + amount, 0));
}

/**
 * A rate in whole currency units (38.00) times exact factors, divided by a whole number, as minor units: the one place
 * where money is rounded. `over` carries a unit conversion such as ticks in a yard.
 */
export function priceOf(
  rate: Decimal,
  factors: readonly Decimal[],
  over: number,
  currency: Currency,
  rounding: Rounding,
): Minor {
  let digits = rate.digits * 10n ** BigInt(MINOR_DIGITS[currency]);
  let scale = rate.scale;
  for (const factor of factors) {
    digits *= factor.digits;
    scale += factor.scale;
  }
  return minor(Number(divideRounded(digits, 10n ** BigInt(scale) * BigInt(over), rounding)));
}

/** A share (0.0625) of an amount, rounded by the named rule. */
export function shareOf(amount: Minor, share: Decimal, rounding: Rounding): Minor {
  return minor(Number(divideRounded(BigInt(amount) * share.digits, 10n ** BigInt(share.scale), rounding)));
}

/**
 * An amount split into whole parts in the ratio of `weights`: the parts always sum to the whole (the remainder goes to
 * the largest fractions first, earlier parts first among equals).
 */
export function splitMoney(amount: Minor, weights: readonly number[]): Minor[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (!(total > 0) || weights.some((weight) => !Number.isSafeInteger(weight) || weight < 0))
    throw new Error('weights must be whole numbers, not negative, and not all zero');
  const sign = amount < 0 ? -1 : 1;
  const size = BigInt(Math.abs(amount));
  const parts = weights.map((weight) => Number((size * BigInt(weight)) / BigInt(total)));
  const rests = weights.map((weight, index) => ({ index, rest: (size * BigInt(weight)) % BigInt(total) }));
  let left = Number(size) - parts.reduce((sum, part) => sum + part, 0);
  rests.sort((a, b) => Number(b.rest - a.rest) || a.index - b.index);
  for (const { index } of rests) {
    if (left === 0) break;
    parts[index] = (parts[index] ?? 0) + 1;
    left -= 1;
  }
  return parts.map((part) => minor(part === 0 ? 0 : sign * part));
}
