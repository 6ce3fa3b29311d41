/** Of what is added to the length of a shade, how much lies above its finished top: from there its pattern is placed. */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';

/** Never more than what is added altogether. */
export function topOfShade(shade: RomanShadeTreatment, lined: boolean): Ticks {
  const own = shade.practice.romanShade;
  const usual = lined ? own.linedLength : own.unlinedLength;
  const added = shade.style === 'soft-fold' ? own.softFoldAdded : usual;
  return ticks(Math.min(added, lined ? own.linedTop : own.unlinedTop));
}

/** The same of a valance of its own. */
export function topOfOwnValance({ practice }: RomanShadeTreatment): Ticks {
  const { valanceAdded, valanceTop } = practice.romanShade;
  return ticks(Math.min(valanceAdded, valanceTop));
}
