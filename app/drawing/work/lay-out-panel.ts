/** One panel on the table: its flat width, where its seams fall, its pleats and what hangs flat at both sides. Ticks. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { countPoints } from '#app/estimating/heading-points.ts';
import type { HeadingPoints } from '#app/estimating/heading-points.ts';
import { finishedWidth } from '#app/estimating/finished-width.ts';
import { headingTurn } from '#app/estimating/heading-turn.ts';
import type { WorkGiven } from '../draw-work-sheet.ts';

export interface PanelLayout {
  readonly turn: number;
  /** Cut width of one panel, side hems in. */
  readonly flat: number;
  readonly seams: readonly number[];
  readonly points: HeadingPoints;
  /** Of one panel: what hangs flat at its wall side and at its leading side. */
  readonly wallSide: number;
  readonly leading: number;
  readonly finished: number;
}

export function layOutPanel(given: WorkGiven<PanelsTreatment>, face: TakeoffLine): PanelLayout {
  const panels = given.treatment;
  const { practice, pieces } = panels;
  const usable = given.clothOf(face.cloth)?.usableWidth ?? 0;
  const halves = face.halfWidths;
  const each = halves === null ? 0 : halves / pieces;
  const joins = halves === null ? 0 : Math.max(0, (each + (each % 2)) / 2 - 1);
  const flat = halves === null ? face.cutLength / pieces : (each / 2) * usable - joins * 2 * practice.seam;
  // A half width stands at the wall side: the first seam is half a width in.
  const half = each % 2 === 1;
  const seams = Array.from({ length: joins }, (_, join) => {
    const widths = half ? join + 0.5 : join + 1;
    return widths * usable - practice.seam * (2 * join + 1);
  });
  const made2 = 2 * (flat - 2 * practice.sideHem) * pieces;
  return {
    turn: headingTurn(panels, given.made.stack.behind.length > 0),
    flat,
    seams,
    points: countPoints(panels, made2, halves),
    wallSide: (panels.returns.left + panels.returns.right) / pieces,
    leading: panels.overlap / pieces,
    finished: finishedWidth(panels) / pieces,
  };
}
