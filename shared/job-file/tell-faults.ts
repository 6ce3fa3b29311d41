/** Turns what the schema found wrong into faults: every one, with its path, and unknown keys with the nearest known key. */
import * as z from 'zod';
import { at } from '../fault.ts';
import type { Fault } from '../fault.ts';

type Issue = z.core.$ZodIssue;

/** All faults of a failed parse, in the order of the file. `given` is what was parsed, to tell missing from wrong. */
export function tellFaults(error: z.core.$ZodError, schema: z.ZodType, given: unknown): Fault[] {
  return error.issues.flatMap((issue) => faultsOf(issue, [], schema, given));
}

function faultsOf(issue: Issue, above: readonly PropertyKey[], schema: z.ZodType, given: unknown): Fault[] {
  const steps = [...above, ...issue.path];
  const path = pathOf(steps);
  if (issue.code === 'invalid_union') {
    const inner = bestBranch(issue.errors);
    if (inner) return inner.flatMap((each) => faultsOf(each, steps, schema, given));
  }
  if (issue.code === 'unrecognized_keys') {
    const known = knownKeys(schema, steps, given);
    return issue.keys.map((key) => {
      const near = nearestWord(key, known);
      const right =
        near === null ? `give one of ${known.join(', ')}, or take it out` : `did you mean ${near}? Else take it out`;
      return { path: at(path, key), wrong: 'is not a key that is known here', right };
    });
  }
  if (issue.code === 'invalid_key')
    return [{ path, wrong: 'is not a key that is known here', right: nearestText(path, schema, steps, given) }];
  const value = valueAt(given, steps);
  if (value === undefined) return [{ path, wrong: 'is missing', right: rightHalf(issue.message) }];
  const [wrong, right] = halves(issue.message);
  return [{ path, wrong, right }];
}

/** The branch that got furthest: one whose issues lie deeper than the union itself. Null when none does. */
function bestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | null {
  const deeper = branches.filter(
    (issues) =>
      issues.length > 0 &&
      issues.every((issue) => issue.path.length > 0 || issue.code === 'unrecognized_keys' || issue.code === 'custom'),
  );
  return deeper[0] ?? null;
}

function halves(message: string): [string, string] {
  const cut = message.indexOf('; ');
  if (cut > 0) return [message.slice(0, cut), message.slice(cut + 2)];
  const found = /expected (\w+), received (\w+)/.exec(message);
  if (found) return [`is ${article(found[2] ?? '')}`, `give ${article(found[1] ?? '')}`];
  return [message.charAt(0).toLowerCase() + message.slice(1), 'look it up with the command "schema"'];
}

function rightHalf(message: string): string {
  const [, right] = halves(message);
  return right;
}

function article(word: string): string {
  return /^[aeiou]/.test(word) ? `an ${word}` : `a ${word}`;
}

function pathOf(steps: readonly PropertyKey[]): string {
  return steps.reduce<string>((path, step) => at(path, typeof step === 'number' ? step : String(step)), '');
}

function valueAt(given: unknown, steps: readonly PropertyKey[]): unknown {
  let value = given;
  for (const step of steps) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

function nearestText(path: string, schema: z.ZodType, steps: readonly PropertyKey[], given: unknown): string {
  const known = knownKeys(schema, steps.slice(0, -1), given);
  const near = nearestWord(String(steps.at(-1) ?? path), known);
  return near === null ? `give one of ${known.join(', ')}, or take it out` : `did you mean ${near}? Else take it out`;
}

/** The keys that the schema knows at a path: walked through optionals, arrays, records and unions. */
function knownKeys(schema: z.ZodType, steps: readonly PropertyKey[], given: unknown): string[] {
  let here: unknown = schema;
  let value: unknown = given;
  for (const step of steps) {
    here = stepInto(unwrap(here, value), step);
    value = valueAt(value, [step]);
    if (here === undefined) return [];
  }
  const found = unwrap(here, value);
  if (found instanceof z.ZodObject) return Object.keys(found.shape);
  if (found instanceof z.ZodRecord) return keysOfRecord(found);
  return [];
}

function keysOfRecord(record: z.ZodRecord): string[] {
  const key: unknown = record.keyType;
  return key instanceof z.ZodEnum ? key.options.map(String) : [];
}

function stepInto(schema: unknown, step: PropertyKey): unknown {
  if (schema instanceof z.ZodObject) return (schema.shape as Record<PropertyKey, unknown>)[step];
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  return undefined;
}

/** The object inside optionals and unions; of a discriminated union the variant that the value names. */
function unwrap(schema: unknown, value: unknown): unknown {
  let here = schema;
  while (here instanceof z.ZodOptional || here instanceof z.ZodNullable) here = here.unwrap();
  if (here instanceof z.ZodUnion) {
    const variants = here.options as readonly unknown[];
    const objects = variants.map((each) => unwrap(each, value)).filter((each) => each instanceof z.ZodObject);
    if (here instanceof z.ZodDiscriminatedUnion) {
      const named = objects.find((each) => {
        const tag = (each.shape as Record<string, unknown>)[
          here instanceof z.ZodDiscriminatedUnion ? here.def.discriminator : ''
        ];
        return (
          tag instanceof z.ZodLiteral &&
          tag.values.has(
            valueAt(value, [here instanceof z.ZodDiscriminatedUnion ? here.def.discriminator : '']) as never,
          )
        );
      });
      return named ?? objects[0];
    }
    return objects[0];
  }
  return here;
}

/** The known word nearest to what was written, within a third of its letters; null when none is near. */
export function nearestWord(written: string, known: readonly string[]): string | null {
  let best: { word: string; far: number } | null = null;
  for (const word of known) {
    const far = lettersApart(written.toLowerCase(), word.toLowerCase());
    if (best === null || far < best.far) best = { word, far };
  }
  return best !== null && best.far <= Math.max(2, written.length / 3) ? best.word : null;
}

/** Edit distance: insertions, deletions, substitutions. */
function lettersApart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
