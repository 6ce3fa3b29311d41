/** What the short forms of the cut plan make of what is written in them. */
import { LONGEST, LONGEST_RUN } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import { readClothLength, readLengthField } from './read-field.ts';
import type { FieldReading } from './read-field.ts';

export type Wrong<N extends string> = Partial<Record<N, string>>;

export function sayWrong(reading: FieldReading<unknown>, needed: string | null): string | undefined {
  if (reading.is === 'fault') return `${reading.wrong}: ${reading.right}.`;
  return reading.is === 'empty' && needed !== null ? needed : undefined;
}

export type ReadLine<T, N extends string> =
  { readonly ok: true; readonly line: T } | { readonly ok: false; readonly wrong: Wrong<N> };

export interface FlawLine {
  readonly from: Ticks;
  readonly to: Ticks;
}

/** A stretch of cloth that is bad, from and to in yards or metres along the bolt. */
export function readFlawLine(from: string, to: string, unit: LengthUnit): ReadLine<FlawLine, 'from' | 'to'> {
  const start = readClothLength(from, unit, LONGEST_RUN);
  const end = readClothLength(to, unit, LONGEST_RUN);
  const example = unit === 'in' ? '20 yd, or 14 in' : '18.5 m, or 35 cm';
  const wrong: Wrong<'from' | 'to'> = {};
  const wrongStart = sayWrong(start, `Say where the bad stretch begins, as ${example}.`);
  const wrongEnd = sayWrong(end, `Say where it ends, as ${example}.`);
  if (wrongStart !== undefined) wrong.from = wrongStart;
  if (wrongEnd !== undefined) wrong.to = wrongEnd;
  if (start.is !== 'value' || end.is !== 'value') return { ok: false, wrong };
  if (end.value <= start.value) return { ok: false, wrong: { to: 'It ends where it begins, or before: give more.' } };
  return { ok: true, line: { from: start.value, to: end.value } };
}

export interface PieceLine {
  readonly length: Ticks | null;
  readonly width: Ticks | null;
  readonly startsAt: Ticks | null;
}

/** A bolt or remnant. `needed`: it must have a length; a width written is at most `most`. */
export function readPieceLine(
  written: { readonly length: string; readonly width: string; readonly startsAt: string },
  given: { readonly unit: LengthUnit; readonly needed: boolean; readonly most: Ticks; readonly repeat: Ticks | null },
): ReadLine<PieceLine, 'length' | 'width' | 'startsAt'> {
  const { unit, needed, most, repeat } = given;
  // A bolt may be as long as one likes; what lies on a shelf is no bolt.
  const length = readClothLength(written.length, unit, needed ? LONGEST : LONGEST_RUN);
  const width = readLengthField(written.width, unit);
  const startsAt = readLengthField(written.startsAt, unit);
  const wrong: Wrong<'length' | 'width' | 'startsAt'> = {};
  const told = {
    length:
      sayWrong(length, needed ? `Say how long it is, as ${unit === 'in' ? '2 1/4 yd' : '2.1 m'}.` : null) ??
      (length.is === 'value' && length.value === 0 ? 'It is zero: give a length.' : undefined),
    width:
      sayWrong(width, null) ??
      (width.is === 'value' && (width.value === 0 || width.value > most)
        ? 'It is zero, or more than the cloth is wide: give less, or leave it empty.'
        : undefined),
    startsAt:
      sayWrong(startsAt, null) ??
      (startsAt.is === 'value' && repeat !== null && startsAt.value >= repeat
        ? 'It is a whole repeat or more: give where in the repeat it starts.'
        : undefined),
  };
  for (const name of ['length', 'width', 'startsAt'] as const) {
    const says = told[name];
    if (says !== undefined) wrong[name] = says;
  }
  if (Object.keys(wrong).length > 0) return { ok: false, wrong };
  const valueOf = (reading: FieldReading<Ticks>): Ticks | null => (reading.is === 'value' ? reading.value : null);
  return { ok: true, line: { length: valueOf(length), width: valueOf(width), startsAt: valueOf(startsAt) } };
}
