/** A bed skirt round three sides of a bed: gathered, tailored with corner pleats, or box-pleated. */
import type { LengthUnit, Ticks } from '../length.ts';
import type { Practice, Thousandths } from '../practice.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';
import type { TreatmentBase } from './treatment-base.ts';

export const BED_SKIRT_STYLES = ['gathered', 'tailored', 'box-pleated'] as const;
export type BedSkirtStyle = (typeof BED_SKIRT_STYLES)[number];

/** The side of the bed without a skirt: the head, or the long side of a day bed. */
export const WALL_SIDES = ['head', 'long-side'] as const;

/**
 * How the strips lie: `least` takes less cloth, `upright` drops along the bolt, `sideways` long strips along the selvage,
 * with fewer seams and as a rule more cloth.
 */
export const STRIP_RUNS = ['least', 'upright', 'sideways'] as const;

interface BedSkirtBase extends TreatmentBase {
  readonly kind: 'bed-skirt';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly bedSkirt: BedSkirtPractice };
  /** The platform (box spring) that it hangs from. */
  readonly bed: { readonly width: Ticks; readonly length: Ticks };
  /** Finished, from the top of the platform to the hem, floor clearance taken. */
  readonly drop: Ticks;
  readonly against: (typeof WALL_SIDES)[number];
  readonly strips: (typeof STRIP_RUNS)[number];
  /** Made in three pieces, open at the two corners for bed posts. */
  readonly splitCorners: boolean;
  /** Id of the platform (deck) cloth; null: no deck, it is held by hook and loop tape. */
  readonly deck: string | null;
}

export interface GatheredBedSkirt extends BedSkirtBase {
  readonly style: 'gathered';
  readonly fullness: Thousandths;
}
export interface TailoredBedSkirt extends BedSkirtBase {
  readonly style: 'tailored';
  /** Pleats besides those of the corners, all sides together. */
  readonly middlePleats: number;
}
export interface BoxPleatedBedSkirt extends BedSkirtBase {
  readonly style: 'box-pleated';
  /** Flat cloth over finished: 3 leaves no gap between boxes. */
  readonly fullness: Thousandths;
}
export type BedSkirtTreatment = GatheredBedSkirt | TailoredBedSkirt | BoxPleatedBedSkirt;

export const BED_SKIRT_LENGTHS = {
  hem: { inch: 2, centimetre: 5, says: 'Bottom hem in total.' },
  topSeam: { inch: 0.5, centimetre: 1.5, says: 'Taken by the seam to the deck.' },
  endHem: { inch: 2, centimetre: 5, says: 'Turned at each open end of a piece, in total.' },
  cornerPleat: { inch: 18, centimetre: 46, says: 'Cloth inside one corner pleat.' },
  middlePleat: { inch: 18, centimetre: 46, says: 'Cloth inside one other pleat of a tailored skirt (from memory).' },
  boxPleat: { inch: 6, centimetre: 15, says: 'Visible width of a box pleat; whole pleats re-space it (from memory).' },
  underlay: { inch: 12, centimetre: 30, says: 'Finished width of the piece behind an open corner (from memory).' },
  deckSeam: { inch: 0.5, centimetre: 1.5, says: 'Seam of the deck at each skirted side.' },
  deckHem: { inch: 1, centimetre: 2.5, says: 'Hem of the deck at the side without a skirt (from memory).' },
  liningHem: { inch: 2, centimetre: 5, says: 'Bottom hem of the lining in total (from memory).' },
  liningShorter: { inch: 0.5, centimetre: 1.5, says: 'How much shorter the lining hangs (from memory).' },
} as const satisfies LengthTable;

export interface BedSkirtPractice extends LengthsOf<typeof BED_SKIRT_LENGTHS> {
  /** In print 2 to 3. */
  readonly gatheredFullness: Thousandths;
  readonly boxFullness: Thousandths;
}

/** Defaults that are not lengths: the same in both unit systems. */
export const BED_SKIRT_RATIOS = { gatheredFullness: 2500, boxFullness: 3000 } as const;

export function defaultBedSkirtPractice(unit: LengthUnit): BedSkirtPractice {
  return { ...defaultLengths(BED_SKIRT_LENGTHS, unit), ...BED_SKIRT_RATIOS };
}
