/**
 * Lays the cloth of a house in a thread of its own, so that nothing blocks typing. It is asked once and ended by whoever
 * asked: a plan that nobody waits for any more is stopped by stopping the worker.
 */
import { marginalCloth } from '#app/plan/marginal-cloth.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import { planTogether } from '#app/pricing/plan-together.ts';
import { pickWork, planWork } from '#app/pricing/plan-work.ts';
import type { PlannedCloths, PlanOptions } from '#app/pricing/plan-work.ts';
import { takeOffJob } from '#app/pricing/price-job.ts';
import { speaker } from '#app/estimating/say.ts';
import { ticks } from '#shared/length.ts';
import type { AddedCloth, PlanAnswer, PlanQuestion } from './plan-messages.ts';

/** Layouts weighed for the first look, which is there at once, and for the marginal cloth of a window. */
const QUICK = 20_000;
/** Progress is told at steps of this share, not at every layout. */
const TOLD_STEP = 0.02;

function tell(told: PlanAnswer): void {
  postMessage(told);
}

/** First a quick look, then, unless that is proved best, the whole search. */
function layPlans(plan: (options: PlanOptions) => PlannedCloths): void {
  const first = plan({ budget: QUICK });
  const proved = first.plans.every((each) => each.plan.gap === 0);
  tell({ tell: 'plans', plans: first.plans, faults: first.faults, rough: !proved });
  if (proved) return;
  let told = 0;
  const progress = (share: number): void => {
    if (share < told + TOLD_STEP) return;
    told = share;
    tell({ tell: 'progress', share });
  };
  const whole = plan({ watch: { progress } });
  tell({ tell: 'plans', plans: whole.plans, faults: whole.faults, rough: false });
}

function listAdded({ job, of, treatment }: Extract<PlanQuestion, { ask: 'added' }>): readonly AddedCloth[] {
  const say = speaker(job.units, job.locale);
  const { planned, treatments } = takeOffJob(job);
  const work = pickWork(job, planned, treatments, of);
  const asked = work.find(({ path }) => path === treatment);
  const { plans } = planWork(job, work, say, { budget: QUICK });
  return plans.flatMap(({ cloth, input }): AddedCloth[] => {
    const lines = asked?.takeoff.filter((line) => line.cloth === cloth.id) ?? [];
    const together = lines.length === 0 ? null : marginalCloth(input, treatment, say);
    if (!together?.ok) return [];
    const order = ticks(lines.reduce((sum, line) => sum + line.order, 0));
    const shared = input.cuts.some(({ set }) => set !== treatment);
    return [{ cloth: cloth.id, name: cloth.name, adds: together.adds, order, shared }];
  });
}

function answer(question: PlanQuestion): void {
  switch (question.ask) {
    case 'plans':
      return layPlans((options) => planJob(question.job, question.of, options));
    case 'together':
      return layPlans((options) => planTogether(question.jobs, options));
    case 'added':
      return tell({ tell: 'added', added: listAdded(question) });
  }
}

addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  try {
    answer(data);
  } catch (error) {
    tell({ tell: 'broken', says: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
