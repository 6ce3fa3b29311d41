/**
 * What a room asks of its stack, as weights over the readings, and how far a stack answers. Set by common practice (a
 * nursery must be dark, a west window fades, a cold climate wants warmth); the choice rests on rounded readings alone.
 */
import type { Advice, Judgement } from '#shared/result.ts';
import { BLACKOUT_FAMILIES } from '#shared/cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Facing, Glazing, LiningFamily, RoomUse } from '#shared/words.ts';
import { bodyOff } from '../body.ts';
import type { MakeKind } from '../body.ts';
import type { JudgedOpening, JudgedRoom } from '../judge-input.ts';
import type { Place } from '../place-of-kind.ts';
import { RULES } from '../rules/index.ts';
import { asks } from './privacy-asked.ts';
import { DARK_WORDS, HEAT_BEHIND, NEARLY_DARK } from '../say/say-readings.ts';

export const NEED_NAMES = ['dark', 'daylight', 'colour', 'warmth', 'fade', 'body', 'privacy'] as const;
export type NeedName = (typeof NEED_NAMES)[number];
export type Needs = Readonly<Record<NeedName, number>>;

/** Privacy is no matter of the use: a room asks for it by itself. */
const BY_USE: Readonly<Record<RoomUse, Omit<Needs, 'privacy'>>> = {
  living: { dark: 0, daylight: 2, colour: 2, warmth: 1, fade: 2, body: 3 },
  dining: { dark: 0, daylight: 1, colour: 2, warmth: 1, fade: 2, body: 3 },
  bedroom: { dark: 4, daylight: 0, colour: 1, warmth: 1, fade: 1, body: 2 },
  nursery: { dark: 8, daylight: 0, colour: 0, warmth: 1, fade: 1, body: 1 },
  child: { dark: 6, daylight: 0, colour: 0, warmth: 1, fade: 1, body: 1 },
  bath: { dark: 0, daylight: 4, colour: 1, warmth: 0, fade: 1, body: 1 },
  kitchen: { dark: 0, daylight: 4, colour: 2, warmth: 0, fade: 2, body: 1 },
  study: { dark: 0, daylight: 1, colour: 1, warmth: 1, fade: 2, body: 2 },
  media: { dark: 8, daylight: 0, colour: 0, warmth: 0, fade: 1, body: 1 },
  hall: { dark: 0, daylight: 1, colour: 1, warmth: 2, fade: 1, body: 3 },
  sunroom: { dark: 0, daylight: 2, colour: 2, warmth: 0, fade: 5, body: 1 },
  public: { dark: 0, daylight: 1, colour: 2, warmth: 0, fade: 3, body: 2 },
};
/** What a wish for privacy weighs: by night as much as darkness does in a bedroom. */
const NIGHT_WEIGHT = 5;
const DAY_WEIGHT = 2;
const SHEER_WEIGHT = 4;
const SUNNY: readonly Facing[] = ['E', 'SE', 'S', 'SW', 'W'];

/** What covers only the top of a window changes no light or warmth of the room: it has to look right. */
const TOP_NEEDS: Needs = { dark: 0, daylight: 0, colour: 2, warmth: 0, fade: 1, body: 4, privacy: 0 };
/** And what has no daylight behind it has only to hang well. */
const AWAY_NEEDS: Needs = { dark: 0, daylight: 0, colour: 0, warmth: 0, fade: 0, body: 3, privacy: 0 };

/** The better the glass, the less is left for the cloth to keep in. */
const COLD_GLASS: Readonly<Record<Glazing, number>> = { single: 1, double: 0, 'double-low-e': -1, triple: -2 };

export function weighNeeds(room: JudgedRoom, opening: JudgedOpening, face: FaceCloth, place: Place = 'window'): Needs {
  if (place === 'away' || place === 'board') return AWAY_NEEDS;
  if (place === 'top') {
    const sunny = room.facing !== null && SUNNY.includes(room.facing) ? 2 : 0;
    return { ...TOP_NEEDS, fade: TOP_NEEDS.fade + sunny + (face.family === 'silk' ? 1 : 0) };
  }
  const base = BY_USE[room.use];
  const privacy = room.privacy ?? null;
  const sun = room.facing !== null && SUNNY.includes(room.facing) ? 2 : 0;
  const cold = (room.climate === 'cold' ? 2 : 0) + COLD_GLASS[opening.glazing];
  const silk = face.family === 'silk' ? 1 : 0;
  // A sheer is there for its light, whatever the room.
  const sheer = face.family === 'sheer';
  // Closed by day and still light: what hides a room all day may not darken it.
  const asked = (sheer ? SHEER_WEIGHT : 0) + (asks(privacy, 'day') ? DAY_WEIGHT : 0);
  return {
    ...base,
    daylight: base.daylight + (base.dark === 0 ? asked : 0),
    privacy: asks(privacy, 'night') ? NIGHT_WEIGHT : 0,
    warmth: Math.max(0, base.warmth + cold),
    fade: base.fade + sun + silk,
    body: sheer ? 0 : base.body + silk,
  };
}

