/** How the lining engine speaks: figures with the decimal sign of the job's locale, weights and lengths in its units. */
import { decimalSign } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import { TICKS_PER_INCH, TICKS_PER_MM } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { GRAMS_PER_OUNCE, GSM_PER_OZ_YD2 } from '#shared/weight.ts';
import { sayAbout, sayFigure, sayFixed, sayPercent } from './say-number.ts';
import { SUMMER_ERROR } from '../light-and-heat/summer.ts';
import { M2K_PER_R } from '../light-and-heat/warmth.ts';

export interface LiningSay {
  /** Between figures of a list: a comma, or a semicolon where the comma is the decimal sign. */
  readonly apart: string;
  /** Three significant figures: `0.0413`. */
  readonly figure: (value: number) => string;
  /** To so many decimals, its zeros kept. */
  readonly fixed: (value: number, decimals: number) => string;
  /** `9 %`, `0.4 %`, `less than 0.1 %`. */
  readonly percent: (share: number) => string;
  readonly about: (share: number) => string;
  /** `12 lb` or `5.4 kg`; below ten to one decimal. */
  readonly weight: (kilograms: number) => string;
  /** `7.1 oz/yd²` or `240 g/m²`. */
  readonly areaWeight: (gramsPerM2: number) => string;
  /** A difference of widths: `9 in` or `23 cm`. */
  readonly inches: (inches: number) => string;
  /** How far cloth keeps from heat: common home advice, in inches or in centimetres. */
  readonly clearances: () => string;
  /** An added resistance: `0.09 m²K/W`, in inch households with its R. */
  readonly resistance: (value: number) => string;
  /** How far EN 13363-1 may be out: `it reads from 0.02 low to 0.10 high`. */
  readonly summerError: () => string;
}

const OUNCES_PER_POUND = 16;
const MM_PER_INCH = TICKS_PER_INCH / TICKS_PER_MM;

/** Nobody told: inches, pounds and a point. */
export function liningSay(units: LengthUnit = 'in', locale?: Locale): LiningSay {
  const sign = locale === undefined ? '.' : decimalSign(locale);
  const isInch = units === 'in';
  const fixed = (value: number, decimals: number): string => sayFixed(value, decimals, sign);
  const weight = (kilograms: number): string => {
    const amount = isInch ? (1000 * kilograms) / GRAMS_PER_OUNCE / OUNCES_PER_POUND : kilograms;
    return `${fixed(amount, amount < 9.95 ? 1 : 0)} ${isInch ? 'lb' : 'kg'}`;
  };
  const resistance = (value: number): string => {
    const metric = `${sayFigure(Number(value.toPrecision(2)), sign)} m²K/W`;
    return isInch ? `${metric} (R ${fixed(value / M2K_PER_R, 1)})` : metric;
  };
  return {
    apart: sign === ',' ? '; ' : ', ',
    figure: (value) => sayFigure(value, sign),
    fixed,
    percent: (share) => sayPercent(share, sign),
    about: (share) => sayAbout(share, sign),
    weight,
    areaWeight: (gramsPerM2) =>
      isInch ? `${fixed(gramsPerM2 / GSM_PER_OZ_YD2, 1)} oz/yd²` : `${fixed(gramsPerM2, 0)} g/m²`,
    inches: (inches) => (isInch ? `${fixed(inches, 0)} in` : `${fixed((inches * MM_PER_INCH) / 10, 0)} cm`),
    clearances: () =>
      isInch ? 'about 6 in beside and 12 in above and in front' : 'about 15 cm beside and 30 cm above and in front',
    resistance,
    summerError: () => `it reads from ${fixed(SUMMER_ERROR.low, 2)} low to ${fixed(SUMMER_ERROR.high, 2)} high`,
  };
}
