/**
 * How far panels stand over the glass when they are drawn back, and the rod that clears it: common practice, per width of
 * cloth; the figures are worked by hand. To clear the glass one solves for the rod.
 */
import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import { estimatePanels } from '#app/estimating/panels/estimate-panels.ts';
import { solveRod } from '#app/estimating/panels/rod-to-clear.ts';
import { speaker } from '#app/estimating/say.ts';
import { measureStackback } from '#app/estimating/panels/stackback.ts';
import { countWidths } from '#app/estimating/panels/count-widths.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import { jobOf, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';

const PAIR: PanelsCase = { panels: { rodWidth: 72, return: 3.5, overlap: 3.5 } };

function clear(given: PanelsCase, opening: number): { rod: number; widths: number } | null {
  const { panels, face, behind } = readPanels(given);
  const solved = solveRod(panels, { usable: face.usableWidth, sideways: false }, behind, lengthFrom(opening, 'in'));
  return solved && { rod: lengthIn(solved.rod, 'in'), widths: solved.halfWidths / 2 };
}

function workingOf(given: PanelsCase): Record<string, string> {
  const { panels, face, behind } = readPanels(given);
  const { working } = estimatePanels(panels, face, behind, {
    massOf: () => 200,
    clothOf: () => null,
    say: speaker('in', 'en-US'),
    billableWidth: lengthFrom(54, 'in'),
    place: { opening: lengthFrom(60, 'in'), use: 'living', heatSourceBelow: false },
  });
  return Object.fromEntries(working.map(({ id, formula, value }) => [id, `${formula} = ${value}`]));
}

describe('the rod that clears the glass', () => {
  it('unlined over 60 in: 80 in would take 5 widths, which do not clear; 85 in does', () => {
    // 60: 4 widths stack 20, so 80; on 80 it is 90.5 × 2.5 / 54 = 4.2, 5 widths, 25, so 85; on 85 it is 5 still.
    expect(clear(PAIR, 60)).toEqual({ rod: 85, widths: 5 });
  });
  it('lined it takes 7 in a width: 95 in', () => {
    expect(clear({ ...PAIR, behind: ['std-white'] }, 60)).toEqual({ rod: 95, widths: 5 });
  });
  it('one way the whole stack stands at one end', () => {
    // 67 × 2.5 / 54 = 3.1, 4: 20; 87 × 2.5 / 54 = 4.03, 5: 25; 92 × 2.5 / 54 = 4.3, 5.
    expect(clear({ panels: { arrangement: 'one-way', return: 3.5 } }, 60)).toEqual({ rod: 85, widths: 5 });
  });
  it('widths that were given do not grow', () => {
    expect(clear({ panels: { ...PAIR.panels, widths: 2 } }, 60)).toEqual({ rod: 80, widths: 4 });
  });
  it.each([
    ['still panels', { arrangement: 'pair-stationary', return: 3.5 }],
    ['inside a frame', { mount: { where: 'inside' }, return: 0, rodWidth: 60 }],
  ] as const)('%s have no wall to stack on', (_, panels) => {
    expect(clear({ panels }, 60)).toBeNull();
  });
  it('clears, and no shorter rod of as many widths would', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 200 }),
        fc.constantFrom([], ['std-white'], ['inter-med']),
        (glass, behind) => {
          const { panels, face, behind: layers } = readPanels({ ...PAIR, behind });
          const opening = lengthFrom(glass, 'in');
          const solved = solveRod(panels, { usable: face.usableWidth, sideways: false }, layers, opening)!;
          const { halves } = countWidths({ ...panels, rodWidth: solved.rod }, face.usableWidth);
          const stack = measureStackback(panels, halves, layers).usual;
          expect(solved.rod - panels.pieces * stack).toBe(opening);
        },
      ),
    );
  });
});

describe('stackback', () => {
  it('was reckoned and told to nobody: it stands in the working with its range', () => {
    expect(workingOf(PAIR)).toMatchObject({
      stackback: '4 × 4 to 6 ÷ 2 = 10 (8 to 12)',
      'glass-clear': '72 − 2 × 10 = 52',
      'rod-to-clear': '60 + 2 × 12½, with 5 widths = 85',
    });
  });
  it('still panels are not drawn back', () => {
    expect(workingOf({ panels: { arrangement: 'pair-stationary', return: 3.5 } })).not.toHaveProperty('stackback');
  });
  it('stands in the result', () => {
    const job = jobOf(PAIR);
    job.rooms[0]!.openings[0]!.treatments[0]!.stacks = {
      good: { behind: [] },
      best: { behind: ['inter-med', 'std-white'] },
    };
    const read = readJob(job);
    if (!read.ok) throw new Error('the case is wrong');
    const { tiers } = writeResult(read.job, priceJob(read.job)).treatments[0]!;
    expect(tiers.good).toMatchObject({
      stackback: { least: 8, usual: 10, most: 12 },
      rodToClear: { rod: 85, widths: 5 },
    });
    expect(tiers.best.stackback).toEqual({ least: 16, usual: 20, most: 24 });
  });
});
