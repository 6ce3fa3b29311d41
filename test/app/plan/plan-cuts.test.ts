/** The plan as a decorator meets it: what is fixed by hand, flaws, remnants, marginal cloth, faults, and bounded work. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { listCuts } from '#app/plan/list-cuts.ts';
import { marginalCloth } from '#app/plan/marginal-cloth.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import { planCuts } from '#app/plan/plan-cuts.ts';
import { ticks } from '#shared/length.ts';
import { listHouses } from '../../../build/plan-oracle/house-table.ts';
import type { PlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { readPlanFile } from '../../../build/plan-oracle/plan-file.ts';
import { cm, cutOf, ENDLESS, growingPlan, planOf } from '../../../build/plan-oracle/seeded-plans.ts';
import { expectSound, faultsOf, planFor, SAY } from './check-layout.ts';

const straight = { vertical: cm(64), match: 'straight' } as const;
const five = Array.from({ length: 5 }, (_, index) => cutOf({ id: `c${index}`, length: cm(120), phase: cm(0) }));
const one = planOf({ cuts: five, repeat: straight, bolts: [{ ...ENDLESS, startPhase: cm(0) }] });

describe('a cut fixed by hand', () => {
  it('stays where it is; the plan works around it and says what it costs', () => {
    const input: PlanInput = { ...one, fixed: [{ cut: 'c1', on: 'bolt', at: cm(64) }] };
    const plan = planFor(input);
    expectSound(input, plan);
    // 64 to 184 is taken, so four cuts follow from 192: three of 128 and one of 120 end at 696. Free, it is 632.
    expect(plan.ordered).toBe(cm(696));
    expect(plan.fixedCosts).toEqual([{ cut: 'c1', costs: cm(64) }]);
  });

  it('costs nothing where it would lie anyway, and room beside a half is used', () => {
    const halves = five.map((cut) => ({ ...cut, across: 'half' as const }));
    const input: PlanInput = { ...one, cuts: halves, fixed: [{ cut: 'c0', on: 'bolt', at: cm(0) }] };
    const plan = planFor(input);
    expectSound(input, plan);
    expect(plan.ordered).toBe(cm(376));
    expect(plan.fixedCosts).toEqual([{ cut: 'c0', costs: 0 }]);
  });
});

describe('a flaw', () => {
  it('is left out and laid around', () => {
    const input: PlanInput = { ...one, flaws: [{ on: 'bolt', from: cm(200), to: cm(230) }] };
    const plan = planFor(input);
    expectSound(input, plan);
    // One cut before 200 (the next would reach 248), the others from 256 on.
    expect(plan.ordered).toBe(cm(256 + 3 * 128 + 120));
    expect(plan.gap).toBe(0);
  });
});

describe('remnants', () => {
  it('on hand are offered first, and what is left is named with its place in the repeat', () => {
    const remnant = { id: 'on the shelf', dyeLot: null, length: cm(130), width: null, startPhase: cm(10) };
    const plain: PlanInput = { ...one, cuts: five.map((cut, index) => ({ ...cut, set: `s${index}` })) };
    const input: PlanInput = { ...plain, remnants: [{ ...remnant, length: cm(180) }] };
    const plan = planFor(input);
    expectSound(input, plan);
    expect(plan.bolts.map((bolt) => bolt.kind)).toEqual(['remnant', 'bolt']);
    expect(plan.ordered).toBe(cm(3 * 128 + 120));
    expect(planFor({ ...plain, remnants: [remnant] }).ordered).toBe(planFor(plain).ordered);
    expect(plan.remnants[0]).toMatchObject({ name: 'A', on: 'on the shelf', from: 0, to: cm(54), startPhase: cm(10) });
  });

  it('sets stay on one dye lot, even where a remnant of another would do', () => {
    const remnant = { id: 'on the shelf', dyeLot: 'old', length: cm(180), width: null, startPhase: cm(0) };
    const set = five.map((cut) => ({ ...cut, set: 'one set' }));
    expect(planFor({ ...one, cuts: set, remnants: [remnant] }).ordered).toBe(planFor({ ...one, cuts: set }).ordered);
  });
});

describe('marginal cloth', () => {
  it('is what one set adds to the whole: nothing where its half lies beside another', () => {
    const half = (id: string, side: 'left' | 'right') =>
      cutOf({ id, length: cm(120), across: 'half', phase: cm(0), side });
    const input: PlanInput = { ...one, cuts: [...five, half('kitchen', 'left'), half('hall', 'right')] };
    const marginal = marginalCloth(input, 'hall', SAY);
    expect(marginal.ok && marginal.adds).toBe(0);
    const whole = marginalCloth(input, 'c0', SAY);
    expect(whole.ok && whole.adds).toBe(cm(128));
  });
});

describe('half-drop in print is an upper bound', () => {
  // Encyclopaedia of Curtains, p. 119: cut to whole repeats + half a repeat, one repeat more when the cuts are odd.
  const lengths = [40, 64, 70, 96, 100, 128, 129, 160, 200, 231];
  it.each(lengths)('a set of widths cut at %d cm', (length) => {
    for (let widths = 1; widths <= 9; widths += 1) {
      const repeat = { vertical: cm(64), match: 'half-drop' } as const;
      const cuts = listCuts({
        ...{ set: 's', label: 's', plainCut: cm(length), halfWidths: widths * 2, pieces: 1, quantity: 1 },
        ...{ repeat, phase: cm(0) },
      });
      const plan = planFor(planOf({ cuts, repeat }));
      const printed = widths * (Math.ceil(length / 64) * 64 + 32) + (widths % 2 === 1 ? 64 : 0);
      expect(plan.ordered).toBeLessThanOrEqual(cm(printed));
      expect(plan.gap).toBe(0);
    }
  });
});

describe('the twelve invented houses', () => {
  const { houses } = JSON.parse(readFileSync(new URL('../../reference/plan-houses.json', import.meta.url), 'utf8')) as {
    houses: PlanFile[];
  };

  it('order at least 8 per cent less on average, each within 1 per cent of its bound', () => {
    const rows = listHouses(houses);
    expect(rows.length).toBe(12);
    rows.forEach((row, index) => {
      const house = houses[index];
      if (house) expectSound(readPlanFile(house), row.plan);
      expect(row.plan.gap / row.plan.ordered, row.name).toBeLessThanOrEqual(0.01);
      expect(row.orderByPlan, row.name).toBeLessThanOrEqual(row.orderByHandbook);
    });
    const mean = rows.reduce((sum, row) => sum + 1 - row.orderByPlan / row.orderByHandbook, 0) / rows.length;
    expect(mean).toBeGreaterThanOrEqual(0.08);
  });
});

describe('bounded work', () => {
  it('a thousand cuts get an honest best effort with its gap', () => {
    const input = readPlanFile(growingPlan(1000, 'bolts of 45 m'));
    const plan = planFor({ ...input, settings: { ...input.settings, budget: 20_000 } });
    expectSound(input, plan);
    expect(plan.unlaid).toEqual([]);
    expect(plan.gap / plan.ordered).toBeLessThanOrEqual(0.01);
    // Beside the budget only the first layouts, which are always made.
    expect(plan.steps).toBeLessThan(150_000);
  });

  it('many remnants and many cuts fixed by hand are at most six times the work', () => {
    const input = readPlanFile(growingPlan(100, 'bolts of 45 m'));
    const remnants = Array.from({ length: 12 }, (_, index) => ({
      ...{ id: `remnant ${index}`, dyeLot: 'A', length: cm(150 + 20 * index), width: null, startPhase: cm(0) },
    }));
    const free = planFor({ ...input, remnants, settings: { ...input.settings, budget: 3_000 } });
    const fixed = free.bolts.flatMap((bolt) =>
      bolt.cuts.slice(0, 2).map((cut) => ({ cut: cut.id, on: bolt.id, at: cut.at, x: cut.x })),
    );
    const budget = 30_000;
    const plan = planFor({ ...input, remnants, fixed, settings: { ...input.settings, budget } });
    expectSound({ ...input, remnants, fixed }, plan);
    expect(fixed.length).toBeGreaterThan(20);
    expect(plan.fixedCosts).toHaveLength(fixed.length);
    // The whole, once more for fewer remnants, four times for the prices; and first layouts, which are always made.
    expect(plan.steps).toBeLessThan(6 * budget + 60_000);
  });

  it('progress is told in rising shares, and cancelling returns the best so far', () => {
    const input = readPlanFile(growingPlan(400, 'bolts of 45 m'));
    const shares: number[] = [];
    const outcome = planCuts(input, SAY, {
      progress: (share) => shares.push(share),
      cancelled: () => shares.length > 40,
    });
    if (!outcome.ok) throw new Error('faults');
    expectSound(input, outcome.plan);
    expect(outcome.plan.cancelled).toBe(true);
    expect(outcome.plan.unlaid).toEqual([]);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(outcome.plan.steps).toBeLessThan(100_000);
  });

  it('where the cloth runs out the cuts without a place are named', () => {
    const input: PlanInput = { ...one, bolts: [{ ...ENDLESS, length: cm(400), startPhase: cm(0) }] };
    const plan = planFor(input);
    expectSound(input, plan);
    expect(plan.unlaid).toEqual(['c3', 'c4']);
    expect(plan.working.find((step) => step.id === 'plan-unlaid')?.formula).toBe('c3, c4');
  });

  it('nothing to cut is nothing to order', () => {
    expect(planFor(planOf({ cuts: [] }))).toMatchObject({ ordered: 0, bound: 0, bolts: [] });
  });
});

describe('faults name the field, what is wrong and what would be right', () => {
  const [first] = five;
  if (first === undefined) throw new Error('no cuts');
  const bolt = { ...ENDLESS, length: cm(300), startPhase: cm(0) };
  const wrong: readonly (readonly [string, PlanInput, string])[] = [
    [
      'a cut of no length',
      { ...one, cuts: [{ ...first, length: ticks(0) }] },
      'cuts[0].length: the cut has no length; give a length above 0',
    ],
    [
      'a negative cut',
      { ...one, cuts: [{ ...first, length: ticks(-5) }] },
      'cuts[0].length: the cut has no length; give a length above 0',
    ],
    [
      'a cut longer than every bolt',
      { ...one, bolts: [bolt], cuts: [{ ...first, length: cm(310) }] },
      'cuts[0].length: the cut "c0" of 310 cm is longer than every bolt; the longest has 300 cm; order a longer bolt',
    ],
    [
      'a repeat longer than the bolt',
      { ...one, bolts: [{ ...bolt, length: cm(130) }], repeat: { ...straight, vertical: cm(640) } },
      'repeat.vertical: the repeat of 640 cm is longer than the longest bolt, 130 cm; give the repeat in the right unit, or a longer bolt',
    ],
    [
      'no cloth',
      { ...one, bolts: [] },
      'bolts: there is no cloth to lay the cuts on; give a bolt; one without a length is unlimited',
    ],
    [
      'a cut wider than the cloth',
      { ...one, cuts: [{ ...first, across: cm(150) }] },
      'cuts[0].across: the cut of 150 cm is wider than the cloth, 144 cm; take more widths',
    ],
    [
      'a place beyond the repeat',
      { ...one, cuts: [{ ...first, phase: cm(64) }] },
      'cuts[0].phase: not a place in the repeat; give 0 or more, below the repeat of 64 cm',
    ],
    ['a name twice', { ...one, cuts: [first, first] }, 'cuts[1].id: "c0" is there twice; give each its own id'],
    [
      'fixed where the repeat is wrong',
      { ...one, fixed: [{ cut: 'c0', on: 'bolt', at: cm(70) }] },
      'fixed[0].at: "c0" does not start at its place in the repeat there; fix it at 128 cm or 64 cm',
    ],
    [
      'two fixed on one another',
      {
        ...one,
        fixed: [
          { cut: 'c0', on: 'bolt', at: cm(0) },
          { cut: 'c1', on: 'bolt', at: cm(64) },
        ],
      },
      'fixed[1].at: "c1" lies on "c0"; move one of them',
    ],
    [
      'fixed on a flaw',
      { ...one, flaws: [{ on: 'bolt', from: cm(50), to: cm(60) }], fixed: [{ cut: 'c0', on: 'bolt', at: cm(0) }] },
      'fixed[0].at: "c0" lies on the flaw; move one of them',
    ],
    [
      'fixed beyond the bolt',
      { ...one, bolts: [bolt], fixed: [{ cut: 'c0', on: 'bolt', at: cm(192) }] },
      'fixed[0].at: "c0" does not lie on the bolt there; fix it between the start and the end',
    ],
    [
      'fixed on nothing',
      { ...one, fixed: [{ cut: 'c0', on: 'attic', at: cm(0) }] },
      'fixed[0].on: there is no bolt "attic"; name a bolt or remnant',
    ],
    [
      'a flaw that ends before it begins',
      { ...one, flaws: [{ on: 'bolt', from: cm(60), to: cm(50) }] },
      'flaws[0].to: it ends where it begins or before; give where the bad ends',
    ],
    [
      'a nap turned sideways',
      { ...one, cuts: [{ ...first, mayTurn: true }] },
      'cuts[0].mayTurn: a cut that has a direction cannot be turned sideways; let it lie one way',
    ],
  ];
  it.each(wrong)('%s', (_, input, fault) => {
    expect(faultsOf(input)).toContain(fault);
  });

  it('all faults are told at once', () => {
    const input = { ...one, width: cm(0), cuts: [{ ...first, length: ticks(0) }], bolts: [] };
    expect(faultsOf(input).length).toBeGreaterThanOrEqual(3);
  });
});
