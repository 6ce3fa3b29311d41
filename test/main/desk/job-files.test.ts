import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { DeskClient, TestDesk } from './test-desk.ts';

const SAMPLE = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../reference/sample.job.json'), 'utf8'),
) as WireJob;

let desk: TestDesk;
let client: DeskClient;
beforeEach(() => {
  desk = makeTestDesk();
  client = callDesk(desk);
});
afterEach(() => desk.remove());

/** A job in centimetres that uses as many keys as one treatment can. */
const METRIC: WireJob = {
  linenfold: 1,
  units: 'cm',
  currency: 'EUR',
  locale: 'de-DE',
  client: { name: 'Jörg Öhm', address: 'Erfundene Gasse 1' },
  practice: {
    bottomHem: 16,
    lining: { shorter: 3 },
    headingAllowance: { 'pinch-pleat': { unlined: 20, lined: '4 in' } },
    widthRounding: 'half-up',
    orderExtra: 'none',
  },
  priceBook: {
    labour: {
      perWidth: { 'pinch-pleat': '31,50' },
      interlining: '9',
      blackout: '6',
      installPerRod: '40',
      hour: '50',
      billableWidth: 137,
    },
    cloth: {
      'std-white': '6.00/m',
      'std-ivory': '6.00/m',
      'combo-white': '9/m',
      'dim-out': '8/m',
      'blackout-3-pass': '9/m',
      'soft-blackout': '15/m',
      'blackout-napped': '16/m',
      'black-sateen': '7/m',
      'inter-light': '6/m',
      'inter-med': '8/m',
      'inter-heavy': '12/m',
    },
    hardware: { rod: '30/m', bracket: '12', ring: '1' },
    notions: { headingTape: '1/m', hook: '0.2', weight: '0.4' },
    markup: { cloth: '0.8', hardware: 0.4, notions: 0.5 },
    tax: [{ name: 'Steuer', rate: '0.19', on: ['cloth', 'hardware', 'notions', 'labour'] }],
    deposit: { share: 0.4 },
    rounding: 'half-even',
  },
  cloth: [
    {
      id: 'print',
      role: 'face',
      width: '137,2',
      usableWidth: 135,
      repeat: { vertical: '64.3', horizontal: 68, match: 'half-drop' },
      weight: '240 g/m2',
      price: '38,50/m',
      transmittance: 0.25,
      reflectance: 0.5,
    },
    { id: 'plain', role: 'face', name: 'Leinen', width: 140, price: '29/m', railroad: true },
    {
      id: 'satin',
      role: 'lining',
      family: 'standard',
      width: 140,
      shade: 'ivory',
      weight: '5 oz/yd',
      price: '7/m',
      uv: { transmittance: 0.1, reflectance: 0.3 },
      solar: { transmittance: 0.3, reflectance: 0.5 },
    },
  ],
  rooms: [
    {
      name: 'Stube',
      use: 'living',
      facing: null,
      ceiling: null,
      openings: [
        {
          name: 'Süd',
          width: '120,5',
          height: 140,
          glazing: 'triple',
          treatments: [
            {
              name: 'Schals',
              kind: 'panels',
              heading: 'pinch-pleat',
              arrangement: 'pair-stationary',
              face: 'print',
              rodWidth: '150.3',
              finishedLength: '214.65',
              return: { left: 8, right: 6 },
              widths: 1.5,
              quantity: 2,
              practice: { squaring: 4 },
              stacks: { good: { behind: [] }, better: { face: 'plain', behind: ['satin'] } },
            },
            {
              name: 'Einzel',
              kind: 'panels',
              heading: 'pinch-pleat',
              arrangement: 'single',
              mount: { where: 'ceiling' },
              face: 'plain',
              rodWidth: 90,
              finishedLength: 230,
              fullness: 2.25,
              return: 8,
            },
          ],
        },
      ],
    },
  ],
};

