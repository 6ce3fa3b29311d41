/** Refuses a bed skirt that no cloth could make, each with field, fault and remedy, before any arithmetic is tried. */
import type { Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import { upForShrinkage } from '../round.ts';
import { deckSize } from './cut-deck.ts';
import { boxPleatsOn, measureSkirt } from './measure-skirt.ts';

/** More pleats than any side of a bed has. */
const MOST_PLEATS = 200;

/** `deck` is the cloth that the skirt names, or null. */
export function checkBedSkirt(
  skirt: BedSkirtTreatment,
  face: FaceCloth,
  behind: readonly Cloth[],
  deck: Cloth | null,
  unit: LengthUnit,
): Fault[] {
  const faults: Fault[] = [];
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const tell = (field: string, wrong: string, right: string): void => {
    faults.push({ path: at(skirt.key, field), wrong, right });
  };
  const { bed, drop, practice } = skirt;
  const own = practice.bedSkirt;
  if (bed.width <= 0) tell('bed.width', 'is zero', 'give the width of the platform');
  if (bed.length <= 0) tell('bed.length', 'is zero', 'give the length of the platform');
  if (drop <= 0) tell('drop', 'is zero', 'give the drop from the top of the platform to the hem');
  if (skirt.deck !== null && deck === null)
    tell('deck', `"${skirt.deck}" is not listed under cloth`, 'list it under cloth, or leave the deck out');
  if (skirt.style !== 'tailored' && skirt.fullness < 1000)
    tell('fullness', 'is less than flat cloth', 'give 1 or more, for example 2.5');
  if (skirt.style === 'box-pleated' && own.boxPleat <= 0)
    tell('practice.bedSkirt.boxPleat', 'is zero', 'give the visible width of a pleat, such as 6 in');
  if (drop + own.topSeam + own.liningHem - own.liningShorter <= 0)
    tell('practice.bedSkirt.liningShorter', 'is more than the lining is long', 'give about 1/2 in');
  if (faults.length > 0) return faults;
  if (skirt.style === 'box-pleated' && boxPleatsOn(skirt, longestSide(skirt)) > MOST_PLEATS)
    tell(
      'practice.bedSkirt.boxPleat',
      `${say(own.boxPleat)} makes more than ${MOST_PLEATS} pleats on one side`,
      'give the visible width of a pleat, such as 6 in',
    );
  const { strip, dropAsked } = measureSkirt(skirt);
  if (skirt.strips === 'sideways') {
    const cutDrop = upForShrinkage(dropAsked, practice.shrinkage);
    if (!face.railroad)
      tell(
        'strips',
        `are sideways, and ${face.name} may not run so`,
        'mark the cloth "railroad": true, or give "upright"',
      );
    else if (cutDrop > face.usableWidth)
      tell('strips', `are sideways, and ${say(cutDrop)} does not fit across ${face.name}`, 'give "upright"');
  }
  for (const cloth of [face, ...behind]) checkWidths(cloth, cloth === face ? 'face' : 'stacks', strip, practice.seam);
  if (deck) checkWidths(deck, 'deck', Math.max(deckSize(skirt).long, deckSize(skirt).wide), own.deckSeam);
  return faults;

  function checkWidths(cloth: Cloth, field: string, needed: number, seam: number): void {
    const grows = cloth.usableWidth - 2 * seam;
    if (grows <= 0)
      tell(
        field === 'deck' ? 'practice.bedSkirt.deckSeam' : 'practice.seam',
        `two seams of ${say(seam)} take the whole width of ${cloth.name}`,
        'give what one join loses, such as 1/2 in',
      );
    else if (needed / grows > MOST_WIDTHS)
      tell(field, `${cloth.name} would take more than ${MOST_WIDTHS} widths`, 'measure bed and cloth again');
  }
}

function longestSide(skirt: BedSkirtTreatment): BedSkirtTreatment['drop'] {
  return skirt.bed.length > skirt.bed.width ? skirt.bed.length : skirt.bed.width;
}
