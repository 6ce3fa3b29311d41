/** Words before figures: what a client reads for each of the five readings. Never the class words of a standard. */
import { isBlackout } from '#shared/cloth.ts';
import type { Judgement, ReadingWords } from '#shared/result.ts';
import type { Reckoned } from '../reckon-stack.ts';
import { hangsBeforeHeat } from '../light-and-heat/closing.ts';
import { KIND_NAMES } from '../place-of-kind.ts';
import type { FilledCloth } from '../cloth/resolve-cloth.ts';

interface Step {
  /** The reading is at least this. */
  readonly from: number;
  readonly words: string;
}

/** By the light that passes the cloth alone. */
export const DARK = 0.0008;
export const NEARLY_DARK = 0.025;
export const DARK_WORDS = 'dark but for its edges';
export const LIGHT_WORDS: readonly Step[] = [
  { from: 0.4, words: 'lets the daylight in' },
  { from: 0.2, words: 'lights up' },
  { from: 0.07, words: 'glows' },
  { from: NEARLY_DARK, words: 'dim' },
  { from: DARK, words: 'nearly dark' },
  { from: 0, words: DARK_WORDS },
];

/** Cloth that passes this much shows silhouettes by lamplight, and this much the shadow of who stands close (common practice). */
export const SEEN_THROUGH = 0.2;
export const SHADOWS_SHOW = 0.07;

/** From here on one sees the change without looking for it. */
export const DEEP_SHIFT = 3.8;
/** By CIEDE2000, of a lining that is not white: about 1 is just seen, above 5 one sees it without looking for it. */
const SHIFT_STEPS: readonly (Step & { readonly cooler: string })[] = [
  { from: 11, words: 'clearly yellower', cooler: 'clearly cooler' },
  { from: 7, words: 'warmer', cooler: 'cooler' },
  { from: DEEP_SHIFT, words: 'a touch warmer', cooler: 'a touch cooler' },
  { from: 0, words: 'true', cooler: 'true' },
];

/** By the share of the heat lost through this glass that is kept in, the middle of its range: the figure beside the words. */
export const WARMTH_WORDS: readonly Step[] = [
  { from: 0.3, words: 'clearly more' },
  { from: 0.12, words: 'more' },
  { from: 0.03, words: 'a little' },
  { from: 0, words: 'hardly' },
];

export const FADES_LITTLE = 'nearly all kept off';
/** Each at the least what it says, or nearly where it is short of it by three hundredths or four, by the whole per cent that is printed beside it. */
export const FADE_WORDS: readonly Step[] = [
  { from: 0.945, words: FADES_LITTLE },
  { from: 0.895, words: 'nine tenths kept off' },
  { from: 0.865, words: 'nearly nine tenths kept off' },
  { from: 0.795, words: 'four fifths kept off' },
  { from: 0.745, words: 'three quarters kept off' },
  { from: 0.715, words: 'nearly three quarters kept off' },
  { from: 0.655, words: 'two thirds kept off' },
  { from: 0.615, words: 'nearly two thirds kept off' },
  { from: 0.535, words: 'over half kept off' },
  { from: 0.495, words: 'half kept off' },
  { from: 0.02, words: 'slowed' },
  { from: 0, words: 'not slowed' },
];

export const BODY_WORDS: readonly Step[] = [
  { from: 3.7, words: 'firm' },
  { from: 3, words: 'full' },
  { from: 2.4, words: 'medium' },
  { from: 0, words: 'soft' },
];

/** What is said instead of a reading where no daylight is behind it, or the room keeps its own. */
export const TOP_ONLY = 'covers the top only';
export const BOX = 'a box over the top';
export const DOES_NOT_DRAW = 'does not draw';
export const NOT_AT_WINDOW = 'not at the window';
export const AS_BY_NIGHT = 'as by night';
export const NEARLY_AS_BY_NIGHT = 'nearly as by night';
const NO_DAYLIGHT = 'no daylight comes from behind it';
export const HEAT_BEHIND = 'heat stays behind it';

export function wordFor(steps: readonly Step[], value: number): string {
  return steps.find((step) => value >= step.from)?.words ?? steps[steps.length - 1]?.words ?? '';
}

export function sayReadings(r: Reckoned): Judgement['words'] {
  return { light: sayLight(r), colour: sayColour(r), warmth: sayWarmth(r), fade: sayFade(r), body: sayBody(r) };
}

function sayLight(r: Reckoned): ReadingWords {
  const measured = r.assumed.some((value) => value.endsWith('.transmittance'));
  const rests = `layers and glass composed with every reflection between them${measured ? '; cloth values typical, assumed' : ''}`;
  if (r.place === 'away') return { words: NOT_AT_WINDOW, figure: '', rests: NO_DAYLIGHT };
  if (r.place === 'top' || r.place === 'board') {
    const what = KIND_NAMES[r.input.treatment.kind];
    return {
      words: r.place === 'board' ? BOX : TOP_ONLY,
      figure: `${r.say.percent(r.covered)} of the glass`,
      rests: `the room keeps its light: ${what} cover${what.endsWith('s') ? '' : 's'} the head of the window alone; ${rests}`,
    };
  }
  if (r.closing.class === 'stationary') {
    const figure = `covers about ${r.say.percent(r.covered)} of the glass`;
    return { words: DOES_NOT_DRAW, figure, rests: 'the panels do not draw across the window' };
  }
  return { ...sayDarkness(r), rests };
}

/**
 * The light that its words go by: no darkness is promised of cloth that is not made for it. Until it was measured an
 * interlined or a heavy stack is dim at the most, a dim-out or a soft blackout nearly dark (common practice).
 */
