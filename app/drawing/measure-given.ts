/**
 * From what somebody has typed so far to what can be drawn: missing measurements are assumed, absurd ones are brought
 * within bounds, and both are remembered, so that the drawing shows them dashed or underlined and never passes them off.
 */
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { Given } from './drawn-room.ts';
import { nearestCount } from './round-shapes.ts';

export const INCH = TICKS_PER_INCH;
/** Drawn round every opening: what usual casing measures. */
export const CASING = 3 * INCH;
export const SILL_HORN = 1.5 * INCH;
/** From the rod's end to the tip of its finial. */
export const FINIAL = 3.6 * INCH;
/** From the eye of the ring, where the length starts, up to the middle of the rod. */
export const RING_DROP = 1.5 * INCH;

/** Bounds within which a measurement is drawn as it is, and what is drawn while it is missing. In inches. */
export const BOUNDS = {
  width: { low: 4, high: 480, usual: 48 },
  height: { low: 4, high: 240, usual: 54 },
  sill: { low: 0, high: 240, usual: 30 },
  at: { low: 0, high: 600, usual: 0 },
  ceiling: { low: 48, high: 360, usual: 96 },
  above: { low: -60, high: 120, usual: 4 },
  rodWidth: { low: 4, high: 600, usual: 0 },
  length: { low: 1, high: 400, usual: 0 },
  side: { low: 0, high: 24, usual: 3.5 },
  overlap: { low: 0, high: 24, usual: 0 },
  part: { low: 0, high: 120, usual: 3 },
  tail: { low: 2, high: 300, usual: 36 },
  bed: { low: 20, high: 160, usual: 80 },
  drop: { low: 3, high: 60, usual: 14 },
} as const;

export interface Measure {
  /** What is drawn. */
  readonly ticks: number;
  /** What was given, shown on dimension lines; null when missing. */
  readonly given: Given;
  /** True when it is drawn as given. */
  readonly sure: boolean;
}

/** `usual` in ticks. */
export function take(given: Given | undefined, name: keyof typeof BOUNDS, usual?: number): Measure {
  const { low, high } = BOUNDS[name];
  const missing = given === null || given === undefined || !Number.isFinite(given);
  const wanted = missing ? (usual ?? BOUNDS[name].usual * INCH) : given;
  const drawn = Math.max(low * INCH, Math.min(high * INCH, wanted));
  return { ticks: drawn, given: missing ? null : given, sure: !missing && drawn === given };
}

/** A count that can be drawn: whole, within bounds, or the usual one. */
export function takeCount(given: number | null | undefined, usual: number, low: number, high: number): number {
  const wanted = given !== null && given !== undefined && Number.isFinite(given) ? given : usual;
  return nearestCount(wanted, low, high);
}
