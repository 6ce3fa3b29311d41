/** The decorator's settings, one row a key; what was never set has no row, and its default stands in the desk. */
import { settingsRecord } from '#shared/records/records.ts';
import type { SettingsRecord } from '#shared/records/records.ts';
import { sql } from './compile.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import { addHistory, findChanges } from './history.ts';
import { NOWHERE } from './place.ts';

export type SetSettings = Partial<SettingsRecord>;

const stored = settingsRecord.partial();

export function readSetSettings(reading: ReadConnection): SetSettings {
  const rows = reading.all(sql.selectFrom('settings').select(['key', 'value']).compile());
  return stored.parse(Object.fromEntries(rows.map(({ key, value }): [string, unknown] => [key, JSON.parse(value)])));
}

/** Sets what differs from `before`, which holds the defaults of what was never set. */
export function writeSettings(writing: WriteConnection, before: SettingsRecord, edits: SetSettings, at: string): void {
  const changes = findChanges(before, edits);
  if (Object.keys(changes).length === 0) return;
  for (const [key, { after }] of Object.entries(changes)) {
    const value = JSON.stringify(after);
    writing.run(
      sql
        .insertInto('settings')
        .values({ key, value, updated_at: at })
        .onConflict((conflict) => conflict.column('key').doUpdateSet({ value, updated_at: at }))
        .compile(),
    );
  }
  addHistory(writing, { ...NOWHERE, at, entity: 'settings', entityId: 'settings', verb: 'edited', changes });
}
