/** What must hold of the joint plans of every house, whatever hangs in it. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJob } from '#app/pricing/plan-job.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob, WireTreatment } from '#shared/job-file/wire-job.ts';
import { expectSound } from '../plan/check-layout.ts';

const HOUSE = JSON.parse(
  readFileSync(new URL('../../reference/every-kind.job.json', import.meta.url), 'utf8'),
) as WireJob;
const KINDS = HOUSE.rooms.flatMap((room) => room.openings.flatMap((opening) => opening.treatments));

const PRINT = {
  id: 'print',
  role: 'face',
  width: 54,
  price: '40/yd',
} as const;

/** Panels of any size in the print, or one of the treatments of the house with every kind in it. */
const treatment: fc.Arbitrary<WireTreatment> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.record({
      name: fc.constant('Panels'),
      kind: fc.constant('panels' as const),
      heading: fc.constantFrom('pinch-pleat' as const, 'tab' as const, 'flat' as const),
      arrangement: fc.constantFrom('pair' as const, 'single' as const, 'one-way' as const),
      mount: fc.constant({ where: 'wall' as const }),
      face: fc.constant('print'),
      rodWidth: fc.integer({ min: 80, max: 560 }).map((value) => value / 4),
      finishedLength: fc.integer({ min: 100, max: 440 }).map((value) => value / 4),
      quantity: fc.integer({ min: 1, max: 3 }),
      return: fc.constant(3.5),
      practice: fc.constantFrom({}, { widthRounding: 'half-up' as const }),
      stacks: fc.constant<WireTreatment['stacks']>({
        good: { behind: ['std-white'] },
        better: { behind: ['std-white'] },
        best: { behind: ['soft-blackout'] },
      }),
    }),
  },
  { weight: 2, arbitrary: fc.constantFrom(...KINDS) },
);

const cloth = fc.record({
  vertical: fc.integer({ min: 20, max: 140 }).map((value) => value / 4),
  match: fc.constantFrom('none' as const, 'straight' as const, 'half-drop' as const),
  usableWidth: fc.constantFrom(54, 52.5),
});

function houseWith(
  treatments: readonly WireTreatment[],
  { vertical, match, usableWidth }: { vertical: number; match: 'none' | 'straight' | 'half-drop'; usableWidth: number },
): WireJob {
  const print = { ...PRINT, usableWidth, repeat: { vertical, match } };
  return {
    ...HOUSE,
    cloth: [...(HOUSE.cloth ?? []), print],
    rooms: [
      {
        name: 'Room',
        use: 'bedroom',
        openings: treatments.map((each, index) => ({
          ...{ name: `Window ${index}`, width: 60, height: 54, sill: 30, treatments: [each] },
        })),
      },
    ],
  };
}

describe('a house of any treatments', () => {
  it(
    'every plan is sound, between its bound and the chart, and orders no more than each alone',
    { timeout: 120_000 },
    () => {
      let plans = 0;
      let saved = 0;
      fc.assert(
        fc.property(fc.array(treatment, { minLength: 1, maxLength: 5 }), cloth, (treatments, print) => {
          const read = readJob(houseWith(treatments, print));
          if (!read.ok) return;
          for (const of of ['good', 'best'] as const)
            for (const planned of planJob(read.job, of, { budget: 2_000 }).plans) {
              const { plan, input, handbook, alone, order, orderAlone } = planned;
              const anyLot = plan.bolts.map((bolt) => ({ ...bolt, dyeLot: 'any' }));
              expectSound(input, { ...plan, bolts: anyLot });
              expect(plan.ordered).toBeLessThanOrEqual(handbook);
              // Laid one after another, each treatment runs on to the next whole repeat before the next begins.
              const sets = new Set(input.cuts.map(({ set }) => set)).size;
              expect(plan.ordered).toBeLessThanOrEqual(alone + (sets - 1) * (input.repeat?.vertical ?? 0));
              expect(order).toBeLessThanOrEqual(orderAlone);
              plans += 1;
              saved += orderAlone - order;
            }
        }),
        { numRuns: 150, seed: 20 },
      );
      expect(plans).toBeGreaterThan(300);
      expect(saved).toBeGreaterThan(0);
    },
  );

  it('windows in another order take the same cloth', { timeout: 60_000 }, () => {
    const ordersOf = (treatments: readonly WireTreatment[], print: Parameters<typeof houseWith>[1]) => {
      const read = readJob(houseWith(treatments, print));
      if (!read.ok) return null;
      const { plan } = priceJob(read.job);
      return plan
        .map(({ cloth: id, tier, plan: laid, order, bound }) => [id, tier, laid, order, bound].join(' '))
        .sort();
    };
    fc.assert(
      fc.property(fc.array(treatment, { minLength: 2, maxLength: 4 }), cloth, (treatments, print) => {
        expect(ordersOf([...treatments].reverse(), print)).toEqual(ordersOf(treatments, print));
      }),
      { numRuns: 40, seed: 21 },
    );
  });
});
