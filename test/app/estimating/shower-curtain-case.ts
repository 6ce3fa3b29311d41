/** One shower curtain from a few wire fields, read by the program's own schema and reader, and its take-off. */
import { checkShowerCurtain } from '#app/estimating/shower-curtain/check-shower-curtain.ts';
import { estimateShowerCurtain } from '#app/estimating/shower-curtain/estimate-shower-curtain.ts';
import type { ShowerCurtainEstimate } from '#app/estimating/shower-curtain/estimate-shower-curtain.ts';
import type { Cloth } from '#shared/cloth.ts';
import { sayFault } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import {
  readShowerCurtain,
  readShowerCurtainPractice,
  wireShowerCurtain,
  wireShowerCurtainPractice,
} from '#shared/job-file/wire-shower-curtain.ts';
import type { WireShowerCurtainFields, WireShowerCurtainPractice } from '#shared/job-file/wire-shower-curtain.ts';
import { lengthIn } from '#shared/length.ts';
import { defaultShowerCurtainPractice } from '#shared/treatments/shower-curtain.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { stockOf } from './soft-goods-case.ts';
import type { ClothCase, Stock } from './soft-goods-case.ts';

export interface ShowerCase extends ClothCase {
  readonly curtain?: Partial<WireShowerCurtainFields>;
  readonly making?: WireShowerCurtainPractice;
}

type ReadShower = Stock & { readonly curtain: ShowerCurtainTreatment; readonly liner: Cloth | null };

export function readShower(given: ShowerCase): ReadShower {
  const stock = stockOf(given);
  const wire: WireShowerCurtainFields = wireShowerCurtain({}).parse({
    kind: 'shower-curtain',
    finishedWidth: '72 in',
    finishedLength: '72 in',
    ...given.curtain,
  });
  const section = readShowerCurtainPractice(
    wireShowerCurtainPractice.parse(given.making ?? {}),
    defaultShowerCurtainPractice(stock.unit),
    stock.unit,
  );
  const curtain = readShowerCurtain(wire, stock.base, section, stock.unit);
  return { ...stock, curtain, liner: curtain.liner.from === 'cloth' ? stock.find(curtain.liner.cloth) : null };
}

export function showerFaults(given: ShowerCase): Fault[] {
  const { curtain, face, behind, liner, unit } = readShower(given);
  return checkShowerCurtain(curtain, face, behind, liner, unit);
}

export interface ShowerResult extends ShowerCurtainEstimate {
  readonly in: (length: number) => number;
}

export function estimateShower(given: ShowerCase): ShowerResult {
  const stock = readShower(given);
  const faults = checkShowerCurtain(stock.curtain, stock.face, stock.behind, stock.liner, stock.unit);
  if (faults.length > 0) throw new Error(faults.map(sayFault).join('\n'));
  const made = estimateShowerCurtain(stock.curtain, stock.face, stock.behind, { ...stock.given, liner: stock.liner });
  return { ...made, in: (length) => lengthIn(length, stock.unit) };
}
