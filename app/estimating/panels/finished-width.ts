import { ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Ticks } from '#shared/length.ts';
import { toNearestTick } from '../round.ts';

type Spanned = Pick<PanelsTreatment, 'rodWidth' | 'overlap' | 'returns' | 'arch'>;

/** Finished width: the heading along the rod, overlap and returns of all pieces together. */
export function finishedWidth(panels: Spanned): Ticks {
  return ticks(headingLength(panels) + panels.overlap + panels.returns.left + panels.returns.right);
}

/** The rod face; under an arch the heading follows the curve (a half circle is 1.571 times its width). */
export function headingLength(panels: Pick<PanelsTreatment, 'rodWidth' | 'arch'>): Ticks {
  return panels.arch === null || panels.arch === 0 ? panels.rodWidth : archLength(panels.rodWidth, panels.arch);
}

/**
 * Length of an arch over a chord: a circular segment up to the half circle; a higher arch stands on straight sides.
 * To the nearest tick.
 */
export function archLength(width: Ticks, rise: Ticks): Ticks {
  const half = width / 2;
  if (rise >= half) return toNearestTick(Math.PI * half + 2 * (rise - half));
  const radius = (half * half + rise * rise) / (2 * rise);
  return toNearestTick(2 * radius * Math.asin(half / radius));
}
