/** Grommets keep off the seams: common practice. Figures are worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countPoints } from '#app/estimating/panels/heading-points.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthIn } from '#shared/length.ts';
import { estimateCase, jobOf, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const GROMMETS = { heading: 'grommet', return: 0 } as const;

function pointsStep(given: PanelsCase) {
  const step = estimateCase(given).working.find(({ id }) => id === 'points');
  if (!step) throw new Error('no grommets');
  return step;
}

const warnings = (given: PanelsCase): string[] => {
  const read = readJob(jobOf({ behind: [], ...given }));
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const { warnings: told } = priceJob(read.job, read.warnings, { plan: false });
  return told.map(({ says }) => says).filter((says) => /from the middle of a grommet/.test(says));
};

/** The seams and the rings of one piece, worked out anew in inches from its wall side, hems off. */
function clearances(given: PanelsCase): number[] {
  const { panels, face } = readPanels(given);
  const estimate = estimateCase(given);
  const halves = estimate.halfWidths ?? 0;
  const points = countPoints(panels, 2 * estimate.madeWidth, halves);
  const inches = (value: number): number => lengthIn(value, 'in');
  const each = halves / panels.pieces;
  const usable = inches(face.usableWidth);
  const [hem, seam, edge] = [panels.practice.sideHem, panels.practice.seam, panels.practice.spacing.grommetEdge].map(
    inches,
  ) as [number, number, number];
  const joins = Math.ceil(each / 2) - 1;
  const trimmed = inches(points.grommets?.trimmed ?? 0);
  const seams = Array.from(
    { length: joins },
    (_, join) => (join + (each % 2 === 1 ? 0.5 : 1)) * usable - (2 * join + 1) * seam - hem - trimmed,
  );
  const flat = (each / 2) * usable - joins * 2 * seam - 2 * hem - trimmed;
  const space = (flat - 2 * edge) / (points.count - 1);
  const rings = Array.from({ length: points.count }, (_, ring) => edge + ring * space);
  return seams.flatMap((place) => rings.map((ring) => Math.abs(ring - place)));
}

describe('a grommet stood on a seam and the working said that none did', () => {
  // A pair on 155 in at 1.75: 271 1/4 / 54 = 5.02, 6 widths, 3 a panel, 156 in flat. 152 / 6.5 + 1 = 24.4, 26 grommets
  // 6.08 apart: the ninth is at 2 + 8 x 6.08 = 50.64, the seam at 54 - 3 = 51. With 28, 5.63 apart, the nearest is at
  // 2 + 9 x 5.63 = 52.67, 1.67 from it.
  it('two more clear it: rod 155', () => {
    const { formula, value, rests } = pointsStep({ panels: { ...GROMMETS, rodWidth: 155 } });
    expect(value).toBe('28');
    expect(formula).toBe('(156 − 2 × 2) ÷ 6½ + 1, up to even, and 2 more; ≈5⅝ apart');
    expect(rests).toContain(
      'none on a seam: the nearest is ≈1 11/16 in from the middle of a ring 2½ wide, closer to clear it',
    );
  });
  it('where two more would stand too close, a strip is trimmed at the wall side', () => {
    // 2 7/8 in less is 149 1/8 / 6.5 + 1 = 23.9: 24 and 2 more, 5.97 apart.
    const practice = { spacing: { grommetLeast: 5.9 } };
    const given = { panels: { ...GROMMETS, rodWidth: 155 }, practice };
    const { formula, value } = pointsStep(given);
    expect(value).toBe('26');
    expect(formula).toMatch(/^\(156 − 2⅞ trimmed at the wall side − 2 × 2\)/);
    expect(Math.min(...clearances(given))).toBeGreaterThan(1.25);
  });
  it('what nothing clears is told with its figures', () => {
    const practice = { spacing: { grommetLeast: 6, grommetTrim: 0 } };
    const given = { panels: { ...GROMMETS, rodWidth: 155 }, practice };
    expect(warnings(given)).toEqual([
      'A seam lies ≈⅜ in from the middle of a grommet 2½ in wide; 26 of them ≈6 1/16 in apart, two more no closer than 6 in, and up to 0 in trimmed at the wall side do not clear it: take another fullness or number of widths, or move the seam.',
    ]);
    expect(pointsStep(given).rests).toContain('nothing tried clears it');
  });
  it('a single width has no seam, and its working says so', () => {
    const { rests } = pointsStep({ panels: { ...GROMMETS, arrangement: 'single', widths: 1, rodWidth: 30 } });
    expect(rests).toContain('no seam;');
  });
  it('rods of 40 to 160 in: no ring touches a seam, or the warning is told', { timeout: 60_000 }, () => {
    let told = 0;
    let moved = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 320, max: 1280 }),
        fc.constantFrom('pair' as const, 'one-way' as const),
        fc.constantFrom(1.5, 1.75, 2),
        fc.constantFrom(0, 0.5),
        fc.constantFrom('up' as const, 'half-up' as const),
        fc.constantFrom(48, 54, 60),
        (eighths, arrangement, fullness, seam, widthRounding, width) => {
          const given: PanelsCase = {
            panels: { ...GROMMETS, arrangement, rodWidth: eighths / 8, fullness },
            cloth: { width },
            practice: { seam, widthRounding },
          };
          const isTold = warnings(given).length > 0;
          told += isTold ? 1 : 0;
          moved += pointsStep(given).rests.includes('to clear it') ? 1 : 0;
          expect(clearances(given).some((off) => off <= 1.25 - 0.001)).toBe(isTold);
          expect(Number(pointsStep(given).value) % 2).toBe(0);
        },
      ),
      { seed: 52, numRuns: 400 },
    );
    expect(moved).toBeGreaterThan(50);
    expect(told).toBeLessThan(40);
  });
});
