/**
 * What is the same for every table whose rows can be added, edited, taken away and put back: each act is told in the
 * history, marks the project as changed, and an edit that changes nothing writes nothing.
 */
import type { CompiledQuery } from 'kysely';
import { sql } from './compile.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import { addHistory, findChanges } from './history.ts';
import type { HistoryVerb } from './history.ts';
import type { Place } from './place.ts';

interface KeptRecord {
  readonly id: string;
  readonly createdAt: string;
  readonly updatedAt: string;
}

interface KeptRow {
  readonly removed_at: string | null;
}

/** What one table says of itself. */
export interface KeptTableShape<Kept extends KeptRecord, Row extends KeptRow> {
  /** The word of the history: `room`. */
  readonly entity: string;
  select(id: string): CompiledQuery<Row>;
  insert(row: Row): CompiledQuery;
  update(id: string, row: Row): CompiledQuery;
  toRecord(row: Row): Kept;
  toRow(record: Kept, removedAt: string | null): Row;
  placeOf(reading: ReadConnection, record: Kept): Place;
}

export type EditsOf<Kept> = { readonly [Field in keyof Kept]?: Kept[Field] | undefined };

export interface KeptTable<Kept extends KeptRecord> {
  /** The record, or null when there is none or it was taken away. */
  read(reading: ReadConnection, id: string): Kept | null;
  /** The record that was taken away and could be put back, or null. */
  restorable(reading: ReadConnection, id: string): Kept | null;
  /** Writes a record that the caller tells of itself. */
  insert(writing: WriteConnection, record: Kept): void;
  add(writing: WriteConnection, record: Kept): Kept;
  /** The record as it is after the edit; null when there is none. */
  edit(writing: WriteConnection, id: string, edits: EditsOf<Kept>, at: string): Kept | null;
  /** The record that was taken away; null when there is none. */
  remove(writing: WriteConnection, id: string, at: string): Kept | null;
  /** The record, put back when it was taken away; null when there never was one. */
  restore(writing: WriteConnection, id: string, at: string): Kept | null;
}

export function keepTable<Kept extends KeptRecord, Row extends KeptRow>(
  shape: KeptTableShape<Kept, Row>,
): KeptTable<Kept> {
  function find(reading: ReadConnection, id: string): { record: Kept; removedAt: string | null } | null {
    const row = reading.first(shape.select(id));
    return row === null ? null : { record: shape.toRecord(row), removedAt: row.removed_at };
  }

  function findKept(reading: ReadConnection, id: string): Kept | null {
    const found = find(reading, id);
    return found === null || found.removedAt !== null ? null : found.record;
  }

  function tell(
    writing: WriteConnection,
    record: Kept,
    at: string,
    verb: HistoryVerb,
    changes: ReturnType<typeof findChanges>,
  ): void {
    const place = shape.placeOf(writing, record);
    addHistory(writing, { ...place, at, entity: shape.entity, entityId: record.id, verb, changes });
    if (place.projectId !== null && shape.entity !== 'project') touchProject(writing, place.projectId, at);
  }

  return {
    read: findKept,
    restorable(reading, id) {
      const found = find(reading, id);
      return found === null || found.removedAt === null ? null : found.record;
    },
    insert: (writing, record) => {
      writing.run(shape.insert(shape.toRow(record, null)));
    },
    add(writing, record) {
      writing.run(shape.insert(shape.toRow(record, null)));
      const { id: _id, createdAt: _created, updatedAt: _updated, ...fields } = record;
      tell(writing, record, record.createdAt, 'added', findChanges({}, fields));
      return record;
    },
    edit(writing, id, edits, at) {
      const before = findKept(writing, id);
      if (before === null) return null;
      const changes = findChanges(before, edits);
      if (Object.keys(changes).length === 0) return before;
      const after: Kept = { ...before, ...withoutGaps(edits), updatedAt: at };
      writing.run(shape.update(id, shape.toRow(after, null)));
      tell(writing, after, at, 'edited', changes);
      return after;
    },
    remove(writing, id, at) {
      const record = findKept(writing, id);
      if (record === null) return null;
      writing.run(shape.update(id, shape.toRow({ ...record, updatedAt: at }, at)));
      tell(writing, record, at, 'removed', {});
      return record;
    },
    restore(writing, id, at) {
      const found = find(writing, id);
      if (found === null || found.removedAt === null) return found?.record ?? null;
      const record: Kept = { ...found.record, updatedAt: at };
      writing.run(shape.update(id, shape.toRow(record, null)));
      tell(writing, record, at, 'restored', {});
      return record;
    },
  };
}

/** A field that was not given stays as it is; it is not set to nothing. */
function withoutGaps<Kept>(edits: EditsOf<Kept>): Partial<Kept> {
  return Object.fromEntries(Object.entries(edits).filter(([, value]) => value !== undefined)) as Partial<Kept>;
}

export function touchProject(writing: WriteConnection, projectId: string, at: string): void {
  writing.run(sql.updateTable('projects').set({ updated_at: at }).where('id', '=', projectId).compile());
}
