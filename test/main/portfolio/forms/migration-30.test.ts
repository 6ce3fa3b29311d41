/** Form 30 adds what is known of a cloth: every row of form 20 stays as it was, and can then be told more. */
import Database from 'better-sqlite3';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { NOTHING_KNOWN } from '#shared/records/known-of-cloth.ts';
import { cloths, listCloths } from '#main/portfolio/cloths.ts';
import { migrate, readVersion } from '#main/portfolio/migrate.ts';
import { first } from '#main/portfolio/migrations/10-first.ts';
import { cutting } from '#main/portfolio/migrations/20-cutting.ts';
import { knownOfCloth } from '#main/portfolio/migrations/30-known-of-cloth.ts';
import { makeTestFolder, NOON } from '../test-portfolio.ts';
import type { TestFolder } from '../test-portfolio.ts';

type Row = Record<string, unknown>;

let place: TestFolder;
let db: Database.Database;
beforeEach(() => {
  place = makeTestFolder();
  db = new Database(place.file);
  db.exec(readFileSync(path.join(import.meta.dirname, 'form-20.sql'), 'utf8'));
});
afterEach(() => {
  db.close();
  place.remove();
});

const readRows = (): Row[] => db.prepare<[], Row>('SELECT * FROM cloths ORDER BY id').all();

test('every row of cloth stays as it was, with nothing more known of it', () => {
  const before = readRows();
  expect(before.length).toBeGreaterThan(1);
  migrate(db, [first, cutting, knownOfCloth]);
  expect(readVersion(db)).toBe(30);
  expect(readRows()).toEqual(before.map((row) => ({ ...row, known: null })));
  expect(() => db.prepare(`UPDATE cloths SET known = '{'`).run()).toThrow(/CHECK/);
});

test('an old cloth is read, told more, and keeps both', () => {
  db.close();
  const portfolio = place.open();
  const [linen] = portfolio.read((reading) => listCloths(reading, null));
  const { visible, uv, solar, ...rest } = NOTHING_KNOWN;
  expect(linen).toMatchObject(rest);
  const told = { needle: 'closes', thickness: 0.4, sources: { thickness: 'measured' } } as const;
  portfolio.write((writing) => cloths.edit(writing, linen!.id, told, NOON));
  portfolio.close();
  const again = place.open();
  expect(again.read((reading) => cloths.read(reading, linen!.id))).toEqual({ ...linen, ...told, updatedAt: NOON });
  again.close();
  expect([visible, uv, solar]).toEqual([null, null, null]);
  db = new Database(place.file);
});
