/** Work that the price book has rates for besides making by the width: what it is called and what one unit of it is. */
import type { WrittenUnit } from './length.ts';

interface WorkWords {
  /** `each`, or by length of the finished treatment. */
  readonly per: 'each' | Extract<WrittenUnit, 'ft'>;
  readonly label: string;
  readonly says: string;
}

/** Rates under `labour`, by name. Making under a heading and interlining and blackout are by the width. */
export const WORKS = {
  installPerRod: { per: 'each', label: 'Putting up', says: 'Putting up one rod.' },
  installPerBoard: { per: 'each', label: 'Putting up boards', says: 'Putting up one board.' },
  installPerShade: { per: 'each', label: 'Putting up shades', says: 'Putting up one shade.' },
  valancePerFoot: {
    per: 'ft',
    label: 'Making the valance',
    says: 'Making a valance, by the foot or part of its finished width.',
  },
  cornicePerFoot: {
    per: 'ft',
    label: 'Making the cornice',
    says: 'Making a padded cornice, by the foot or part of its width.',
  },
  swag: { per: 'each', label: 'Making swags', says: 'Making one swag.' },
  cascade: { per: 'each', label: 'Making cascades', says: 'Making one cascade or jabot.' },
  romanShade: { per: 'each', label: 'Making the shade', says: 'Making one Roman shade.' },
  bedSkirtPerWidth: { per: 'each', label: 'Making the bed skirt', says: 'Making one width of a bed skirt.' },
  showerCurtainPerWidth: {
    per: 'each',
    label: 'Making the shower curtain',
    says: 'Making one width of a shower curtain.',
  },
  bandPerFoot: { per: 'ft', label: 'Sewing bands', says: 'Sewing a contrast band, by the foot or part.' },
} as const satisfies Readonly<Record<string, WorkWords>>;

export type WorkName = keyof typeof WORKS;
export const WORK_NAMES = Object.keys(WORKS) as readonly WorkName[];
