/** Practice settings as a job file writes them: each with its meaning and its default in both unit systems. */
import type * as z from 'zod';
import type { LengthUnit, Ticks } from '../length.ts';
import type { LengthsOf, LengthTable } from '../treatments/length-settings.ts';
import { readLength } from './read-length.ts';
import { wireLength } from './wire-fields.ts';

/** Documents a setting: what it means and its default in inch and in centimetre households. */
export function setting<T extends z.ZodType>(
  schema: T,
  description: string,
  inch: unknown,
  centimetres: unknown = inch,
): T {
  return schema.meta({ description, default: inch, 'x-default-centimetres': centimetres });
}

/** One wire length for each setting of the table. */
export function wireLengths<Table extends LengthTable>(table: Table): Record<keyof Table, typeof wireLength> {
  return Object.fromEntries(
    Object.entries(table).map(([name, { says, inch, centimetre }]) => [
      name,
      setting(wireLength, says, inch, centimetre),
    ]),
  ) as Record<keyof Table, typeof wireLength>;
}

/** The lengths given, laid over those under them. The schema has already refused what cannot be read. */
export function readLengths<Table extends LengthTable>(
  table: Table,
  given: Readonly<Partial<Record<keyof Table, number | string | undefined>>>,
  under: LengthsOf<Table>,
  unit: LengthUnit,
): LengthsOf<Table> {
  return Object.fromEntries(
    Object.keys(table).map((name: keyof Table): [keyof Table, Ticks] => {
      const value = given[name];
      return [name, value === undefined ? under[name] : readLength(value, unit)];
    }),
  ) as LengthsOf<Table>;
}
