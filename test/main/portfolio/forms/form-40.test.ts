import Database from 'better-sqlite3';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { listClients } from '#main/portfolio/clients.ts';
import { listCloths } from '#main/portfolio/cloths.ts';
import { migrate, readVersion } from '#main/portfolio/migrate.ts';
import { first } from '#main/portfolio/migrations/10-first.ts';
import { cutting } from '#main/portfolio/migrations/20-cutting.ts';
import { knownOfCloth } from '#main/portfolio/migrations/30-known-of-cloth.ts';
import { roomWishes } from '#main/portfolio/migrations/40-room-wishes.ts';
import { readStoredDocument } from '#main/portfolio/project-document.ts';
import { rooms } from '#main/portfolio/rooms.ts';
import { makeTestFolder, NOON } from '../test-portfolio.ts';
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

function readRoom() {
  const portfolio = place.open();
  const found = portfolio.read((reading) => ({
    room: readStoredDocument(reading, listClients(reading)[0]!.projects[0]!.id)!.rooms[0]!,
    linen: listCloths(reading, null)[0]!,
  }));
  portfolio.close();
  return found;
}

test('a portfolio of form 40 is read by this program: what a room wishes, and what is known of a cloth', () => {
  fill('form-40.sql');
  const { room, linen } = readRoom();
  expect(room).toMatchObject({ privacy: 'night', budget: 'careful' });
  expect(linen).toMatchObject({ name: 'Reed linen', thickness: 0.4, sources: { thickness: 'measured' } });
});

test('a portfolio of form 20 comes to it with no wish, and can then be told one', () => {
  fill('form-20.sql');
  const { room } = readRoom();
  expect(room).toMatchObject({ privacy: null, budget: null });
  const portfolio = place.open();
  portfolio.write((writing) => rooms.edit(writing, room.id, { privacy: 'always', budget: 'generous' }, NOON));
  portfolio.close();
  expect(readRoom().room).toMatchObject({ privacy: 'always', budget: 'generous' });
});

test('the fourth migration still makes exactly that form', () => {
  fill('form-40.sql');
  const schemaOf = (db: Database.Database) =>
    db.prepare(`SELECT type, name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY type, name`).all();
  const kept = new Database(place.file, { readonly: true });
  const made = new Database(':memory:');
  migrate(made, [first, cutting, knownOfCloth, roomWishes]);
  expect([readVersion(made), readVersion(kept)]).toEqual([40, 40]);
  expect(schemaOf(made)).toEqual(schemaOf(kept));
  kept.close();
  made.close();
});
