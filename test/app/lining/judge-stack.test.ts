/** One stack judged: the worked example, what each reading means, and what bad input gets. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { lengthFrom } from '#shared/length.ts';
import type { Glazing } from '#shared/words.ts';
import { classifyClosing } from '#app/lining/light-and-heat/closing.ts';
import { composeLayers, layerOf } from '#app/lining/light-and-heat/compose-layers.ts';
import type { Layer } from '#app/lining/light-and-heat/compose-layers.ts';
import { daylightAt } from '#app/lining/light-and-heat/daylight.ts';
import { damageAt, damageBetween } from '#app/lining/light-and-heat/fade.ts';
import { GLASS } from '#app/lining/light-and-heat/glass.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { fillCloth, resolveCloth, weightOf } from '#app/lining/cloth/resolve-cloth.ts';
import { solveFluxes } from '#app/lining/light-and-heat/solve-fluxes.ts';
import { StackFault } from '#app/lining/stack-fault.ts';
import { STARTER_CLOTH } from '#app/lining/cloth/starter-cloth.ts';
import { faceOf, inputOf, judge, ownOf, starters } from './window-case.ts';

const inches = (n: number) => lengthFrom(n, 'in');
/** The worked stack of the reference checks (stack-drape-2 to -5): face 0.2 / 0.5. */
const WORKED = { visible: { transmittance: 0.2, reflectance: 0.5 } };

describe('light', () => {
  it.each([
    ['stack-drape-1, unlined', [], 0.2, 0.177480298],
    ['stack-drape-2, lining', ['std-white'], 0.098591549, 0.089867996],
    ['stack-drape-3, interlined', ['inter-med', 'std-white'], 0.041297838, 0.037931641],
    ['stack-drape-4, three-pass', ['blackout-3-pass'], 3.2e-5, 2.9573e-5],
    ['stack-drape-5, interlined three-pass', ['inter-med', 'blackout-3-pass'], 1.4463e-5, 1.3366e-5],
  ] as const)('%s (reference checks; single glass 0.822 / 0.1474)', (_, ids, light, withGlass) => {
    const { readings } = judge(starters(...ids), { face: WORKED, opening: { glazing: 'single' } });
    expect(readings.light / light).toBeCloseTo(1, 4);
    expect(readings.lightWithGlass / withGlass).toBeCloseTo(1, 4);
  });
  it('is composed, never multiplied: 0.35 x 0.25 x 0.20 = 0.0175, composed 0.0413 (light-and-heat 1)', () => {
    const { readings } = judge(starters('inter-med', 'std-white'), { face: WORKED });
    expect(readings.light).toBeGreaterThan(2 * 0.0175);
  });
  it('in the room is that of the cloth and that of the gaps, by the open share', () => {
    const { readings, working } = judge(starters('blackout-3-pass'));
    const open = Number(working.find((step) => step.id === 'open-share')?.value);
    const gap = GLASS.double.visible.transmittance;
    expect(readings.lightInRoom).toBeCloseTo((1 - open) * readings.lightWithGlass + open * gap, 4);
    expect(open).toBeGreaterThan(0.001);
  });
  it('round the edges is less with returns and a ceiling mount, and more under tabs', () => {
    const edge = (told: Parameters<typeof judge>[1]) => judge(starters('blackout-3-pass'), told).readings.lightInRoom;
    const bare = edge({ treatment: { returns: { left: inches(0), right: inches(0) } } });
    const returned = edge({});
    const ceiling = edge({ treatment: { mount: { where: 'ceiling', above: inches(4) } } });
    expect(returned).toBeLessThan(bare);
    expect(ceiling).toBeLessThan(returned);
    expect(edge({ treatment: { heading: 'tab' } })).toBeGreaterThan(edge({ treatment: { heading: 'flat' } }));
  });
  it('panels that do not draw stand before the wall first: 72 x 0.8 / 2.5 = 23 in of cloth, 12 of them beside 60 in of glass', () => {
    const { readings, words } = judge(starters('blackout-3-pass'), {
      treatment: { arrangement: 'pair-stationary' },
      made: { fullnessMade: 0.8 },
    });
    expect(readings.lightInRoom).toBeGreaterThan(0.4);
    expect(words.light).toMatchObject({ words: 'does not draw', figure: 'covers about 18 % of the glass' });
  });
});

