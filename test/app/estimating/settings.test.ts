/** Every setting of the practice acts as `job-file` describes it. Figures are worked by hand beside each row. */
import { describe, expect, it } from 'vitest';
import { estimateCase, faceLine, jobOf, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';
import { checkPanels } from '#app/estimating/panels/check-panels.ts';
import { readJob } from '#shared/job-file/read-job.ts';

const widthsOf = (given: PanelsCase): number => (faceLine(estimateCase(given)).halfWidths ?? 0) / 2;
const made = (given: PanelsCase) => estimateCase(given);

describe('where fullness acts', () => {
  const panels = { rodWidth: 100, fullness: 2, return: 4, overlap: 4 };
  it('on the whole: 2 × (100 + 4 + 8) = 224, 4.15 widths', () => {
    expect(widthsOf({ panels })).toBe(5);
  });
  it('on the face: 2 × (100 + 4) + 8 = 216, exactly 4 widths', () => {
    expect(widthsOf({ panels, practice: { fullnessOver: 'face' } })).toBe(4);
  });
  it('on the face the returns are taken off the fullness made: (4 × 54 - 12 - 8) / 104', () => {
    expect(made({ panels, practice: { fullnessOver: 'face' } }).fullnessMade).toBeCloseTo(196 / 104, 12);
  });
});

describe('hems and seams in the width', () => {
  it('left out: 216 / 54 is exactly 4', () => {
    expect(widthsOf({ panels: { rodWidth: 108, fullness: 2 } })).toBe(4);
  });
  it('counted in: 4 × 54 - 4 × 3 = 204 is short of 216, so 5', () => {
    expect(widthsOf({ panels: { rodWidth: 108, fullness: 2 }, practice: { hemsInWidth: true } })).toBe(5);
  });
  it('seams too: 3 × 54 - 2 joins × 2 × ½ - 2 × 3 = 154 of 154 is enough, and of 155 is not', () => {
    const practice = { hemsInWidth: true, seam: 0.5 };
    const single = (rodWidth: number): PanelsCase => ({
      practice,
      panels: { arrangement: 'single', rodWidth, fullness: 1 },
    });
    expect(widthsOf(single(154))).toBe(3);
    expect(widthsOf(single(155))).toBe(4);
  });
});

describe('rounding of widths', () => {
  // 2.5 × 50 = 125 in: 2.31 widths in all, 1.16 a piece.
  const panels = { rodWidth: 50, fullness: 2.5 };
  it.each([
    ['up', 3],
    ['half-up', 3],
    ['nearest-half', 2],
  ] as const)('%s gives %d', (widthRounding, wanted) => {
    expect(widthsOf({ panels, practice: { widthRounding } })).toBe(wanted);
  });
  it('half-up of a single panel: 2.31 goes to 2½', () => {
    expect(widthsOf({ panels: { ...panels, arrangement: 'single' }, practice: { widthRounding: 'half-up' } })).toBe(
      2.5,
    );
  });
  it('two panels of 2½ widths are 5 cuts: a half width is a full cut split', () => {
    const estimate = made({
      panels: { ...panels, arrangement: 'single', quantity: 2 },
      practice: { widthRounding: 'half-up' },
    });
    expect(faceLine(estimate).cuts).toBe(5);
  });
  it('given by the piece: 1½ each of a pair is 3', () => {
    expect(widthsOf({ panels: { arrangement: 'pair-stationary', widths: 1.5 } })).toBe(3);
  });
});

describe('cut length', () => {
  it('heading turn by lining: 8 unlined, 4 lined', () => {
    const practice = { headingAllowance: { 'pinch-pleat': { unlined: 8, lined: 4 } } };
    expect(made({ practice }).in(faceLine(made({ practice })).plainCut)).toBe(100);
    const lined = made({ practice, behind: ['std-white'] });
    expect(lined.in(faceLine(lined).plainCut)).toBe(96);
  });
  it('shrinkage acts before rounding to repeats: 100 / 0.97 = 103.0928, up to 4 × 26 = 104', () => {
    const estimate = made({ practice: { shrinkage: 0.03 }, cloth: { repeat: { vertical: 26 } } });
    expect(estimate.in(faceLine(estimate).plainCut)).toBeCloseTo(103.0928, 3);
    expect(estimate.in(faceLine(estimate).cutLength)).toBe(104);
  });
  it('squaring is on every cut: 84 + 8 + 8 + 2', () => {
    const estimate = made({ practice: { squaring: 2 } });
    expect(estimate.in(faceLine(estimate).plainCut)).toBe(102);
  });
  it('without a repeat the cut is the plain cut and no repeats are told', () => {
    expect(faceLine(made({}))).toMatchObject({ repeatsPerCut: null });
    expect(faceLine(made({})).cutLength).toBe(faceLine(made({})).plainCut);
  });
});

describe('half-drop laid out alone', () => {
  // c = 100, R = 27: same phase ⌈100/27⌉ × 27 = 108, other phase (⌈100/27 - ½⌉ + ½) × 27 = 121.5.
  const half = (vertical: number, widths: number): PanelsCase => ({
    cloth: { repeat: { vertical, match: 'half-drop' } },
    panels: { arrangement: 'single', widths },
  });
  it('R = 27: grouped is best for 4 cuts: 2 × 108 + 121.5 + 100', () => {
    const estimate = made(half(27, 4));
    expect(estimate.in(faceLine(estimate).plan)).toBe(437.5);
  });
  it('R = 36: the other phase is nearer (108 same, 108 + ... 90 + 18): alternating is best', () => {
    // same ⌈2.78⌉ × 36 = 108; other (⌈2.28⌉ + ½) × 36 = 126: grouped 108 + 126 + 108 + 100.
    const estimate = made(half(36, 4));
    expect(estimate.in(faceLine(estimate).plan)).toBe(442);
  });
  it('R = 40: c/R = 2.5, other phase exactly 2.5 × 40 = 100, same 120: 3 × 100 + 100', () => {
    const estimate = made(half(40, 4));
    expect(estimate.in(faceLine(estimate).plan)).toBe(400);
  });
  it('a pair of 1½ each: two level and one dropped, both leading edges alike', () => {
    // c = 100, R = 40: alternate level, dropped, level: 100 + 100 + 100.
    const estimate = made({ cloth: { repeat: { vertical: 40, match: 'half-drop' } }, panels: { widths: 1.5 } });
    expect(faceLine(estimate).cuts).toBe(3);
    expect(estimate.in(faceLine(estimate).plan)).toBe(300);
  });
});

describe('orders', () => {
  const repeat = { vertical: 27, match: 'straight' as const };
  const order = (given: PanelsCase): number => {
    const estimate = made(given);
    return estimate.yards(faceLine(estimate).order);
  };
  const panels = { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5 };
  it.each([
    ['from the layout, one repeat, quarter yard', {}, 12.75],
    ['from the chart: 432 + 27 = 459 in', { orderFrom: 'handbook' }, 12.75],
    ['nothing extra: 424 in', { orderExtra: 'none' }, 12],
    ['the greater of repeat and yard: 424 + 36 in', { orderExtra: 'repeat-or-yard' }, 13],
    ['whole yards', { orderStep: '1 yd' }, 13],
    ['tenths of a metre', { orderStep: '0.1 m' }, 12.5766],
  ] as const)('%s', (_, practice, wanted) => {
    expect(order({ panels, cloth: { repeat }, practice })).toBeCloseTo(wanted, 3);
  });
  it('plain cloth takes no repeat; a yard where the greater is asked for', () => {
    expect(order({ panels, practice: {} })).toBe(11.25);
    expect(order({ panels, practice: { orderExtra: 'repeat-or-yard' } })).toBe(12.25);
  });
  it('a supplier who cuts on the repeat asks none', () => {
    expect(order({ panels, cloth: { repeat: { ...repeat, cutOnRepeat: true } } })).toBe(12);
  });
});

describe('layers behind', () => {
  const panels = { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5 };
  const own = (width: number, practice?: PanelsCase['practice']): PanelsCase => ({
    panels,
    ...(practice ? { practice } : {}),
    linings: [{ id: 'own', role: 'lining', family: 'standard', width }],
    behind: ['own'],
  });
  const liningWidths = (given: PanelsCase): number => (made(given).takeoff[1]?.halfWidths ?? 0) / 2;
  it.each([
    [54, 4],
    [48, 5], // 4 × 54 - 12 = 204; 204 / 48 = 4.25
    [51, 4], // 204 / 51 is exactly 4
    [118, 2],
  ])('%d in wide takes %d widths', (width, wanted) => {
    expect(liningWidths(own(width))).toBe(wanted);
  });
  it('narrower acts on each piece: 204 - 2 × 4 = 196; 196 / 49 = 4', () => {
    expect(liningWidths(own(49))).toBe(5);
    expect(liningWidths(own(49, { lining: { narrower: 4 } }))).toBe(4);
  });
  it('interlining is cut by its own allowances: 84 + 4', () => {
    const estimate = made({ panels, behind: ['inter-med', 'std-white'] });
    expect(estimate.takeoff.map((line) => [line.role, estimate.in(line.cutLength)])).toEqual([
      ['face', 100],
      ['interlining', 88],
      ['lining', 90],
    ]);
  });
  it('any number of layers, in order', () => {
    const behind = ['inter-med', 'black-sateen', 'inter-light', 'std-white'];
    expect(made({ panels, behind }).takeoff.map((line) => line.cloth)).toEqual(['face', ...behind]);
  });
  it('a wide lining runs sideways with no seams where it may and that takes less', () => {
    const estimate = made({
      panels,
      linings: [{ id: 'wide', role: 'lining', family: 'standard', width: 118, railroad: true }],
      behind: ['wide'],
    });
    expect(estimate.takeoff[1]).toMatchObject({ railroaded: false });
    const long = made({
      panels: { ...panels, rodWidth: 40 },
      linings: [{ id: 'wide', role: 'lining', family: 'standard', width: 118, railroad: true }],
      behind: ['wide'],
    });
    expect(long.takeoff[1]).toMatchObject({ railroaded: true, halfWidths: null });
  });
});

describe('one width fewer is offered, never taken', () => {
  it('4.04 widths take 5, and 4 are offered while they make the least fullness', () => {
    // 2.5 × 87.3 = 218.25 = 4.04 widths; 4 make (216 - 12) / 87.3 = 2.34, above 2.25.
    const estimate = made({ panels: { rodWidth: 87.3, fullness: 2.5 } });
    expect(faceLine(estimate).halfWidths).toBe(10);
    expect(estimate.offer).toMatchObject({ halfWidths: 8 });
    expect(estimate.offer?.fullnessMade).toBeCloseTo(204 / 87.3, 5);
  });
  it('is not offered below the least', () => {
    expect(
      made({ panels: { rodWidth: 87.3, fullness: 2.5 }, practice: { leastFullness: { 'pinch-pleat': 2.4 } } }).offer,
    ).toBeNull();
  });
});

describe('weight on the rod', () => {
  it('made width with side hems × length with the hems that stay in × mass per area', () => {
    // Face 200 g/m2: (204 + 12) × 100 in; lining 113 g/m2 at 204 × 90 in. 1 in2 is 0.00064516 m2.
    const estimate = made({
      panels: { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5 },
      cloth: { weight: '200 g/m2', repeat: { vertical: 27 } },
      linings: [{ id: 'own', role: 'lining', family: 'standard', width: 54, weight: '113 g/m2' }],
      behind: ['own'],
    });
    expect(estimate.takeoff[0]?.grams).toBeCloseTo(216 * 100 * 0.00064516 * 200, 6);
    expect(estimate.takeoff[1]?.grams).toBeCloseTo(204 * 90 * 0.00064516 * 113, 6);
    expect(estimate.grams).toBeCloseTo((estimate.takeoff[0]?.grams ?? 0) + (estimate.takeoff[1]?.grams ?? 0), 9);
  });
  it('squaring is trimmed: it does not hang', () => {
    const plain = made({ cloth: { weight: '200 g/m2' } });
    const squared = made({ cloth: { weight: '200 g/m2' }, practice: { squaring: 2 } });
    expect(squared.grams).toBeCloseTo(plain.grams, 9);
  });
});

describe('what no cloth can make is refused by name', () => {
  const faultsOf = (given: PanelsCase): string[] => {
    const { panels, face, behind } = readPanels(given);
    return checkPanels(panels, face, behind, given.units ?? 'in').map((fault) =>
      fault.path.replace(/^.*treatments\[0\]\./, ''),
    );
  };
  it.each<[string, PanelsCase, string]>([
    ['seams that take the whole width', { practice: { seam: 27 } }, 'practice.seam'],
    ['a cloth of a hair', { cloth: { width: '0.1 mm' } }, 'rodWidth'],
    ['side hems that take it all', { practice: { sideHem: 60 } }, 'practice.sideHem'],
    ['widths that are all hem', { panels: { widths: 0.5 }, practice: { sideHem: 14 } }, 'widths'],
  ])('%s', (_, given, path) => {
    expect(faultsOf(given)).toContain(path);
  });
  it.each<[string, PanelsCase, RegExp]>([
    [
      'an overlap on one-way panels',
      { panels: { arrangement: 'one-way', overlap: 3.5 } },
      /overlap: is 3 1\/2 in on one-way/,
    ],
    ['a return longer than the rod', { panels: { return: 80 } }, /return: 80 in is more than the rod/],
    ['fullness beside widths', { panels: { fullness: 2, widths: 2 } }, /widths: is given beside fullness/],
    ['a rod of nothing', { panels: { rodWidth: 0 } }, /rodWidth: is zero/],
    ['fullness in per cent', { panels: { fullness: 250 } }, /fullness: is more than six times/],
    ['cloth of no width', { cloth: { width: 0 } }, /cloth\[0\]\.width: is zero/],
    ['a match without its repeat', { cloth: { repeat: { match: 'straight' } } }, /repeat\.vertical: is missing/],
  ])('%s', (_, given, line) => {
    const read = readJob(jobOf(given));
    expect(read.ok ? '' : read.faults.map((fault) => `${fault.path}: ${fault.wrong}`).join('\n')).toMatch(line);
  });
});