export function lightTakenFor(r: Pick<Reckoned, 'layers' | 'readings'>): number {
  const { light } = r.readings;
  if (r.layers.every((layer) => !layer.assumed.includes('transmittance'))) return light;
  if (!r.layers.some(isDarkening)) return Math.max(light, NEARLY_DARK);
  return r.layers.some(makesDark) ? light : Math.max(light, DARK);
}

/** The figure is the one that the words go by; where the words rest on practice alone there is none. */
function sayDarkness(r: Reckoned): Pick<ReadingWords, 'words' | 'figure'> {
  const { light, lightInRoom } = r.readings;
  const taken = lightTakenFor(r);
  const words = wordFor(LIGHT_WORDS, taken);
  if (taken < DARK) return { words, figure: `${r.say.about(lightInRoom)} comes in round them` };
  return { words, figure: taken === light ? r.say.about(light) : '' };
}

/** A soft blackout stops about 95 %, so alone it is nearly dark (common practice). */
function makesDark({ cloth }: FilledCloth): boolean {
  if (cloth.role !== 'lining' || cloth.family === 'blackout-soft') return false;
  return isBlackout(cloth) || cloth.family === 'black-sateen';
}

/** Cloth that is made to keep light out. */
export function isDarkening({ cloth }: FilledCloth): boolean {
  return (
    cloth.role === 'lining' && (isBlackout(cloth) || cloth.family === 'dim-out' || cloth.family === 'black-sateen')
  );
}

function sayColour(r: Reckoned): ReadingWords {
  const rests =
    'colour difference CIEDE2000 under D65, face by daylight through the stack against the face lit from the room; spectra estimated from the shades';
  if (r.place === 'away') return { words: 'true', figure: '', rests: NO_DAYLIGHT };
  if (r.place === 'board') return { words: AS_BY_NIGHT, figure: '', rests: 'no daylight passes the box' };
  if (lightTakenFor(r) < DARK) {
    return { words: AS_BY_NIGHT, figure: '', rests: 'no daylight comes through the cloth' };
  }
  if (r.readings.light < NEARLY_DARK) return { words: NEARLY_AS_BY_NIGHT, figure: '', rests };
  // White keeps the colour, and what the face does in daylight by itself is no matter of its lining (common practice).
  if (r.shiftIfWhite === null) {
    const interlined = r.behind.some((layer) => layer.cloth.role === 'interlining');
    return {
      words: interlined ? 'a touch warmer' : 'true',
      figure: '',
      rests: interlined ? OFF_WHITE_RESTS : WHITE_RESTS,
    };
  }
  const words = sayShift(r.readings.colourShift, r.shift.byDay.b >= r.shift.byRoomLight.b);
  return { words, figure: `colour difference ${r.say.fixed(r.readings.colourShift, 1)}`, rests };
}

const WHITE_RESTS = 'a white lining, or none, shows the true colour by day (common practice)';
const OFF_WHITE_RESTS = 'interlining is off-white, so the face looks a little warmer by day (common practice)';

/** `true`, `a touch warmer`, `clearly cooler`. */
export function sayShift(shift: number, warmer: boolean): string {
  const step = SHIFT_STEPS.find((each) => shift >= each.from);
  return (warmer ? step?.words : step?.cooler) ?? 'true';
}

/** `clearly tints`: how much of a lining's colour daylight lends the face. */
export function sayTint(shift: number): string {
  const [clear, plain, slight] = SHIFT_STEPS;
  if (shift >= (clear?.from ?? 0)) return 'clearly tints';
  if (shift >= (plain?.from ?? 0)) return 'tints';
  return shift >= (slight?.from ?? 0) ? 'faintly tints' : 'hardly tints';
}

function sayWarmth(r: Reckoned): ReadingWords {
  const [low, high] = r.warmth.saved;
  if (r.place === 'away') return { words: 'hardly', figure: '', rests: 'it does not hang before the glass' };
  if (r.place === 'board')
    return {
      words: 'hardly',
      figure: '',
      rests: 'it closes the top of what hangs below; by itself it covers the head alone',
    };
  if (hangsBeforeHeat(r.input.opening, r.input.treatment))
    return {
      words: HEAT_BEHIND,
      figure: '',
      rests: 'it hangs before the heat below the window, and shuts it in with the glass',
    };
  const closes = {
    stationary: 'the panels do not draw across the window',
    top: 'only the head of the window is covered',
    away: 'it does not hang before the glass',
    open: 'air passes over, under or beside it',
    close: 'it closes at the sides and at the top or the floor',
    sealed: 'it is closed all round',
  }[r.closing.class];
  return {
    words: wordFor(WARMTH_WORDS, (low + high) / 2),
    figure: `${(100 * low).toFixed(0)} to ${r.say.percent(high)}`,
    rests: `less heat lost through the glass when drawn; a range, since the edges decide: ${closes}`,
  };
}

function sayFade(r: Reckoned): ReadingWords {
  if (r.place === 'away' || r.place === 'board') return { words: 'no sun behind it', figure: '', rests: NO_DAYLIGHT };
  return {
    words: wordFor(FADE_WORDS, r.readings.fade),
    figure: r.behind.length === 0 ? '' : r.say.percent(r.readings.fade),
    rests: 'light that reaches the back of the face, weighted by its damage (CIE 89/3), against the same face unlined',
  };
}

function sayBody(r: Reckoned): ReadingWords {
  return {
    words: wordFor(BODY_WORDS, r.readings.body),
    figure: '',
    rests: `about ${r.say.areaWeight(r.gsm)} in all, and how firmly each layer holds it; a judgement, not a test`,
  };
}
