/** Every fault of a job is told at once, whatever kind it is of: the schema's, the sense's, and what no cloth could make. */
import { ORPCError } from '@orpc/server';
import { describe, expect, it } from 'vitest';
import { priceRead } from '#main/desk/price-text.ts';
import { readJob } from '#shared/job-file/read-job.ts';

type Fields = Readonly<Record<string, unknown>>;

const bare = { behind: [] };
const panels = (name: string, fields: Fields = {}): Fields => ({
  name,
  face: 'short',
  kind: 'panels',
  heading: 'pinch-pleat',
  arrangement: 'pair',
  rodWidth: 72,
  finishedLength: 84,
  return: 3.5,
  overlap: 3.5,
  stacks: { good: bare, better: bare, best: bare },
  ...fields,
});
const window = (name: string, treatments: readonly Fields[], fields: Fields = {}): Fields => ({
  ...{ name, width: 60, height: 60, sill: 20 },
  ...fields,
  treatments,
});

function jobOf(windows: readonly Fields[], fields: Fields = {}, cloth: readonly Fields[] = []): unknown {
  return {
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    cloth: [
      ...cloth,
      { id: 'long', role: 'face', width: 54, price: '10/yd' },
      { id: 'short', role: 'face', width: 54, price: '10/yd', bolt: '1 yd' },
    ],
    rooms: [{ name: 'Room', use: 'living', openings: windows }],
    ...fields,
  };
}

function faultsOf(job: unknown): string[] {
  try {
    priceRead(readJob(job));
    return [];
  } catch (error) {
    if (!(error instanceof ORPCError)) throw error;
    const { faults } = error.data as { faults: readonly { path: string }[] };
    return faults.map(({ path }) => path);
  }
}

const at = (opening: number, treatment: number): string => `rooms[0].openings[${opening}].treatments[${treatment}]`;

describe('every fault at once', () => {
  it('a rod of -2 in hid that the cut of the next treatment is longer than its piece', () => {
    const treatments = [panels('First', { rodWidth: -2 }), panels('Second'), panels('Third', { face: 'long' })];
    expect(faultsOf(jobOf([window('Window', treatments)]))).toEqual([
      `${at(0, 0)}.rodWidth`,
      `${at(0, 1)}.finishedLength`,
    ]);
  });
  it('a window and a cloth that cannot be read are left out, and the places after them keep their numbers', () => {
    const windows = [
      window('A', [panels('First')], { width: 'wide' }),
      window('B', [panels('First', { face: 'broken' }), panels('Second', { kind: 'curtain' }), panels('Third')]),
    ];
    const broken = { id: 'broken', role: 'face', width: 0, price: '10/yd' };
    expect(faultsOf(jobOf(windows, {}, [broken])).sort()).toEqual(
      ['cloth[0].width', 'rooms[0].openings[0].width', `${at(1, 1)}.kind`, `${at(1, 2)}.finishedLength`].sort(),
    );
  });
  it('two of one name hide nothing', () => {
    expect(
      faultsOf(jobOf([window('Window', [panels('Same'), panels('Same', { header: 90, heading: 'rod-pocket' })])])),
    ).toEqual([`${at(0, 1)}.name`, `${at(0, 0)}.finishedLength`, `${at(0, 1)}.header`]);
  });
  it.each([
    ['client', { client: 5 }],
    ['currency', { currency: 'GROAT' }],
    ['proposal', { proposal: { date: 'tomorrow' } }],
    ['priceBook', { priceBook: 'cheap' }],
  ])('what is wrong with the %s says nothing of the cloth', (place, fields) => {
    const found = faultsOf(jobOf([window('Window', [panels('First')])], fields));
    expect(found.filter((path) => path.startsWith(place)).length).toBeGreaterThan(0);
    expect(found).toContain(`${at(0, 0)}.finishedLength`);
  });
  it.each([
    ['units', { units: 'ell' }],
    ['practice', { practice: { sideHem: -1 } }],
  ])('where everything hangs on the %s, nothing is guessed', (place, fields) => {
    const found = faultsOf(jobOf([window('Window', [panels('First')])], fields));
    expect(found.every((path) => path.startsWith(place))).toBe(true);
  });
  it('a sound job has none', () => {
    expect(faultsOf(jobOf([window('Window', [panels('First', { face: 'long' })])]))).toEqual([]);
  });
});
