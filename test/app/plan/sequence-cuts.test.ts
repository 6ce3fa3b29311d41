/** Sequencing alone: the engine's order against every order tried, for known and free starts. */
import { describe, expect, it } from 'vitest';
import { forward, placeAfter } from '#app/plan/repeat-circle.ts';
import type { Run } from '#app/plan/sequence-cuts.ts';
import { makeSequencer } from '#app/plan/sequence-cuts.ts';
import { makeChance } from '../../../build/plan-oracle/seeded-plans.ts';

function wasteOf(order: readonly Run[], start: number | null, size: number): number {
  let place = start ?? order[0]?.phase ?? 0;
  let waste = 0;
  for (const run of order) {
    waste += forward(place, run.phase, size);
    place = placeAfter(run.phase, run.length, size);
  }
  return waste;
}

function everyOrder<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]];
  return list.flatMap((each, at) => everyOrder(list.filter((_, index) => index !== at)).map((rest) => [each, ...rest]));
}

describe('the order of cuts on patterned cloth', () => {
  it.each(Array.from({ length: 60 }, (_, seed) => ({ seed })))('is the best of all orders: seed $seed', ({ seed }) => {
    const chance = makeChance(seed);
    const size = chance.whole(2, 24);
    const runs = Array.from({ length: chance.whole(1, 6) }, () => ({
      phase: chance.whole(0, size - 1),
      length: chance.whole(1, 3 * size),
    }));
    const start = chance.happens(0.5) ? null : chance.whole(0, size - 1);
    const least = Math.min(...everyOrder(runs).map((order) => wasteOf(order, start, size)));
    const sequencer = makeSequencer(runs, start === null ? [] : [start], size);
    const counts = runs.map(() => 1);
    expect(sequencer.leastWaste(counts, start)).toBe(least);
    const order = sequencer.bestOrder(counts, start);
    expect([...order].sort()).toEqual(runs.map((_, at) => at));
    expect(
      wasteOf(
        order.flatMap((at) => runs[at] ?? []),
        start,
        size,
      ),
    ).toBe(least);
  });

  it('alternates the widths of a half-drop where that is shorter, and groups them where it is not', () => {
    // Repeat 64: from 80 the other place is 16 further, the same place 48 further; from 60 it is 36 and 4.
    const kinds = (length: number) => [
      { phase: 0, length },
      { phase: 32, length },
    ];
    expect(makeSequencer(kinds(80), [0], 64).bestOrder([3, 3], 0)).toEqual([0, 1, 0, 1, 0, 1]);
    expect(makeSequencer(kinds(60), [0], 64).bestOrder([3, 3], 0)).toEqual([0, 0, 0, 1, 1, 1]);
  });
});
