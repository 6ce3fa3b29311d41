/** Refuses cornices that cannot be built or covered, each with field, fault and remedy. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import { checkPiece, checkTop, checkWelt, checkWidths, listFaults } from '../top-treatment/check-top.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import { boxOf, faceCut } from './measure-cornice.ts';

export function checkCornice(
  cornice: CorniceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: (id: string) => Cloth | null,
): Fault[] {
  const list = listFaults(cornice.key, unit, 'cornice');
  const { tell, say, section } = list;
  const { returns, shapedEdge, width, practice } = cornice;
  checkTop(cornice, list);
  checkWelt('topWelt', cornice.welts.top, practice.cornice.weltStrip, clothOf, list);
  checkWelt('welt', cornice.welts.bottom, practice.cornice.weltStrip, clothOf, list);
  const box = boxOf(cornice);
  for (const side of ['left', 'right'] as const)
    if (returns[side] > 0 && returns[side] <= box.thickness)
      tell(
        'return',
        `of ${say(returns[side])} is no deeper than the face board is thick`,
        'measure from the wall to the front of the box',
      );
  if (width > 0 && box.dustBoard.length <= 0)
    tell(`${section}.boardThickness`, `${say(box.thickness)} leaves no room between the ends`, 'give it about 3/4 in');
  if (box.dustBoard.depth <= 0)
    tell(`${section}.boardDepth`, 'leaves no dust board behind the face board', 'give the depth of the box');
  if (shapedEdge !== null && shapedEdge < width)
    tell(
      'shapedEdge',
      `${say(shapedEdge)} is shorter than the face of ${say(width)}`,
      'measure the lower edge along its template, or leave it out for a straight one',
    );
  checkWidths(addUp(faceCut(cornice).width), [face, ...behind], cornice, list);
  checkPiece(face, addUp(faceCut(cornice).length), list);
  return list.faults;
}
