/** From a job to its priced result, with every fault told as BAD_INPUT: the same for job files and for the portfolio. */
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import type { Fault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { ReadJob } from '#shared/job-file/read-job.ts';
import { readSoundPart } from '#shared/job-file/read-sound-part.ts';
import type { WireResult } from '#shared/job-file/wire-result.ts';
import type { JobResult } from '#shared/result.ts';
import { badInput } from './desk-errors.ts';

export interface PricedJob {
  readonly job: Job;
  readonly result: JobResult;
  readonly wire: WireResult;
}

/**
 * Prices what was read. `tell` may say a fault in other words, such as with another path. A cut plan that cannot be laid
 * changes no price: `whatever` leaves its faults untold, and its cloth without a plan.
 */
export function priceRead(
  read: ReadJob,
  tell: (fault: Fault) => Fault = (fault) => fault,
  plan: 'strict' | 'whatever' = 'whatever',
): PricedJob {
  if (!read.ok) throw badInput([...read.faults, ...findSoundFaults(read)].map(tell));
  const result = priceJob(read.job, read.warnings);
  const faults = [
    ...result.faults.map(tell),
    ...findMissingRates(result),
    ...(plan === 'strict' ? result.planFaults.map(tell) : []),
  ];
  if (faults.length > 0) throw badInput(faults);
  return { job: read.job, result, wire: writeResult(read.job, result) };
}

/** What no cloth could make, in the treatments that could be read: every fault is told at once. */
function findSoundFaults({ faults, given }: Extract<ReadJob, { ok: false }>): Fault[] {
  const sound = given === undefined ? null : readSoundPart(given, faults);
  if (sound === null) return [];
  const { pathInFile } = sound;
  return priceJob(sound.job).faults.map((fault) => ({ ...fault, path: pathInFile(fault.path) }));
}

function findMissingRates(result: JobResult): Fault[] {
  return result.missingRates.map(({ rate, says }) => ({
    path: `priceBook.${rate}`,
    wrong: 'is not set, and this job needs it',
    right: `enter ${says}, or use the example rates ("priceBook": "example")`,
  }));
}
