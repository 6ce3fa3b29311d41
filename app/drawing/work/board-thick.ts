import { INCH } from '../measure-given.ts';

/** A board under a shade, where the practice names no thickness: a 1 x 2 is 3/4 in (from memory). */
export const BOARD_THICK = 0.75 * INCH;
