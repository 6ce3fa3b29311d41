/** The work sheet tells which half of a split cut goes to which panel: common practice. */
import { describe, expect, it } from 'vitest';
import { drawWorkRows } from '#app/drawing/draw-work-sheet.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { jobOf } from '../estimating/panels-case.ts';

function textOf(panels: NonNullable<Parameters<typeof jobOf>[0]['panels']>): string {
  const read = readJob(jobOf({ panels }));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { job } = read;
  const rows = drawWorkRows({
    treatment: job.rooms[0]!.openings[0]!.treatments[0]!,
    made: priceJob(job, [], { plan: false }).treatments[0]!.tiers.good,
    clothOf: (id) => resolveCloth(id, job.cloth),
    units: job.units,
    decimal: '.',
    width: 504,
    detail: 'paper',
  });
  return JSON.stringify(rows);
}
const TOLD = /right half to the left panel.*left half to the right one/;

describe('a split cut on the work sheet', () => {
  it('3 widths in a pair are 1 1/2 each: nobody was told whose half is whose', () => {
    expect(textOf({ rodWidth: 60 })).toMatch(TOLD);
  });
  it('whole widths, and one panel alone, split nothing', () => {
    expect(textOf({ rodWidth: 80 })).not.toMatch(TOLD);
    expect(textOf({ rodWidth: 60, arrangement: 'one-way' })).not.toMatch(TOLD);
  });
});
