/** What a decorator knows of a cloth goes into the portfolio and out of it as it was, by file and by form. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { CARE_WAYS, HANDS, NEEDLE_WAYS, SOURCED_VALUES, VALUE_SOURCES } from '#shared/cloth.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { writeCloth } from '#shared/job-file/write-cloth.ts';
import { wireCloth } from '#shared/job-file/wire-job.ts';
import type { WireCloth, WireJob } from '#shared/job-file/wire-job.ts';
import { recordCloth } from '#main/desk/record-cloth.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { DeskClient, TestDesk } from './test-desk.ts';

let desk: TestDesk;
let client: DeskClient;
beforeEach(() => {
  desk = makeTestDesk();
  client = callDesk(desk);
});
afterEach(() => desk.remove());

const flat = (share: number): number[] => Array.from({ length: 16 }, () => share);

/** Every key that a cloth can have, once. */
const WHOLE: WireCloth = {
  id: 'fern-sateen',
  role: 'lining',
  family: 'blackout-soft',
  name: 'Fern sateen',
  width: 54,
  usableWidth: 53,
  repeat: { vertical: 12, horizontal: 6, match: 'half-drop', cutOnRepeat: true },
  railroad: true,
  content: { polyester: 70, cotton: 30 },
  weight: '5 oz/yd',
  colour: '#c9b79a',
  shade: '#f5ecd2',
  transmittance: 0.05,
  reflectance: 0.6,
  uv: { transmittance: 0.01, reflectance: 0.3 },
  solar: { transmittance: 0.06 },
  streetReflectance: { visible: 0.7, uv: 0.35 },
  spectra: { transmittance: flat(0.05), reflectance: flat(0.6) },
  transmittanceWithin: 0.01,
  thickness: 0.55,
  shrinkage: { length: 0.03, width: 0.01 },
  needle: 'closes',
  care: 'dry-clean',
  flame: { test: 'NFPA 701, test 2', certificate: 'invented certificate 1' },
  hand: 'soft',
  sources: { transmittance: 'measured-at-home', reflectance: 'assumed', weight: 'supplier' },
  price: '12.00/yd',
  supplier: 'Invented Mills',
  notes: 'coated side to the glass',
  oneWay: true,
  bolt: 2160,
  orderStep: 9,
  leastOrder: 36,
};
const jobWith = (...cloth: WireCloth[]): WireJob => ({
  linenfold: 1,
  units: 'in',
  currency: 'USD',
  client: { name: 'Invented client' },
  cloth,
  rooms: [],
});

async function roundTrip(job: WireJob): Promise<WireJob> {
  const { projectId } = await client.jobs.importJob({ text: JSON.stringify(job) });
  return JSON.parse((await client.jobs.exportJob({ projectId })).text) as WireJob;
}