/** A caution about the stack itself costs this much of the whole; a stop is no option at all. */
const CAUTION_COST = 0.13;
/** What is said of the window, the room or the law alike for every stack weighs nothing. */
const WEIGHED_CAUSES: readonly string[] = [
  'points-of-light',
  'not-dark',
  'stiffness',
  'fading',
  'damp',
  'shrinkage',
  'seen-by-night',
];
/** Of notes only those that say what they cost. */
const COSTS = new Map(
  RULES.filter((rule) => WEIGHED_CAUSES.includes(rule.cause) || rule.costs !== undefined).map((rule) => [
    rule.id,
    rule.costs ?? (rule.level === 'caution' ? CAUTION_COST : 0),
  ]),
);
/** A dark lining where the room does not ask to be dark takes the daylight from it. */
const UNASKED_DARK_COST = 0.2;
const UNASKED_BLACK_COST = 0.4;
export const DARK_FAMILIES: readonly LiningFamily[] = [...BLACKOUT_FAMILIES, 'dim-out', 'black-sateen'];
/** Black cloth is for rooms that have to be dark, not for those that like it. */
export const MUST_BE_DARK = 7;
/** Light through the cloth at which nothing is darkened. */
const UNDARKENED = 0.4;
/** And below this nobody wants it darker. */
const DARK_ENOUGH = 0.002;
/** Cloth that is not said to be dark counts as this light at the least. */
const NOT_DARK = 0.004;
const SHIFT_OF_NOTE = 12;
/** Light through the cloth at which the street sees in by night as if nothing hung there. */
const SEEN_CLEARLY = 0.3;
const WARMTH_FROM = 0.03;
const WARMTH_SPAN = 0.22;
const BODY_SPAN = 2.5;

/** How far each need is met, 0..1. */
export function meetNeeds(judgement: Judgement, make: MakeKind, place: Place = 'window'): Needs {
  const { readings } = judgement;
  const isDark = judgement.words.light.words === DARK_WORDS;
  const light = Math.max(readings.light, isDark ? DARK_ENOUGH : NOT_DARK);
  const dark = share(Math.log(UNDARKENED / light) / Math.log(UNDARKENED / DARK_ENOUGH));
  return {
    dark,
    // What the eye misses first is the brightness itself: daylight is counted plainly, darkness by its steps.
    daylight: share(readings.light / UNDARKENED),
    colour: readings.light < NEARLY_DARK ? 1 : share(1 - readings.colourShift / SHIFT_OF_NOTE),
    warmth: judgement.words.warmth.words === HEAT_BEHIND ? 0 : share((readings.warmth - WARMTH_FROM) / WARMTH_SPAN),
    fade: share(readings.fade),
    body: share(1 - bodyOff(readings.body, make, place) / BODY_SPAN),
    privacy: share(Math.log(SEEN_CLEARLY / light) / Math.log(SEEN_CLEARLY / NEARLY_DARK)),
  };
}

/** One figure for ranking, rounded so that two engines rank alike. */
export function scoreStack(
  judgement: Judgement,
  needs: Needs,
  make: MakeKind,
  behind: readonly BackCloth[],
  place: Place = 'window',
): number {
  const met = meetNeeds(judgement, make, place);
  const total = NEED_NAMES.reduce((sum, name) => sum + needs[name], 0);
  const answered = NEED_NAMES.reduce((sum, name) => sum + needs[name] * met[name], 0);
  const against = judgement.advice.reduce((sum, advice) => sum + costOf(advice), 0);
  // A wish for privacy that all meet alike changes no order: what speaks against a stack is weighed against the rest.
  const costs = (against + unaskedDarkness(needs, behind, make, place)) * (total - needs.privacy);
  return Number(((answered - costs) / total).toFixed(6));
}

/** What a rule takes from the score of a stack. */
export function costsOf(rule: string): number {
  return COSTS.get(rule) ?? 0;
}

function costOf({ rule, level }: Advice): number {
  return level === 'caution' || level === 'note' ? costsOf(rule) : 0;
}

/** What a dark lining takes where nobody asked for darkness; on a flat board it hides the line of the glass and takes nothing. */
export function unaskedDarkness(needs: Needs, behind: readonly BackCloth[], make: MakeKind, place: Place): number {
  const families = liningsOf(behind);
  const dark = families.some((family) => DARK_FAMILIES.includes(family));
  if (place === 'top') return dark && make !== 'flat' ? UNASKED_DARK_COST / 2 : 0;
  if (place === 'away' || place === 'board') return 0;
  if (families.includes('black-sateen') && needs.dark < MUST_BE_DARK) return UNASKED_BLACK_COST;
  if (needs.dark > 0 || !dark) return 0;
  // What has to hide the room by night may dim it.
  return needs.privacy > 0 && onlyDims(behind) ? UNASKED_DARK_COST / 2 : UNASKED_DARK_COST;
}

/** None of its linings is darker than a dim-out. */
export function onlyDims(behind: readonly BackCloth[]): boolean {
  return liningsOf(behind).every((family) => !DARK_FAMILIES.includes(family) || family === 'dim-out');
}

function liningsOf(behind: readonly BackCloth[]): readonly LiningFamily[] {
  return behind.flatMap((cloth) => (cloth.role === 'lining' ? [cloth.family] : []));
}

function share(value: number): number {
  return Math.min(1, Math.max(0, value));
}
