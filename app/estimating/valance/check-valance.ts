/** Refuses valances that no cloth could make, each with field, fault and remedy, before any arithmetic is tried. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import type { LengthUnit } from '#shared/length.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { checkPiece, checkTop, checkWelt, checkWidths, listFaults } from '../top-treatment/check-top.ts';
import type { FaultList } from '../top-treatment/check-top.ts';
import { flatAskedMilli, gatherWidths } from '../top-treatment/gather-widths.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import { facePlain, flatAddends, gatheredPiece, layerPlain, pocketOf } from './measure-valance.ts';
import { markPleats, markScallops } from './sheet-valance.ts';

export function checkValance(
  valance: ValanceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: (id: string) => Cloth | null,
): Fault[] {
  const list = listFaults(valance.key, unit, 'valance');
  checkTop(valance, list);
  checkHang(valance, list);
  checkWelt('welt', valance.welt, valance.practice.valance.weltStrip, clothOf, list);
  const full = isFull(valance) ? gatheredPiece(valance) : null;
  const { fullnessOver } = valance.practice;
  const flat = full ? flatAskedMilli(full, fullnessOver) / 1000 + 2 * full.sideHem : addUp(flatAddends(valance));
  checkWidths(flat, [face, ...behind], valance, list);
  if (list.faults.length > 0) return list.faults;
  if (full && gatherWidths(full, face.usableWidth, valance.practice).made2 <= 0)
    list.tell('practice.valance.sideHem', 'takes all the cloth', 'give the turn of one edge, such as 1 in');
  for (const layer of behind)
    if (layerPlain(valance, layer, behind) <= 0)
      list.tell(
        'practice.valance',
        `makes ${layer.name} shorter than nothing`,
        'give about 1/2 in for what it hangs shorter',
      );
  checkPiece(face, facePlain(valance, behind), list);
  for (const layer of behind) checkPiece(layer, layerPlain(valance, layer, behind), list);
  checkPleats(valance, list);
  checkScallops(valance, list);
  return list.faults;
}

function checkHang(valance: ValanceTreatment, { tell, say }: FaultList): void {
  const { hang, finishedLength } = valance;
  if (hang.by === 'board') {
    if (hang.depth === 0) tell('board.depth', 'is 0', 'give the depth of the board, such as 3 1/2 in');
    return;
  }
  if (hang.diameter === 0) tell('rod.diameter', 'is 0', 'measure the rod');
  const top = hang.header + pocketOf(valance);
  if (finishedLength > 0 && top >= finishedLength)
    tell(
      'rod',
      `header and pocket of ${say(top)} are as long as the valance`,
      'give the finished length with header and pocket in it',
    );
}

/** The folds behind two pleats must not lie over each other. */
function checkPleats(valance: ValanceTreatment, { tell, say }: FaultList): void {
  const pleats = markPleats(valance);
  if (!pleats) return;
  if (pleats.count < 2 && valance.style === 'box-pleated' && valance.pleatsAt === 'corners')
    tell('pleats', 'at the corners are at least two', 'give 2 or more, or place them between');
  const room = pleats.count > 1 ? pleats.space : 2 * pleats.space;
  if (2 * room < pleats.takeUp)
    tell(
      'pleats',
      `stand ${say(pleats.space)} apart, and each takes ${say(pleats.takeUp)}`,
      'give fewer pleats, or less cloth in each',
    );
}

function checkScallops(valance: ValanceTreatment, { tell, say }: FaultList): void {
  const scallops = markScallops(valance, 0);
  if (!scallops) return;
  const below = valance.hang.by === 'rod' ? valance.hang.header + pocketOf(valance) : 0;
  if (scallops.depth === 0)
    tell('scallopDepth', 'is 0', 'give how deep the scallops are cut, or choose tailored or gathered');
  if (scallops.depth + below >= valance.finishedLength)
    tell(
      'scallopDepth',
      `${say(scallops.depth)} cuts through the valance`,
      'give less than its length below the heading',
    );
}
