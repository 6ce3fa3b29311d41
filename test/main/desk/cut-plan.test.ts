/** What is accepted, settled and kept at the desk, and the papers that rest on it. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ticks } from '#shared/length.ts';
import { houseOf } from '../../app/pricing/plan-house.ts';
import { extractPages } from '../../app/documents/read-paper.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { DeskClient, TestDesk } from './test-desk.ts';

let desk: TestDesk;
let client: DeskClient;
beforeEach(() => {
  desk = makeTestDesk();
  client = callDesk(desk);
});
afterEach(() => desk.remove());

const inches = (value: number) => ticks(value * 8128);
const REPEAT = { repeat: { vertical: 27 } };

async function importHouse(windows: readonly object[] = [{}, {}], cloth: object = REPEAT) {
  const text = JSON.stringify(houseOf({ windows, cloth }));
  const { projectId } = await client.jobs.importJob({ text });
  const { rooms } = await client.projects.readProject({ id: projectId });
  const treatments = rooms.flatMap((room) => room.openings.flatMap((opening) => opening.treatments));
  return { projectId, treatments };
}

/** The words of a paper, each line break a space. */
async function readWords(kind: string, id: string): Promise<string> {
  const paper = await desk.desk.readPaper(kind, id);
  return (await extractPages(new Uint8Array(paper!.bytes))).join(' ').replace(/\s+/gu, ' ');
}

async function readPlan(projectId: string) {
  const { text } = await client.jobs.exportJob({ projectId });
  return client.jobs.priceJob({ text });
}

describe('a plan is laid again', () => {
  test('after each acceptance and each decline, and prices stay as they were', async () => {
    const { projectId, treatments } = await importHouse();
    const before = await readPlan(projectId);
    expect(before.accepted).toBeUndefined();
    const [one, two] = treatments;
    await client.treatments.editTreatment({ id: one!.id, changes: { decision: 'good' } });
    // The worked example, once and then twice: 12¾ yd, 24¾ yd.
    expect((await readPlan(projectId)).accepted?.map(({ orderYards }) => orderYards)).toEqual([12.75]);
    await client.treatments.editTreatment({ id: two!.id, changes: { decision: 'best' } });
    const both = await readPlan(projectId);
    expect(both.accepted?.map(({ orderYards }) => orderYards)).toEqual([24.75]);
    expect(both.totals).toEqual(before.totals);
    await client.treatments.editTreatment({ id: two!.id, changes: { decision: 'declined' } });
    const declined = await readPlan(projectId);
    expect(declined.accepted?.map(({ orderYards }) => orderYards)).toEqual([12.75]);
    expect(declined.plan.map(({ orderYards }) => orderYards)).toEqual([12.75, 12.75, 12.75]);
    const verbs = (await client.history.listHistory({ projectId })).map(({ entity, verb }) => `${entity} ${verb}`);
    expect(verbs).toContain('treatment edited');
  });

  test('after a flaw, and as it was when the flaw is taken away and put back', async () => {
    const { projectId } = await importHouse();
    const whole = (await readPlan(projectId)).plan[0]!.yards;
    const cutting = await client.cuttings.addCutting({
      projectId,
      cloth: 'face',
      fields: { flaws: [{ on: 'bolt 1', from: inches(200), to: inches(230) }] },
    });
    const flawed = (await readPlan(projectId)).plan[0]!.yards;
    expect(flawed).toBeGreaterThan(whole);
    await client.cuttings.removeCutting({ id: cutting.id });
    expect((await readPlan(projectId)).plan[0]!.yards).toBe(whole);
    await client.cuttings.restoreCutting({ id: cutting.id });
    expect((await readPlan(projectId)).plan[0]!.yards).toBe(flawed);
  });

  test('with a remnant on the shelf, used first; a renamed window keeps its fixed cut', async () => {
    const { projectId, treatments } = await importHouse();
    await client.remnants.addRemnant({ projectId, fields: { cloth: 'face', length: inches(460), name: 'End' } });
    // One treatment of 424 in from its place comes out of the remnant, less the repeat set aside.
    expect((await readPlan(projectId)).plan[0]!.yards).toBeCloseTo(424 / 36, 4);
    await client.cuttings.addCutting({
      projectId,
      cloth: 'face',
      fields: { fixed: [{ treatmentId: treatments[1]!.id, cut: 1, on: 'bolt 1', at: inches(54), x: null }] },
    });
    await client.treatments.editTreatment({ id: treatments[1]!.id, changes: { name: 'Drapery' } });
    const { text } = await client.jobs.exportJob({ projectId });
    expect(JSON.parse(text)).toMatchObject({ cutting: { fixed: [{ treatment: 'Room/Window 2/Drapery', at: 54 }] } });
    expect((await readPlan(projectId)).plan[0]!.yards).toBeCloseTo((424 + 54) / 36, 4);
  });

  test('a fixed cut that its treatment has not any more is named, and a proposal is made all the same', async () => {
    const { projectId, treatments } = await importHouse();
    const { id, make } = treatments[1]!;
    if (make.kind !== 'panels') throw new Error('the house has panels');
    await client.cuttings.addCutting({
      projectId,
      cloth: 'face',
      fields: { fixed: [{ treatmentId: id, cut: 4, on: 'bolt 1', at: inches(108), x: null }] },
    });
    expect((await readPlan(projectId)).plan[0]!.yards).toBeCloseTo((424 + 432) / 36, 4);
    await client.treatments.editTreatment({ id, changes: { make: { ...make, halfWidths: 2 } } });
    await expect(readPlan(projectId)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: {
        faults: expect.arrayContaining([
          {
            path: 'cutting.fixed[0].cut',
            wrong: 'cut 4 is placed by hand, but "Room/Window 2/Panels" has 2 cuts of this cloth',
            right: 'give 1 to 2, or take it out',
          },
        ]) as unknown,
      },
    });
    expect((await client.proposals.makeProposal({ projectId })).number).not.toBe('');
    // As many cuts again: it lies where it was put.
    await client.treatments.editTreatment({ id, changes: { make } });
    expect((await readPlan(projectId)).plan[0]!.yards).toBeCloseTo((424 + 432) / 36, 4);
  });

  test('a fixed cut of a treatment that is taken away is left out, and there again when it comes back', async () => {
    const { projectId, treatments } = await importHouse();
    const id = treatments[1]!.id;
    const fixed = [{ treatmentId: id, cut: 1, on: 'bolt 1', at: inches(54), x: null }];
    await client.cuttings.addCutting({ projectId, cloth: 'face', fields: { fixed } });
    const before = await readPlan(projectId);
    await client.treatments.removeTreatment({ id });
    expect((await readPlan(projectId)).plan[0]!.yards).toBeCloseTo(424 / 36, 4);
    await client.treatments.restoreTreatment({ id });
    expect(await readPlan(projectId)).toEqual(before);
  });
});

