/** The same job is the same money and the same day wherever the computer stands, and in whatever locale it speaks. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';

const FILES = ['sample.job.json', 'every-kind.job.json'] as const;

function read(file: string, locale: WireJob['locale']): Job {
  const wire = JSON.parse(readFileSync(new URL(`../../reference/${file}`, import.meta.url), 'utf8')) as WireJob;
  const job = readJob({ ...wire, locale });
  if (!job.ok) throw new Error(job.faults.map(sayFault).join('\n'));
  return job.job;
}

describe.each(FILES)('%s', (file) => {
  const [american, polish] = (['en-US', 'pl-PL'] as const).map((locale) => {
    const job = read(file, locale);
    return { job, result: priceJob(job) };
  });

  it('comes to the same in two locales: quantities, prices and totals', () => {
    const figures = ({ job, result }: { job: Job; result: ReturnType<typeof priceJob> }) => {
      const written = writeResult(job, result);
      const tiers = written.treatments.flatMap(({ tiers: each }) => [each.good, each.better, each.best]);
      return {
        totals: written.totals,
        plan: written.plan,
        lines: tiers.map(({ takeoff, price }) => [takeoff, price.lines.map(({ amount }) => amount)]),
        readings: tiers.map(({ readings }) => readings),
      };
    };
    expect(figures(polish!)).toEqual(figures(american!));
  });

  it('takes off with the decimal sign of its locale', () => {
    const yards = (given: typeof american): string =>
      given!.result.treatments
        .flatMap(({ tiers }) => tiers.good.working)
        .filter(({ id }) => id === 'laid-out' || id === 'fullness-made')
        .map(({ value }) => value)
        .join(' ');
    expect(/\d\.\d/.test(yards(american))).toBe(true);
    expect(/\d\.\d/.test(yards(polish))).toBe(false);
    expect(yards(polish).replaceAll(',', '.')).toBe(yards(american));
  });

  it('prints the day that was given', () => {
    const head = {
      number: '2026-014',
      revision: 1,
      date: '2026-11-25',
      validUntil: '2026-12-25',
      audience: 'client',
    } as const;
    const paper = JSON.stringify(assembleProposal(american!.job, american!.result, head));
    expect(/November\s25,\s2026/.test(paper)).toBe(true);
    expect(/November\s2[46],\s2026/.test(paper)).toBe(false);
  });
});
