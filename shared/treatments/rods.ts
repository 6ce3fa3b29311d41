/** What hooks hang on: rings on a pole, which butt, or the carriers of a track, whose master arm overlaps (common practice). */
import { ticks, TICKS_PER_INCH } from '../length.ts';
import type { Heading } from '../words.ts';

export const RODS = ['rings', 'track'] as const;
export type RodKind = (typeof RODS)[number];

/** Headings that hang on rings or on the carriers of a track. */
export const HOOKED: readonly Heading[] = ['pinch-pleat', 'goblet', 'box-pleat', 'pencil-pleat', 'flat'];

/** Panels on rings butt, or lie over each other by this at most: 0 to 1 in. */
export const RINGS_OVERLAP = ticks(TICKS_PER_INCH);

export const RINGS_RULE = 'Panels on rings butt, with no more than an inch of overlap';
