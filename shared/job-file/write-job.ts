/**
 * A project of the portfolio as a job file: what is exported, what the engines price, and what a proposal freezes.
 * What is not measured yet is left out and named, so that a half-filled project still draws and prices what it can.
 */
import { lengthIn } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type {
  ClothRecord,
  OpeningDocument,
  ProjectDocument,
  RoomDocument,
  StacksRecord,
  TreatmentRecord,
} from '../records/records.ts';
import { isNoWindow } from '../treatments/away.ts';
import { GENERIC_CLOTH_IDS, TIERS } from '../words.ts';
import { KIND_FIELDS, PANELS_EXTRAS } from './kind-fields.ts';
import { writeCutting } from './write-cutting.ts';
import { wireTreatment } from './wire-job.ts';
import type { WireJob, WireOpening, WireRoom, WireTreatment } from './wire-job.ts';
import { writeCloth } from './write-cloth.ts';
import type { WirePanels } from './wire-panels.ts';
import type { WireStacks } from './wire-stacks.ts';
import { wireFormOf } from '../records/ticks-form.ts';
import type { OtherMake, PanelsMake } from '../records/treatment-make.ts';

/** What is still missing of a treatment before it can be priced: the fields, in measuring order. */
export interface Unfinished {
  readonly treatmentId: string;
  readonly openingId: string;
  readonly fields: readonly string[];
}

export interface WrittenJob {
  readonly wire: WireJob;
  /** Path in the job file to the record's id: `rooms[0].openings[1].treatments[0]` to the treatment. */
  readonly ids: Readonly<Record<string, string>>;
  readonly unfinished: readonly Unfinished[];
}

export interface ProposalHeadGiven {
  readonly number?: string;
  readonly date?: string;
  readonly validUntil?: string;
  readonly terms?: string;
  readonly cancellation?: string;
  readonly tierNames?: { readonly good: string; readonly better: string; readonly best: string };
}

/** Six decimals of an inch, centimetre or millimetre are finer than a tick: they read back exactly. */
function length(value: Ticks, unit: LengthUnit): number {
  return lengthIn(value, unit, 6);
}

export function writeJob(document: ProjectDocument, head: ProposalHeadGiven = {}): WrittenJob {
  const { project, client, settings } = document;
  const unit = project.units;
  const ids: Record<string, string> = {};
  const unfinished: Unfinished[] = [];
  const names = new Set<string>();
  const rooms = document.rooms.map((room, index) =>
    writeRoom(room, `rooms[${index}]`, uniqueName(room.name, 'Room', names), { unit, ids, unfinished }),
  );
  const used = usedCloth(document);
  const cloth = used.map((each) => writeCloth(each, unit)).filter((each) => each !== null);
  const cutting = writeCutting(document, {
    unit,
    known: new Set([...cloth.map(({ id }) => id), ...GENERIC_CLOTH_IDS]),
    treatments: namesOf(rooms, ids),
  });
  const wire: WireJob = {
    linenfold: 1,
    units: unit,
    currency: project.currency,
    locale: project.locale,
    client: {
      name: client.name.trim() === '' ? 'Client' : client.name,
      ...(client.email === '' ? {} : { email: client.email }),
      ...(client.phone === '' ? {} : { phone: client.phone }),
      ...(client.address === '' ? {} : { address: client.address }),
      ...(client.notes === '' ? {} : { notes: client.notes }),
    },
    ...(project.name.trim() === '' ? {} : { project: project.name }),
    ...(settings.letterhead.name.trim() === '' ? {} : { letterhead: settings.letterhead }),
    proposal: {
      ...head,
      terms: head.terms ?? settings.terms,
      cancellation: head.cancellation ?? settings.cancellation,
      tierNames: head.tierNames ?? settings.tierNames,
    },
    practice: { ...settings.practice, ...(project.practice ?? {}) },
    priceBook: project.priceBook ?? (settings.exampleRates ? 'example' : settings.priceBook),
    cloth,
    ...(cutting === undefined ? {} : { cutting }),
    rooms,
  };
  return { wire, ids, unfinished };
}

/** Room, opening and treatment of each treatment that was written, by its id. */
function namesOf(rooms: readonly WireRoom[], ids: Readonly<Record<string, string>>): Map<string, string> {
  const names = new Map<string, string>();
  rooms.forEach((room, roomIndex) =>
    room.openings.forEach((opening, openingIndex) =>
      opening.treatments.forEach((treatment, index) => {
        const id = ids[`rooms[${roomIndex}].openings[${openingIndex}].treatments[${index}]`];
        if (id !== undefined) names.set(id, `${room.name}/${opening.name}/${treatment.name}`);
      }),
    ),
  );
  return names;
}

