/** Stackback against printed rules: they differ threefold, so what is kept is the rule per width, with its range. */
import { describe, expect, it } from 'vitest';
import { estimateCase } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const metric = (behind: readonly string[], widths: number): PanelsCase => ({
  units: 'cm',
  cloth: { width: 137 },
  panels: { arrangement: 'single', widths, finishedLength: 200 },
  behind,
});

describe('stackback', () => {
  it.each([
    [[], 10, 15],
    [['std-white'], 15, 20],
    [['blackout-3-pass'], 15, 20],
    [['inter-med', 'std-white'], 20, 30],
  ] as const)('SB-06 (UK workroom table): %s takes %d to %d cm a width', (behind, least, most) => {
    const made = estimateCase(metric([...behind], 3));
    expect([made.in(made.stackback!.least), made.in(made.stackback!.most)]).toEqual([3 * least, 3 * most]);
  });

  it('SB-07 (5 to 6 in a width, lined) meets our range from below: 6 to 8 in', () => {
    const made = estimateCase({ panels: { arrangement: 'single', widths: 1 }, behind: ['std-white'] });
    expect([made.in(made.stackback!.least), made.in(made.stackback!.most)]).toEqual([6, 8]);
  });

  it('a pair shares the widths: each piece takes half', () => {
    const pair = estimateCase({ panels: { widths: 2 }, behind: ['std-white'] });
    expect([pair.in(pair.stackback!.least), pair.in(pair.stackback!.most)]).toEqual([12, 16]);
  });

  it('is the practice of the decorator', () => {
    const made = estimateCase({
      panels: { arrangement: 'single', widths: 2 },
      practice: { stackback: { unlined: { least: 3, most: 5 } } },
    });
    expect([made.in(made.stackback!.least), made.in(made.stackback!.usual), made.in(made.stackback!.most)]).toEqual([
      6, 8, 10,
    ]);
  });
});
