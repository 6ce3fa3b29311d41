import type * as z from 'zod';

/** A JSON column, checked by its schema: a file written by hand or by another version fails here, by name. */
export function readJson<Schema extends z.ZodType>(schema: Schema, text: string): z.infer<Schema> {
  return schema.parse(JSON.parse(text));
}

export function readMaybeJson<Schema extends z.ZodType>(schema: Schema, text: string | null): z.infer<Schema> | null {
  return text === null ? null : readJson(schema, text);
}

export function writeMaybeJson(value: object | string | null): string | null {
  return value === null ? null : JSON.stringify(value);
}
