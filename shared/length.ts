/**
 * Lengths are whole ticks of 1/320 mm. 1/64 in (127 ticks) and 0.1 mm (32 ticks) are both exact, so no `ceil` in an
 * engine ever sees 4.000000001.
 */
declare const ticksBrand: unique symbol;
export type Ticks = number & { readonly [ticksBrand]: 'Ticks' };

/** The unit in which bare numbers of a project are written and its lengths are shown. */
export type LengthUnit = 'in' | 'cm' | 'mm';

export const TICKS_PER_MM = 320;
/** Exact by the international inch of 25.4 mm. */
export const TICKS_PER_INCH = 8128;
export const TICKS_PER_YARD = 36 * TICKS_PER_INCH;
export const TICKS_PER_METRE = 1000 * TICKS_PER_MM;
/** The finest step shown without the sign for "about": 1/16 in, or 0.1 mm. */
export const SHOWN_STEP = { in: TICKS_PER_INCH / 16, cm: TICKS_PER_MM / 10, mm: TICKS_PER_MM / 10 } as const;

const TICKS_PER_UNIT = {
  in: TICKS_PER_INCH,
  ft: 12 * TICKS_PER_INCH,
  yd: TICKS_PER_YARD,
  mm: TICKS_PER_MM,
  cm: 10 * TICKS_PER_MM,
  m: TICKS_PER_METRE,
} as const;
export type WrittenUnit = keyof typeof TICKS_PER_UNIT;

/** No soft treatment is near 100 m: beyond it a length is a slip of the keyboard. */
export const LONGEST = (100 * TICKS_PER_METRE) as Ticks;

/** Positions and lengths along cloth on its bolt: the plan of a large house runs on. */
export const LONGEST_RUN = (1000 * TICKS_PER_METRE) as Ticks;

/** A whole number of ticks taken as a length. Throws on a fraction: a floating length is our error, never the user's. */
export function ticks(value: number): Ticks {
  if (!Number.isSafeInteger(value)) throw new Error(`not a whole number of ticks: ${value}`);
  return value as Ticks;
}

export function ticksPer(unit: WrittenUnit): number {
  return TICKS_PER_UNIT[unit];
}

/** A length as a plain number of `unit`, rounded to `decimals` (four unless told): for results, never for arithmetic. */
export function lengthIn(length: number, unit: WrittenUnit, decimals = 4): number {
  const scale = 10 ** decimals;
  return Math.round((length / TICKS_PER_UNIT[unit]) * scale) / scale;
}

/** A number of `unit` as ticks, to the nearest tick (1/640 mm at the worst). */
export function lengthFrom(value: number, unit: WrittenUnit): Ticks {
  return ticks(Math.round(value * TICKS_PER_UNIT[unit]));
}
