/**
 * The working names every setting of the practice that it used: what changes with a setting stands in a step that says so,
 * and the figure of the setting is in its formula.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { takeOffJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { sayFault } from '#shared/fault.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { estimateCase } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const PRINT = { repeat: { vertical: 27, match: 'straight' } } as const;
const PAIR: PanelsCase = { panels: { rodWidth: 72, return: 3.5, overlap: 3.5 }, cloth: PRINT, behind: ['std-white'] };
const heading = (name: NonNullable<PanelsCase['panels']>['heading'], more: PanelsCase['panels'] = {}): PanelsCase => ({
  ...PAIR,
  panels: { ...PAIR.panels, heading: name, ...more },
});
const narrow = { id: 'l', role: 'lining', family: 'standard', width: 45, price: '5/yd' } as const;
const HUNG = { finishedLength: undefined, hang: { fixing: 90, to: 'puddle' } } as const;

function changed(given: PanelsCase, practice: NonNullable<PanelsCase['practice']>): WorkingStep[] {
  const [before, after] = [given, { ...given, practice: { ...given.practice, ...practice } }].map(
    (each) => estimateCase(each).working,
  ) as [readonly WorkingStep[], readonly WorkingStep[]];
  return after.filter((step) => JSON.stringify(before.find(({ id }) => id === step.id)) !== JSON.stringify(step));
}

describe('a setting that the working used was not named in it', () => {
  it.each<[string, PanelsCase, NonNullable<PanelsCase['practice']>, string, RegExp]>([
    ['fullness', PAIR, { fullness: { 'pinch-pleat': 2.2 } }, 'flat-width', /fullness of pinch-pleat/],
    ['what fullness acts on', PAIR, { fullnessOver: 'face' }, 'flat-width', /fullness over face/],
    ['rounding of widths', heading('goblet'), { widthRounding: 'half-up' }, 'widths', /half widths/],
    ['hems in the width', PAIR, { hemsInWidth: true }, 'widths', /hems and seams counted in/],
    ['side hem', PAIR, { sideHem: 2 }, 'fullness-made', /side hems/],
    ['seam', PAIR, { seam: 0.5 }, 'fullness-made', /seams/],
    ['heading', PAIR, { headingAllowance: { 'pinch-pleat': 7 } }, 'plain-cut', /heading of lined pinch-pleat/],
    ['bottom hem', PAIR, { bottomHem: 6 }, 'plain-cut', /bottom hem/],
    ['squaring', PAIR, { squaring: 2 }, 'plain-cut', /squaring/],
    ['shrinkage', PAIR, { shrinkage: 0.03 }, 'plain-cut', /shrinkage before rounding/],
    ['repeats', PAIR, { repeatRule: 'add-one' }, 'cut-length', /one repeat added/],
    ['order from the chart', PAIR, { orderFrom: 'handbook' }, 'order', /from the chart/],
    ['order extra', PAIR, { orderExtra: 'repeat-or-yard' }, 'order', /a yard extra/],
    ['order step', PAIR, { orderStep: '1 yd' }, 'order', /order step/],
    ['pleats in a width', PAIR, { pleatsPerWidth: 6 }, 'points', /pleats in a width/],
    ['brackets', PAIR, { bracketSpacing: 30 }, 'brackets', /span between two brackets/],
    ['stackback', PAIR, { stackback: { lined: { least: 5 } } }, 'stackback', /wall that a width takes/],
    ['lining', PAIR, { lining: { shorter: 2 } }, 'layer-1-cut', /lining heading, hem and how much shorter/],
    ['grommets', heading('grommet'), { spacing: { grommet: 5 } }, 'points', /spacing, edge and ring of grommets/],
    ['grommet edge', heading('grommet'), { spacing: { grommetEdge: 1 } }, 'points', /spacing, edge and ring/],
    ['gliders', heading('wave'), { spacing: { glider: 3 } }, 'points', /glider spacing/],
    ['ends of a wave', heading('wave'), { spacing: { waveEnds: 4 } }, 'flat-width', /glider spacing and ends/],
    ['tabs', heading('tab'), { spacing: { tab: 6 } }, 'points', /spacing of tabs/],
    ['cloth of tabs', heading('tab'), { tab: { width: 3 } }, 'tabs', /width, drop and seam of a tab/],
    ['clips', heading('flat'), { spacing: { clip: 5 } }, 'points', /spacing of rings or clips/],
    ['hooks', heading('pencil-pleat'), { spacing: { hook: 4 } }, 'points', /spacing of hooks/],
    ['pocket', heading('rod-pocket', { rodDiameter: 1 }), { pocket: { ease: 1 } }, 'pocket', /turn and ease/],
    [
      'motor',
      heading('pinch-pleat', { rod: 'track', motor: { at: 'left' } }),
      { motor: { most: 5 } },
      'motor',
      /motor/,
    ],
    ['puddle', heading('pinch-pleat', HUNG), { hang: { puddle: 8 } }, 'finished-length', /lying on the floor/],
    ['hem on the floor', heading('pinch-pleat', HUNG), { puddleHem: 5 }, 'plain-cut', /what lies on the floor/],
    [
      'a lining narrower than its face',
      { ...PAIR, linings: [narrow], behind: ['l'] },
      { lining: { narrower: 4 } },
      'layer-1-widths',
      /narrower than the face/,
    ],
  ])('%s', (_, given, practice, id, named) => {
    const step = changed(given, practice).find((each) => each.id === id);
    expect(step?.rests).toMatch(/practice/);
    expect(step?.rests).toMatch(named);
  });
});

describe('figures instead of words', () => {
  const formulaOf = (given: PanelsCase, id: string) =>
    estimateCase(given).working.find((each) => each.id === id)?.formula;
  it('a pleat and a space in figures: (102 − 41¼) ÷ 10, and (41¼ − 3½ − 1¾) ÷ 9', () => {
    expect(formulaOf(PAIR, 'pleat')).toBe('(102 − 41¼) ÷ 10');
    expect(formulaOf(PAIR, 'pleat-space')).toBe('(41¼ − 3½ − 1¾) ÷ 9');
  });
  it('of unequal returns in figures of each panel', () => {
    const unequal = heading('pinch-pleat', { return: { left: 6, right: 3.5 } });
    expect(formulaOf(unequal, 'pleat')).toBe('(102 − 43¾) ÷ 10; (102 − 41¼) ÷ 10');
  });
  it('a half width is told with its side: left panel the right half, right panel the left one', () => {
    const still = heading('pinch-pleat', { arrangement: 'pair-stationary', overlap: undefined, widths: 1.5 });
    const step = estimateCase(still).working.find(({ id }) => id === 'half-widths');
    expect([step?.formula, step?.value]).toEqual(['1½ in each panel', 'at the return side']);
    expect(step?.rests).toContain('its right half to the left panel, its left half to the right one');
    expect(formulaOf(PAIR, 'half-widths')).toBeUndefined();
  });
  it('4.04 widths: both quantities and what one width fewer saves', () => {
    // 87 1/4 x 2.5 / 54 = 4.04; 5 widths 4 x 108 + 100 + 27 = 559 in, 15 3/4 yd; 4 widths 451 in, 12 3/4 yd.
    const near = estimateCase({ cloth: PRINT, panels: { rodWidth: 76.75, return: 3.5, overlap: 3.5 } });
    expect(near.working.find(({ id }) => id === 'widths')?.formula).toContain('= 4.04');
    expect(near.offer?.says).toBe(
      '4 widths would make 2.34 times, still above the least of the practice, 2.25: 12¾ yd instead of 15¾ yd, 3 yd saved.',
    );
  });
  it('a nap lies one way in the layout', () => {
    const rests = estimateCase({ ...PAIR, cloth: { family: 'velvet' } }).working.find(
      ({ id }) => id === 'laid-out',
    )?.rests;
    expect(rests).toContain('all tops one way');
  });
});

describe('the other kinds', () => {
  const house = JSON.parse(
    readFileSync(new URL('../../reference/every-kind.job.json', import.meta.url), 'utf8'),
  ) as WireJob;
  const workingOf = (practice: WireJob['practice']) => {
    const read = readJob({ ...house, practice: { ...house.practice, ...practice } });
    if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
    const { treatments } = takeOffJob(read.job);
    return new Map(treatments.map(({ kind, tiers }) => [kind, tiers.good.working] as const));
  };
  const usual = workingOf({});
  it.each<[string, NonNullable<WireJob['practice']>, TreatmentKind, string]>([
    ['hem of a valance', { valance: { sideHem: 2 } }, 'valance', 'cut-width'],
    ['seam of a faced valance', { valance: { facedSeam: 1 } }, 'valance', 'plain-cut'],
    ['wrap of a cornice', { cornice: { wrap: 3 } }, 'cornice', 'plain-cut'],
    ['wrap of a cornice, across', { cornice: { wrap: 3 } }, 'cornice', 'cut-width'],
    ['flat cloth of a swag', { swags: { flatWidth: 1.5 } }, 'swags', 'swag-flat-width'],
    ['rows of a Roman shade', { romanShade: { rowSpacing: 8 } }, 'roman-shade', 'rows'],
    ['cut of a Roman shade', { romanShade: { linedWidth: 7 } }, 'roman-shade', 'cut-width'],
    ['hem of a bed skirt', { bedSkirt: { hem: 3 } }, 'bed-skirt', 'plain-cut'],
    ['end hems of a bed skirt', { bedSkirt: { endHem: 3 } }, 'bed-skirt', 'fullness-made'],
    ['eyelets', { showerCurtain: { eyeletSpacing: 5 } }, 'shower-curtain', 'eyelets'],
  ])('%s', (_, practice, kind, id) => {
    const [before, after] = [usual, workingOf(practice)].map((all) => all.get(kind)?.find((step) => step.id === id));
    expect(after).not.toEqual(before);
    expect(after?.rests).toContain('practice');
  });
});
