import type { ReadingName } from '#shared/result.ts';

/**
 * The one rounding of readings, before they are ranked, stored, compared or returned, so that two engines whose last
 * bits differ agree. Six significant figures keep what a stack of 1e-5 still says; body is a judgement to one decimal.
 */
export function roundReading(name: ReadingName, value: number): number {
  if (name === 'body') return Number(value.toFixed(1));
  return Number(value.toPrecision(6));
}
