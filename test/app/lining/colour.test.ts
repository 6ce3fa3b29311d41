/** Colour against two independent libraries: culori (mode lab65, D65) and colorjs.io. */
import Color from 'colorjs.io';
import { converter, differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ciede2000 } from '#app/lining/light-and-heat/ciede2000.ts';
import {
  BAND_WHITE,
  hexOfXyz,
  labOf,
  moveWhite,
  readHex,
  SRGB_WHITE,
  visibleShare,
  xyzOf,
  xyzOfHex,
} from '#app/lining/light-and-heat/colour.ts';
import { BANDS_NM } from '#app/lining/light-and-heat/observer.ts';
import { fitShare, IVORY_SHAPE, spectraOf, WHITE_SHAPE } from '#app/lining/light-and-heat/spectra.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { upsampleColour } from '#app/lining/light-and-heat/upsample-colour.ts';

const toLab65 = converter('lab65');
const theirDifference = differenceCiede2000();
const hexes = fc
  .tuple(fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 255 }), fc.integer({ min: 0, max: 255 }))
  .map((rgb) => `#${rgb.map((c) => c.toString(16).padStart(2, '0')).join('')}`);

describe('sRGB to Lab under D65', () => {
  it('agrees with culori (lab65) for any colour', () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        const ours = labOf(xyzOfHex(hex), SRGB_WHITE);
        const theirs = toLab65(hex);
        expect(ours.L).toBeCloseTo(theirs?.l ?? Number.NaN, 3);
        expect(ours.a).toBeCloseTo(theirs?.a ?? Number.NaN, 3);
        expect(ours.b).toBeCloseTo(theirs?.b ?? Number.NaN, 3);
      }),
      { seed: 37, numRuns: 300 },
    );
  });
  it('agrees with colorjs.io (lab-d65) for any colour', () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        const ours = labOf(xyzOfHex(hex), SRGB_WHITE);
        const [L, a, b] = new Color(hex).to('lab-d65').coords;
        expect(ours.L).toBeCloseTo(Number(L), 3);
        expect(ours.a).toBeCloseTo(Number(a), 3);
        expect(ours.b).toBeCloseTo(Number(b), 3);
      }),
      { seed: 37, numRuns: 300 },
    );
  });
  it('comes back to the same colour', () => {
    fc.assert(
      fc.property(hexes, (hex) => hexOfXyz(xyzOfHex(hex)) === hex),
      { seed: 37, numRuns: 300 },
    );
  });
});

describe('CIEDE2000', () => {
  // Hundredths, as instruments print them: closer to grey the libraries settle the hue of no hue each in its own way.
  const hundredths = (from: number, to: number) => fc.integer({ min: 100 * from, max: 100 * to }).map((n) => n / 100);
  const labs = fc.record({ L: hundredths(0, 100), a: hundredths(-100, 100), b: hundredths(-100, 100) });
  it('agrees with culori and with colorjs.io for any two colours', () => {
    fc.assert(
      fc.property(labs, labs, (one, two) => {
        const ours = ciede2000(one, two);
        const as = ({ L, a, b }: typeof one) => ({ mode: 'lab65' as const, l: L, a, b });
        expect(ours).toBeCloseTo(theirDifference(as(one), as(two)), 5);
        const colour = ({ L, a, b }: typeof one) => new Color('lab', [L, a, b]);
        expect(ours).toBeCloseTo(colour(one).deltaE(colour(two), '2000'), 5);
      }),
      { seed: 37, numRuns: 300 },
    );
  });
  it('is the same both ways, and 0 only for one colour', () => {
    fc.assert(
      fc.property(labs, labs, (one, two) => {
        expect(ciede2000(one, two)).toBeCloseTo(ciede2000(two, one), 9);
        expect(ciede2000(one, one)).toBe(0);
      }),
      { seed: 37, numRuns: 300 },
    );
  });
});

describe('a spectrum for a picked colour', () => {
  it('integrates back to that colour under D65, and stays between 0 and 1', () => {
    fc.assert(
      fc.property(hexes, (hex) => {
        const spectrum = upsampleColour(hex);
        const wanted = labOf(xyzOfHex(hex), SRGB_WHITE);
        const found = labOf(xyzOf(spectrum));
        expect(Math.hypot(found.L - wanted.L, found.a - wanted.a, found.b - wanted.b)).toBeLessThan(1e-4);
        expect(Math.min(...spectrum)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...spectrum)).toBeLessThanOrEqual(1 + 1e-9);
      }),
      { seed: 37, numRuns: 300 },
    );
  });
  it.each(['#000000', '#808080', '#ffffff'])('is flat for the grey %s', (hex) => {
    const spectrum = upsampleColour(hex);
    for (const band of spectrum) expect(band).toBeCloseTo(xyzOfHex(hex).Y / 100, 12);
  });
  it('shows a flat spectrum as a neutral grey', () => {
    const grey = moveWhite(xyzOf(BANDS_NM.map(() => 0.5)), BAND_WHITE, SRGB_WHITE);
    const [r, g, b] = readHex(hexOfXyz(grey));
    expect([g, b]).toEqual([r, r]);
  });
});

describe('spectra of a layer', () => {
  it('have the visible shares of the layer, and never pass and send back more than all', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('white', 'ivory', 'neutral', '#c9b79a', '#2f4a7a', '#8a2020', '#f6ff00'),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (shade, reflectance, part) => {
          const transmittance = part * (1 - reflectance);
          const found = spectraOf({ shade, visible: { transmittance, reflectance } });
          expect(visibleShare(found.reflectance)).toBeCloseTo(reflectance, 6);
          expect(visibleShare(found.transmittance)).toBeCloseTo(transmittance, 6);
          found.reflectance.forEach((r, i) => expect(r + (found.transmittance[i] ?? 0)).toBeLessThanOrEqual(1 + 1e-9));
        },
      ),
      { seed: 37, numRuns: 300 },
    );
  });
  it('passes next to nothing where next to nothing is told, however bright a deep colour reads', () => {
    const found = spectraOf({ shade: '#8a2020', visible: { transmittance: 1e-9, reflectance: 0.19 } });
    expect(visibleShare(found.transmittance)).toBeCloseTo(1e-9, 12);
  });
  it('keep the white and ivory of the reference example (shift-spectral): transmittance follows reflectance within 2 %', () => {
    const ivory = fitShare(
      IVORY_SHAPE,
      0.15,
      IVORY_SHAPE.map(() => 1),
    );
    const white = fitShare(
      WHITE_SHAPE,
      0.15,
      WHITE_SHAPE.map(() => 1),
    );
    expect((ivory[0] ?? 0) / (ivory[15] ?? 1)).toBeCloseTo(0.1 / 0.16, 2);
    expect((white[0] ?? 0) / (white[15] ?? 1)).toBeCloseTo(0.14 / 0.16, 2);
  });
});

describe('what is no colour', () => {
  it.each(['red', '#fff', '#gggggg', ''])('%j is a named fault', (hex) => {
    expect(() => readHex(hex)).toThrow(StackFault);
  });
  it('a spectrum with bands missing is a named fault', () => {
    expect(() => xyzOf([0.5, 0.5])).toThrow(/2 of 16 bands/);
  });
});
