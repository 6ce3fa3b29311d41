/** Why a stack is none of the three: what rules it out, what speaks against it, or what its rival does better. */
import type { BackCloth } from '#shared/cloth.ts';
import type { Advice, Judgement } from '#shared/result.ts';
import type { RoomUse } from '#shared/words.ts';
import { AS_GOOD } from './follow-purse.ts';
import { makeOf } from './body.ts';
import type { JudgedTreatment } from './judge-input.ts';
import { placeOf } from './place-of-kind.ts';
import { lower } from './say-number.ts';
import { sayBetter, sayWhat } from './say-why.ts';
import { scoreStack } from './weigh-needs.ts';
import type { Needs } from './weigh-needs.ts';
import { isOfStack } from './rules/index.ts';

export interface Contender {
  readonly name: string;
  readonly behind: readonly BackCloth[];
  readonly effort: number;
  readonly judgement: Judgement;
}

export interface Contest {
  readonly use: RoomUse;
  readonly treatment: JudgedTreatment;
  readonly needs: Needs;
}

/** The stop that rules a stack out; one of the window or the make, which no stack can help, does not. */
export function stopOf(judgement: Judgement): Advice | undefined {
  return judgement.advice.find((advice) => advice.level === 'stop' && isOfStack(advice.rule));
}

/** The chosen stack that takes most nearly the effort of `left`. */
export function rivalOf(left: Contender, chosen: readonly Contender[]): Contender | undefined {
  const [first, ...others] = chosen;
  if (first === undefined) return undefined;
  const apart = (each: Contender): number => Math.abs(each.effort - left.effort);
  return others.reduce((near, each) => (apart(each) < apart(near) ? each : near), first);
}

/** The second half of a sentence, in small letters and with its full stop: a stop, a caution that the rival does not have, or a lesser reading. */
export function sayAgainst(left: Contender, rival: Contender | undefined, contest: Contest): string {
  const stop = stopOf(left.judgement);
  if (stop !== undefined) return lower(stop.says);
  const theirs = new Set(rival?.judgement.advice.map((advice) => advice.rule) ?? []);
  const caution = left.judgement.advice.find(
    (advice) => advice.level === 'caution' && isOfStack(advice.rule) && !theirs.has(advice.rule),
  );
  if (caution !== undefined) return lower(caution.says);
  if (rival === undefined) return 'the other options answer better.';
  const { needs, treatment, use } = contest;
  const make = makeOf(treatment);
  const place = placeOf(treatment.kind);
  const score = (each: Contender): number => scoreStack(each.judgement, needs, make, each.behind, place);
  if (score(left) > score(rival) + AS_GOOD) {
    const more = left.effort > rival.effort ? '; it takes more cloth and work' : '';
    return `it would answer ${sayWhat(use, treatment.kind)} better than ${lower(rival.name)}${sayBetter(left.judgement, rival.judgement, needs, make, place)}${more}.`;
  }
  if (score(left) >= score(rival)) {
    return rival.effort <= left.effort
      ? `${lower(rival.name)} does as well for less work.`
      : `it would serve as well; ${lower(rival.name)} was taken as the step up.`;
  }
  const better = sayBetter(rival.judgement, left.judgement, needs, make, place);
  return `${lower(rival.name)} answers ${sayWhat(use, treatment.kind)} better${better}.`;
}
