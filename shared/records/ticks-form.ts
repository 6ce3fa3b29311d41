/**
 * The ticks form of a wire schema: the same shape, with every length a whole number of ticks, and anything not measured
 * yet null or absent. The portfolio keeps treatments in it, so that a kind is declared once, as its wire schema.
 */
import * as z from 'zod';
import { LONGEST, lengthIn } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import { readLength } from '../job-file/read-practice.ts';
import { wireLength } from '../job-file/wire-fields.ts';

/** A description is another object over the same definition. */
function isLength(schema: z.core.$ZodType): boolean {
  return schema._zod.def === wireLength._zod.def;
}

function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  let here = schema;
  while (here instanceof z.ZodOptional || here instanceof z.ZodNullable) here = here.unwrap();
  return here;
}

/** The option of a union whose shape a value has; lengths count as numbers there. */
function optionOf(union: z.ZodUnion, value: unknown): z.core.$ZodType | null {
  const options = union.options.map(unwrapped);
  if (union instanceof z.ZodDiscriminatedUnion) {
    const tag = union.def.discriminator;
    const named = typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[tag] : undefined;
    return (
      options.find((each) => each instanceof z.ZodObject && z.safeParse(each.shape[tag] as z.ZodType, named).success) ??
      null
    );
  }
  const fits = (schema: z.core.$ZodType): boolean => {
    if (Array.isArray(value)) return schema instanceof z.ZodArray || schema instanceof z.ZodTuple;
    if (typeof value === 'object') return schema instanceof z.ZodObject || schema instanceof z.ZodRecord;
    if (isLength(schema)) return typeof value === 'number' || typeof value === 'string';
    return z.safeParse(schema, value).success;
  };
  return options.find(fits) ?? null;
}

/** Walks a value along its schema and hands every length to `change`. What the schema does not know is left out. */
function mapLengths(schema: z.core.$ZodType, value: unknown, change: (length: unknown) => unknown): unknown {
  const here = unwrapped(schema);
  if (value === undefined || value === null) return value;
  if (isLength(here)) return change(value);
  if (here instanceof z.ZodObject) {
    if (typeof value !== 'object' || Array.isArray(value)) return undefined;
    const given = value as Record<string, unknown>;
    const shape = here.shape as Record<string, z.core.$ZodType>;
    const entries = Object.entries(shape).map(([key, each]): [string, unknown] => [
      key,
      mapLengths(each, given[key], change),
    ]);
    return Object.fromEntries(entries.filter(([, each]) => each !== undefined));
  }
  if (here instanceof z.ZodArray) {
    const element = here.element;
    return Array.isArray(value) ? value.map((each) => mapLengths(element, each, change)) : undefined;
  }
  if (here instanceof z.ZodTuple) {
    const items = here.def.items;
    return Array.isArray(value)
      ? value.map((each, index) => (items[index] ? mapLengths(items[index], each, change) : undefined))
      : undefined;
  }
  if (here instanceof z.ZodUnion) {
    const option = optionOf(here, value);
    return option ? mapLengths(option, value, change) : undefined;
  }
  return value;
}

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
