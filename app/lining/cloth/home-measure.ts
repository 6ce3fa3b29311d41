/**
 * The light that a cloth passes, measured at home: a light meter (that of a telephone will do) held against a sunny
 * window, read bare and with the sample before it, the same meter both times and quickly after each other, so that its
 * scale does not matter. The errors are assumed and stated with the answer.
 */
import type { WorkingStep } from '#shared/result.ts';
import type { Locale } from '#shared/locale.ts';
import type { Glazing } from '#shared/words.ts';
import { glassOf } from '../light-and-heat/glass.ts';
import { roundReading } from '../light-and-heat/round-reading.ts';
import { liningSay } from '../say/lining-say.ts';
import { StackFault } from '../stack-fault.ts';

/** One pair of readings in lux. */
export interface LightPair {
  readonly bare: number;
  readonly covered: number;
}

export interface MeasureGiven {
  readonly pairs: readonly LightPair[];
  /** The meter with its eye covered; 0 when nobody read it. */
  readonly dark?: number;
  readonly glazing: Glazing;
  /** Of the sample towards the glass; null when unknown: a middling cloth is then taken, and the range widened. */
  readonly reflectance: number | null;
  /** Whose decimal sign the working has; not told, a point. */
  readonly locale?: Locale;
}

export interface MeasuredTransmittance {
  readonly transmittance: number;
  /** More or less, about nineteen times in twenty. */
  readonly within: number;
  readonly working: WorkingStep;
}

/** Sky and meter drift by this share from one reading to the next (assumed). */
const DRIFT = 0.05;
/** Light that creeps in beside the sample, as a share of the bare reading (assumed). */
const STRAY = 0.003;
/** A window dimmer than this reads too coarsely, in lux (assumed). */
const LEAST_LUX = 200;
/** A middling cloth, and how far another lies from it. */
const USUAL_REFLECTANCE = { value: 0.5, within: 0.2 } as const;
/** The covered reading may exceed the bare one by the drift alone. */
const MOST_RATIO = 1 + 2 * DRIFT;

/**
 * The mean of all pairs. Between glass and sample light goes to and fro, so the ratio of the readings lies above the
 * transmittance of the cloth: T = ratio × (1 − Rglass × Rcloth). Throws `StackFault` (`impossible-reading`).
 */
export function measureTransmittance(given: MeasureGiven): MeasuredTransmittance {
  const dark = given.dark ?? 0;
  checkReadings(given, dark);
  const ratios = given.pairs.map((pair) => Math.max(0, (pair.covered - dark) / (pair.bare - dark)));
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  const glass = glassOf(given.glazing).visible.reflectance;
  const cloth = given.reflectance ?? USUAL_REFLECTANCE.value;
  const between = 1 - glass * cloth;
  const transmittance = Math.min(1, mean * between);
  const unsure = given.reflectance === null ? mean * glass * USUAL_REFLECTANCE.within : 0;
  // The scatter of the pairs tells the drift where it is larger than assumed.
  const drift = Math.max(mean * Math.SQRT2 * DRIFT, scatter(ratios, mean)) / Math.sqrt(ratios.length);
  const say = liningSay(undefined, given.locale);
  const within = 2 * Math.hypot(drift * between, unsure / 2, STRAY);
  return {
    transmittance: roundReading('light', transmittance),
    within: roundReading('light', within),
    working: {
      id: 'home-measure',
      label: 'light through the sample',
      formula: `${given.pairs.map((pair) => `${say.figure(pair.covered)} ÷ ${say.figure(pair.bare)}`).join(', ')}; mean ${say.figure(mean)} × (1 − ${say.figure(glass)} × ${say.figure(cloth)})`,
      value: `${say.percent(transmittance)}, more or less ${say.percent(within)}`,
      rests: `measured at home; drift of ${say.percent(DRIFT)} a reading and stray light assumed${given.reflectance === null ? '; reflectance of the sample assumed' : ''}`,
    },
  };
}

function scatter(ratios: readonly number[], mean: number): number {
  if (ratios.length < 2) return 0;
  return Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0) / (ratios.length - 1));
}

function checkReadings(given: MeasureGiven, dark: number): void {
  const tell = (path: string, wrong: string, right: string): never => {
    throw new StackFault('impossible-reading', { path, wrong, right });
  };
  if (given.pairs.length === 0) tell('pairs', 'there is no reading', 'read the meter bare, then with the sample');
  if (!(dark >= 0)) tell('dark', `${dark} lux cannot be`, 'give the reading with the meter covered, or leave it out');
  const { reflectance } = given;
  if (reflectance !== null && !(reflectance >= 0 && reflectance <= 1))
    tell('reflectance', `${reflectance} is not a share of the light`, 'give a number from 0 to 1, or leave it out');
  given.pairs.forEach(({ bare, covered }, i) => {
    const path = `pairs[${i}]`;
    if (!(bare - dark >= LEAST_LUX) || !Number.isFinite(bare))
      tell(`${path}.bare`, `${bare} lux is too dim to measure by`, `read at a sunny window: ${LEAST_LUX} lux or more`);
    if (!(covered >= 0))
      tell(`${path}.covered`, `${covered} lux cannot be`, 'give the reading with the sample before it');
    if (covered - dark > MOST_RATIO * (bare - dark))
      tell(`${path}.covered`, `${covered} lux is more than the ${bare} without the sample`, 'read both again');
  });
}
