/**
 * The tables as the newest migration leaves them. Lengths are whole ticks, instants and dates ISO text, truth is 0 or 1,
 * and what is written JSON is checked by its record's schema when it is read.
 */
import type { Generated } from 'kysely';
import type { Ticks } from '#shared/length.ts';
import type { Decision } from '#shared/cutting.ts';
import type { CuttingRecord, RemnantRecord } from '#shared/records/cutting-records.ts';
import type {
  ClientRecord,
  ClothRecord,
  HistoryRecord,
  OpeningRecord,
  ProjectRecord,
  ProposalRecord,
  RoomRecord,
} from '#shared/records/records.ts';

export type Flag = 0 | 1;

interface KeptRow {
  readonly id: string;
  readonly created_at: string;
  readonly updated_at: string;
  /** Not null: taken away, and can be put back. */
  readonly removed_at: string | null;
}

export interface ClientRow extends KeptRow, Pick<ClientRecord, 'name' | 'email' | 'phone' | 'address' | 'notes'> {
  readonly sample: Flag;
}

export interface ProjectRow extends KeptRow, Pick<ProjectRecord, 'name' | 'units' | 'currency' | 'locale'> {
  readonly client_id: string;
  /** JSON, or null. */
  readonly practice: string | null;
  /** JSON, or null. */
  readonly price_book: string | null;
}

export interface RoomRow
  extends KeptRow, Pick<RoomRecord, 'position' | 'name' | 'use' | 'facing' | 'climate' | 'privacy' | 'budget'> {
  readonly project_id: string;
  readonly ceiling: Ticks | null;
  /** JSON. */
  readonly drafts: string;
}

export interface OpeningRow
  extends
    KeptRow,
    Pick<OpeningRecord, 'position' | 'name' | 'width' | 'height' | 'sill' | 'at' | 'glazing' | 'measured' | 'notes'> {
  readonly room_id: string;
  readonly heat_source_below: Flag;
  /** JSON. */
  readonly drafts: string;
}

export interface TreatmentRow extends KeptRow {
  readonly opening_id: string;
  readonly position: number;
  readonly name: string;
  readonly quantity: number;
  readonly face: string | null;
  readonly kind: string;
  /** JSON: what each kind has of its own, lengths in ticks. */
  readonly make: string;
  /** JSON. */
  readonly stacks: string;
  readonly decision: Decision | null;
  /** JSON, or null. */
  readonly practice: string | null;
  /** JSON. */
  readonly drafts: string;
}

export interface ClothRow
  extends
    KeptRow,
    Pick<
      ClothRecord,
      | 'code'
      | 'name'
      | 'role'
      | 'family'
      | 'width'
      | 'match'
      | 'weight'
      | 'colour'
      | 'shade'
      | 'price'
      | 'supplier'
      | 'notes'
    > {
  readonly project_id: string | null;
  readonly usable_width: Ticks | null;
  readonly repeat_vertical: Ticks | null;
  readonly repeat_horizontal: Ticks | null;
  readonly cut_on_repeat: Flag;
  readonly one_way: Flag;
  readonly bolt: Ticks | null;
  readonly order_step: Ticks | null;
  readonly least_order: Ticks | null;
  readonly railroad: Flag;
  /** JSON, or null; so are the three under it. */
  readonly content: string | null;
  readonly visible: string | null;
  readonly uv: string | null;
  readonly solar: string | null;
  /** JSON of what else is known of it, or null (since form 30). */
  readonly known: string | null;
  /** JSON. */
  readonly drafts: string;
}

export interface RemnantRow extends KeptRow, Pick<RemnantRecord, 'cloth' | 'name' | 'length' | 'width' | 'notes'> {
  readonly project_id: string | null;
  readonly dye_lot: string;
  readonly starts_at: Ticks | null;
  /** JSON. */
  readonly drafts: string;
}

export interface CuttingRow extends KeptRow, Pick<CuttingRecord, 'cloth'> {
  readonly project_id: string;
  /** JSON; so are the two under it. */
  readonly bolts: string;
  readonly flaws: string;
  readonly fixed: string;
}

export interface SettingRow {
  readonly key: string;
  /** JSON. */
  readonly value: string;
  readonly updated_at: string;
}

/** Frozen but for its state. */
export interface ProposalRow extends Pick<
  ProposalRecord,
  'id' | 'number' | 'revision' | 'state' | 'date' | 'currency' | 'locale' | 'pages'
> {
  readonly project_id: string;
  readonly year: number;
  /** Counts the proposals of a year. */
  readonly ordinal: number;
  readonly valid_until: string;
  readonly created_at: string;
  readonly program_version: string;
  /** Minor units with tax. */
  readonly total_good: number;
  readonly total_better: number;
  readonly total_best: number;
  /** Of the invented household: it may be taken away whole. */
  readonly sample: Flag;
}

/** Frozen: what was handed over, byte for byte. */
export interface ProposalFileRow {
  readonly proposal_id: string;
  readonly pdf: Buffer;
  /** SHA-256 of the PDF, hexadecimal. */
  readonly sha256: string;
  /** The job file that was priced. */
  readonly job_file: string;
  /** JSON: the result, as `price --json` gives it. */
  readonly result: string;
  /** JSON: what the PDF prints, as text and drawings. */
  readonly paper: string;
}

/** Where the PDF was written for the decorator; the newest row counts. */
export interface PaperPlaceRow {
  readonly id: number;
  readonly proposal_id: string;
  readonly path: string;
  readonly at: string;
}

export interface MailDraftRow {
  readonly id: string;
  readonly proposal_id: string;
  readonly recipient: string;
  readonly subject: string;
  readonly body: string;
  readonly created_at: string;
}

/** Append-only. Ids of what it tells of are plain text: a row outlives what was taken away for good. */
export interface HistoryRow extends Pick<HistoryRecord, 'id' | 'at' | 'entity' | 'verb'> {
  readonly project_id: string | null;
  readonly client_id: string | null;
  readonly entity_id: string;
  /** JSON. */
  readonly changes: string;
}

/** Columns that SQLite fills in are left out on insert. */
type Counted<Row extends { id: number }> = Omit<Row, 'id'> & { readonly id: Generated<number> };

export interface Tables {
  clients: ClientRow;
  projects: ProjectRow;
  rooms: RoomRow;
  openings: OpeningRow;
  treatments: TreatmentRow;
  cloths: ClothRow;
  remnants: RemnantRow;
  cuttings: CuttingRow;
  settings: SettingRow;
  proposals: ProposalRow;
  proposal_files: ProposalFileRow;
  paper_places: Counted<PaperPlaceRow>;
  mail_drafts: MailDraftRow;
  history: Counted<HistoryRow>;
}
