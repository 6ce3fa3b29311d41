/** Leaves of the wire form as the engines take them. The schema has already refused what cannot be read. */
import { lengthFrom, LONGEST_RUN } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { parseLength } from '../parse-length.ts';

/** A wire length in ticks: a bare number in `unit`, or text. */
export function readLength(value: number | string, unit: LengthUnit): Ticks {
  if (typeof value === 'number') return lengthFrom(value, unit);
  // Which lengths may be no longer than 100 m has been checked.
  const parsed = parseLength(value, unit, LONGEST_RUN);
  if (!parsed.ok) throw new Error(`length was not checked: ${value}`);
  return parsed.ticks;
}

/** A ratio in thousandths. */
export function readThousandths(value: number): number {
  return Math.round(value * 1000);
}

export function optionalLength(value: number | string | null | undefined, unit: LengthUnit): Ticks | null {
  return value === undefined || value === null ? null : readLength(value, unit);
}
