/** Two readings of a light meter give the light that a sample passes, with its uncertainty; worked by hand. */
import { describe, expect, it } from 'vitest';
import { composeTwo, layerOf } from '#app/lining/light-and-heat/compose-layers.ts';
import { GLASS } from '#app/lining/light-and-heat/glass.ts';
import { measureTransmittance } from '#app/lining/cloth/home-measure.ts';
import type { MeasureGiven } from '#app/lining/cloth/home-measure.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { judge } from './window-case.ts';

const given = (over: Partial<MeasureGiven> = {}): MeasureGiven => ({
  pairs: [{ bare: 10000, covered: 3000 }],
  glazing: 'single',
  reflectance: 0.5,
  ...over,
});

describe('a home measurement', () => {
  it('3000 of 10,000 lux behind single glass: 0.3 × (1 − 0.1474 × 0.5) = 0.2779', () => {
    expect(measureTransmittance(given()).transmittance).toBeCloseTo(0.2779, 4);
  });
  it('gives back the cloth that the layer composition was made with', () => {
    const cloth = { transmittance: 0.22, reflectance: 0.61 };
    const pane = layerOf(GLASS.double.visible);
    const covered = 20000 * composeTwo(pane, layerOf(cloth)).Tf;
    const pairs = [{ bare: 20000 * pane.Tf, covered }];
    const found = measureTransmittance({ pairs, glazing: 'double', reflectance: cloth.reflectance });
    expect(found.transmittance).toBeCloseTo(cloth.transmittance, 6);
  });
  it('two readings that drift 5 % each leave about ±14 % of it, and a little for stray light (19 times in 20)', () => {
    const { transmittance, within } = measureTransmittance(given());
    expect(within).toBeCloseTo(2 * Math.hypot(transmittance * Math.SQRT2 * 0.05, 0.003), 4);
  });
  it('more pairs narrow it, scatter and an unknown reflectance widen it', () => {
    const pair = { bare: 10000, covered: 3000 };
    const four = measureTransmittance(given({ pairs: [pair, pair, pair, pair] })).within;
    const wild = measureTransmittance(given({ pairs: [pair, { bare: 10000, covered: 5000 }] })).within;
    expect(four).toBeLessThan(measureTransmittance(given()).within);
    expect(wild).toBeGreaterThan(measureTransmittance(given()).within);
    expect(measureTransmittance(given({ reflectance: null })).within).toBeGreaterThan(
      measureTransmittance(given()).within,
    );
  });
  it('the dark reading is taken off both', () => {
    const found = measureTransmittance(given({ pairs: [{ bare: 10100, covered: 3100 }], dark: 100 }));
    expect(found.transmittance).toBeCloseTo(0.2779, 4);
  });
  it('a blackout reads as less than stray light can tell', () => {
    const { transmittance, within } = measureTransmittance(given({ pairs: [{ bare: 10000, covered: 1 }] }));
    expect(transmittance).toBeLessThan(within);
  });
  it('goes into the range of the light reading', () => {
    const { transmittance, within } = measureTransmittance(given());
    const face = { visible: { transmittance, reflectance: 0.5 }, transmittanceWithin: within };
    const { readings, ranges } = judge([], { face });
    expect(ranges.light?.[0]).toBeCloseTo(readings.light - within, 5);
    expect(ranges.light?.[1]).toBeCloseTo(readings.light + within, 5);
  });
  it('counts without a reflectance beside it, which is then typical and said so', () => {
    const { transmittance, within } = measureTransmittance(given({ reflectance: null }));
    const face = { visible: null, lone: { visible: { transmittance } }, transmittanceWithin: within };
    const { readings, ranges, assumed } = judge([], { face });
    expect(readings.light).toBeCloseTo(transmittance, 5);
    expect(ranges.light?.[0]).toBeLessThanOrEqual(readings.light - within + 1e-5);
    expect(assumed.filter((value) => /face\.(trans|refl)|\.reflectance$/.test(value)).join()).toMatch(/\.reflectance/);
  });
  it.each([
    ['no reading', { pairs: [] }],
    ['a dim window', { pairs: [{ bare: 50, covered: 20 }] }],
    ['more light behind the sample', { pairs: [{ bare: 1000, covered: 1500 }] }],
    ['a reading below zero', { pairs: [{ bare: 1000, covered: -1 }] }],
    ['a reflectance above 1', { reflectance: 1.2 }],
    ['no number', { pairs: [{ bare: Number.NaN, covered: 10 }] }],
  ] as const)('%s is refused by name', (_, over) => {
    let code = 'none';
    try {
      measureTransmittance(given(over));
    } catch (error) {
      if (error instanceof StackFault) code = error.code;
    }
    expect(code).toBe('impossible-reading');
  });
});
