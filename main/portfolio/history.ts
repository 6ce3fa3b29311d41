/** The history: every write adds to it, nothing is ever taken out. */
import * as z from 'zod';
import { isDeepStrictEqual } from 'node:util';
import type { HistoryRecord } from '#shared/records/records.ts';
import { coalesceHistory } from './coalesce-history.ts';
import { sql } from './compile.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import type { Place } from './place.ts';
import type { HistoryRow } from './tables.ts';

export const HISTORY_VERBS = ['added', 'edited', 'removed', 'restored', 'made', 'imported', 'written'] as const;
export type HistoryVerb = (typeof HISTORY_VERBS)[number];

export type Changes = HistoryRecord['changes'];

export interface HistoryEntry extends Place {
  /** The instant. */
  readonly at: string;
  readonly entity: string;
  readonly entityId: string;
  readonly verb: HistoryVerb;
  readonly changes: Changes;
}

export function addHistory(writing: WriteConnection, entry: HistoryEntry): void {
  writing.runHistory(
    sql
      .insertInto('history')
      .values({
        at: entry.at,
        project_id: entry.projectId,
        client_id: entry.clientId,
        entity: entry.entity,
        entity_id: entry.entityId,
        verb: entry.verb,
        changes: JSON.stringify(entry.changes),
      })
      .compile(),
  );
}

/** The fields of `after` that differ, each with what it was and what it is. Fields that are not given are not changed. */
export function findChanges(before: object, after: object): Changes {
  const old = new Map<string, unknown>(Object.entries(before));
  const changes: Changes = {};
  for (const [field, value] of Object.entries(after)) {
    if (value === undefined || isDeepStrictEqual(old.get(field), value)) continue;
    changes[field] = { before: old.get(field) ?? null, after: value };
  }
  return changes;
}

export interface HistoryAsked {
  readonly projectId?: string | undefined;
  readonly clientId?: string | undefined;
  /** How many at the most. */
  readonly most: number;
}

/** Newest first; edits of the same field that follow each other within a minute are one. */
export function listHistory(reading: ReadConnection, asked: HistoryAsked): HistoryRecord[] {
  let query = sql.selectFrom('history').selectAll().orderBy('id', 'desc');
  if (asked.projectId !== undefined) query = query.where('project_id', '=', asked.projectId);
  if (asked.clientId !== undefined) query = query.where('client_id', '=', asked.clientId);
  return coalesceHistory(records(reading.each(query.compile())), asked.most);
}

const changesSchema = z.record(z.string(), z.object({ before: z.unknown(), after: z.unknown() }));

function* records(rows: Iterable<HistoryRow>): Generator<HistoryRecord> {
  for (const row of rows)
    yield {
      id: row.id,
      at: row.at,
      projectId: row.project_id,
      clientId: row.client_id,
      entity: row.entity,
      entityId: row.entity_id,
      verb: row.verb,
      changes: changesSchema.parse(JSON.parse(row.changes)),
    };
}
