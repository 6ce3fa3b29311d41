import Database from 'better-sqlite3';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { listClients } from '#main/portfolio/clients.ts';
import { migrate } from '#main/portfolio/migrate.ts';
import { first } from '#main/portfolio/migrations/10-first.ts';
import { cutting } from '#main/portfolio/migrations/20-cutting.ts';
import { readStoredDocument } from '#main/portfolio/project-document.ts';
import { listRemnants } from '#main/portfolio/remnants.ts';
import { makeTestFolder } from '../test-portfolio.ts';
import type { TestFolder } from '../test-portfolio.ts';

const read = (name: string): string => readFileSync(path.join(import.meta.dirname, name), 'utf8');

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
});
afterEach(() => place.remove());

function fill(name: string): void {
  const db = new Database(place.file);
  db.exec(read(name));
  db.close();
}

function readFirst() {
  const portfolio = place.open();
  const found = portfolio.read((reading) => ({
    document: readStoredDocument(reading, listClients(reading)[0]!.projects[0]!.id)!,
    shelf: listRemnants(reading, null),
  }));
  portfolio.close();
  return { ...found, treatment: found.document.rooms[0]!.openings[0]!.treatments[0]! };
}

test('a portfolio of form 20 is read by this program: remnants, what is settled of a cloth, and decisions', () => {
  fill('form-20.sql');
  const { document, shelf, treatment } = readFirst();
  expect(treatment.decision).toBe('better');
  // 90 in of 8128 ticks.
  expect(shelf).toMatchObject([
    { cloth: 'reed-linen', name: 'End of the hall', length: 731520, width: null, dyeLot: 'A7', projectId: null },
  ]);
  expect(document.cuttings).toMatchObject([
    {
      bolts: [],
      // Bad from 20 to 21 1/2 yd.
      flaws: [{ on: 'bolt 1', from: 5852160, to: 6291072 }],
      fixed: [{ treatmentId: treatment.id, cut: 2, on: 'bolt 1', at: 0, x: null }],
    },
  ]);
});

test('a portfolio of form 10 comes to it with nothing decided, nothing settled and nothing on the shelf', () => {
  fill('form-10.sql');
  const { document, shelf, treatment } = readFirst();
  expect(treatment).toMatchObject({ decision: null, name: 'Panels' });
  expect([document.cuttings, document.remnants, shelf]).toEqual([[], [], []]);
});

test('the second migration still makes exactly that form', () => {
  fill('form-20.sql');
  const schemaOf = (db: Database.Database) =>
    db.prepare(`SELECT type, name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY type, name`).all();
  const kept = new Database(place.file, { readonly: true });
  const made = new Database(':memory:');
  migrate(made, [first, cutting]);
  expect(schemaOf(made)).toEqual(schemaOf(kept));
  kept.close();
  made.close();
});

test('a word that is no decision never gets in', () => {
  fill('form-20.sql');
  const db = new Database(place.file);
  expect(() => db.exec(`UPDATE treatments SET decision = 'perhaps'`)).toThrow(/CHECK/);
  db.close();
});
