/**
 * Pleats and spaces of one piece. Five pleats a width at the usual fullness, half widths rounding down (a published
 * table: 1 width 5, 1 1/2 7, 2 10, 2 1/2 12-13, 3 15). Returns and overlap hang flat.
 */
import { piecesOf } from '#shared/job.ts';
import type { PanelsTreatment } from '#shared/job.ts';
import { finishedWidth } from './count-widths.ts';
import type { CountedWidths } from './count-widths.ts';

export interface Pleats {
  /** In one piece. */
  readonly count: number;
  /** Cloth in one pleat and the space between two, in ticks, unrounded: the worktable shares them out in eighths. */
  readonly pleat: number;
  readonly space: number;
}

/** Null for headings that are not pleated in number, and for pieces too narrow for two pleats. */
export function countPleats(panels: PanelsTreatment, counted: CountedWidths): Pleats | null {
  if (panels.heading !== 'pinch-pleat' && panels.heading !== 'goblet' && panels.heading !== 'box-pleat') return null;
  const pieces = piecesOf(panels.arrangement);
  const halves = counted.halves / pieces;
  const twice = panels.practice.pleatsPerWidth * halves;
  const count = (twice - (twice % 2)) / 2;
  if (count < 2) return null;
  const finished = finishedWidth(panels) / pieces;
  const flat = counted.made2 / 2 / pieces;
  const hangsFlat = (panels.returns.left + panels.returns.right + panels.overlap) / pieces;
  return { count, pleat: (flat - finished) / count, space: (finished - hangsFlat) / (count - 1) };
}
