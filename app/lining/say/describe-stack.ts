/** One or two plain sentences for a client about a stack, and what it does more than the one before; from its readings. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { exhaustive } from '#shared/fault.ts';
import type { Judgement } from '#shared/result.ts';
import {
  AS_BY_NIGHT,
  BOX,
  DOES_NOT_DRAW,
  FADES_LITTLE,
  NEARLY_AS_BY_NIGHT,
  NOT_AT_WINDOW,
  TOP_ONLY,
} from './say-readings.ts';
import { sayList } from './say-number.ts';

export interface DescribedStack {
  readonly face: FaceCloth;
  readonly behind: readonly BackCloth[];
  readonly judgement: Judgement;
}

/** What hangs behind, then what it does by day, to the colours and against fading. */
export function describeStack(stack: DescribedStack): string {
  return `${sayLayers(stack)} ${sayEffect(stack.judgement, stack.behind.length === 0)}`;
}

/** `A white lining behind the face.` */
export function sayLayers({ face, behind, judgement }: DescribedStack): string {
  if (behind.length === 0) return face.family === 'sheer' ? 'The sheer hangs alone.' : 'Nothing hangs behind the face.';
  const inter = behind.filter((cloth) => cloth.role === 'interlining').map((cloth) => sayLayer(cloth));
  const linings = behind.filter((cloth) => cloth.role === 'lining').map((cloth) => sayLayer(cloth));
  if (judgement.words.light.words === BOX)
    return `${capital(sayList([...inter.map((each) => `${each} under the face`), ...linings.map((each) => `${each} inside the box`)]))}.`;
  if (inter.length === 0) return `${capital(sayList(linings))} behind the face.`;
  if (linings.length === 0) return `${capital(sayList(inter))} behind the face.`;
  return `${capital(sayList(inter))} between the face and ${sayList(linings)}.`;
}

function sayLayer(cloth: BackCloth): string {
  if (cloth.role === 'interlining') {
    return { light: 'a light flannel', medium: 'a soft flannel', heavy: 'a thick flannel' }[cloth.family];
  }
  const shade = sayShade(cloth.shade);
  const { family } = cloth;
  switch (family) {
    case 'standard':
      return `${article(shade)} ${shade} lining`;
    case 'combination':
      return `${article(shade)} ${shade} lining with a napped back`;
    case 'dim-out':
      return `${article(shade)} ${shade} dim-out lining`;
    case 'blackout-3-pass':
      return 'a coated blackout lining';
    case 'blackout-soft':
      return 'a soft blackout lining';
    case 'blackout-napped':
      return 'a blackout lining with a napped back';
    case 'black-sateen':
      return 'black cloth';
    case 'thermal':
      return `${article(shade)} ${shade} thermal lining`;
    case 'sheer':
      return `${article(shade)} ${shade} sheer lining`;
    case 'contrast':
      return 'a contrast lining';
    default:
      return exhaustive(family);
  }
}

function sayShade(shade: string | null): string {
  if (shade === null || shade === 'white') return 'white';
  return shade === 'ivory' ? 'ivory' : 'coloured';
}

function article(word: string): string {
  return /^[aeiou]/.test(word) ? 'an' : 'a';
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function sayEffect(judgement: Judgement, unlined: boolean): string {
  const { readings, words } = judgement;
  if (words.light.words === NOT_AT_WINDOW) return `It is ${words.body.words} in the hand.`;
  if (words.light.words === BOX)
    return `It is ${words.body.words} over its board, which no daylight passes, and it closes the top of what hangs below.`;
  if (words.light.words === TOP_ONLY) return sayTop(judgement, unlined);
  const parts = [sayDay(judgement)];
  if (words.colour.words === AS_BY_NIGHT) parts.push('the face looks as it does by night');
  else if (words.colour.words === NEARLY_AS_BY_NIGHT) parts.push('the face looks almost as it does by night');
  else if (!unlined) {
    parts.push(
      words.colour.words === 'true'
        ? "the cloth's colours stay true"
        : `the cloth's colours look ${words.colour.words}`,
    );
  }
  parts.push(sayFading(readings.fade, words.fade.words, unlined));
  return `${capital(sayList(parts))}.`;
}

/** Over the head of a window: the room keeps its light, and what shows is the face by day and how it stands. */
function sayTop({ readings, words }: Judgement, unlined: boolean): string {
  const colour = words.colour.words === 'true' ? 'stay true' : `look ${words.colour.words}`;
  const day = TOP_BY_DAY[words.colour.words] ?? `by day the cloth's colours ${colour}`;
  const fading = sayFading(readings.fade, words.fade.words, unlined);
  return `${capital(sayList([`${words.body.words} in the hand`, day, fading]))}.`;
}

const TOP_BY_DAY: Readonly<Record<string, string>> = {
  [AS_BY_NIGHT]: 'no daylight shows through it',
  [NEARLY_AS_BY_NIGHT]: 'hardly any daylight shows through it',
};

/** `by day the window glows`. */
export function sayDay({ words }: Judgement): string {
  if (words.light.words === DOES_NOT_DRAW)
    return `the panels do not draw and ${words.light.figure.replace('covers', 'cover')}`;
  return DAY_WORDS[words.light.words] ?? 'it lets the daylight in';
}

const DAY_WORDS: Readonly<Record<string, string>> = {
  'dark but for its edges': 'dark by day but for its edges',
  'nearly dark': 'nearly dark by day',
  dim: 'by day the light is dim',
  glows: 'by day the window glows',
  'lights up': 'by day the window lights up',
};

export function sayFading(fade: number, words: string, unlined: boolean): string {
  if (unlined) return 'the sun reaches the face';
  if (words === FADES_LITTLE) return 'it fades very little';
  return fade >= 0.495 ? `${words.replace(' kept off', '')} of the fading is kept off` : 'fading is slowed a little';
}

/** What is told apart, in the order told; the least difference that a client would notice. */
export const NOTICED = { light: 1.5, warmth: 0.004, fade: 0.05, body: 0.4 } as const;
