import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import packageFile from '../../../package.json' with { type: 'json' };
import { PROGRAM_VERSION } from '#main/desk/program-version.ts';
import { ticks } from '#shared/length.ts';
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

async function makeOpening() {
  const { client: person, project } = await client.clients.addClient({ name: 'Ada' });
  const room = await client.rooms.addRoom({ projectId: project.id, fields: {} });
  const opening = await client.openings.addOpening({ roomId: room.id, fields: {} });
  return { person, project, room, opening };
}

test("the version on proposals is the program's", () => {
  expect(PROGRAM_VERSION).toBe(packageFile.version);
});

describe('what is added', () => {
  test('gets a name of its own among its siblings, and its place at the end', async () => {
    const { project, room, opening } = await makeOpening();
    const second = await client.rooms.addRoom({ projectId: project.id, fields: {} });
    const window2 = await client.openings.addOpening({ roomId: room.id, fields: {} });
    expect([room.name, second.name, opening.name, window2.name]).toEqual(['Room', 'Room 2', 'Window', 'Window 2']);
    expect([room.position, second.position]).toEqual([0, 1]);
  });

  test("starts from the decorator's units, currency and locale", async () => {
    await client.settings.editSettings({ changes: { units: 'mm', currency: 'PLN', locale: 'pl-PL' } });
    const { project } = await client.clients.addClient({ name: 'Zoë' });
    expect(project).toMatchObject({ units: 'mm', currency: 'PLN', locale: 'pl-PL', practice: null, priceBook: null });
  });

  test('under something that was taken away is refused by name', async () => {
    const { room } = await makeOpening();
    await client.rooms.removeRoom({ id: room.id });
    await expect(client.openings.addOpening({ roomId: room.id, fields: {} })).rejects.toMatchObject({
      code: 'NOT_FOUND',
      data: { what: 'room', id: room.id },
    });
  });
});

describe('the order changed by hand', () => {
  test('one that is added where another hangs comes before it', async () => {
    const { project, opening } = await makeOpening();
    for (const name of ['Drapery', 'Sheer'])
      await client.treatments.addTreatment({ openingId: opening.id, fields: { name } });
    await client.treatments.addTreatment({ openingId: opening.id, fields: { name: 'Valance', position: 0 } });
    const hung = (await client.projects.readProject({ id: project.id })).rooms[0]?.openings[0]?.treatments ?? [];
    expect(hung.map(({ name, position }) => [name, position])).toEqual([
      ['Valance', 0],
      ['Drapery', 1],
      ['Sheer', 2],
    ]);
  });

  test('is kept, and stands in the history', async () => {
    const { project, room, opening } = await makeOpening();
    const second = await client.openings.addOpening({ roomId: room.id, fields: {} });
    await client.openings.editOpening({ id: second.id, changes: { position: 0 } });
    await client.openings.editOpening({ id: opening.id, changes: { position: 1 } });
    const names = (await client.projects.readProject({ id: project.id })).rooms[0]?.openings.map(({ name }) => name);
    expect(names).toEqual(['Window 2', 'Window']);
    const [latest] = await client.history.listHistory({ projectId: project.id, most: 1 });
    expect(latest).toMatchObject({
      entity: 'opening',
      entityId: opening.id,
      verb: 'edited',
      changes: { position: { before: 0, after: 1 } },
    });
  });
});

describe('what is taken away', () => {
  test('comes back with all that was in it', async () => {
    const { project, room, opening } = await makeOpening();
    await client.treatments.addTreatment({ openingId: opening.id, fields: {} });
    const before = (await client.projects.readProject({ id: project.id })).rooms;
    await client.rooms.removeRoom({ id: room.id });
    expect((await client.projects.readProject({ id: project.id })).rooms).toEqual([]);
    await client.rooms.restoreRoom({ id: room.id });
    const after = (await client.projects.readProject({ id: project.id })).rooms;
    expect(after[0]!.openings).toEqual(before[0]!.openings);
  });

  test('a client takes her projects out of sight and brings them back', async () => {
    const { person, project } = await makeOpening();
    await client.clients.removeClient({ id: person.id });
    expect(await client.clients.listClients({})).toEqual([]);
    await expect(client.projects.readProject({ id: project.id })).rejects.toMatchObject({ code: 'NOT_FOUND' });
    await client.clients.restoreClient({ id: person.id });
    expect((await client.projects.readProject({ id: project.id })).client.id).toBe(person.id);
  });
});

describe('practice and price book', () => {
  test('bare lengths get the unit in which they were typed', async () => {
    const { project, opening } = await makeOpening();
    const settings = await client.settings.editSettings({
      changes: {
        practice: { bottomHem: 8, sideHem: '1 1/2' },
        priceBook: { labour: { billableWidth: 48, hour: '50' } },
      },
    });
    expect(settings.practice).toEqual({ bottomHem: '8 in', sideHem: '1 1/2 in' });
    expect(settings.priceBook).toEqual({ labour: { billableWidth: '48 in', hour: '50' } });
    const edited = await client.projects.editProject({
      id: project.id,
      changes: { units: 'cm', practice: { bottomHem: 20 } },
    });
    expect(edited.practice).toEqual({ bottomHem: '20 cm' });
    const treatment = await client.treatments.addTreatment({
      openingId: opening.id,
      fields: { practice: { squaring: 2 } },
    });
    expect(treatment.practice).toEqual({ squaring: '2 cm' });
  });

  test('settings keep what was not changed', async () => {
    const before = await client.settings.readSettings({});
    const after = await client.settings.editSettings({ changes: { holdsDays: 14 } });
    expect(after).toEqual({ ...before, holdsDays: 14 });
    expect(before).toMatchObject({ units: 'in', currency: 'USD', locale: 'en-US', priceBook: {}, holdsDays: 30 });
    expect(before.cancellation).toContain('law');
  });
});

