/**
 * Seams of a blackout behind panels: none where a wide one can run sideways, else counted, and behind those of the face
 * where it is as wide (common practice). Figures are worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthIn } from '#shared/length.ts';
import { jobOf } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

type Lining = NonNullable<PanelsCase['linings']>[number];

const BLACKOUT = { id: 'b', role: 'lining', family: 'blackout-3-pass', name: 'Dark', price: '4/yd' } as const;

function lined(lining: Partial<Lining>, panels: PanelsCase['panels'] = {}, cloth: PanelsCase['cloth'] = {}) {
  const stack = { behind: ['b'] };
  const stacks = { good: stack, better: stack, best: stack };
  const own = { ...BLACKOUT, width: 54, ...lining } as Lining;
  const read = readJob(jobOf({ linings: [own], cloth, panels: { return: 3.5, ...panels, stacks } }));
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const tier = priceJob(read.job, read.warnings, { plan: false }).treatments[0]?.tiers.good;
  const line = tier?.takeoff[1];
  if (!tier || !line) throw new Error('no lining');
  return {
    line,
    yards: lengthIn(line.plan, 'yd'),
    step: (id: string) => tier.working.find((each) => each.id === `layer-1-${id}`),
    advice: tier.judgement.advice.filter(({ rule }) => rule === 'blackout-seams').map(({ says }) => says),
  };
}

/** One panel on 120 in, both returns: 127 x 2.5 = 317.5 in, 6 widths of 54, 324 - 6 = 318 in made. */
const WIDE = { arrangement: 'one-way', rodWidth: 120 } as const;

describe('a wide blackout was laid upright with two seams', () => {
  it('runs sideways without a seam although that takes more: 318 in, 8.83 yd, instead of 3 × 90 in, 7½ yd', () => {
    const { line, yards, step, advice } = lined({ width: 118, railroad: true }, WIDE);
    expect([line.railroaded, line.halfWidths]).toEqual([true, null]);
    expect(yards).toBeCloseTo(318 / 36, 4);
    expect(step('widths')).toMatchObject({
      formula: 'the cut fits across the cloth: no seams; 8.83 yd instead of 7½ yd in 3 widths',
      rests: 'no seam in a blackout that can run sideways: each is a line of daylight',
    });
    expect([step('seams'), advice]).toEqual([undefined, []]);
  });
  it('another wide lining takes the way with less cloth', () => {
    expect(lined({ family: 'standard', width: 118, railroad: true }, WIDE).line.railroaded).toBe(false);
  });
  it('a single width has no seam to spare', () => {
    const { line, step } = lined({ width: 118, railroad: true }, { arrangement: 'single', rodWidth: 24, fullness: 2 });
    expect(line.railroaded).toBe(false);
    expect(step('seams')).toMatchObject({ value: '0', rests: 'a blackout without a seam' });
  });
  it.each([
    ['one that may not run sideways', { width: 118 }, {}],
    ['one that is too narrow for the cut: 110 in of 108', { width: 108, railroad: true }, { finishedLength: 104 }],
  ])('%s has its seams counted and told', (_, lining, panels) => {
    const { line, step, advice } = lined(lining, { ...WIDE, ...panels });
    expect(line.railroaded).toBe(false);
    expect(step('seams')?.value).toBe('2');
    expect(advice).toEqual([
      'Dark has 2 seams, which do not lie behind those of the face and may show as lines of daylight: take it as wide as the face, or wide enough to run sideways without a seam.',
    ]);
  });
});

describe('seams of a blackout were not counted', () => {
  it('as wide as the face: 6 widths in one panel are 5 seams, behind those of the face', () => {
    const { step, advice } = lined({}, WIDE);
    expect(step('seams')).toMatchObject({ value: '5', rests: 'behind the seams of the face, where they show least' });
    expect(advice).toEqual([]);
  });
  it('204 in made in 45 in are 5 widths, 2½ a panel, with two seams in each', () => {
    const { step, advice } = lined({ width: 45 }, { rodWidth: 60 });
    expect(step('seams')?.value).toBe('4');
    expect(advice).toHaveLength(1);
  });
  it('behind a face that runs sideways no seam has one before it', () => {
    // 251 1/4 and 4 hems of 3 are 263 1/4 in sideways, where 3 widths are 300.
    const { advice } = lined({ width: 118 }, { rodWidth: 90, overlap: 3.5 }, { width: 118, railroad: true });
    expect(advice).toHaveLength(1);
  });
});
