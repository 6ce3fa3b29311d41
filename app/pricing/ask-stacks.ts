/** What the lining engine is asked at one treatment: its room, its window, its make, and what is given already. */
import type { FaceCloth } from '#shared/cloth.ts';
import type { Opening, Room } from '#shared/job.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import type { ChooseInput } from '#app/lining/choose/choose-stacks.ts';
import { judgedForm } from '#app/lining/judged-form.ts';
import { judgedOpening } from '#app/lining/judged-opening.ts';
import { clothOf } from './job-pricing.ts';
import type { JobPricing } from './job-pricing.ts';
import { roomFor } from './room-for.ts';
import type { StudyStack } from './study-stacks.ts';

export function askStacks(
  room: Room,
  opening: Opening,
  treatment: Treatment,
  pricing: JobPricing,
  study: StudyStack,
  face: FaceCloth,
): ChooseInput {
  const { estimate, sheet } = study(face, []).made;
  return {
    face,
    room: roomFor(room, opening, treatment, pricing),
    opening: judgedOpening(opening, estimate.finished),
    treatment: judgedForm(treatment, { finished: estimate.finished, sheet }, (id) => clothOf(pricing, id)),
    ownCloth: pricing.job.cloth,
    judge: (behind) => study(face, behind).judgement,
    given: givenBehind(treatment),
  };
}

function givenBehind(treatment: Treatment): Partial<Record<Tier, readonly string[]>> {
  const given: Partial<Record<Tier, readonly string[]>> = {};
  for (const tier of TIERS) {
    const stack = treatment.stacks[tier];
    if (stack) given[tier] = stack.behind;
  }
  return given;
}
