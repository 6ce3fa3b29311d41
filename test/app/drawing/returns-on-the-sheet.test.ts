/**
 * What hangs flat at either side of each panel, as the workroom cuts and pleats it: returns left and right are measured
 * each by itself (common practice). Figures are worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { drawWorkSheet, drawWorkRows } from '#app/drawing/draw-work-sheet.ts';
import { layOutPanels } from '#app/drawing/work/lay-out-panel.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';
import { formatLength } from '#shared/format-length.ts';
import { lengthIn } from '#shared/length.ts';
import { jobOf } from '../estimating/panels-case.ts';
import type { PanelsCase } from '../estimating/panels-case.ts';
import { brokenNumbers, clashes, strays, wordsOf } from './read-drawing.ts';

const bare = { behind: [] };
const inches = (value: number) => lengthIn(Math.round(value), 'in', 4);

function sheetOf(panels: PanelsCase['panels'], practice: PanelsCase['practice'] = {}) {
  const stacks = { good: bare, better: bare, best: bare };
  const read = readJob(jobOf({ panels: { ...panels, stacks }, practice }));
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const { job } = read;
  const treatment = job.rooms[0]?.openings[0]?.treatments[0];
  const made = priceJob(job).treatments[0]?.tiers.good;
  const face = made?.takeoff[0];
  if (treatment?.kind !== 'panels' || !made || !face) throw new Error('the case has no panels');
  const clothOf = (id: string) => resolveCloth(id, job.cloth);
  const say = (length: number) => formatLength(length, 'in', { fractions: 'set', decimal: '.' });
  const layouts = layOutPanels({ treatment, made, clothOf, say, sayUnit: say, detail: 'paper' }, face);
  const input = { treatment, made, clothOf, units: 'in', width: 504, detail: 'paper' } as const;
  const working = (id: string) => made.working.find((step) => step.id === id);
  return { layouts, drawing: drawWorkSheet(input), rows: drawWorkRows(input), working };
}

const sidesOf = (panels: PanelsCase['panels']) =>
  sheetOf(panels).layouts.map(({ sides, mirrored, pleat, points }) => ({
    name: mirrored ? 'both' : sides.name,
    left: inches(sides.left.width),
    right: inches(sides.right.width),
    finished: inches(sides.finished),
    pleat: inches(pleat),
    space: inches(points.space),
  }));

describe('returns left and right', () => {
  const PAIR = { rodWidth: 72, fullness: 2.5, return: { left: 6, right: 3.5 }, overlap: 3.5 };
  it('6 and 3½ were drawn as 4¾ on both panels of a pair', () => {
    // 72 / 2 + 6 + 1¾ and 72 / 2 + 3½ + 1¾; flat 102, 10 pleats; the spaces are alike: 36 / 9.
    expect(sidesOf(PAIR)).toEqual([
      { name: 'left', left: 6, right: 1.75, finished: 43.75, pleat: 5.825, space: 4 },
      { name: 'right', left: 1.75, right: 3.5, finished: 41.25, pleat: 6.075, space: 4 },
    ]);
  });
  it('the panels together are as wide as the rod with its returns and overlap', () => {
    const finished = sidesOf(PAIR).reduce((sum, each) => sum + each.finished, 0);
    expect(finished).toBe(72 + 6 + 3.5 + 3.5);
  });
  it('one way, 6 and 3½ were drawn as 9½ at one end', () => {
    const oneWay = { arrangement: 'one-way', rodWidth: 72, fullness: 2.5, return: { left: 6, right: 3.5 } } as const;
    // 72 + 9½; 4 widths: flat 210, 20 pleats; 72 / 19.
    expect(sidesOf(oneWay)).toEqual([
      { name: 'only', left: 6, right: 3.5, finished: 81.5, pleat: 6.425, space: 3.7895 },
    ]);
  });
  it('one way, 3½ at both ends was drawn as 7 at one', () => {
    const oneWay = { arrangement: 'one-way', rodWidth: 72, fullness: 2.5, return: 3.5 } as const;
    expect(sidesOf(oneWay)).toMatchObject([{ left: 3.5, right: 3.5 }]);
  });
  it('three on a rod had 2⅓ each, the middle one too', () => {
    const three = { arrangement: 'pair-stationary', panelsOnRod: 3, rodWidth: 72, fullness: 2.5, return: 3.5 } as const;
    expect(sidesOf({ ...three, overlap: 0 })).toMatchObject([
      { name: 'both', left: 3.5, right: 0, finished: 27.5 },
      { name: 'middle', left: 0, right: 0, finished: 24 },
    ]);
  });
  it('alike on both sides, one drawing stands for the pair', () => {
    expect(sidesOf({ ...PAIR, return: 3.5 })).toMatchObject([
      { name: 'both', left: 3.5, right: 1.75, finished: 41.25 },
    ]);
  });
  it('the half width of the right panel stands at its right', () => {
    // 2½ widths each, flat 135: left panel seams at 27 and 81, right panel at 54 and 108.
    const given = { ...PAIR, arrangement: 'pair-stationary', overlap: 0, fullness: undefined, widths: 2.5 } as const;
    const { fullness: _, ...widths } = given;
    expect(sheetOf(widths).layouts.map(({ seams }) => seams.map(inches))).toEqual([
      [27, 81],
      [54, 108],
    ]);
  });
  it('the working gives the cloth in a pleat of each panel', () => {
    expect(sheetOf(PAIR).working('pleat')?.value).toBe('left ≈5 13/16, right ≈6 1/16');
    expect(sheetOf({ ...PAIR, return: 3.5 }).working('pleat')?.value).toBe('≈6 1/16');
    const three = { arrangement: 'pair-stationary', panelsOnRod: 3, rodWidth: 72, fullness: 2.5, return: 3.5 } as const;
    // 1½ widths each, flat 75, 7 pleats: (75 - 27½) / 7 and (75 - 24) / 7.
    expect(sheetOf(three).working('pleat')?.value).toBe('outer ≈6 13/16, middle ≈7 5/16');
  });
  it.each([
    ['a pair', PAIR],
    ['one way', { arrangement: 'one-way', rodWidth: 72, fullness: 2.5, return: { left: 6, right: 3.5 } }],
    ['four on a rod', { arrangement: 'pair-stationary', panelsOnRod: 4, rodWidth: 110, fullness: 2.5, return: 3.5 }],
  ] as const)('%s: the sheet is sound, and names each panel', (name, panels) => {
    const { drawing, rows } = sheetOf(panels);
    expect(brokenNumbers(drawing)).toEqual([]);
    for (const row of rows) {
      expect(clashes(row)).toEqual([]);
      expect(strays(row)).toEqual([]);
    }
    const words = wordsOf(drawing).join(' | ');
    if (name === 'a pair') {
      expect(words).toContain('Left panel, spread flat');
      expect(words).toContain('Right panel, made');
      expect(words).toContain('6 return');
      expect(words).toContain('3½ return');
      expect(words).not.toContain('4¾');
    }
  });
});
