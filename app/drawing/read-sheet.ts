/** The named measures of a take-off by kind. Each estimator writes the sheet of its own kind into its result. */
import type { TierResult } from '#shared/result.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';
import type { BedSkirtSheet } from '#app/estimating/bed-skirt/bed-skirt-sheet.ts';
import type { CorniceSheet } from '#app/estimating/cornice/estimate-cornice.ts';
import type { RomanShadeSheet } from '#app/estimating/roman-shade/roman-shade-sheet.ts';
import type { ShowerCurtainSheet } from '#app/estimating/shower-curtain/estimate-shower-curtain.ts';
import type { SwagsSheet } from '#app/estimating/swags/estimate-swags.ts';
import type { ValanceSheet } from '#app/estimating/valance/sheet-valance.ts';

export interface Sheets {
  readonly valance: ValanceSheet;
  readonly cornice: CorniceSheet;
  readonly swags: SwagsSheet;
  readonly 'roman-shade': RomanShadeSheet;
  readonly 'bed-skirt': BedSkirtSheet;
  readonly 'shower-curtain': ShowerCurtainSheet;
}

/** A measure that tells each sheet from the others. */
const MARKS: { readonly [Kind in keyof Sheets]: keyof Sheets[Kind] } = {
  valance: 'folds',
  cornice: 'padding',
  swags: 'swagCut',
  'roman-shade': 'rings',
  'bed-skirt': 'perimeter',
  'shower-curtain': 'eyelets',
};

/** Null before there is a result, or when the result is of another kind. */
export function readSheet<Kind extends keyof Sheets>(kind: Kind, made: TierResult | null): Sheets[Kind] | null {
  const sheet = made?.sheet ?? null;
  return sheet !== null && isSheet(kind, sheet) ? sheet : null;
}

function isSheet<Kind extends keyof Sheets>(kind: Kind, sheet: object): sheet is Sheets[Kind] {
  return MARKS[kind] in sheet;
}

export function hasSheet(kind: TreatmentKind): kind is keyof Sheets {
  return kind in MARKS;
}
