/** A reading's value and range as a person reads them: shares as per cent, the rest with their unit. */
import type { LiningSay } from './lining-say.ts';
import type { ToldReading } from './list-readings.ts';

export interface SaidReading {
  readonly value: string;
  /** Empty where the reading has no range. */
  readonly range: string;
}

/** Readings without a unit that are no share of one. */
const SCALES: readonly string[] = ['body'];

export function sayTold(reading: ToldReading, say: LiningSay): SaidReading {
  const write = writerOf(reading, say);
  const [low, high] = [write(reading.range[0]), write(reading.range[1])];
  return { value: write(reading.value), range: low === high ? '' : `${low} to ${high}` };
}

function writerOf({ id, unit }: ToldReading, say: LiningSay): (value: number) => string {
  if (SCALES.includes(id)) return (value) => `${say.fixed(value, 1)} of 5`;
  if (unit === '') return say.percent;
  if (unit === '°C') return (value) => `${say.fixed(value, 1)} °C`;
  if (unit === 'lb' || unit === 'kg') return (value) => `${say.fixed(value, 1)} ${unit}`;
  return (value) => `${say.figure(value)} ${unit}`;
}
