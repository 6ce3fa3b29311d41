/** A whole job, priced three ways: take-off, judgement and price of every treatment under good, better and best. */
import type { Warning } from '#shared/fault.ts';
import type { Job, Opening } from '#shared/job.ts';
import { PART_NAMES, PARTS } from '#shared/parts.ts';
import type { JobResult, Price, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { warnOpening } from '#app/estimating/warn-opening.ts';
import type { HungBeside } from '#app/estimating/warn-opening.ts';
import { faceOf, startPricing } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';
import { layJob, NOT_LAID } from './lay-job.ts';
import type { PlannedWork } from './plan-work.ts';
import { priceTreatment } from './price-treatment.ts';
import { totalPrices } from './total-tiers.ts';

export interface PriceOptions {
  /** False leaves the joint plan out, as on every keystroke. */
  readonly plan?: boolean;
}

/**
 * Prices a job. Treatments that no cloth could make are left out and told in `faults`; rates that are needed and unset
 * in `missingRates`; totals are null while either is not empty. `warnings` are those of reading, carried along. Prices
 * rest on each treatment alone: what is wrong with bolts, flaws and fixed cuts is told in `planFaults`, and changes none.
 */
export function priceJob(job: Job, warnings: readonly Warning[] = [], { plan = true }: PriceOptions = {}): JobResult {
  const { treatments, planned, pricing } = takeOffJob(job, warnings);
  const laid = plan ? layJob(job, treatments, planned, pricing.say) : NOT_LAID;
  return {
    treatments,
    plan: laid.plan,
    accepted: laid.accepted,
    planFaults: laid.faults,
    totals: totalJob(treatments, pricing),
    missingRates: pricing.rates.missing,
    faults: pricing.faults,
    exampleRates: job.priceBook.example,
    warnings: pricing.warnings,
  };
}

export interface TakenOffJob {
  readonly treatments: readonly TreatmentResult[];
  readonly planned: PlannedWork;
  readonly pricing: JobPricing;
}

/** Every treatment in each option, without plans and totals. */
export function takeOffJob(job: Job, warnings: readonly Warning[] = []): TakenOffJob {
  const pricing = startPricing(job, warnings);
  const treatments: TreatmentResult[] = [];
  for (const room of job.rooms)
    for (const opening of room.openings) {
      const own = opening.treatments.flatMap((treatment) => {
        const result = priceTreatment(room, opening, treatment, pricing);
        return result ? [result] : [];
      });
      treatments.push(...own);
      pricing.warnings.push(...warnOpening(listHung(opening, own, pricing), pricing.say));
    }
  warnUnpriced(pricing, treatments);
  return { treatments, planned: pricing.planned, pricing };
}

/** What hangs together at an opening, unless the client declined it. */
function listHung({ treatments }: Opening, results: readonly TreatmentResult[], pricing: JobPricing): HungBeside[] {
  return treatments.flatMap((treatment) => {
    const result = results.find(({ key }) => key === treatment.key);
    if (result === undefined || treatment.decision === 'declined') return [];
    const sheer = faceOf(pricing, treatment.face)?.family === 'sheer';
    return [{ treatment, width: result.finished.width, sheer }];
  });
}

function totalJob(treatments: readonly TreatmentResult[], { job, faults }: JobPricing): JobResult['totals'] {
  const pricesOf = (tier: Tier): Price[] | null => {
    const prices = treatments.map((treatment) => treatment.tiers[tier].price).filter((price) => price !== null);
    return prices.length === treatments.length ? prices : null;
  };
  const [good, better, best] = TIERS.map(pricesOf);
  if (!good || !better || !best || faults.length > 0) return null;
  return {
    good: totalPrices(good, job.priceBook),
    better: totalPrices(better, job.priceBook),
    best: totalPrices(best, job.priceBook),
  };
}

/** Hardware and notions are not everybody's to sell: unset rates leave them out, and that is said once. */
function warnUnpriced({ job, warnings }: JobPricing, treatments: readonly TreatmentResult[]): void {
  if (treatments.length === 0) return;
  const { each, byLength } = job.priceBook.parts;
  const rated = [...Object.keys(each), ...Object.keys(byLength)];
  const sells = (kind: 'hardware' | 'notions'): boolean =>
    PART_NAMES.some((name) => PARTS[name].kind === kind && rated.includes(name));
  if (!sells('hardware'))
    warnings.push({
      path: 'priceBook.hardware',
      says: 'No rates for rod and brackets are set: hardware is not in these prices.',
    });
  if (!sells('notions'))
    warnings.push({
      path: 'priceBook.notions',
      says: 'No rates for notions are set: tape, hooks and weights are not in these prices.',
    });
}
