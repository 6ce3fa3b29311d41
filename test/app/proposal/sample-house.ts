/** Houses of our own invention, by the number of their windows, priced for real: what the papers are tested with. */
import type { Job } from '#shared/job.ts';
import { sayFault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { JobResult } from '#shared/result.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import type { ProposalGiven } from '#app/proposal/assemble-proposal.ts';
import type { ProposalPaper } from '#app/proposal/proposal-paper.ts';

type WireRoom = WireJob['rooms'][number];

/** A decorator's own invented rates: nothing is marked as example. */
export const OWN_RATES: WireJob['priceBook'] = {
  labour: {
    perWidth: { 'pinch-pleat': '38.00', 'pencil-pleat': '30.00' },
    interlining: '9.00',
    blackout: '6.00',
    installPerRod: '45.00',
  },
  cloth: {
    'std-white': '6.50/yd',
    'std-ivory': '6.50/yd',
    'combo-white': '11.00/yd',
    'dim-out': '9.00/yd',
    'blackout-3-pass': '9.50/yd',
    'soft-blackout': '16.00/yd',
    'blackout-napped': '17.50/yd',
    'black-sateen': '7.50/yd',
    'inter-light': '7.00/yd',
    'inter-med': '9.00/yd',
    'inter-heavy': '13.00/yd',
  },
  hardware: { rod: '9.00/ft', bracket: '14.00', ring: '1.50' },
  notions: { headingTape: '1.10/yd', hook: '0.20', weight: '0.45' },
  markup: { cloth: 1.0, hardware: 0.5, notions: 0.5 },
  tax: [{ name: 'Sales tax', rate: 0.0625, on: ['cloth', 'hardware'] }],
  deposit: { share: 0.5 },
  rounding: 'half-up',
};

const USES = [
  'nursery',
  'living',
  'bedroom',
  'study',
  'dining',
  'kitchen',
  'hall',
  'child',
  'media',
  'sunroom',
] as const;

export const LONG_NAME = 'Principal bedroom on the garden side of the first floor, with the window seat';
export const UNBROKEN = 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft';

export interface HouseGiven {
  readonly windows: number;
  readonly longNames?: boolean;
  readonly change?: Partial<WireJob>;
}

function room(index: number, windows: number, longNames: boolean): WireRoom {
  const name = longNames ? `${LONG_NAME} ${index + 1}` : `Room ${index + 1}`;
  return {
    name,
    use: USES[index % USES.length]!,
    facing: index % 2 === 0 ? 'E' : 'SW',
    climate: 'cold',
    ceiling: 108,
    openings: Array.from({ length: windows }, (_, i) => ({
      name: longNames && i === 0 ? UNBROKEN : `Window ${String.fromCharCode(65 + i)}`,
      width: 60,
      height: 54,
      sill: 26,
      at: 30 + 110 * i,
      glazing: 'double',
      heatSourceBelow: index % 3 === 1,
      treatments: [
        {
          name: 'Panels',
          kind: 'panels',
          heading: 'pinch-pleat',
          arrangement: 'pair',
          mount: { where: 'wall', above: 4 },
          face: index % 2 === 0 ? 'larch' : 'moss',
          rodWidth: 72,
          finishedLength: '84 1/2',
          return: 3.5,
          overlap: 3.5,
          ...(index === 0 && i === 0
            ? {
                stacks: {
                  good: { behind: ['std-white'] },
                  better: { behind: ['inter-med', 'std-white'] },
                  best: { behind: ['soft-blackout'] },
                },
              }
            : {}),
        },
      ],
    })),
  };
}

/** Two windows a room. */
export function houseOf({ windows, longNames = false, change = {} }: HouseGiven): Job {
  const rooms: WireRoom[] = [];
  for (let left = windows; left > 0; left -= 2) rooms.push(room(rooms.length, Math.min(2, left), longNames));
  const wire: WireJob = {
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    locale: 'en-US',
    client: {
      name: longNames ? 'Dr. Bartholomäus Łukasz Featherstonehaugh & Mrs. Éloïse d’Aubigné-Wrocławska' : 'Ada Fenn',
      email: 'ada@example.com',
      address: 'Larch House\n4 Mill Lane',
    },
    letterhead: {
      name: longNames
        ? 'The Very Long-Established Workroom of Thistle, Thread, Selvage & Daughters'
        : 'Thistle & Thread',
      lines: ['12 Weaver’s Row', 'hello@example.com'],
    },
    proposal: { number: '2026-014', date: '2026-11-25', validUntil: '2026-12-25' },
    priceBook: OWN_RATES,
    cloth: [
      {
        id: 'larch',
        role: 'face',
        family: 'print',
        name: 'Larch stripe',
        width: 54,
        repeat: { vertical: 27, horizontal: 27, match: 'straight' },
        content: { cotton: 100 },
        weight: '7 oz/yd2',
        colour: '#c9b79a',
        price: '42.00/yd',
      },
      {
        id: 'moss',
        role: 'face',
        family: 'woven',
        name: 'Moss linen',
        width: 54,
        content: { linen: 100 },
        weight: '9 oz/yd2',
        colour: '#8a9a7b',
        price: '58.00/yd',
      },
    ],
    rooms,
    ...change,
  };
  const read = readJob(wire);
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  return read.job;
}

export const GIVEN: ProposalGiven = {
  number: '2026-014',
  revision: 2,
  date: '2026-11-25',
  validUntil: '2026-12-25',
  audience: 'client',
};

export interface PricedPaper {
  readonly job: Job;
  readonly result: JobResult;
  readonly paper: ProposalPaper;
}

export function paperOf(house: HouseGiven, given: Partial<ProposalGiven> = {}): PricedPaper {
  const job = houseOf(house);
  const result = priceJob(job);
  return { job, result, paper: assembleProposal(job, result, { ...GIVEN, ...given }) };
}
