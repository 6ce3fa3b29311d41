/** One change of one record, as it is kept until the desk has acknowledged it. */
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

export interface EditedRecords {
  readonly client: ClientRecord;
  readonly project: ProjectRecord;
  readonly room: RoomRecord;
  readonly opening: OpeningRecord;
  readonly treatment: TreatmentRecord;
  readonly cloth: ClothRecord;
  readonly remnant: RemnantRecord;
  readonly cutting: CuttingRecord;
  readonly settings: SettingsRecord;
}
export type Entity = keyof EditedRecords;
/** Entities that are added and removed. */
export type PlacedEntity = Exclude<Entity, 'settings'>;

/** `id` of the settings, of which there is one. */
export const SETTINGS_ID = 'settings';

export type Edit = {
  [E in Entity]: { readonly entity: E; readonly id: string; readonly changes: Partial<EditedRecords[E]> };
}[Entity];

/** Two edits of one record as one: what `after` says wins. Null when they are of different records. */
export function mergeEdits(before: Edit, after: Edit): Edit | null {
  if (before.entity !== after.entity || before.id !== after.id) return null;
  return { ...before, changes: { ...before.changes, ...after.changes } } as Edit;
}

/** The edit that puts back what `edit` changes in `record`. */
export function reverseEdit<E extends Edit>(edit: E, record: Readonly<Record<string, unknown>>): E {
  const changes = Object.fromEntries(Object.keys(edit.changes).map((field) => [field, record[field]]));
  return { ...edit, changes };
}

/** True when both change the very same fields of the same record. */
export function isSameField(a: Edit, b: Edit): boolean {
  const fields = (edit: Edit) => Object.keys(edit.changes).sort().join('\n');
  return a.entity === b.entity && a.id === b.id && fields(a) === fields(b);
}