describe('a job file that is imported and exported', () => {
  test.each([
    ['the sample', SAMPLE],
    ['in centimetres, with its own practice and price book', METRIC],
    [
      'with neither return nor overlap, and a length as text',
      {
        ...SAMPLE,
        rooms: [
          {
            name: 'R',
            use: 'living',
            openings: [
              {
                name: 'O',
                width: `4' 1 1/2"`,
                height: 50,
                treatments: [
                  {
                    name: 'T',
                    kind: 'panels',
                    heading: 'pinch-pleat',
                    arrangement: 'pair',
                    face: 'reed-linen',
                    rodWidth: '60 1/64',
                    finishedLength: '214.6 cm',
                  },
                ],
              },
            ],
          },
        ],
      } satisfies WireJob,
    ],
  ])('prices to the very same result: %s', async (_name, job) => {
    const text = JSON.stringify(job);
    // Her own practice must not creep into a job that came with its own numbers.
    await client.settings.editSettings({
      changes: {
        practice: {
          bottomHem: 5,
          sideHem: 1,
          fullness: { 'pinch-pleat': 3 },
          repeatRule: 'add-one',
          lining: { shorter: 0 },
        },
      },
    });
    const { projectId } = await client.jobs.importJob({ text });
    const exported = await client.jobs.exportJob({ projectId });
    expect(await client.jobs.priceJob({ text: exported.text })).toEqual(await client.jobs.priceJob({ text }));
    const again = await client.jobs.importJob({ text: exported.text });
    expect(JSON.parse((await client.jobs.exportJob({ projectId: again.projectId })).text)).toEqual(
      JSON.parse(exported.text),
    );
  });

  test("without a price book takes the decorator's own", async () => {
    await client.settings.editSettings({ changes: { priceBook: 'example' } });
    const { projectId } = await client.jobs.importJob({ text: JSON.stringify({ ...SAMPLE, priceBook: undefined }) });
    const document = await client.projects.readProject({ id: projectId });
    expect(document.project.priceBook).toBeNull();
    const { text } = await client.jobs.exportJob({ projectId });
    expect(await client.jobs.priceJob({ text })).toEqual(await client.jobs.priceJob({ text: JSON.stringify(SAMPLE) }));
  });

  test('is named after its client and project', async () => {
    const { projectId } = await client.jobs.importJob({
      text: JSON.stringify({ ...SAMPLE, client: { name: 'Fenn / Reed: "both"' } }),
    });
    expect((await client.jobs.exportJob({ projectId })).fileName).toBe('Fenn - Reed- -both- Imported job.json');
  });

  test('with faults leaves nothing behind, and every fault is told', async () => {
    const text = JSON.stringify({ ...SAMPLE, units: 'ell', rooms: [{ name: 'R', use: 'moon', openings: [] }] });
    await expect(client.jobs.importJob({ text })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [expect.objectContaining({ path: 'units' }), expect.objectContaining({ path: 'rooms[0].use' })] },
    });
    const long = JSON.stringify({ ...SAMPLE, client: { name: 'x'.repeat(401) } });
    await expect(client.jobs.importJob({ text: long })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { faults: [{ path: 'client.name', wrong: 'has more than 400 letters', right: 'write it shorter' }] },
    });
    expect(await client.clients.listClients({})).toEqual([]);
    expect((await client.portfolio.readState({})).empty).toBe(true);
  });
});

