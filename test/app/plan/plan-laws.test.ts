/** Laws of every plan, over seeded questions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listCuts } from '#app/plan/list-cuts.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import { cutToRepeat, handbookLength } from '#app/estimating/cut-cloth.ts';
import { ticks } from '#shared/length.ts';
import { readPlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { cm, cutOf, housePlan, makeChance, planOf, smallPlan } from '../../../build/plan-oracle/seeded-plans.ts';
import { expectSound, planFor } from './check-layout.ts';

const runs = { seed: 7, numRuns: 60 };
const anySmall = fc.integer({ min: 5_000, max: 900_000 });

function shuffle<T>(list: readonly T[], seed: number): T[] {
  const chance = makeChance(seed);
  return [...list]
    .map((each) => ({ each, key: chance.next() }))
    .sort((a, b) => a.key - b.key)
    .map(({ each }) => each);
}

function shuffled(input: PlanInput, seed: number): PlanInput {
  return {
    ...input,
    cuts: shuffle(input.cuts, seed),
    bolts: shuffle(input.bolts, seed + 1),
    remnants: shuffle(input.remnants, seed + 2),
    fixed: shuffle(input.fixed, seed + 3),
    flaws: shuffle(input.flaws, seed + 4),
  };
}

/** Sets as take-offs make them, all from one place in the repeat, on one endless bolt that starts where the first cut wants. */
const anyHouse = fc
  .record({
    repeat: fc.constantFrom(0, 17, 32, 48, 61, 64),
    match: fc.constantFrom('straight' as const, 'half-drop' as const),
    sets: fc.array(
      fc.record({
        cut: fc.integer({ min: 40, max: 330 }),
        halfWidths: fc.integer({ min: 1, max: 8 }),
        pieces: fc.constantFrom(1, 2),
        quantity: fc.integer({ min: 1, max: 3 }),
      }),
      { minLength: 1, maxLength: 7 },
    ),
  })
  .map(({ repeat, match, sets }) => {
    const cloth = repeat === 0 ? null : { vertical: cm(repeat), horizontal: null, match, cutOnRepeat: false };
    let handbook = 0;
    const cuts = sets.flatMap((set, index) => {
      const widths = set.halfWidths * (set.pieces === 2 ? 2 : 1);
      handbook += handbookLength(
        cutToRepeat(cm(set.cut), cloth, 'whole'),
        Math.ceil((widths / 2) * set.quantity),
        cloth,
      );
      return listCuts({
        ...{ set: `set ${index}`, label: `set ${index}`, plainCut: cm(set.cut), halfWidths: widths },
        ...{ pieces: set.pieces, quantity: set.quantity, repeat: cloth, phase: cm(0) },
      });
    });
    return planOf({ cuts, repeat: cloth, handbook: ticks(handbook) });
  });

/** One layout of every house: the end of the last set where each waits for its place behind the one before. */
function oneAfterAnother(input: PlanInput): number {
  const repeat = input.repeat?.vertical ?? 1;
  const sets = [...new Set(input.cuts.map(({ set }) => set))];
  let begins = 0;
  return sets.reduce((end, set, index) => {
    const [bolt] = planFor({ ...input, handbook: null, cuts: input.cuts.filter((cut) => cut.set === set) }).bolts;
    if (bolt === undefined) throw new Error('a set without cuts');
    const start = bolt.startPhase ?? 0;
    if (index === 0) begins = start;
    const wait = (((start - begins - end) % repeat) + repeat) % repeat;
    return end + wait + bolt.used;
  }, 0);
}

describe('laws of the plan', () => {
  it('on one endless bolt it is never longer than the handbook, and never below its bound', () => {
    fc.assert(
      fc.property(anyHouse, (input) => {
        const plan = planFor(input);
        expectSound(input, plan);
        expect(plan.ordered).toBeLessThanOrEqual(input.handbook ?? Infinity);
      }),
      runs,
    );
  });

  it('it is never longer than the sets laid out alone, one after another, each from its next place in the repeat', () => {
    fc.assert(
      fc.property(anyHouse, (input) => {
        expect(planFor(input).ordered).toBeLessThanOrEqual(oneAfterAnother(input));
      }),
      { seed: 8, numRuns: 120 },
    );
  });

  it('the order in which things are given changes nothing', () => {
    fc.assert(
      fc.property(anySmall, fc.integer({ min: 0, max: 99 }), (seed, other) => {
        const input = smallPlan(seed, 7);
        const plan = planFor(input);
        expect(planFor(shuffled(input, other))).toEqual(plan);
        expectSound(input, plan);
      }),
      runs,
    );
    for (const seed of [3, 11, 24]) {
      const input = readPlanFile(housePlan(seed));
      expect(planFor(shuffled(input, seed))).toEqual(planFor(input));
    }
  });

  it('one remnant more never lengthens the order', { timeout: 90_000 }, () => {
    fc.assert(
      fc.property(anySmall, fc.integer({ min: 1, max: 60 }), (seed, size) => {
        const input = smallPlan(seed, 7);
        const before = planFor(input);
        if (before.unlaid.length > 0) return;
        const phase = input.repeat === null ? null : cm(0);
        const more = { id: 'one more', dyeLot: 'A', length: cm(size * 10), width: null, startPhase: phase };
        const after = planFor({ ...input, remnants: [...input.remnants, more] });
        expect(after.ordered).toBeLessThanOrEqual(before.ordered);
      }),
      runs,
    );
    for (const seed of [1, 5, 8, 31, 57]) {
      const input = readPlanFile(housePlan(seed));
      const phase = input.repeat === null ? null : cm(0);
      const more = { id: 'one more', dyeLot: 'A', length: cm(260), width: null, startPhase: phase };
      const after = planFor({ ...input, remnants: [...input.remnants, more] });
      expect(after.ordered, `house ${seed}`).toBeLessThanOrEqual(planFor(input).ordered);
    }
  });

  it('one cut more never shortens a plan that is proved, and one less never lengthens it', () => {
    fc.assert(
      fc.property(anySmall, (seed) => {
        const input = smallPlan(seed, 7);
        const plan = planFor(input);
        if (plan.unlaid.length > 0 || input.fixed.length > 0) return;
        const more = cutOf({ id: 'one more', length: cm(40), phase: input.repeat === null ? null : cm(0) });
        const longer = planFor({ ...input, cuts: [...input.cuts, more] });
        if (longer.unlaid.length === 0) expect(longer.ordered).toBeGreaterThanOrEqual(plan.ordered);
      }),
      runs,
    );
  });
});
