/** Why a stack, in the words of its readings; the needs of the room decide which readings are told first. */
import { exhaustive } from '#shared/fault.ts';
import type { Judgement } from '#shared/result.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import type { RoomUse } from '#shared/words.ts';
import type { MakeKind } from '../body.ts';
import { KIND_NAMES, placeOf } from '../place-of-kind.ts';
import type { Place } from '../place-of-kind.ts';
import { sayAbout, sayList } from './say-number.ts';
import {
  AS_BY_NIGHT,
  DOES_NOT_DRAW,
  HEAT_BEHIND,
  NEARLY_AS_BY_NIGHT,
  NEARLY_DARK,
  SEEN_THROUGH,
  SHADOWS_SHOW,
} from './say-readings.ts';
import { meetNeeds, NEED_NAMES } from '../choose/weigh-needs.ts';
import type { NeedName, Needs } from '../choose/weigh-needs.ts';

/** Each use of a room in words. */
export const ROOM_NAMES: Readonly<Record<RoomUse, string>> = {
  living: 'living room',
  dining: 'dining room',
  bedroom: 'bedroom',
  nursery: 'nursery',
  child: "child's room",
  bath: 'bathroom',
  kitchen: 'kitchen',
  study: 'study',
  media: 'media room',
  hall: 'hall',
  sunroom: 'sunroom',
  public: 'public room',
};

export function nameRoom(use: RoomUse): string {
  return ROOM_NAMES[use];
}

/** What a stack answers: `this nursery`, or `this valance` where the room is no matter. */
export function sayWhat(use: RoomUse, kind: TreatmentKind): string {
  return placeOf(kind) === 'window'
    ? `this ${ROOM_NAMES[use]}`
    : `${isPlural(kind) ? 'these' : 'this'} ${KIND_NAMES[kind]}`;
}

function isPlural(kind: TreatmentKind): boolean {
  return KIND_NAMES[kind].endsWith('s');
}

/** Met less than this, a need is no merit. */
const LEAST_MERIT = 0.25;
/** And less than this share of the first, no second reason. */
const LEAST_BESIDE = 0.4;
/** A daylight that is asked for so much is missed. */
const MISSED = 2;

/** Rules that speak of a lining where light does not matter. */
const HANGS_BETTER: readonly string[] = ['light-lining-suits-make', 'more-than-it-needs'];

/** What another option does so much more is no reason for this one. */
const OUTDONE = 0.06;

/**
 * The two things this stack does most of what is asked, and the daylight that it costs where daylight is asked. Beside
 * `others` on the table, things that one of them does clearly more are left out, as long as anything is left to say.
 */
export function sayStrengths(
  judgement: Judgement,
  needs: Needs,
  make: MakeKind,
  place: Place = 'window',
  others: readonly Judgement[] = [],
): string {
  const met = meetNeeds(judgement, make, place);
  const { words } = judgement;
  if (place === 'board') return `${words.body.words} over its board`;
  if (place === 'away')
    return HANGS_BETTER.some((rule) => judgement.advice.some((each) => each.rule === rule))
      ? 'it hangs better and hides its hems'
      : `${words.body.words} in the hand`;
  const still = words.light.words === DOES_NOT_DRAW;
  const dark = judgement.readings.light < NEARLY_DARK && !still;
  const asked = [...NEED_NAMES]
    // Where no daylight comes through, that its colour is kept is no merit.
    .filter((name) => needs[name] > 0 && !(name === 'colour' && dark) && !(name === 'daylight' && dark))
    .filter((name) => !(still && (name === 'daylight' || name === 'dark')))
    .sort((a, b) => needs[b] * met[b] - needs[a] * met[a] || NEED_NAMES.indexOf(a) - NEED_NAMES.indexOf(b));
  // A colour that shifts is no merit, however little.
  const merits = asked.filter((name) => (name === 'colour' ? words.colour.words === 'true' : met[name] >= LEAST_MERIT));
  // Beside what a room asks most, what it hardly asks is no reason.
  const weight = (name: NeedName): number => needs[name] * met[name];
  const most = Math.max(0, ...merits.map(weight));
  const theirs = others.map((other) => meetNeeds(other, make, place));
  const outdone = (name: NeedName): boolean => theirs.some((other) => other[name] > met[name] + OUTDONE);
  const enough = merits.filter((name) => weight(name) >= LEAST_BESIDE * most || name === 'privacy');
  const own = merits.filter((name) => !outdone(name));
  const beside = enough.filter((name) => own.includes(name));
  const reasons = [beside, own, enough].find((names) => names.length > 0) ?? [];
  const told = (reasons.length > 0 ? reasons : asked.slice(0, 1)).map((name) => sayNeed(name, judgement, make));
  const unlike = told.filter((text, i) => told.indexOf(text) === i);
  // A wish of the room's own is answered by name.
  const wish = merits.includes('privacy') ? unlike.indexOf(sayNeed('privacy', judgement, make)) : -1;
  const strengths = sayList(wish < 2 ? unlike.slice(0, 2) : [unlike[0] ?? '', unlike[wish] ?? '']);
  const lighter = others.length === 0 || others.some((other) => other.words.light.words !== words.light.words);
  return dark && lighter && needs.daylight >= MISSED ? `${strengths}, but ${words.light.words} by day` : strengths;
}

