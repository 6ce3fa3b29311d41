/** The accepted work of several projects, laid together. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { planJob } from '#app/pricing/plan-job.ts';
import { planTogether } from '#app/pricing/plan-together.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { Job } from '#shared/job.ts';

interface Written {
  cloth: { id: string; name?: string }[];
  rooms: { openings: { treatments: { face: string; decision?: string }[] }[] }[];
}
const sample = readFileSync(new URL('../../reference/sample.job.json', import.meta.url), 'utf8');

/** The sample, every window accepted as good. */
function accepted(change: (written: Written) => void = () => undefined): Job {
  const written = JSON.parse(sample) as Written;
  for (const room of written.rooms)
    for (const opening of room.openings) for (const treatment of opening.treatments) treatment.decision = 'good';
  change(written);
  const read = readJob(written);
  if (!read.ok) throw new Error(read.faults.map(({ path, wrong }) => `${path} ${wrong}`).join('\n'));
  return read.job;
}

const ordered = (jobs: readonly NamedJob[]): Map<string, number> =>
  new Map(planTogether(jobs).plans.map(({ cloth, order }) => [cloth.id, order]));

describe('several projects laid together', () => {
  const alone = new Map(planJob(accepted(), 'accepted').plans.map(({ cloth, order }) => [cloth.id, order]));
  const twice = [
    { name: 'Ada Fenn', job: accepted() },
    { name: 'Ida Wick', job: accepted() },
  ];

  it('one project is its own plan', () => {
    expect(ordered([{ name: 'Ada Fenn', job: accepted() }])).toEqual(alone);
    const labelsOf = (jobs: readonly NamedJob[]) =>
      planTogether(jobs).plans.flatMap(({ input }) => input.cuts.map(({ label }) => label ?? ''));
    expect(labelsOf(twice.slice(0, 1)).some((label) => label.includes('Ada Fenn'))).toBe(false);
    expect(labelsOf(twice).every((label) => /^(Ada Fenn|Ida Wick), /.test(label))).toBe(true);
  });

  it('two orders of one cloth are never more than one after the other, and every cut is there', () => {
    const { plans, faults } = planTogether(twice);
    expect(faults).toEqual([]);
    for (const { cloth, order, plan, input } of plans) {
      expect(order).toBeLessThanOrEqual(2 * (alone.get(cloth.id) ?? 0));
      const laid = plan.bolts.flatMap((bolt) => bolt.cuts.map(({ id }) => id)).sort();
      expect(laid).toEqual(input.cuts.map(({ id }) => id).sort());
      expect(laid.some((id) => id.startsWith('Ada Fenn/')) && laid.some((id) => id.startsWith('Ida Wick/'))).toBe(true);
    }
    // One repeat extra for one piece instead of two: where cloth has a pattern, something is saved.
    expect(plans.some(({ cloth, order }) => cloth.repeat !== null && order < 2 * (alone.get(cloth.id) ?? 0))).toBe(
      true,
    );
  });

  it('in either order the same cloth is bought', () => {
    expect(ordered([...twice].reverse())).toEqual(ordered(twice));
  });

  it('another cloth of the same id keeps apart', () => {
    const other = accepted(({ cloth }) => {
      for (const each of cloth) each.name = `${each.id} of another dye lot`;
    });
    const plans = ordered([twice[0] as NamedJob, { name: 'Ida Wick', job: other }]);
    for (const { id } of (JSON.parse(sample) as Written).cloth) {
      if (!alone.has(id)) continue;
      expect(plans.get(id)).toBe(alone.get(id));
      expect(plans.get(`Ida Wick: ${id}`)).toBe(alone.get(id));
    }
  });

  it('what is declined or not said is not bought', () => {
    const none = accepted(({ rooms }) => {
      for (const room of rooms)
        for (const opening of room.openings)
          for (const treatment of opening.treatments) treatment.decision = 'declined';
    });
    expect(planTogether([{ name: 'Ada Fenn', job: none }]).plans).toEqual([]);
    expect(planTogether([]).plans).toEqual([]);
  });
});
