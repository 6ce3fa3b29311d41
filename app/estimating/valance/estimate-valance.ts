/** A valance from measurement to order, each step with its working. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import type { Advice } from '#shared/result.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { ticks } from '#shared/length.ts';
import { halvesUpToTick } from '../round.ts';
import { adviseDepth, adviseOver, adviseSideways } from '../top-treatment/advise-top.ts';
import { coverBoard, coverPiece } from '../top-treatment/cover-board.ts';
import { cutWelt, workWelt } from '../top-treatment/cut-welt.ts';
import { finishTop } from '../top-treatment/finish-top.ts';
import { addPieces } from '../top-treatment/lay-pieces.ts';
import { halvesOf } from '../top-treatment/laid-widths.ts';
import type { TopEstimate } from '../top-treatment/top-estimate.ts';
import type { EstimateGiven } from '../estimate.ts';
import { layValance } from './lay-valance.ts';
import type { LaidValance } from './lay-valance.ts';
import { finishedWidthOf } from './measure-valance.ts';
import { labourOfValance, partsOfValance, weltRun } from './parts-of-valance.ts';
import { sheetValance } from './sheet-valance.ts';
import type { ValanceSheet } from './sheet-valance.ts';
import { workFace, workLayer } from './work-valance.ts';
import { workSheet, workWeltRun } from './work-sheet.ts';

/** The take-off of one valance under one stack. `checkValance` must have found no fault. */
export function estimateValance(
  valance: ValanceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): TopEstimate<ValanceSheet> {
  const { say } = given;
  const { quantity, hang } = valance;
  const making = valance.practice.valance;
  const laid = layValance(valance, face, behind, given.massOf);
  const board = hang.by === 'board' ? { length: valance.width, depth: hang.depth } : null;
  const cover = board ? coverBoard(board, making, face, behind) : null;
  const welt = valance.welt === null ? null : given.clothOf(valance.welt);
  const run = ticks(weltRun(valance, laid.made2) * quantity);
  const main = [laid.face.parcel, ...laid.layers.map((layer) => layer.parcel)];
  const covered = cover ? addPieces(main, cover.cloth, [coverPiece(cover, quantity)]) : main;
  const parcels = welt ? addPieces(covered, welt, [cutWelt(run, welt, making)]) : covered;
  const sheet = sheetValance(valance, laid, cover);
  const finished = { width: finishedWidthOf(valance), length: valance.finishedLength };
  const taken = finishTop(parcels, valance.practice, say, given.massOf);
  return {
    finished,
    halfWidths: halvesOf(laid.face.widths),
    fullnessMade: laid.fullnessMade,
    madeWidth: halvesUpToTick(laid.made2),
    ...taken.figures,
    pleats: sheet.pleats ? { count: sheet.pleats.count, pleat: sheet.pleats.takeUp, space: sheet.pleats.space } : null,
    stackback: null,
    seamsLineUp: behind.every((layer) => layer.usableWidth === face.usableWidth),
    parts: partsOfValance(valance, laid, sheet),
    labour: labourOfValance(valance, face, behind, taken.main, given.billableWidth),
    offer: null,
    sheet,
    advice: adviseValance(valance, face, laid, given),
    working: [
      ...workFace(valance, face, behind, laid, say),
      ...behind.flatMap((layer, index) => workLayer(valance, layer, behind, index, laid, say)),
      ...workSheet(valance, sheet, say),
      ...(welt ? [workWeltRun(valance, laid.made2, run, say), workWelt('welt', run, welt, making, say)] : []),
      ...taken.working,
    ],
  };
}

function adviseValance(
  valance: ValanceTreatment,
  face: FaceCloth,
  laid: LaidValance,
  { say }: EstimateGiven,
): Advice[] {
  const { returns, hang } = valance;
  const making = valance.practice.valance;
  const long = hang.by === 'board' && Math.max(returns.left, returns.right) > hang.depth;
  const thin = isFull(valance) && laid.fullnessMade !== null && laid.fullnessMade * 1000 < valance.fullness * 0.9;
  return [
    ...adviseDepth('valance', valance.finishedLength, valance.dropOf, making, say),
    ...adviseSideways(face, laid.face, say),
    ...adviseOver(returns, valance.over, making.overClearance, say),
    ...(long
      ? [
          {
            rule: 'return-past-board',
            level: 'caution' as const,
            says: `The return is longer than the board of ${say.length(hang.depth)} is deep: nothing holds its end at the wall.`,
            rests: 'common practice: the return is the depth of the board',
          },
        ]
      : []),
    ...(thin
      ? [
          {
            rule: 'fullness-short',
            level: 'note' as const,
            says: `Hems and rounding leave ${say.number(laid.fullnessMade)} times of the ${say.number(valance.fullness / 1000, 3)} asked.`,
            rests: 'more than a tenth under what was asked',
          },
        ]
      : []),
    ...adviseMiddlePleat(valance),
    ...(isFull(valance) || face.repeat?.horizontal === null || !face.repeat || valance.pattern?.centred
      ? []
      : [
          {
            rule: 'motif-centred',
            level: 'note' as const,
            says: 'Centre a motif on the board, the seams equally far from it.',
            rests: 'common practice: a flat valance shows its pattern whole',
          },
        ]),
  ];
}

/** An odd number of pleats has one in the middle of the face: what stands there goes into it. */
function adviseMiddlePleat(valance: ValanceTreatment): Advice[] {
  if (valance.style !== 'box-pleated' || valance.pleats % 2 === 0 || valance.pattern?.centred !== true) return [];
  return [
    {
      rule: 'motif-in-pleat',
      level: 'note',
      says: 'An odd number of pleats has one in the middle, where the motif stands: inverted, it folds the motif away. An even number leaves the middle flat.',
      rests: 'common practice: a motif shows between pleats, or whole on the front of one',
    },
  ];
}
