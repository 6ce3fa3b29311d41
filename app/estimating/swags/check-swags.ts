/** Refuses swags that cannot hang or be cut, each with field, fault and remedy. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { SwagsTreatment, Tail } from '#shared/treatments/swags.ts';
import { checkCloth, checkPiece, checkTop, checkWelt, checkWidths, listFaults } from '../top-treatment/check-top.ts';
import type { FaultList } from '../top-treatment/check-top.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import { cutSwags } from './lay-swags.ts';
import { countSwags } from './measure-swags.ts';
import { pieceOnBias } from './piece-on-bias.ts';

/** More swags or pleats than any board takes. */
const MOST_SWAGS = 100;
const MOST_PLEATS = 100;

export function checkSwags(
  swags: SwagsTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  unit: LengthUnit,
  clothOf: (id: string) => Cloth | null,
): Fault[] {
  const list = listFaults(swags.key, unit, 'swags');
  const { tell, say, section } = list;
  checkTop(swags, list);
  checkWelt('welt', swags.welt, swags.practice.swags.weltStrip, clothOf, list);
  const contrast = checkCloth('contrast', swags.contrast, clothOf, list);
  if (countSwags(swags) > MOST_SWAGS)
    tell(
      `${section}.widestSwag`,
      `${say(swags.practice.swags.widestSwag)} makes more than ${MOST_SWAGS} swags`,
      'give the widest swag, such as 44 in',
    );
  if (swags.cascades) checkTail('cascades', swags.cascades, swags, list);
  if (swags.jabots) checkTail('jabots', swags.jabots, swags, list);
  if (list.faults.length > 0) return list.faults;
  const cut = cutSwags(swags);
  const widest = Math.max(cut.flat.width, cut.flat.depth, ...cut.tails.flatMap(({ flat }) => [flat.left, flat.right]));
  checkWidths(widest, [face, ...behind, ...(contrast ? [contrast] : [])], swags, list);
  // Beyond a believable number of widths the strips of a bias cut are not even counted.
  if (list.faults.length > 0) return list.faults;
  const longest = Math.max(
    cut.onBias ? pieceOnBias(cut.flat, face).length : cut.flat.depth,
    ...cut.tails.map(({ length }) => addUp(length)),
  );
  checkPiece(face, longest, list);
  return list.faults;
}

function checkTail(
  field: 'cascades' | 'jabots',
  tail: Tail,
  swags: SwagsTreatment,
  { tell, say, section }: FaultList,
): void {
  if (tail.longest === 0) tell(`${field}.longest`, 'is 0', 'give its longest point');
  if (tail.shortest > tail.longest)
    tell(
      `${field}.shortest`,
      `${say(tail.shortest)} is longer than its longest point`,
      'give the shorter of the two here',
    );
  if (tail.width === 0) tell(`${field}.width`, 'is 0', 'give the finished width of its face');
  if (tail.width > swags.width)
    tell(`${field}.width`, `${say(tail.width)} is wider than the board`, 'give the finished width of one');
  const { pleatFace } = swags.practice.swags;
  if (tail.pleats === null && tail.width > MOST_PLEATS * pleatFace)
    tell(
      `${section}.pleatFace`,
      `${say(pleatFace)} makes more than ${MOST_PLEATS} pleats`,
      'give the face of one, such as 2 1/2 in',
    );
}
