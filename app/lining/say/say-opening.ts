/** All that hangs at an opening together, in words with figures and ranges: light, warmth, summer sun, cold glass, fading. */
import type { Glazing } from '#shared/words.ts';
import { glassOf } from '../light-and-heat/glass.ts';
import type { OpeningJudgement } from '../judge-opening.ts';
import type { LiningSay } from './lining-say.ts';
import { FADE_WORDS, LIGHT_WORDS, WARMTH_WORDS, wordFor } from './say-readings.ts';
import { SUMMER_ERROR } from '../light-and-heat/summer.ts';

export interface SaidTogether {
  readonly id: 'light' | 'warmth' | 'summer' | 'glass' | 'fade';
  readonly label: string;
  readonly words: string;
  readonly figure: string;
  readonly range: string;
}

/** Light in the room from which on a window is as good as bare. */
const AS_BARE = 0.6;
/** An added resistance below this is nothing, m²K/W. */
const LEAST_WARMTH = 0.005;
/** By the share of the bare window's sun that is left. */
const SUMMER_WORDS = [
  { from: 0.95, words: 'as the bare window' },
  { from: 0.8, words: 'a little sun kept out' },
  { from: 0.6, words: 'a third kept out' },
  { from: 0, words: 'much of the sun kept out' },
] as const;

export function sayOpening(judged: OpeningJudgement, glazing: Glazing, say: LiningSay): readonly SaidTogether[] {
  const { lightInRoom, lightRange, warmthRange, windowU, summerLeft, condensation: c } = judged;
  const { g, U } = glassOf(glazing);
  const saved = [1 - windowU[1] / U, 1 - windowU[0] / U] as const;
  const kept = (saved[0] + saved[1]) / 2;
  const between = (low: string, high: string): string => (low === high ? '' : `${low} to ${high}`);
  const warms = warmthRange[1] >= LEAST_WARMTH;
  const held = (value: number): number => Math.min(1, Math.max(0, value));
  return [
    {
      id: 'light',
      label: 'light',
      words: lightInRoom >= AS_BARE ? 'as the bare glass' : wordFor(LIGHT_WORDS, lightInRoom),
      figure: say.about(lightInRoom),
      range: between(say.percent(lightRange[0]), say.percent(lightRange[1])),
    },
    {
      id: 'warmth',
      label: 'warmth',
      words: warms ? wordFor(WARMTH_WORDS, kept) : 'nothing added',
      figure: warms ? `${say.about(kept)} of the glass's loss` : '',
      range: warms ? between(say.percent(saved[0]), say.percent(saved[1])) : '',
    },
    {
      id: 'summer',
      label: 'summer sun',
      words: wordFor(SUMMER_WORDS, summerLeft),
      figure: `${say.about(summerLeft)} of the bare window's`,
      range:
        summerLeft === 1
          ? ''
          : between(
              say.percent(held(summerLeft - SUMMER_ERROR.high / g)),
              say.percent(held(summerLeft + SUMMER_ERROR.low / g)),
            ),
    },
    {
      id: 'glass',
      label: 'cold night',
      words: sayGlass(c),
      figure: `glass about ${say.fixed(c.glass, 1)} °C, wet below ${say.fixed(c.dewPoint, 1)} °C`,
      range: between(say.fixed(c.glassRange[0], 1), `${say.fixed(c.glassRange[1], 1)} °C`),
    },
    ...judged.fade.map(({ name, kept: off }) => ({
      id: 'fade' as const,
      label: `fading, ${name}`,
      words: wordFor(FADE_WORDS, off),
      figure: say.percent(off),
      range: '',
    })),
  ];
}

function sayGlass({ wet, wetBare }: OpeningJudgement['condensation']): string {
  if (wetBare) return 'wet even bare: air the room';
  return wet ? 'wet behind the cloth: air the room' : 'the glass stays dry';
}