describe('cloth', () => {
  test('gets a short code from its name, and no code twice', async () => {
    const add = (name: string) => client.cloth.addCloth({ projectId: null, fields: { name } });
    expect((await add('Réed Linen, 2nd!')).code).toBe('reed-linen-2nd');
    expect((await add('Reed linen 2nd')).code).toBe('reed-linen-2nd-2');
    expect((await add('窓')).code).toBe('cloth');
    await expect(client.cloth.addCloth({ projectId: null, fields: { code: 'cloth' } })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ path: 'fields.code' }] },
    });
  });

  test.each([
    [{ price: '42' }, 'changes.price'],
    [{ weight: 'heavy' }, 'changes.weight'],
    [{ colour: 'beige' }, 'changes.colour'],
    [{ family: 'standard' as const }, 'changes.family'],
  ])('refuses what could not be read: %j', async (changes, where) => {
    const cloth = await client.cloth.addCloth({ projectId: null, fields: { name: 'Linen' } });
    await expect(client.cloth.editCloth({ id: cloth.id, changes })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ path: where, wrong: expect.any(String), right: expect.any(String) }] },
    });
  });

  test('in use keeps its code and stays', async () => {
    const { opening } = await makeOpening();
    const cloth = await client.cloth.addCloth({ projectId: null, fields: { name: 'Linen' } });
    const treatment = await client.treatments.addTreatment({
      openingId: opening.id,
      fields: { stacks: { good: { face: 'linen', behind: [] }, better: null, best: null } },
    });
    await expect(client.cloth.removeCloth({ id: cloth.id })).rejects.toMatchObject({ code: 'REFUSED' });
    await expect(client.cloth.editCloth({ id: cloth.id, changes: { code: 'other' } })).rejects.toMatchObject({
      code: 'REFUSED',
    });
    await client.treatments.removeTreatment({ id: treatment.id });
    await client.cloth.removeCloth({ id: cloth.id });
    await client.cloth.addCloth({ projectId: null, fields: { name: 'Linen' } });
    await expect(client.cloth.restoreCloth({ id: cloth.id })).rejects.toMatchObject({ code: 'REFUSED' });
  });

  test('changing its role changes a family that no longer fits', async () => {
    const cloth = await client.cloth.addCloth({ projectId: null, fields: { name: 'Plain' } });
    expect(await client.cloth.editCloth({ id: cloth.id, changes: { role: 'lining' } })).toMatchObject({
      family: 'standard',
    });
  });
});

describe('history', () => {
  test('tells each act once, an edit that changes nothing never, and typing as one edit', async () => {
    const { opening, project } = await makeOpening();
    const edit = (width: number) => client.openings.editOpening({ id: opening.id, changes: { width: inches(width) } });
    await edit(6);
    await edit(60);
    await edit(60);
    desk.setClock('2026-11-25T13:00:00Z');
    await edit(61);
    await client.openings.removeOpening({ id: opening.id });
    await client.openings.restoreOpening({ id: opening.id });
    const told = await client.history.listHistory({ projectId: project.id });
    expect(told.map(({ entity, verb }) => `${entity} ${verb}`)).toEqual([
      'opening restored',
      'opening removed',
      'opening edited',
      'opening edited',
      'opening added',
      'room added',
      'project added',
    ]);
    expect(told[2]!.changes).toEqual({ width: { before: inches(60), after: inches(61) } });
    expect(told[3]!.changes).toEqual({ width: { before: null, after: inches(60) } });
  });

  test('an edit inside a project moves the project to the top of its client', async () => {
    const { person, room } = await makeOpening();
    await client.projects.addProject({ clientId: person.id, name: 'Later' });
    await client.rooms.editRoom({ id: room.id, changes: { name: 'Kitchen' } });
    const [summary] = await client.clients.listClients({});
    expect(summary!.projects.map(({ name, rooms, openings }) => [name, rooms, openings])).toEqual([
      ['First project', 1, 1],
      ['Later', 0, 0],
    ]);
  });
});

test('clients are found by letters without marks or case', async () => {
  for (const name of ['Zoë Świątek', 'Ada Fenn', 'Bo Løvås']) await client.clients.addClient({ name });
  const search = async (text: string) => (await client.clients.listClients({ search: text })).map(({ name }) => name);
  expect(await search('swiatek')).toEqual(['Zoë Świątek']);
  expect(await search('LOV')).toEqual(['Bo Løvås']);
  expect(await search('%')).toEqual([]);
  expect(await search('')).toEqual(['Ada Fenn', 'Bo Løvås', 'Zoë Świątek']);
});

test('a fault of ours is logged, and is no error that the contract names', async () => {
  await desk.desk.close();
  await expect(client.clients.listClients({})).rejects.toThrow('the desk is closed');
  expect(desk.faults).toHaveLength(1);
});
