/** What the lines about light, thickness and spectra make of their text. Shares are written in per cent, kept as shares. */
import { parseDecimal, sayDecimalPlain } from '#shared/decimal.ts';
import { TICKS_PER_MM } from '#shared/length.ts';
import { decimalSign } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import { parseLength } from '#shared/parse-length.ts';
import type { FieldReading } from './read-field.ts';

function value<T>(read: T): FieldReading<T> {
  return { is: 'value', value: read };
}
function fault(wrong: string, right: string): FieldReading<never> {
  return { is: 'fault', wrong, right };
}

/**
 * Per cent, as a share: `35` and `35 %` give 0.35. A bare number below 1 could be a share already, so it is asked about:
 * a blackout passes 0.01 %, and a sheet of figures may say 0.35 for 35 %.
 */
export function readShareField(text: string): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const bare = plain.replace(/\s*(%|per cent|percent)$/i, '');
  const parsed = parseDecimal(bare);
  if (parsed === null || parsed.digits < 0n)
    return fault(`"${plain}" cannot be read as per cent`, 'write it as 35 %, or 0.01 % for next to nothing');
  const percent = sayDecimalPlain(parsed);
  if (Number(percent) > 100) return fault(`"${plain}" is more than all of it`, 'write 100 % or less');
  const share = Number(sayDecimalPlain({ digits: parsed.digits, scale: parsed.scale + 2 }));
  if (bare === plain && share > 0 && share < 0.01)
    return fault(
      `"${plain}" could mean ${percent} % or ${showShare(Number(percent))}`,
      `write ${percent} % or ${showShare(Number(percent))}`,
    );
  return value(share);
}

/** Of what is lost: all of it cannot be. */
export function readLossField(text: string): FieldReading<number> {
  const reading = readShareField(text);
  return reading.is === 'value' && reading.value >= 1
    ? fault(`"${text.trim()}" is all of it`, 'write less than 100 %, such as 3 %')
    : reading;
}

/** `35 %`, `0.01 %`: six decimals of a per cent are finer than anybody measures. */
export function showShare(share: number, locale: Locale = 'en-US'): string {
  const percent = (share * 100).toFixed(6).replace(/\.?0+$/, '');
  return `${percent.replace('.', decimalSign(locale))} %`;
}

export function showMaybeShare(share: number | null | undefined, locale: Locale): string {
  return share === null || share === undefined ? '' : showShare(share, locale);
}

/** Typical values are shown as roughly as they are known. */
export function showRoughShare(share: number, locale: Locale): string {
  return showShare(Number(share.toPrecision(2)), locale);
}

/** Millimetres; an inch can be written with its sign. */
export function readThicknessField(text: string): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const right = 'write it in millimetres, such as 0.4';
  const decimal = parseDecimal(plain.replace(/\s*mm$/i, ''));
  const parsed = decimal === null ? parseLength(plain, 'mm') : null;
  if (decimal === null && !parsed?.ok) return fault(`"${plain}" cannot be read as a thickness`, right);
  const mm = decimal === null ? ticksInMm(parsed?.ok ? parsed.ticks : 0) : Number(sayDecimalPlain(decimal));
  if (!(mm > 0)) return fault(`"${plain}" is no thickness`, right);
  return mm <= 50 ? value(mm) : fault(`"${plain}" is thicker than any cloth`, right);
}

function ticksInMm(ticks: number): number {
  return Number((ticks / TICKS_PER_MM).toFixed(3));
}

export function showThickness(mm: number, locale: Locale): string {
  return String(mm).replace('.', decimalSign(locale));
}

const FIRST_NM = 400;
const STEP_NM = 20;
const BANDS = 16;

export function bandName(index: number): string {
  return `${FIRST_NM + STEP_NM * index} nm`;
}

/**
 * Sixteen shares, 400 to 700 nm by 20 nm, one after the other or with the wavelength before each; in per cent where a
 * sign of per cent is written. A fault names the number that is wrong.
 */
export function readSpectrum(text: string): FieldReading<number[]> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const percent = plain.includes('%');
  const words = withoutWavelengths(splitNumbers(plain.replaceAll('%', ' ')));
  const wrong = words.findIndex((word) => parseDecimal(word) === null || word.startsWith('-'));
  if (wrong >= 0)
    return fault(
      `the ${nth(wrong + 1)} number${wrong < BANDS ? `, at ${bandName(wrong)},` : ''} is "${words[wrong] ?? ''}"`,
      'write a share such as 0.35 there',
    );
  if (words.length !== BANDS)
    return fault(
      `there are ${words.length} numbers`,
      `give ${BANDS}, from ${bandName(0)} to ${bandName(BANDS - 1)} by ${STEP_NM} nm`,
    );
  const shares = words.map((word) => Number(sayDecimalPlain(shareOf(word, percent))));
  const over = shares.findIndex((share) => share > 1);
  if (over >= 0)
    return fault(
      `the ${nth(over + 1)} number, at ${bandName(over)}, is ${words[over] ?? ''}: more than all the light`,
      percent ? 'write 100 or less' : 'write shares such as 0.35, or put % behind the last one',
    );
  return value(shares);
}

function shareOf(word: string, percent: boolean) {
  const { digits, scale } = parseDecimal(word) ?? { digits: 0n, scale: 0 };
  return { digits, scale: percent ? scale + 2 : scale };
}

/** A comma parts numbers where nothing else does; else it is a decimal sign. */
function splitNumbers(text: string): string[] {
  const words = text.split(/[\s;]+/).filter((word) => word !== '');
  const parted = words.length === 1 ? (words[0] ?? '').split(',') : words.map((word) => word.replace(/,$/, ''));
  return parted.filter((word) => word !== '');
}

/** Two columns, as they come from a table: the wavelengths are taken out. */
function withoutWavelengths(words: readonly string[]): readonly string[] {
  const isTable =
    words.length === 2 * BANDS &&
    words.every((word, at) => at % 2 === 1 || Number(word) === FIRST_NM + STEP_NM * (at / 2));
  return isTable ? words.filter((_, at) => at % 2 === 1) : words;
}

function nth(count: number): string {
  const last = count % 10;
  if (count % 100 < 11 || count % 100 > 13) {
    if (last === 1) return `${count}st`;
    if (last === 2) return `${count}nd`;
    if (last === 3) return `${count}rd`;
  }
  return `${count}th`;
}

export function showSpectrum(shares: readonly number[] | null | undefined): string {
  return shares?.join(' ') ?? '';
}

/** A reading of a light meter: `12000`, `12,000`, `12.5 klx`. */
export function readLuxField(text: string, locale: Locale): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const right = 'write the number that the meter shows, such as 12000';
  const found = /^([\d.,\s]+?)\s*(k?\s*(?:lx|lux)?)$/i.exec(plain);
  const figures = (found?.[1] ?? '').replace(/\s/g, '');
  const thousand = /^k/i.test(found?.[2] ?? '') ? 1000 : 1;
  if (/^\d{1,3}[.,]\d{3}$/.test(figures) && thousand === 1) {
    const isDecimal = figures.includes(decimalSign(locale));
    if (isDecimal) return fault(`"${plain}" could be thousands or a decimal`, right);
  }
  const grouped = /^\d{1,3}([.,]\d{3})+$/.test(figures) && thousand === 1;
  const parsed = found === null ? null : parseDecimal(grouped ? figures.replace(/[.,]/g, '') : figures);
  if (parsed === null) return fault(`"${plain}" is not a reading`, right);
  return value(Number(sayDecimalPlain(parsed)) * thousand);
}
