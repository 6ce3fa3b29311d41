/** One bed skirt from a few wire fields, read by the program's own schema and reader, and its take-off. */
import { checkBedSkirt } from '#app/estimating/bed-skirt/check-bed-skirt.ts';
import { estimateBedSkirt } from '#app/estimating/bed-skirt/estimate-bed-skirt.ts';
import type { BedSkirtEstimate } from '#app/estimating/bed-skirt/estimate-bed-skirt.ts';
import type { Cloth } from '#shared/cloth.ts';
import { sayFault } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import {
  readBedSkirt,
  readBedSkirtPractice,
  wireBedSkirt,
  wireBedSkirtPractice,
} from '#shared/job-file/wire-bed-skirt.ts';
import type { WireBedSkirtFields, WireBedSkirtPractice } from '#shared/job-file/wire-bed-skirt.ts';
import { lengthIn } from '#shared/length.ts';
import { defaultBedSkirtPractice } from '#shared/treatments/bed-skirt.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { stockOf } from './soft-goods-case.ts';
import type { ClothCase, Stock } from './soft-goods-case.ts';

export interface SkirtCase extends ClothCase {
  readonly skirt?: Partial<WireBedSkirtFields>;
  readonly making?: WireBedSkirtPractice;
}

type ReadSkirt = Stock & { readonly skirt: BedSkirtTreatment; readonly deck: Cloth | null };

export function readSkirt(given: SkirtCase): ReadSkirt {
  const stock = stockOf(given);
  const wire: WireBedSkirtFields = wireBedSkirt({}).parse({
    kind: 'bed-skirt',
    style: 'gathered',
    bed: { width: '60 in', length: '80 in' },
    drop: '14 in',
    ...given.skirt,
  });
  const section = readBedSkirtPractice(
    wireBedSkirtPractice.parse(given.making ?? {}),
    defaultBedSkirtPractice(stock.unit),
    stock.unit,
  );
  const skirt = readBedSkirt(wire, stock.base, section, stock.unit);
  return { ...stock, skirt, deck: skirt.deck === null ? null : stock.find(skirt.deck) };
}

export function skirtFaults(given: SkirtCase): Fault[] {
  const { skirt, face, behind, deck, unit } = readSkirt(given);
  return checkBedSkirt(skirt, face, behind, deck, unit);
}

export interface SkirtResult extends BedSkirtEstimate {
  readonly in: (length: number) => number;
}

export function estimateSkirt(given: SkirtCase): SkirtResult {
  const stock = readSkirt(given);
  const faults = checkBedSkirt(stock.skirt, stock.face, stock.behind, stock.deck, stock.unit);
  if (faults.length > 0) throw new Error(faults.map(sayFault).join('\n'));
  const made = estimateBedSkirt(stock.skirt, stock.face, stock.behind, { ...stock.given, deck: stock.deck });
  return { ...made, in: (length) => lengthIn(length, stock.unit) };
}
