/** Shows lengths as a workroom writes them, without loss on the 1/16 in or 0.1 mm grid; others carry the sign for about. */
import { SHOWN_STEP, TICKS_PER_METRE, TICKS_PER_MM, TICKS_PER_YARD } from './length.ts';
import type { LengthUnit } from './length.ts';

export interface LengthStyle {
  /** `plain` is what a field shows and can be typed again (`84 1/2`); `set` is typeset (`84½`). */
  readonly fractions: 'plain' | 'set';
  /** The decimal sign of the locale. */
  readonly decimal: '.' | ',';
}

export const PLAIN: LengthStyle = { fractions: 'plain', decimal: '.' };
export const SET: LengthStyle = { fractions: 'set', decimal: '.' };

const SET_FRACTIONS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

/** A length in `unit` without its unit's name: `84 1/2`, `84½`, `214.65`, `≈84 1/2`. Negative lengths keep their sign. */
export function formatLength(length: number, unit: LengthUnit, style: LengthStyle = PLAIN): string {
  const sign = length < 0 ? '-' : '';
  const size = Math.abs(length);
  const step = SHOWN_STEP[unit];
  const steps = Math.round(size / step);
  const about = steps * step === size ? '' : '≈';
  if (unit === 'in') return about + sign + sayInches(steps, style);
  const perUnit = (unit === 'cm' ? 10 : 1) * TICKS_PER_MM;
  return about + sign + sayDecimal(steps * step, perUnit, unit === 'cm' ? 2 : 1, style.decimal);
}

/** The same with the unit behind it, as on paper: `84½ in`, `214.6 cm`. */
export function formatLengthWithUnit(length: number, unit: LengthUnit, style: LengthStyle = SET): string {
  return `${formatLength(length, unit, style)} ${unit}`;
}

/**
 * Cloth is bought by the yard or the metre. Yards are shown to the quarter where exact (`12¾ yd`), else to 2 decimals;
 * metres to 2 decimals. Rounded to nearest for showing only: orders are rounded up long before.
 */
export function formatClothLength(length: number, unit: LengthUnit, style: LengthStyle = SET): string {
  if (unit === 'in') {
    const quarters = (4 * length) / TICKS_PER_YARD;
    if (Number.isInteger(quarters)) return `${sayInches(quarters * 4, style)} yd`;
    return `${sayDecimal(length, TICKS_PER_YARD, 2, style.decimal)} yd`;
  }
  return `${sayDecimal(length, TICKS_PER_METRE, 2, style.decimal)} m`;
}

/** `sixteenths` of a whole as a mixed number. */
function sayInches(sixteenths: number, style: LengthStyle): string {
  const whole = Math.floor(sixteenths / 16);
  let num = sixteenths - whole * 16;
  let den = 16;
  while (num > 0 && num % 2 === 0) {
    num /= 2;
    den /= 2;
  }
  if (num === 0) return String(whole);
  const fraction = `${num}/${den}`;
  if (style.fractions === 'set') {
    const glyph = SET_FRACTIONS[fraction];
    if (glyph !== undefined) return whole === 0 ? glyph : `${whole}${glyph}`;
  }
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

function sayDecimal(length: number, perUnit: number, decimals: number, sign: '.' | ','): string {
  const scale = 10 ** decimals;
  const scaled = Math.round((length / perUnit) * scale);
  const whole = Math.floor(scaled / scale);
  const parts = String(scaled - whole * scale)
    .padStart(decimals, '0')
    .replace(/0+$/, '');
  return parts === '' ? String(whole) : `${whole}${sign}${parts}`;
}
