/** What the decorator is told of her cloth: seams against the repeat across, nap, pieces. Rules are common practice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seamsMatch, seamWidth } from '#app/estimating/warn-seams.ts';
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
      'Seams of face cannot match: 54 in between them is not whole repeats of 20 in across. A usable width of 40 in matches; it takes 6 widths instead of 4.',
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
      'Seams of face cannot match: 54 in between them is not whole repeats of 30 in across. A usable width of 30 in matches.',
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
        const width = seamWidth(usable, repeat);
        if (width === null) return usable < repeat;
        return width <= usable && width + repeat > usable && seamsMatch(width, repeat);
      }),
    );
    expect(seamWidth(lengthFrom(54, 'in'), lengthFrom(20, 'in'))).toBe(lengthFrom(40, 'in'));
  });
});

describe('cloth that comes in pieces', () => {
  const patterned = { repeat: { vertical: 27, horizontal: 27, match: 'straight' } } as const;
  // Two cuts in 8 yd: 108 + 100 + 27 = 235 in, 6 3/4 yd in quarters, twice.
  it('an order of more than one piece asks for one dye lot', () => {
    const says = told({ panels: PANELS, cloth: { ...patterned, bolt: '8 yd' } }).filter((each) => /dye lot/.test(each));
    expect(says).toEqual([
      'The order of face, 13½ yd, is more than a whole piece (8 yd): it comes in 2 pieces, 2 of 6¾ yd. Ask for one dye lot, and for the length of each piece before it is cut.',
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
