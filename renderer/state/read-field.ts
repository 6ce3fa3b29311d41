/** What a field makes of its text: a value, nothing, or a fault with an example of what can be read. */
import { parseDecimal, sayDecimalPlain } from '#shared/decimal.ts';
import { formatLength } from '#shared/format-length.ts';
import { TICKS_PER_MM, lengthFrom, lengthIn } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import { decimalSign } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import type { Currency } from '#shared/money.ts';
import { parseLength } from '#shared/parse-length.ts';
import { parseLengthRate } from '#shared/rate.ts';
import type { LengthRate } from '#shared/rate.ts';
import { parseWeight } from '#shared/weight.ts';

export type FieldReading<T> =
  | { readonly is: 'value'; readonly value: T }
  | { readonly is: 'empty' }
  | { readonly is: 'fault'; readonly wrong: string; readonly right: string };

function value<T>(read: T): FieldReading<T> {
  return { is: 'value', value: read };
}
function fault(wrong: string, right: string): FieldReading<never> {
  return { is: 'fault', wrong, right };
}

export function readLengthField(text: string, unit: LengthUnit, most?: Ticks): FieldReading<Ticks> {
  if (text.trim() === '') return { is: 'empty' };
  const parsed = parseLength(text, unit, most);
  return parsed.ok ? value(parsed.ticks) : fault(parsed.wrong, parsed.right);
}

/** Cloth by the length: a bare number is yards in inch households and metres elsewhere. `most`: up to 100 m if absent. */
export function readClothLength(text: string, unit: LengthUnit, most?: Ticks): FieldReading<Ticks> {
  const plain = text.trim();
  const bare = /^[\d.,/\s½¼¾]+$/.test(plain);
  return readLengthField(bare && plain !== '' ? `${plain} ${unit === 'in' ? 'yd' : 'm'}` : plain, unit, most);
}

/** Fullness as people write it (`2 1/2`, `2½`, `2.5`), in thousandths from 1000 to 6000. */
export function readFullnessField(text: string): FieldReading<number> {
  const plain = text.trim().replace(/\s*(times|x|×)$/i, '');
  if (plain === '') return { is: 'empty' };
  const right = 'write it as 2 1/2 or 2.5';
  // A thousandth of a metre is 320 ticks: metres are the one unit in which three decimals are what people write.
  const parsed = /[a-z'"″′]/i.test(plain) ? null : parseLength(`${plain} m`, 'mm');
  if (!parsed?.ok) return fault(`"${text.trim()}" cannot be read as a fullness`, right);
  const thousandths = Math.round(parsed.ticks / TICKS_PER_MM);
  if (thousandths < 1000) return fault(`"${text.trim()}" is less than flat cloth`, right);
  if (thousandths > 6000) return fault(`"${text.trim()}" is more than six times`, right);
  return value(thousandths);
}

export function showFullness(thousandths: number, locale: Locale): string {
  const halves: Readonly<Record<number, string>> = { 0: '', 250: '¼', 500: '½', 750: '¾' };
  const part = halves[thousandths % 1000];
  const whole = String(Math.floor(thousandths / 1000));
  return part === undefined ? String(thousandths / 1000).replace('.', decimalSign(locale)) : whole + part;
}

/** A name that must not be empty. */
export function readName(text: string): FieldReading<string> {
  return text.trim() === '' ? fault('it is empty', 'give it a name') : value(text);
}

export function readCountField(text: string, most: number): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const count = /^\d+$/.test(plain) ? Number(plain) : 0;
  return count >= 1 && count <= most
    ? value(count)
    : fault(`"${plain}" is not a count`, `write a whole number from 1 to ${most}`);
}

/** Widths of one piece in halves: `1 1/2` gives 3. */
export function readWidthsField(text: string): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const parsed = /[a-z'"″′]/i.test(plain) ? null : parseLength(`${plain} m`, 'mm');
  const halves = parsed?.ok ? parsed.ticks / (500 * TICKS_PER_MM) : 0;
  return Number.isInteger(halves) && halves >= 1 && halves <= 400
    ? value(halves)
    : fault(`"${plain}" is not a number of widths`, 'write whole or half widths, for example 1 1/2');
}

export function showWidths(halves: number): string {
  return `${halves >= 2 ? Math.floor(halves / 2) : ''}${halves % 2 === 1 ? '½' : ''}`;
}

/** Which currencies a sign can stand for; any other sign cannot be read at all. */
const SIGNS: Readonly<Record<string, readonly Currency[]>> = {
  $: ['USD', 'CAD', 'AUD', 'NZD'],
  '£': ['GBP'],
  '€': ['EUR'],
  '¥': ['JPY'],
};

/** Takes the sign off; one of another currency is a fault, for nothing is converted here. */
function readSign(text: string, currency: Currency): FieldReading<string> {
  const plain = text.trim();
  const sign = plain.charAt(0);
  const meant = SIGNS[sign];
  if (meant === undefined) return plain === '' ? { is: 'empty' } : value(plain);
  if (!meant.includes(currency))
    return fault(
      `"${plain}" is not in ${currency}, and nothing is converted`,
      `write the amount in ${currency}, without ${sign}`,
    );
  const left = plain.slice(1).trim();
  return left === '' ? { is: 'empty' } : value(left);
}

