/** Where the pattern stands, as a job file writes it: the same words for every kind. */
import * as z from 'zod';
import { PATTERN_PLACES } from '../treatments/pattern-place.ts';
import { wireChoice, wireFlag, wireLength } from './wire-fields.ts';

export const wirePattern = z.strictObject({
  place: wireChoice(PATTERN_PLACES).describe(
    'A whole motif at the top or at the hem, its middle in the middle of the drop, or at the level of the room.',
  ),
  level: wireLength
    .optional()
    .describe('Middle of the motif above the floor; not given: as another treatment of the room has it.'),
  belowCeiling: wireLength.optional().describe('The same level from the ceiling of the room, instead.'),
  motif: wireLength
    .optional()
    .describe('From the start of the repeat to the middle of the motif; else half the repeat.'),
  topAt: wireLength
    .optional()
    .describe('Finished top above the floor, for the level; not given: found from the opening and the mount.'),
  centred: wireFlag()
    .optional()
    .describe('A motif in the middle of the finished width; of flat valances, cornices, Roman shades and swags.'),
  motifAcross: wireLength
    .optional()
    .describe('From the left edge of the usable width to the middle of a motif; else up to half a repeat is lost.'),
});
export type WirePattern = z.infer<typeof wirePattern>;

/** The one field that every kind has for it. */
export const patternField = {
  pattern: wirePattern.optional().describe('Where a whole motif stands, on cloth with a repeat.'),
};
