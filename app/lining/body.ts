/**
 * Body: how a stack hangs, 1 (limp) to 5 (firm), from the weight of its layers and how firmly each family holds it.
 * A judgement in figures, set so that common practice comes out: a lined print is soft, interlined it is full, and a
 * coated blackout makes it firm. Not a measured drape coefficient.
 */
import type { Heading } from '#shared/words.ts';
import type { Place } from './place-of-kind.ts';
import type { FilledCloth } from './cloth/resolve-cloth.ts';

const BASE = 0.8;
/** For each 100 g/m2 at stiffness 1. */
const PER_100_GRAMS = 0.78;

/** 1..5, unrounded. */
export function reckonBody(layers: readonly FilledCloth[]): number {
  const held = layers.reduce((sum, layer) => sum + (layer.weight / 100) * layer.stiffness, 0);
  return Math.min(5, Math.max(1, BASE + PER_100_GRAMS * held));
}

/** The stiffness of a stack apart from its weight, 0..1: the stiffest layer decides whether it gathers. */
export function stiffest(layers: readonly FilledCloth[]): number {
  return layers.reduce((most, layer) => Math.max(most, layer.stiffness), 0);
}

/** `swagged`: hangs on the bias between two points. `folded`: the soft folds or the dip of a shade. */
export type MakeKind = 'gathered' | 'pleated' | 'waved' | 'flat' | 'swagged' | 'folded';

/** What a heading asks of its cloth (common practice). */
export const MAKE_OF_HEADING: Readonly<Record<Heading, MakeKind>> = {
  'pinch-pleat': 'pleated',
  goblet: 'pleated',
  'box-pleat': 'pleated',
  'pencil-pleat': 'gathered',
  'rod-pocket': 'gathered',
  tab: 'flat',
  grommet: 'flat',
  wave: 'waved',
  flat: 'flat',
};

/** Body at which each make looks its best. */
export const IDEAL_BODY: Readonly<Record<MakeKind, number>> = {
  gathered: 2.2,
  pleated: 3.2,
  waved: 2.4,
  flat: 3,
  swagged: 2.1,
  folded: 2.3,
};
/** On a board or box the cloth may be firmer; where light does not matter a light hand is enough. */
const IDEAL_ON_BOARD = 3.6;
const IDEAL_AWAY = 2.3;

/** Pleats stand as well from firmer cloth, up to this much, and flat things hang as well. */
const FIRMER: Readonly<Partial<Record<MakeKind, number>>> = { pleated: 0.8, flat: 0.4 };

/** How far a body is from what the make asks, either way. */
export function bodyOff(body: number, make: MakeKind, place: Place): number {
  const ideal = idealBody(make, place);
  return body < ideal ? ideal - body : Math.max(0, body - ideal - (FIRMER[make] ?? 0));
}

function idealBody(make: MakeKind, place: Place): number {
  if (place === 'away') return IDEAL_AWAY;
  return (place === 'top' || place === 'board') && make === 'flat' ? IDEAL_ON_BOARD : IDEAL_BODY[make];
}

/** A layer stiffer than this gathers and pleats badly. */
export const STIFF = 0.8;

/** What a treatment asks of its cloth: told, or by its heading. */
export function makeOf(treatment: { readonly heading: Heading; readonly make?: MakeKind }): MakeKind {
  return treatment.make ?? MAKE_OF_HEADING[treatment.heading];
}
