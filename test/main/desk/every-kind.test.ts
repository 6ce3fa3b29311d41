/** Every kind of treatment goes through the portfolio and comes out as the very same job, at the very same price. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { extractText, getDocumentProxy } from 'unpdf';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { TREATMENT_KINDS } from '#shared/treatments/treatment.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { DeskClient, TestDesk } from './test-desk.ts';

const HOUSE = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../reference/every-kind.job.json'), 'utf8'),
) as WireJob;

let desk: TestDesk;
let client: DeskClient;
beforeEach(() => {
  desk = makeTestDesk();
  client = callDesk(desk);
});
afterEach(() => desk.remove());

describe('a house with every kind', () => {
  test('has every kind', () => {
    const kinds = HOUSE.rooms.flatMap((room) =>
      room.openings.flatMap((each) => each.treatments.map(({ kind }) => kind)),
    );
    expect(new Set(kinds)).toEqual(new Set(TREATMENT_KINDS));
  });

  test('is imported, exported and priced to the cent as the file itself', async () => {
    const text = JSON.stringify(HOUSE);
    const { projectId } = await client.jobs.importJob({ text });
    const exported = await client.jobs.exportJob({ projectId });
    const [before, after] = [HOUSE, JSON.parse(exported.text) as WireJob].map((wire) => readJob(wire));
    expect(before?.ok && after?.ok && after.job.rooms).toEqual(before?.ok && before.job.rooms);
    const [own, kept] = [await client.jobs.priceJob({ text }), await client.jobs.priceJob({ text: exported.text })];
    expect(kept.treatments).toEqual(own.treatments);
    expect(kept.totals).toEqual(own.totals);
  });

  test('what its rooms wish for goes along, and what they do not wish for is not written', async () => {
    const [first, ...others] = HOUSE.rooms;
    const wished = { ...first!, privacy: 'night', budget: 'careful' } as const;
    const text = JSON.stringify({ ...HOUSE, rooms: [wished, ...others] });
    const { projectId } = await client.jobs.importJob({ text });
    const exported = JSON.parse((await client.jobs.exportJob({ projectId })).text) as WireJob;
    expect(exported.rooms[0]).toMatchObject({ privacy: 'night', budget: 'careful' });
    expect(Object.keys(exported.rooms[1] ?? {})).not.toContain('privacy');
  });

  test('an unfinished shade is named with what it lacks, and nothing else is lost', async () => {
    const { projectId } = await client.jobs.importJob({ text: JSON.stringify(HOUSE) });
    const document = await client.projects.readProject({ id: projectId });
    const shade = document.rooms
      .flatMap((room) => room.openings.flatMap((each) => each.treatments))
      .find((each) => each.make.kind === 'roman-shade')!;
    const make = {
      kind: 'roman-shade' as const,
      form: { style: 'flat', mount: { where: 'inside' }, size: { basis: 'finished', width: 270000, length: null } },
    };
    await client.treatments.editTreatment({ id: shade.id, changes: { make } });
    const exported = JSON.parse((await client.jobs.exportJob({ projectId })).text) as WireJob;
    const names = exported.rooms.flatMap((room) =>
      room.openings.flatMap((each) => each.treatments.map(({ name }) => name)),
    );
    expect(names).not.toContain('Shade');
    expect(names).toContain('Valance');
  });

  test('a form with what its kind does not have is refused by name', async () => {
    const { projectId } = await client.jobs.importJob({ text: JSON.stringify(HOUSE) });
    const document = await client.projects.readProject({ id: projectId });
    const [treatment] = document.rooms[0]!.openings[0]!.treatments;
    const make = { kind: 'cornice' as const, form: { width: 1.5, wings: 3 } };
    await expect(client.treatments.editTreatment({ id: treatment!.id, changes: { make } })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ path: 'changes.make.form', wrong: 'does not fit at width, wings' }] },
    });
  });

  test('has work sheets, a page or more for each treatment', { timeout: 60_000 }, async () => {
    const { projectId } = await client.jobs.importJob({ text: JSON.stringify(HOUSE) });
    const paper = await desk.desk.readPaper('work-sheets', projectId);
    expect(paper).toMatchObject({
      type: 'application/pdf',
      name: expect.stringMatching(/work sheets\.pdf$/) as string,
    });
    const { text, totalPages } = await extractText(await getDocumentProxy(new Uint8Array(paper!.bytes)), {
      mergePages: true,
    });
    expect(text).toContain('sheet 8 of 8');
    expect(totalPages).toBeGreaterThanOrEqual(8);
  });
});
