/** How a paper speaks: lengths, money and dates in the project's units, currency and locale, typeset. */
import { formatLength, formatClothLength } from '#shared/format-length.ts';
import type { Job } from '#shared/job.ts';
import { decimalSign, formatDate, formatMoney, formatNumber } from '#shared/locale.ts';
import type { Decimal } from '#shared/decimal.ts';
import { sayDecimalPlain } from '#shared/decimal.ts';
import type { Thousandths } from '#shared/practice.ts';

/** Keeps a number and its unit on one line. */
export const NBSP = '\u00a0';

export interface Speech {
  /** `72 in`. */
  readonly length: (ticks: number) => string;
  /** `12¾ yd`. */
  readonly cloth: (ticks: number) => string;
  /** `$1,284.00`. */
  readonly money: (minor: number) => string;
  readonly date: (iso: string) => string;
  /** `2½`, `2.5`, `2,5`. */
  readonly fullness: (thousandths: Thousandths) => string;
  readonly number: (value: number, decimals: number) => string;
  /** A share as `6.25 %`. */
  readonly percent: (share: Decimal) => string;
}

const QUARTERS: Readonly<Record<number, string>> = { 0: '', 250: '¼', 500: '½', 750: '¾' };

export function speechOf(job: Pick<Job, 'units' | 'currency' | 'locale'>): Speech {
  const { units, currency, locale } = job;
  const decimal = decimalSign(locale);
  const style = { fractions: 'set', decimal } as const;
  return {
    length: (ticks) => `${formatLength(ticks, units, style).replace(' ', NBSP)}${NBSP}${units}`,
    cloth: (ticks) => formatClothLength(ticks, units, style).replace(' ', NBSP),
    money: (minor) => formatMoney(minor, currency, locale),
    date: (iso) => formatDate(iso, locale).replace(/ /gu, NBSP),
    fullness: (thousandths) => {
      const quarter = units === 'in' ? QUARTERS[thousandths % 1000] : undefined;
      if (quarter === undefined) return formatNumber(thousandths / 1000, 3, locale);
      const whole = (thousandths - (thousandths % 1000)) / 1000;
      return whole === 0 ? quarter : `${whole}${quarter}`;
    },
    number: (value, decimals) => formatNumber(value, decimals, locale),
    percent: (share) => {
      const plain = sayDecimalPlain({ digits: share.digits * 100n, scale: share.scale });
      const short = plain.includes('.') ? plain.replace(/\.?0+$/u, '') : plain;
      return `${short.replace('.', decimal)}${NBSP}%`;
    },
  };
}

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** `two` up to twelve, then figures. */
export function sayCount(count: number): string {
  return SMALL[count] ?? String(count);
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `a`, `a and b`, `a, b and c`. */
export function sayList(parts: readonly string[]): string {
  if (parts.length < 2) return parts[0] ?? '';
  return `${parts.slice(0, -1).join(', ')} and ${parts.at(-1) ?? ''}`;
}

/** Apostrophes as they are set, whatever an engine wrote. */
export function typeset(text: string): string {
  return text.replace(/(\p{L})'(\p{L})/gu, '$1’$2').replace(/(s)'(\s)/gu, '$1’$2');
}
