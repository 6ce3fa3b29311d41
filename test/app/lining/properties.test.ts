/** What must hold for any stack: energy, order, monotony. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Content } from '#shared/cloth.ts';
import { labOf, scaleToY, xyzOf } from '#app/lining/light-and-heat/colour.ts';
import { stackSpectra } from '#app/lining/light-and-heat/colour-shift.ts';
import { composeLayers, composeTwo } from '#app/lining/light-and-heat/compose-layers.ts';
import type { Layer } from '#app/lining/light-and-heat/compose-layers.ts';
import { pleat } from '#app/lining/light-and-heat/pleated-cloth.ts';
import { solveFluxes } from '#app/lining/light-and-heat/solve-fluxes.ts';
import { IVORY_SHAPE, spectraOf, WHITE_SHAPE } from '#app/lining/light-and-heat/spectra.ts';
import { MOST_ADDED, reckonWarmth } from '#app/lining/light-and-heat/warmth.ts';
import type { ClosingClass } from '#app/lining/light-and-heat/closing.ts';
import { lightProfile } from '#app/lining/light-and-heat/show-light.ts';
import { GENERIC_CLOTH_IDS, GLAZINGS, INTERLINING_FAMILIES } from '#shared/words.ts';
import { faceOf, judge, ownOf, rulesOf, starters } from './window-case.ts';

/** One side: a reflectance below 0.98, and a transmittance that leaves something to absorb or not. */
const side = fc
  .tuple(fc.double({ min: 0, max: 0.98, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([R, part]) => ({ R, T: part * (1 - R) }));
const layer: fc.Arbitrary<Layer> = fc.tuple(side, side).map(([f, b]) => ({ Tf: f.T, Rf: f.R, Tb: b.T, Rb: b.R }));
const stack = fc.array(layer, { minLength: 1, maxLength: 6 });

describe('layers', () => {
  it('absorbed, transmitted and reflected make one (energy balance)', () => {
    fc.assert(
      fc.property(stack, (layers) => {
        const found = solveFluxes(layers);
        const sum = found.absorbed.reduce((s, a) => s + a, found.transmitted + found.reflected);
        expect(sum).toBeCloseTo(1, 10);
        for (const share of found.absorbed) expect(share).toBeGreaterThanOrEqual(-1e-12);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
  it('the flux equations and the composition agree', () => {
    fc.assert(
      fc.property(stack, (layers) => {
        const fluxes = solveFluxes(layers);
        const whole = composeLayers(layers);
        expect(fluxes.transmitted).toBeCloseTo(whole.Tf, 10);
        expect(fluxes.reflected).toBeCloseTo(whole.Rf, 10);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
  it('it does not matter which two are composed first (associative)', () => {
    fc.assert(
      fc.property(layer, layer, layer, (a, b, c) => {
        const left = composeTwo(composeTwo(a, b), c);
        const right = composeTwo(a, composeTwo(b, c));
        for (const key of ['Tf', 'Rf', 'Tb', 'Rb'] as const) expect(left[key]).toBeCloseTo(right[key], 10);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
  it('adding a layer anywhere never raises the light', () => {
    fc.assert(
      fc.property(stack, layer, fc.nat(6), (layers, more, place) => {
        const with_ = [...layers.slice(0, place), more, ...layers.slice(place)];
        expect(composeLayers(with_).Tf).toBeLessThanOrEqual(composeLayers(layers).Tf + 1e-12);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
  it('the order of two layers alike from both sides does not change what passes', () => {
    fc.assert(
      fc.property(side, side, (a, b) => {
        const one: Layer = { Tf: a.T, Rf: a.R, Tb: a.T, Rb: a.R };
        const two: Layer = { Tf: b.T, Rf: b.R, Tb: b.T, Rb: b.R };
        expect(composeLayers([one, two]).Tf).toBeCloseTo(composeLayers([two, one]).Tf, 12);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
  it('folds never pass and send back more than all, and no fold is the flat cloth', () => {
    fc.assert(
      fc.property(side, fc.double({ min: 0, max: 4, noNaN: true }), ({ R, T }, depth) => {
        const cloth = { transmittance: T, reflectanceStreet: R, reflectanceRoom: R };
        const found = pleat(cloth, depth);
        expect(found.reflectance + found.transmittance).toBeLessThanOrEqual(1 + 1e-9);
        expect(pleat(cloth, 0)).toEqual({ reflectance: R, transmittance: T });
        expect(pleat(cloth, 1e-9).transmittance).toBeCloseTo(T, 6);
      }),
      { seed: 43, numRuns: 300 },
    );
  });
});

describe('colour by day', () => {
  const shades = fc.constantFrom('neutral', '#c9b79a', '#2f4a7a', '#8a2020', '#f5f2ec', '#3f6f4a');
  it('a yellower lining never lowers b* of the transmitted light', () => {
    fc.assert(
      fc.property(
        shades,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (shade, one, two) => {
          const face = spectraOf({ shade, visible: { transmittance: 0.2, reflectance: 0.4 } });
          const bOf = (yellow: number): number => {
            const shape = WHITE_SHAPE.map((w, i) => w + yellow * ((IVORY_SHAPE[i] ?? w) - w));
            const lining = { reflectance: shape.map((s) => 0.7 * s), transmittance: shape.map((s) => 0.25 * s) };
            return labOf(scaleToY(xyzOf(stackSpectra([face, lining], null).toRoom), 50)).b;
          };
          const [less, more] = [Math.min(one, two), Math.max(one, two)];
          expect(bOf(more)).toBeGreaterThanOrEqual(bOf(less) - 1e-9);
        },
      ),
      { seed: 43, numRuns: 300 },
    );
  });
  it('ivory always differs from white behind the same face', () => {
    for (const shade of [null, '#c9b79a', '#2f4a7a', '#8a2020', '#f5f2ec']) {
      const face = { colour: shade };
      const white = judge(starters('std-white'), { face }).readings.colourShift;
      const ivory = judge(starters('std-ivory'), { face }).readings.colourShift;
      expect(Math.abs(ivory - white)).toBeGreaterThan(0.5);
    }
  });
});

describe('warmth', () => {
  const classes = fc.constantFrom<ClosingClass>('stationary', 'open', 'close', 'sealed');
  it('thicker never warms less, and nothing adds more than the cap', () => {
    fc.assert(
      fc.property(
        classes,
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.constantFrom(5.8, 2.9, 1.2, 0.7),
        (closing, one, two, U) => {
          const thin = reckonWarmth(closing, [Math.min(one, two)], U, 1);
          const thick = reckonWarmth(closing, [Math.max(one, two)], U, 1);
          expect(thick.middle).toBeGreaterThanOrEqual(thin.middle - 1e-12);
          expect(thick.range[1]).toBeLessThanOrEqual(MOST_ADDED);
          expect(thick.saved[0]).toBeLessThanOrEqual(thick.saved[1]);
        },
      ),
      { seed: 43, numRuns: 300 },
    );
  });
  it('a heavier interlining of the starter book never warms less', () => {
    const ids = { light: 'inter-light', medium: 'inter-med', heavy: 'inter-heavy' } as const;
    const found = INTERLINING_FAMILIES.map((family) => judge(starters(ids[family], 'std-white')).readings.warmth);
    expect([...found].sort((a, b) => a - b)).toEqual(found);
  });
});

describe('any stack of the starter book', () => {
  const ids = fc.array(fc.constantFrom(...GENERIC_CLOTH_IDS), { maxLength: 4 });
  it('has readings within their bounds, inside their ranges, and a profile that never rises', () => {
    fc.assert(
      fc.property(ids, fc.constantFrom(...GLAZINGS), (chosen, glazing) => {
        const behind = starters(...chosen);
        const { readings, ranges, words, advice } = judge(behind, { opening: { glazing } });
        expect(readings.light).toBeGreaterThan(0);
        expect(readings.lightWithGlass).toBeLessThanOrEqual(readings.light);
        expect(readings.lightInRoom).toBeGreaterThanOrEqual(readings.lightWithGlass);
        expect(readings.fade).toBeGreaterThanOrEqual(0);
        expect(readings.fade).toBeLessThanOrEqual(1);
        expect(readings.body).toBeGreaterThanOrEqual(1);
        expect(readings.body).toBeLessThanOrEqual(5);
        for (const [name, range] of Object.entries(ranges)) {
          const value = readings[name as keyof typeof readings];
          expect(value, name).toBeGreaterThanOrEqual(range[0] - 1e-6);
          expect(value, name).toBeLessThanOrEqual(range[1] + 1e-6);
        }
        for (const said of Object.values(words)) expect(said.words).not.toBe('');
        expect(new Set(advice.map((each) => each.rule)).size).toBe(advice.length);
        const levels = lightProfile(faceOf(), behind, glazing).map((each) => each.level);
        levels.slice(1).forEach((level, i) => expect(level).toBeLessThanOrEqual((levels[i] ?? 1) + 1e-12));
        expect(levels[levels.length - 1]).toBeCloseTo(readings.lightWithGlass, 5);
      }),
      { seed: 43, numRuns: 150 },
    );
  });
  it('judges the same twice', () => {
    expect(judge(starters('inter-med', 'std-white'))).toEqual(judge(starters('inter-med', 'std-white')));
  });
  it('a face and lining of one content never warn of mismatch', () => {
    const contents: readonly Content[] = [
      { cotton: 100 },
      { cotton: 60, polyester: 40 },
      { linen: 100 },
      { silk: 100 },
    ];
    for (const content of contents) {
      const found = judge([ownOf('std-white', { content })], { face: { content } });
      expect(rulesOf(found)).not.toContain('match-content');
    }
  });
});