describe('warmth', () => {
  const low = 84;
  it.each([
    ['open pole, open bottom', { heading: 'grommet', finishedLength: inches(low) }, 0.03, 0.06],
    ['track with returns, open above and below', { finishedLength: inches(low) }, 0.03, 0.06],
    ['returns, hem at the floor', {}, 0.08, 0.17],
    [
      'ceiling track with returns',
      { mount: { where: 'ceiling', above: inches(4) }, finishedLength: inches(low) },
      0.08,
      0.17,
    ],
    ['panels that do not draw', { arrangement: 'pair-stationary' }, 0, 0.03],
  ] as const)('%s (light-and-heat 3)', (_, treatment, least, most) => {
    const { readings, ranges } = judge(starters('std-white'), { treatment });
    const range = ranges.warmth ?? [Number.NaN, Number.NaN];
    expect(range[0]).toBeGreaterThanOrEqual(least);
    expect(range[1]).toBeLessThanOrEqual(most);
    expect(readings.warmth).toBeCloseTo((range[0] + range[1]) / 2, 5);
  });
  it('a pelmet that closes all round makes it sealed', () => {
    const { opening, treatment } = inputOf([]);
    expect(classifyClosing(opening, treatment, true).class).toBe('sealed');
    expect(classifyClosing(opening, treatment).class).toBe('close');
  });
  it('an unknown sill is taken as an open bottom', () => {
    const { opening, treatment } = inputOf([]);
    expect(classifyClosing({ ...opening, sill: null }, treatment)).toMatchObject({ bottom: false, class: 'open' });
  });
});

describe('fade', () => {
  it('is the share of CIE 89/3 damage kept from the back of the face, reckoned here by hand in two bands', () => {
    const visible = { transmittance: 0.3, reflectance: 0.55 };
    const uv = { transmittance: 0.1, reflectance: 0.3 };
    const lining = ownOf('std-white', {
      visible: { transmittance: 0.4, reflectance: 0.5 },
      uv: { transmittance: 0.05, reflectance: 0.2 },
      shade: '#bcbcbc',
    });
    const arriving = (band: 'uv' | 'visible', lined: boolean): number => {
      const glass = layerOf(GLASS.double[band]);
      const face = layerOf(band === 'uv' ? uv : visible);
      const back = layerOf(lining[band] ?? visible);
      const found = solveFluxes(lined ? [glass, back, face] : [glass, face]);
      return found.inward[lined ? 2 : 1] ?? Number.NaN;
    };
    const damage = (lined: boolean): number =>
      damageBetween(300, 400) * arriving('uv', lined) + damageBetween(400, 700) * arriving('visible', lined);
    const { readings } = judge([lining], { face: { visible, uv } });
    expect(readings.fade).toBeCloseTo(1 - damage(true) / damage(false), 5);
  });
  it('of ultraviolet alone would not save the colour: under half of the damage is ultraviolet behind any glass', () => {
    for (const glazing of ['single', 'double', 'double-low-e', 'triple'] as const) {
      const step = judge(starters('std-white'), { opening: { glazing } }).working.find((each) => each.id === 'fade');
      const uv = Number(/ultraviolet is (\d+)/.exec(step?.rests ?? '')?.[1]);
      expect(uv).toBeGreaterThan(15);
      expect(uv).toBeLessThan(45);
    }
  });
});

describe('glass', () => {
  it('double is two panes of single composed, as its provenance says', () => {
    const pane = layerOf(GLASS.single.visible);
    const two = composeLayers([pane, pane]);
    expect(two.Tf).toBeCloseTo(GLASS.double.visible.transmittance, 4);
    expect(two.Rf).toBeCloseTo(GLASS.double.visible.reflectance, 4);
  });
  it('ultraviolet is that of one and of two panes of generic clear glass, by damage (published spectrum)', () => {
    const { glass } = JSON.parse(
      readFileSync(new URL('../../reference/clear-glass-3mm.json', import.meta.url), 'utf8'),
    ) as { readonly glass: readonly (readonly [number, number, number])[] };
    const rows = glass.filter(([nm]) => nm <= 400);
    const weigh = (value: (pane: Layer) => number): number => {
      const sum = (f: (row: readonly [number, number, number]) => number): number =>
        rows.slice(1).reduce((total, row, i) => total + (f(row) + f(rows[i] ?? row)) / 2, 0);
      const damage = (nm: number): number => daylightAt(nm) * damageAt(nm);
      const pane = (T: number, R: number): Layer => layerOf({ transmittance: T, reflectance: R });
      return sum(([nm, T, R]) => damage(nm) * value(pane(T, R))) / sum(([nm]) => damage(nm));
    };
    expect(weigh((pane) => pane.Tf)).toBeCloseTo(GLASS.single.uv.transmittance, 2);
    expect(weigh((pane) => pane.Rf)).toBeCloseTo(GLASS.single.uv.reflectance, 2);
    expect(weigh((pane) => composeLayers([pane, pane]).Tf)).toBeCloseTo(GLASS.double.uv.transmittance, 2);
    expect(weigh((pane) => composeLayers([pane, pane]).Rf)).toBeCloseTo(GLASS.double.uv.reflectance, 2);
  });
});

