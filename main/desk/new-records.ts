/** Records as they are before anybody has written anything into them. */
import { NOTHING_KNOWN } from '#shared/records/known-of-cloth.ts';
import { NEW_PANELS } from '#shared/records/new-panels.ts';
import type { CuttingRecord, RemnantRecord } from '#shared/records/cutting-records.ts';
import type {
  ClientRecord,
  ClothRecord,
  OpeningRecord,
  ProjectRecord,
  RoomRecord,
  SettingsRecord,
  TreatmentRecord,
} from '#shared/records/records.ts';
import type { ClothRole } from '#shared/words.ts';
import type { EditsOf } from '#main/portfolio/kept-table.ts';

export interface Birth {
  readonly id: string;
  /** The instant. */
  readonly at: string;
}

function kept({ id, at }: Birth): { id: string; createdAt: string; updatedAt: string } {
  return { id, createdAt: at, updatedAt: at };
}

/** `blank` with what was given; a field that is not given stays. */
export function withGiven<Kept>(blank: Kept, given: EditsOf<Kept>): Kept {
  const set = Object.entries(given).filter(([, value]) => value !== undefined);
  return { ...blank, ...(Object.fromEntries(set) as Partial<Kept>) };
}

/** `base`, or `base 2` and so on when a sibling goes by that name. */
export function freeName(base: string, taken: readonly string[]): string {
  let name = base;
  for (let count = 2; taken.includes(name); count += 1) name = `${base} ${count}`;
  return name;
}

export function newClient(birth: Birth): ClientRecord {
  return { ...kept(birth), name: '', email: '', phone: '', address: '', notes: '', sample: false };
}

/** Starts from the decorator's own units, currency and locale; practice and price book are hers. */
export function newProject(birth: Birth, clientId: string, settings: SettingsRecord): ProjectRecord {
  const { units, currency, locale } = settings;
  return { ...kept(birth), clientId, name: 'First project', units, currency, locale, practice: null, priceBook: null };
}

export function newRoom(birth: Birth, projectId: string, position: number): RoomRecord {
  const facts = { use: 'living', facing: null, climate: 'mixed', privacy: null, budget: null, ceiling: null } as const;
  return { ...kept(birth), projectId, position, name: 'Room', ...facts, drafts: {} };
}

export function newOpening(birth: Birth, roomId: string, position: number): OpeningRecord {
  const sizes = { width: null, height: null, sill: null, at: null };
  const facts = { glazing: 'double', heatSourceBelow: false, measured: 'rough', notes: '' } as const;
  return { ...kept(birth), roomId, position, name: 'Window', ...sizes, ...facts, drafts: {} };
}

export function newTreatment(birth: Birth, openingId: string, position: number): TreatmentRecord {
  return {
    ...kept(birth),
    openingId,
    position,
    name: 'Panels',
    quantity: 1,
    face: null,
    make: NEW_PANELS,
    stacks: { good: null, better: null, best: null },
    decision: null,
    practice: null,
    drafts: {},
  };
}

/** The plainest family of each role. */
export const PLAINEST = { face: 'plain', lining: 'standard', interlining: 'medium' } as const satisfies Record<
  ClothRole,
  ClothRecord['family']
>;

export function newCloth(birth: Birth, projectId: string | null, role: ClothRole): ClothRecord {
  return {
    ...kept(birth),
    projectId,
    code: '',
    name: '',
    role,
    family: PLAINEST[role],
    width: null,
    usableWidth: null,
    match: 'none',
    repeatVertical: null,
    repeatHorizontal: null,
    cutOnRepeat: false,
    oneWay: false,
    bolt: null,
    orderStep: null,
    leastOrder: null,
    railroad: false,
    content: null,
    weight: null,
    colour: null,
    shade: null,
    ...NOTHING_KNOWN,
    price: null,
    supplier: '',
    notes: '',
    drafts: {},
  };
}

export function newRemnant(birth: Birth, projectId: string | null, cloth: string): RemnantRecord {
  const size = { length: null, width: null, dyeLot: '', startsAt: null };
  return { ...kept(birth), projectId, cloth, name: 'Remnant', ...size, notes: '', drafts: {} };
}

export function newCutting(birth: Birth, projectId: string, cloth: string): CuttingRecord {
  return { ...kept(birth), projectId, cloth, bolts: [], flaws: [], fixed: [] };
}
