/**
 * Plans against oracles that share nothing with the engine: every layout tried one after another (up to nine cuts), and
 * HiGHS on a mixed-integer model (up to sixty cuts on several bolts). Their results are checked in; `node
 * build/solve-plans.ts` recomputes them.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { boundPlan } from '#app/plan/bound-plan.ts';
import { readTask } from '#app/plan/task.ts';
import type { GrowthFile, OracleFile } from '../../../build/plan-oracle/oracle-file.ts';
import { GROWTH_FILE, LARGE_SEEDS, ORACLE_FILE, SMALL_SEEDS } from '../../../build/plan-oracle/oracle-file.ts';
import { readPlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { searchAll } from '../../../build/plan-oracle/search-all.ts';
import { GROWING, growingPlan, housePlan, smallPlan } from '../../../build/plan-oracle/seeded-plans.ts';
import { expectSound, planFor } from './check-layout.ts';

const oracle = JSON.parse(readFileSync(ORACLE_FILE, 'utf8')) as OracleFile;

describe('up to nine cuts: every layout tried', () => {
  it('equals the optimum on 300 seeded questions, and proves it', () => {
    expect(oracle.small.map(({ seed }) => seed)).toEqual(SMALL_SEEDS);
    for (const { seed, ordered } of oracle.small) {
      const input = smallPlan(seed);
      const plan = planFor(input);
      expectSound(input, plan);
      if (ordered === null) expect(plan.unlaid, `seed ${seed} cannot all be laid`).not.toEqual([]);
      else
        expect({ seed, ordered: plan.ordered, bound: plan.bound, unlaid: plan.unlaid }).toEqual({
          ...{ seed, ordered, bound: ordered, unlaid: [] },
        });
    }
  }, 60_000);

  it('the bound that larger plans rest on is never above the optimum, and often reaches it', () => {
    let reached = 0;
    for (const { seed, ordered } of oracle.small) {
      if (ordered === null) continue;
      const bound = boundPlan(readTask(smallPlan(seed)));
      expect(bound, `seed ${seed}`).toBeLessThanOrEqual(ordered);
      if (bound === ordered) reached += 1;
    }
    for (const { house, proved, ordered } of oracle.large)
      if (proved) expect(boundPlan(readTask(readPlanFile(house))), house.name).toBeLessThanOrEqual(ordered ?? Infinity);
    expect(reached).toBeGreaterThan(80);
  });

  it('the checked-in results are those of the search, here tried again up to six cuts', () => {
    for (let seed = 1000; seed < 1060; seed += 1) {
      const input = smallPlan(seed, 6);
      const plan = planFor(input);
      const ordered = searchAll(input);
      if (ordered === Infinity) expect(plan.unlaid, `seed ${seed}`).not.toEqual([]);
      else expect({ seed, ordered: plan.ordered }).toEqual({ seed, ordered });
    }
    for (const { seed, ordered } of oracle.small.slice(0, 12)) {
      const found = searchAll(smallPlan(seed));
      expect({ seed, ordered: found === Infinity ? null : found }).toEqual({ seed, ordered });
    }
  }, 60_000);
});

describe('questions of growing size, for the speed in the bench', () => {
  const { growing } = JSON.parse(readFileSync(GROWTH_FILE, 'utf8')) as GrowthFile;

  it('are those that are made today, and the largest of them stay within one per cent of their bounds', () => {
    expect(growing).toEqual(GROWING.map(({ least, on }) => growingPlan(least, on)));
    for (const house of growing) {
      const input = readPlanFile(house);
      const plan = planFor({ ...input, settings: { ...input.settings, budget: 20_000 } });
      expectSound(input, plan);
      expect(plan.unlaid).toEqual([]);
      expect(plan.gap / plan.ordered, house.name).toBeLessThanOrEqual(0.01);
    }
  });
});

describe('up to sixty cuts on several bolts: HiGHS', () => {
  it('has sixty questions, as they are made today', () => {
    expect(oracle.large.map(({ house }) => house)).toEqual(LARGE_SEEDS.map(housePlan));
    expect(oracle.large.filter(({ proved }) => proved).length).toBeGreaterThanOrEqual(50);
  });

  it.each(oracle.large)('$house.name', ({ house, proved, ordered, bound }) => {
    const input = readPlanFile(house);
    const plan = planFor(input);
    expectSound(input, plan);
    expect(plan.unlaid).toEqual([]);
    if (proved) expect(plan.ordered).toBe(ordered);
    else expect(plan.ordered).toBeLessThanOrEqual(ordered ?? Infinity);
    expect(plan.ordered, 'never below the solver’s bound').toBeGreaterThanOrEqual(bound);
    expect(plan.bound, 'our bound is below the optimum').toBeLessThanOrEqual(ordered ?? Infinity);
    // A step of the order on these sizes is up to 1.4 per cent.
    expect(plan.gap / plan.ordered, 'the gap that is shown').toBeLessThanOrEqual(0.014);
  });
});
