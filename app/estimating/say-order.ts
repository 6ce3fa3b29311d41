/** How an order came about, in figures: its base, what is added, the step that it goes up to, the least that is sold. */
import type { Cloth } from '#shared/cloth.ts';
import { TICKS_PER_YARD } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { orderExtra } from './cut-cloth.ts';
import { step } from './say.ts';
import type { Say } from './say.ts';

export function workOrderOf(
  id: string,
  label: string,
  cloth: Cloth,
  line: Pick<TakeoffLine, 'plan' | 'handbook' | 'order'>,
  practice: Practice,
  say: Say,
): WorkingStep {
  const base = practice.orderFrom === 'plan' ? line.plan : line.handbook;
  const extra = orderExtra(cloth, practice.orderExtra);
  const own = cloth.supply?.orderStep ?? null;
  const upTo = own ?? practice.orderStep;
  const least = cloth.supply?.leastOrder ?? null;
  return step(
    id,
    label,
    [
      `${say.cloth(base)} + ${say.cloth(extra)}`,
      ...(upTo > 0 ? [`up to ${say.cloth(upTo)}`] : []),
      ...(least === null ? [] : [`at least ${say.cloth(least)}`]),
    ].join(', '),
    say.cloth(line.order),
    [
      `practice: from the ${practice.orderFrom === 'plan' ? 'layout' : 'chart'}`,
      sayExtra(extra),
      ...(own === null ? [] : ["the supplier's step"]),
    ].join(', '),
  );
}

/** What is ordered besides: the amount itself tells the rule apart. */
function sayExtra(extra: Ticks): string {
  if (extra === 0) return 'nothing extra';
  return extra === TICKS_PER_YARD ? 'a yard extra' : 'one repeat extra';
}
