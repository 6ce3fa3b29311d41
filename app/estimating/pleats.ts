/**
 * Pleats and spaces of one piece. Five pleats a width at the usual fullness, half widths rounding down (a published
 * table: 1 width 5, 1 1/2 7, 2 10, 2 1/2 12-13, 3 15). Returns and overlap hang flat.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { finishedWidth } from './finished-width.ts';

export interface Pleats {
  /** In one piece. */
  readonly count: number;
  /** Cloth in one pleat and the space between two, in ticks, unrounded: the worktable shares them out in eighths. */
  readonly pleat: number;
  readonly space: number;
}

/** Null for pieces too narrow for two pleats. `made2` is twice the flat width made, `halvesMade` the widths in halves. */
export function countPleats(panels: PanelsTreatment, made2: number, halvesMade: number): Pleats | null {
  const pieces = panels.pieces;
  const halves = halvesMade / pieces;
  const twice = panels.practice.pleatsPerWidth * halves;
  const count = (twice - (twice % 2)) / 2;
  if (count < 2) return null;
  const finished = finishedWidth(panels) / pieces;
  const flat = made2 / 2 / pieces;
  const hangsFlat = (panels.returns.left + panels.returns.right + panels.overlap) / pieces;
  return { count, pleat: (flat - finished) / count, space: (finished - hangsFlat) / (count - 1) };
}
