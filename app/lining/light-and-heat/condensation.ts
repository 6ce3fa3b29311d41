/**
 * Condensation behind drawn drapery (ISO 13788, from memory): a better drapery makes colder, wetter glass. Temperatures
 * in degrees Celsius, humidity as a share of one.
 */
import type { Climate, RoomUse } from '#shared/words.ts';

/** Saturation vapour pressure, Pa; over ice below zero. */
export function saturationPressure(T: number): number {
  return T >= 0 ? 610.5 * Math.exp((17.269 * T) / (237.3 + T)) : 610.5 * Math.exp((21.875 * T) / (265.5 + T));
}

/** The temperature at which air of this temperature and humidity begins to wet a surface. */
export function dewPoint(T: number, humidity: number): number {
  const ratio = Math.log((saturationPressure(T) * humidity) / 610.5);
  return ratio >= 0 ? (237.3 * ratio) / (17.269 - ratio) : (265.5 * ratio) / (21.875 - ratio);
}

/** Inner surface resistance, m2K/W. */
const R_SI = 0.13;

/** Inner surface of the glass: Ti - (Rsi + dR) / (1/U + dR) (Ti - Te). */
export function glassTemperature(Ti: number, Te: number, U: number, dR: number): number {
  return Ti - ((R_SI + dR) / (1 / U + dR)) * (Ti - Te);
}

/** The highest humidity of the room at which glass of this temperature stays dry, when room air reaches it. */
export function driestHumidity(Ti: number, glass: number): number {
  return saturationPressure(glass) / saturationPressure(Ti);
}

/** A winter night that each climate sees often (assumed, from memory). */
const NIGHT: Readonly<Record<Climate, number>> = { cold: -10, mixed: 0, warm: 8 };
/** Humidity of a lived-in room in winter by its use (assumed, from memory). */
const DAMP_USE: Readonly<Partial<Record<RoomUse, number>>> = { bath: 0.65, kitchen: 0.55 };
const USUAL_HUMIDITY = 0.5;
const INDOORS = 20;

export interface Condensation {
  readonly inside: number;
  readonly outside: number;
  readonly humidity: number;
  readonly dewPoint: number;
  /** The glass bare, and behind the drapery. */
  readonly bareGlass: number;
  readonly glass: number;
  /** From what most to what least drapery adds. */
  readonly glassRange: readonly [number, number];
  /** The glass behind the drapery is colder than the dew point of the room. */
  readonly wet: boolean;
  /** So is the bare glass: the drapery only makes it worse. */
  readonly wetBare: boolean;
}

/** `dR` is the middle of what the drapery adds, `range` its ends; m2K/W. */
export function reckonCondensation(
  climate: Climate,
  use: RoomUse,
  U: number,
  dR: number,
  range: readonly [number, number] = [dR, dR],
): Condensation {
  const outside = NIGHT[climate];
  const humidity = DAMP_USE[use] ?? USUAL_HUMIDITY;
  const dew = dewPoint(INDOORS, humidity);
  const bareGlass = glassTemperature(INDOORS, outside, U, 0);
  const glass = glassTemperature(INDOORS, outside, U, dR);
  return {
    inside: INDOORS,
    outside,
    humidity,
    dewPoint: dew,
    bareGlass,
    glass,
    glassRange: [glassTemperature(INDOORS, outside, U, range[1]), glassTemperature(INDOORS, outside, U, range[0])],
    wet: glass < dew,
    wetBare: bareGlass < dew,
  };
}
