/** How the working speaks: lengths in the job's units, figures in its locale, one step as a person would write it. */
import { formatClothLength, formatLength } from '#shared/format-length.ts';
import type { LengthStyle } from '#shared/format-length.ts';
import { decimalSign, formatNumber } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';

export interface Say {
  readonly unit: LengthUnit;
  readonly locale: Locale;
  /** `82½`. */
  readonly length: (ticks: number) => string;
  /** `12¾ yd`. */
  readonly cloth: (ticks: number) => string;
  /** To at most two decimals. */
  readonly number: (value: number, decimals?: number) => string;
  /** `1½`, from halves. */
  readonly widths: (halves: number) => string;
}

export function speaker(unit: LengthUnit, locale: Locale): Say {
  const style: LengthStyle = { fractions: 'set', decimal: decimalSign(locale) };
  return {
    unit,
    locale,
    length: (value) => formatLength(value, unit, style),
    cloth: (value) => formatClothLength(value, unit, style),
    number: (value, decimals = 2) => formatNumber(value, decimals, locale),
    widths: sayHalves,
  };
}

/** "1 cut", "2 cuts". */
export function countOf(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}

export function step(id: string, label: string, formula: string, value: string, rests: string): WorkingStep {
  return { id, label, formula, value, rests };
}

function sayHalves(halves: number): string {
  if (halves % 2 === 0) return String(halves / 2);
  return halves === 1 ? '½' : `${(halves - 1) / 2}½`;
}
