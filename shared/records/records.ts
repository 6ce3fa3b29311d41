/** What the portfolio keeps, as it travels through the contract: clients, projects, rooms, openings, treatments, cloth. */
import * as z from 'zod';
import { DECISIONS } from '../cutting.ts';
import { UNITS, wireLetterhead } from '../job-file/wire-job.ts';
import { wirePractice, wirePriceBook } from '../job-file/wire-practice.ts';
import { LOCALES } from '../locale.ts';
import { CURRENCIES } from '../money.ts';
import {
  BUDGETS,
  CLIMATES,
  CLOTH_ROLES,
  FACE_FAMILIES,
  FACINGS,
  GLAZINGS,
  INTERLINING_FAMILIES,
  LINING_FAMILIES,
  MATCHES,
  MEASURE_STATES,
  PRIVACIES,
  ROOM_USES,
} from '../words.ts';
import { cuttingRecord, remnantRecord } from './cutting-records.ts';
import { knownOfCloth } from './known-of-cloth.ts';
import { treatmentMake } from './treatment-make.ts';
import { drafts, instant, longText, maybeTicks, recordId, shortText } from './record-fields.ts';

const kept = { id: recordId, createdAt: instant, updatedAt: instant };

export const clientRecord = z.object({
  ...kept,
  name: shortText,
  email: shortText,
  phone: shortText,
  address: longText,
  notes: longText,
  /** Part of the invented sample household, removed with it in one click. */
  sample: z.boolean(),
});
export type ClientRecord = z.infer<typeof clientRecord>;

const priceBookChoice = z.union([z.literal('example'), wirePriceBook]);

export const projectRecord = z.object({
  ...kept,
  clientId: recordId,
  name: shortText,
  units: z.enum(UNITS),
  currency: z.enum(CURRENCIES),
  locale: z.enum(LOCALES),
  /** Over the decorator's own practice; lengths in it carry their unit. */
  practice: wirePractice.nullable(),
  /** Instead of the decorator's own price book (as imported with a job file); null uses hers. */
  priceBook: priceBookChoice.nullable(),
});
export type ProjectRecord = z.infer<typeof projectRecord>;

export const roomRecord = z.object({
  ...kept,
  projectId: recordId,
  position: z.int().min(0),
  name: shortText,
  use: z.enum(ROOM_USES),
  facing: z.enum(FACINGS).nullable(),
  climate: z.enum(CLIMATES),
  /** Null: nobody asked for it. */
  privacy: z.enum(PRIVACIES).nullable(),
  budget: z.enum(BUDGETS).nullable(),
  ceiling: maybeTicks,
  drafts,
});
export type RoomRecord = z.infer<typeof roomRecord>;

export const openingRecord = z.object({
  ...kept,
  roomId: recordId,
  position: z.int().min(0),
  name: shortText,
  width: maybeTicks,
  height: maybeTicks,
  sill: maybeTicks,
  at: maybeTicks,
  glazing: z.enum(GLAZINGS),
  heatSourceBelow: z.boolean(),
  /** An order needs a final measure. */
  measured: z.enum(MEASURE_STATES),
  notes: longText,
  drafts,
});
export type OpeningRecord = z.infer<typeof openingRecord>;

const stackRecord = z.object({ face: z.string().nullable(), behind: z.array(z.string()).max(12) });
/** Null: the lining engine chooses. */
export const stacksRecord = z.object({
  good: stackRecord.nullable(),
  better: stackRecord.nullable(),
  best: stackRecord.nullable(),
});
export type StacksRecord = z.infer<typeof stacksRecord>;

export const treatmentRecord = z.object({
  ...kept,
  openingId: recordId,
  position: z.int().min(0),
  name: shortText,
  quantity: z.int().min(1).max(500),
  /** Code of the face cloth; null until chosen. */
  face: z.string().nullable(),
  make: treatmentMake,
  stacks: stacksRecord,
  /** What the client accepted; null while nothing is said. */
  decision: z.enum(DECISIONS).nullable(),
  practice: wirePractice.nullable(),
  drafts,
});
export type TreatmentRecord = z.infer<typeof treatmentRecord>;

