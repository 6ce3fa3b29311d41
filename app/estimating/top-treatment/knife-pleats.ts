/**
 * Knife pleats: whole pleats either way, then re-spaced; flat = finished + 2 × depth × pleats (a national trade manual of
 * dress making, Trade Practical vol. 2, p. 203).
 */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { toNearestWhole } from '../round.ts';

export interface KnifePleats {
  readonly count: number;
  /** Face of one pleat after re-spacing, in ticks, unrounded. */
  readonly face: number;
  readonly depth: Ticks;
  readonly flat: Ticks;
}

/** `count` null: the whole number nearest to the usual face, at least one. */
export function pleatKnife(finished: Ticks, usualFace: Ticks, depth: Ticks, count: number | null = null): KnifePleats {
  const pleats = count ?? Math.max(1, toNearestWhole(finished, usualFace));
  return { count: pleats, face: finished / pleats, depth, flat: ticks(finished + 2 * depth * pleats) };
}
