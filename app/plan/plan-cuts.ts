/** The joint cut plan: all cuts of one cloth laid out together, with a proved bound beside it. */
import type { Say } from '#app/estimating/say.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { checkPlan, checkRoom } from './check-plan.ts';
import type { PlanOutcome } from './cut-plan.ts';
import { describeLayout, listRemnants } from './describe-layout.ts';
import type { Found } from './lay-task.ts';
import { isProved, layTask } from './lay-task.ts';
import { isLess } from './layout.ts';
import type { Meter } from './meter.ts';
import { makeMeter } from './meter.ts';
import type { PlanInput, PlanWatch } from './plan-input.ts';
import { USUAL_BUDGET } from './plan-input.ts';
import { sayPlan } from './say-plan.ts';
import type { Task } from './task.ts';
import { readTask } from './task.ts';

/** A task with its layout: with fewer remnants the task is another. */
interface Laid extends Found {
  readonly task: Task;
}

/**
 * Lays all cuts; `say` words faults and working. The work is bounded by `settings.budget` steps, never by a clock, so that
 * the same question always gets the same plan. Returns every fault of the question instead of a plan, each with its field
 * and remedy; where the cloth on hand runs out, a plan with the cuts that found no place.
 */
export function planCuts(input: PlanInput, say: Say, watch: PlanWatch = {}): PlanOutcome {
  const faults = checkPlan(input, say);
  if (faults.length > 0) return { ok: false, faults };
  const task = readTask(input);
  const tight = checkRoom(input, task, say);
  if (tight.length > 0) return { ok: false, faults: tight };
  const budget = input.settings.budget ?? USUAL_BUDGET;
  const meter = makeMeter(budget * (1 + input.fixed.length), watch);
  const found = findLayout(input, budget, meter);
  const bolts = describeLayout(input, found.task, found.layout);
  const laid = new Set(bolts.flatMap((bolt) => bolt.cuts.map((cut) => cut.id)));
  const unlaid = input.cuts.flatMap((cut) => (laid.has(cut.id) ? [] : [cut.id])).sort((a, b) => (a < b ? -1 : 1));
  const ordered = found.cost.ordered;
  const bound = Math.min(found.bound, ordered);
  const figures = {
    bolts,
    ordered: ticks(ordered),
    handbook: input.handbook,
    bound: ticks(bound),
    gap: ticks(ordered - bound),
    unlaid,
    remnants: listRemnants(bolts, input),
    fixedCosts: priceFixed(input, found, budget, meter),
    steps: meter.steps(),
    cancelled: meter.cancelled(),
  };
  return { ok: true, plan: { ...figures, working: sayPlan(input, figures, say) } };
}

/** So many remnants are tried in every choice, so that one more on hand never lengthens the order; of more, each alone. */
const MOST_REMNANTS = 3;

function findLayout(input: PlanInput, budget: number, meter: Meter): Laid {
  let best = layAll(input, meter.allow(budget));
  const fixedOn = (id: string): boolean => input.fixed.some((fixed) => fixed.on === id);
  const spare = input.remnants.filter((each) => !fixedOn(each.id)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const choices = spare.length <= MOST_REMNANTS ? partsOf(spare) : [[], ...spare.map((each) => [each])];
  for (const choice of choices) {
    if (isProved(best) || meter.cancelled()) break;
    if (choice.length === spare.length) continue;
    const remnants = input.remnants.filter((each) => fixedOn(each.id) || choice.includes(each));
    const there = new Set([...remnants, ...input.bolts].map((each) => each.id));
    const flaws = input.flaws.filter((flaw) => there.has(flaw.on));
    const other = layAll({ ...input, remnants, flaws }, meter.allow(budget));
    if (isLess(other.cost, best.cost)) best = { ...other, bound: best.bound };
  }
  return best;
}

function layAll(input: PlanInput, meter: Meter): Laid {
  const task = readTask(input);
  return { task, ...layTask(task, meter) };
}

function partsOf<T>(list: readonly T[]): T[][] {
  return list.reduce<T[][]>((parts, each) => [...parts, ...parts.map((part) => [...part, each])], [[]]);
}

/** What each fixed cut adds: the order as it is, less the order with that cut free and the others where they are. */
function priceFixed(
  input: PlanInput,
  found: Laid,
  budget: number,
  meter: Meter,
): { readonly cut: string; readonly costs: Ticks }[] {
  return [...input.fixed]
    .sort((a, b) => (a.cut < b.cut ? -1 : 1))
    .map(({ cut }) => {
      const freed = { ...input, fixed: input.fixed.filter((each) => each.cut !== cut) };
      const other = findLayout(freed, budget, meter);
      // The layout with the cut where it was fixed is one of those without it: less than nothing is never saved.
      const saved = found.cost.ordered - other.cost.ordered;
      return { cut, costs: ticks(other.cost.unlaid > found.cost.unlaid ? 0 : Math.max(0, saved)) };
    });
}
