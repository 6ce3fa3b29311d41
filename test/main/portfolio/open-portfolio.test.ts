import Database from 'better-sqlite3';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { clients } from '#main/portfolio/clients.ts';
import { sql } from '#main/portfolio/compile.ts';
import { newestVersion } from '#main/portfolio/migrate.ts';
import type { Migration } from '#main/portfolio/migrate.ts';
import { MIGRATIONS } from '#main/portfolio/migrations/migrations.ts';
import { PortfolioUnavailable, PortfolioWriteFailed } from '#main/portfolio/portfolio-trouble.ts';
import { makeTestFolder, NOON, testClient } from './test-portfolio.ts';
import type { TestFolder } from './test-portfolio.ts';

const NEWEST = newestVersion(MIGRATIONS);

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
});
afterEach(() => place.remove());

function fill(): void {
  const portfolio = place.open();
  portfolio.write((writing) => clients.add(writing, testClient('a')));
  portfolio.close();
}

/** Opens and expects a trouble; the file has to keep its bytes and the moment of its last change. */
function expectTrouble(trouble: string, open = () => place.open()): PortfolioUnavailable {
  utimesSync(place.file, new Date('2020-01-01T00:00:00Z'), new Date('2020-01-01T00:00:00Z'));
  const before = { bytes: readFileSync(place.file), mtime: statSync(place.file).mtimeMs };
  let thrown: unknown;
  try {
    open().close();
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(PortfolioUnavailable);
  const told = thrown as PortfolioUnavailable;
  expect(told.trouble).toMatchObject({ trouble, file: place.file });
  expect(told.trouble.says.length).toBeGreaterThan(10);
  expect(told.trouble.remedy.length).toBeGreaterThan(10);
  expect(readFileSync(place.file).equals(before.bytes)).toBe(true);
  expect(statSync(place.file).mtimeMs).toBe(before.mtime);
  return told;
}

describe('a portfolio that is opened', () => {
  test('is made with every promise of durability, and kept when it is opened again', () => {
    const portfolio = place.open();
    portfolio.write((writing) => clients.add(writing, testClient('a')));
    portfolio.close();
    const again = place.open();
    expect(again.read((reading) => clients.read(reading, 'a'))?.name).toBe('Ada Fenn');
    const pragma = (name: string) =>
      again.read((reading) =>
        reading.all({ ...sql.selectFrom('clients').compile(), sql: `PRAGMA ${name}`, parameters: [] }),
      );
    expect(pragma('journal_mode')).toEqual([{ journal_mode: 'wal' }]);
    expect(pragma('synchronous')).toEqual([{ synchronous: 2 }]);
    expect(pragma('foreign_keys')).toEqual([{ foreign_keys: 1 }]);
    expect(pragma('user_version')).toEqual([{ user_version: NEWEST }]);
    again.close();
  });

  test('has nothing but strict tables', () => {
    place.open().close();
    const db = new Database(place.file, { readonly: true });
    const tables = db
      .prepare(`SELECT name, strict FROM pragma_table_list WHERE schema = 'main' AND name NOT LIKE 'sqlite%'`)
      .all();
    db.close();
    expect(tables.length).toBeGreaterThan(10);
    expect(tables.filter((table) => (table as { strict: number }).strict !== 1)).toEqual([]);
  });

  test('of no bytes is made anew', () => {
    writeFileSync(place.file, '');
    place.open().close();
    expect(readFileSync(place.file).toString('latin1', 0, 15)).toBe('SQLite format 3');
  });
});

describe('a file that cannot be used is refused by name and stays as it is', () => {
  test('newer', () => {
    fill();
    const db = new Database(place.file);
    db.pragma('user_version = 9990');
    db.close();
    expect(expectTrouble('newer').trouble.says).toContain('9990');
  });

  test('newer, with its number still in the log', () => {
    fill();
    const db = new Database(place.file);
    db.pragma('user_version = 9990');
    // What a killed process leaves: the log is copied before it is folded in.
    const [bytes, log] = [readFileSync(place.file), readFileSync(`${place.file}-wal`)];
    db.close();
    writeFileSync(place.file, bytes);
    writeFileSync(`${place.file}-wal`, log);
    expectTrouble('newer');
    expect(readFileSync(`${place.file}-wal`).equals(log)).toBe(true);
  });

  test.each([
    ['text', Buffer.from('This is no portfolio, and it is longer than a header of one hundred bytes. '.repeat(3))],
    ['a few bytes', Buffer.from('SQLite')],
  ])('damaged: %s', (_name, bytes) => {
    writeFileSync(place.file, bytes);
    expectTrouble('damaged');
  });

  test('damaged: cut off in the middle', () => {
    fill();
    const bytes = readFileSync(place.file);
    writeFileSync(place.file, bytes.subarray(0, bytes.byteLength / 2));
    expectTrouble('damaged');
  });

  test('damaged: pages overwritten', () => {
    fill();
    const bytes = readFileSync(place.file);
    bytes.fill(0x5a, 4096, 12288);
    writeFileSync(place.file, bytes);
    expectTrouble('damaged');
  });

  test('damaged: a database of another program', () => {
    const db = new Database(place.file);
    db.exec('CREATE TABLE other (a INTEGER)');
    db.close();
    expectTrouble('damaged');
  });

  test('busy: open elsewhere', () => {
    fill();
    const first = place.open();
    expectTrouble('busy');
    first.close();
    place.open().close();
  });

  test('missing: backups are there and the file is not', () => {
    mkdirSync(path.join(place.folder, 'backups'));
    writeFileSync(path.join(place.folder, 'backups', 'portfolio-form-10-20260101T000000Z.sqlite'), 'kept');
    expect(() => place.open()).toThrow(PortfolioUnavailable);
    expect(existsSync(place.file)).toBe(false);
  });

  test('unwritable: a file lies where its folder should be', () => {
    const blocked = path.join(place.folder, 'blocked');
    writeFileSync(blocked, '');
    expect(() => place.open({ file: path.join(blocked, 'portfolio.sqlite') })).toThrow(
      expect.objectContaining({ trouble: expect.objectContaining({ trouble: 'unwritable' }) }),
    );
  });
});

describe('a portfolio of an older form', () => {
  const nickname: Migration = {
    version: NEWEST + 10,
    run: (db) => void db.exec(`ALTER TABLE clients ADD COLUMN nickname TEXT NOT NULL DEFAULT ''`),
  };
  const breaks: Migration = {
    version: NEWEST + 20,
    run: (db) => {
      db.exec('DROP TABLE treatments');
      throw new Error('this step breaks');
    },
  };

  test('is backed up, checked and then brought up to date, and keeps its rows', () => {
    fill();
    place.open({ migrations: [...MIGRATIONS, nickname] }).close();
    const [name, ...others] = readdirSync(path.join(place.folder, 'backups'));
    expect([name, others]).toEqual([`portfolio-form-${NEWEST}-20261125T120000Z.sqlite`, []]);
    const db = new Database(place.file, { readonly: true });
    expect(db.pragma('user_version', { simple: true })).toBe(NEWEST + 10);
    expect(db.prepare('SELECT name, nickname FROM clients').all()).toEqual([{ name: 'Ada Fenn', nickname: '' }]);
    db.close();
    copyFileSync(path.join(place.folder, 'backups', name!), path.join(place.folder, 'restored.sqlite'));
    const restored = place.open({ file: path.join(place.folder, 'restored.sqlite') });
    expect(restored.read((reading) => clients.read(reading, 'a'))?.name).toBe('Ada Fenn');
    restored.close();
  });

  test('is not brought up to date twice', () => {
    fill();
    place.open({ migrations: [...MIGRATIONS, nickname] }).close();
    place.open({ migrations: [...MIGRATIONS, nickname] }).close();
    expect(readdirSync(path.join(place.folder, 'backups'))).toHaveLength(1);
  });

  test('stays at the last step that worked when one breaks', () => {
    fill();
    expect(() => place.open({ migrations: [...MIGRATIONS, nickname, breaks] })).toThrow(PortfolioUnavailable);
    const db = new Database(place.file, { readonly: true });
    expect(db.pragma('user_version', { simple: true })).toBe(NEWEST + 10);
    expect(db.prepare('SELECT count(*) FROM treatments').pluck().get()).toBe(0);
    db.close();
  });

  test('is left alone when no backup can be made', () => {
    fill();
    writeFileSync(path.join(place.folder, 'backups'), 'a file where the folder should be');
    expectTrouble('unwritable', () => place.open({ migrations: [...MIGRATIONS, nickname] }));
  });
});

test('a full disk stops the write, and keeps what was acknowledged', () => {
  const portfolio = place.open();
  const ask = (text: string) => ({ ...sql.selectFrom('clients').compile(), sql: text, parameters: [] });
  const pages = portfolio.read((reading) => reading.first(ask('PRAGMA page_count')))!;
  // SQLite's own limit stands for the disk's: it answers SQLITE_FULL alike.
  portfolio.read((reading) =>
    reading.all(ask(`PRAGMA max_page_count = ${(pages as { page_count: number }).page_count + 20}`)),
  );
  let acknowledged = 0;
  const fillUp = () => {
    for (;;) {
      const client = { ...testClient(`client-${acknowledged}`), notes: 'x'.repeat(10_000) };
      portfolio.write((writing) => clients.add(writing, client));
      acknowledged += 1;
    }
  };
  expect(fillUp).toThrow(PortfolioWriteFailed);
  expect(acknowledged).toBeGreaterThan(0);
  portfolio.close();
  const again = place.open();
  const kept = again.read((reading) => reading.all(sql.selectFrom('clients').select('id').compile()));
  again.close();
  expect(kept).toHaveLength(acknowledged);
});

test('a copy asked for by hand never replaces an older one', () => {
  const portfolio = place.open();
  const copies = [portfolio.backUp(NOON), portfolio.backUp(NOON)];
  portfolio.close();
  expect(new Set(copies).size).toBe(2);
  expect(copies.every((copy) => existsSync(copy))).toBe(true);
});

test('migrations are numbered by ten and upwards', () => {
  const versions = MIGRATIONS.map(({ version }) => version);
  expect(versions).toEqual([...versions].sort((a, b) => a - b));
  expect(versions.every((version) => version % 10 === 0)).toBe(true);
});
