/** The meter's readings as they are typed: what cannot be is told at its own field, what can be gives a result. */
import { measureTransmittance } from '#app/lining/cloth/home-measure.ts';
import type { MeasuredTransmittance } from '#app/lining/cloth/home-measure.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import type { Locale } from '#shared/locale.ts';
import type { Glazing } from '#shared/words.ts';
import { readLuxField } from './read-known.ts';

export interface TypedPair {
  readonly bare: string;
  readonly covered: string;
}

export interface TypedMeasure {
  readonly pairs: readonly TypedPair[];
  readonly dark: string;
  readonly glazing: Glazing;
  /** Of the sample; null when nobody knows. */
  readonly reflectance: number | null;
}

export interface ReadMeasure {
  /** By field: `pairs[0].bare`, `dark`. */
  readonly faults: Readonly<Record<string, string>>;
  /** Null until there is a whole pair and nothing is wrong. */
  readonly result: MeasuredTransmittance | null;
}

export function readMeasure(typed: TypedMeasure, locale: Locale): ReadMeasure {
  const faults: Record<string, string> = {};
  const read = (path: string, text: string): number | null => {
    const reading = readLuxField(text, locale);
    if (reading.is === 'fault') faults[path] = `${reading.wrong}; ${reading.right}.`;
    return reading.is === 'value' ? reading.value : null;
  };
  const dark = read('dark', typed.dark);
  const pairs = typed.pairs.flatMap(({ bare, covered }, row) => {
    const [one, other] = [read(`pairs[${row}].bare`, bare), read(`pairs[${row}].covered`, covered)];
    return one === null || other === null ? [] : [{ row, bare: one, covered: other }];
  });
  if (Object.keys(faults).length > 0 || pairs.length === 0) return { faults, result: null };
  const given = { ...(dark === null ? {} : { dark }), glazing: typed.glazing, reflectance: typed.reflectance };
  try {
    return { faults, result: measureTransmittance({ ...given, pairs }) };
  } catch (error) {
    if (!(error instanceof StackFault)) throw error;
    const { path, wrong, right } = error.fault;
    return { faults: { [toRow(path, pairs)]: `${wrong}; ${right}.` }, result: null };
  }
}

/** The engine counts whole pairs, the sheet counts its rows. */
function toRow(path: string, pairs: readonly { readonly row: number }[]): string {
  return path.replace(/^pairs\[(\d+)\]/, (_, at: string) => `pairs[${pairs[Number(at)]?.row ?? 0}]`);
}
