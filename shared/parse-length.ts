/** Reads lengths as people write them: `84 1/2`, `84-1/2"`, `7' 0 1/2"`, `84½`, `2.146 m`, `214,6 cm`. */
import { LONGEST, ticksPer, ticks } from './length.ts';
import type { LengthUnit, Ticks, WrittenUnit } from './length.ts';

export type ParsedLength =
  { readonly ok: true; readonly ticks: Ticks } | { readonly ok: false; readonly wrong: string; readonly right: string };

const GLYPHS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

const UNIT_WORDS: Readonly<Record<string, WrittenUnit>> = {
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
};

const EXAMPLES: Readonly<Record<LengthUnit, string>> = {
  in: `write it as 84 1/2, 84.5, 7' 0 1/2" or 214.6 cm`,
  cm: 'write it as 214.6, 214,6, 2.146 m or 84 1/2 in',
  mm: 'write it as 2146, 214.6 cm or 2.146 m',
};

/** One amount: a decimal, a fraction, or a whole number with a fraction behind it; then perhaps a unit. */
const PART =
  /^\s*(?:(?<whole>\d+)(?:\s+|\s*-\s*)(?<num>\d+)\s*\/\s*(?<den>\d+)|(?<onlyNum>\d+)\s*\/\s*(?<onlyDen>\d+)|(?<decimal>\d+(?:[.,]\d+)?|[.,]\d+))\s*(?<unit>[a-z]+|"|')?\.?/;

/** An exact amount in ticks, as numerator over denominator. */
interface Ratio {
  readonly num: bigint;
  readonly den: bigint;
}

/**
 * Reads one length. `unit` is what a bare number is in. Exact for anything that falls on a tick; otherwise the nearest
 * tick. Never throws and never guesses: what could mean two things is refused with an example of what can be read.
 */
export function parseLength(text: string, unit: LengthUnit, most: Ticks = LONGEST): ParsedLength {
  const right = EXAMPLES[unit];
  const refuse = (wrong: string): ParsedLength => ({ ok: false, wrong, right });
  const shown = text.trim();
  if (shown === '') return refuse('nothing is written here');
  if (/^[-−]/.test(shown))
    return { ok: false, wrong: `"${shown}" is negative`, right: `give a length of 0 or more: ${right}` };
  if (shown.startsWith('≈')) return refuse(`"${shown}" is only about right`);

  let rest = normalise(shown);
  let total: Ratio = { num: 0n, den: 1n };
  let last: WrittenUnit | null = null;
  while (rest.trim() !== '') {
    const found = PART.exec(rest);
    if (!found?.groups) return refuse(`"${shown}" cannot be read as a length`);
    const word = found.groups['unit'];
    const written: WrittenUnit | undefined = word === undefined ? undefined : UNIT_WORDS[word];
    if (word !== undefined && written === undefined) return refuse(`"${word}" in "${shown}" is not a unit of length`);
    const here: WrittenUnit | null = written ?? bareUnit(last, unit);
    if (here === null) return refuse(`"${shown}" has two numbers and one unit`);
    if (last !== null && ticksPer(here) >= ticksPer(last)) return refuse(`"${shown}" names its units out of order`);
    const amount = readAmount(found.groups);
    if (amount === null) return refuse(`"${shown}" has a fraction over zero`);
    if (isAmbiguous(found.groups['decimal'], here))
      return refuse(`"${shown}" could be a thousand or a part: the comma is followed by three digits`);
    total = add(total, { num: amount.num * BigInt(ticksPer(here)), den: amount.den });
    last = here;
    rest = rest.slice(found[0].length);
  }
  const whole = nearest(total);
  if (whole > BigInt(most)) return refuse(`"${shown}" is longer than ${most / ticksPer('m')} m`);
  return { ok: true, ticks: ticks(Number(whole)) };
}

/** After feet a bare number is inches (`7' 0 1/2`); after metres, centimetres would be a guess, so nothing. */
function bareUnit(last: WrittenUnit | null, unit: LengthUnit): WrittenUnit | null {
  if (last === null) return unit;
  return last === 'ft' ? 'in' : null;
}

function normalise(text: string): string {
  return text
    .toLowerCase()
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (glyph) => ` ${GLYPHS[glyph] ?? ''}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[″”“]|''|′′/g, '"')
    .replace(/[′’‘]/g, "'")
    .replace(/[−–]/g, '-')
    .replace(/\u00a0|\u202f|\u2009/g, ' ')
    .trim();
}

function readAmount(groups: Record<string, string | undefined>): Ratio | null {
  const { whole, num, den, onlyNum, onlyDen, decimal } = groups;
  if (whole !== undefined && num !== undefined && den !== undefined) {
    if (BigInt(den) === 0n) return null;
    return { num: BigInt(whole) * BigInt(den) + BigInt(num), den: BigInt(den) };
  }
  if (onlyNum !== undefined && onlyDen !== undefined) {
    return BigInt(onlyDen) === 0n ? null : { num: BigInt(onlyNum), den: BigInt(onlyDen) };
  }
  const [units = '0', parts = ''] = (decimal ?? '0').split(/[.,]/);
  return { num: BigInt((units === '' ? '0' : units) + parts), den: 10n ** BigInt(parts.length) };
}

/** `2,146` is 2.146 to one reader and 2146 to another; only in metres are three decimals what people write. */
function isAmbiguous(decimal: string | undefined, unit: WrittenUnit): boolean {
  return decimal !== undefined && unit !== 'm' && /^[1-9]\d{0,2},\d{3}$/.test(decimal);
}

function add(a: Ratio, b: Ratio): Ratio {
  return { num: a.num * b.den + b.num * a.den, den: a.den * b.den };
}

function nearest(value: Ratio): bigint {
  return (2n * value.num + value.den) / (2n * value.den);
}
