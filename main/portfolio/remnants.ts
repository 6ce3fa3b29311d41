import type { RemnantRecord } from '#shared/records/cutting-records.ts';
import { drafts } from '#shared/records/record-fields.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { NOWHERE, placeOfProject } from './place.ts';
import type { RemnantRow } from './tables.ts';

export const remnants = keepTable<RemnantRecord, RemnantRow>({
  entity: 'remnant',
  select: (id) => sql.selectFrom('remnants').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('remnants').values(row).compile(),
  update: (id, row) => sql.updateTable('remnants').set(row).where('id', '=', id).compile(),
  toRecord: toRemnant,
  toRow: (record, removedAt) => ({
    id: record.id,
    project_id: record.projectId,
    cloth: record.cloth,
    name: record.name,
    length: record.length,
    width: record.width,
    dye_lot: record.dyeLot,
    starts_at: record.startsAt,
    notes: record.notes,
    drafts: JSON.stringify(record.drafts),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => (record.projectId === null ? NOWHERE : placeOfProject(reading, record.projectId)),
});

function toRemnant(row: RemnantRow): RemnantRecord {
  return {
    id: row.id,
    projectId: row.project_id,
    cloth: row.cloth,
    name: row.name,
    length: row.length,
    width: row.width,
    dyeLot: row.dye_lot,
    startsAt: row.starts_at,
    notes: row.notes,
    drafts: readJson(drafts, row.drafts),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** On the shelf for every project, and with a project the project's too; each oldest first. */
export function listRemnants(reading: ReadConnection, projectId: string | null): RemnantRecord[] {
  const query = sql
    .selectFrom('remnants')
    .selectAll()
    .where('removed_at', 'is', null)
    .where((row) =>
      projectId === null
        ? row('project_id', 'is', null)
        : row.or([row('project_id', 'is', null), row('project_id', '=', projectId)]),
    )
    .orderBy('project_id', (order) => order.desc().nullsLast())
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toRemnant);
}