interface Writing {
  readonly unit: LengthUnit;
  readonly ids: Record<string, string>;
  readonly unfinished: Unfinished[];
}

/** Siblings need names of their own in a job file; a second "Window" becomes "Window 2" there. */
function uniqueName(name: string, otherwise: string, taken: Set<string>): string {
  const base = name.trim() === '' ? otherwise : name;
  let unique = base;
  for (let count = 2; taken.has(unique); count += 1) unique = `${base} ${count}`;
  taken.add(unique);
  return unique;
}

function writeRoom(room: RoomDocument, path: string, name: string, writing: Writing): WireRoom {
  writing.ids[path] = room.id;
  const names = new Set<string>();
  const openings: WireOpening[] = [];
  for (const opening of room.openings) {
    const where = `${path}.openings[${openings.length}]`;
    const written = writeOpening(opening, where, names, writing);
    if (written) openings.push(written);
  }
  return {
    name,
    use: room.use,
    facing: room.facing,
    climate: room.climate,
    ...(room.privacy === null ? {} : { privacy: room.privacy }),
    ...(room.budget === null ? {} : { budget: room.budget }),
    ceiling: room.ceiling === null ? null : length(room.ceiling, writing.unit),
    openings,
  };
}

/** Null while a window has no size: nothing about it can be reckoned. A bed or a bath needs none. */
function writeOpening(
  opening: OpeningDocument,
  path: string,
  names: Set<string>,
  writing: Writing,
): WireOpening | null {
  const { unit } = writing;
  const noWindow = isNoWindow(opening.treatments.map(({ make }) => make.kind));
  const missing = noWindow
    ? []
    : [...(sized(opening.width) ? [] : ['width']), ...(sized(opening.height) ? [] : ['height'])];
  if (missing.length > 0) {
    for (const treatment of opening.treatments)
      writing.unfinished.push({
        treatmentId: treatment.id,
        openingId: opening.id,
        fields: [...missing, ...missingOf(treatment)],
      });
    return null;
  }
  writing.ids[path] = opening.id;
  const own = new Set<string>();
  const treatments: WireTreatment[] = [];
  for (const treatment of opening.treatments) {
    const fields = missingOf(treatment);
    const written =
      fields.length === 0 ? writeTreatment(treatment, uniqueName(treatment.name, 'Treatment', own), unit) : null;
    if (written === null) writing.unfinished.push({ treatmentId: treatment.id, openingId: opening.id, fields });
    else {
      writing.ids[`${path}.treatments[${treatments.length}]`] = treatment.id;
      treatments.push(written);
    }
  }
  return {
    name: uniqueName(opening.name, 'Window', names),
    ...(opening.width === null || opening.width === 0 ? {} : { width: length(opening.width, unit) }),
    ...(opening.height === null || opening.height === 0 ? {} : { height: length(opening.height, unit) }),
    sill: opening.sill === null ? null : length(opening.sill, unit),
    at: opening.at === null ? null : length(opening.at, unit),
    glazing: opening.glazing,
    heatSourceBelow: opening.heatSourceBelow,
    measured: opening.measured,
    ...(opening.notes === '' ? {} : { notes: opening.notes }),
    treatments,
  };
}

function sized(value: Ticks | null): boolean {
  return value !== null && value > 0;
}

/** Fields of panels that must be there before they can be priced, in measuring order. */
export function missingOf(treatment: TreatmentRecord): string[] {
  const { make } = treatment;
  const face = treatment.face === null ? ['face'] : [];
  if (make.kind !== 'panels') return [...missingOfKind(treatment, make), ...face];
  return [
    ...(sized(make.rodWidth) || make.extras['bay'] ? [] : ['rodWidth']),
    ...(sized(make.finishedLength) || make.extras['hang'] ? [] : ['finishedLength']),
    ...face,
  ];
}

/** What the wire schema of a kind misses; what is there and wrong is a fault, and told as one. */
function missingOfKind(treatment: TreatmentRecord, make: OtherMake): string[] {
  const wire = writeKind(treatment, make, 'Treatment', treatment.face ?? 'face', 'in');
  const parsed = wireTreatment.safeParse(wire);
  if (parsed.success) return [];
  const missing = parsed.error.issues.filter((issue) => valueAt(wire, issue.path) === undefined);
  return [...new Set(missing.map((issue) => issue.path.join('.')))];
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (here, key) =>
      typeof here === 'object' && here !== null ? (here as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  );
}

