/**
 * The ticks form of a wire schema: the same shape, with every length a whole number of ticks, and anything not measured
 * yet null or absent. The portfolio keeps treatments in it, so that a kind is declared once, as its wire schema.
 */
import * as z from 'zod';
import { LONGEST, lengthIn } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { readLength } from '../job-file/read-length.ts';
import { isLength, mapLengths, optionOf, unwrapped } from '../job-file/map-lengths.ts';

/** From the wire form to ticks. The schema has been satisfied before. */
export function ticksFormOf(schema: z.ZodType, wire: unknown, unit: LengthUnit): unknown {
  return mapLengths(schema, wire, (length) => readLength(length as number | string, unit));
}

/** From ticks to the wire form in `unit`; what is null is left out. Six decimals read back to the tick. */
export function wireFormOf(schema: z.ZodType, kept: unknown, unit: LengthUnit): unknown {
  return withoutNulls(mapLengths(schema, kept, (length) => lengthIn(length as Ticks, unit, 6)));
}

function withoutNulls(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNulls);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, each]) => each !== null && each !== undefined);
  return Object.fromEntries(entries.map(([key, each]) => [key, withoutNulls(each)]));
}

/** Where a kept value is not of the ticks form: the paths of what is wrong. Null and absent mean: not measured yet. */
export function findUnfit(schema: z.core.$ZodType, kept: unknown, path = ''): string[] {
  const here = unwrapped(schema);
  if (kept === undefined || kept === null) return [];
  if (isLength(here)) {
    const whole = typeof kept === 'number' && Number.isSafeInteger(kept) && kept >= 0 && kept <= LONGEST;
    return whole ? [] : [path];
  }
  const below = (step: string): string => (path === '' ? step : `${path}.${step}`);
  if (here instanceof z.ZodObject) {
    if (typeof kept !== 'object' || Array.isArray(kept)) return [path];
    const shape = here.shape as Record<string, z.core.$ZodType>;
    return Object.entries(kept).flatMap(([key, each]) =>
      shape[key] ? findUnfit(shape[key], each, below(key)) : [below(key)],
    );
  }
  if (here instanceof z.ZodArray || here instanceof z.ZodTuple) {
    if (!Array.isArray(kept)) return [path];
    const schemaAt = (index: number) => (here instanceof z.ZodArray ? here.element : here.def.items[index]);
    return kept.flatMap((each: unknown, index) => {
      const element = schemaAt(index);
      return element ? findUnfit(element, each, `${path}[${index}]`) : [`${path}[${index}]`];
    });
  }
  if (here instanceof z.ZodUnion) {
    const option = optionOf(here, kept);
    return option ? findUnfit(option, kept, path) : [path];
  }
  return z.safeParse(here, kept).success ? [] : [path];
}
