/** Published cutting-stock problems with known optima: plain cloth of one width on whole bolts that are all alike. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { PlanInput } from '#app/plan/plan-input.ts';
import { ticks } from '#shared/length.ts';
import { cutOf, planOf } from '../../../build/plan-oracle/seeded-plans.ts';
import { expectSound, planFor } from './check-layout.ts';

interface Published {
  readonly id: string;
  readonly source: string;
  readonly capacity: number;
  readonly sizes: readonly number[];
  readonly bound: number;
  readonly optimum: number;
}

function read<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8')) as T;
}

interface Check {
  readonly id: string;
  readonly source: string;
  readonly inputs: { readonly L: number; readonly w: readonly number[]; readonly d: readonly number[] };
  readonly expected: { readonly bound: number; readonly opt: number };
}
const stock = read<Check[]>('physics-checks.json')
  .filter((check) => check.id === 'cut-wiki' || check.id === 'cut-tiny')
  .map(({ id, source, inputs, expected }): Published => ({
    ...{ id, source, capacity: inputs.L, bound: expected.bound, optimum: expected.opt },
    sizes: inputs.w.flatMap((width, at) => Array.from({ length: inputs.d[at] ?? 0 }, () => width)),
  }));
const bins = read<{ source: string; instances: { id: string; capacity: number; optimum: number; sizes: number[] }[] }>(
  'falkenauer-bins.json',
);
const falkenauer = bins.instances.map((each): Published => ({ ...each, source: bins.source, bound: each.optimum }));

/** A few bolts more than are needed, each sold whole. A millimetre stands for one of the problem's units. */
function boltsFor({ capacity, sizes, optimum }: Published): PlanInput {
  const length = ticks(capacity * 320);
  return planOf({
    cuts: sizes.map((size, index) => cutOf({ id: `c${index}`, length: ticks(size * 320) })),
    bolts: Array.from({ length: optimum + 4 }, (_, index) => ({
      ...{ id: `b${index}`, dyeLot: 'A', length, startPhase: null, step: length },
    })),
  });
}

describe('published cutting-stock optima', () => {
  it.each([...stock, ...falkenauer])('$id: $optimum bolts', (published) => {
    const input = boltsFor(published);
    const plan = planFor(input);
    expectSound(input, plan);
    expect(plan.unlaid).toEqual([]);
    expect(plan.ordered / (published.capacity * 320)).toBe(published.optimum);
    expect(plan.bound / (published.capacity * 320)).toBe(published.bound);
  });

  it('has the five problems that the reference names', () => {
    expect([...stock, ...falkenauer].map(({ id }) => id)).toEqual([
      'cut-wiki',
      'cut-tiny',
      'u250_00',
      't60_00',
      't60_01',
    ]);
    const sum = (id: string) => falkenauer.find((each) => each.id === id)?.sizes.reduce((a, b) => a + b, 0);
    expect(sum('u250_00')).toBe(14783);
  });
});