function writeTreatment(treatment: TreatmentRecord, name: string, unit: LengthUnit): WireTreatment | null {
  if (treatment.face === null) return null;
  const { make } = treatment;
  if (make.kind === 'panels') return writePanels(treatment, make, name, treatment.face, unit);
  // It may still be wrong: reading the job tells how, and where.
  return writeKind(treatment, make, name, treatment.face, unit) as WireTreatment;
}

function baseOf(treatment: TreatmentRecord, name: string, face: string) {
  return {
    name,
    face,
    quantity: treatment.quantity,
    ...(treatment.practice === null ? {} : { practice: treatment.practice }),
    stacks: writeStacks(treatment.stacks),
    ...(treatment.decision === null ? {} : { decision: treatment.decision }),
  };
}

function writeKind(treatment: TreatmentRecord, make: OtherMake, name: string, face: string, unit: LengthUnit): object {
  return {
    ...baseOf(treatment, name, face),
    kind: make.kind,
    ...(wireFormOf(KIND_FIELDS[make.kind], make.form, unit) as object),
  };
}

function writePanels(
  treatment: TreatmentRecord,
  make: PanelsMake,
  name: string,
  face: string,
  unit: LengthUnit,
): WireTreatment {
  const side = (value: Ticks | null): number => (value === null ? 0 : length(value, unit));
  const returned = make.returnLeft !== null || make.returnRight !== null;
  const extras = wireFormOf(PANELS_EXTRAS, make.extras, unit) as Partial<WirePanels>;
  return {
    ...baseOf(treatment, name, face),
    kind: 'panels',
    heading: make.heading,
    arrangement: make.arrangement,
    mount: { where: make.mountWhere, ...(make.mountAbove === null ? {} : { above: length(make.mountAbove, unit) }) },
    ...(make.rodWidth === null || extras.bay ? {} : { rodWidth: length(make.rodWidth, unit) }),
    ...(make.finishedLength === null || extras.hang ? {} : { finishedLength: length(make.finishedLength, unit) }),
    ...(make.fullness === null || make.halfWidths !== null ? {} : { fullness: make.fullness / 1000 }),
    ...(returned ? { return: { left: side(make.returnLeft), right: side(make.returnRight) } } : {}),
    ...(make.overlap === null || make.arrangement !== 'pair' ? {} : { overlap: length(make.overlap, unit) }),
    ...(make.halfWidths === null ? {} : { widths: make.halfWidths / 2 }),
    ...extras,
  };
}

function writeStacks(stacks: StacksRecord): WireStacks {
  const written: WireStacks = {};
  for (const tier of TIERS) {
    const stack = stacks[tier];
    if (stack) written[tier] = { ...(stack.face === null ? {} : { face: stack.face }), behind: stack.behind };
  }
  return written;
}

/**
 * The project's own cloth, then the decorator's as far as it is named or may stand behind. Hers under the id of a generic
 * one takes its place; generic cloth needs no listing.
 */
function usedCloth(document: ProjectDocument): ClothRecord[] {
  const codes = new Set<string>();
  for (const each of [...document.remnants, ...document.cuttings])
    if (each.projectId === document.project.id) codes.add(each.cloth);
  for (const room of document.rooms)
    for (const opening of room.openings)
      for (const treatment of opening.treatments) {
        for (const text of textsIn(treatment.make.kind === 'panels' ? treatment.make.extras : treatment.make.form))
          codes.add(text);
        if (treatment.face !== null) codes.add(treatment.face);
        for (const tier of TIERS) {
          const stack = treatment.stacks[tier];
          if (stack?.face) codes.add(stack.face);
          stack?.behind.forEach((code) => codes.add(code));
        }
      }
  const own = document.cloth.filter((cloth) => cloth.projectId === document.project.id);
  const library = document.cloth.filter((cloth) => cloth.projectId === null);
  const found = new Map<string, ClothRecord>();
  // What came with the project goes with it; linings of her own are offered to the lining engine before a stack names one.
  for (const cloth of [...own, ...library]) {
    const wanted = cloth.projectId !== null || cloth.role !== 'face' || codes.has(cloth.code);
    if (wanted && !found.has(cloth.code)) found.set(cloth.code, cloth);
  }
  return [...found.values()];
}

/** Every text in a form: ids of bands, welts, contrasts, decks and liners are among them. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
}
