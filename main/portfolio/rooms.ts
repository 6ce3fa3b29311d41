import { drafts } from '#shared/records/record-fields.ts';
import type { RoomRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { placeOfProject } from './place.ts';
import type { RoomRow } from './tables.ts';

export const rooms = keepTable<RoomRecord, RoomRow>({
  entity: 'room',
  select: (id) => sql.selectFrom('rooms').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('rooms').values(row).compile(),
  update: (id, row) => sql.updateTable('rooms').set(row).where('id', '=', id).compile(),
  toRecord: toRoom,
  toRow: (record, removedAt) => ({
    id: record.id,
    project_id: record.projectId,
    position: record.position,
    name: record.name,
    use: record.use,
    facing: record.facing,
    climate: record.climate,
    privacy: record.privacy,
    budget: record.budget,
    ceiling: record.ceiling,
    drafts: JSON.stringify(record.drafts),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => placeOfProject(reading, record.projectId),
});

function toRoom(row: RoomRow): RoomRecord {
  return {
    id: row.id,
    projectId: row.project_id,
    position: row.position,
    name: row.name,
    use: row.use,
    facing: row.facing,
    climate: row.climate,
    privacy: row.privacy,
    budget: row.budget,
    ceiling: row.ceiling,
    drafts: readJson(drafts, row.drafts),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** The rooms of a project that are kept, in their order. */
export function listRooms(reading: ReadConnection, projectId: string): RoomRecord[] {
  const query = sql
    .selectFrom('rooms')
    .selectAll()
    .where('project_id', '=', projectId)
    .where('removed_at', 'is', null)
    .orderBy('position')
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toRoom);
}

/** The place after every room there is or was, so that one that is put back finds its own again. */
export function nextRoomPosition(reading: ReadConnection, projectId: string): number {
  const query = sql
    .selectFrom('rooms')
    .select((row) => row.fn.max<number | null>('position').as('last'))
    .where('project_id', '=', projectId);
  return (reading.first(query.compile())?.last ?? -1) + 1;
}
