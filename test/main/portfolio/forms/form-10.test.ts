import Database from 'better-sqlite3';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { listClients } from '#main/portfolio/clients.ts';
import { listCloths } from '#main/portfolio/cloths.ts';
import { listHistory } from '#main/portfolio/history.ts';
import { migrate } from '#main/portfolio/migrate.ts';
import { first } from '#main/portfolio/migrations/10-first.ts';
import { MIGRATIONS } from '#main/portfolio/migrations/migrations.ts';
import { readStoredDocument } from '#main/portfolio/project-document.ts';
import { listProposals, readProposalPdf, readProposalResult } from '#main/portfolio/proposals.ts';
import { rooms } from '#main/portfolio/rooms.ts';
import { readSetSettings } from '#main/portfolio/settings.ts';
import { makeTestFolder } from '../test-portfolio.ts';
import type { TestFolder } from '../test-portfolio.ts';

const FORM = readFileSync(path.join(import.meta.dirname, 'form-10.sql'), 'utf8');

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
  const db = new Database(place.file);
  db.exec(FORM);
  db.close();
});
afterEach(() => place.remove());

test('a portfolio of form 10 is read by this program, every row of it', () => {
  const portfolio = place.open();
  portfolio.read((reading) => {
    const [client] = listClients(reading);
    expect(client).toMatchObject({ name: 'Ada Fenn', notes: `Says: "84 1/2"; 'gauche'` });
    expect(client!.projects).toMatchObject([{ name: 'Imported job', rooms: 1, openings: 1, proposals: 1 }]);
    const document = readStoredDocument(reading, client!.projects[0]!.id);
    const treatment = document?.rooms[0]?.openings[0]?.treatments[0];
    // 84 in and 72 in of 8128 ticks.
    expect(treatment?.make).toMatchObject({ finishedLength: 682752, rodWidth: 585216, fullness: 2500 });
    // Rooms of before asked for nothing.
    expect(document?.rooms[0]).toMatchObject({ use: 'nursery', privacy: null, budget: null });
    expect(document?.project.priceBook).toBe('example');
    expect(listCloths(reading, null).map(({ code, content }) => [code, content])).toEqual([
      ['reed-linen', { linen: 55, cotton: 45 }],
    ]);
    expect(readSetSettings(reading)).toMatchObject({
      practice: { bottomHem: '8 in' },
      letterhead: { name: 'Reed & Rye' },
    });
    const [proposal] = listProposals(reading, null);
    expect(proposal).toMatchObject({
      number: '2026-001',
      state: 'sent',
      file: '/home/ada/papers/Ada Fenn/2026-001.pdf',
    });
    expect(Buffer.from(readProposalPdf(reading, proposal!.id)!).toString()).toBe('%PDF-1.7 stands for the paper');
    expect(readProposalResult(reading, proposal!.id)?.result.totals.good.total).toBe(proposal!.totals.good);
    expect(listHistory(reading, { most: 100 }).length).toBeGreaterThan(5);
  });
  portfolio.write((writing) => {
    const removed = listHistory(writing, { most: 100 }).find(({ verb }) => verb === 'removed');
    expect(rooms.restore(writing, removed!.entityId, '2026-11-26T12:00:00.000Z')?.name).toBe('Room');
  });
  portfolio.close();
  const backups = path.join(place.folder, 'backups');
  expect(existsSync(backups) ? readdirSync(backups).length : 0).toBe(MIGRATIONS.length > 1 ? 1 : 0);
});

test('the first migration still makes exactly that form', () => {
  const schemaOf = (db: Database.Database) =>
    db.prepare(`SELECT type, name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite%' ORDER BY type, name`).all();
  const kept = new Database(place.file, { readonly: true });
  const made = new Database(':memory:');
  migrate(made, [first]);
  expect(schemaOf(made)).toEqual(schemaOf(kept));
  kept.close();
  made.close();
});
