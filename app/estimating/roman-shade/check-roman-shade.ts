/** Refuses a Roman shade that no cloth could make, each with field, fault and remedy, before any arithmetic is tried. */
import type { Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { LengthUnit } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import { valanceWidth } from './cut-shade.ts';
import { countColumns, countRows, insetOf, usualRowSpacing } from './place-rings.ts';
import { fitsOneWidth } from './piece-width.ts';
import { sizeShade } from './size-shade.ts';
import type { ShadeSize } from './size-shade.ts';

/** More rows or columns than any shade has. */
const MOST_ROWS = 200;

type Tell = (field: string, wrong: string, right: string) => void;

export function checkRomanShade(
  shade: RomanShadeTreatment,
  face: FaceCloth,
  behind: readonly Cloth[],
  unit: LengthUnit,
): Fault[] {
  const faults: Fault[] = [];
  const say = (value: number): string => formatLengthWithUnit(value, unit);
  const tell: Tell = (field, wrong, right) => {
    faults.push({ path: at(shade.key, field), wrong, right });
  };
  checkMount(shade, tell);
  checkSize(shade, tell, say);
  if (faults.length > 0) return faults;
  const size = sizeShade(shade);
  checkMaking(shade, size, tell, say);
  checkCloth(shade, size, face, behind, tell, say);
  if (faults.length === 0) checkRings(shade, size, tell, say);
  return faults;
}

function checkMount(shade: RomanShadeTreatment, tell: Tell): void {
  const inside = shade.mount.where === 'inside';
  if (!inside && shade.size.basis === 'opening')
    tell('size.basis', 'is "opening" for a shade in front of the wall', 'give "finished" with width and length');
  if (inside && shade.returns.left + shade.returns.right > 0)
    tell('return', 'is given for a shade inside a frame', 'leave it out: the frame closes its sides');
  if (shade.style === 'relaxed' && shade.ribs === 'rows')
    tell('ribs', 'stand in the rows of a relaxed shade', 'give "none": ribs keep it from dipping');
  if (shade.style === 'relaxed' && shade.columns !== null && shade.columns !== 2)
    tell('columns', `are ${shade.columns} on a relaxed shade`, 'give 2 or leave it out: it dips between two');
}

function checkSize(shade: RomanShadeTreatment, tell: Tell, say: (value: number) => string): void {
  const { size } = shade;
  if (size.basis === 'finished') {
    if (size.width <= 0) tell('size.width', 'is zero', 'give the finished width of the shade');
    if (size.length <= 0) tell('size.length', 'is zero', 'give the length from the top of the board to the hem');
    return;
  }
  const made = size.widths.length > 0 && size.lengths.length > 0 ? sizeShade(shade) : { width: 0, length: 0 };
  if (size.widths.length === 0 || Math.min(...size.widths) <= 0)
    tell('size.widths', 'hold a reading of zero', 'give the width at top, middle and bottom');
  else if (made.width <= 0)
    tell('size.widths', `are no more than the deduction, ${say(Math.min(...size.widths))}`, 'measure the frame again');
  if (size.lengths.length === 0 || Math.min(...size.lengths) <= 0)
    tell('size.lengths', 'hold a reading of zero', 'give the length at left, middle and right');
  else if (made.length <= 0) tell('size.lengths', 'are no more than the deduction', 'measure the frame again');
}

function checkMaking(shade: RomanShadeTreatment, size: ShadeSize, tell: Tell, say: (value: number) => string): void {
  const own = shade.practice.romanShade;
  if (shade.valance !== null && shade.valance.depth <= 0)
    tell('valance.depth', 'is zero', 'give its finished depth, or leave the valance out');
  if (shade.valance !== null && shade.valance.depth > size.length)
    tell(
      'valance.depth',
      `${say(shade.valance.depth)} is deeper than the shade is long`,
      `give ${say(size.length)} or less`,
    );
  if (own.rowRule === 'head-room' && own.headRoom >= size.length)
    tell('practice.romanShade.headRoom', `${say(own.headRoom)} takes the whole length`, 'give about 3 in');
  if (usualRowSpacing(shade, size) <= 0)
    tell('practice.romanShade.rowSpacing', 'is zero', 'give the usual space between two rows, such as 6 in');
  if (own.columnSpacing <= 0)
    tell('practice.romanShade.columnSpacing', 'is zero', 'give the greatest space between columns, such as 12 in');
  if (2 * insetOf(shade) >= size.width)
    tell(
      shade.style === 'relaxed' ? 'practice.romanShade.relaxedInset' : 'practice.romanShade.edgeInset',
      `two of ${say(insetOf(shade))} leave nothing of ${say(size.width)}`,
      'give less, or measure the width again',
    );
}

function checkCloth(
  shade: RomanShadeTreatment,
  size: ShadeSize,
  face: FaceCloth,
  behind: readonly Cloth[],
  tell: Tell,
  say: (value: number) => string,
): void {
  const own = shade.practice.romanShade;
  const width = shade.valance ? valanceWidth(shade, size) : size.width;
  const added = behind.length > 0 ? own.linedWidth : own.unlinedWidth;
  for (const cloth of [face, ...behind]) {
    const field = cloth === face ? 'face' : 'stacks';
    const grows = cloth.usableWidth - 2 * own.seam;
    if (grows <= 0) {
      const wrong = `two seams of ${say(own.seam)} take the whole width of ${cloth.name}`;
      tell('practice.romanShade.seam', wrong, 'give what one join loses, such as 1/2 in');
    } else if ((width + added) / grows > MOST_WIDTHS)
      tell(field, `${say(width)} would take more than ${MOST_WIDTHS} widths`, 'measure shade and cloth again');
    else if (own.leastSide > cloth.usableWidth)
      tell('practice.romanShade.leastSide', `${say(own.leastSide)} is wider than ${cloth.name}`, 'give about 3 in');
  }
  const pieced = !fitsOneWidth(face, size.width, added, own);
  if (pieced && 2 * own.leastSide >= size.width + added)
    tell('face', `${say(face.usableWidth)} is too narrow for this shade`, 'choose a wider cloth');
}

function checkRings(shade: RomanShadeTreatment, size: ShadeSize, tell: Tell, say: (value: number) => string): void {
  if (countRows(shade, size) > MOST_ROWS)
    tell('rows', `${say(size.length)} would take more than ${MOST_ROWS} rows`, 'give fewer rows, or a wider spacing');
  if (countColumns(shade, size, []) > MOST_ROWS)
    tell('columns', `${say(size.width)} would take more than ${MOST_ROWS} columns`, 'give a wider spacing of columns');
}
