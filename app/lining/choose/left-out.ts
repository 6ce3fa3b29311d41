/** Why a stack is none of the three: what rules it out, what speaks against it, or what its rival does better. */
import type { BackCloth } from '#shared/cloth.ts';
import type { Advice, Judgement } from '#shared/result.ts';
import type { RoomUse } from '#shared/words.ts';
import { AS_GOOD } from './follow-purse.ts';
import { makeOf } from '../body.ts';
import type { JudgedTreatment } from '../judge-input.ts';
import { placeOf } from '../place-of-kind.ts';
import { lower } from '../say/say-number.ts';
import { sayBetter, sayWhat } from '../say/say-why.ts';
import { costsOf, DARK_FAMILIES, scoreStack } from './weigh-needs.ts';
import type { Needs } from './weigh-needs.ts';
import { isOfStack } from '../rules/index.ts';

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
function rivalOf(left: Contender, chosen: readonly Contender[]): Contender | undefined {
  const [first, ...others] = chosen;
  if (first === undefined) return undefined;
  const apart = (each: Contender): number => Math.abs(each.effort - left.effort);
  return others.reduce((near, each) => (apart(each) < apart(near) ? each : near), first);
}

/**
 * The second half of a sentence, in small letters and with its full stop: a stop, darkness that nobody asked for, what
 * speaks against it and against none of the three, or a lesser reading than that of its rival.
 */
export function sayAgainst(left: Contender, chosen: readonly Contender[], contest: Contest): string {
  const stop = stopOf(left.judgement);
  if (stop !== undefined) return lower(stop.says);
  const { needs, treatment, use } = contest;
  const place = placeOf(treatment.kind);
  const darkens = (each: Contender): boolean => each.behind.some(isDarkCloth);
  const takesLight = place === 'window' || (place === 'top' && makeOf(treatment) !== 'flat');
  if (takesLight && needs.dark === 0 && darkens(left) && !chosen.some(darkens))
    return `it darkens ${sayWhat(use, treatment.kind)}, and nobody asked for darkness.`;
  const against = speaksAgainst(left, chosen);
  if (against !== undefined) return lower(against.says);
  const make = makeOf(treatment);
  const score = (each: Contender): number => scoreStack(each.judgement, needs, make, each.behind, place);
  const ahead = chosen.filter((each) => score(each) >= score(left));
  const rival = rivalOf(left, ahead.length > 0 ? ahead : chosen);
  if (rival === undefined) return 'the other options answer better.';
  if (score(left) > score(rival) + AS_GOOD) {
    const more = left.effort > rival.effort ? '; it takes more cloth or work' : '';
    return `it would answer ${sayWhat(use, treatment.kind)} better than ${lower(rival.name)}${sayBetter(left.judgement, rival.judgement, needs, make, place)}${more}.`;
  }
  if (score(left) >= score(rival)) {
    return rival.effort <= left.effort
      ? `${lower(rival.name)} does as well ${sayLess(rival, left)}.`
      : `it would serve as well; ${lower(rival.name)} was taken as the step up.`;
  }
  const better = sayBetter(rival.judgement, left.judgement, needs, make, place);
  if (better === '') return `${lower(rival.name)} does as well ${sayLess(rival, left)}.`;
  return `${lower(rival.name)} answers ${sayWhat(use, treatment.kind)} better${better}.`;
}

/** The stiff hand of a blackout is the trade's first reason; a note counts where it costs something. */
function speaksAgainst(left: Contender, chosen: readonly Contender[]): Advice | undefined {
  const theirs = new Set(chosen.flatMap((each) => each.judgement.advice.map(({ rule }) => rule)));
  const own = left.judgement.advice.filter(
    ({ level, rule }) => (level === 'caution' || costsOf(rule) > 0) && isOfStack(rule) && !theirs.has(rule),
  );
  return own.find(({ rule }) => rule === STIFF_RULE) ?? own[0];
}

const STIFF_RULE = 'stiff-blackout-gathers-badly';

function isDarkCloth(cloth: BackCloth): boolean {
  return cloth.role === 'lining' && DARK_FAMILIES.includes(cloth.family);
}

/** Fewer layers are less work; else it is the cloth that costs less. */
function sayLess(rival: Contender, left: Contender): string {
  if (rival.behind.length < left.behind.length) return 'for less work';
  return rival.behind.length === left.behind.length ? 'with a cheaper cloth' : 'without so dear a cloth';
}
