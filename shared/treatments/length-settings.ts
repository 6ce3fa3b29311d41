/**
 * Settings of a practice that are lengths, as a table: the default of an inch and of a centimetre household and what the
 * setting is for. The type, the defaults and the wire schema of a section are all read from its one table.
 */
import { lengthFrom } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';

export interface LengthSetting {
  readonly inch: number;
  readonly centimetre: number;
  readonly says: string;
}

export type LengthTable = Readonly<Record<string, LengthSetting>>;
export type LengthsOf<Table extends LengthTable> = Readonly<Record<keyof Table, Ticks>>;

/** The table's defaults in ticks, for a household that measures in `unit`. */
export function defaultLengths<Table extends LengthTable>(table: Table, unit: LengthUnit): LengthsOf<Table> {
  return Object.fromEntries(
    Object.entries(table).map(([name, setting]) => [
      name,
      unit === 'in' ? lengthFrom(setting.inch, 'in') : lengthFrom(setting.centimetre, 'cm'),
    ]),
  ) as LengthsOf<Table>;
}
