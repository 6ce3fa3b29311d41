/** Cloth that knows more of itself: two sides, spectra, thickness, shrinkage, needle, care, hand, and where values come from. */
import { describe, expect, it } from 'vitest';
import type { BackCloth } from '#shared/cloth.ts';
import { sayFault } from '#shared/fault.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { GENERIC_CLOTH_IDS } from '#shared/words.ts';
import { composeTwo, layerOf } from '#app/lining/light-and-heat/compose-layers.ts';
import { GLASS } from '#app/lining/light-and-heat/glass.ts';
import { BANDS_NM } from '#app/lining/light-and-heat/observer.ts';
import { fillCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { JUDGED_VALUES, provenanceOf } from '#app/lining/cloth/starter-cloth.ts';
import { IVORY_SHAPE, WHITE_SHAPE } from '#app/lining/light-and-heat/spectra.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { listReadings } from '#app/lining/say/list-readings.ts';
import { faceOf, inputOf, judge, levelOf, ownOf, rulesOf, starters } from './window-case.ts';

const VISIBLE = { transmittance: 0.2, reflectance: 0.4 };
const flat = (share: number): number[] => BANDS_NM.map(() => share);

describe('two sides', () => {
  it('the street side meets the glass, the room side the room (Stokes composition, worked with it)', () => {
    const face = { visible: VISIBLE, streetReflectance: { visible: 0.7 } };
    const cloth = { Tf: 0.2, Tb: 0.2, Rf: 0.7, Rb: 0.4 };
    const expected = composeTwo(layerOf(GLASS.double.visible), cloth).Tf;
    expect(judge([], { face }).readings.lightWithGlass).toBeCloseTo(expected, 5);
    expect(expected).toBeGreaterThan(judge([], { face: { visible: VISIBLE } }).readings.lightWithGlass);
  });
  it('a street side in the sun’s band keeps the gain out: EN 13363-1 takes the side facing the glass', () => {
    const solar = { transmittance: 0.05, reflectance: 0.2 };
    const left = (told: Partial<BackCloth>): number => {
      const step = judge([ownOf('std-white', { solar, ...told })]).working.find((each) => each.id === 'summer');
      return Number(/^(\d+) %/.exec(step?.value ?? '')?.[1]);
    };
    expect(left({ streetReflectance: { solar: 0.75 } })).toBeLessThan(left({}) - 10);
  });
  it('passes and sends back at most what arrives, on each side', () => {
    const face = { visible: VISIBLE, streetReflectance: { visible: 0.9 } };
    expect(() => judge([], { face })).toThrow(StackFault);
  });
});

describe('spectra', () => {
  it('measured bands decide the colour: a white and an ivory one differ as their shapes do', () => {
    const own = (shape: readonly number[]) =>
      ownOf('std-white', {
        visible: null,
        spectra: { transmittance: shape.map((s) => s / 3), reflectance: [...shape].map((s) => s * 0.7) },
      });
    const shift = (shape: readonly number[]) => judge([own(shape)]).readings.colourShift;
    expect(shift(IVORY_SHAPE)).toBeGreaterThan(shift(WHITE_SHAPE) + 3);
  });
  it('give the visible shares where none were given, and then nothing is assumed of them', () => {
    const filled = fillCloth(faceOf({ spectra: { transmittance: flat(0.3), reflectance: flat(0.5) } }));
    expect(filled.visible.transmittance).toBeCloseTo(0.3, 6);
    expect(filled.assumed).not.toContain('transmittance');
    expect(filled.assumed).not.toContain('colour');
  });
  it.each([
    ['too few bands', { transmittance: [0.1], reflectance: flat(0.5) }, 'missing-spectrum'],
    ['more than all in a band', { transmittance: flat(0.6), reflectance: flat(0.5) }, 'impossible-optics'],
  ] as const)('%s: a named error', (_, spectra, code) => {
    let found = 'none';
    try {
      fillCloth(faceOf({ spectra }));
    } catch (error) {
      if (error instanceof StackFault) found = error.code;
    }
    expect(found).toBe(code);
  });
});

describe('measures of her own', () => {
  it('thickness warms a close-fitting stack, hand makes it firm, needle decides the holes', () => {
    const close = { treatment: { mount: { where: 'ceiling' as const, above: 0 as never } } };
    const warmth = (mm: number) => judge([ownOf('std-white', { thickness: mm })], close).readings.warmth;
    expect(warmth(3)).toBeGreaterThan(warmth(0.3));
    const body = (hand: 'limp' | 'stiff') => judge([ownOf('std-white', { hand })]).readings.body;
    expect(body('stiff')).toBeGreaterThan(body('limp'));
    expect(rulesOf(judge([ownOf('blackout-3-pass', { needle: 'closes' })]))).not.toContain('needle-holes');
    expect(levelOf(judge([ownOf('soft-blackout', { needle: 'shows' })]), 'needle-holes')).toBe('caution');
  });
  it('a lining of 7 oz is firm by its make, one of 10 a luxury weight with more body yet (common practice)', () => {
    const body = (ounces: number, hand?: 'soft') =>
      judge([ownOf('std-white', { weight: ounces * 33.9057474748823, ...(hand === undefined ? {} : { hand }) })], {
        face: { weight: 120 },
      });
    expect(body(5).words.body.words).toBe('soft');
    expect(body(7).words.body.words).toBe('medium');
    expect(body(10).readings.body).toBeGreaterThan(body(7).readings.body);
    // What she says of its hand stands.
    expect(body(7, 'soft').readings.body).toBeLessThan(body(7).readings.body);
  });
  it('a guess of hers is marked and widens the range; a value of hers is not', () => {
    const own = (sources: BackCloth['sources']) => judge([ownOf('std-white', { visible: VISIBLE, sources })]);
    expect(own({ transmittance: 'assumed' }).assumed).toContain('own.transmittance');
    expect(own({ transmittance: 'supplier' }).assumed).not.toContain('own.transmittance');
  });
  it('a face and lining of one shrinkage never warn of mismatch, whatever their fibres (common practice)', () => {
    const shrinkage = { length: 0.03, width: 0.02 };
    const behind = [ownOf('std-white', { content: { polyester: 100 }, shrinkage })];
    const found = rulesOf(judge(behind, { face: { content: { cotton: 100 }, shrinkage } }));
    expect(found).not.toContain('match-content');
    expect(found).not.toContain('shrinkage-differs');
  });
  it.each([
    ['a thickness of nothing', { thickness: 0 }],
    ['a shrinkage of all', { shrinkage: { length: 1, width: 0 } }],
  ])('%s is refused', (_, told) => {
    expect(() => fillCloth(faceOf(told))).toThrow(/cannot be of any cloth/);
  });
});

describe('the starter book', () => {
  it('says of every value where it comes from', () => {
    for (const id of GENERIC_CLOTH_IDS)
      for (const value of JUDGED_VALUES) expect(provenanceOf(id, value)).toMatch(/typical, assumed|common practice/);
  });
});

describe('in a job file', () => {
  const read = (cloth: object) =>
    readJob({
      linenfold: 1,
      units: 'in',
      currency: 'USD',
      client: { name: 'Invented client' },
      cloth: [{ id: 'own', role: 'lining', family: 'standard', width: 54, ...cloth }],
      rooms: [],
    });
  const faults = (cloth: object): string => {
    const found = read(cloth);
    return found.ok ? '' : found.faults.map(sayFault).join('\n');
  };
  it('everything she knows is read', () => {
    const known = {
      streetReflectance: { visible: 0.6 },
      spectra: { transmittance: flat(0.3), reflectance: flat(0.5) },
      transmittanceWithin: 0.02,
      thickness: 0.4,
      shrinkage: { length: 0.03, width: 0.01 },
      needle: 'closes',
      care: 'wash',
      flame: { test: 'NFPA 701', certificate: 'invented 1' },
      hand: 'soft',
      sources: { transmittance: 'measured' },
    };
    const found = read({ ...known, transmittance: 0.3, reflectance: 0.5 });
    expect(found.ok && found.job.cloth[0]).toMatchObject(known);
  });
  it.each([
    [{ spectra: { transmittance: [0.1], reflectance: flat(0.2) } }, /cloth\[0\]\.spectra\.transmittance.*16 bands/],
    [{ spectra: { transmittance: flat(0.7), reflectance: flat(0.5) } }, /spectra.*more than 1 at 400 nm/],
    [
      { transmittance: 0.6, reflectance: 0.2, streetReflectance: { visible: 0.5 } },
      /streetReflectance\.visible.*more than 1/,
    ],
    [{ thickness: -1 }, /thickness/],
    [{ needle: 'heals' }, /needle.*closes, shows, punctures/],
    [{ sources: { transmittance: 'hearsay' } }, /measured, measured-at-home, supplier, second-hand, assumed/],
    [{ hand: 'crisp' }, /hand.*limp/],
  ])('%j is a fault with its remedy', (cloth, message) => {
    expect(faults(cloth)).toMatch(message);
  });
});

describe('every reading', () => {
  it('has a value inside its range, a unit, what it rests on, and a step that works it out', () => {
    const input = inputOf(starters('inter-med', 'std-white'));
    const steps = judge(starters('inter-med', 'std-white')).working.map((step) => step.id);
    const list = listReadings(input);
    expect(list.map((each) => each.id)).toEqual([
      ...['light', 'lightWithGlass', 'lightInRoom', 'colourShift', 'warmth', 'windowU', 'heatSaved', 'sunGain'],
      ...['glassTemperature', 'fade', 'body', 'weight'],
    ]);
    for (const each of list) {
      expect(each.value, each.id).toBeGreaterThanOrEqual(each.range[0] - 1e-9);
      expect(each.value, each.id).toBeLessThanOrEqual(each.range[1] + 1e-9);
      expect(each.rests).not.toBe('');
      expect(steps).toContain(each.step);
    }
  });
  it('the glass on a winter night stands in the working with its numbers (ISO 13788, from memory)', () => {
    const { working } = judge(starters('std-white'), { room: { climate: 'cold' }, opening: { glazing: 'single' } });
    const step = working.find((each) => each.id === 'glass-temperature');
    // Bare: 20 − 0.13 ÷ (1 ÷ 5.8) × 30 = −2.6 °C; dew point of 20 °C at 50 % is 9.3 °C.
    expect(step?.value).toMatch(/bare -2\.6 °C; dew point 9\.3 °C at 50 %/);
  });
});
