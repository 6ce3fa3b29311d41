/** Every kind of treatment. A new kind is one more variant here, and the compiler names who must answer for it. */
import type { BedSkirtTreatment } from './bed-skirt.ts';
import type { CorniceTreatment } from './cornice.ts';
import type { PanelsTreatment } from './panels.ts';
import type { RomanShadeTreatment } from './roman-shade.ts';
import type { ShowerCurtainTreatment } from './shower-curtain.ts';
import type { SwagsTreatment } from './swags.ts';
import type { ValanceTreatment } from './valance.ts';

export type Treatment =
  | PanelsTreatment
  | ValanceTreatment
  | CorniceTreatment
  | SwagsTreatment
  | RomanShadeTreatment
  | BedSkirtTreatment
  | ShowerCurtainTreatment;
export type TreatmentKind = Treatment['kind'];

/** In the order shown. */
export const TREATMENT_KINDS = [
  'panels',
  'valance',
  'cornice',
  'swags',
  'roman-shade',
  'bed-skirt',
  'shower-curtain',
] as const satisfies readonly TreatmentKind[];
