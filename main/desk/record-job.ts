/** A job file as records of the portfolio: what `write-job.ts` in shared writes back to the very same job. */
import type * as z from 'zod';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { optionalLength, readLength, readThousandths } from '#shared/job-file/read-length.ts';
import { practiceWithUnits, priceBookWithUnits } from '#shared/job-file/with-units.ts';
import type { WireJob, WireOpening, WireRoom, WireTreatment } from '#shared/job-file/wire-job.ts';
import { KIND_FIELDS, PANELS_EXTRAS } from '#shared/job-file/kind-fields.ts';
import type { WirePanels } from '#shared/job-file/wire-panels.ts';
import type { WireStacks } from '#shared/job-file/wire-stacks.ts';
import { ticksFormOf } from '#shared/records/ticks-form.ts';
import type { TicksForm, TreatmentMake } from '#shared/records/treatment-make.ts';
import { cuttingRecord, remnantRecord } from '#shared/records/cutting-records.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import {
  clientRecord,
  clothRecord,
  openingRecord,
  projectRecord,
  roomRecord,
  treatmentRecord,
} from '#shared/records/records.ts';
import type {
  ClientRecord,
  ClothRecord,
  OpeningDocument,
  ProjectRecord,
  RoomDocument,
  SettingsRecord,
  StacksRecord,
  TreatmentRecord,
} from '#shared/records/records.ts';
import { completePractice } from './complete-practice.ts';
import { recordCloth } from './record-cloth.ts';
import { recordCutting } from './record-cutting.ts';
import type { RecordedCutting } from './record-cutting.ts';
import { newClient, newOpening, newProject, newRoom, newTreatment } from './new-records.ts';
import type { Birth } from './new-records.ts';

export interface RecordedJob extends RecordedCutting {
  readonly client: ClientRecord;
  readonly project: ProjectRecord;
  readonly rooms: readonly RoomDocument[];
  readonly cloth: readonly ClothRecord[];
  /** What the file holds and the portfolio cannot: texts that are too long. */
  readonly faults: readonly Fault[];
}

export interface RecordingGiven {
  readonly birth: () => Birth;
  readonly settings: SettingsRecord;
  readonly projectName: string;
  /** The invented household follows the decorator's own practice, so that she sees what her settings do. */
  readonly sample: boolean;
}

/** Records of a job file that was read without a fault. */
export function recordJob(wire: WireJob, given: RecordingGiven): RecordedJob {
  const { birth, sample } = given;
  const unit = wire.units;
  const faults: Fault[] = [];
  const check = <Kept extends object>(schema: z.ZodType, record: Kept, path: string): Kept => {
    faults.push(...findFaults(schema, record, path));
    return record;
  };
  const client: ClientRecord = {
    ...newClient(birth()),
    name: wire.client.name,
    email: wire.client.email ?? '',
    phone: wire.client.phone ?? '',
    address: wire.client.address ?? '',
    notes: wire.client.notes ?? '',
    sample,
  };
  const project: ProjectRecord = {
    ...newProject(birth(), client.id, given.settings),
    name: wire.project ?? given.projectName,
    units: unit,
    currency: wire.currency,
    locale: wire.locale ?? 'en-US',
    practice: recordPractice(wire, unit, sample),
    priceBook: recordPriceBook(wire, unit),
  };
  const cloth = (wire.cloth ?? []).map((each, index) =>
    check(clothRecord, recordCloth(each, project.id, birth(), unit), at('cloth', index)),
  );
  const rooms = wire.rooms.map((room, position) => {
    const path = at('rooms', position);
    const recorded = recordRoom(room, newRoom(birth(), project.id, position), unit, birth);
    check(roomRecord, recorded, path);
    recorded.openings.forEach((opening, index) => {
      const openingPath = at(at(path, 'openings'), index);
      check(openingRecord, opening, openingPath);
      opening.treatments.forEach((treatment, order) =>
        check(treatmentRecord, treatment, at(at(openingPath, 'treatments'), order)),
      );
    });
    return recorded;
  });
  const { remnants, cuttings } = recordCutting(wire, project.id, rooms, birth);
  remnants.forEach((each, index) => check(remnantRecord, each, at('cutting.remnants', index)));
  cuttings.forEach((each) => check(cuttingRecord, each, 'cutting'));
  check(clientRecord, client, 'client');
  check(projectRecord, project, '');
  return { client, project, rooms, cloth, remnants, cuttings, faults };
}

function findFaults(schema: z.ZodType, record: object, path: string): Fault[] {
  const checked = schema.safeParse(record);
  if (checked.success) return [];
  return checked.error.issues.map((issue) => ({
    path: issue.path.reduce<string>((so, step) => at(so, typeof step === 'number' ? step : String(step)), path),
    wrong: issue.code === 'too_big' ? `has more than ${String(issue.maximum)} letters` : 'cannot be kept',
    right: 'write it shorter',
  }));
}