test('the decorator’s own remnants lie there for every project, and a project’s own cloth hides them', async () => {
  const own = await client.cloth.addCloth({
    projectId: null,
    fields: { code: 'face', name: 'Own', width: inches(54), price: '9/yd' },
  });
  await client.remnants.addRemnant({
    projectId: null,
    fields: { cloth: own.code, length: inches(460), name: 'Shelf' },
  });
  const { projectId } = await importHouse();
  const { text } = await client.jobs.exportJob({ projectId });
  expect(JSON.parse(text)).not.toHaveProperty('cutting');
  expect((await client.projects.readProject({ id: projectId })).remnants.map(({ name }) => name)).toEqual(['Shelf']);
});

test('a proposal is made whatever is wrong with the cloth on hand, and says nothing of what the plan saves', async () => {
  const { projectId } = await importHouse();
  await client.cuttings.addCutting({
    projectId,
    cloth: 'face',
    fields: { bolts: [{ name: 'short', length: inches(50), dyeLot: '', startsAt: null }] },
  });
  const { text } = await client.jobs.exportJob({ projectId });
  await expect(client.jobs.priceJob({ text })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  const proposal = await client.proposals.makeProposal({ projectId });
  const words = await readWords('proposal', proposal.id);
  expect(words).not.toMatch(/laid together|cut plan|reserve for flaws/iu);
});

/** A house whose plan takes a while: many cuts in a half-drop, on several pieces. */
function largeHouse(windows: number): Promise<{ projectId: string }> {
  const sizes = Array.from({ length: windows }, (_, index) => ({
    rodWidth: 70 + ((index * 37) % 90),
    finishedLength: 70 + ((index * 13) % 50),
  }));
  return importHouse(sizes, { repeat: { vertical: 25.25, match: 'half-drop' }, bolt: '60 yd' });
}

// Each thread loads the engines from their sources anew.
describe('a paper that takes its time', { timeout: 120_000 }, () => {
  test('is drawn while the desk answers everything else, says how far it is, and is there at once afterwards', async () => {
    const { projectId } = await largeHouse(24);
    const came: number[] = [];
    const drawing = client.cuttings.drawCutPlan({ projectId }).finally(() => came.push(performance.now()));
    const shares: number[] = [];
    while (came.length === 0) {
      const { share } = await client.cuttings.readDrawing({ projectId });
      if (share !== null) shares.push(share);
      await client.projects.readProject({ id: projectId });
      await new Promise((resolve) => setImmediate(resolve));
    }
    const { pages } = await drawing;
    expect(pages).toBeGreaterThan(3);
    // Answers came all the while, and what they told never fell back.
    expect(shares.length).toBeGreaterThan(20);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect([shares.at(0), shares.at(-1)]).toEqual([0, 1]);
    expect(await client.cuttings.readDrawing({ projectId })).toEqual({ share: null });
    const reading = desk.desk.readPaper('cut-plan', projectId);
    // Nothing is laid again for the address.
    expect(await client.cuttings.readDrawing({ projectId })).toEqual({ share: null });
    expect((await extractPages(new Uint8Array((await reading)!.bytes))).length).toBe(pages);
  });

  test('is left when nobody waits for it, or when the desk closes', async () => {
    const { projectId } = await largeHouse(24);
    const drawing = client.cuttings.drawCutPlan({ projectId });
    const reading = desk.desk.readPaper('cut-plan', projectId);
    while ((await client.cuttings.readDrawing({ projectId })).share === null)
      await new Promise((resolve) => setImmediate(resolve));
    await client.cuttings.leaveDrawing({ projectId });
    expect(await drawing).toEqual({ pages: null });
    expect(await reading).toBeNull();
    expect(await client.cuttings.readDrawing({ projectId })).toEqual({ share: null });
    const other = client.cuttings.drawCutPlan({ projectId });
    while ((await client.cuttings.readDrawing({ projectId })).share === null)
      await new Promise((resolve) => setImmediate(resolve));
    await desk.desk.close();
    expect(await other).toEqual({ pages: null });
  });

  test('a change of the project draws it anew', async () => {
    const { projectId, treatments } = await importHouse();
    const before = await client.cuttings.drawCutPlan({ projectId });
    expect(before.pages).not.toBeNull();
    await client.treatments.editTreatment({ id: treatments[0]!.id, changes: { decision: 'declined' } });
    expect(await readWords('cut-plan', projectId)).not.toContain('Window 1');
  });

  test('a letter that no typeface has is named, across the thread', async () => {
    const { projectId } = await importHouse();
    const { rooms } = await client.projects.readProject({ id: projectId });
    await client.openings.editOpening({ id: rooms[0]!.openings[0]!.id, changes: { name: '\u6771' } });
    await expect(client.cuttings.drawCutPlan({ projectId })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ wrong: expect.stringContaining('\u6771') as string }] },
    });
  });
});

