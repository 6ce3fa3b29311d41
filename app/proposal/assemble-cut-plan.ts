/** Puts together the paper of the cut plans. Pure: the same job and plans always give the same paper. */
import { drawCutPlanRows } from '#app/drawing/draw-cut-plan.ts';
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import type { PlannedCloths, WorkLaid } from '#app/pricing/plan-work.ts';
import { runsOneWay } from '#app/plan/planned-treatment.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { decimalSign } from '#shared/locale.ts';
import type { CutPlanPaper, CutPlanSection, PlanFigure } from './cut-plan-paper.ts';
import { listBoltCuts } from './list-bolt-cuts.ts';
import { capital, sayCount, sayList, speechOf } from './speak.ts';
import type { Speech } from './speak.ts';

export interface CutPlanGiven {
  /** ISO date. */
  readonly date: string;
  readonly of: WorkLaid;
  /** Whose work is laid together, where it is of several; else the job's client. */
  readonly names?: readonly string[];
}

/** Content width of the paper, in points. */
const PAPER_WIDTH = 504;

export function assembleCutPlan(job: Job, laid: PlannedCloths, { date, of, names }: CutPlanGiven): CutPlanPaper {
  const speech = speechOf(job);
  const client = sayList(names ?? [job.client.name]);
  return {
    form: 1,
    language: 'en',
    title: `Cut plans, ${client}`,
    date,
    dated: speech.date(date),
    letterhead: { name: job.letterhead.name },
    client,
    reference: 'Cut plans',
    opening: `${sayWork(job, of)} All cuts of one cloth are laid together; what that saves is a reserve for flaws, and is promised to nobody.`,
    cautions: [
      'Before the first cut, measure the piece and look it over on both sides, in daylight, from end to end: flaws, shading, bowed pattern, the right dye lot, the right side. Cloth that has been cut is not taken back.',
      'A flaw that is found is typed in ("bad from 20 to 21½ yd"), and the plan is laid again before anything is cut.',
      'Positions count from the start of each bolt. Where its place in the repeat was not known, the bolt begins where the first cut wants it: find that place, then measure from there.',
    ],
    sections: laid.plans.map((planned) => writeSection(job, planned, speech)),
    faults: laid.faults.map(sayFault),
  };
}

function sayWork(job: Job, of: WorkLaid): string {
  if (of === 'accepted') return 'Laid over everything that the client accepted.';
  if (of !== 'likely')
    return `Laid over all work but what was declined, each in the option “${job.proposal.tierNames[of]}”.`;
  return 'Laid over what the client accepted, and what nothing is said of yet in the option that is advised. It is for reference: an order rests on accepted work.';
}

function writeSection(job: Job, planned: ClothPlan, speech: Speech): CutPlanSection {
  const { cloth, plan } = planned;
  return {
    cloth: cloth.id,
    title: cloth.name,
    words: sayCloth(planned, speech),
    figures: listFigures(planned, speech),
    drawings: drawCutPlanRows({
      plan,
      repeat: cloth.repeat,
      colour: null,
      wording: { units: job.units, decimal: decimalSign(job.locale) },
      width: PAPER_WIDTH,
      detail: 'paper',
      selected: null,
    }),
    notes: listNotes(planned, speech),
    bolts: listBoltCuts(planned, speech),
  };
}

function sayCloth({ cloth, plan, input }: ClothPlan, speech: Speech): string {
  const sets = new Set(input.cuts.map(({ set }) => set)).size;
  const usable = cloth.usableWidth === cloth.width ? '' : `, ${speech.length(cloth.usableWidth)} of it usable`;
  const { repeat } = cloth;
  const match = repeat?.match === 'half-drop' ? 'half-drop repeat' : 'straight repeat';
  const pattern = repeat === null ? 'no repeat' : `${match} of ${speech.length(repeat.vertical)}`;
  const way = runsOneWay(cloth) ? ', all tops one way' : '';
  const count = input.cuts.length === 1 ? 'One cut' : `${capital(sayCount(input.cuts.length))} cuts`;
  const pieces = plan.bolts.length === 1 ? 'one piece' : `${sayCount(plan.bolts.length)} pieces`;
  const role = capital(cloth.role);
  return `${role}, ${speech.length(cloth.width)} wide${usable}, ${pattern}${way}. ${count} of ${sets === 1 ? 'one treatment' : `${sayCount(sets)} treatments`} on ${pieces}.`;
}

