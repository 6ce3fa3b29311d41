/** Boards, welts and proportion of what hangs from a board: settings that valances, cornices and swags each carry. */
import type { LengthTable } from './length-settings.ts';

/** The first lining covers the board (the face where nothing lies behind it), or the face does, or nothing. */
export const BOARD_COVERS = ['lining', 'face', 'none'] as const;
/** Hook and loop tape is bought by length; staples are not counted. */
export const BOARD_FIXINGS = ['hook-tape', 'staples'] as const;
/** A welt on the bias bends round curves and corners. */
export const WELT_GRAINS = ['bias', 'straight'] as const;

/** From memory: a 1 x 4 board is 3/4 by 3 1/2 in; a 1 1/2 in strip covers a small cord with two seams. */
export const BOARD_LENGTHS = {
  boardDepth: { inch: 3.5, centimetre: 9, says: 'From the wall to the front of the board, where no return says it.' },
  boardThickness: { inch: 0.75, centimetre: 2, says: 'Thickness of board and box (from memory).' },
  coverLap: { inch: 1, centimetre: 2.5, says: 'The board cover laps over itself and over each end (from memory).' },
  overClearance: { inch: 2, centimetre: 5, says: 'Added to the return of the treatment that it hangs over.' },
  weltStrip: { inch: 1.5, centimetre: 4, says: 'Width of the strip that covers a welt cord (from memory).' },
  weltEnds: { inch: 2, centimetre: 5, says: 'Added to each run of welt for both its ends (from memory).' },
} as const satisfies LengthTable;

export interface BoardChoices {
  readonly boardCover: (typeof BOARD_COVERS)[number];
  readonly boardFixing: (typeof BOARD_FIXINGS)[number];
  readonly weltGrain: (typeof WELT_GRAINS)[number];
  /** It looks right from one part in `shallowestPart` of the whole drop to one part in `deepestPart`. */
  readonly shallowestPart: number;
  readonly deepestPart: number;
}

/** A fifth to a sixth of the whole drop (common practice). */
export const BOARD_CHOICES = {
  boardCover: 'lining',
  boardFixing: 'hook-tape',
  weltGrain: 'bias',
  shallowestPart: 6,
  deepestPart: 5,
} as const satisfies BoardChoices;
