import { drafts } from '#shared/records/record-fields.ts';
import { stacksRecord, treatmentRecord } from '#shared/records/records.ts';
import { treatmentMake } from '#shared/records/treatment-make.ts';
import type { TreatmentRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson, readMaybeJson, writeMaybeJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { placeOfOpening } from './place.ts';
import type { TreatmentRow } from './tables.ts';

export const treatments = keepTable<TreatmentRecord, TreatmentRow>({
  entity: 'treatment',
  select: (id) => sql.selectFrom('treatments').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('treatments').values(row).compile(),
  update: (id, row) => sql.updateTable('treatments').set(row).where('id', '=', id).compile(),
  toRecord: toTreatment,
  toRow: (record, removedAt) => ({
    id: record.id,
    opening_id: record.openingId,
    position: record.position,
    name: record.name,
    quantity: record.quantity,
    face: record.face,
    kind: record.make.kind,
    make: JSON.stringify(record.make),
    stacks: JSON.stringify(record.stacks),
    decision: record.decision,
    practice: writeMaybeJson(record.practice),
    drafts: JSON.stringify(record.drafts),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => placeOfOpening(reading, record.openingId),
});

function toTreatment(row: TreatmentRow): TreatmentRecord {
  return {
    id: row.id,
    openingId: row.opening_id,
    position: row.position,
    name: row.name,
    quantity: row.quantity,
    face: row.face,
    make: readJson(treatmentMake, row.make),
    stacks: readJson(stacksRecord, row.stacks),
    decision: row.decision,
    practice: readMaybeJson(treatmentRecord.shape.practice, row.practice),
    drafts: readJson(drafts, row.drafts),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** The treatments of an opening that are kept, in their order. */
export function listTreatments(reading: ReadConnection, openingId: string): TreatmentRecord[] {
  const query = sql
    .selectFrom('treatments')
    .selectAll()
    .where('opening_id', '=', openingId)
    .where('removed_at', 'is', null)
    .orderBy('position')
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toTreatment);
}

/** The place after every treatment there is or was, so that one that is put back finds its own again. */
export function nextTreatmentPosition(reading: ReadConnection, openingId: string): number {
  const query = sql
    .selectFrom('treatments')
    .select((row) => row.fn.max<number | null>('position').as('last'))
    .where('opening_id', '=', openingId);
  return (reading.first(query.compile())?.last ?? -1) + 1;
}

/** Every treatment that is kept, in projects that are kept: of one project, or of all. */
export function listAllTreatments(reading: ReadConnection, projectId: string | null): TreatmentRecord[] {
  let query = sql
    .selectFrom('treatments')
    .innerJoin('openings', 'openings.id', 'treatments.opening_id')
    .innerJoin('rooms', 'rooms.id', 'openings.room_id')
    .innerJoin('projects', 'projects.id', 'rooms.project_id')
    .innerJoin('clients', 'clients.id', 'projects.client_id')
    .selectAll('treatments')
    .where('treatments.removed_at', 'is', null)
    .where('openings.removed_at', 'is', null)
    .where('rooms.removed_at', 'is', null)
    .where('projects.removed_at', 'is', null)
    .where('clients.removed_at', 'is', null);
  if (projectId !== null) query = query.where('projects.id', '=', projectId);
  return reading.all(query.compile()).map(toTreatment);
}
