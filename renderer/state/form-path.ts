/** Reads and writes inside a kept form by a path of steps joined by points; forms are never changed in place. */
import type { TicksForm } from '#shared/records/treatment-make.ts';

/** Undefined where nothing stands. */
export function readAt(form: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((here, step) => stepInto(here, step), form);
}

function stepInto(here: unknown, step: string): unknown {
  if (typeof here !== 'object' || here === null) return undefined;
  return (here as Readonly<Record<string, unknown>>)[step];
}

/** Writes at the path; objects and lists on the way are made where they are missing. Undefined takes the key away. */
export function writeAt(form: TicksForm, path: string, value: unknown): TicksForm {
  return writeSteps(form, path.split('.'), value) as TicksForm;
}

function writeSteps(here: unknown, steps: readonly string[], value: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return value;
  // Nothing is made on the way to take nothing away.
  if (value === undefined && stepInto(here, step) === undefined) return here;
  const inner = writeSteps(stepInto(here, step), rest, value);
  if (/^\d+$/.test(step)) {
    const list = Array.isArray(here) ? [...(here as readonly unknown[])] : [];
    while (list.length < Number(step)) list.push(null);
    if (inner === undefined) list.splice(Number(step), 1);
    else list[Number(step)] = inner;
    return list;
  }
  const held = typeof here === 'object' && here !== null && !Array.isArray(here) ? { ...here } : {};
  const { [step]: _, ...others } = held as Record<string, unknown>;
  return inner === undefined ? others : { ...others, [step]: inner };
}

/** `size.widths[0]` of a fault is `size.widths.0` of a line. */
export function lineOfFault(field: string): string {
  return field.replace(/\[(\d+)\]/g, '.$1');
}
