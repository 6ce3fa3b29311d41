/** Seams of a blackout that nothing covers: a wide one runs sideways without any, and `run-sideways.ts` lays it so. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { Advice, TakeoffLine } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { joinsOf } from './count-widths.ts';
import { linesUp } from './lay-behind.ts';

/** `takeoff`: the face first, then the layers in the order of `behind`. */
export function adviseBlackoutSeams(
  panels: PanelsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  takeoff: readonly TakeoffLine[],
): Advice[] {
  // Sideways, the face has no seam that another could lie behind.
  const seamed = takeoff[0]?.railroaded === true ? null : face.usableWidth;
  return behind.flatMap((layer, index) => adviseSeams(panels, layer, takeoff[index + 1], seamed));
}

/** Each seam of a blackout is a row of needle holes; behind a seam of the face it shows least. */
function adviseSeams(
  panels: PanelsTreatment,
  layer: BackCloth,
  line: TakeoffLine | undefined,
  seamed: Ticks | null,
): Advice[] {
  const joins = line?.halfWidths ? joinsOf(panels, line.halfWidths) : 0;
  if (!isBlackout(layer) || joins === 0 || (seamed !== null && linesUp(layer, seamed))) return [];
  const seams = joins === 1 ? 'one seam, which does' : `${joins} seams, which do`;
  return [
    {
      rule: 'blackout-seams',
      level: 'caution',
      says: `${layer.name} has ${seams} not lie behind those of the face and may show as lines of daylight: take it as wide as the face, or wide enough to run sideways without a seam.`,
      rests:
        'common practice: no seam in a blackout where a wide one can run sideways, else behind the seams of the face',
    },
  ];
}
