/** Prices: lines sum to totals, tax and deposit by their rules, missing rates by name. Amounts are worked by hand. */
import { describe, expect, it } from 'vitest';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { billableWidths } from '#app/estimating/billable-widths.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { writeSchema } from '#shared/job-file/write-schema.ts';
import { lengthFrom } from '#shared/length.ts';
import { TIERS } from '#shared/words.ts';
import { jobOf } from '../estimating/panels-case.ts';
import type { PanelsCase } from '../estimating/panels-case.ts';

const STACKS = {
  good: { behind: ['std-white'] },
  better: { behind: ['inter-med', 'std-white'] },
  best: { behind: ['soft-blackout'] },
};
const EXAMPLE: PanelsCase = {
  cloth: { repeat: { vertical: 27 } },
  panels: { rodWidth: 72, finishedLength: 84, fullness: 2.5, return: 3.5, overlap: 3.5, stacks: STACKS },
};
/** Her own rates: no notions, no hardware. */
const OWN: WireJob['priceBook'] = {
  labour: { perWidth: { 'pinch-pleat': '38.00' }, interlining: '9.00', blackout: '6.00', installPerRod: '45.00' },
  cloth: { 'std-white': '6.50/yd', 'inter-med': '9.00/yd', 'soft-blackout': '16.00/yd' },
  markup: { cloth: 1.0, hardware: 0.5 },
  tax: [{ name: 'Sales tax', rate: 0.0625, on: ['cloth', 'hardware'] }],
  deposit: { share: 0.5 },
};

function read(given: PanelsCase, priceBook: WireJob['priceBook'] = OWN): Job {
  const job = readJob({ ...jobOf(given), priceBook });
  if (!job.ok) throw new Error(job.faults.map(sayFault).join('\n'));
  return job.job;
}

describe('three prices', () => {
  const job = read(EXAMPLE);
  const result = priceJob(job);
  const tiers = result.treatments[0]!.tiers;

  it.each([
    // 12.75 yd × 42 × 2, 10 yd × 6.50 × 2, 4 × 38, 45
    ['good', [107100, 13000, 15200, 4500]],
    // interlining 4 × 88 in = 9.78 yd, up to 10 × 9 × 2; 4 × 9 for working it
    ['better', [107100, 18000, 13000, 15200, 3600, 4500]],
    ['best', [107100, 32000, 15200, 2400, 4500]],
  ] as const)('%s: each line by hand', (tier, amounts) => {
    expect(tiers[tier].price?.lines.map((line) => line.amount)).toEqual(amounts);
  });

  it('lines sum to the treatment, treatments to the net, net and tax to the total', () => {
    for (const tier of TIERS) {
      const price = tiers[tier].price!;
      expect(price.lines.reduce((sum, line) => sum + line.amount, 0)).toBe(price.total);
      const totals = result.totals![tier];
      expect(totals.net).toBe(price.total);
      expect(totals.taxes.reduce((sum, tax) => sum + tax.amount, 0)).toBe(totals.tax);
      expect(totals.total).toBe(totals.net + totals.tax);
    }
  });

  it('tax on the rounded base of its kinds: 6.25 % of 1201.00 is 75.06 (half up of 75.0625)', () => {
    expect(result.totals!.good.taxes).toEqual([{ name: 'Sales tax', amount: 7506 }]);
    expect(result.totals!.good.deposit).toBe(Math.round((107100 + 13000 + 15200 + 4500 + 7506) / 2));
  });

  it('quantity multiplies cuts, labour and hanging, and the order is rounded once', () => {
    const two = priceJob(read({ ...EXAMPLE, panels: { ...EXAMPLE.panels, quantity: 2 } }));
    const lines = two.treatments[0]!.tiers.good.price!.lines;
    // 7 × 108 + 100 = 856 in + 27 = 883 in = 24.53, up to 24.75 yd.
    expect(lines.map((line) => line.amount)).toEqual([207900, 26000, 30400, 9000]);
  });

  it('what is not sold is left out and said', () => {
    expect(result.warnings.map((warning) => warning.path)).toEqual(['priceBook.hardware', 'priceBook.notions']);
  });
});

describe('missing rates', () => {
  it('each is named once, with its place in the price book, and nothing is totalled', () => {
    const result = priceJob(read(EXAMPLE, {}));
    expect(result.missingRates.map((rate) => rate.rate)).toEqual([
      'cloth.std-white',
      'labour.perWidth.pinch-pleat',
      'labour.installPerRod',
      'cloth.inter-med',
      'labour.interlining',
      'cloth.soft-blackout',
      'labour.blackout',
    ]);
    expect(result.totals).toBeNull();
  });

  it('example rates fill them, and the result says so', () => {
    const result = priceJob(read(EXAMPLE, 'example'));
    expect(result).toMatchObject({ missingRates: [], exampleRates: true });
    expect(result.totals).not.toBeNull();
  });
});

