/** What is ordered for a joint plan: each piece of cloth supplied with its extra, up to the step that it is sold in. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { WorkingStep } from '#shared/result.ts';
import { orderExtra, orderLength } from '#app/estimating/cut-cloth.ts';
import { upToOrderStep } from '#app/estimating/round.ts';
import { step } from '#app/estimating/say.ts';
import type { Say } from '#app/estimating/say.ts';
import type { CutPlan } from './cut-plan.ts';
import type { PlanInput } from './plan-input.ts';

export type OrderRules = Pick<Practice, 'orderFrom' | 'orderExtra' | 'orderStep'>;

/** What is ordered of one bolt of a joint plan. */
export interface OrderedBolt {
  readonly name: string;
  /** What its cuts take, what is added, what is asked for. */
  readonly base: Ticks;
  readonly extra: Ticks;
  readonly order: Ticks;
}

export interface PlanOrder {
  readonly order: Ticks;
  readonly bolts: readonly OrderedBolt[];
}

/**
 * By the plan: each bolt with its own extra, none where its start is known. By the handbook: its length, whatever the plan
 * saves, with an extra for every bolt that the plan buys. Never less than the supplier sells, nothing where nothing is
 * bought.
 */
export function orderPlan(
  cloth: Cloth,
  plan: CutPlan,
  input: PlanInput,
  handbook: Ticks,
  rules: OrderRules,
): PlanOrder {
  const bought = plan.bolts.filter((bolt) => bolt.ordered > 0);
  if (bought.length === 0) return { order: ticks(0), bolts: [] };
  const unit = cloth.supply?.orderStep ?? rules.orderStep;
  const bolts = bought.map((bolt): OrderedBolt => {
    const isKnown = input.bolts.find((each) => each.id === bolt.id)?.startPhase !== null;
    const repeat = cloth.repeat === null || isKnown ? null : cloth.repeat;
    const extra = orderExtra({ repeat }, rules.orderExtra);
    const asked = upToOrderStep(ticks(bolt.ordered + extra), unit);
    const whole = bolt.length ?? cloth.supply?.bolt ?? Infinity;
    return { name: bolt.id, base: bolt.ordered, extra, order: ticks(Math.min(asked, Math.max(whole, bolt.ordered))) };
  });
  if (rules.orderFrom === 'handbook') {
    const extra = ticks(bolts.reduce((sum, bolt) => sum + bolt.extra, 0));
    return { order: orderLength(cloth, handbook, extra, rules.orderStep), bolts };
  }
  const total = bolts.reduce((sum, bolt) => sum + bolt.order, 0);
  return { order: ticks(Math.max(total, cloth.supply?.leastOrder ?? 0)), bolts };
}

/** The order in figures: as many extras as pieces of cloth. */
export function workPlanOrder(
  cloth: Cloth,
  { order, bolts }: PlanOrder,
  handbook: Ticks,
  rules: OrderRules,
  say: Say,
): WorkingStep {
  const upTo = cloth.supply?.orderStep ?? rules.orderStep;
  const least = cloth.supply?.leastOrder ?? 0;
  const byChart = rules.orderFrom === 'handbook';
  const sum = byChart
    ? [[handbook, ...bolts.map(({ extra }) => extra)].map(say.cloth).join(' + ')]
    : bolts.map((bolt) => `${bolt.name}: ${say.cloth(bolt.base)} + ${say.cloth(bolt.extra)}, ${say.cloth(bolt.order)}`);
  const bolt = cloth.supply?.bolt ?? null;
  return step(
    'plan-order',
    'order',
    [
      sum.join('; ') || '0',
      ...(upTo > 0 ? [`${bolts.length > 1 && !byChart ? 'each ' : ''}up to ${say.cloth(upTo)}`] : []),
      ...(least > 0 ? [`at least ${say.cloth(least)}`] : []),
    ].join(', '),
    say.cloth(order),
    [
      `practice: from the ${byChart ? 'chart' : 'plan'}, the extra once for each piece of cloth supplied`,
      ...(bolts.length > 1 && bolt !== null ? [`a whole piece is ${say.cloth(bolt)}, and no cut goes over two`] : []),
    ].join('; '),
  );
}
