/** A whole job, priced three ways: take-off, judgement and price of every treatment under good, better and best. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault, Warning } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import type { Job, Opening, PanelsTreatment, Room, StackIds, Treatment } from '#shared/job.ts';
import { PART_NAMES, PARTS } from '#shared/parts.ts';
import type { JobResult, Judgement, Price, TierResult, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { checkPanels } from '#app/estimating/check-panels.ts';
import { estimatePanels } from '#app/estimating/estimate-panels.ts';
import type { Estimate } from '#app/estimating/estimate.ts';
import { speaker } from '#app/estimating/say.ts';
import type { Say } from '#app/estimating/say.ts';
import { adviseTier } from '#app/lining/advise-tier.ts';
import type { AdvisedStack } from '#app/lining/advise-tier.ts';
import { chooseStacks } from '#app/lining/choose-stacks.ts';
import type { ChosenStacks } from '#app/lining/choose-stacks.ts';
import { describeStack } from '#app/lining/describe-stack.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { nameStack } from '#app/lining/name-stack.ts';
import { resolveCloth, weightOf } from '#app/lining/resolve-cloth.ts';
import { addPlans } from '#app/plan/add-plans.ts';
import type { PlannedLine } from '#app/plan/add-plans.ts';
import { RateBook } from './pick-rates.ts';
import { priceStack } from './price-stack.ts';
import { totalPrices } from './total-tiers.ts';

interface Pricing {
  readonly job: Job;
  readonly rates: RateBook;
  readonly say: Say;
  readonly faults: Fault[];
  readonly warnings: Warning[];
  readonly planned: Record<Tier, PlannedLine[]>;
}

/**
 * Prices a job. Treatments that no cloth could make are left out and told in `faults`; rates that are needed and unset
 * in `missingRates`; totals are null while either is not empty. `warnings` are those of reading, carried along.
 */
export function priceJob(job: Job, warnings: readonly Warning[] = []): JobResult {
  const pricing: Pricing = {
    job,
    rates: new RateBook(job.priceBook),
    say: speaker(job.units, job.locale),
    faults: [],
    warnings: [...warnings],
    planned: { good: [], better: [], best: [] },
  };
  const treatments: TreatmentResult[] = [];
  for (const room of job.rooms)
    for (const opening of room.openings)
      for (const treatment of opening.treatments) {
        const result = priceTreatment(room, opening, treatment, pricing);
        if (result) treatments.push(result);
      }
  warnUnpriced(pricing, treatments);
  return {
    treatments,
    plan: TIERS.flatMap((tier) => addPlans(tier, pricing.planned[tier])),
    totals: totalJob(treatments, pricing),
    missingRates: pricing.rates.missing,
    faults: pricing.faults,
    exampleRates: job.priceBook.example,
    warnings: pricing.warnings,
  };
}

function totalJob(treatments: readonly TreatmentResult[], { job, faults }: Pricing): JobResult['totals'] {
  const pricesOf = (tier: Tier): Price[] | null => {
    const prices = treatments.map((treatment) => treatment.tiers[tier].price).filter((price) => price !== null);
    return prices.length === treatments.length ? prices : null;
  };
  const [good, better, best] = TIERS.map(pricesOf);
  if (!good || !better || !best || faults.length > 0) return null;
  return {
    good: totalPrices(good, job.priceBook),
    better: totalPrices(better, job.priceBook),
    best: totalPrices(best, job.priceBook),
  };
}

/** Hardware and notions are not everybody's to sell: unset rates leave them out, and that is said once. */
function warnUnpriced({ job, warnings }: Pricing, treatments: readonly TreatmentResult[]): void {
  if (treatments.length === 0) return;
  const { each, byLength } = job.priceBook.parts;
  const rated = [...Object.keys(each), ...Object.keys(byLength)];
  const sells = (kind: 'hardware' | 'notions'): boolean =>
    PART_NAMES.some((name) => PARTS[name].kind === kind && rated.includes(name));
  if (!sells('hardware'))
    warnings.push({
      path: 'priceBook.hardware',
      says: 'No rates for rod and brackets are set: hardware is not in these prices.',
    });
  if (!sells('notions'))
    warnings.push({
      path: 'priceBook.notions',
      says: 'No rates for notions are set: tape, hooks and weights are not in these prices.',
    });
}

