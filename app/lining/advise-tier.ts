/** Which of the three options on the table the program advises for this room, whoever chose them, and why. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Judgement } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { makeOf } from './body.ts';
import type { JudgedOpening, JudgedRoom, JudgedTreatment } from './judge-input.ts';
import { placeOf } from './place-of-kind.ts';
import { sayStrengths, sayWhat } from './say-why.ts';
import { scoreStack, weighNeeds } from './weigh-needs.ts';

export interface AdvisedStack {
  readonly behind: readonly BackCloth[];
  readonly title: string;
  readonly judgement: Judgement;
}

export interface AdviseInput {
  readonly face: FaceCloth;
  readonly room: JudgedRoom;
  readonly opening: JudgedOpening;
  readonly treatment: JudgedTreatment;
  readonly tiers: Readonly<Record<Tier, AdvisedStack>>;
}

/**
 * The option that answers the room best by rounded score; one with a stop only where every one has a stop. Equal
 * options go to the earlier tier, so the advice is stable.
 */
export function adviseTier(input: AdviseInput): { readonly tier: Tier; readonly why: string } {
  const place = placeOf(input.treatment.kind);
  const make = makeOf(input.treatment);
  const needs = weighNeeds(input.room, input.opening, input.face, place);
  const rank = (tier: Tier): number => {
    const { judgement, behind } = input.tiers[tier];
    const stopped = judgement.advice.some((advice) => advice.level === 'stop');
    return scoreStack(judgement, needs, make, behind, place) - (stopped ? 1000 : 0);
  };
  const tier = TIERS.reduce((best, each) => (rank(each) > rank(best) ? each : best));
  const { title, judgement } = input.tiers[tier];
  const strengths = sayStrengths(judgement, needs, make, place);
  return { tier, why: `${title} answers ${sayWhat(input.room.use, input.treatment.kind)} best: ${strengths}.` };
}
