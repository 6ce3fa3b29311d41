/** What one set adds to the cloth of the whole. */
import type { Say } from '#app/estimating/say.ts';
import type { Fault } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { CutPlan } from './cut-plan.ts';
import type { PlanInput, PlanWatch } from './plan-input.ts';
import { planCuts } from './plan-cuts.ts';

export type Marginal =
  | {
      readonly ok: true;
      /** `whole` less `without`; not negative. */
      readonly adds: Ticks;
      readonly whole: CutPlan;
      readonly without: CutPlan;
    }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Plans the cuts with and without the set; cuts of it that are fixed by hand go with it. Faults as `planCuts`. */
export function marginalCloth(input: PlanInput, set: string, say: Say, watch: PlanWatch = {}): Marginal {
  const whole = planCuts(input, say, watch);
  if (!whole.ok) return whole;
  const gone = new Set(input.cuts.filter((cut) => cut.set === set).map((cut) => cut.id));
  const rest: PlanInput = {
    ...input,
    cuts: input.cuts.filter((cut) => !gone.has(cut.id)),
    fixed: input.fixed.filter((fixed) => !gone.has(fixed.cut)),
    handbook: null,
  };
  const without = planCuts(rest, say, watch);
  if (!without.ok) return without;
  const adds = ticks(Math.max(0, whole.plan.ordered - without.plan.ordered));
  return { ok: true, adds, whole: whole.plan, without: without.plan };
}
