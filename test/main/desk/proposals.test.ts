import { createHash } from 'node:crypto';
import { simpleParser } from 'mailparser';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { extractText, getDocumentProxy } from 'unpdf';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { PanelsMake } from '#shared/records/treatment-make.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { DeskClient, TestDesk } from './test-desk.ts';

const SAMPLE = readFileSync(path.join(import.meta.dirname, '../../reference/sample.job.json'), 'utf8');

let desk: TestDesk;
let client: DeskClient;
let projectId: string;
beforeEach(async () => {
  desk = makeTestDesk();
  client = callDesk(desk);
  ({ projectId } = await client.jobs.importJob({ text: SAMPLE }));
});
afterEach(() => desk.remove());

const paperOf = async (kind: string, id: string) => {
  const paper = await desk.desk.readPaper(kind, id);
  return paper === null ? null : Buffer.from(paper.bytes);
};

async function readText(pdf: Buffer): Promise<string> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: true });
  return text;
}

describe('a proposal', () => {
  test("is stored, written into the client's folder, and reads as what was priced", async () => {
    // Noon of the day on the computer's own calendar, in whatever time zone the test runs.
    desk.setClock(new Date(2026, 10, 25, 12).toISOString());
    const made = await client.proposals.makeProposal({ projectId });
    expect(made).toMatchObject({ number: '2026-001', revision: 1, state: 'made', validUntil: '2026-12-25' });
    expect(made.file).toBe(path.join(desk.machine.papers, 'Ada Fenn', '2026-001.pdf'));
    const pdf = readFileSync(made.file!);
    expect((await paperOf('proposal', made.id))?.equals(pdf)).toBe(true);
    const read = await client.proposals.readProposal({ id: made.id });
    expect(await client.jobs.priceJob({ text: read.jobFile })).toEqual(read.result);
    expect(made.totals.good).toBe(read.result.totals.good.total);
    expect(await readText(pdf)).toContain('Ada Fenn');
  });

  test('saved again is a new revision, and the old one stays byte for byte whatever changes', async () => {
    const first = await client.proposals.makeProposal({ projectId });
    const before = await client.proposals.readProposal({ id: first.id });
    const pdf = await paperOf('proposal', first.id);
    const document = await client.projects.readProject({ id: projectId });
    const treatment = document.rooms[0]!.openings[0]!.treatments[0]!;
    await client.treatments.editTreatment({
      id: treatment.id,
      changes: { make: { ...treatment.make, fullness: 3000 } as PanelsMake },
    });
    await client.clients.editClient({ id: document.client.id, changes: { name: 'Ada Reed' } });
    await client.settings.editSettings({
      changes: { terms: 'Other terms', letterhead: { name: 'New name', lines: [] } },
    });
    const second = await client.proposals.makeProposal({ projectId });
    expect(second).toMatchObject({ number: '2026-001', revision: 2 });
    expect(second.file).toMatch(/2026-001 revision 2\.pdf$/);
    expect(second.totals).not.toEqual(first.totals);
    expect(await client.proposals.readProposal({ id: first.id })).toEqual(before);
    expect((await paperOf('proposal', first.id))?.equals(pdf!)).toBe(true);
    expect(readFileSync(first.file!).equals(pdf!)).toBe(true);
  });

  test('asked again with nothing changed, hands back the same one, even at once', async () => {
    const made = await Promise.all([
      client.proposals.makeProposal({ projectId }),
      client.proposals.makeProposal({ projectId }),
    ]);
    expect(made[1]).toEqual(made[0]);
    expect(await client.proposals.listProposals({ projectId })).toHaveLength(1);
  });

  test('two projects made at once get two numbers', async () => {
    const other = await client.jobs.importJob({ text: SAMPLE });
    const made = await Promise.all([
      client.proposals.makeProposal({ projectId }),
      client.proposals.makeProposal({ projectId: other.projectId }),
    ]);
    expect(made.map(({ number, revision }) => [number, revision])).toEqual([
      ['2026-001', 1],
      ['2026-002', 1],
    ]);
  });

  test('keeps its number over the turn of the year, and a new project is counted anew', async () => {
    await client.proposals.makeProposal({ projectId });
    desk.setClock('2027-06-01T12:00:00Z');
    expect(await client.proposals.makeProposal({ projectId })).toMatchObject({ number: '2026-001', revision: 2 });
    const other = await client.jobs.importJob({ text: SAMPLE });
    expect(await client.proposals.makeProposal({ projectId: other.projectId })).toMatchObject({ number: '2027-001' });
  });

  test("the decorator's copy is drawn from what was frozen, with its working", async () => {
    const made = await client.proposals.makeProposal({ projectId });
    const before = await readText((await paperOf('decorator-copy', made.id))!);
    await client.settings.editSettings({ changes: { priceBook: {} } });
    expect(await readText((await paperOf('decorator-copy', made.id))!)).toBe(before);
    expect(before).toContain('206¼ ÷ 54');
  });

  test('a window that is not measured yet is left out; with none left, each is named', async () => {
    const document = await client.projects.readProject({ id: projectId });
    // A bed or a bath has no width to be measured: the windows alone.
    const openings = document.rooms.flatMap((room) => room.openings);
    for (const { id, width } of openings) if (width === null) await client.openings.removeOpening({ id });
    const [first, ...others] = openings.filter(({ width }) => width !== null);
    const left = others.flatMap(({ treatments }) => treatments);
    await client.openings.editOpening({ id: first!.id, changes: { width: null } });
    const made = await client.proposals.makeProposal({ projectId });
    const { result } = await client.proposals.readProposal({ id: made.id });
    expect(result.treatments).toHaveLength(left.length);
    for (const { id } of others) await client.openings.editOpening({ id, changes: { width: null } });
    await expect(client.proposals.makeProposal({ projectId })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  });

  test('stays stored when its folder cannot be written, and can be written later', async () => {
    writeFileSync(desk.machine.papers, 'in the way');
    await expect(client.proposals.makeProposal({ projectId })).rejects.toMatchObject({
      code: 'FILE_TROUBLE',
      data: { file: expect.stringContaining('2026-001.pdf'), says: expect.any(String), remedy: expect.any(String) },
    });
    const [stored] = await client.proposals.listProposals({ projectId });
    expect(stored).toMatchObject({ number: '2026-001', file: null });
    rmSync(desk.machine.papers);
    const opened = await client.proposals.openPaper({ id: stored!.id });
    expect(existsSync(opened.file!)).toBe(true);
    expect((await client.proposals.listProposals({ projectId }))[0]?.file).toBe(opened.file);
  });

  test('moved away is written again, and never over something else', async () => {
    const made = await client.proposals.makeProposal({ projectId });
    writeFileSync(made.file!, 'something of hers');
    const { file } = await client.proposals.openPaper({ id: made.id });
    expect(file).toBe(path.join(path.dirname(made.file!), '2026-001 (2).pdf'));
    expect(readFileSync(made.file!, 'utf8')).toBe('something of hers');
    expect(desk.machine.acts).toEqual(['openPath 2026-001 (2).pdf']);
  });
});

describe('an unfinished project is not proposed, and every fault is named', () => {
  const faultsOf = async (): Promise<{ path: string; wrong: string; right: string }[]> => {
    const error: unknown = await client.proposals.makeProposal({ projectId }).catch((thrown: unknown) => thrown);
    expect(error).toMatchObject({ code: 'BAD_INPUT' });
    expect(await client.proposals.listProposals({})).toEqual([]);
    return (error as { data: { faults: { path: string; wrong: string; right: string }[] } }).data.faults;
  };

  test('text that could not be read, wherever it stands', async () => {
    const { rooms } = await client.projects.readProject({ id: projectId });
    const [east] = rooms[0]!.openings;
    await client.openings.editOpening({ id: east!.id, changes: { width: null, drafts: { width: 'sixty-ish' } } });
    const faults = await faultsOf();
    expect(faults.map(({ path: where }) => where)).toEqual(['rooms[0].openings[0].width']);
    expect(faults[0]!.wrong).toBe('Nursery, East window: "sixty-ish" could not be read');
  });

  test('nothing finished at all: sizes not measured, cloth not chosen', async () => {
    const { rooms } = await client.projects.readProject({ id: projectId });
    const [first, ...others] = rooms.flatMap((room) => room.openings);
    for (const { id } of others) await client.openings.removeOpening({ id });
    const [treatment] = first!.treatments;
    await client.treatments.editTreatment({
      id: treatment!.id,
      changes: { face: null, make: { ...treatment!.make, rodWidth: null } as PanelsMake },
    });
    const faults = await faultsOf();
    expect(faults.map(({ path: where }) => where)).toEqual([
      'rooms[0].openings[0].treatments[0].rodWidth',
      'rooms[0].openings[0].treatments[0].face',
    ]);
    expect(faults[0]!.wrong).toBe('Nursery, East window, Panels: the rod face is not given yet');
  });

  test('a fault behind an opening that is not measured keeps its own place', async () => {
    const { rooms } = await client.projects.readProject({ id: projectId });
    const [east, gable] = rooms[0]!.openings;
    await client.treatments.removeTreatment({ id: east!.treatments[0]!.id });
    await client.openings.editOpening({ id: east!.id, changes: { width: null } });
    await client.treatments.editTreatment({ id: gable!.treatments[0]!.id, changes: { face: 'no-such-cloth' } });
    expect((await faultsOf())[0]!.path).toBe('rooms[0].openings[1].treatments[0].face');
  });

  test('rates that nobody has set', async () => {
    await client.projects.editProject({ id: projectId, changes: { priceBook: {} } });
    const faults = await faultsOf();
    expect(faults.map(({ path: where }) => where)).toContain('priceBook.labour.perWidth.pinch-pleat');
    expect(faults.every(({ right }) => right.includes('example'))).toBe(true);
  });

  test('nothing to propose', async () => {
    const { rooms } = await client.projects.readProject({ id: projectId });
    for (const room of rooms) await client.rooms.removeRoom({ id: room.id });
    expect((await faultsOf()).map(({ path: where }) => where)).toEqual(['rooms']);
  });

  test('a letter that the paper cannot print', async () => {
    const { client: person } = await client.projects.readProject({ id: projectId });
    await client.clients.editClient({ id: person.id, changes: { name: '窓' } });
    expect((await faultsOf())[0]!.wrong).toContain('窓');
  });
});

describe('a mail draft', () => {
  test('lies beside its PDF, is served by address with the same bytes, and parses back', async () => {
    const made = await client.proposals.makeProposal({ projectId });
    const draft = await client.proposals.writeDraft({
      id: made.id,
      to: 'ada@example.com',
      subject: 'Larch House: ½',
      text: 'Dear Ada',
    });
    expect(draft.pdfFile).toBe(made.file);
    expect(path.dirname(draft.draftFile!)).toBe(path.dirname(made.file!));
    const served = await desk.desk.readPaper('draft', draft.address.split('/').at(-1)!);
    expect(served).toMatchObject({ type: 'message/rfc822', name: 'Ada Fenn 2026-001.eml' });
    const bytes = readFileSync(draft.draftFile!);
    expect(bytes.equals(Buffer.from(served!.bytes))).toBe(true);
    const mail = await simpleParser(bytes);
    expect(mail.subject).toBe('Larch House: ½');
    expect(mail.attachments[0]?.filename).toBe('Ada Fenn 2026-001.pdf');
    const digest = (content: Uint8Array) => createHash('sha256').update(content).digest('hex');
    expect(digest(mail.attachments[0]!.content)).toBe(digest(readFileSync(made.file!)));
  });
});

describe('papers by address', () => {
  test("a measure sheet, blank or with the project's windows, and the job file", async () => {
    const blank = await desk.desk.readPaper('measure-sheet', 'blank');
    const named = await desk.desk.readPaper('measure-sheet', projectId);
    expect(blank).toMatchObject({ type: 'application/pdf', name: 'Measure sheet.pdf' });
    expect(named).toMatchObject({ type: 'application/pdf', name: 'Ada Fenn measure sheet.pdf' });
    expect(await readText(Buffer.from(named!.bytes))).toContain('East window');
    const job = await desk.desk.readPaper('job', projectId);
    expect(job).toMatchObject({ type: 'application/json', name: 'Ada Fenn Imported job.json' });
    expect(Buffer.from(job!.bytes).toString('utf8')).toBe((await client.jobs.exportJob({ projectId })).text);
  });

  test.each([
    ['proposal', 'nobody'],
    ['draft', 'nobody'],
    ['job', 'nobody'],
    ['measure-sheet', 'nobody'],
    ['toString', 'x'],
  ])('none of kind %s and id %s', async (kind, id) => {
    expect(await desk.desk.readPaper(kind, id)).toBeNull();
  });

  test('a blank measure sheet can be had while the portfolio cannot', async () => {
    const troubled = makeTestDesk();
    mkdirSync(path.join(troubled.folder, 'data'));
    writeFileSync(path.join(troubled.folder, 'data', 'portfolio.sqlite'), 'no portfolio '.repeat(20));
    expect((await troubled.desk.readPaper('measure-sheet', 'blank'))?.type).toBe('application/pdf');
    expect(await troubled.desk.readPaper('job', 'x')).toBeNull();
    await troubled.remove();
  });
});

describe('the sample household', () => {
  test('can be proposed, and goes whole with its proposals while real ones stay', async () => {
    const real = await client.proposals.makeProposal({ projectId });
    const sample = await client.samples.addSample({});
    expect((await client.projects.readProject({ id: sample.projectId })).client).toMatchObject({
      sample: true,
      notes: expect.stringContaining('Invented'),
    });
    const proposed = await client.proposals.makeProposal({ projectId: sample.projectId });
    await client.proposals.markProposal({ id: proposed.id, state: 'accepted' });
    expect(await client.portfolio.readState({})).toMatchObject({ sample: true, empty: false });
    await client.samples.removeSample({});
    expect(await client.portfolio.readState({})).toMatchObject({ sample: false, empty: false });
    await expect(client.proposals.readProposal({ id: proposed.id })).rejects.toMatchObject({ code: 'NOT_FOUND' });
    expect((await client.proposals.listProposals({})).map(({ id }) => id)).toEqual([real.id]);
  });

  test('put aside and asked for again is fresh', async () => {
    const first = await client.samples.addSample({});
    await client.clients.removeClient({ id: first.clientId });
    const second = await client.samples.addSample({});
    expect(second.clientId).not.toBe(first.clientId);
    await client.samples.removeSample({});
    expect((await client.clients.listClients({})).map(({ sample }) => sample)).toEqual([false]);
  });
});
