/**
 * Still panels may be sold by widths that are too few to span the rod: they then hang at its ends and cover what their
 * cloth makes at the usual fullness (common practice). Panels that draw have to close.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { finishedWidth } from './finished-width.ts';

export function drawsShut({ arrangement }: Pick<PanelsTreatment, 'arrangement'>): boolean {
  return arrangement === 'pair' || arrangement === 'one-way';
}

/** Of all pieces, in ticks, unrounded: the finished width, or what `made2` (twice the flat width) makes where it is less. */
export function coveredWidth(panels: PanelsTreatment, made2: number): number {
  const finished = finishedWidth(panels);
  const spans = made2 >= 2 * finished || drawsShut(panels) || panels.halfWidths === null;
  return spans ? finished : (made2 * 1000) / (2 * panels.fullness);
}
