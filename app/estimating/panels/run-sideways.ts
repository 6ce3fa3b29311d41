/**
 * Which way a cloth of panels runs. Cloth that may run sideways does where its cut fits across and this takes less; a
 * plain sheer may always, and does where it spares a seam, which would show; a weighted edge is the hem only sideways. A
 * blackout that may run sideways does wherever it has seams otherwise, each a line of daylight, even where it takes more.
 */
import { isBlackout } from '#shared/cloth.ts';
import type { Cloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Ticks } from '#shared/length.ts';

export function mayRunSideways(cloth: Cloth, panels: Pick<PanelsTreatment, 'weightedEdge'>): boolean {
  if (cloth.railroad) return true;
  if (cloth.role !== 'face') return false;
  return panels.weightedEdge || isSeamlessSheer(cloth);
}

/** A sheer without a pattern or a nap looks the same either way. */
function isSeamlessSheer(cloth: Cloth): boolean {
  return cloth.family === 'sheer' && cloth.repeat === null && cloth.supply?.oneWay !== true;
}

export function prefersSideways(
  cloth: Cloth,
  panels: Pick<PanelsTreatment, 'weightedEdge'>,
  sideways: Ticks,
  upright: { readonly plan: Ticks; readonly joins: number },
): boolean {
  if (cloth.role === 'face' && panels.weightedEdge) return true;
  if ((cloth.family === 'sheer' || isBlackout(cloth)) && upright.joins > 0) return true;
  return sideways < upright.plan;
}
