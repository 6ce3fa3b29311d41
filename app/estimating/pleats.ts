/** Pleats and spaces of one piece: their number by `count-pleats.ts`. Returns and overlap hang flat. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { countPleatsOf } from './count-pleats.ts';
import type { PleatCount } from './count-pleats.ts';
import type { PanelSides } from './panel-sides.ts';
import { coveredWidth } from './still-panels.ts';

export interface Pleats {
  /** In one piece. */
  readonly count: number;
  /** Cloth in one pleat and the space between two, in ticks, unrounded: the worktable shares them out in eighths. */
  readonly pleat: number;
  readonly space: number;
}

/** Pleats with what their number rests on. */
export interface CountedPleats extends Pleats {
  readonly counted: PleatCount;
  /** Flat width of one piece as made, in ticks, unrounded. */
  readonly flat: number;
}

/**
 * Null for pieces too narrow for two pleats. `made2` is twice the flat width made, `halvesMade` the widths in halves, null
 * for cloth used sideways.
 */
export function countPleats(panels: PanelsTreatment, made2: number, halvesMade: number | null): CountedPleats | null {
  const pieces = panels.pieces;
  const counted = countPleatsOf(panels, made2, halvesMade);
  const { count } = counted;
  if (count < 2) return null;
  const finished = coveredWidth(panels, made2) / pieces;
  const flat = made2 / 2 / pieces;
  const hangsFlat = (panels.returns.left + panels.returns.right + panels.overlap) / pieces;
  return {
    count,
    counted,
    flat,
    pleat: (flat - finished) / count,
    space: (finished - hangsFlat) / (count - 1),
  };
}

/** Cloth in one pleat of a panel that finishes as its sides say: with other returns the same cloth is shared out otherwise. */
export function pleatOf(pleats: Pleats, flat: number, sides: Pick<PanelSides, 'finished'>): number {
  return (flat - sides.finished) / pleats.count;
}
