/** The plan's working: each figure with the arithmetic and the rule it rests on. */
import type { Say } from '#app/estimating/say.ts';
import { step } from '#app/estimating/say.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { CutPlan } from './cut-plan.ts';
import type { PlanInput } from './plan-input.ts';

export type PlanFigures = Omit<CutPlan, 'working'>;

export function sayPlan(input: PlanInput, plan: PlanFigures, say: Say): WorkingStep[] {
  const steps: WorkingStep[] = [];
  const sets = new Set(input.cuts.map((cut) => cut.set)).size;
  steps.push(
    step(
      'plan-cuts',
      'cuts',
      `${input.cuts.length} cuts of ${sets} ${sets === 1 ? 'set' : 'sets'}`,
      String(input.cuts.length),
      'take-off',
    ),
  );
  for (const bolt of plan.bolts) {
    const own = bolt.cuts.reduce((sum, cut) => sum + cut.length * (cut.across / bolt.width), 0);
    const waste = Math.max(0, bolt.used - own);
    const formula = `${bolt.cuts.length} cuts, ${say.cloth(bolt.used)} to the last one's end, ${say.cloth(waste)} of it between and beside them`;
    const rests =
      bolt.kind === 'remnant' ? 'on hand: adds nothing to the order' : 'the first right place in the repeat each';
    steps.push(step(`plan-bolt-${bolt.id}`, nameOn(bolt), formula, say.cloth(bolt.ordered), rests));
  }
  steps.push(
    step(
      'plan-ordered',
      'laid out together',
      plan.bolts
        .filter((bolt) => bolt.kind === 'bolt')
        .map((bolt) => say.cloth(bolt.ordered))
        .join(' + ') || '0',
      say.cloth(plan.ordered),
      'sum of the bolts',
    ),
  );
  steps.push(
    step(
      'plan-bound',
      'no layout takes less than',
      plan.gap === 0
        ? 'reached: this plan is proved best'
        : `within ${say.cloth(plan.gap)}, ${say.number((100 * plan.gap) / Math.max(1, plan.ordered))} %`,
      say.cloth(plan.bound),
      'proved for every layout cut straight across in rows',
    ),
  );
  if (plan.handbook !== null) {
    steps.push(
      step(
        'plan-handbook',
        'by the chart',
        compareHandbook(plan.handbook, plan.ordered, say),
        say.cloth(plan.handbook),
        'every cut by itself; what the plan saves is a reserve for flaws',
      ),
    );
  }
  for (const { cut, costs } of plan.fixedCosts)
    steps.push(
      step(
        `plan-fixed-${cut}`,
        `${nameOf(input, cut)}, fixed by hand`,
        'order with it fixed − order with it free',
        say.cloth(costs),
        'the plan laid again without it',
      ),
    );
  if (plan.unlaid.length > 0)
    steps.push(
      step(
        'plan-unlaid',
        'found no place',
        plan.unlaid.map((id) => nameOf(input, id)).join(', '),
        String(plan.unlaid.length),
        'the cloth on hand is too short',
      ),
    );
  return steps;
}

/**
 * The treatments' own plans added up. Each of them begins a piece of its own at its place in the repeat. One after another
 * on one piece, which is a layout too, each but the first waits for that place, less than a repeat: that is why the sum can
 * be less cloth than all laid together, and by how much at the most.
 */
export function sayAlone(input: PlanInput, ordered: number, alone: number, say: Say): WorkingStep {
  const sets = new Set(input.cuts.map((cut) => cut.set)).size;
  const repeat = input.repeat?.vertical ?? 0;
  const label = 'each treatment alone, added up';
  if (ordered <= alone) {
    const formula = `${say.cloth(alone)} − ${say.cloth(ordered)} = ${say.cloth(alone - ordered)} saved by laying them together`;
    return step(
      'plan-alone',
      label,
      formula,
      say.cloth(alone),
      'each on a piece that begins at its place in the repeat',
    );
  }
  const more = `${say.cloth(ordered)} − ${say.cloth(alone)} = ${say.cloth(ordered - alone)} more laid together`;
  const isWaiting = ordered - alone <= (sets - 1) * repeat;
  return isWaiting
    ? step(
        'plan-alone',
        label,
        `${more}: on one piece each after the first waits for its place in the repeat, less than ${sets - 1} × ${say.length(repeat)} ${say.unit}`,
        say.cloth(alone),
        'alone, each begins a piece of its own at its place, and is ordered with an extra for it',
      )
    : step(
        'plan-alone',
        label,
        `${more}, for flaws, fixed cuts and bolts that a treatment alone does not know`,
        say.cloth(alone),
        'each on a piece that begins at its place in the repeat',
      );
}

function nameOn({ kind, id }: PlanFigures['bolts'][number]): string {
  return id.toLowerCase().startsWith(kind) ? id : `${kind} ${id}`;
}

/** Flaws, fixed cuts and short bolts can make a plan longer than the chart, which knows none of them. */
function compareHandbook(handbook: number, ordered: number, say: Say): string {
  const [more, less] = handbook >= ordered ? [handbook, ordered] : [ordered, handbook];
  const share = say.number((100 * (more - less)) / Math.max(1, handbook), 1);
  const word = handbook >= ordered ? 'saved' : 'more, for flaws, fixed cuts and bolts that the chart does not know';
  return `${say.cloth(more)} − ${say.cloth(less)} = ${say.cloth(more - less)}, ${share} % ${word}`;
}

function nameOf(input: PlanInput, id: string): string {
  return input.cuts.find((cut) => cut.id === id)?.label ?? id;
}
