/** Our own small locale tables: screens, papers and tests in Node and in a browser must agree to the letter. */
import { MINOR_DIGITS } from './money.ts';
import type { Currency } from './money.ts';

export const LOCALES = [
  'en-US',
  'en-CA',
  'en-GB',
  'en-IE',
  'en-AU',
  'en-NZ',
  'en-ZA',
  'de-DE',
  'fr-FR',
  'sv-SE',
  'pl-PL',
] as const;
export type Locale = (typeof LOCALES)[number];

interface LocaleTable {
  readonly decimal: '.' | ',';
  readonly group: string;
  readonly symbol: 'before' | 'after';
  readonly date: 'day-month' | 'month-day';
}

const COMMA_AFTER: LocaleTable = { decimal: ',', group: '\u00a0', symbol: 'after', date: 'day-month' };
const DAY_FIRST: LocaleTable = { decimal: '.', group: ',', symbol: 'before', date: 'day-month' };
const TABLES: Readonly<Record<Locale, LocaleTable>> = {
  'en-US': { decimal: '.', group: ',', symbol: 'before', date: 'month-day' },
  'en-CA': DAY_FIRST,
  'en-GB': DAY_FIRST,
  'en-IE': DAY_FIRST,
  'en-AU': DAY_FIRST,
  'en-NZ': DAY_FIRST,
  'en-ZA': DAY_FIRST,
  'de-DE': { ...COMMA_AFTER, group: '.' },
  'fr-FR': COMMA_AFTER,
  'sv-SE': COMMA_AFTER,
  'pl-PL': COMMA_AFTER,
};

const SYMBOLS: Readonly<Record<Currency, string>> = {
  USD: '$',
  CAD: '$',
  AUD: '$',
  NZD: '$',
  GBP: '£',
  EUR: '€',
  CHF: 'CHF ',
  SEK: 'kr',
  NOK: 'kr',
  DKK: 'kr',
  PLN: 'zł',
  ZAR: 'R',
  JPY: '¥',
};

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

export function decimalSign(locale: Locale): '.' | ',' {
  return TABLES[locale].decimal;
}

/** `$1,284.00`, `1 284,00 zł`, `-£3.50`. Whole amounts may drop their zeros (`short`). */
export function formatMoney(
  amount: number,
  currency: Currency,
  locale: Locale,
  form: 'full' | 'short' = 'full',
): string {
  const table = TABLES[locale];
  const digits = MINOR_DIGITS[currency];
  const size = String(Math.abs(amount)).padStart(digits + 1, '0');
  const whole = size.slice(0, size.length - digits).replace(/\B(?=(\d{3})+(?!\d))/g, table.group);
  const parts = size.slice(size.length - digits);
  const number = parts === '' || (form === 'short' && /^0+$/.test(parts)) ? whole : `${whole}${table.decimal}${parts}`;
  const sign = amount < 0 ? '-' : '';
  const symbol = SYMBOLS[currency];
  return table.symbol === 'before' ? `${sign}${symbol}${number}` : `${sign}${number}\u00a0${symbol.trim()}`;
}

/** A plain number to at most `decimals`, trailing zeros dropped, with the locale's decimal sign. For showing only. */
export function formatNumber(value: number, decimals: number, locale: Locale): string {
  const text = value
    .toFixed(decimals)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
  return (text === '-0' ? '0' : text).replace('.', TABLES[locale].decimal);
}

/** An ISO date (`2026-11-25`) as read aloud: `November 25, 2026` or `25 November 2026`. */
export function formatDate(iso: string, locale: Locale): string {
  const found = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso);
  const month = MONTHS[Number(found?.[2]) - 1];
  if (!found || month === undefined) return iso;
  const day = String(Number(found[3]));
  return TABLES[locale].date === 'month-day' ? `${month} ${day}, ${found[1]}` : `${day} ${month} ${found[1]}`;
}
