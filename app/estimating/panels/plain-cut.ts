import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { headingTurn } from './heading-turn.ts';
import { upForShrinkage } from '../round.ts';

/** Plain cut of the face: finished length, heading, hem and squaring, made longer for what washing takes. */
export function plainCutOf(panels: PanelsTreatment, lined: boolean): Ticks {
  const { bottomHem, squaring, shrinkage } = panels.practice;
  const asked = panels.finishedLength + headingTurn(panels, lined) + bottomHem + squaring;
  return upForShrinkage(ticks(asked), shrinkage);
}