describe('billable widths', () => {
  const line = priceJob(read(EXAMPLE)).treatments[0]!.tiers.good.takeoff[0]!;
  const cloth = resolveCloth('std-white', [])!;
  const of = (width: number, halfWidths: number): number => {
    const usableWidth = lengthFrom(width, 'in');
    return billableWidths({ ...cloth, usableWidth }, { ...line, halfWidths }, lengthFrom(54, 'in'));
  };
  it('LB-01: 2 widths of 118 in bill as 5 (a workroom, printed rule; record in estimating-examples.json)', () => {
    expect(of(118, 4)).toBe(5);
  });
  it.each([
    [54, 8, 4],
    [55, 8, 4],
    [48, 16, 8],
    [54, 7, 4],
  ])('%d in wide, %d half widths bill as %d (common practice)', (width, halves, wanted) => {
    expect(of(width, halves)).toBe(wanted);
  });
});

describe('the wire result', () => {
  const job = read(EXAMPLE);
  const written = writeResult(job, priceJob(job));

  it('validates against the printed schema by an independent validator (ajv, JSON Schema 2020-12)', () => {
    const ajv = new Ajv2020({ strict: false, allErrors: true });
    const validate = ajv.compile(writeSchema('result') as object);
    expect(validate(JSON.parse(JSON.stringify(written))), JSON.stringify(validate.errors)).toBe(true);
  });

  it('a job file validates against the printed job schema, and one with an unknown key does not', () => {
    const ajv = new Ajv2020({ strict: false, allErrors: true });
    const validate = ajv.compile(writeSchema('job') as object);
    const wire = { ...jobOf(EXAMPLE), priceBook: OWN };
    expect(validate(JSON.parse(JSON.stringify(wire))), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...wire, unknown: 1 })).toBe(false);
  });

  it('carries the worked figures: 4 widths, 108, 12, 11.7778 and 12.75 yd', () => {
    expect(written.treatments[0]!.tiers.good.takeoff[0]).toMatchObject({
      widths: 4,
      cuts: 4,
      fullnessMade: 2.4727,
      plainCut: 100,
      cutLength: 108,
      repeatsPerCut: 4,
      length: 432,
      yards: 12,
      metres: 10.9728,
      planYards: 11.7778,
      orderYards: 12.75,
      orderMetres: 11.6586,
    });
    expect(written.plan[0]).toMatchObject({
      cloth: 'face',
      tier: 'good',
      yards: 11.7778,
      orderYards: 12.75,
      handbookYards: 12,
      bound: 11.7778,
    });
  });

  it('the same job gives the same result, to the letter', () => {
    expect(JSON.stringify(writeResult(job, priceJob(job)))).toBe(JSON.stringify(written));
  });
});

describe('stacks', () => {
  it('absent tiers are chosen by the lining engine, with a reason, and none is offered twice', () => {
    const result = priceJob(
      read({ ...EXAMPLE, panels: { ...EXAMPLE.panels, stacks: { good: { behind: ['std-white'] } } } }, 'example'),
    );
    const { good, better, best } = result.treatments[0]!.tiers;
    expect(good.chosen).toBeNull();
    expect(better.chosen?.why).toBeTruthy();
    expect(new Set([good, better, best].map((tier) => tier.stack.behind.join('+'))).size).toBe(3);
  });

  it('an option in a plain cloth of its own is made, though the others place their pattern', () => {
    const more: WireJob['cloth'] = [{ id: 'plain', role: 'face', width: 54, price: '20.00/yd' }];
    const placed = { ...EXAMPLE.panels, pattern: { place: 'top' } } as const;
    const own = { ...placed, stacks: { ...STACKS, good: { face: 'plain', behind: ['std-white'] } } };
    const { faults, treatments } = priceJob(read({ ...EXAMPLE, more, panels: own }, 'example'));
    expect(faults).toEqual([]);
    const [good, better] = [treatments[0]!.tiers.good, treatments[0]!.tiers.better];
    expect(good.takeoff[0]?.pattern).toBeUndefined();
    expect(better.takeoff[0]?.pattern?.place).toBe('top');
    const plain = priceJob(read({ ...EXAMPLE, more, panels: { ...placed, face: 'plain' } }, 'example'));
    expect(plain.faults.map(({ path }) => path)).toEqual([expect.stringMatching(/pattern\.place$/)]);
  });

  it('an advised tier never carries a stop', () => {
    const result = priceJob(read({ ...EXAMPLE, panels: { ...EXAMPLE.panels, stacks: {} } }, 'example'));
    const treatment = result.treatments[0]!;
    expect(treatment.tiers[treatment.advised.tier].judgement.advice.some((advice) => advice.level === 'stop')).toBe(
      false,
    );
  });
});
