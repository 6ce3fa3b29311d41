/**
 * What panels cover. Still panels may be sold by widths that are too few to span the rod: they then hang at its ends, and
 * the cloth that there is covers what it makes at the usual fullness (common practice). Panels that draw do not close
 * then, which is told.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { finishedWidth } from './finished-width.ts';

/** Of all pieces, in ticks, unrounded: the finished width, or what `made2` (twice the flat width) makes where it is less. */
export function coveredWidth(panels: PanelsTreatment, made2: number): number {
  const finished = finishedWidth(panels);
  return made2 >= 2 * finished ? finished : (made2 * 1000) / (2 * Math.max(1000, panels.fullness));
}
