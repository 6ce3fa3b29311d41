/** Which of the three options on the table the program advises for this room, whoever chose them, and why. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Judgement } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Budget, Tier } from '#shared/words.ts';
import { makeOf } from '../body.ts';
import { AS_GOOD } from './follow-purse.ts';
import type { JudgedOpening, JudgedRoom, JudgedTreatment } from '../judge-input.ts';
import { placeOf } from '../place-of-kind.ts';
import { lower } from '../say/say-number.ts';
import { sayStrengths, sayWhat } from '../say/say-why.ts';
import { scoreStack, weighNeeds } from './weigh-needs.ts';

/** More than any score. */
const STOPPED = 1000;

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
 * options go to the earlier tier, so the advice is stable. A careful purse takes the earliest, a generous one the latest,
 * of those that answer as well.
 */
export function adviseTier(input: AdviseInput): { readonly tier: Tier; readonly why: string } {
  const place = placeOf(input.treatment.kind);
  const make = makeOf(input.treatment);
  const needs = weighNeeds(input.room, input.opening, input.face, place);
  const rank = (tier: Tier): number => {
    const { judgement, behind } = input.tiers[tier];
    const stopped = judgement.advice.some((advice) => advice.level === 'stop');
    return scoreStack(judgement, needs, make, behind, place) - (stopped ? STOPPED : 0);
  };
  const best = TIERS.reduce((found, each) => (rank(each) > rank(found) ? each : found));
  const asGood = TIERS.filter((each) => rank(each) >= rank(best) - AS_GOOD);
  const tier = byPurse(input.room.budget ?? null, best, asGood);
  const { title, judgement } = input.tiers[tier];
  const others = TIERS.filter((each) => each !== tier && rank(each) > -STOPPED / 2).map(
    (each) => input.tiers[each].judgement,
  );
  const strengths = sayStrengths(judgement, needs, make, place, others);
  const none = TIERS.every((each) => rank(each) < -STOPPED / 2);
  const lead = none ? 'None of the three is to be made as it is asked for; of them ' : '';
  const answers = `${none ? lead + lower(title) : title} answers ${sayWhat(input.room.use, input.treatment.kind)}`;
  if (tier === best) return { tier, why: `${answers} best: ${strengths}.` };
  const other = lower(input.tiers[best].title);
  const wished =
    input.room.budget === 'careful' ? `as well as ${other}, for less` : `as well as ${other}, and is the step up`;
  return { tier, why: `${answers} ${wished}: ${strengths}.` };
}

function byPurse(budget: Budget | null, best: Tier, asGood: readonly Tier[]): Tier {
  if (budget === null) return best;
  return (budget === 'careful' ? asGood[0] : asGood[asGood.length - 1]) ?? best;
}