function recordPractice(wire: WireJob, unit: LengthUnit, sample: boolean): ProjectRecord['practice'] {
  if (!sample) return completePractice(wire.practice ?? {}, unit);
  return wire.practice === undefined ? null : practiceWithUnits(wire.practice, unit);
}

/** A file without a price book has no prices of its own to keep: the decorator's are used. */
function recordPriceBook(wire: WireJob, unit: LengthUnit): ProjectRecord['priceBook'] {
  if (wire.priceBook === undefined) return null;
  return wire.priceBook === 'example' ? 'example' : priceBookWithUnits(wire.priceBook, unit);
}

function recordRoom(
  wire: WireRoom,
  blank: ReturnType<typeof newRoom>,
  unit: LengthUnit,
  birth: () => Birth,
): RoomDocument {
  return {
    ...blank,
    name: wire.name,
    use: wire.use,
    facing: wire.facing ?? null,
    climate: wire.climate ?? blank.climate,
    privacy: wire.privacy ?? null,
    budget: wire.budget ?? null,
    ceiling: optionalLength(wire.ceiling, unit),
    openings: wire.openings.map((opening, position) => recordOpening(opening, blank.id, position, unit, birth)),
  };
}

function recordOpening(
  wire: WireOpening,
  roomId: string,
  position: number,
  unit: LengthUnit,
  birth: () => Birth,
): OpeningDocument {
  const blank = newOpening(birth(), roomId, position);
  return {
    ...blank,
    name: wire.name,
    width: optionalLength(wire.width, unit),
    height: optionalLength(wire.height, unit),
    sill: optionalLength(wire.sill, unit),
    at: optionalLength(wire.at, unit),
    glazing: wire.glazing ?? blank.glazing,
    heatSourceBelow: wire.heatSourceBelow ?? false,
    measured: wire.measured ?? 'rough',
    notes: wire.notes ?? '',
    treatments: wire.treatments.map((treatment, order) => recordTreatment(treatment, blank.id, order, unit, birth())),
  };
}

function recordTreatment(
  wire: WireTreatment,
  openingId: string,
  position: number,
  unit: LengthUnit,
  birth: Birth,
): TreatmentRecord {
  return {
    ...newTreatment(birth, openingId, position),
    name: wire.name,
    quantity: wire.quantity ?? 1,
    face: wire.face,
    make: recordMake(wire, unit),
    stacks: recordStacks(wire.stacks ?? {}),
    decision: wire.decision ?? null,
    practice: wire.practice === undefined ? null : practiceWithUnits(wire.practice, unit),
  };
}

function recordMake(wire: WireTreatment, unit: LengthUnit): TreatmentMake {
  if (wire.kind !== 'panels') {
    // A variable kind joins its own form: the union is told so once here.
    return { kind: wire.kind, form: ticksFormOf(KIND_FIELDS[wire.kind], wire, unit) } as TreatmentMake;
  }
  return {
    kind: 'panels',
    heading: wire.heading,
    arrangement: wire.arrangement,
    mountWhere: wire.mount?.where ?? 'wall',
    mountAbove: optionalLength(wire.mount?.above, unit),
    rodWidth: optionalLength(wire.rodWidth, unit),
    finishedLength: optionalLength(wire.finishedLength, unit),
    fullness: typeof wire.fullness === 'number' ? readThousandths(wire.fullness) : null,
    ...recordReturns(wire, unit),
    overlap: optionalLength(wire.overlap, unit),
    halfWidths: typeof wire.widths === 'number' ? Math.round(wire.widths * 2) : null,
    extras: ticksFormOf(PANELS_EXTRAS, wire, unit) as TicksForm,
  };
}

/** One number stands for each side that has a return; a single panel has its one on the left, as `read-job.ts` reads it. */
function recordReturns(wire: WirePanels, unit: LengthUnit): { returnLeft: Ticks | null; returnRight: Ticks | null } {
  if (wire.return === undefined) return { returnLeft: null, returnRight: null };
  if (typeof wire.return === 'object')
    return { returnLeft: readLength(wire.return.left, unit), returnRight: readLength(wire.return.right, unit) };
  const each = readLength(wire.return, unit);
  return { returnLeft: each, returnRight: wire.arrangement === 'single' ? readLength(0, unit) : each };
}

function recordStacks(wire: WireStacks): StacksRecord {
  const stack = (given: WireStacks['good']): StacksRecord['good'] =>
    given === undefined ? null : { face: given.face ?? null, behind: given.behind };
  return { good: stack(wire.good), better: stack(wire.better), best: stack(wire.best) };
}
