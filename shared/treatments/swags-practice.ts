/** The decorator's practice for swags, cascades and jabots, with documented defaults for inch and metric households. */
import type { LengthUnit } from '../length.ts';
import type { Thousandths } from '../practice.ts';
import { BOARD_CHOICES, BOARD_LENGTHS } from './board-practice.ts';
import type { BoardChoices } from './board-practice.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';

export const SWAGS_LENGTHS = {
  ...BOARD_LENGTHS,
  widthStep: { inch: 1, centimetre: 1, says: 'The width of an overlapped swag is taken up to this; 0 leaves it.' },
  widestSwag: { inch: 44, centimetre: 110, says: 'The widest swag, where their number is not given.' },
  boardTurn: { inch: 3.5, centimetre: 9, says: 'Cloth of a swag on top of the board (from memory).' },
  seam: { inch: 0.5, centimetre: 1.5, says: 'Seam of face and lining at one edge (from memory).' },
  fold: { inch: 3, centimetre: 7.5, says: 'Finished depth that one fold takes: 6 to 7 folds in 16 to 20 in.' },
  biasWidest: { inch: 54, centimetre: 137, says: 'A wider swag is cut on the straight grain.' },
  biasDeepest: { inch: 25, centimetre: 63.5, says: 'A deeper swag is cut on the straight grain.' },
  tailAllowance: { inch: 2, centimetre: 5, says: 'Added to the longest point of one cascade or jabot.' },
  pleatFace: { inch: 2.5, centimetre: 6, says: 'Usual face of one knife pleat of a tail (from memory).' },
  pleatDepth: { inch: 2.5, centimetre: 6, says: 'Depth of one knife pleat of a tail (from memory).' },
} as const satisfies LengthTable;

export interface SwagsPractice extends LengthsOf<typeof SWAGS_LENGTHS>, BoardChoices {
  /** Flat cloth of a swag along its lower edge, over the finished width. */
  readonly flatWidth: Thousandths;
  /** Flat cloth of a swag down its middle, over the finished depth. */
  readonly flatDepth: Thousandths;
  /** The top of a swag between its folds, as a share of the finished width. */
  readonly topShare: Thousandths;
}

/**
 * Ratios from memory, set so that an average swag (44 in wide, 18 deep) takes the 2 yards that a trade workroom prints
 * for it. Top half the width by default (a published pattern article).
 */
export const SWAGS_CHOICES = { ...BOARD_CHOICES, flatWidth: 1400, flatDepth: 2000, topShare: 500 } as const;

export function defaultSwagsPractice(unit: LengthUnit): SwagsPractice {
  return { ...defaultLengths(SWAGS_LENGTHS, unit), ...SWAGS_CHOICES };
}
