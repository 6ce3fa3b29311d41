/** What the decorator is told of her cloth: seams against the repeat across, nap, pieces. Rules are common practice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seamsMatch, wholeRepeats } from '#app/estimating/repeats-across.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthFrom, ticks } from '#shared/length.ts';
import type { JobResult } from '#shared/result.ts';
import { jobOf } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

function priced(given: PanelsCase): JobResult {
  const read = readJob(jobOf({ behind: [], ...given }));
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  return priceJob(read.job, read.warnings, { plan: false });
}

const told = (given: PanelsCase): string[] => priced(given).warnings.map(({ says }) => says);
const seams = (given: PanelsCase): string[] => told(given).filter((says) => /Seams|repeat across/.test(says));

/** Two panels of two widths, each with one seam. */
const PANELS = { return: 3.5, overlap: 3.5, rodWidth: 72, fullness: 2.5 };
const across = (horizontal: number): PanelsCase => ({
  panels: PANELS,
  cloth: { repeat: { vertical: 27, horizontal, match: 'straight' } },
});

describe('seams fell where the pattern does not meet', () => {
  // 206 1/4 in flat over 40 in is 5.16: 6 widths, where 54 in makes 4.
  it('20 in across in 54 in is told, with the usable width that matches and what it takes', () => {
    expect(seams(across(20))).toEqual([
      'Seams of face cannot match: 54 in between them is not whole repeats of 20 in across. Joined on whole repeats, as the practice may say, each width brings 40 in; it takes 6 widths instead of 4.',
    ]);
  });
  it('a usable width of 40 in is priced so, and nothing is told', () => {
    const given = { ...across(20), cloth: { ...across(20).cloth, usableWidth: 40 } };
    const widths = priced(given).treatments[0]?.tiers.good.takeoff[0]?.halfWidths;
    expect([widths, seams(given)]).toEqual([12, []]);
  });
  it.each([27, 13.5, 18, 54])('%d in across in 54 in matches', (horizontal) => {
    expect(seams(across(horizontal))).toEqual([]);
  });
  it('a repeat as it is printed, to an eighth, is eased in at the seam', () => {
    expect(seams({ ...across(13.5), cloth: { width: 54.125, repeat: { vertical: 27, horizontal: 13.5 } } })).toEqual(
      [],
    );
  });
  it('a repeat wider than the cloth cannot read on at all', () => {
    expect(seams(across(60))).toEqual([
      'One repeat across of face (60 in) is wider than the cloth between its seams (54 in): joined widths cannot read on.',
    ]);
  });
  it('seams that would eat the matching width end in a word, not in a count without end', () => {
    const wide = { ...across(30), practice: { seam: 16, hemsInWidth: true } };
    expect(seams(wide)).toEqual([
      'One repeat across of face (30 in) is wider than the cloth between its seams (22 in): joined widths cannot read on.',
    ]);
  });
  it('single widths have no seam', () => {
    const single = { arrangement: 'pair-stationary', rodWidth: 40, return: 3.5, widths: 1 } as const;
    expect(seams({ ...across(20), panels: single })).toEqual([]);
  });
  it('what is advised matches, is not wider than the cloth, and one repeat more would be', () => {
    const length = fc.integer({ min: 1000, max: 1_000_000 }).map(ticks);
    fc.assert(
      fc.property(length, length, (usable, repeat) => {
        const width = wholeRepeats(usable, repeat);
        if (width === null) return usable < repeat;
        return width <= usable && width + repeat > usable && seamsMatch(width, repeat);
      }),
    );
    expect(wholeRepeats(lengthFrom(54, 'in'), lengthFrom(20, 'in'))).toBe(lengthFrom(40, 'in'));
  });
});

/**
 * A practice that joins on whole repeats (common practice: the horizontal repeat sets where seams can fall, and so the usable
 * width). By default the cloth is taken as its sheet says: the settled arithmetic of panels, and what was frozen, stays.
 */
