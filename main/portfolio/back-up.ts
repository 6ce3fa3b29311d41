import Database from 'better-sqlite3';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync } from 'node:fs';
import path from 'node:path';
import { readVersion } from './migrate.ts';

/**
 * Writes a copy of an open portfolio into `backups/` beside it, opens the copy and checks it. `at` is an instant.
 * Returns the copy's path. Throws when the copy cannot be written or does not hold what the portfolio holds.
 */
export function backUp(db: Database.Database, file: string, at: string): string {
  const folder = path.join(path.dirname(file), 'backups');
  mkdirSync(folder, { recursive: true });
  const copy = freePath(folder, `portfolio-form-${readVersion(db)}-${at.replace(/[-:]/g, '').replace(/\.\d+/, '')}`);
  db.prepare('VACUUM INTO ?').run(copy);
  flush(copy);
  verify(db, copy);
  return copy;
}

/** An older copy is never written over. */
function freePath(folder: string, name: string): string {
  for (let count = 1; ; count += 1) {
    const candidate = path.join(folder, `${name}${count === 1 ? '' : `-${count}`}.sqlite`);
    if (!existsSync(candidate)) return candidate;
  }
}

function flush(file: string): void {
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function verify(db: Database.Database, copy: string): void {
  const made = new Database(copy, { readonly: true, fileMustExist: true });
  try {
    const check = String(made.pragma('integrity_check(1)', { simple: true }));
    if (check !== 'ok') throw new Error(`the copy ${copy} is damaged: ${check}`);
    if (readVersion(made) !== readVersion(db)) throw new Error(`the copy ${copy} is of another form`);
    for (const table of listTables(db)) {
      if (countRows(made, table) !== countRows(db, table)) throw new Error(`the copy ${copy} lacks rows of ${table}`);
    }
  } finally {
    made.close();
  }
}

function listTables(db: Database.Database): string[] {
  const found = db
    .prepare<[], string>(
      `SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'`,
    )
    .pluck();
  return found.all();
}

function countRows(db: Database.Database, table: string): number {
  return Number(
    db
      .prepare(`SELECT count(*) FROM "${table.replace(/"/g, '""')}"`)
      .pluck()
      .get(),
  );
}
