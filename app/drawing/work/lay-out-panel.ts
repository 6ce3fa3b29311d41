/** Panels on the table: flat width, where the seams fall, pleats, and what hangs flat at either side of each. Ticks. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { countPoints } from '#app/estimating/panels/heading-points.ts';
import { joinedFace } from '#app/estimating/panels/join-repeats.ts';
import type { HeadingPoints } from '#app/estimating/panels/heading-points.ts';
import { sidesOfPanels, unlikePanels } from '#app/estimating/panels/panel-sides.ts';
import type { PanelSides } from '#app/estimating/panels/panel-sides.ts';
import { pleatOf } from '#app/estimating/panels/pleats.ts';
import { headingTurn } from '#app/estimating/panels/heading-turn.ts';
import type { WorkGiven } from './work-given.ts';

export interface PanelLayout {
  readonly turn: number;
  /** Cut width of one panel, side hems in. */
  readonly flat: number;
  readonly seams: readonly number[];
  readonly points: HeadingPoints;
  /** Cloth in one pleat of this panel; 0 without pleats. */
  readonly pleat: number;
  /** How many panels are made so, of one treatment, and whether the right one mirrors this. */
  readonly sides: PanelSides;
  readonly mirrored: boolean;
}

/** One layout for each panel that is made differently, left to right as they hang. */
export function layOutPanels(given: WorkGiven<PanelsTreatment>, face: TakeoffLine): readonly PanelLayout[] {
  const panels = given.treatment;
  const { practice, pieces } = panels;
  const cloth = given.clothOf(face.cloth);
  // Narrower than the cloth where its seams fall on whole repeats.
  const usable = (cloth?.role === 'face' ? joinedFace(panels, cloth) : cloth)?.usableWidth ?? 0;
  const halves = face.halfWidths;
  const each = halves === null ? 0 : halves / pieces;
  const joins = halves === null ? 0 : Math.max(0, (each + (each % 2)) / 2 - 1);
  const flat = halves === null ? face.cutLength / pieces : (each / 2) * usable - joins * 2 * practice.seam;
  const made2 = 2 * (flat - 2 * practice.sideHem) * pieces;
  const points = countPoints(panels, made2, halves, cloth?.repeat?.horizontal ?? null);
  const all = sidesOfPanels(panels, made2);
  const unlike = unlikePanels(all);
  return unlike.map((sides) => ({
    turn: headingTurn(panels, given.made.stack.behind.length > 0),
    flat,
    seams: placeSeams({ usable, flat, joins, half: each % 2 === 1, seam: practice.seam }, sides.name === 'right'),
    points,
    pleat:
      points.pleats === null
        ? 0
        : pleatOf(points.pleats, points.pleats.toPattern?.flat ?? flat - 2 * practice.sideHem, sides),
    sides,
    mirrored: sides.name === 'left' && !unlike.some(({ name }) => name === 'right'),
  }));
}

/** A half width stands at the wall side: the first seam of a left panel is half a width in, the last one of a right panel. */
function placeSeams(
  cloth: {
    readonly usable: number;
    readonly flat: number;
    readonly joins: number;
    readonly half: boolean;
    readonly seam: number;
  },
  right: boolean,
): readonly number[] {
  const { usable, flat, joins, half, seam } = cloth;
  const fromLeft = Array.from({ length: joins }, (_, join) => {
    const widths = half ? join + 0.5 : join + 1;
    return widths * usable - seam * (2 * join + 1);
  });
  return right ? fromLeft.map((place) => flat - place).reverse() : fromLeft;
}
