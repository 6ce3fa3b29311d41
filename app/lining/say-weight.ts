/** Weights and clearances in the units that a job is measured in; nobody told, inches and pounds. */
import { TICKS_PER_INCH, TICKS_PER_MM } from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { GRAMS_PER_OUNCE, GSM_PER_OZ_YD2 } from '#shared/weight.ts';
import { M2K_PER_R } from './warmth.ts';

const OUNCES_PER_POUND = 16;
const MM_PER_INCH = TICKS_PER_INCH / TICKS_PER_MM;

function isInch(units: LengthUnit | undefined): boolean {
  return units === undefined || units === 'in';
}

/** `12 lb` or `5.4 kg`; below ten to one decimal. */
export function sayWeight(kilograms: number, units: LengthUnit | undefined): string {
  const amount = isInch(units) ? (1000 * kilograms) / GRAMS_PER_OUNCE / OUNCES_PER_POUND : kilograms;
  return `${amount.toFixed(amount < 9.95 ? 1 : 0)} ${isInch(units) ? 'lb' : 'kg'}`;
}

/** `7.1 oz/yd²` or `240 g/m²`. */
export function sayAreaWeight(gramsPerM2: number, units: LengthUnit | undefined): string {
  if (isInch(units)) return `${(gramsPerM2 / GSM_PER_OZ_YD2).toFixed(1)} oz/yd²`;
  return `${gramsPerM2.toFixed(0)} g/m²`;
}

/** A difference of widths: `9 in` or `23 cm`. */
export function sayInches(inches: number, units: LengthUnit | undefined): string {
  return isInch(units) ? `${inches.toFixed(0)} in` : `${((inches * MM_PER_INCH) / 10).toFixed(0)} cm`;
}

/** How far cloth keeps from heat: common home advice, in inches or in centimetres. */
export function sayClearances(units: LengthUnit | undefined): string {
  return isInch(units)
    ? 'about 6 in beside and 12 in above and in front'
    : 'about 15 cm beside and 30 cm above and in front';
}

/** An added resistance: `0.09 m²K/W`, in inch households with its R. */
export function sayResistance(value: number, units: LengthUnit | undefined): string {
  const metric = `${Number(value.toPrecision(2))} m²K/W`;
  return isInch(units) ? `${metric} (R ${(value / M2K_PER_R).toFixed(1)})` : metric;
}