describe('summer', () => {
  it('a white lining keeps out more sun than a black one: its street side counts (EN 13363-1)', () => {
    const left = (behind: BackCloth[]): number => {
      const step = judge(behind).working.find((each) => each.id === 'summer');
      return Number(/^(\d+) %/.exec(step?.value ?? '')?.[1]);
    };
    expect(left(starters('blackout-3-pass'))).toBeLessThan(left(starters('black-sateen')) - 15);
  });
});

describe('what was assumed', () => {
  it('names every value of generic cloth, and of the face what was not given', () => {
    const { assumed } = judge(starters('std-white'), {
      face: { ...WORKED, weight: 240, colour: '#c9b79a', uv: WORKED.visible, solar: WORKED.visible },
    });
    expect(assumed).toContain('std-white.transmittance');
    expect(assumed.filter((value) => value.startsWith('face.'))).toEqual([]);
  });
  it("her own cloth of a generic id is not assumed, and wins over the program's", () => {
    const own = ownOf('std-white', { id: 'std-white', visible: { transmittance: 0.3, reflectance: 0.6 }, weight: 170 });
    expect(resolveCloth('std-white', [own])).toBe(own);
    expect(resolveCloth('std-white', [])).toBe(STARTER_CLOTH['std-white']);
    expect(resolveCloth('no-such-cloth', [])).toBeNull();
    const { assumed } = fillCloth(own);
    expect(assumed).not.toContain('transmittance');
    expect(assumed).not.toContain('weight');
  });
  it('widens the range', () => {
    const given = judge([], { face: { ...WORKED } }).ranges.light;
    const guessed = judge([]).ranges.light ?? [0, 0];
    expect(given).toBeUndefined();
    expect(guessed[1] / guessed[0]).toBeGreaterThan(2);
  });
  it('weighs what nobody weighed by its family', () => {
    expect(weightOf(faceOf())).toEqual({ gramsPerM2: 215, assumed: true });
    expect(weightOf(faceOf({ weight: 237 }))).toEqual({ gramsPerM2: 237, assumed: false });
    expect(weightOf(STARTER_CLOTH['std-white'])).toEqual({ gramsPerM2: 140, assumed: true });
  });
  it('a face of a known colour but unknown light passes less the deeper it is', () => {
    const deep = fillCloth(faceOf({ colour: '#2f4a7a' }));
    const pale = fillCloth(faceOf({ colour: '#f5f2ec' }));
    expect(deep.visible.transmittance).toBeLessThan(pale.visible.transmittance);
    expect(deep.assumed).toContain('transmittance');
  });
});

describe('bad input gets a named error', () => {
  const codeOf = (run: () => unknown): string => {
    try {
      run();
    } catch (error) {
      if (error instanceof StackFault) return error.code;
      throw error;
    }
    return 'none';
  };
  it('transmittance and reflectance above 1', () => {
    const face = { visible: { transmittance: 0.6, reflectance: 0.5 } };
    expect(codeOf(() => judge([], { face }))).toBe('impossible-optics');
    expect(() => judge([], { face })).toThrow(/face: transmittance 0.6 and reflectance 0.5 make 1.1; their sum/);
  });
  it('a share below 0 or no number', () => {
    expect(codeOf(() => judge([], { face: { uv: { transmittance: -0.1, reflectance: 0.5 } } }))).toBe(
      'impossible-optics',
    );
    expect(codeOf(() => judge([], { face: { solar: { transmittance: Number.NaN, reflectance: 0.5 } } }))).toBe(
      'impossible-optics',
    );
  });
  it('two faces, or none', () => {
    const second = faceOf({ id: 'second' }) as unknown as BackCloth;
    expect(codeOf(() => judge([second]))).toBe('two-faces');
    const lining = STARTER_CLOTH['std-white'] as unknown as FaceCloth;
    expect(codeOf(() => judgeStack({ ...inputOf([]), face: lining }))).toBe('no-face');
  });
  it('an unknown glass', () => {
    expect(codeOf(() => judge([], { opening: { glazing: 'quadruple' as Glazing } }))).toBe('unknown-glass');
  });
  it('a colour that is none', () => {
    expect(codeOf(() => judge([], { face: { colour: 'beige' } }))).toBe('impossible-colour');
  });
  it('a window without width', () => {
    expect(codeOf(() => judge([], { opening: { width: inches(0) } }))).toBe('impossible-number');
  });
});
