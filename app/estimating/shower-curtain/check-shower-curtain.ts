/** Refuses a shower curtain that no cloth could make, each with field, fault and remedy, before any arithmetic is tried. */
import type { Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import { countEyelets, cutWidthOf, pieceFinished } from './count-shower-widths.ts';

/** More eyelets than any curtain has. */
const MOST_EYELETS = 500;

/** `liner` is the cloth of a liner that is made, or null. */
export function checkShowerCurtain(
  curtain: ShowerCurtainTreatment,
  face: FaceCloth,
  behind: readonly Cloth[],
  liner: Cloth | null,
  unit: LengthUnit,
): Fault[] {
  const faults: Fault[] = [];
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const tell = (field: string, wrong: string, right: string): void => {
    faults.push({ path: at(curtain.key, field), wrong, right });
  };
  const { practice } = curtain;
  const own = practice.showerCurtain;
  if (curtain.finishedWidth <= 0) tell('finishedWidth', 'is zero', 'give the finished width, for example 72');
  if (curtain.finishedLength <= 0) tell('finishedLength', 'is zero', 'give the length from the top to the hem');
  if (curtain.liner.from === 'cloth' && liner === null)
    tell('liner', `"${curtain.liner.cloth}" is not listed under cloth`, 'list it under cloth, or give "bought"');
  if (curtain.eyelets === null && own.eyeletSpacing <= 0)
    tell('practice.showerCurtain.eyeletSpacing', 'is zero', 'give the width for one eyelet, such as 6 in');
  if (faults.length > 0) return faults;
  if (2 * own.eyeletInset >= pieceFinished(curtain))
    tell(
      'practice.showerCurtain.eyeletInset',
      `two of ${say(own.eyeletInset)} leave nothing of ${say(pieceFinished(curtain))}`,
      'give less, or measure the width again',
    );
  if (countEyelets(curtain) > MOST_EYELETS)
    tell(
      'finishedWidth',
      `${say(curtain.finishedWidth)} would take more than ${MOST_EYELETS} eyelets`,
      'measure again',
    );
  if (curtain.finishedLength + own.topHem + own.liningHem - own.liningShorter <= 0)
    tell('practice.showerCurtain.liningShorter', 'is more than the lining is long', 'give about 1 in');
  if (curtain.finishedLength + own.topHem + own.bottomHem - own.linerShorter <= 0)
    tell('practice.showerCurtain.linerShorter', 'is more than the liner is long', 'give about 1 in');
  for (const cloth of [face, ...behind, ...(liner ? [liner] : [])]) {
    const grows = cloth.usableWidth - 2 * practice.seam;
    if (grows <= 0) {
      const wrong = `two seams of ${say(practice.seam)} take the whole width of ${cloth.name}`;
      tell('practice.seam', wrong, 'give what one join loses, such as 1/2 in');
    } else if (cutWidthOf(curtain, own.sideHem) / grows > MOST_WIDTHS)
      tell(
        'finishedWidth',
        `${cloth.name} would take more than ${MOST_WIDTHS} widths`,
        'measure curtain and cloth again',
      );
  }
  return faults;
}