/** An amount of money in that currency, kept as written text with a point: `38.00`. */
export function readAmountField(text: string, currency: Currency): FieldReading<string> {
  const signed = readSign(text, currency);
  if (signed.is !== 'value') return signed;
  const plain = signed.value;
  const parsed = parseDecimal(plain);
  if (parsed === null || parsed.digits < 0n)
    return fault(`"${text.trim()}" cannot be read as an amount`, 'write it as 38.00');
  return value(sayDecimalPlain(parsed));
}

/** Per cent shown and typed; kept as a share: `6.25` gives `0.0625`. */
export function readPercentField(text: string, most: number | null): FieldReading<string> {
  const plain = text.trim().replace(/\s*%$/, '');
  if (plain === '') return { is: 'empty' };
  const parsed = parseDecimal(plain);
  if (parsed === null || parsed.digits < 0n)
    return fault(`"${text.trim()}" cannot be read as per cent`, 'write it as 6.25');
  const share = { digits: parsed.digits, scale: parsed.scale + 2 };
  if (most !== null && Number(sayDecimalPlain(parsed)) > most)
    return fault(`"${text.trim()}" is more than ${most} %`, `write ${most} or less`);
  return value(sayDecimalPlain(share));
}

export function showPercent(share: string | number | undefined, locale: Locale): string {
  const parsed = share === undefined ? null : parseDecimal(share);
  if (parsed === null) return '';
  const text = sayDecimalPlain({ digits: parsed.digits * 100n, scale: parsed.scale });
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return short.replace('.', decimalSign(locale));
}

/** By which length a bare number counts: as the field's own example in inch households, by the metre elsewhere. */
function usualPer(unit: LengthUnit, example: string | null): LengthRate['per'] {
  if (unit !== 'in') return 'm';
  return (example === null ? null : parseLengthRate(example)?.per) ?? 'yd';
}

/**
 * A price by length in that currency, kept as written: `9` alone is by the foot where the field's example is
 * `9.00/ft`, by the yard in other fields of inch households, and by the metre elsewhere.
 */
export function readRateField(
  text: string,
  unit: LengthUnit,
  currency: Currency,
  example: string | null = null,
): FieldReading<string> {
  const signed = readSign(text, currency);
  if (signed.is !== 'value') return signed;
  const plain = signed.value;
  const per = usualPer(unit, example);
  const whole = /^[\d.,]+$/.test(plain) ? `${plain}/${per}` : plain;
  const rate = parseLengthRate(whole);
  if (rate === null) return fault(`"${text.trim()}" cannot be read as a price by length`, `write it as 42.00/${per}`);
  return value(`${sayDecimalPlain(rate.amount)}/${rate.per}`);
}

export function readWeightField(text: string, width: Ticks | null): FieldReading<string> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  if (parseWeight(plain, width ?? lengthFrom(54, 'in')) !== null) return value(plain);
  const bare = /^[\d.,]+\s*(oz)?$/i.test(plain);
  return fault(
    bare ? `"${plain}" could mean a running or a square yard` : `"${plain}" cannot be read as a cloth weight`,
    'write it as 7 oz/yd2 (a square yard), 5 oz/yd (a running yard) or 240 g/m2',
  );
}

/** Fibres in per cent: `cotton 55, linen 45`. A single fibre without a number is all of it. */
export function readContentField(text: string): FieldReading<Record<string, number>> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const right = 'write it as cotton 55, linen 45; the shares make 100';
  const content: Record<string, number> = {};
  const parts = plain
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  for (const part of parts) {
    const found = /^(?:(\d+(?:\.\d+)?)\s*%?\s*([a-z][a-z -]*)|([a-z][a-z -]*?)\s*(?:(\d+(?:\.\d+)?)\s*%?)?)$/i.exec(
      part,
    );
    const fibre = (found?.[2] ?? found?.[3] ?? '').trim().toLowerCase();
    const share = found?.[1] ?? found?.[4];
    if (fibre === '' || (share === undefined && parts.length > 1))
      return fault(`"${part}" is not a fibre with its share`, right);
    content[fibre] = share === undefined ? 100 : Number(share);
  }
  const sum = Object.values(content).reduce((total, share) => total + share, 0);
  return Math.abs(sum - 100) < 0.01 ? value(content) : fault(`the shares make ${sum}`, right);
}

export function showContent(content: Readonly<Record<string, number>> | null): string {
  return Object.entries(content ?? {})
    .map(([fibre, share]) => (share === 100 ? fibre : `${fibre} ${share}`))
    .join(', ');
}

/** A length with its unit, as settings keep it: `8.5 in` means the same in every project. */
export function writeLengthText(length: Ticks, unit: LengthUnit): string {
  return `${lengthIn(length, unit, 6)} ${unit}`;
}

/** A length as a field shows it, typeset in the project's unit and with the locale's decimal sign. */
export function showLength(length: Ticks | null, unit: LengthUnit, locale: Locale): string {
  return length === null ? '' : formatLength(length, unit, { fractions: 'set', decimal: decimalSign(locale) });
}
