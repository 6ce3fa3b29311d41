/** One invented house with every kind of treatment, priced by the program's example rates. */
import type { Job } from '#shared/job.ts';
import { sayFault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { JobResult, TierResult } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { priceJob } from '#app/pricing/price-job.ts';

type WireRoom = WireJob['rooms'][number];
type WireOpening = NonNullable<WireRoom['openings']>[number];
type WireTreatment = WireOpening['treatments'][number];

const face = (id: string, name: string, colour: string): NonNullable<WireJob['cloth']>[number] => ({
  id,
  role: 'face',
  family: 'plain',
  name,
  width: '54 in',
  content: { cotton: 100 },
  weight: '7 oz/yd2',
  colour,
  price: '40.00/yd',
});

function opening(name: string, treatments: WireTreatment[], change: Partial<WireOpening> = {}): WireOpening {
  return {
    name,
    width: '60 in',
    height: '54 in',
    sill: '30 in',
    glazing: 'double',
    heatSourceBelow: false,
    treatments,
    ...change,
  };
}

const room = (name: string, use: WireRoom['use'], openings: WireOpening[]): WireRoom => ({
  name,
  use,
  facing: 'E',
  climate: 'cold',
  ceiling: '108 in',
  openings,
});

const WALL = { where: 'wall', above: '6 in' } as const;
const valance = { kind: 'valance', mount: WALL, width: '74 in', finishedLength: '16 in' } as const;
const skirt = { kind: 'bed-skirt', bed: { width: '60 in', length: '80 in' }, drop: '14 in' } as const;

export const KINDS_HOUSE: WireJob = {
  linenfold: 1,
  units: 'in',
  currency: 'USD',
  locale: 'en-US',
  client: { name: 'Ada Fenn', address: 'Larch House' },
  letterhead: { name: 'Thistle & Thread', lines: ['12 Weaver’s Row'] },
  proposal: { number: '2026-014', date: '2026-11-25', validUntil: '2026-12-25' },
  priceBook: 'example',
  cloth: [
    {
      ...face('larch', 'Larch stripe', '#c9b79a'),
      repeat: { vertical: '27 in', horizontal: '27 in', match: 'straight' },
    },
    face('moss', 'Moss linen', '#8a9a7b'),
    face('brick', 'Brick twill', '#9a4f46'),
    face('straw', 'Straw twill', '#d9c08c'),
    face('sky', 'Sky cotton', '#a9b3bd'),
  ],
  rooms: [
    room('Nursery', 'nursery', [
      opening(
        'East window',
        [
          {
            name: 'Flat shade',
            kind: 'roman-shade',
            style: 'flat',
            face: 'larch',
            mount: { where: 'inside' },
            size: {
              basis: 'opening',
              widths: ['34 1/2 in', '34 1/2 in', '34 5/8 in'],
              lengths: ['58 in', '58 1/4 in', '58 in'],
            },
          },
        ],
        { width: '34.5 in', height: '58 in', sill: '24 in' },
      ),
      opening('North window', [
        {
          name: 'Soft shade',
          kind: 'roman-shade',
          style: 'soft-fold',
          face: 'moss',
          mount: { where: 'wall', above: '3 in' },
          size: { basis: 'finished', width: '66 in', length: '60 in' },
          valance: { depth: '8 in' },
          lift: 'cords',
        },
      ]),
    ]),
    room('Sitting room', 'living', [
      opening('Bay', [
        {
          name: 'Panels',
          kind: 'panels',
          heading: 'pinch-pleat',
          arrangement: 'pair',
          mount: { where: 'wall', above: '4 in' },
          face: 'larch',
          rodWidth: '72 in',
          finishedLength: '84 in',
          return: '3.5 in',
          overlap: '3.5 in',
          bands: [{ edge: 'leading', cloth: 'straw', width: '3 in' }],
        },
        {
          ...valance,
          name: 'Box valance',
          style: 'box-pleated',
          face: 'moss',
          width: '80 in',
          return: '6.5 in',
          over: '3.5 in',
          pleats: 3,
          welt: 'straw',
        },
      ]),
      opening(
        'Door',
        [
          {
            name: 'Swags',
            kind: 'swags',
            style: 'overlapped',
            face: 'brick',
            width: '88 in',
            finishedLength: '18 in',
            return: '3.5 in',
            swags: 3,
            mount: WALL,
            cascades: { longest: '42 in', shortest: '18 in', width: '11 in' },
            jabots: { longest: '20 in', shortest: '10 in', width: '9 in', count: 2 },
            contrast: 'straw',
          },
        ],
        { width: '76 in', height: '80 in', sill: 0 },
      ),
    ]),
    room('Dining room', 'dining', [
      opening('Window A', [
        {
          name: 'Cornice',
          kind: 'cornice',
          face: 'larch',
          width: '74 in',
          finishedLength: '14 in',
          return: '5.5 in',
          mount: WALL,
          topWelt: 'straw',
          welt: 'straw',
        },
      ]),
      opening('Window B', [
        {
          ...valance,
          name: 'Balloon',
          style: 'balloon',
          face: 'sky',
          finishedLength: '20 in',
          return: '3.5 in',
          rod: { diameter: '1 in', header: '1 in' },
        },
      ]),
      opening('Window C', [{ ...valance, name: 'Tailored', style: 'tailored', face: 'brick', return: '5.5 in' }]),
      opening('Window D', [
        { ...valance, name: 'Gathered', style: 'gathered', face: 'sky', rod: { diameter: '1 in' }, return: '3.5 in' },
      ]),
    ]),
    room('Bedroom', 'bedroom', [
      opening('Bed', [{ ...skirt, name: 'Tailored skirt', style: 'tailored', face: 'sky', deck: 'std-white' }]),
      opening('Day bed', [
        { ...skirt, name: 'Box skirt', style: 'box-pleated', face: 'moss', against: 'long-side', splitCorners: true },
      ]),
      opening('Guest bed', [{ ...skirt, name: 'Gathered skirt', style: 'gathered', face: 'sky' }]),
      opening('Window', [
        { ...valance, name: 'Scallops', style: 'scalloped', face: 'straw', scallopDepth: '4 in', return: '3.5 in' },
      ]),
    ]),
    room('Bath', 'bath', [
      opening('Shower', [
        {
          name: 'Shower curtain',
          kind: 'shower-curtain',
          arrangement: 'one-piece',
          face: 'sky',
          finishedWidth: '72 in',
          finishedLength: '72 in',
          liner: 'bought',
        },
      ]),
      opening('Window', [
        {
          name: 'Café tiers',
          kind: 'panels',
          heading: 'grommet',
          arrangement: 'pair',
          mount: { where: 'inside' },
          face: 'moss',
          rodWidth: '59.5 in',
          finishedLength: '28 in',
          return: 0,
          overlap: 0,
          cafe: true,
        },
        {
          name: 'Relaxed shade',
          kind: 'roman-shade',
          style: 'relaxed',
          face: 'sky',
          mount: { where: 'wall', above: '3 in' },
          size: { basis: 'finished', width: '64 in', length: '58 in' },
        },
      ]),
    ]),
  ],
};

export interface KindsHouse {
  readonly job: Job;
  readonly result: JobResult;
  readonly treatments: readonly Treatment[];
  /** The advised option of a treatment, by its name. */
  readonly find: (name: string) => { readonly treatment: Treatment; readonly made: TierResult };
}

export function kindsHouse(change: Partial<WireJob> = {}): KindsHouse {
  const read = readJob({ ...KINDS_HOUSE, ...change });
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const result = priceJob(read.job);
  if (result.faults.length > 0) throw new Error(result.faults.map(sayFault).join('\n'));
  const treatments = read.job.rooms.flatMap((each) => each.openings.flatMap((one) => one.treatments));
  return {
    job: read.job,
    result,
    treatments,
    find: (name) => {
      const treatment = treatments.find((each) => each.name === name);
      const own = result.treatments.find((each) => each.key === treatment?.key);
      if (treatment === undefined || own === undefined) throw new Error(`no treatment ${name}`);
      return { treatment, made: own.tiers[own.advised.tier] };
    },
  };
}
