/** One treatment under good, better and best: stacks given or chosen, taken off, judged and priced. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import type { Opening, Room } from '#shared/job.ts';
import type { TierResult, TreatmentResult } from '#shared/result.ts';
import type { StackIds } from '#shared/treatments/treatment-base.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { checkTreatment } from '#app/estimating/estimate-treatment.ts';
import { adviseTier } from '#app/lining/choose/advise-tier.ts';
import type { AdvisedStack } from '#app/lining/choose/advise-tier.ts';
import { chooseStacks } from '#app/lining/choose/choose-stacks.ts';
import type { ChosenStack, ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import { describeStack } from '#app/lining/say/describe-stack.ts';
import { insistOn } from '#app/lining/choose/insist-on.ts';
import type { PlannedTreatment } from '#app/plan/planned-treatment.ts';
import { nameStack } from '#app/lining/say/name-stack.ts';
import { askStacks } from './ask-stacks.ts';
import { behindOf, clothOf, faceOf } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';
import { priceStack } from './price-stack.ts';
import { workHours } from './reckon-hours.ts';
import { studyStacks } from './study-stacks.ts';
import type { StudyStack } from './study-stacks.ts';

/** Null when no cloth could make it: the faults are told in `pricing.faults`. */
export function priceTreatment(
  room: Room,
  opening: Opening,
  treatment: Treatment,
  pricing: JobPricing,
): TreatmentResult | null {
  const face = faceOf(pricing, treatment.face);
  if (!face) {
    pricing.faults.push({
      path: at(treatment.key, 'face'),
      wrong: `"${treatment.face}" is not a face cloth that is known`,
      right: 'list it under cloth',
    });
    return null;
  }
  const wrong = findFaults(treatment, face, pricing);
  if (wrong.length > 0) {
    pricing.faults.push(...wrong);
    return null;
  }
  const study = studyStacks(room, opening, treatment, pricing);
  const plain = study(face, []).made;
  const choose = askStacks(room, opening, treatment, pricing, study, face);
  const chosen = chooseStacks(choose);
  const place: TreatmentPlace = {
    key: treatment.key,
    path: `${room.name}/${opening.name}/${treatment.name}`,
    room: room.name,
    opening: opening.name,
    name: treatment.name,
  };
  const tierOf = (tier: Tier): TierResult => priceTier(tier, treatment, place, face, chosen, study, pricing);
  const tiers = { good: tierOf('good'), better: tierOf('better'), best: tierOf('best') };
  pricing.warnings.push(...plain.warnings);
  return {
    key: treatment.key,
    kind: treatment.kind,
    path: place.path,
    finished: plain.estimate.finished,
    tiers,
    advised: adviseTier({
      face,
      room: choose.room,
      opening: choose.opening,
      treatment: choose.treatment,
      tiers: {
        good: asOption(tiers.good, pricing),
        better: asOption(tiers.better, pricing),
        best: asOption(tiers.best, pricing),
      },
    }),
    notChosen: chosen.notChosen,
  };
}

/** Faults of the treatment by itself and under each stack that was given; one for a place. */
function findFaults(treatment: Treatment, face: FaceCloth, pricing: JobPricing): Fault[] {
  const { units } = pricing.job;
  const find = (id: string) => clothOf(pricing, id);
  const given = TIERS.flatMap((tier) => {
    const stack = treatment.stacks[tier];
    if (!stack) return [];
    const own = faceOf(pricing, stack.face) ?? face;
    // Plain cloth of its own in one option shows no pattern, wherever the pattern of the others stands.
    const hung = own !== face && own.repeat === null ? { ...treatment, pattern: null } : treatment;
    return checkTreatment(hung, own, behindOf(pricing, stack.behind), units, find);
  });
  const all = [...checkTreatment(treatment, face, [], units, find), ...given];
  return all.filter((fault, index) => all.findIndex((each) => each.path === fault.path) === index);
}

function asOption(tier: TierResult, pricing: JobPricing): AdvisedStack {
  return { behind: behindOf(pricing, tier.stack.behind), title: tier.title, judgement: tier.judgement };
}

function whyOf({ why, sameAs }: ChosenStack): TierResult['chosen'] {
  return sameAs === undefined ? { why } : { why, sameAs };
}

type TreatmentPlace = Omit<PlannedTreatment, 'takeoff' | 'cuts'>;

function priceTier(
  tier: Tier,
  treatment: Treatment,
  place: TreatmentPlace,
  usual: FaceCloth,
  chosen: ChosenStacks,
  study: StudyStack,
  pricing: JobPricing,
): TierResult {
  const given = treatment.stacks[tier];
  const stack: StackIds = given ?? { face: treatment.face, behind: chosen.stacks[tier].behind };
  const face = faceOf(pricing, stack.face) ?? usual;
  const behind = behindOf(pricing, stack.behind);
  const { made, judgement } = study(face, behind);
  const { estimate } = made;
  pricing.planned[tier].push({ ...place, takeoff: estimate.takeoff, cuts: made.cuts });
  return {
    stack,
    chosen: given ? null : whyOf(chosen.stacks[tier]),
    title: nameStack(face, behind),
    says: describeStack({ face, behind, judgement }),
    takeoff: estimate.takeoff,
    grams: estimate.grams,
    judgement: { ...judgement, advice: [...insistOn(judgement.advice, given !== undefined), ...made.advice] },
    price: priceStack(estimate, {
      clothOf: (id) => clothOf(pricing, id),
      rates: pricing.rates,
      currency: pricing.job.currency,
      say: pricing.say,
    }),
    pleats: estimate.pleats,
    stackback: estimate.stackback,
    ...(estimate.clearing ? { clearing: estimate.clearing } : {}),
    offer: estimate.offer,
    sheet: made.sheet,
    working: [...estimate.working, ...workHours(estimate.labour, pricing.rates.book), ...judgement.working],
  };
}
