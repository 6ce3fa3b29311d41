/** What a tier adds to the one before it, and what it gives up, from readings and cautions; where it adds nothing, that. */
import type { Judgement } from '#shared/result.ts';
import type { MakeKind } from '../body.ts';
import type { Place } from '../place-of-kind.ts';
import { isOfStack } from '../rules/index.ts';
import { lower, sayList } from './say-number.ts';
import { MORE_OF, sayNeed } from './say-why.ts';
import { meetNeeds, NEED_NAMES } from '../choose/weigh-needs.ts';
import type { NeedName, Needs } from '../choose/weigh-needs.ts';

export interface Step {
  readonly name: string;
  readonly judgement: Judgement;
}

/** What it is worth that a caution or a note of the stack before is gone. */
const RID_OF: Readonly<Record<string, string>> = {
  'stiff-blackout-gathers-badly': 'better folds',
  'needle-holes': 'no points of daylight',
  'needle-holes-body': 'no points of daylight',
  'glass-line-shows': 'no line where the glass ends',
  'lining-helps-make': 'a better hang with hidden hems',
  'thin-face-pales': 'a colour that does not pale in strong sun',
  'silk-interline': 'silk that hangs and lasts better',
  'silk-unlined': 'silk that does not split',
  'limp-for-heading': 'pleats that stand',
  'limp-for-flat': 'a flatter hang',
};
/** A difference of what is met, weighed, that is worth a word. */
const WORTH_TELLING = 0.005;
const MOST_GAINS = 3;

/** `A step up from standard lining: more warmth and full folds, but dim by day.` */
export function sayStep(before: Step, after: Step, needs: Needs, make: MakeKind, place: Place): string {
  const [gained, lost] = [gains(before, after, needs, make, place), losses(before, after, needs, make, place)];
  const name = lower(before.name);
  const but = lost === null ? '' : `, but ${lost}`;
  if (gained.length > 0) return `A step up from ${name}: ${sayList(gained)}${but}.`;
  return `It takes more cloth or work than ${name} and adds little that is asked here${but}.`;
}

/** Whether the second does anything that is asked better than the first. */
export function isStepUp(before: Judgement, after: Judgement, needs: Needs, make: MakeKind, place: Place): boolean {
  const step = (judgement: Judgement): Step => ({ name: '', judgement });
  return gains(step(before), step(after), needs, make, place).length > 0;
}

function gains(before: Step, after: Step, needs: Needs, make: MakeKind, place: Place): readonly string[] {
  const [had, has] = [rulesOf(before.judgement), rulesOf(after.judgement)];
  const rid = had.filter((rule) => !has.includes(rule)).flatMap((rule) => RID_OF[rule] ?? []);
  const met = needsApart(before, after, needs, make, place, 1)
    // That nothing is seen of the colour by day is no merit.
    .filter((name) => !(name === 'colour' && after.judgement.words.colour.words !== 'true'))
    .map((name) => sayNeed(name, after.judgement, make));
  const told = [...rid, ...met].filter((text, i, all) => all.indexOf(text) === i).slice(0, MOST_GAINS);
  if (told.length > 0) return told;
  // No word tells them apart, and still it is a little more of something.
  return gainsOf(before, after, needs, make, place, 1)
    .slice(0, 1)
    .map((name) => MORE_OF[name]);
}

/** The one thing that it gives up most. */
function losses(before: Step, after: Step, needs: Needs, make: MakeKind, place: Place): string | null {
  const [name] = needsApart(before, after, needs, make, place, -1);
  if (name === undefined) return null;
  if (name !== 'body') return sayNeed(name, after.judgement, make);
  const fuller = after.judgement.readings.body > before.judgement.readings.body;
  return fuller ? 'a bulkier hang' : 'a thinner hang';
}

function needsApart(
  before: Step,
  after: Step,
  needs: Needs,
  make: MakeKind,
  place: Place,
  sign: 1 | -1,
): readonly NeedName[] {
  return gainsOf(before, after, needs, make, place, sign).filter(
    (name) => sayNeed(name, before.judgement, make) !== sayNeed(name, after.judgement, make),
  );
}

/** Needs that are met more (or less) by a difference worth telling, the largest first. */
function gainsOf(
  before: Step,
  after: Step,
  needs: Needs,
  make: MakeKind,
  place: Place,
  sign: 1 | -1,
): readonly NeedName[] {
  const [a, b] = [before.judgement, after.judgement].map((judgement) => meetNeeds(judgement, make, place));
  if (a === undefined || b === undefined) return [];
  const total = NEED_NAMES.reduce((sum, name) => sum + needs[name], 0);
  const by = (name: NeedName): number => (sign * needs[name] * (b[name] - a[name])) / total;
  return [...NEED_NAMES]
    .filter((name) => by(name) >= WORTH_TELLING)
    .sort((x, y) => by(y) - by(x) || NEED_NAMES.indexOf(x) - NEED_NAMES.indexOf(y));
}

function rulesOf({ advice }: Judgement): readonly string[] {
  return advice.filter(({ level, rule }) => level !== 'praise' && isOfStack(rule)).map(({ rule }) => rule);
}
