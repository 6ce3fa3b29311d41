/** The sheet of each kind: the face of this folder. */
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import { BED_SKIRT_SHEET } from './bed-skirt.ts';
import { CORNICE_SHEET } from './cornice.ts';
import { PANELS_EXTRAS_SHEET } from './panels-extras.ts';
import { ROMAN_SHADE_SHEET } from './roman-shade.ts';
import type { KindSheet } from './sheet.ts';
import { SHOWER_CURTAIN_SHEET } from './shower-curtain.ts';
import { SWAGS_SHEET } from './swags.ts';
import { VALANCE_SHEET } from './valance.ts';

/** Of panels: what only some have; their own lines stand in `parts/PanelLines.svelte`. */
export const KIND_SHEETS: Readonly<Record<TreatmentKind, KindSheet>> = {
  panels: PANELS_EXTRAS_SHEET,
  valance: VALANCE_SHEET,
  cornice: CORNICE_SHEET,
  swags: SWAGS_SHEET,
  'roman-shade': ROMAN_SHADE_SHEET,
  'bed-skirt': BED_SKIRT_SHEET,
  'shower-curtain': SHOWER_CURTAIN_SHEET,
};
