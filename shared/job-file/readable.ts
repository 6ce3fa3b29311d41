/** The fields of `shape` that parse by themselves; what does not is left out, and has been told by the schema. */
import * as z from 'zod';

export const LOOSE = z.record(z.string(), z.unknown());
export type Loose = z.infer<typeof LOOSE>;

export type Readable<T extends z.ZodRawShape> = { [K in keyof T]?: z.infer<T[K]> };

export function readable<T extends z.ZodRawShape>(shape: T, item: Loose): Readable<T> {
  const found: Record<string, unknown> = {};
  for (const [key, schema] of Object.entries(shape)) {
    const parsed = z.safeParse(schema, item[key]);
    if (parsed.success) found[key] = parsed.data;
  }
  return found as Readable<T>;
}
