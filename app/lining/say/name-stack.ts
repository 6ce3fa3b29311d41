/** What a client calls a stack. Named by its families, so that her own lining reads like the generic one. */
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { INTERLINING_FAMILIES } from '#shared/words.ts';
import type { InterliningFamily, LiningFamily } from '#shared/words.ts';

const LINING_NAMES: Readonly<Record<LiningFamily, string>> = {
  standard: 'Standard lining',
  combination: 'Combination lining',
  'dim-out': 'Dim-out lining',
  'blackout-3-pass': 'Three-pass blackout',
  'blackout-soft': 'Soft blackout',
  'blackout-napped': 'Napped blackout',
  'black-sateen': 'Black cloth',
  thermal: 'Thermal lining',
  sheer: 'Sheer lining',
  contrast: 'Contrast lining',
};

/** Names that stand for the whole when the lining is not the plain one. */
const INTERLINED_NAMES: Readonly<Partial<Record<LiningFamily, string>>> = {
  standard: 'Interlined',
  'blackout-3-pass': 'Interlined blackout',
  'blackout-soft': 'Interlined soft blackout',
  'blackout-napped': 'Interlined blackout',
};

/** `Unlined`, `Standard lining`, `Ivory lining`, `Interlined`, `Interlined with black cloth`; room to street. */
export function nameStack(face: FaceCloth, behind: readonly BackCloth[]): string {
  const linings = behind.flatMap((cloth) => (cloth.role === 'lining' ? [cloth] : []));
  const interlined = behind.length > linings.length;
  const black = linings.some((cloth) => cloth.family === 'black-sateen');
  const plain = linings.filter((cloth) => cloth.family !== 'black-sateen');
  const main = plain[plain.length - 1] ?? linings[linings.length - 1];
  if (main === undefined) return interlined ? 'Interlined, no lining' : unlinedName(face);
  const name = interlined ? interlinedName(main.family, thickest(behind)) : liningName(main.family, main.shade);
  return black && main.family !== 'black-sateen' ? `${name} with black cloth` : name;
}

function unlinedName(face: FaceCloth): string {
  return face.family === 'sheer' ? 'Unlined sheer' : 'Unlined';
}

function thickest(behind: readonly BackCloth[]): InterliningFamily {
  const families = behind.flatMap((cloth) => (cloth.role === 'interlining' ? [cloth.family] : []));
  return [...INTERLINING_FAMILIES].reverse().find((family) => families.includes(family)) ?? 'medium';
}

function interlinedName(family: LiningFamily, thickness: InterliningFamily): string {
  const name = INTERLINED_NAMES[family] ?? `Interlined, ${LINING_NAMES[family].toLowerCase()}`;
  if (thickness === 'medium') return name;
  return `${thickness === 'light' ? 'Lightly' : 'Thickly'} ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

function liningName(family: LiningFamily, shade: string | null): string {
  const name = LINING_NAMES[family];
  if (shade === 'ivory') return family === 'standard' ? 'Ivory lining' : `${name}, ivory`;
  return name;
}
