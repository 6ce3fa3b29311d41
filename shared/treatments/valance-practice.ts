/** The decorator's practice for valances, with documented defaults for inch and metric households. */
import type { LengthUnit } from '../length.ts';
import type { Thousandths } from '../practice.ts';
import { BOARD_CHOICES, BOARD_LENGTHS } from './board-practice.ts';
import type { BoardChoices } from './board-practice.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';

export const VALANCE_LENGTHS = {
  ...BOARD_LENGTHS,
  joinSeam: {
    inch: 0.5,
    centimetre: 1.5,
    says: 'Lost from each of two widths at a join of what lies flat, where seams are else left out.',
  },
  sideHem: { inch: 1, centimetre: 2.5, says: 'Taken at one side edge, in total (from memory).' },
  wrap: { inch: 0.5, centimetre: 1.5, says: 'Carried round one end of a board, of what lies flat on it.' },
  boardTurn: { inch: 3.5, centimetre: 9, says: 'Cloth on top of the board, where the turn is given (from memory).' },
  bottomHem: { inch: 3, centimetre: 8, says: 'Bottom hem in total, of what is hemmed: a doubled 1 1/2 in hem.' },
  facedSeam: { inch: 0.5, centimetre: 1.5, says: 'Seam at the bottom, where face and lining are sewn and turned.' },
  facing: { inch: 2, centimetre: 5, says: 'Facing of unlined scallops above their highest cut (from memory).' },
  pleatTakeUp: { inch: 8, centimetre: 20, says: 'What one box pleat takes: 5 to 8 in.' },
  scallopWidth: { inch: 12, centimetre: 30, says: 'Usual finished width of a scallop (from memory).' },
  puffWidth: { inch: 12, centimetre: 30, says: 'Usual finished width of a puff of a balloon (from memory).' },
  balloonTakeUp: { inch: 24, centimetre: 60, says: 'Length of a balloon that is drawn up, with its hem.' },
  ringSpacing: { inch: 6, centimetre: 15, says: 'Rings of a balloon, up what is drawn up (from memory).' },
  liningTop: { inch: 0.5, centimetre: 1.5, says: 'Lining above the finished length, on a rod (from memory).' },
  liningHem: { inch: 2, centimetre: 5, says: 'Bottom hem of the lining in total, of what is hemmed (from memory).' },
  liningShorter: { inch: 0.5, centimetre: 1.5, says: 'How much shorter such a lining hangs (from memory).' },
  interliningShorter: { inch: 0.5, centimetre: 1.5, says: 'How much shorter an interlining hangs, of what is hemmed.' },
} as const satisfies LengthTable;

/** Cloth on top of the board: as deep as the board, or the length `boardTurn`. */
export const BOARD_TURNS = ['board-depth', 'given'] as const;

export interface ValancePractice extends LengthsOf<typeof VALANCE_LENGTHS>, BoardChoices {
  readonly boardTurnFrom: (typeof BOARD_TURNS)[number];
  readonly gatheredFullness: Thousandths;
  readonly scallopedFullness: Thousandths;
  readonly balloonFullness: Thousandths;
}

/** Gathered 1.5 to 2, balloon 2 to 3 (common practice); scalloped on a rod 1.5 (a published sewing sheet). */
export const VALANCE_CHOICES = {
  ...BOARD_CHOICES,
  boardTurnFrom: 'board-depth',
  gatheredFullness: 2000,
  scallopedFullness: 1500,
  balloonFullness: 2500,
} as const;

export function defaultValancePractice(unit: LengthUnit): ValancePractice {
  return { ...defaultLengths(VALANCE_LENGTHS, unit), ...VALANCE_CHOICES };
}
