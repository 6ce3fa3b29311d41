/** Where the motif of a patterned cloth stands on what is made of it, whatever the kind. */
import type { Ticks } from '../length.ts';

export const PATTERN_PLACES = ['top', 'hem', 'middle', 'level'] as const;

/** The motif that is placed: at the top or the hem a whole one, else its middle. */
export interface PatternPlace {
  readonly place: (typeof PATTERN_PLACES)[number];
  /** From the start of the repeat to the middle of the motif; null: half the repeat is taken. */
  readonly motif: Ticks | null;
  /** The room's level, from the floor to the middle of the motif; null at other places. */
  readonly level: Ticks | null;
  /** Finished top above the floor; null when unknown. */
  readonly top: Ticks | null;
  /** A motif stands in the middle of the finished width, seams equally far from it. */
  readonly centred: boolean;
  /** From the left edge of the usable width to the middle of any motif; null: nobody said. */
  readonly motifAcross: Ticks | null;
}
