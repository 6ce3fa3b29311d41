import { cuttingRecord } from '#shared/records/cutting-records.ts';
import type { CuttingRecord } from '#shared/records/cutting-records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { placeOfProject } from './place.ts';
import type { CuttingRow } from './tables.ts';

export const cuttings = keepTable<CuttingRecord, CuttingRow>({
  entity: 'cutting',
  select: (id) => sql.selectFrom('cuttings').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('cuttings').values(row).compile(),
  update: (id, row) => sql.updateTable('cuttings').set(row).where('id', '=', id).compile(),
  toRecord: toCutting,
  toRow: (record, removedAt) => ({
    id: record.id,
    project_id: record.projectId,
    cloth: record.cloth,
    bolts: JSON.stringify(record.bolts),
    flaws: JSON.stringify(record.flaws),
    fixed: JSON.stringify(record.fixed),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => placeOfProject(reading, record.projectId),
});

const { bolts, flaws, fixed } = cuttingRecord.shape;

function toCutting(row: CuttingRow): CuttingRecord {
  return {
    id: row.id,
    projectId: row.project_id,
    cloth: row.cloth,
    bolts: readJson(bolts, row.bolts),
    flaws: readJson(flaws, row.flaws),
    fixed: readJson(fixed, row.fixed),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** What is settled of each cloth of a project, oldest first. */
export function listCuttings(reading: ReadConnection, projectId: string): CuttingRecord[] {
  const query = sql
    .selectFrom('cuttings')
    .selectAll()
    .where('project_id', '=', projectId)
    .where('removed_at', 'is', null)
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toCutting);
}
