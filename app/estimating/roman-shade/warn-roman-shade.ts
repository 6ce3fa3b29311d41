/** What is unlikely or asks for a second look in a Roman shade, and is made all the same. Of cords the advice speaks. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { Say } from '../say.ts';
import type { ShadeSize } from './size-shade.ts';

const USUAL_READINGS = 3;

export function warnRomanShade(
  shade: RomanShadeTreatment,
  made: ShadeSize,
  stack: Ticks,
  behind: readonly BackCloth[],
  say: Say,
): Warning[] {
  const warnings: Warning[] = [];
  const warn = (field: string, says: string): void => {
    warnings.push({ path: at(shade.key, field), says });
  };
  const { size } = shade;
  const own = shade.practice.romanShade;
  if (size.basis === 'opening') {
    if (size.widths.length < USUAL_READINGS)
      warn('size.widths', 'Fewer than three readings: measure the width at top, middle and bottom.');
    if (size.diagonals !== null) {
      const apart = Math.abs(size.diagonals[0] - size.diagonals[1]);
      if (apart > own.diagonalTolerance)
        warn(
          'size.diagonals',
          `The diagonals are ${say.length(apart)} apart: the frame is out of square, mount it outside.`,
        );
    }
    if (size.depth !== null && size.depth < own.boardDepth)
      warn(
        'size.depth',
        `The frame is ${say.length(size.depth)} deep, the board ${say.length(own.boardDepth)}: it stands out.`,
      );
    const bulky = behind.some((layer) => layer.role === 'interlining' || isBlackout(layer));
    if (bulky && !shade.thick)
      warn(
        'thick',
        `The layers behind are bulky: ${say.length(own.thickDeduction)} off the width is usual for thick cloth.`,
      );
  }
  if (shade.mount.where !== 'inside' && shade.returns.left + shade.returns.right === 0)
    warn('return', 'An outside mount without side returns shows its board and cords from the side.');
  if (2 * stack > made.length)
    warn('size', `Raised, it still hangs ${say.length(stack)} of ${say.length(made.length)} deep.`);
  return warnings;
}
