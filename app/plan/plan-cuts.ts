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

/** A task with its layout: with fewer remnants the question is another. */
interface Laid extends Found {
  readonly input: PlanInput;
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
  const choices = listChoices(input, budget);
  const pricing = budget * Math.min(1, MOST_PRICED / Math.max(1, input.fixed.length));
  const most = choices.reduce((sum, { steps }) => sum + steps, budget) + pricing * input.fixed.length;
  const meter = makeMeter(most, watch);
  const found = findLayout(input, choices, budget, meter);
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
    fixedCosts: priceFixed(found, pricing, meter),
    steps: meter.steps(),
    cancelled: meter.cancelled(),
  };
  return { ok: true, plan: { ...figures, working: sayPlan(input, figures, say) } };
}

/** So many remnants are tried in every choice, so that one more on hand never lengthens the order; of more, each alone. */
const MOST_REMNANTS = 3;
/** Of so many cuts fixed by hand each is priced by a search of the whole budget; more of them share as much. */
const MOST_PRICED = 4;

/** Fewer remnants than there are, and how many layouts may be weighed with them alone. */
interface Choice {
  readonly input: PlanInput;
  readonly steps: number;
}

function findLayout(input: PlanInput, choices: readonly Choice[], budget: number, meter: Meter): Laid {
  let best = layAll(input, meter.allow(budget));
  for (const choice of choices) {
    if (isProved(best) || meter.cancelled()) break;
    const other = layAll(choice.input, meter.allow(choice.steps));
    if (isLess(other.cost, best.cost)) best = { ...other, bound: best.bound };
  }
  return best;
}

function listChoices(input: PlanInput, budget: number): Choice[] {
  const fixedOn = (id: string): boolean => input.fixed.some((fixed) => fixed.on === id);
  const spare = input.remnants.filter((each) => !fixedOn(each.id)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const isFew = spare.length <= MOST_REMNANTS;
  const parts = isFew
    ? partsOf(spare).filter((part) => part.length < spare.length)
    : [[], ...spare.map((each) => [each])];
  return parts.map((part) => {
    const remnants = input.remnants.filter((each) => fixedOn(each.id) || part.includes(each));
    const there = new Set([...remnants, ...input.bolts].map((each) => each.id));
    const flaws = input.flaws.filter((flaw) => there.has(flaw.on));
    return { input: { ...input, remnants, flaws }, steps: isFew ? budget : budget / parts.length };
  });
}

function layAll(input: PlanInput, meter: Meter): Laid {
  const task = readTask(input);
  return { input, task, ...layTask(task, meter) };
}

function partsOf<T>(list: readonly T[]): T[][] {
  return list.reduce<T[][]>((parts, each) => [...parts, ...parts.map((part) => [...part, each])], [[]]);
}

/** What each fixed cut adds: the order as it is, less the order with that cut free and the others where they are. */
function priceFixed(found: Laid, budget: number, meter: Meter): { readonly cut: string; readonly costs: Ticks }[] {
  const { fixed } = found.input;
  return [...fixed]
    .sort((a, b) => (a.cut < b.cut ? -1 : 1))
    .map(({ cut }) => {
      const freed = { ...found.input, fixed: fixed.filter((each) => each.cut !== cut) };
      const other = layAll(freed, meter.allow(budget));
      // The layout with the cut where it was fixed is one of those without it: less than nothing is never saved.
      const saved = found.cost.ordered - other.cost.ordered;
      return { cut, costs: ticks(other.cost.unlaid > found.cost.unlaid ? 0 : Math.max(0, saved)) };
    });
}
