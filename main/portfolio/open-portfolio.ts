/**
 * Opens the one SQLite file that holds everything, and hands out its transactions. One process owns it: the file stays
 * locked while it is open. Written through a write-ahead log with full sync, so that what was acknowledged is on disk.
 */
import Database from 'better-sqlite3';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { backUp } from './back-up.ts';
import { makeConnections } from './connection.ts';
import type { ReadConnection, WriteConnection } from './connection.ts';
import { APPLICATION_ID, inspectFile } from './inspect-file.ts';
import { migrate, newestVersion } from './migrate.ts';
import type { Migration } from './migrate.ts';
import { MIGRATIONS } from './migrations/migrations.ts';
import { makeTrouble, PortfolioUnavailable, tellOpeningTrouble, tellTrouble } from './portfolio-trouble.ts';

export interface Portfolio {
  readonly file: string;
  /** Reads. Throws `PortfolioUnavailable` when the file turns out damaged. */
  read<T>(use: (reading: ReadConnection) => T): T;
  /**
   * Writes in one transaction: all of it, or nothing when `use` throws. It must add to the history when it changes
   * something. Throws `PortfolioWriteFailed` for the disk's sake, `PortfolioUnavailable` when the file cannot be used.
   */
  write<T>(use: (writing: WriteConnection) => T): T;
  /** Writes a checked copy into `backups/` and returns its path. */
  backUp(at: string): string;
  close(): void;
}

export interface PortfolioPlace {
  readonly file: string;
  /** The instant that names a backup. */
  readonly now: () => string;
  /** Milliseconds to wait for another process to let go of the file. */
  readonly busyTimeout?: number | undefined;
  /** The program's own unless a test brings others. */
  readonly migrations?: readonly Migration[] | undefined;
}

/** Opens the portfolio, or makes it when nothing is there. Throws `PortfolioUnavailable`, with the file as it was. */
export function openPortfolio(place: PortfolioPlace): Portfolio {
  const { file, now, busyTimeout = 5000, migrations = MIGRATIONS } = place;
  makeFolder(file);
  const found = inspectFile(file, newestVersion(migrations), busyTimeout);
  let db: Database.Database | undefined;
  try {
    db = new Database(file, { timeout: busyTimeout });
    prepareDatabase(db);
    if (found.state === 'new') db.pragma(`application_id = ${APPLICATION_ID}`);
    else if (found.version < newestVersion(migrations)) backUpBefore(db, file, now());
    bringUpToDate(db, file, migrations);
  } catch (error) {
    db?.close();
    throw tellOpeningTrouble(error, file);
  }
  return usePortfolio(db, file);
}

function makeFolder(file: string): void {
  try {
    mkdirSync(path.dirname(file), { recursive: true });
  } catch (error) {
    throw makeTrouble('unwritable', file, `The folder "${path.dirname(file)}" cannot be made.`, error);
  }
}

function prepareDatabase(db: Database.Database): void {
  db.pragma('locking_mode = EXCLUSIVE');
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  // Else "INSERT OR REPLACE" would get past the triggers that keep proposals and history.
  db.pragma('recursive_triggers = ON');
  db.pragma('trusted_schema = OFF');
  // Fails here, not at the first edit, when the file is read-only or another process has it.
  db.exec('BEGIN IMMEDIATE; ROLLBACK');
}

function backUpBefore(db: Database.Database, file: string, at: string): void {
  try {
    backUp(db, file, at);
  } catch (error) {
    throw makeTrouble(
      'unwritable',
      file,
      'The portfolio has to be brought up to date, but no copy of it could be made first.',
      error,
    );
  }
}

function bringUpToDate(db: Database.Database, file: string, migrations: readonly Migration[]): void {
  try {
    migrate(db, migrations);
  } catch (error) {
    const told = tellOpeningTrouble(error, file);
    if (told instanceof PortfolioUnavailable) throw told;
    throw makeTrouble('damaged', file, 'The portfolio could not be brought up to date.', error);
  }
}

function usePortfolio(db: Database.Database, file: string): Portfolio {
  const connections = makeConnections(db);
  const told = <T>(use: () => T): T => {
    try {
      return use();
    } catch (error) {
      throw tellTrouble(error, file);
    }
  };
  return {
    file,
    read: (use) => told(() => use(connections.reading)),
    write: (use) =>
      told(() =>
        db
          .transaction(() => {
            const tally = { changed: 0, told: 0 };
            const result = use(connections.writing(tally));
            if (tally.changed > 0 && tally.told === 0) throw new Error('a write that adds nothing to the history');
            return result;
          })
          .immediate(),
      ),
    backUp: (at) => told(() => backUp(db, file, at)),
    close: () => {
      if (db.open) db.close();
    },
  };
}
