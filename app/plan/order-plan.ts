/** What is ordered for a joint plan: each piece of cloth supplied with its extra, up to the step that it is sold in. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import { orderExtra, orderLength } from '#app/estimating/cut-cloth.ts';
import { upToOrderStep } from '#app/estimating/round.ts';
import type { CutPlan } from './cut-plan.ts';
import type { PlanInput } from './plan-input.ts';

export type OrderRules = Pick<Practice, 'orderFrom' | 'orderExtra' | 'orderStep'>;

/**
 * By the plan: a bolt whose start is known needs no extra repeat. By the handbook: its length with one extra, whatever the
 * plan saves. Never less than the supplier sells, nothing where nothing is bought.
 */
export function orderPlan(cloth: Cloth, plan: CutPlan, input: PlanInput, handbook: Ticks, rules: OrderRules): Ticks {
  const bought = plan.bolts.filter((bolt) => bolt.ordered > 0);
  if (bought.length === 0) return ticks(0);
  if (rules.orderFrom === 'handbook')
    return orderLength(cloth, handbook, orderExtra(cloth, rules.orderExtra), rules.orderStep);
  const step = cloth.supply?.orderStep ?? rules.orderStep;
  const total = bought.reduce((sum, bolt) => {
    const isKnown = input.bolts.find((each) => each.id === bolt.id)?.startPhase !== null;
    const repeat = cloth.repeat === null || isKnown ? null : cloth.repeat;
    const asked = upToOrderStep(ticks(bolt.ordered + orderExtra({ repeat }, rules.orderExtra)), step);
    return sum + Math.min(asked, bolt.length ?? Infinity);
  }, 0);
  return ticks(Math.max(total, cloth.supply?.leastOrder ?? 0));
}
