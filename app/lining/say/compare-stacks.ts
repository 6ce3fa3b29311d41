/** What an option does otherwise than the one beside it, in a client's words: what both do alike is not said again. */
import type { Judgement } from '#shared/result.ts';
import { NOTICED, sayDay, sayFading, sayLayers } from './describe-stack.ts';
import type { DescribedStack } from './describe-stack.ts';
import { lower, sayList } from './say-number.ts';
import {
  AS_BY_NIGHT,
  BOX,
  DARK_WORDS,
  DOES_NOT_DRAW,
  HEAT_BEHIND,
  NEARLY_AS_BY_NIGHT,
  NOT_AT_WINDOW,
  TOP_ONLY,
} from './say-readings.ts';

/** The readings stand below: beside them three differences are enough. */
const MOST_SAID = 3;

/** The layers, then the difference: `A soft flannel between the face and a white lining. Against standard lining: ...`. */
export function describeBeside(
  before: { readonly title: string; readonly judgement: Judgement },
  after: DescribedStack,
): string {
  const said = compareStacks(before.judgement, after.judgement, after.behind.length === 0).slice(0, MOST_SAID);
  const title = lower(before.title);
  const difference =
    said.length === 0 ? `All that is reckoned reads as with ${title}.` : `Against ${title}: ${sayList(said)}.`;
  return `${sayLayers(after)} ${difference}`;
}

/** `by day the light is dim`, `fuller folds`; where the words are the same, by how much. Empty when nothing is told apart. */
export function compareStacks(before: Judgement, after: Judgement, unlined = false): readonly string[] {
  return [
    ...sayLightApart(before, after),
    ...sayColourApart(before, after),
    ...sayFadeApart(before, after, unlined),
    ...sayWarmthApart(before, after),
    ...sayBodyApart(before, after),
  ];
}

function sayLightApart(before: Judgement, after: Judgement): readonly string[] {
  const [a, b] = [before.words.light, after.words.light];
  if (b.words === NOT_AT_WINDOW || b.words === TOP_ONLY || b.words === BOX) return [];
  if (a.words !== b.words) return [sayDay(after)];
  const [from, to] = [before.readings.light, after.readings.light];
  // Panels that do not draw leave the window as light as it was.
  if (b.words === DOES_NOT_DRAW || b.words === DARK_WORDS) return [];
  if (a.figure === '' || b.figure === '' || a.figure === b.figure) return [];
  if (to * NOTICED.light < from) return [`darker still, ${b.figure} of the daylight after ${strip(a.figure)}`];
  return from * NOTICED.light < to ? [`lighter, ${b.figure} of the daylight after ${strip(a.figure)}`] : [];
}

function strip(figure: string): string {
  return figure.replace(/^about /u, '');
}

function sayColourApart(before: Judgement, after: Judgement): readonly string[] {
  const { words } = after.words.colour;
  if (words === before.words.colour.words || after.words.light.words === NOT_AT_WINDOW) return [];
  if (words === AS_BY_NIGHT) return ['the face looks as it does by night'];
  if (words === NEARLY_AS_BY_NIGHT) return ['the face looks almost as it does by night'];
  return [words === 'true' ? "the cloth's colours stay true by day" : `the cloth's colours look ${words} by day`];
}

function sayWarmthApart(before: Judgement, after: Judgement): readonly string[] {
  const gain = after.readings.warmth - before.readings.warmth;
  if (Math.abs(gain) < NOTICED.warmth) return [];
  const [a, b] = [before.words.warmth, after.words.warmth];
  if (b.words === HEAT_BEHIND) return [];
  if (gain < 0) return ['less warmth in winter'];
  return [a.words === b.words ? 'a little more warmth in winter' : `${b.words} warmth in winter`];
}

function sayBodyApart(before: Judgement, after: Judgement): readonly string[] {
  const gain = after.readings.body - before.readings.body;
  if (Math.abs(gain) < NOTICED.body) return [];
  const [a, b] = [before.words.body.words, after.words.body.words];
  if (a !== b) return [`${b} in the hand`];
  if (gain < 0) return ['softer in the hand'];
  return [b === 'firm' ? 'firmer in the hand' : 'fuller in the hand'];
}

function sayFadeApart(before: Judgement, after: Judgement, unlined: boolean): readonly string[] {
  const [a, b] = [before.readings.fade, after.readings.fade];
  if (after.words.light.words === NOT_AT_WINDOW || Math.abs(b - a) < NOTICED.fade) return [];
  if (before.words.fade.words === after.words.fade.words)
    return [b > a ? 'a little safer from fading' : 'a little less kept from fading'];
  return [sayFading(b, after.words.fade.words, unlined)];
}