function listFigures({ plan, order, handbook, alone, orderAlone }: ClothPlan, speech: Speech): PlanFigure[] {
  const share = (less: number, whole: number): string => `${speech.number((100 * less) / Math.max(1, whole), 1)} %`;
  const against = handbook - plan.ordered;
  const sayMore = (more: number, whole: number): string =>
    `${speech.cloth(Math.abs(more))} ${more < 0 ? 'less' : 'more'}, ${share(Math.abs(more), whole)}`;
  const gap = plan.gap === 0 ? 'reached: proved best' : `this one is within ${speech.cloth(plan.gap)} of it`;
  return [
    { label: 'laid together', value: speech.cloth(plan.ordered), rests: 'from the first cut to the last one’s end' },
    { label: 'no layout takes less than', value: speech.cloth(plan.bound), rests: gap },
    {
      label: 'by the chart',
      value: speech.cloth(handbook),
      rests: against === 0 ? 'every cut by itself: the same' : `every cut by itself: ${sayMore(against, handbook)}`,
    },
    {
      label: 'each treatment alone',
      value: speech.cloth(alone),
      rests:
        plan.ordered > alone
          ? 'each on a piece that begins at its place in the repeat; on one piece each waits for that place'
          : 'each on a piece that begins at its place in the repeat',
    },
    {
      label: 'order',
      value: speech.cloth(order),
      rests: `${sayPieces(plan)}; each treatment alone would be ${speech.cloth(orderAlone)}`,
    },
  ];
}

/** Where several pieces are bought, each with what is added to it: that is how they are asked for. */
function sayPieces({ bolts, working }: ClothPlan['plan']): string {
  const bought = bolts.filter(({ ordered }) => ordered > 0);
  const formula = working.find(({ id }) => id === 'plan-order')?.formula;
  return bought.length > 1 && formula !== undefined ? formula : 'with the extra for each piece, up to the step';
}

function listNotes({ plan, input, oneLot }: ClothPlan, speech: Speech): string[] {
  const nameOf = (id: string): string => input.cuts.find((cut) => cut.id === id)?.label ?? id;
  const flaws = input.flaws.map(
    ({ on, from, to }) =>
      `${capital(on)} is bad from ${speech.length(from)} to ${speech.length(to)} (${speech.cloth(from)} to ${speech.cloth(to)}): nothing lies there.`,
  );
  const kept = plan.remnants.map(
    ({ name, on, from, to, x, across }) =>
      `Keep remnant ${name}: ${speech.length(to - from)} × ${speech.length(across)} of ${on}, from ${speech.length(from)}${x === 0 ? '' : `, ${speech.length(x)} from the left selvage`}.`,
  );
  const fixed = plan.fixedCosts.map(
    ({ cut, costs }) =>
      `${nameOf(cut)} is fixed by hand: it ${costs === 0 ? 'costs nothing' : `adds ${speech.cloth(costs)} to the order`}.`,
  );
  const unlaid =
    plan.unlaid.length === 0
      ? []
      : [`The cloth on hand is too short. No place was found for ${sayList(plan.unlaid.map(nameOf))}.`];
  const ended = plan.cancelled
    ? ['The search was ended before it was through: this is the best layout that it had found.']
    : [];
  const lots = oneLot ? ['A treatment is longer than a whole piece: every piece has to come from one dye lot.'] : [];
  return [...unlaid, ...ended, ...lots, ...flaws, ...fixed, ...kept];
}