describe('a job file is kept whole or refused by name, never kept as something else', () => {
  const [stripe, ...otherCloth] = SAMPLE.cloth!;
  const [nursery] = SAMPLE.rooms;
  const [east] = nursery!.openings;
  const [panels] = east!.treatments;
  const withCloth = (cloth: object): object => ({ ...SAMPLE, cloth: [cloth, ...otherCloth] });
  const withPanels = (fields: object): object => ({
    ...SAMPLE,
    rooms: [{ ...nursery, openings: [{ ...east, treatments: [{ ...panels, ...fields }] }] }],
  });
  test.each<[string, object]>([
    [
      'a lining of its own under the id of a generic one, for the lining engine to choose',
      {
        ...(withPanels({ stacks: undefined }) as WireJob),
        cloth: [stripe, { id: 'std-white', role: 'lining', family: 'standard', width: 60, price: '30.00/yd' }],
      },
    ],
    ['cloth that runs one way', withCloth({ ...stripe, oneWay: true })],
    ['cloth with a step of its own', withCloth({ ...stripe, orderStep: '1 yd', leastOrder: '5 yd' })],
    ['cloth without a name', withCloth({ ...stripe, name: undefined })],
    ['panels by widths', withPanels({ fullness: undefined, widths: 1.5 })],
    ['what the client accepted', withPanels({ decision: 'better' })],
    [
      'bolts, remnants, flaws and a fixed cut',
      {
        ...SAMPLE,
        cutting: {
          bolts: [{ cloth: stripe!.id, name: 'first', length: '60 yd', dyeLot: 'A7', startsAt: 5 }],
          remnants: [
            { cloth: stripe!.id, name: 'End of the hall', length: '2 yd', width: 30, dyeLot: 'A7' },
            { cloth: 'std-white', name: 'End', length: '3 1/2 yd' },
          ],
          flaws: [
            { cloth: stripe!.id, on: 'first', from: '20 yd', to: '21 1/2 yd' },
            { cloth: 'std-white', on: 'bolt 1', from: '1 yd', to: '2 yd' },
            { cloth: stripe!.id, on: 'End of the hall', from: 1, to: 2 },
          ],
          fixed: [
            {
              cloth: stripe!.id,
              treatment: `${nursery!.name}/${east!.name}/${panels!.name}`,
              cut: 2,
              on: 'first',
              at: 22,
            },
          ],
        },
      },
    ],
    [
      'panels in a bay',
      withPanels({ rodWidth: undefined, bay: { runs: [30, 60, 30], turns: [45, 45], projection: 4 } }),
    ],
  ])('%s', async (_name, job) => {
    const text = JSON.stringify(job);
    const priced = await client.jobs.priceJob({ text }).catch(() => null);
    const imported = await client.jobs.importJob({ text }).catch((error: unknown) => error);
    if (imported instanceof Error) {
      const { code, data } = imported as Error & { code: string; data: { faults: { path: string }[] } };
      expect(code).toBe('BAD_INPUT');
      expect(data.faults.map((fault) => fault.path).join(' ')).toMatch(/^(cloth|rooms)\[0|^cloth\[1/);
      // The engines take it: what is refused is the keeping alone.
      expect(priced).not.toBeNull();
      return;
    }
    const { text: exported } = await client.jobs.exportJob(imported as { projectId: string });
    expect(await client.jobs.priceJob({ text: exported })).toEqual(priced);
  });
});

test('pricing and proposing a job file and printing schemas need no portfolio', async () => {
  const text = JSON.stringify(SAMPLE);
  const hung = SAMPLE.rooms.flatMap(({ openings }) => openings.flatMap(({ treatments }) => treatments));
  expect((await client.jobs.priceJob({ text })).treatments).toHaveLength(hung.length);
  const { pdf, pages } = await client.jobs.proposeJob({ text });
  expect(Buffer.from(pdf, 'base64').toString('latin1', 0, 5)).toBe('%PDF-');
  expect(pages).toBeGreaterThan(0);
  expect((await client.jobs.writeSchema({ of: 'job' })).schema).toMatchObject({ type: 'object' });
  expect(existsSync(path.join(desk.folder, 'data'))).toBe(false);
});

test('the sample of the command line is the sample household', () => {
  const household = readFileSync(path.join(import.meta.dirname, '../../../main/desk/sample-household.json'), 'utf8');
  expect(SAMPLE).toEqual(JSON.parse(household));
});

test('the sample hangs every kind, and most headings and styles', () => {
  const hung = SAMPLE.rooms.flatMap(({ openings }) => openings.flatMap(({ treatments }) => treatments));
  expect([...new Set(hung.map(({ kind }) => kind))].sort()).toEqual([
    'bed-skirt',
    'cornice',
    'panels',
    'roman-shade',
    'shower-curtain',
    'swags',
    'valance',
  ]);
  const headings = hung.flatMap((each) => (each.kind === 'panels' ? [each.heading] : []));
  const folds = hung.flatMap((each) => (each.kind === 'roman-shade' ? [each.style] : []));
  expect(new Set(headings).size).toBeGreaterThanOrEqual(4);
  expect(new Set(folds).size).toBe(3);
});
