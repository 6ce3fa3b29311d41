/** Brings a portfolio to the newest form: forward only, each step in one transaction, which also writes its number. */
import type Database from 'better-sqlite3';

export interface Migration {
  /** Goes into `user_version`. Numbered by ten, so that a mended release has room between. */
  readonly version: number;
  run(db: Database.Database): void;
}

export function newestVersion(migrations: readonly Migration[]): number {
  return migrations.reduce((newest, { version }) => Math.max(newest, version), 0);
}

export function readVersion(db: Database.Database): number {
  return Number(db.pragma('user_version', { simple: true }));
}

/** Runs what is missing. Throws what a step throws, with the file as the step before left it. */
export function migrate(db: Database.Database, migrations: readonly Migration[]): void {
  for (const migration of migrations) {
    if (migration.version <= readVersion(db)) continue;
    db.transaction(() => {
      migration.run(db);
      db.pragma(`user_version = ${migration.version}`);
    }).immediate();
  }
}
