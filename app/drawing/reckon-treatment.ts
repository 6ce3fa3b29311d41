/** What hangs at a window, reckoned from what has been typed so far: where it starts, how far it reaches, how low it hangs. */
import { exhaustive } from '#shared/fault.ts';
import type { DrawnHung } from './drawn-room.ts';
import { INCH } from './measure-given.ts';
import { reckonPanels } from './reckon-panels.ts';
import { reckonShade, reckonSwags, reckonTop, reckonValance } from './reckon-top.ts';
import type { Hole, ReckonedTreatment } from './reckoned.ts';

export function reckonTreatment(treatment: DrawnHung, hole: Hole): ReckonedTreatment {
  switch (treatment.kind) {
    case 'panels':
      return reckonPanels(treatment, hole);
    case 'valance':
      return reckonValance(treatment, hole);
    case 'cornice':
      return { ...reckonTop(treatment, hole, treatment.finishedLength), kind: 'cornice' };
    case 'swags':
      return reckonSwags(treatment, hole);
    case 'roman-shade':
      return reckonShade(treatment, hole);
    default:
      return exhaustive(treatment);
  }
}

/** Nearer the glass first: what hangs inside the frame, shades, panels by their projection, and what covers their tops. */
export function hangingOrder(treatments: readonly ReckonedTreatment[]): readonly ReckonedTreatment[] {
  const depth = (treatment: ReckonedTreatment): number => {
    const out = Math.max(treatment.returns.left, treatment.returns.right) / (100 * INCH);
    if (treatment.source.mount.where === 'inside') return 0;
    if (treatment.kind === 'roman-shade') return 1;
    if (treatment.kind === 'panels') return (treatment.source.sheer === true ? 2 : 3) + out;
    return 5 + out;
  };
  return [...treatments].sort((a, b) => depth(a) - depth(b));
}
