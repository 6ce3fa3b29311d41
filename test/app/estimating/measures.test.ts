/** Where the length starts, bays, arches, bands, pockets and how cloth is sold: worked by hand; rules are common practice. */
import { describe, expect, it } from 'vitest';
import { checkTreatment } from '#app/estimating/estimate-treatment.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { estimateCase, faceLine, jobOf, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const without = (given: PanelsCase, ...fields: string[]): PanelsCase => ({
  ...given,
  panels: { ...given.panels, ...Object.fromEntries(fields.map((field) => [field, undefined])) },
});
const hung = (hang: NonNullable<PanelsCase['panels']>['hang'], sill?: number): PanelsCase => ({
  ...without({}, 'finishedLength'),
  ...(sill === undefined ? {} : { sill }),
  panels: { finishedLength: undefined, hang },
});

describe('where the length starts', () => {
  it.each<[string, PanelsCase, number, string]>([
    [
      'rings: the eye is ½ in above the heading',
      hung({ fixing: 92, headingBelow: 0.5, to: 'floor', by: 0.5 }),
      91,
      '92 − ½ − ½',
    ],
    ['track: the heading stands ½ in above it', hung({ fixing: 92, headingAbove: 0.5, to: 'floor' }), 92, '92 + ½ − ½'],
    [
      'grommets stand 1¼ in above the pole',
      hung({ fixing: 90, headingAbove: 1.25, to: 'floor' }),
      90.75,
      '90 + 1¼ − ½',
    ],
    ['a puddle lies on the floor', hung({ fixing: 92, to: 'puddle', by: 6 }), 98, '92 − 0 + 6'],
    ['clear of the sill', hung({ fixing: 92, to: 'sill' }, 30), 61.5, '92 − 0 − 30 − ½'],
    ['below the sill', hung({ fixing: 92, to: 'apron' }, 30), 66, '92 − 0 − 30 + 4'],
  ])('%s', (_, given, wanted, formula) => {
    const made = estimateCase(given);
    expect(made.in(made.finished.length)).toBe(wanted);
    expect(made.working.find((step) => step.id === 'finished-length')?.formula).toBe(formula);
  });

  it('the shortest of three readings is taken, and an uneven floor is told', () => {
    const given = hung({ fixing: [92, 91.25, 92.5], to: 'floor' });
    expect(estimateCase(given).in(estimateCase(given).finished.length)).toBe(90.75);
    const read = readJob(jobOf(given));
    expect(read.ok && read.warnings.map((warning) => warning.says)).toContainEqual(
      'The floor is uneven by 1 1/4 in: the shortest reading is taken; hem each width to the floor.',
    );
  });

  it('IN-01: 91 in from ring to floor, 1 in clear, finishes at 90', () => {
    const made = estimateCase(hung({ fixing: 91, to: 'floor', by: 1 }));
    expect(made.in(made.finished.length)).toBe(90);
  });

  it.each<[string, PanelsCase, RegExp]>([
    ['both given', { panels: { hang: { fixing: 92, to: 'floor' } } }, /hang: is given beside finishedLength/],
    ['neither given', without({}, 'finishedLength'), /finishedLength: is missing/],
    [
      'to a sill that nobody measured',
      hung({ fixing: 92, to: 'sill' }),
      /hang\.to: reaches to the sill, but the opening has no sill/,
    ],
    [
      'above and below',
      hung({ fixing: 92, headingAbove: 1, headingBelow: 1, to: 'floor' }),
      /headingAbove: is given beside headingBelow/,
    ],
    ['no length left', hung({ fixing: 20, to: 'sill' }, 30), /hang\.fixing: 20 in leaves no length/],
  ])('refused: %s', (_, given, line) => {
    const read = readJob(JSON.parse(JSON.stringify(jobOf(given))));
    expect(read.ok ? '' : read.faults.map((fault) => `${fault.path}: ${fault.wrong}`).join('\n')).toMatch(line);
  });
});

describe('bays', () => {
  const bay = (turns: number[], projection = 3.5): PanelsCase => ({
    panels: { rodWidth: undefined, bay: { runs: [24, 60, 24], turns, projection } },
  });
  it('45°: each corner takes 2 × 3½ × tan 22.5° = 2.8995 in of 108', () => {
    const { panels } = readPanels(bay([45, 45]));
    expect(panels.rodWidth / 8128).toBeCloseTo(108 - 4 * 3.5 * Math.tan(Math.PI / 8), 3);
  });
  it('a square bay: tan 45° is 1, so each corner takes 7 in', () => {
    expect(readPanels(bay([90, 90])).panels.rodWidth).toBe(94 * 8128);
  });
  it('mirrored bays agree', () => {
    expect(readPanels(bay([30, 60])).panels.rodWidth).toBe(readPanels(bay([60, 30])).panels.rodWidth);
  });
  it.each<[string, PanelsCase, RegExp]>([
    ['a turn too few', bay([45]), /bay\.turns: has 1 for 3 runs/],
    ['a run lost in its corners', bay([90, 90], 40), /bay\.runs\[0\]: 24 in is taken by its corners/],
  ])('refused: %s', (_, given, line) => {
    const read = readJob(JSON.parse(JSON.stringify(jobOf(given))));
    expect(read.ok ? '' : read.faults.map((fault) => `${fault.path}: ${fault.wrong}`).join('\n')).toMatch(line);
  });
});

