/** Swags and their practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import type { LengthUnit } from '../length.ts';
import { SWAGS_CHOICES, SWAGS_LENGTHS } from '../treatments/swags-practice.ts';
import type { SwagsPractice } from '../treatments/swags-practice.ts';
import { SWAG_STYLES } from '../treatments/swags.ts';
import type { SwagsTreatment, Tail } from '../treatments/swags.ts';
import { readLength } from './read-length.ts';
import { fault, wireChoice, wireFlag, wireFullness, wireLength, wireName, wireShare } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, setting, wireLengths } from './wire-settings.ts';
import { boardChoices, optionalRatio, readBoardChoices, readTop, topFields, wireCount } from './wire-top-treatment.ts';

const wireTopShare = wireShare
  .min(0.05, { error: fault('is below 0.05', 'give the share of the width that lies straight, for example 0.5') })
  .refine((value) => Math.abs(value * 1000 - Math.round(value * 1000)) < 1e-6, {
    error: fault('has more than three decimals', 'give thousandths at the finest, for example 0.5'),
  });

export const wireSwagsPractice = z
  .strictObject({
    ...wireLengths(SWAGS_LENGTHS),
    ...boardChoices,
    flatWidth: setting(
      wireFullness,
      'Flat cloth of a swag along its lower edge, over its finished width (from memory).',
      SWAGS_CHOICES.flatWidth / 1000,
    ),
    flatDepth: setting(
      wireFullness,
      'Flat cloth of a swag down its middle, over its finished depth (from memory).',
      SWAGS_CHOICES.flatDepth / 1000,
    ),
    topShare: setting(
      wireTopShare,
      'Top of a swag between its folds, as a share of its finished width.',
      SWAGS_CHOICES.topShare / 1000,
    ),
  })
  .partial();
export type WireSwagsPractice = z.infer<typeof wireSwagsPractice>;

const tailFields = {
  longest: wireLength.describe('Longest point, finished.'),
  shortest: wireLength.describe('Shortest point, finished.'),
  width: wireLength.describe('Finished width of its face, pleated.'),
  pleats: wireCount('knife pleats', 1, 100).nullish().describe('Not given: by their usual face.'),
};

/** The fields of swags besides those of every treatment. */
export const swagsFields = {
  kind: z.literal('swags'),
  style: wireChoice(SWAG_STYLES).describe('Each swag laps half of its neighbour, or they hang side by side.'),
  ...topFields,
  finishedLength: wireLength.describe('Depth of a swag at its middle, from the top of the board.'),
  swags: wireCount('swags', 1, 100).nullish().describe('Not given: as few as keep within the widest.'),
  onBias: wireFlag().nullish().describe('Not given: on the bias unless too wide or too deep for it.'),
  cascades: z.strictObject(tailFields).nullish().describe('A pair, one at each end of the board.'),
  jabots: z
    .strictObject({ ...tailFields, count: wireCount('jabots', 1, 200) })
    .nullish()
    .describe('Between the swags.'),
  contrast: wireName.nullish().describe('Cloth id that lines the tails and shows on their face.'),
  ...patternField,
};
export type WireSwagsFields = z.infer<z.ZodObject<typeof swagsFields>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireSwags<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...swagsFields }).superRefine((given: unknown, context) => {
    const swags = given as WireSwagsFields;
    if (swags.contrast && !swags.cascades && !swags.jabots)
      context.addIssue({
        code: 'custom',
        path: ['contrast'],
        message: fault('is given without cascades or jabots', 'leave it out, or give the tails that it lines'),
      });
  });
}

/** A section of the practice, laid over the one under it. */
export function readSwagsPractice(
  given: WireSwagsPractice | undefined,
  under: SwagsPractice,
  unit: LengthUnit,
): SwagsPractice {
  if (!given) return under;
  return {
    ...readLengths(SWAGS_LENGTHS, given, under, unit),
    ...readBoardChoices(given, under),
    flatWidth: optionalRatio(given.flatWidth, under.flatWidth),
    flatDepth: optionalRatio(given.flatDepth, under.flatDepth),
    topShare: optionalRatio(given.topShare, under.topShare),
  };
}

/** The treatment parsed. `practice` is its resolved section. */
export function readSwags(
  wire: WireSwagsFields,
  base: TreatmentBase,
  practice: SwagsPractice,
  unit: LengthUnit,
): SwagsTreatment {
  return {
    ...base,
    ...readTop(wire, practice.overClearance, unit),
    kind: 'swags',
    style: wire.style,
    practice: { ...base.practice, swags: practice },
    finishedLength: readLength(wire.finishedLength, unit),
    swags: wire.swags ?? null,
    onBias: wire.onBias ?? null,
    cascades: wire.cascades ? readTail(wire.cascades, unit) : null,
    jabots: wire.jabots ? { ...readTail(wire.jabots, unit), count: wire.jabots.count } : null,
    contrast: wire.contrast ?? null,
    welt: wire.welt ?? null,
  };
}

function readTail(wire: NonNullable<WireSwagsFields['cascades']>, unit: LengthUnit): Tail {
  return {
    longest: readLength(wire.longest, unit),
    shortest: readLength(wire.shortest, unit),
    width: readLength(wire.width, unit),
    pleats: wire.pleats ?? null,
  };
}
