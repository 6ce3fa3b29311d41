/** Refuses panels that no cloth could make, each with field, fault and remedy, before any arithmetic is tried. */
import type { Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { LengthUnit } from '#shared/length.ts';
import { checkPanelMeasures } from './check-panel-measures.ts';
import { plainCutOf } from './plain-cut.ts';
import { countWidths, flatAskedMilli, measureWidths } from './count-widths.ts';
import { joinedFace } from './join-repeats.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import { countPleats } from './pleats.ts';

const PLEATED: readonly PanelsTreatment['heading'][] = ['pinch-pleat', 'goblet', 'box-pleat'];

export function checkPanels(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly Cloth[],
  unit: LengthUnit,
): Fault[] {
  const faults: Fault[] = [];
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const fault = (field: string, wrong: string, right: string): void => {
    faults.push({ path: at(panels.key, field), wrong, right });
  };
  const { practice } = panels;
  if (2 * practice.seam >= face.usableWidth)
    fault(
      'practice.seam',
      `two seams of ${say(practice.seam)} take the whole width`,
      'give what one join loses, such as 1/2 in',
    );
  const flat = flatAskedMilli(panels) / 1000;
  const hems = 2 * panels.pieces * practice.sideHem;
  const counts = faults.length === 0 && panels.halfWidths === null;
  if (counts && (flat + hems) / (face.usableWidth - 2 * practice.seam) > MOST_WIDTHS)
    fault(
      'rodWidth',
      `${say(panels.rodWidth)} would take more than ${MOST_WIDTHS} widths`,
      'measure rod, fullness and cloth width again',
    );
  for (const layer of behind)
    if (flat / layer.usableWidth > MOST_WIDTHS)
      fault(
        'stacks',
        `${layer.name} would take more than ${MOST_WIDTHS} widths`,
        'measure the width of the cloth again',
      );
  const { usableWidth } = faults.length === 0 ? joinedFace(panels, face) : face;
  if (panels.halfWidths !== null && measureWidths(panels, usableWidth, 2 * panels.halfWidths).made2 <= 0)
    fault('widths', 'are all taken by side hems and seams', 'give more widths, or smaller hems');
  if (faults.length === 0 && panels.halfWidths === null && countWidths(panels, usableWidth).made2 <= 0)
    fault(
      'practice.sideHem',
      `side hems of ${say(practice.sideHem)} take all the cloth`,
      'give the turn of one edge, such as 3 in',
    );
  checkPanelMeasures(panels, fault, say);
  if (faults.length === 0 && panels.pleatToPattern) checkPatternPleats(panels, joinedFace(panels, face), fault, say);
  const across = plainCutOf(panels, behind.length > 0);
  if (panels.weightedEdge && across > face.usableWidth)
    fault(
      'weightedEdge',
      `a length of ${say(across)} with its heading does not fit across ${face.name} (${say(face.usableWidth)})`,
      'choose a wider cloth, or hem it',
    );
  if (panels.weightedEdge && panels.halfWidths !== null)
    fault('weightedEdge', 'runs sideways, where there are no widths to count', 'give fullness instead of widths');
  const allowance = practice.lining;
  if (panels.finishedLength + allowance.headingAllowance + allowance.bottomHem - allowance.shorter <= 0)
    fault('practice.lining.shorter', 'is more than the lining is long', 'give about 1 in');
  return faults;
}

/** Pleats that follow the pattern need a pleated heading, upright cloth with a repeat across, and a division that fits. */
function checkPatternPleats(
  panels: PanelsTreatment,
  face: FaceCloth,
  fault: (field: string, wrong: string, right: string) => void,
  say: (value: number) => string,
): void {
  if (!PLEATED.includes(panels.heading))
    return fault(
      'pleatToPattern',
      `is asked of a ${panels.heading} heading`,
      `take ${PLEATED.join(', ')}, or leave it out`,
    );
  const across = face.repeat?.horizontal ?? null;
  if (across === null || across === 0)
    return fault(
      'pleatToPattern',
      `is asked, but the repeat across of ${face.name} is not known`,
      'give the horizontal repeat of the cloth, or leave it out',
    );
  const halves =
    panels.halfWidths === null ? countWidths(panels, face.usableWidth).halves : panels.halfWidths * panels.pieces;
  const { made2 } = measureWidths(panels, face.usableWidth, halves);
  if ((countPleats(panels, made2, halves, across)?.toPattern ?? null) !== null) return;
  fault(
    'pleatToPattern',
    `no whole part of ${say(across)} makes pleats of this cloth that still have the least fullness`,
    'give more fullness or widths, or leave it out',
  );
}
