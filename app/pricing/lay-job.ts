/** The joint plan of a job in figures, as its result tells it: each cloth in each option, and over what is accepted. */
import type { Fault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { AcceptedLine, JobResult, PlanLine, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Say } from '#app/estimating/say.ts';
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import type { PlannedWork, PlanMemo, WorkLaid } from './plan-work.ts';
import { pickWork, planWork } from './plan-work.ts';

/** Layouts weighed for each cloth and option while a job is priced: a house is done within it, in a few milliseconds. */
const PRICING_BUDGET = 20_000;

export interface LaidJob {
  readonly plan: readonly PlanLine[];
  readonly accepted: JobResult['accepted'];
  readonly faults: readonly Fault[];
}

export const NOT_LAID: LaidJob = { plan: [], accepted: null, faults: [] };

/** `accepted` is null until the client has said anything. */
export function layJob(job: Job, treatments: readonly TreatmentResult[], planned: PlannedWork, say: Say): LaidJob {
  const memo: PlanMemo = new Map();
  const faults: Fault[] = [];
  const lay = (of: WorkLaid): readonly ClothPlan[] => {
    const laid = planWork(job, pickWork(job, planned, treatments, of), say, { budget: PRICING_BUDGET, memo });
    faults.push(...laid.faults);
    return laid.plans;
  };
  const plan = TIERS.flatMap((tier) => lay(tier).map((each) => ({ tier, ...lineOf(each) })));
  const decided = job.rooms.some(({ openings }) =>
    openings.some((opening) => opening.treatments.some(({ decision }) => (decision ?? null) !== null)),
  );
  return { plan, accepted: decided ? lay('accepted').map(lineOf) : null, faults: withoutTwins(faults) };
}

function lineOf({ cloth, plan, order, handbook, alone, orderAlone }: ClothPlan): AcceptedLine {
  return {
    cloth: cloth.id,
    plan: plan.ordered,
    order,
    handbook,
    bound: plan.bound,
    alone,
    orderAlone,
    bolts: plan.bolts.filter((bolt) => bolt.kind === 'bolt').length,
    unlaid: plan.unlaid.length,
  };
}

/** One cloth may be wrong in every option: it is told once. */
function withoutTwins(faults: readonly Fault[]): Fault[] {
  return faults.filter(
    (fault, index) => faults.findIndex((each) => each.path === fault.path && each.wrong === fault.wrong) === index,
  );
}
