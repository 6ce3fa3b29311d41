/** A shower curtain and its practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import type { LengthUnit } from '../length.ts';
import { SHOWER_LENGTHS } from '../treatments/shower-curtain.ts';
import type { ShowerCurtainPractice, ShowerCurtainTreatment, ShowerLiner } from '../treatments/shower-curtain.ts';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import { readLength } from './read-length.ts';
import { fault, wireChoice, wireLength, wireName } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, wireLengths } from './wire-settings.ts';

export const wireShowerCurtainPractice = z.strictObject(wireLengths(SHOWER_LENGTHS)).partial();
export type WireShowerCurtainPractice = z.infer<typeof wireShowerCurtainPractice>;

/** The fields of a shower curtain besides those of every treatment. */
export const showerCurtainFields = {
  kind: z.literal('shower-curtain'),
  arrangement: wireChoice(['one-piece', 'pair']).optional().describe('Not given: one piece.'),
  finishedWidth: wireLength.describe('Of all pieces together.'),
  finishedLength: wireLength.describe('Top to hem.'),
  eyelets: z
    .number({ error: fault('is not a number', 'give how many eyelets one piece has, for example 12') })
    .int({ error: fault('is not a whole number', 'give how many eyelets one piece has, for example 12') })
    .min(2, { error: fault('is less than 2', 'give 2 or more') })
    .max(500, { error: fault('is more than 500', 'give how many one piece has') })
    .nullish()
    .describe('Of one piece. Not given: one for each spacing of the practice.'),
  liner: z
    .union([z.literal('bought'), z.strictObject({ cloth: wireName })], {
      error: fault('is not a liner', 'give "bought", or { "cloth": "id" } for one that is made'),
    })
    .nullish()
    .describe("Hangs on the curtain's rings. Not given: none."),
  ...patternField,
};
export type WireShowerCurtainFields = z.infer<z.ZodObject<typeof showerCurtainFields>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireShowerCurtain<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...showerCurtainFields });
}

/** A section of the practice, laid over the one under it. */
export function readShowerCurtainPractice(
  given: WireShowerCurtainPractice | undefined,
  under: ShowerCurtainPractice,
  unit: LengthUnit,
): ShowerCurtainPractice {
  return given ? readLengths(SHOWER_LENGTHS, given, under, unit) : under;
}

/** The treatment parsed. `practice` is its resolved section. */
export function readShowerCurtain(
  wire: WireShowerCurtainFields,
  base: TreatmentBase,
  practice: ShowerCurtainPractice,
  unit: LengthUnit,
): ShowerCurtainTreatment {
  return {
    ...base,
    practice: { ...base.practice, showerCurtain: practice },
    kind: 'shower-curtain',
    arrangement: wire.arrangement ?? 'one-piece',
    finishedWidth: readLength(wire.finishedWidth, unit),
    finishedLength: readLength(wire.finishedLength, unit),
    eyelets: wire.eyelets ?? null,
    liner: readLiner(wire.liner),
  };
}

function readLiner(wire: WireShowerCurtainFields['liner']): ShowerLiner {
  if (wire === undefined || wire === null) return { from: 'none' };
  return wire === 'bought' ? { from: 'bought' } : { from: 'cloth', cloth: wire.cloth };
}
