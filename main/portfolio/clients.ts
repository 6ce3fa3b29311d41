import type { ClientSummary } from '#shared/contract/contract.ts';
import type { ClientRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { keepTable } from './kept-table.ts';
import type { ClientRow } from './tables.ts';

export const clients = keepTable<ClientRecord, ClientRow>({
  entity: 'client',
  select: (id) => sql.selectFrom('clients').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('clients').values(row).compile(),
  update: (id, row) => sql.updateTable('clients').set(row).where('id', '=', id).compile(),
  toRecord: toClient,
  toRow: (record, removedAt) => ({
    id: record.id,
    name: record.name,
    email: record.email,
    phone: record.phone,
    address: record.address,
    notes: record.notes,
    sample: record.sample ? 1 : 0,
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (_reading, record) => ({ projectId: null, clientId: record.id }),
});

function toClient(row: ClientRow): ClientRecord {
  return {
    id: row.id,
    name: row.name,
    email: row.email,
    phone: row.phone,
    address: row.address,
    notes: row.notes,
    sample: row.sample === 1,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** Every client that is kept, by name, with what there is of projects; the newest project first. */
export function listClients(reading: ReadConnection): ClientSummary[] {
  const projects = new Map<string, ClientSummary['projects']>();
  for (const { client_id: clientId, ...project } of reading.all(projectCounts())) {
    const own = projects.get(clientId) ?? [];
    projects.set(clientId, own);
    own.push(project);
  }
  return reading
    .all(sql.selectFrom('clients').selectAll().where('removed_at', 'is', null).orderBy('created_at').compile())
    .map((row) => ({ ...toClient(row), projects: projects.get(row.id) ?? [] }))
    .sort((a, b) => compareFolded(foldText(a.name), foldText(b.name)));
}

function projectCounts() {
  return sql
    .selectFrom('projects')
    .select((project) => [
      'projects.client_id',
      'projects.id',
      'projects.name',
      project
        .selectFrom('rooms')
        .select((room) => room.fn.countAll<number>().as('count'))
        .whereRef('rooms.project_id', '=', 'projects.id')
        .where('rooms.removed_at', 'is', null)
        .$asScalar()
        .$notNull()
        .as('rooms'),
      project
        .selectFrom('openings')
        .innerJoin('rooms', 'rooms.id', 'openings.room_id')
        .select((opening) => opening.fn.countAll<number>().as('count'))
        .whereRef('rooms.project_id', '=', 'projects.id')
        .where('rooms.removed_at', 'is', null)
        .where('openings.removed_at', 'is', null)
        .$asScalar()
        .$notNull()
        .as('openings'),
      project
        .selectFrom('proposals')
        .select((proposal) => proposal.fn.countAll<number>().as('count'))
        .whereRef('proposals.project_id', '=', 'projects.id')
        .$asScalar()
        .$notNull()
        .as('proposals'),
      'projects.updated_at as updatedAt',
    ])
    .where('projects.removed_at', 'is', null)
    .orderBy('projects.updated_at', 'desc')
    .orderBy('projects.id')
    .compile();
}

function compareFolded(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Letters without case and marks, so that a search for `zoe` finds `Zoë`. The same on every computer. */
export function foldText(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ł/g, 'l')
    .replace(/ø/g, 'o')
    .replace(/ß/g, 'ss');
}

/** The sample household that is kept, or null. */
export function readSampleClient(reading: ReadConnection): ClientRecord | null {
  const row = reading.first(
    sql.selectFrom('clients').selectAll().where('sample', '=', 1).where('removed_at', 'is', null).compile(),
  );
  return row === null ? null : toClient(row);
}