describe('arches', () => {
  const arched = (rise: number): PanelsCase => ({ panels: { arrangement: 'single', rodWidth: 60, arch: { rise } } });
  it('a half circle is 1.571 times its width', () => {
    const made = estimateCase(arched(30));
    expect(made.in(made.finished.width)).toBeCloseTo(60 * 1.5708, 2);
  });
  it('a flat arch is hardly longer than its chord; a stilted one adds its sides', () => {
    expect(estimateCase(arched(1)).in(estimateCase(arched(1)).finished.width)).toBeCloseTo(60.044, 2);
    expect(estimateCase(arched(40)).in(estimateCase(arched(40)).finished.width)).toBeCloseTo(60 * 1.5708 + 20, 1);
  });
  it('does not draw', () => {
    const read = readJob(jobOf({ panels: { arch: { rise: 10 } } }));
    expect(read.ok ? '' : read.faults.map((fault) => fault.path).join()).toMatch(/arch$/);
  });
});

describe('several panels on one rod', () => {
  it('four still panels of 1½ widths are 6 widths with 8 edges', () => {
    const made = estimateCase({
      panels: { arrangement: 'pair-stationary', panelsOnRod: 4, widths: 1.5, rodWidth: 60 },
    });
    expect(faceLine(made).halfWidths).toBe(12);
    // (6 × 54 - 8 × 3) / 60
    expect(made.fullnessMade).toBeCloseTo(300 / 60, 10);
  });
});

describe('bands', () => {
  const contrast = { id: 'band', role: 'face' as const, width: 54 };
  const banded = (edge: 'leading' | 'hem' | 'both-sides'): PanelsCase => ({
    panels: { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5, bands: [{ edge, cloth: 'band', width: 3 }] },
    more: [contrast],
  });
  it('leading edges: 2 strips of 7 × 100 in, 7 across: one cut of 100 in', () => {
    const line = estimateCase(banded('leading')).takeoff.at(-1)!;
    expect([line.cloth, line.use, line.cuts, line.plan / 8128]).toEqual(['band', 'band, leading edge', 1, 100]);
  });
  it('hem: the made width of 204 in takes 4 strips of 7 in across 54 in cloth', () => {
    const line = estimateCase(banded('hem')).takeoff.at(-1)!;
    expect([line.cuts, line.plan / 8128]).toEqual([4, 28]);
  });
  it('are sewn by the foot: 4 sides of 84 in are 28 ft', () => {
    expect(estimateCase(banded('both-sides')).labour.at(-1)).toEqual({ work: 'bandPerFoot', count: 28 });
  });
});

describe('rod pockets', () => {
  it('rod 1⅜, turn ½, ease ½ and a 2 in header that counts once more: 84 + 4⅜ + 8', () => {
    const made = estimateCase({ panels: { heading: 'rod-pocket', rodDiameter: '1 3/8', header: 2 } });
    expect(made.in(faceLine(made).plainCut)).toBe(96.375);
  });
});

describe('how cloth is sold', () => {
  it("the supplier's step stands before the practice's, and never less than is sold", () => {
    const order = (cloth: PanelsCase['cloth']): number =>
      estimateCase({ cloth: { ...cloth } }).takeoff[0]!.order / 292608;
    expect(order({})).toBe(11.25);
    expect(order({ orderStep: '1 yd' })).toBe(12);
    expect(order({ leastOrder: '20 yd' })).toBe(20);
  });
  it('a cut longer than a whole piece is refused', () => {
    const { panels, face, behind } = readPanels({ cloth: { bolt: 90 } });
    expect(checkTreatment(panels, face, behind, 'in', () => null).map((fault) => fault.wrong)).toEqual([
      'a cut of 100 in is longer than a whole piece of face (90 in)',
    ]);
  });
  it('a repeat longer than a whole piece is refused', () => {
    const read = readJob(jobOf({ cloth: { bolt: 30, repeat: { vertical: 36 } } }));
    expect(read.ok ? '' : read.faults.map((fault) => fault.path).join()).toBe('cloth[0].repeat.vertical');
  });
});
