/** Every reading of a stack at its window with value, unit, range, what it rests on and the step of its working. */
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';
import type { JudgeInput } from '../judge-input.ts';
import { isUnlit, reckonStack } from '../reckon-stack.ts';
import type { Reckoned } from '../reckon-stack.ts';
import { AS_BY_NIGHT, HEAT_BEHIND, NEARLY_AS_BY_NIGHT, sayReadings } from './say-readings.ts';
import { showWorking } from './show-working.ts';
import { SUMMER_ERROR } from '../light-and-heat/summer.ts';
import type { Range } from '../light-and-heat/warmth.ts';

export interface ToldReading {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  /** Empty for shares of one and for scales. */
  readonly unit: string;
  /** Equal ends where every value was measured and the method is exact. */
  readonly range: Range;
  readonly rests: string;
  /** Id of the step that works it out. */
  readonly step: string;
}

/** Throws what `judgeStack` throws. */
export function listReadings(input: JudgeInput): readonly ToldReading[] {
  const r = reckonStack(input);
  const words = sayReadings(r);
  const at = (value: number, range: Range | undefined): { readonly value: number; readonly range: Range } => ({
    value,
    range: range ?? [value, value],
  });
  const { readings: v, ranges } = r;
  const body: ToldReading = {
    id: 'body',
    label: 'body, 1 to 5',
    unit: '',
    ...at(v.body, ranges.body),
    rests: words.body.rests,
    step: 'body',
  };
  const weight: ToldReading = {
    id: 'weight',
    label: 'weight as it hangs',
    ...weighed(r),
    rests: 'the layers as the take-off weighs them',
    step: 'hang-weight',
  };
  if (isUnlit(r.place)) return [body, weight];
  const { condensation: c, warmth } = r;
  const all: readonly ToldReading[] = [
    {
      id: 'light',
      label: 'light through the cloth',
      unit: '',
      ...at(v.light, ranges.light),
      rests: words.light.rests,
      step: 'light',
    },
    {
      id: 'lightWithGlass',
      label: 'light with the glass',
      unit: '',
      ...at(v.lightWithGlass, ranges.lightWithGlass),
      rests: r.glass.rests.visible,
      step: 'light-with-glass',
    },
    {
      id: 'lightInRoom',
      label: 'light in the room',
      unit: '',
      ...at(v.lightInRoom, ranges.lightInRoom),
      rests: 'edges and needle holes added; gaps assumed',
      step: 'light-in-room',
    },
    {
      id: 'colourShift',
      label: 'colour by day against lamplight',
      unit: 'ΔE00',
      ...at(v.colourShift, ranges.colourShift),
      rests: words.colour.rests,
      step: 'colour-shift',
    },
    {
      id: 'warmth',
      label: 'added resistance',
      unit: 'm²K/W',
      ...at(v.warmth, ranges.warmth),
      rests: words.warmth.rests,
      step: 'warmth',
    },
    {
      id: 'windowU',
      label: 'window with it',
      unit: 'W/m²K',
      ...at((warmth.withDrapery[0] + warmth.withDrapery[1]) / 2, warmth.withDrapery),
      rests: r.glass.rests.gAndU,
      step: 'u-value',
    },
    {
      id: 'heatSaved',
      label: 'heat loss saved',
      unit: '',
      ...at((warmth.saved[0] + warmth.saved[1]) / 2, warmth.saved),
      rests:
        words.warmth.words === HEAT_BEHIND
          ? 'of the loss through the glass, while drawn and with the heat off; while it runs its heat stays behind the cloth'
          : 'of the loss through the glass, while drawn',
      step: 'heat-saved',
    },
    {
      id: 'sunGain',
      label: 'sun let in, of all that falls on it',
      unit: '',
      ...at(r.sunGain, [Math.max(0, r.sunGain - SUMMER_ERROR.high), Math.min(1, r.sunGain + SUMMER_ERROR.low)]),
      rests: 'EN 13363-1, internal device',
      step: 'summer',
    },
    {
      id: 'glassTemperature',
      label: 'glass on a winter night',
      unit: '°C',
      ...at(c.glass, c.glassRange),
      rests: 'ISO 13788 (from memory)',
      step: 'glass-temperature',
    },
    {
      id: 'fade',
      label: 'fading kept off',
      unit: '',
      ...at(v.fade, ranges.fade),
      rests: words.fade.rests,
      step: 'fade',
    },
  ];
  const steps = new Set(showWorking(r).map((step) => step.id));
  // Behind a blackout nothing of the face is seen by daylight, so no colour by day is told.
  const dark = words.colour.words === AS_BY_NIGHT || words.colour.words === NEARLY_AS_BY_NIGHT;
  return [...all, body, weight].filter((reading) => steps.has(reading.step) && !(dark && reading.id === 'colourShift'));
}

/** In the units of the job. */
function weighed(r: Reckoned): { readonly unit: string; readonly value: number; readonly range: Range } {
  const { units } = r.input;
  const inPounds = units === undefined || units === 'in';
  const scale = inPounds ? 1000 / GRAMS_PER_OUNCE / 16 : 1;
  const [low, high] = weightRange(r);
  return { unit: inPounds ? 'lb' : 'kg', value: scale * r.hangKg, range: [scale * low, scale * high] };
}

/** Weights that nobody weighed may be a quarter off either way (assumed). */
const WEIGHT_SPREAD = 0.25;

function weightRange(r: Reckoned): Range {
  const guessed = r.layers.filter((layer) => layer.assumed.includes('weight')).reduce((sum, l) => sum + l.weight, 0);
  const by = (WEIGHT_SPREAD * guessed) / r.gsm;
  return [r.hangKg * (1 - by), r.hangKg * (1 + by)];
}
