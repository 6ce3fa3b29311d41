import { ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/job.ts';
import type { Ticks } from '#shared/length.ts';

/** Finished width: rod face, overlap and returns of all pieces together. */
export function finishedWidth(panels: Pick<PanelsTreatment, 'rodWidth' | 'overlap' | 'returns'>): Ticks {
  return ticks(panels.rodWidth + panels.overlap + panels.returns.left + panels.returns.right);
}
