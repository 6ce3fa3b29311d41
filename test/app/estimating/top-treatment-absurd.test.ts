/** Absurd numbers given to valances, cornices and swags (seeded): refused by name or priced, in bounded time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TopEstimate } from '#app/estimating/top-treatment/top-estimate.ts';
import { corniceCase, corniceFaults, swagsCase, swagsFaults, valanceCase, valanceFaults } from './top-case.ts';

type Fields = Readonly<Record<string, unknown>>;

describe('absurd numbers', () => {
  /** Likely three times of four, so that many cases are priced and not merely refused. */
  const mostly = (likely: fc.Arbitrary<number>) =>
    fc.oneof(
      { weight: 24, arbitrary: likely },
      { weight: 1, arbitrary: fc.double({ min: 0, max: 3900, noNaN: true }) },
      { weight: 1, arbitrary: fc.constantFrom(0, 0.001, 1, 3936) },
    );
  const inches = (min: number, max: number) =>
    mostly(fc.integer({ min: min * 4, max: max * 4 }).map((value) => value / 4));
  const field = {
    width: inches(12, 400),
    finishedLength: inches(6, 60),
    return: inches(3, 8),
    over: fc.option(inches(1, 4), { freq: 2 }),
    dropOf: fc.option(inches(60, 140)),
  };
  const any = fc.record({
    fields: fc.record(field),
    cloth: fc.record({ width: inches(20, 120).map((width) => Math.max(width, 0.01)), railroad: fc.boolean() }),
    practice: fc.record({ seam: inches(0, 1), hemsInWidth: fc.boolean() }),
    behind: fc.constantFrom<readonly string[]>([], ['std-white']),
  });
  const styles = fc.constantFrom<Fields>(
    { style: 'tailored' },
    { style: 'box-pleated', pleats: 7 },
    { style: 'gathered', board: {}, fullness: 6 },
    { style: 'balloon', rod: { diameter: 1 } },
    { style: 'scalloped', scallopDepth: 2 },
  );

  it('are refused with a remedy, or priced', () => {
    const seen = { priced: 0, refused: 0 };
    const tail = { longest: 40, shortest: 12, width: 10 };
    fc.assert(
      fc.property(
        any,
        styles,
        fc.record({ sideHem: inches(0, 3), weltStrip: inches(1, 3) }),
        (given, style, making) => {
          const tries: readonly [() => readonly { readonly right: string }[], () => TopEstimate<unknown>][] = [
            { ...given, fields: { ...given.fields, ...style, welt: 'face' }, making },
          ].map((each) => [() => valanceFaults(each), () => valanceCase(each)] as const);
          const bare = { ...given, making: { weltStrip: making.weltStrip } };
          const cornice = { ...bare, fields: { ...given.fields, welt: 'face' } };
          const row = { ...bare, fields: { ...given.fields, style: 'overlapped', welt: 'face', cascades: tail } };
          const all = [
            ...tries,
            [() => corniceFaults(cornice), () => corniceCase(cornice)] as const,
            [() => swagsFaults(row), () => swagsCase(row)] as const,
          ];
          for (const [faultsOf, estimateOf] of all) {
            const faults = faultsOf();
            seen[faults.length > 0 ? 'refused' : 'priced'] += 1;
            expect(faults.every(({ right }) => right !== '')).toBe(true);
            if (faults.length === 0) expect(estimateOf().takeoff.every(({ plan }) => plan > 0)).toBe(true);
          }
        },
      ),
      { seed: 32, numRuns: 1500 },
    );
    expect(Math.min(seen.priced, seen.refused)).toBeGreaterThan(500);
  });
});
