/** One cause is told once: what the engine has warned of is not said again by what every paper says. */
import { describe, expect, it } from 'vitest';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { assembleWork } from '#app/proposal/assemble-work.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { GIVEN } from './sample-house.ts';

const HEAVY = ['inter-heavy', 'blackout-napped'];
const PANELS = {
  name: 'Panels',
  kind: 'panels',
  heading: 'pinch-pleat',
  arrangement: 'pair',
  mount: { where: 'wall', above: 6 },
  face: 'velvet',
  rodWidth: 80,
  finishedLength: 108,
  fullness: 3,
  return: 3.5,
  overlap: 3.5,
} as const;
const SHADE = {
  name: 'Shade',
  kind: 'roman-shade',
  style: 'flat',
  mount: { where: 'inside' },
  face: 'velvet',
  lift: 'cords',
  size: { basis: 'opening', widths: [36, 36, 36], lengths: [54, 54, 54] },
} as const;

function read(treatment: object, use: string): Job {
  const job = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented' },
    priceBook: 'example',
    cloth: [{ id: 'velvet', role: 'face', family: 'velvet', width: 54, weight: '16 oz/yd2', price: '70.00/yd' }],
    rooms: [
      {
        name: 'Room',
        use,
        openings: [{ name: 'Window', width: 60, height: 54, sill: 40, treatments: [treatment] }],
      },
    ],
  });
  if (!job.ok) throw new Error(job.faults.map(sayFault).join('\n'));
  return job.job;
}

function textsOf(job: Job): { readonly proposal: readonly string[]; readonly work: readonly string[] } {
  const result = priceJob(job);
  const paper = assembleProposal(job, result, GIVEN);
  const work = assembleWork(job, result, { date: '2026-11-25', number: null, chosen: {} });
  return {
    proposal: [...paper.windows.flatMap(({ notes }) => notes), ...paper.notes].map(({ says }) => says),
    work: work.pages.flatMap(({ notes }) => notes),
  };
}
const count = (texts: readonly string[], wanted: RegExp): number => texts.filter((text) => wanted.test(text)).length;

describe('a pair that is heavy under every option', () => {
  const stacks = { good: { behind: HEAVY }, better: { behind: HEAVY }, best: { behind: HEAVY } };
  const { proposal, work } = textsOf(read({ ...PANELS, stacks }, 'living'));

  it.each([
    ['the proposal', proposal],
    ['the work sheet', work],
  ])('has its weight told once on %s', (_paper, texts) => {
    expect(count(texts, /competent installer/u)).toBe(1);
  });
  it('keeps ladders, old paint and motors', () => {
    expect(count(proposal, /Work on ladders/u)).toBe(1);
  });
});

describe('a pair that is heavy under one option alone', () => {
  const stacks = { good: { behind: [] }, better: { behind: ['std-white'] }, best: { behind: HEAVY } };
  const light = { ...PANELS, finishedLength: 60, fullness: 2 };
  it('has weight told for the other options too', () => {
    const { proposal } = textsOf(read({ ...light, stacks }, 'living'));
    expect(count(proposal, /carry real weight/u)).toBe(1);
  });
});

describe.each(['living', 'child'])('cords within reach in a %s room', (use) => {
  const { proposal, work } = textsOf(read(SHADE, use));
  it.each([
    ['the proposal', proposal],
    ['the work sheet', work],
  ])('are told once on %s', (_paper, texts) => {
    expect(count(texts, /strangle/u)).toBe(1);
  });
});
