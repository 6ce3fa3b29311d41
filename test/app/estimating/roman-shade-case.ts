/** One Roman shade from a few wire fields, read by the program's own schema and reader, and its take-off. */
import { checkRomanShade } from '#app/estimating/roman-shade/check-roman-shade.ts';
import { estimateRomanShade } from '#app/estimating/roman-shade/estimate-roman-shade.ts';
import type { RomanShadeEstimate } from '#app/estimating/roman-shade/estimate-roman-shade.ts';
import { sayFault } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import {
  readRomanShade,
  readRomanShadePractice,
  wireRomanShade,
  wireRomanShadePractice,
} from '#shared/job-file/wire-roman-shade.ts';
import type { WireRomanShadeFields, WireRomanShadePractice } from '#shared/job-file/wire-roman-shade.ts';
import { lengthIn } from '#shared/length.ts';
import { defaultRomanShadePractice } from '#shared/treatments/roman-shade.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { stockOf } from './soft-goods-case.ts';
import type { ClothCase, Stock } from './soft-goods-case.ts';

export interface ShadeCase extends ClothCase {
  readonly shade?: Partial<WireRomanShadeFields>;
  readonly making?: WireRomanShadePractice;
}

export function readShade(given: ShadeCase): Stock & { readonly shade: RomanShadeTreatment } {
  const stock = stockOf(given);
  const wire: WireRomanShadeFields = wireRomanShade({}).parse({
    kind: 'roman-shade',
    style: 'flat',
    mount: { where: 'wall' },
    size: { basis: 'finished', width: '27 in', length: '58 in' },
    return: 0,
    ...given.shade,
  });
  const section = readRomanShadePractice(
    wireRomanShadePractice.parse(given.making ?? {}),
    defaultRomanShadePractice(stock.unit),
    stock.unit,
  );
  return { ...stock, shade: readRomanShade(wire, stock.base, section, stock.unit) };
}

export function shadeFaults(given: ShadeCase): Fault[] {
  const { shade, face, behind, unit } = readShade(given);
  return checkRomanShade(shade, face, behind, unit);
}

export interface ShadeResult extends RomanShadeEstimate {
  readonly in: (length: number) => number;
}

export function estimateShade(given: ShadeCase): ShadeResult {
  const stock = readShade(given);
  const faults = checkRomanShade(stock.shade, stock.face, stock.behind, stock.unit);
  if (faults.length > 0) throw new Error(faults.map(sayFault).join('\n'));
  const made = estimateRomanShade(stock.shade, stock.face, stock.behind, stock.given);
  return { ...made, in: (length) => lengthIn(length, stock.unit) };
}

/** A finished size in bare numbers of the case's unit. */
export function finished(width: number | string, length: number | string): WireRomanShadeFields['size'] {
  return { basis: 'finished', width, length };
}
