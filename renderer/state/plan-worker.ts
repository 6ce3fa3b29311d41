/**
 * Lays the cloth of a house in a thread of its own, so that nothing blocks typing. It is asked once and ended by whoever
 * asked: a plan that nobody waits for any more is stopped by stopping the worker.
 */
import { marginalCloth } from '#app/plan/marginal-cloth.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import { speaker } from '#app/estimating/say.ts';
import type { AddedCloth, PlanAnswer, PlanQuestion } from './plan-messages.ts';

/** Layouts weighed for the first look, which is there at once, and for the marginal cloth of a window. */
const QUICK = 20_000;
/** Progress is told at steps of this share, not at every layout. */
const TOLD_STEP = 0.02;

function tell(answer: PlanAnswer): void {
  postMessage(answer);
}

function layPlans({ job, of }: PlanQuestion): void {
  const first = planJob(job, of, { budget: QUICK });
  const proved = first.plans.every(({ plan }) => plan.gap === 0);
  tell({ tell: 'plans', plans: first.plans, faults: first.faults, rough: !proved });
  if (proved) return;
  let told = 0;
  const progress = (share: number): void => {
    if (share < told + TOLD_STEP) return;
    told = share;
    tell({ tell: 'progress', share });
  };
  const whole = planJob(job, of, { watch: { progress } });
  tell({ tell: 'plans', plans: whole.plans, faults: whole.faults, rough: false });
}

function listAdded({ job, of }: PlanQuestion, treatment: string): readonly AddedCloth[] {
  const say = speaker(job.units, job.locale);
  return planJob(job, of, { budget: QUICK }).plans.flatMap(({ cloth, input }): AddedCloth[] => {
    if (!input.cuts.some((cut) => cut.set === treatment)) return [];
    const together = marginalCloth(input, treatment, say);
    const cuts = input.cuts.filter((cut) => cut.set === treatment);
    const lone = { ...input, cuts, remnants: [], fixed: [], flaws: [], handbook: null };
    const alone = marginalCloth(lone, treatment, say);
    if (!together.ok || !alone.ok) return [];
    return [{ cloth: cloth.id, name: cloth.name, adds: together.adds, alone: alone.adds }];
  });
}

addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  try {
    if (data.ask === 'plans') layPlans(data);
    else tell({ tell: 'added', added: listAdded(data, data.treatment) });
  } catch (error) {
    tell({ tell: 'broken', says: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