describe('seams on whole repeats, where the practice says so', () => {
  const joins = (given: PanelsCase): PanelsCase => ({
    ...given,
    practice: { ...given.practice, seamMatch: 'whole-repeats' },
  });
  const face = (given: PanelsCase) => priced(given).treatments[0]?.tiers.good.takeoff[0];
  const step = (given: PanelsCase, id: string) =>
    priced(given).treatments[0]?.tiers.good.working.find((each) => each.id === id);

  it('20 in across in 54 in: a joined width brings 40 in, 6 widths instead of 4, and the warning is gone', () => {
    expect([face(across(20))?.halfWidths, face(joins(across(20)))?.halfWidths]).toEqual([8, 12]);
    expect(seams(joins(across(20)))).toEqual([]);
    expect(step(joins(across(20)), 'joined-width')).toMatchObject({
      formula: '54 ÷ 20 = 2.7, down: 2 × 20',
      value: '40',
    });
    // 82 1/2 finished; (6 x 40 - 4 x 3) / 82.5 = 2.76.
    expect(face(joins(across(20)))?.fullnessMade).toBeCloseTo((6 * 40 - 4 * 3) / 82.5, 4);
    expect(step(joins(across(20)), 'widths')?.formula).toBe('206¼ ÷ 40 = 5.16, up to whole widths');
  });
  it('is what a cloth of that usable width takes', () => {
    const narrow = { ...across(20), cloth: { ...across(20).cloth, usableWidth: 40 } };
    const [asked, given] = [face(joins(across(20))), face(narrow)];
    expect([asked?.cuts, asked?.cutLength, asked?.order]).toEqual([given?.cuts, given?.cutLength, given?.order]);
  });
  it('a join that loses half an inch of each width keeps it: 2 x 26 between the seams and both seams', () => {
    const seam = { ...across(26), practice: { seam: 0.5 } };
    // 54 - 1 = 53 between; two of 26 go into it: 52 and 1.
    expect(step(joins(seam), 'joined-width')).toMatchObject({
      formula: '53 ÷ 26 = 2.04, down: 2 × 26 + 2 × ½',
      value: '53',
    });
  });
  it.each<[string, PanelsCase]>([
    ['whole repeats already', across(13.5)],
    ['a repeat wider than the cloth', across(60)],
    ['no repeat across', { panels: PANELS, cloth: { repeat: { vertical: 27 } } }],
    ['plain cloth', { panels: PANELS }],
    [
      'no seam, one width in each panel',
      { ...across(20), panels: { arrangement: 'pair-stationary', rodWidth: 40, return: 3.5, widths: 1 } },
    ],
    [
      'cloth used sideways',
      { panels: { ...PANELS, finishedLength: 36, fullness: 2.2 }, cloth: { ...across(20).cloth, railroad: true } },
    ],
  ])('%s: nothing changes', (_, given) => {
    expect(face(joins(given))).toEqual(face(given));
    expect(step(joins(given), 'joined-width')).toBeUndefined();
  });
  it('never takes fewer widths, and its widths hang as full as they were asked', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 60 }),
        fc.integer({ min: 40, max: 160 }),
        fc.constantFrom(0, 0.5),
        (horizontal, rodWidth, seam) => {
          const given = {
            ...across(horizontal),
            panels: { ...PANELS, rodWidth },
            practice: { seam, hemsInWidth: true },
          };
          const [free, matched] = [face(given), face(joins(given))];
          expect(matched?.halfWidths ?? 0).toBeGreaterThanOrEqual(free?.halfWidths ?? 0);
          expect(matched?.fullnessMade ?? 0).toBeGreaterThanOrEqual(2.5 - 1e-6);
        },
      ),
      { seed: 45, numRuns: 60 },
    );
  });
});

describe('cloth that comes in pieces', () => {
  const patterned = { repeat: { vertical: 27, horizontal: 27, match: 'straight' } } as const;
  // Two cuts in 8 yd: 108 + 100 + 27 = 235 in, 6 3/4 yd in quarters, twice.
  it('an order of more than one piece asks for one dye lot', () => {
    const says = told({ panels: PANELS, cloth: { ...patterned, bolt: '8 yd' } }).filter((each) => /dye lot/.test(each));
    expect(says).toEqual([
      'The order of face, 13½ yd, is more than a whole piece (8 yd): by itself it comes in 2 pieces, 2 of 6¾ yd. Ask for one dye lot, and for the length of each piece before it is cut.',
    ]);
  });
  it('an order from one piece asks for nothing', () => {
    expect(
      told({ panels: PANELS, cloth: { ...patterned, bolt: '12.75 yd' } }).filter((each) => /dye lot/.test(each)),
    ).toEqual([]);
  });
});

// 100 1/2 in at 2 1/2 times and 12 in of hems are 263 1/4 in sideways; upright it takes 3 widths of 100 in.
describe('a nap that would lie across', () => {
  const wide = { width: 118, railroad: true } as const;
  const across = (cloth: PanelsCase['cloth']): string[] =>
    told({ panels: { ...PANELS, rodWidth: 90 }, cloth }).filter((each) => /sideways/.test(each));
  it.each([
    ['velvet', { ...wide, family: 'velvet' }, 1],
    ['one way', { ...wide, oneWay: true }, 1],
    ['plain', wide, 0],
    ['velvet upright', { width: 54, family: 'velvet' }, 0],
  ] as const)('%s', (_, cloth, count) => {
    expect(across(cloth)).toHaveLength(count);
  });
});