function priceTreatment(room: Room, opening: Opening, panels: Treatment, pricing: Pricing): TreatmentResult | null {
  const { job } = pricing;
  const faceOf = (id: string): FaceCloth | null => {
    const cloth = resolveCloth(id, job.cloth);
    return cloth?.role === 'face' ? cloth : null;
  };
  const face = faceOf(panels.face);
  if (!face) {
    pricing.faults.push({
      path: at(panels.key, 'face'),
      wrong: `"${panels.face}" is not a face cloth that is known`,
      right: 'list it under cloth',
    });
    return null;
  }
  const study = studyStacks(room, opening, panels, pricing);
  const faults = TIERS.flatMap((tier) => {
    const stack = panels.stacks[tier];
    if (!stack) return [];
    const own = faceOf(stack.face) ?? face;
    return checkPanels(panels, own, behindOf(stack.behind, job.cloth), job.units);
  });
  const wrong = [...checkPanels(panels, face, [], job.units), ...faults];
  if (wrong.length > 0) {
    pricing.faults.push(...uniqueFaults(wrong));
    return null;
  }
  const chosen = chooseStacks({
    face,
    room,
    opening,
    treatment: panels,
    ownCloth: job.cloth,
    judge: (behind) => study(face, behind).judgement,
    given: givenBehind(panels),
  });
  const tierOf = (tier: Tier): TierResult => priceTier(tier, panels, face, chosen, study, pricing);
  const tiers = { good: tierOf('good'), better: tierOf('better'), best: tierOf('best') };
  const width = study(face, []).estimate.finished.width;
  return {
    key: panels.key,
    path: `${room.name}/${opening.name}/${panels.name}`,
    finished: { width, length: panels.finishedLength },
    tiers,
    advised: adviseTier({
      face,
      room,
      opening,
      heading: panels.heading,
      tiers: { good: asOption(tiers.good, job), better: asOption(tiers.better, job), best: asOption(tiers.best, job) },
    }),
  };
}

function givenBehind(panels: PanelsTreatment): Partial<Record<Tier, readonly string[]>> {
  const given: Partial<Record<Tier, readonly string[]>> = {};
  for (const tier of TIERS) {
    const stack = panels.stacks[tier];
    if (stack) given[tier] = stack.behind;
  }
  return given;
}

function asOption(tier: TierResult, job: Job): AdvisedStack {
  return { behind: behindOf(tier.stack.behind, job.cloth), title: tier.title, judgement: tier.judgement };
}

function uniqueFaults(faults: readonly Fault[]): Fault[] {
  return faults.filter((fault, index) => faults.findIndex((each) => each.path === fault.path) === index);
}

interface Study {
  readonly estimate: Estimate;
  readonly judgement: Judgement;
}
type StudyStack = (face: FaceCloth, behind: readonly BackCloth[]) => Study;

/** Take-off and judgement of any stack at this window; each is worked out once. */
function studyStacks(room: Room, opening: Opening, panels: PanelsTreatment, { job, say }: Pricing): StudyStack {
  const known = new Map<string, Study>();
  return (face, behind) => {
    const key = JSON.stringify([face.id, ...behind.map((layer) => layer.id)]);
    const found = known.get(key);
    if (found) return found;
    const estimate = estimatePanels(panels, face, behind, {
      massOf: (cloth) => weightOf(cloth).gramsPerM2,
      clothOf: (id) => resolveCloth(id, job.cloth),
      say,
      billableWidth: job.priceBook.labour.billableWidth,
    });
    const judgement = judgeStack({
      face,
      behind,
      room,
      opening,
      treatment: panels,
      made: {
        fullnessMade: estimate.fullnessMade ?? 1,
        halfWidths: estimate.halfWidths,
        finishedWidth: estimate.finished.width,
        liningMatchesFace: estimate.seamsLineUp,
      },
    });
    const study = { estimate, judgement };
    known.set(key, study);
    return study;
  };
}

function behindOf(ids: readonly string[], own: readonly Cloth[]): BackCloth[] {
  return ids
    .map((id) => resolveCloth(id, own))
    .filter((cloth): cloth is BackCloth => cloth !== null && cloth.role !== 'face');
}

function priceTier(
  tier: Tier,
  panels: PanelsTreatment,
  usual: FaceCloth,
  chosen: ChosenStacks,
  study: StudyStack,
  pricing: Pricing,
): TierResult {
  const { job, rates, say } = pricing;
  const given = panels.stacks[tier];
  const stack: StackIds = given ?? { face: panels.face, behind: chosen.stacks[tier].behind };
  const own = resolveCloth(stack.face, job.cloth);
  const face = own?.role === 'face' ? own : usual;
  const behind = behindOf(stack.behind, job.cloth);
  const { estimate, judgement } = study(face, behind);
  estimate.takeoff.forEach((line) => {
    const cloth = resolveCloth(line.cloth, job.cloth);
    if (cloth) pricing.planned[tier].push({ line, cloth, repeatRule: panels.practice.repeatRule });
  });
  return {
    stack,
    chosen: given ? null : { why: chosen.stacks[tier].why },
    title: nameStack(face, behind),
    says: describeStack({ face, behind, judgement }),
    takeoff: estimate.takeoff,
    grams: estimate.grams,
    judgement,
    price: priceStack(estimate, {
      clothOf: (id) => resolveCloth(id, job.cloth),
      rates,
      currency: job.currency,
      say,
    }),
    pleats: estimate.pleats,
    stackback: estimate.stackback,
    offer: estimate.offer,
    working: [...estimate.working, ...judgement.working],
  };
}
