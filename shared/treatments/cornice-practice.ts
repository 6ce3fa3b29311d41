/** The decorator's practice for cornices, with documented defaults for inch and metric households. */
import type { LengthUnit } from '../length.ts';
import { BOARD_CHOICES, BOARD_LENGTHS } from './board-practice.ts';
import type { BoardChoices } from './board-practice.ts';
import { defaultLengths } from './length-settings.ts';
import type { LengthsOf, LengthTable } from './length-settings.ts';

export const CORNICE_LENGTHS = {
  ...BOARD_LENGTHS,
  joinSeam: {
    inch: 0.5,
    centimetre: 1.5,
    says: 'Lost from each of two widths at a join of what lies flat, where seams are else left out.',
  },
  wrap: { inch: 2.5, centimetre: 6, says: 'Cloth turned over one edge of the box to its back (from memory).' },
  padding: { inch: 0.5, centimetre: 1.5, says: 'What the padding takes at one edge (from memory).' },
  liningTurn: { inch: 0.5, centimetre: 1.5, says: 'Lining inside the box: turned in at one edge (from memory).' },
} as const satisfies LengthTable;

export interface CornicePractice extends LengthsOf<typeof CORNICE_LENGTHS>, BoardChoices {}

export const CORNICE_CHOICES = BOARD_CHOICES;

export function defaultCornicePractice(unit: LengthUnit): CornicePractice {
  return { ...defaultLengths(CORNICE_LENGTHS, unit), ...CORNICE_CHOICES };
}
