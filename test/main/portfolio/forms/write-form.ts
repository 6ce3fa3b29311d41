/**
 * Writes `form-<number>.sql`: a portfolio as this program keeps it, with rows of every table. Run it by hand, once, before
 * a new migration is added: `node test/main/portfolio/forms/write-form.ts`. The file then stays as it is, and a test
 * reads it with every later program.
 */
import Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ticks } from '#shared/length.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { callDesk, makeTestDesk } from '../../desk/test-desk.ts';
import type { TestDesk } from '../../desk/test-desk.ts';

type Row = Record<string, string | number | Uint8Array | null>;

/** A real PDF would make the file large, and says nothing about how it is kept. */
const PAPER = '%PDF-1.7 stands for the paper';

async function fillDesk(desk: TestDesk): Promise<void> {
  const client = callDesk(desk);
  const sample = path.join(import.meta.dirname, '../../../reference/sample.job.json');
  const job = JSON.parse(readFileSync(sample, 'utf8')) as WireJob;
  const [room] = job.rooms;
  if (room === undefined) throw new Error('the sample has no room');
  const text = JSON.stringify({
    ...job,
    rooms: [{ ...room, openings: room.openings.slice(0, 1) }],
    cloth: job.cloth?.slice(0, 1),
  });
  const letterhead = { name: 'Reed & Rye', lines: ['2 Example Lane'] };
  await client.settings.editSettings({ changes: { letterhead, practice: { bottomHem: 8 } } });
  const { projectId, clientId } = await client.jobs.importJob({ text });
  await client.clients.editClient({ id: clientId, changes: { notes: `Says: "84 1/2"; 'gauche'` } });
  const spare = await client.rooms.addRoom({ projectId, fields: {} });
  await client.rooms.removeRoom({ id: spare.id });
  const known = { thickness: 0.4, sources: { thickness: 'measured' } } as const;
  const linen = { name: 'Reed linen', price: '58.50/yd', content: { linen: 55, cotton: 45 }, ...known };
  await client.cloth.addCloth({ projectId: null, fields: linen });
  const { rooms } = await client.projects.readProject({ id: projectId });
  if (rooms[0]) await client.rooms.editRoom({ id: rooms[0].id, changes: { privacy: 'night', budget: 'careful' } });
  const treatmentId = rooms[0]?.openings[0]?.treatments[0]?.id;
  if (treatmentId === undefined) throw new Error('the sample has no treatment');
  await client.treatments.editTreatment({ id: treatmentId, changes: { decision: 'better' } });
  const piece = { cloth: 'reed-linen', name: 'End of the hall', length: ticks(731520), dyeLot: 'A7' };
  await client.remnants.addRemnant({ projectId: null, fields: piece });
  const cloth = job.cloth?.[0]?.id ?? '';
  const flaws = [{ on: 'bolt 1', from: ticks(5852160), to: ticks(6291072) }];
  const fixed = [{ treatmentId, cut: 2, on: 'bolt 1', at: ticks(0), x: null }];
  await client.cuttings.addCutting({ projectId, cloth, fields: { flaws, fixed } });
  const proposal = await client.proposals.makeProposal({ projectId });
  await client.proposals.writeDraft({
    id: proposal.id,
    to: 'ada@example.com',
    subject: 'Your proposal',
    text: 'Dear Ada',
  });
  await client.proposals.markProposal({ id: proposal.id, state: 'sent' });
}

function writeForm(db: Database.Database, folder: string): string {
  const statements = db.prepare<[], { type: string; name: string; sql: string }>(
    `SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite%' ORDER BY rowid`,
  );
  const schema = statements.all();
  const ofType = (type: string) => schema.filter((each) => each.type === type);
  const rows = ofType('table').flatMap(({ name }) =>
    db
      .prepare<[], Row>(`SELECT * FROM "${name}"`)
      .all()
      .map((row) => writeRow(name, name === 'proposal_files' ? shorten(row) : row, folder)),
  );
  return [
    '-- A portfolio with rows of every table, as it was kept once. It is never changed: later programs have to read it.',
    `PRAGMA application_id = ${String(db.pragma('application_id', { simple: true }))};`,
    `PRAGMA user_version = ${String(db.pragma('user_version', { simple: true }))};`,
    ...[...ofType('table'), ...ofType('index')].map(({ sql }) => `${sql};`),
    ...rows,
    ...ofType('trigger').map(({ sql }) => `${sql};`),
    '',
  ].join('\n');
}

function shorten(row: Row): Row {
  return { ...row, pdf: Buffer.from(PAPER), sha256: createHash('sha256').update(PAPER).digest('hex'), paper: '{}' };
}

function writeRow(table: string, row: Row, folder: string): string {
  const columns = Object.keys(row).map((column) => `"${column}"`);
  const values = Object.values(row).map((value) => {
    if (value === null) return 'NULL';
    if (typeof value === 'number') return String(value);
    if (value instanceof Uint8Array) return `x'${Buffer.from(value).toString('hex')}'`;
    return `'${value.replaceAll(folder, '/home/ada').replaceAll("'", "''")}'`;
  });
  return `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${values.join(', ')});`;
}

const desk = makeTestDesk();
await fillDesk(desk);
await desk.desk.close();
const db = new Database(path.join(desk.folder, 'data', 'portfolio.sqlite'), { readonly: true });
const file = path.join(import.meta.dirname, `form-${String(db.pragma('user_version', { simple: true }))}.sql`);
writeFileSync(file, writeForm(db, desk.folder));
db.close();
await desk.remove();
console.log(file);
