/** One step that says how many widths a layer takes, and why. */
import type { Cloth } from '#shared/cloth.ts';
import type { Practice } from '#shared/practice.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { CentredCloth } from '../centre-motif.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import type { LaidWidths } from './laid-widths.ts';

const ROUNDING = {
  up: 'up to whole widths',
  'half-up': 'up to half widths',
  'nearest-half': 'to the nearest half width',
} as const;

export function workWidths(
  id: string,
  label: string,
  cloth: Cloth,
  widths: LaidWidths,
  practice: Practice,
  say: Say,
): WorkingStep {
  const quotient = (flat: number): string =>
    `${say.length(flat)} ÷ ${say.length(cloth.usableWidth)} = ${say.number(flat / cloth.usableWidth)}`;
  switch (widths.by) {
    case 'seams': {
      const { seamed, total } = widths;
      const count = String(seamed.widths);
      if (widths.centred) return workCentred(id, label, widths.centred, widths, practice, say);
      if (seamed.widths === 1) return step(id, label, `${quotient(total)}, one width`, count, 'no seam');
      const seams = practice.seam > 0 ? `, ${seamed.joins} seams of 2 × ${say.length(practice.seam)} counted in` : '';
      return step(
        id,
        label,
        `${quotient(total)}, up${seams}: ${seamed.whole} whole in the middle and 2 sides of ${say.length(seamed.side)}`,
        count,
        'never a seam in the middle',
      );
    }
    case 'gathers':
      return step(
        id,
        label,
        `${quotient(widths.flat)}, ${ROUNDING[practice.widthRounding]}`,
        say.widths(widths.gathered.halves),
        `practice: ${ROUNDING[practice.widthRounding]}, hems and seams ${practice.hemsInWidth ? 'counted in' : 'left out'}`,
      );
    case 'same-widths':
      return step(id, label, 'as wide as the face', say.widths(widths.halves), 'seams line up with the face');
    case 'own-widths':
      return step(
        id,
        label,
        `${quotient(widths.flat)}, up`,
        say.widths(widths.halves),
        'on its own width: its seams do not line up with the face',
      );
    case 'sideways':
      return step(
        id,
        `${label}, sideways`,
        `the cut of ${say.length(widths.across)} fits across ${say.length(cloth.usableWidth)}: no seams`,
        say.length(widths.run),
        'less cloth this way',
      );
  }
}

/** A motif stands in the middle: each width gives less than it has. */
function workCentred(
  id: string,
  label: string,
  centred: CentredCloth,
  { seamed, total }: Pick<Extract<LaidWidths, { by: 'seams' }>, 'seamed' | 'total'>,
  practice: Practice,
  say: Say,
): WorkingStep {
  const count = String(seamed.widths);
  if (seamed.widths === 1)
    return step(id, label, `${say.length(total)} about a motif in one width`, count, 'no seam; practice and cloth');
  const seams = practice.seam > 0 ? `, ${seamed.joins} seams of 2 × ${say.length(practice.seam)} counted in` : '';
  const between = seamed.whole > 1 ? ` and ${seamed.whole - 1} of ${say.length(centred.between)} beside it` : '';
  const split = seamed.widths === seamed.whole + 1 ? ', both out of one width' : '';
  return step(
    id,
    label,
    `${say.length(total)}: ${say.length(centred.centre)} about a motif in the middle${between}, 2 sides of ${say.length(seamed.side)}${split}${seams}`,
    count,
    'seams equally far from the motif, every piece reads on (common practice)',
  );
}
