/** A treatment that is added, or that becomes another kind. */
import { NEW_PANELS } from '#shared/records/new-panels.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { OpeningDocument, TreatmentRecord } from '#shared/records/records.ts';
import type { TreatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { KIND_WORDS } from '../words/kind-sheets/kinds.ts';
import { makeAlike, newMake } from './kind-form.ts';
import { placeAfter } from './move-order.ts';

const NO_STACKS = { good: null, better: null, best: null };

/** The first treatment of a new opening: made like the last one of the house, panels where there is none. */
export function newTreatment(model: TreatmentRecord | null): Partial<TreatmentRecord> {
  const make = model ? makeAlike(model.make) : NEW_PANELS;
  return {
    name: KIND_WORDS[make.kind].name,
    position: 0,
    quantity: 1,
    face: model?.face ?? null,
    make,
    stacks: NO_STACKS,
  };
}

/** One more at the same opening. It takes the opening's cloth, and panels their make from the last ones of the house. */
export function addedTreatment(
  opening: OpeningDocument,
  kind: TreatmentKind,
  model: TreatmentRecord | null,
  unit: LengthUnit,
): Partial<TreatmentRecord> {
  const make = model?.make.kind === kind ? makeAlike(model.make) : newMake(kind, unit);
  return {
    name: freeName(opening, kind),
    position: placeOfNew(opening, kind),
    quantity: 1,
    face: opening.treatments.at(-1)?.face ?? model?.face ?? null,
    make,
    stacks: NO_STACKS,
  };
}

/** From the room to the glass, unless it is moved by hand: what covers the top, panels, shades; a bed or a bath last. */
const DEPTHS: Readonly<Record<TreatmentKind, number>> = {
  valance: 0,
  cornice: 0,
  swags: 0,
  panels: 1,
  'roman-shade': 2,
  'bed-skirt': 3,
  'shower-curtain': 3,
};

/** The place before the first that hangs nearer the glass, or after all. */
function placeOfNew({ treatments }: OpeningDocument, kind: TreatmentKind): number {
  const behind = treatments.find(({ make }) => DEPTHS[make.kind] > DEPTHS[kind]);
  return behind?.position ?? placeAfter(treatments);
}

function freeName(opening: OpeningDocument, kind: TreatmentKind): string {
  const { name } = KIND_WORDS[kind];
  const taken = new Set(opening.treatments.map((each) => each.name));
  let free: string = name;
  for (let count = 2; taken.has(free); count += 1) free = `${name} ${count}`;
  return free;
}

/** What a treatment was before it became another kind, for the way back: by treatment and kind, while the window is open. */
const before = new Map<string, TreatmentMake>();

/** Name, cloth, quantity and stacks stay; a name that only said the old kind says the new one. */
export function turnedInto(
  treatment: TreatmentRecord,
  kind: TreatmentKind,
  unit: LengthUnit,
): Partial<TreatmentRecord> {
  const from = treatment.make.kind;
  if (from === kind) return {};
  before.set(`${treatment.id} ${from}`, treatment.make);
  const number = /^(.*?)( \d+)?$/.exec(treatment.name);
  const named = number?.[1] !== KIND_WORDS[from].name;
  const drafts = Object.fromEntries(Object.entries(treatment.drafts).filter(([field]) => field === 'quantity'));
  return {
    make: before.get(`${treatment.id} ${kind}`) ?? newMake(kind, unit),
    drafts,
    ...(named ? {} : { name: `${KIND_WORDS[kind].name}${number[2] ?? ''}` }),
  };
}
