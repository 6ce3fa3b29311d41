import { isDeepStrictEqual } from 'node:util';
import type { HistoryRecord } from '#shared/records/records.ts';

/** A field is saved again at each pause of typing: what lies closer together than this is one edit. Milliseconds. */
const MINUTE = 60_000;

/**
 * Takes history newest first and gives at most `most` entries, newest first. Edits of the same fields of the same record
 * that follow each other, each within a minute of the next, become one: before as the oldest had it, after as the newest.
 * Edits that together changed nothing are left out.
 */
export function coalesceHistory(newestFirst: Iterable<HistoryRecord>, most: number): HistoryRecord[] {
  const told: HistoryRecord[] = [];
  let open: { entry: HistoryRecord; oldestAt: string } | null = null;
  const close = (): void => {
    if (open !== null && !isNothing(open.entry)) told.push(open.entry);
    open = null;
  };
  for (const entry of newestFirst) {
    if (open !== null && continues(open.entry, open.oldestAt, entry)) {
      open = { entry: merge(open.entry, entry), oldestAt: entry.at };
      continue;
    }
    close();
    if (told.length >= most) return told;
    open = { entry, oldestAt: entry.at };
  }
  close();
  return told.slice(0, most);
}

function continues(newer: HistoryRecord, newerAt: string, older: HistoryRecord): boolean {
  return (
    newer.verb === 'edited' &&
    older.verb === 'edited' &&
    newer.entity === older.entity &&
    newer.entityId === older.entityId &&
    isDeepStrictEqual(Object.keys(newer.changes).sort(), Object.keys(older.changes).sort()) &&
    Date.parse(newerAt) - Date.parse(older.at) <= MINUTE
  );
}

function merge(newer: HistoryRecord, older: HistoryRecord): HistoryRecord {
  const changes = Object.fromEntries(
    Object.entries(newer.changes).map(([field, { after }]) => [field, { before: older.changes[field]?.before, after }]),
  );
  return { ...newer, changes };
}

function isNothing(entry: HistoryRecord): boolean {
  const changes = Object.values(entry.changes);
  return entry.verb === 'edited' && changes.every(({ before, after }) => isDeepStrictEqual(before, after));
}