describe('a cloth of a job file that is imported and exported', () => {
  test('has every key that it came with', async () => {
    const keys = new Set(wireCloth.options.flatMap((option) => Object.keys(option.shape)));
    expect(new Set(Object.keys(WHOLE))).toEqual(keys);
    expect((await roundTrip(jobWith(WHOLE))).cloth).toEqual([WHOLE]);
  });

  test('is kept though no treatment uses it, a face as well', async () => {
    const face: WireCloth = { id: 'spare', role: 'face', family: 'silk', name: 'Spare', width: 54, railroad: false };
    expect((await roundTrip(jobWith(face, WHOLE))).cloth).toEqual([face, WHOLE]);
  });

  test('is the same cloth to the engines, whatever is known of it and in every unit', () => {
    const share = fc.integer({ min: 0, max: 500 }).map((value) => value / 1000);
    const loss = fc.integer({ min: 0, max: 200 }).map((value) => value / 1000);
    const some = <T>(shape: Record<string, fc.Arbitrary<T>>) => fc.record(shape, { requiredKeys: [] });
    const bands = fc.array(share, { minLength: 16, maxLength: 16 });
    const known = fc.record(
      {
        transmittance: share,
        reflectance: share,
        uv: some({ transmittance: share, reflectance: share }),
        solar: some({ transmittance: share, reflectance: share }),
        streetReflectance: some({ visible: share, uv: share, solar: share }),
        spectra: fc.record({ transmittance: bands, reflectance: bands }),
        transmittanceWithin: loss,
        thickness: fc.integer({ min: 1, max: 5000 }).map((value) => value / 100),
        shrinkage: fc.record({ length: loss, width: loss }),
        needle: fc.constantFrom(...NEEDLE_WAYS),
        care: fc.constantFrom(...CARE_WAYS),
        flame: fc.record({ test: fc.constant('NFPA 701'), certificate: fc.constantFrom('a 1', 'b "2"') }),
        hand: fc.constantFrom(...HANDS),
        sources: fc.dictionary(fc.constantFrom(...SOURCED_VALUES), fc.constantFrom(...VALUE_SOURCES)),
      },
      { requiredKeys: [] },
    );
    const birth = { id: 'c', at: '2026-11-25T12:00:00.000Z' };
    fc.assert(
      fc.property(known, fc.constantFrom('in' as const, 'cm' as const, 'mm' as const), (told, unit) => {
        const given: WireCloth = { id: 'own', name: 'own', role: 'face', family: 'plain', width: 137.25, ...told };
        const written = writeCloth(recordCloth(given, 'p', birth, unit), unit)!;
        const [before, after] = [given, written].map((cloth) => readJob({ ...jobWith(cloth), units: unit }));
        expect(before?.ok).toBe(true);
        expect(after).toEqual(before);
      }),
      { numRuns: 200 },
    );
  });
});

describe('what the desk keeps of a form', () => {
  test('one share without the other, one spectrum of two, a test without its certificate: nothing is lost', async () => {
    const half = {
      visible: { transmittance: 0.2, reflectance: null },
      spectra: { transmittance: flat(0.2), reflectance: null },
      flame: { test: 'BS 5867-2, type B', certificate: '' },
      shrinkage: { length: 0.03, width: null },
    };
    const { id } = await client.cloth.addCloth({ projectId: null, fields: { name: 'Fern', ...half } });
    expect((await client.cloth.listCloth({})).find((each) => each.id === id)).toMatchObject(half);
  });

  test.each([
    ['of daylight', { visible: { transmittance: 0.6, reflectance: 0.5 } }, 'fields.visible'],
    ['of ultraviolet', { uv: { transmittance: 0.6, reflectance: 0.5 } }, 'fields.uv'],
    [
      'on the street side',
      { visible: { transmittance: 0.6, reflectance: 0.3 }, streetReflectance: { visible: 0.5 } },
      'fields.streetReflectance.visible',
    ],
    ['in one band', { spectra: { transmittance: flat(0.6), reflectance: flat(0.5) } }, 'fields.spectra'],
  ])('more light than there is, %s, is refused by name', async (_, fields, where) => {
    await expect(
      client.cloth.addCloth({ projectId: null, fields: { name: 'Too bright', ...fields } }),
    ).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ path: where, right: expect.stringContaining('sum to 1 at the most') as string }] },
    });
  });

  test('a lining of hers under the id of a generic one stands in its place in every project', async () => {
    const fields = { role: 'lining', family: 'standard', code: 'std-white', name: 'Mine, white' } as const;
    await client.cloth.addCloth({ projectId: null, fields: { ...fields, width: 438912 as never, price: '9.00/yd' } });
    const { project } = await client.clients.addClient({ name: 'Ada' });
    const exported = JSON.parse((await client.jobs.exportJob({ projectId: project.id })).text) as WireJob;
    expect(exported.cloth).toMatchObject([{ id: 'std-white', name: 'Mine, white', price: '9.00/yd' }]);
  });

  test('history tells what changed, before and after', async () => {
    const { id } = await client.cloth.addCloth({ projectId: null, fields: { name: 'Fern' } });
    await client.cloth.editCloth({ id, changes: { needle: 'closes', sources: { needle: 'measured' } } });
    const [told] = (await client.history.listHistory({})).filter((each) => each.verb === 'edited');
    expect(told?.changes).toMatchObject({ needle: { before: null, after: 'closes' } });
  });
});
