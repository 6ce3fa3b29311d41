/** A bed skirt and its practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import type { LengthUnit } from '../length.ts';
import {
  BED_SKIRT_LENGTHS,
  BED_SKIRT_RATIOS,
  BED_SKIRT_STYLES,
  STRIP_RUNS,
  WALL_SIDES,
} from '../treatments/bed-skirt.ts';
import type { BedSkirtPractice, BedSkirtTreatment } from '../treatments/bed-skirt.ts';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import { readLength, readThousandths } from './read-length.ts';
import { fault, wireChoice, wireFlag, wireFullness, wireLength, wireName } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, setting, wireLengths } from './wire-settings.ts';

export const wireBedSkirtPractice = z
  .strictObject({
    ...wireLengths(BED_SKIRT_LENGTHS),
    gatheredFullness: setting(wireFullness, 'Of a gathered skirt, 2 to 3.', BED_SKIRT_RATIOS.gatheredFullness / 1000),
    boxFullness: setting(
      wireFullness,
      'Of a box-pleated skirt: 3 leaves no gap between boxes.',
      BED_SKIRT_RATIOS.boxFullness / 1000,
    ),
  })
  .partial();
export type WireBedSkirtPractice = z.infer<typeof wireBedSkirtPractice>;

/** The fields of a bed skirt besides those of every treatment. */
export const bedSkirtFields = {
  kind: z.literal('bed-skirt'),
  style: wireChoice(BED_SKIRT_STYLES),
  bed: z
    .strictObject({ width: wireLength, length: wireLength })
    .describe('The platform that the skirt hangs from: measure it, not the mattress.'),
  drop: wireLength.describe('Finished, top of the platform to the hem, floor clearance taken.'),
  against: wireChoice(WALL_SIDES).optional().describe('The side without a skirt. Not given: the head.'),
  strips: wireChoice(STRIP_RUNS)
    .optional()
    .describe('sideways: long strips along the selvage, of cloth that may run so. Not given: what takes less cloth.'),
  splitCorners: wireFlag().optional().describe('Open at two corners, for bed posts.'),
  fullness: wireFullness.nullish().describe('Of a gathered or box-pleated skirt.'),
  middlePleats: z
    .number({ error: fault('is not a number', 'give how many pleats besides those of the corners') })
    .int({ error: fault('is not a whole number', 'give how many pleats besides those of the corners') })
    .min(0, { error: fault('is negative', 'give 0 or more') })
    .max(60, { error: fault('is more than 60', 'give 60 or less, or choose box pleats') })
    .optional()
    .describe('Of a tailored skirt, all sides together.'),
  deck: wireName.nullish().describe('Id of the platform cloth. Not given: none, it hangs by hook and loop tape.'),
  ...patternField,
};
export type WireBedSkirtFields = z.infer<z.ZodObject<typeof bedSkirtFields>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireBedSkirt<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...bedSkirtFields }).superRefine((skirt: unknown, context) => {
    const { style, fullness, middlePleats } = skirt as WireBedSkirtFields;
    if (style === 'tailored' && typeof fullness === 'number')
      context.addIssue({
        code: 'custom',
        path: ['fullness'],
        message: fault('is given for a tailored skirt', 'leave it out: it hangs flat between its pleats'),
      });
    if (style !== 'tailored' && middlePleats !== undefined && middlePleats > 0)
      context.addIssue({
        code: 'custom',
        path: ['middlePleats'],
        message: fault(`are given for a ${style} skirt`, 'leave them out, or choose tailored'),
      });
  });
}

/** A section of the practice, laid over the one under it. */
export function readBedSkirtPractice(
  given: WireBedSkirtPractice | undefined,
  under: BedSkirtPractice,
  unit: LengthUnit,
): BedSkirtPractice {
  if (!given) return under;
  const ratio = (value: number | undefined, before: number): number =>
    value === undefined ? before : readThousandths(value);
  return {
    ...readLengths(BED_SKIRT_LENGTHS, given, under, unit),
    gatheredFullness: ratio(given.gatheredFullness, under.gatheredFullness),
    boxFullness: ratio(given.boxFullness, under.boxFullness),
  };
}

/** The treatment parsed. `practice` is its resolved section. */
export function readBedSkirt(
  wire: WireBedSkirtFields,
  base: TreatmentBase,
  practice: BedSkirtPractice,
  unit: LengthUnit,
): BedSkirtTreatment {
  const common = {
    ...base,
    practice: { ...base.practice, bedSkirt: practice },
    kind: 'bed-skirt' as const,
    bed: { width: readLength(wire.bed.width, unit), length: readLength(wire.bed.length, unit) },
    drop: readLength(wire.drop, unit),
    against: wire.against ?? ('head' as const),
    strips: wire.strips ?? ('least' as const),
    splitCorners: wire.splitCorners ?? false,
    deck: wire.deck ?? null,
  };
  const given = typeof wire.fullness === 'number' ? readThousandths(wire.fullness) : null;
  switch (wire.style) {
    case 'gathered':
      return { ...common, style: 'gathered', fullness: given ?? practice.gatheredFullness };
    case 'tailored':
      return { ...common, style: 'tailored', middlePleats: wire.middlePleats ?? 0 };
    case 'box-pleated':
      return { ...common, style: 'box-pleated', fullness: given ?? practice.boxFullness };
  }
}
