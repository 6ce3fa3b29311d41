import type { ProjectRecord } from '#shared/records/records.ts';
import { projectRecord } from '#shared/records/records.ts';
import { TIERS } from '#shared/words.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readMaybeJson, writeMaybeJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import type { ProjectRow } from './tables.ts';

const { practice, priceBook } = projectRecord.shape;

export const projects = keepTable<ProjectRecord, ProjectRow>({
  entity: 'project',
  select: (id) => sql.selectFrom('projects').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('projects').values(row).compile(),
  update: (id, row) => sql.updateTable('projects').set(row).where('id', '=', id).compile(),
  toRecord: toProject,
  toRow: (record, removedAt) => ({
    id: record.id,
    client_id: record.clientId,
    name: record.name,
    units: record.units,
    currency: record.currency,
    locale: record.locale,
    practice: writeMaybeJson(record.practice),
    price_book: writeMaybeJson(record.priceBook),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (_reading, record) => ({ projectId: record.id, clientId: record.clientId }),
});

function toProject(row: ProjectRow): ProjectRecord {
  return {
    id: row.id,
    clientId: row.client_id,
    name: row.name,
    units: row.units,
    currency: row.currency,
    locale: row.locale,
    practice: readMaybeJson(practice, row.practice),
    priceBook: readMaybeJson(priceBook, row.price_book),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** The projects of a client that are kept, oldest first. */
export function listProjectsOf(reading: ReadConnection, clientId: string): ProjectRecord[] {
  const query = sql
    .selectFrom('projects')
    .selectAll()
    .where('client_id', '=', clientId)
    .where('removed_at', 'is', null)
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toProject);
}

/** Ids of the projects, kept and of clients that are kept, in which anything was accepted; oldest first. */
export function listAcceptedProjects(reading: ReadConnection): string[] {
  const query = sql
    .selectFrom('projects')
    .innerJoin('clients', 'clients.id', 'projects.client_id')
    .innerJoin('rooms', 'rooms.project_id', 'projects.id')
    .innerJoin('openings', 'openings.room_id', 'rooms.id')
    .innerJoin('treatments', 'treatments.opening_id', 'openings.id')
    .select('projects.id')
    .distinct()
    .where('treatments.decision', 'in', [...TIERS])
    .where('treatments.removed_at', 'is', null)
    .where('openings.removed_at', 'is', null)
    .where('rooms.removed_at', 'is', null)
    .where('projects.removed_at', 'is', null)
    .where('clients.removed_at', 'is', null)
    .orderBy('projects.created_at')
    .orderBy('projects.id');
  return reading.all(query.compile()).map(({ id }) => id);
}
