/** The cuts of panels as the joint cut plan takes them: widths alike in a group, a half-drop in two. */
import type { Cloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { CutGroup } from './cut-group.ts';
import { countPhases } from './cut-cloth.ts';
import type { Estimate } from './estimate.ts';

/** Bands and other lines with a use of their own have no place in the repeat of their cloth. */
export function cutsOfPanels(
  panels: PanelsTreatment,
  estimate: Estimate,
  face: Cloth,
  behind: readonly Cloth[],
): CutGroup[] {
  const cloths = [face, ...behind];
  return estimate.takeoff.flatMap((line) => cutsOfLine(panels, line, cloths[line.layer]));
}

function cutsOfLine(panels: PanelsTreatment, line: TakeoffLine, cloth: Cloth | undefined): CutGroup[] {
  const base = {
    name: line.use ?? panels.name,
    cloth: line.cloth,
    layer: line.layer,
    length: line.railroaded ? line.cutLength : line.plainCut,
    width: null,
    turnable: cloth?.repeat === null && cloth.supply?.oneWay !== true,
  };
  const repeat = line.use === undefined && !line.railroaded ? (cloth?.repeat ?? null) : null;
  if (repeat === null) {
    // A run of cloth used sideways is one length for one treatment, whatever its pieces.
    return [{ ...base, count: line.railroaded ? panels.quantity : line.cuts, phase: 'any' }];
  }
  if (repeat.match === 'straight' || line.halfWidths === null) return [{ ...base, count: line.cuts, phase: null }];
  const { level, dropped } = countPhases(line.halfWidths, panels.pieces, panels.quantity);
  return [
    { ...base, count: level, phase: 0 },
    ...(dropped === 0 ? [] : [{ ...base, count: dropped, phase: repeat.vertical / 2 }]),
  ];
}
