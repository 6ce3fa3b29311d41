/** Flat valances and cornices lose a seam at each join, whatever gathered widths do: common practice, worked by hand. */
import { describe, expect, it } from 'vitest';
import { readJob } from '#shared/job-file/read-job.ts';
import { priceJob } from '#app/pricing/price-job.ts';

function widthsStep(treatment: object, practice: object = {}): string {
  const read = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    practice,
    cloth: [{ id: 'f', role: 'face', width: 54, price: '10/yd' }],
    rooms: [
      {
        name: 'Room',
        use: 'living',
        openings: [
          {
            name: 'Window',
            width: 60,
            height: 60,
            treatments: [{ name: 'T', face: 'f', return: 3.5, stacks: { good: { behind: [] } }, ...treatment }],
          },
        ],
      },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { working } = priceJob(read.job).treatments[0]!.tiers.good;
  return working.find(({ id }) => id.endsWith('widths'))?.formula ?? '';
}

describe('a flat valance wider than its cloth', () => {
  const valance = { kind: 'valance', style: 'tailored', width: 60, finishedLength: 15 };
  it('came out short by its two joins: 60 + 7 + 3 = 70 takes 54 and two sides of (70 + 2 - 54) / 2 = 9', () => {
    expect(widthsStep(valance)).toBe(
      '70 ÷ 54 = 1.3, up, 2 seams of 2 × ½ counted in: 1 whole in the middle and 2 sides of 9',
    );
  });
  it('keeps a seam that the practice has', () => {
    expect(widthsStep(valance, { seam: 0.75 })).toMatch(/2 × ¾ counted in.*sides of 9½$/);
    expect(widthsStep(valance, { valance: { joinSeam: 0 } })).toMatch(/sides of 8$/);
  });
  it('gathered widths leave seams out as before', () => {
    expect(widthsStep({ ...valance, style: 'gathered', board: {} })).not.toContain('seams of');
  });
});

it('a cornice has them too', () => {
  expect(widthsStep({ kind: 'cornice', width: 60, finishedLength: 15 })).toContain('2 seams of 2 × ½ counted in');
});
