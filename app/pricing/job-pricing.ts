/** What travels along while a job is priced: the job, its rates, and what is found on the way. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault, Warning } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { Tier } from '#shared/words.ts';
import { speaker } from '#app/estimating/say.ts';
import type { Say } from '#app/estimating/say.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import type { PlannedTreatment } from '#app/plan/planned-treatment.ts';
import { RateBook } from './pick-rates.ts';

export interface JobPricing {
  readonly job: Job;
  readonly rates: RateBook;
  readonly say: Say;
  readonly faults: Fault[];
  readonly warnings: Warning[];
  readonly planned: Record<Tier, PlannedTreatment[]>;
}

export function startPricing(job: Job, warnings: readonly Warning[] = []): JobPricing {
  return {
    job,
    rates: new RateBook(job.priceBook),
    say: speaker(job.units, job.locale),
    faults: [],
    warnings: [...warnings],
    planned: { good: [], better: [], best: [] },
  };
}

export function clothOf({ job }: JobPricing, id: string): Cloth | null {
  return resolveCloth(id, job.cloth);
}

export function faceOf(pricing: JobPricing, id: string): FaceCloth | null {
  const cloth = clothOf(pricing, id);
  return cloth?.role === 'face' ? cloth : null;
}

/** The layers behind a face; `check-job.ts` has refused ids that are none. */
export function behindOf(pricing: JobPricing, ids: readonly string[]): BackCloth[] {
  return ids
    .map((id) => clothOf(pricing, id))
    .filter((cloth): cloth is BackCloth => cloth !== null && cloth.role !== 'face');
}