/** `: glows by day, against dim`: the need that the first meets most above the second, by name when no word tells them apart. */
export function sayBetter(
  better: Judgement,
  worse: Judgement,
  needs: Needs,
  make: MakeKind,
  place: Place = 'window',
): string {
  const a = meetNeeds(better, make, place);
  const b = meetNeeds(worse, make, place);
  const gain = (name: NeedName): number => needs[name] * (a[name] - b[name]);
  const told = [...NEED_NAMES]
    .filter((name) => gain(name) > 0)
    .sort((x, y) => gain(y) - gain(x) || NEED_NAMES.indexOf(x) - NEED_NAMES.indexOf(y));
  const apart = told.find((name) => sayNeed(name, better, make) !== sayNeed(name, worse, make));
  if (apart !== undefined) return `: ${sayNeed(apart, better, make)}, against ${sayNeed(apart, worse, make)}`;
  return told[0] === undefined ? '' : `: ${MORE_OF[told[0]]}`;
}

/** By a little, where no word tells two stacks apart. */
export const MORE_OF: Readonly<Record<NeedName, string>> = {
  dark: 'a little darker',
  daylight: 'a little lighter',
  colour: 'a little truer in colour',
  warmth: 'a little warmer',
  fade: 'a little safer from fading',
  body: 'a hand that suits it a little better',
  privacy: 'a little more privacy by night',
};

/** Above a hundredth no share is written with a decimal, so it needs no locale. */
function sayKept(share: number): string {
  return share < 0.0095 ? 'hardly any' : sayAbout(share, '.');
}

/** Light in words that can stand in a list of things. */
const BY_DAY: Readonly<Record<string, string>> = {
  'lets the daylight in': 'the daylight let in',
  'lights up': 'a window that lights up by day',
  glows: 'a window that glows by day',
};

const COLOUR_WORDS: Readonly<Record<string, string>> = {
  [AS_BY_NIGHT]: 'the same by day and by night',
  [NEARLY_AS_BY_NIGHT]: 'almost the same by day and by night',
};

/** What the street sees by night with the lamps on, by the light that passes the cloth. */
export function sayHidden(light: number): string {
  if (light >= SEEN_THROUGH) return 'silhouettes seen by lamplight';
  return light >= SHADOWS_SHOW ? 'shadows alone seen by lamplight' : 'nothing seen from outside by night';
}

export function sayNeed(name: NeedName, { readings, words }: Judgement, make: MakeKind): string {
  switch (name) {
    case 'dark':
    case 'daylight':
      return BY_DAY[words.light.words] ?? `${words.light.words} by day`;
    case 'colour':
      return COLOUR_WORDS[words.colour.words] ?? `colours ${words.colour.words} by day`;
    case 'warmth':
      if (words.warmth.words === HEAT_BEHIND) return 'the heat shut in behind it';
      return words.warmth.words === 'hardly' ? 'hardly any warmth' : `${words.warmth.words} warmth`;
    case 'fade':
      return readings.fade > 0 ? `${sayKept(readings.fade)} of the fading kept off` : 'fading not slowed';
    case 'body':
      return make === 'flat' ? `${words.body.words} in the hand` : `${words.body.words} folds`;
    case 'privacy':
      return sayHidden(readings.light);
    default:
      return exhaustive(name);
  }
}
