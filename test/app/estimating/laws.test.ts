/** Laws of any take-off, over random panels (seeded): what must hold whatever was measured. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutToRepeat, handbookLength, planAlone } from '#app/estimating/cut-cloth.ts';
import { TICKS_PER_INCH, TICKS_PER_MM, ticks } from '#shared/length.ts';
import { estimateCase, faceLine } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const quarter = (min: number, max: number) => fc.integer({ min: min * 4, max: max * 4 }).map((value) => value / 4);
const anyCase: fc.Arbitrary<PanelsCase> = fc.record({
  panels: fc.record({
    arrangement: fc.constantFrom('pair', 'one-way', 'single', 'pair-stationary'),
    rodWidth: quarter(20, 240),
    finishedLength: quarter(20, 140),
    fullness: fc.integer({ min: 1500, max: 3500 }).map((value) => value / 1000),
    quantity: fc.integer({ min: 1, max: 3 }),
  }),
  cloth: fc.record({
    width: quarter(40, 60),
    repeat: fc.option(fc.record({ vertical: quarter(2, 40), match: fc.constantFrom('straight', 'half-drop') }), {
      nil: undefined,
    }),
  }),
  practice: fc.record({
    widthRounding: fc.constantFrom('up', 'half-up'),
    fullnessOver: fc.constantFrom('whole', 'face'),
    hemsInWidth: fc.boolean(),
    seam: fc.constantFrom(0, 0.5),
    shrinkage: fc.constantFrom(0, 0.03),
  }),
  behind: fc.constantFrom([], ['std-white'], ['inter-med', 'std-white']),
});

const runs = { seed: 20, numRuns: 400 };

describe('laws of the take-off', () => {
  it('never less cloth than the area that hangs, and never less order than layout', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const estimate = estimateCase(given);
        const line = faceLine(estimate);
        const width = Number(given.cloth?.width) * TICKS_PER_INCH;
        const quantity = given.panels?.quantity ?? 1;
        expect(line.plan * width).toBeGreaterThanOrEqual(
          (line.plainCut * (line.halfWidths ?? 0) * width * quantity) / 2 - 1,
        );
        expect(line.order).toBeGreaterThanOrEqual(line.plan);
        expect(line.cutLength).toBeGreaterThanOrEqual(line.plainCut);
      }),
      runs,
    );
  });

  it('longer, wider or fuller never takes less', () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.constantFrom('rodWidth', 'finishedLength', 'fullness'),
        fc.integer({ min: 1, max: 40 }),
        (given, field, more) => {
          const before = Number(given.panels?.[field] ?? 0);
          const step = field === 'fullness' ? more / 1000 : more / 4;
          const bigger: PanelsCase = {
            ...given,
            panels: { ...given.panels, [field]: Math.round((before + step) * 1000) / 1000 },
          };
          const [small, large] = [estimateCase(given), estimateCase(bigger)];
          expect(faceLine(large).handbook).toBeGreaterThanOrEqual(faceLine(small).handbook);
          expect(faceLine(large).cuts).toBeGreaterThanOrEqual(faceLine(small).cuts);
        },
      ),
      runs,
    );
  });

  it('the layout alone never exceeds the handbook', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 1_500_000 }),
        fc.integer({ min: 1000, max: 400_000 }),
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 30 }),
        fc.constantFrom('straight' as const, 'half-drop' as const),
        (plain, vertical, level, fewer, match) => {
          const dropped = Math.min(level, fewer);
          const cuts = match === 'straight' ? level + dropped : level + dropped;
          const repeat = { vertical: ticks(vertical), horizontal: null, match, cutOnRepeat: false };
          const cut = cutToRepeat(ticks(plain), repeat, 'whole');
          expect(planAlone(cut, cuts, repeat, { level, dropped })).toBeLessThanOrEqual(
            handbookLength(cut, cuts, repeat),
          );
        },
      ),
      runs,
    );
  });

  it('a quotient that is exactly whole adds nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 12 }), (widths, repeats) => {
        const estimate = estimateCase({
          panels: { arrangement: 'single', rodWidth: 27 * widths, fullness: 2, finishedLength: 27 * repeats },
          practice: { headingAllowance: { 'pinch-pleat': 0 }, bottomHem: 0, sideHem: 0 },
          cloth: { repeat: { vertical: 27 } },
        });
        expect(faceLine(estimate)).toMatchObject({ halfWidths: 2 * widths, repeatsPerCut: repeats });
      }),
      runs,
    );
  });

  it('an inch job and its twin in millimetres agree to the tick', () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const mm = (value: unknown): number => (Number(value) * TICKS_PER_INCH) / TICKS_PER_MM;
        const seam = given.practice?.seam;
        const inch = {
          ...given,
          practice: {
            ...given.practice,
            headingAllowance: { 'pinch-pleat': 8 },
            bottomHem: 8,
            sideHem: 3,
            lining: LINING,
            interlining: INTERLINING,
            orderStep: '0.25 yd',
          },
        };
        const metric: PanelsCase = {
          ...given,
          units: 'mm',
          panels: {
            ...given.panels,
            rodWidth: mm(given.panels?.rodWidth),
            finishedLength: mm(given.panels?.finishedLength),
          },
          cloth: {
            ...given.cloth,
            width: mm(given.cloth?.width),
            ...(given.cloth?.repeat
              ? { repeat: { ...given.cloth.repeat, vertical: mm(given.cloth.repeat.vertical) } }
              : {}),
          },
          practice: {
            ...inch.practice,
            seam: mm(seam),
            headingAllowance: { 'pinch-pleat': '8 in' },
            bottomHem: '8 in',
            sideHem: '3 in',
            lining: INCHES(LINING),
            interlining: INCHES(INTERLINING),
          },
        };
        const lines = (made: ReturnType<typeof estimateCase>) =>
          made.takeoff.map(({ cuts, cutLength, plan, order, halfWidths }) => ({
            cuts,
            cutLength,
            plan,
            order,
            halfWidths,
          }));
        expect(lines(estimateCase(metric))).toEqual(lines(estimateCase(inch)));
      }),
      { seed: 21, numRuns: 200 },
    );
  });

  it('mirrored returns change nothing but the side', () => {
    fc.assert(
      fc.property(anyCase, quarter(0, 10), quarter(0, 10), (given, left, right) => {
        const single = given.panels?.arrangement === 'single';
        const of = (a: number, b: number) =>
          estimateCase({ ...given, panels: { ...given.panels, return: { left: a, right: single ? 0 : b } } });
        const mirrored = estimateCase({
          ...given,
          panels: { ...given.panels, return: { left: single ? 0 : right, right: left } },
        });
        expect(mirrored.takeoff).toEqual(of(left, right).takeoff);
      }),
      runs,
    );
  });
});

const LINING = { headingAllowance: 3, bottomHem: 4, shorter: 1, narrower: 0, sideHem: 0 };
const INTERLINING = { headingAllowance: 4, bottomHem: 0, shorter: 0, narrower: 0, sideHem: 0 };
const INCHES = (layer: typeof LINING) =>
  Object.fromEntries(Object.entries(layer).map(([key, value]) => [key, `${value} in`])) as Record<
    keyof typeof LINING,
    string
  >;
