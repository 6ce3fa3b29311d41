/** The joint plans of a job by themselves: what a screen lays in a worker, a paper draws and an order rests on. */
import type { Job } from '#shared/job.ts';
import { speaker } from '#app/estimating/say.ts';
import { takeOffJob } from './price-job.ts';
import type { PlannedCloths, PlanOptions, WorkLaid } from './plan-work.ts';
import { pickWork, planWork } from './plan-work.ts';

/** Treatments that no cloth could make are left out; `priceJob` tells why. */
export function planJob(job: Job, of: WorkLaid, options: PlanOptions = {}): PlannedCloths {
  const { planned, treatments } = takeOffJob(job);
  return planWork(job, pickWork(job, planned, treatments, of), speaker(job.units, job.locale), options);
}