describe('papers', { timeout: 120_000 }, () => {
  test('the cut plan of a project: of what is likely, then of what is accepted', async () => {
    const { projectId, treatments } = await importHouse();
    const paper = await desk.desk.readPaper('cut-plan', projectId);
    expect(paper).toMatchObject({ name: 'Invented cut plans.pdf', type: 'application/pdf' });
    const likely = await readWords('cut-plan', projectId);
    expect(likely).toContain('It is for reference');
    expect(likely).toContain('Window 2 4');
    await client.treatments.editTreatment({ id: treatments[0]!.id, changes: { decision: 'good' } });
    const accepted = await readWords('cut-plan', projectId);
    expect(accepted).toContain('everything that the client accepted');
    expect(accepted).not.toContain('Window 2');
    expect(await desk.desk.readPaper('cut-plan', 'nobody')).toBeNull();
    const alone = await readWords('cut-plan', 'accepted');
    expect(alone).toContain('Window 1 4');
    expect(alone).not.toContain('Invented, Window');
  });

  test('one plan over all accepted projects: none while nothing is accepted', async () => {
    expect(await desk.desk.readPaper('cut-plan', 'accepted')).toBeNull();
    for (const length of [84, 90]) {
      const { treatments } = await importHouse([{ finishedLength: length, arrangement: 'single', widths: 1.5 }], {});
      await client.treatments.editTreatment({ id: treatments[0]!.id, changes: { decision: 'good' } });
    }
    const words = await readWords('cut-plan', 'accepted');
    expect(words).toContain('Invented and Invented 2');
    expect(words).toContain('Invented 2, Window 1 1');
    expect(words).toContain('Four cuts of two treatments on one piece');
  });

  test('work sheets are of the option accepted, and none of declined work', async () => {
    const stacks = { good: { behind: ['std-white'] }, best: { behind: ['soft-blackout'] } };
    const { projectId, treatments } = await importHouse([{ stacks }, { stacks }]);
    await client.treatments.editTreatment({ id: treatments[0]!.id, changes: { decision: 'best' } });
    await client.treatments.editTreatment({ id: treatments[1]!.id, changes: { decision: 'declined' } });
    const words = await readWords('work-sheets', projectId);
    expect(words).toContain('sheet 1 of 1');
    expect(words).toContain('Soft blackout');
  });
});
