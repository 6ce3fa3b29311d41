/** Pleats and spaces of one piece: their number by `count-pleats.ts`. Returns and overlap hang flat. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Ticks } from '#shared/length.ts';
import { countPleatsOf } from './count-pleats.ts';
import type { PleatCount } from './count-pleats.ts';
import type { PanelSides } from './panel-sides.ts';
import { coveredWidth } from './covered-width.ts';
import { pleatToPattern } from './pleat-to-pattern.ts';
import type { PatternPleats } from './pleat-to-pattern.ts';

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
  /** Flat width of one piece as made, in ticks, unrounded; pleated to the pattern, what is kept of it. */
  readonly flat: number;
  readonly toPattern: PatternPleats | null;
}

/**
 * Null for pieces too narrow for two pleats, or for more than what hangs flat. `made2` is twice the flat width made,
 * `halvesMade` the widths in halves, null for cloth used sideways, `across` the repeat across where the pleats follow it.
 */
export function countPleats(
  panels: PanelsTreatment,
  made2: number,
  halvesMade: number | null,
  across: Ticks | null = null,
): CountedPleats | null {
  const pieces = panels.pieces;
  const counted = countPleatsOf(panels, made2, halvesMade);
  const finished = coveredWidth(panels, made2) / pieces;
  const made = made2 / 2 / pieces;
  const hangsFlat = (panels.returns.left + panels.returns.right + panels.overlap) / pieces;
  if (finished <= hangsFlat) return null;
  const follows = panels.pleatToPattern && across !== null && halvesMade !== null;
  const room = { flat: made, between: finished - hangsFlat, hangsFlat };
  const toPattern = follows ? pleatToPattern(panels, across, room, counted.count) : null;
  const count = toPattern?.count ?? counted.count;
  const flat = toPattern?.flat ?? made;
  if (count < 2) return null;
  return {
    count,
    counted,
    toPattern,
    flat,
    pleat: (flat - finished) / count,
    space: (finished - hangsFlat) / (count - 1),
  };
}

/** Cloth in one pleat of a panel that finishes as its sides say: with other returns the same cloth is shared out otherwise. */
export function pleatOf(pleats: Pleats, flat: number, sides: Pick<PanelSides, 'finished'>): number {
  return (flat - sides.finished) / pleats.count;
}
