import { drafts } from '#shared/records/record-fields.ts';
import type { OpeningRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection } from './connection.ts';
import { readJson } from './json-column.ts';
import { keepTable } from './kept-table.ts';
import { placeOfRoom } from './place.ts';
import type { OpeningRow } from './tables.ts';

export const openings = keepTable<OpeningRecord, OpeningRow>({
  entity: 'opening',
  select: (id) => sql.selectFrom('openings').selectAll().where('id', '=', id).compile(),
  insert: (row) => sql.insertInto('openings').values(row).compile(),
  update: (id, row) => sql.updateTable('openings').set(row).where('id', '=', id).compile(),
  toRecord: toOpening,
  toRow: (record, removedAt) => ({
    id: record.id,
    room_id: record.roomId,
    position: record.position,
    name: record.name,
    width: record.width,
    height: record.height,
    sill: record.sill,
    at: record.at,
    glazing: record.glazing,
    heat_source_below: record.heatSourceBelow ? 1 : 0,
    measured: record.measured,
    notes: record.notes,
    drafts: JSON.stringify(record.drafts),
    created_at: record.createdAt,
    updated_at: record.updatedAt,
    removed_at: removedAt,
  }),
  placeOf: (reading, record) => placeOfRoom(reading, record.roomId),
});

function toOpening(row: OpeningRow): OpeningRecord {
  return {
    id: row.id,
    roomId: row.room_id,
    position: row.position,
    name: row.name,
    width: row.width,
    height: row.height,
    sill: row.sill,
    at: row.at,
    glazing: row.glazing,
    heatSourceBelow: row.heat_source_below === 1,
    measured: row.measured,
    notes: row.notes,
    drafts: readJson(drafts, row.drafts),
    createdAt: row.created_at,
    updatedAt: row.updated_at,
  };
}

/** The openings of a room that are kept, in their order. */
export function listOpenings(reading: ReadConnection, roomId: string): OpeningRecord[] {
  const query = sql
    .selectFrom('openings')
    .selectAll()
    .where('room_id', '=', roomId)
    .where('removed_at', 'is', null)
    .orderBy('position')
    .orderBy('created_at')
    .orderBy('id');
  return reading.all(query.compile()).map(toOpening);
}

/** The place after every opening there is or was, so that one that is put back finds its own again. */
export function nextOpeningPosition(reading: ReadConnection, roomId: string): number {
  const query = sql
    .selectFrom('openings')
    .select((row) => row.fn.max<number | null>('position').as('last'))
    .where('room_id', '=', roomId);
  return (reading.first(query.compile())?.last ?? -1) + 1;
}