/** One cloth: the decorator's own (project null), or listed by an imported job. `code` is its id in job files. */
export const clothRecord = z.object({
  ...kept,
  projectId: recordId.nullable(),
  code: z.string().min(1).max(80),
  name: shortText,
  role: z.enum(CLOTH_ROLES),
  family: z.enum([...FACE_FAMILIES, ...LINING_FAMILIES.filter((each) => each !== 'sheer'), ...INTERLINING_FAMILIES]),
  width: maybeTicks,
  usableWidth: maybeTicks,
  match: z.enum(MATCHES),
  repeatVertical: maybeTicks,
  repeatHorizontal: maybeTicks,
  cutOnRepeat: z.boolean(),
  /** Nap or a pattern that runs one way. */
  oneWay: z.boolean(),
  /** Length of a whole piece. */
  bolt: maybeTicks,
  /** The supplier's own step; null takes the practice's. */
  orderStep: maybeTicks,
  leastOrder: maybeTicks,
  railroad: z.boolean(),
  content: z.record(z.string(), z.number()).nullable(),
  /** As written: `7 oz/yd2`. */
  weight: z.string().nullable(),
  colour: z.string().nullable(),
  shade: z.string().nullable(),
  ...knownOfCloth.shape,
  /** As written: `42.00/yd`. */
  price: z.string().nullable(),
  supplier: shortText,
  notes: longText,
  drafts,
});
export type ClothRecord = z.infer<typeof clothRecord>;

/** The decorator's own: what every new project starts from. */
export const settingsRecord = z.object({
  units: z.enum(UNITS),
  currency: z.enum(CURRENCIES),
  locale: z.enum(LOCALES),
  letterhead: wireLetterhead.extend({ name: z.string().max(200), lines: z.array(z.string().max(200)).max(8) }),
  /** Lengths in it carry their unit. */
  practice: wirePractice,
  priceBook: priceBookChoice,
  /** The program's example rates stand in for hers, which are kept. */
  exampleRates: z.boolean(),
  terms: longText,
  cancellation: longText,
  tierNames: z.object({ good: shortText, better: shortText, best: shortText }),
  /** Days a proposal holds. */
  holdsDays: z.int().min(1).max(365),
});
export type SettingsRecord = z.infer<typeof settingsRecord>;

export const openingDocument = openingRecord.extend({ treatments: z.array(treatmentRecord) });
export type OpeningDocument = z.infer<typeof openingDocument>;
export const roomDocument = roomRecord.extend({ openings: z.array(openingDocument) });
export type RoomDocument = z.infer<typeof roomDocument>;

/** A whole project as a screen holds it: enough to draw, judge and price it without asking again. */
export const projectDocument = z.object({
  client: clientRecord,
  project: projectRecord,
  rooms: z.array(roomDocument),
  /** The decorator's own cloth and the project's. */
  cloth: z.array(clothRecord),
  /** On the shelf: of the decorator's own and generic cloth, and of the project's. */
  remnants: z.array(remnantRecord),
  cuttings: z.array(cuttingRecord),
  settings: settingsRecord,
});
export type ProjectDocument = z.infer<typeof projectDocument>;

export const PROPOSAL_STATES = ['made', 'sent', 'accepted', 'declined'] as const;

/** A frozen proposal: what was handed over never changes. */
export const proposalRecord = z.object({
  id: recordId,
  projectId: recordId,
  number: z.string(),
  revision: z.int().min(1),
  state: z.enum(PROPOSAL_STATES),
  date: z.string(),
  validUntil: z.string(),
  createdAt: instant,
  programVersion: z.string(),
  currency: z.enum(CURRENCIES),
  locale: z.enum(LOCALES),
  /** Totals with tax, minor units. */
  totals: z.object({ good: z.int(), better: z.int(), best: z.int() }),
  /** Where the PDF was written for the decorator; null where the shell writes no files. */
  file: z.string().nullable(),
  pages: z.int().min(1),
});
export type ProposalRecord = z.infer<typeof proposalRecord>;

export const historyRecord = z.object({
  id: z.int(),
  at: instant,
  projectId: recordId.nullable(),
  clientId: recordId.nullable(),
  entity: z.string(),
  entityId: z.string(),
  /** `added`, `edited`, `removed`, `restored`, `made`, `imported`, `written` (a file or a mail draft). */
  verb: z.string(),
  /** What changed, by field: before and after. */
  changes: z.record(z.string(), z.object({ before: z.unknown(), after: z.unknown() })),
});
export type HistoryRecord = z.infer<typeof historyRecord>;
