/** Labour of panels: billable widths of making, interlining and blackout, and putting up each rod. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Ticks } from '#shared/length.ts';
import { billableWidths } from '../billable-widths.ts';
import type { Labour } from '../estimate.ts';
import type { LaidFace } from './laid-face.ts';

export function labourOf(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  laid: LaidFace,
  billableWidth: Ticks,
): Labour[] {
  const widths = billableWidths(face, laid.line, billableWidth) * panels.quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'making', heading: panels.heading, widths },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: widths * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths }] : []),
    { work: 'installPerRod', count: panels.quantity },
  ];
}

/** Widths that making is charged for. */
export function billedOf(labour: readonly Labour[]): number {
  const making = labour.find((each) => each.work === 'making');
  return making !== undefined && 'widths' in making ? making.widths : 0;
}
