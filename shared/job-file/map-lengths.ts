/** Walks a value of the wire form along its schema and changes every length in it, however deep. */
import * as z from 'zod';
import { wireLength } from './wire-fields.ts';

/** A description is another object over the same definition. */
export function isLength(schema: z.core.$ZodType): boolean {
  return schema._zod.def === wireLength._zod.def;
}

export function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  let here = schema;
  while (here instanceof z.ZodOptional || here instanceof z.ZodNullable) here = here.unwrap();
  return here;
}

/** The option of a union whose shape a value has; lengths count as numbers there. */
export function optionOf(union: z.ZodUnion, value: unknown): z.core.$ZodType | null {
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
export function mapLengths(schema: z.core.$ZodType, value: unknown, change: (length: unknown) => unknown): unknown {
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
