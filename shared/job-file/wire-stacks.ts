/** The three stacks of a treatment, and how many of it: what every kind has. */
import * as z from 'zod';
import { fault, wireName } from './wire-fields.ts';

const wireStack = z.strictObject({
  face: wireName.optional(),
  behind: z.array(wireName).describe('Layers behind the face, room to street; [] is unlined.'),
});

export const wireStacks = z.strictObject({ good: wireStack, better: wireStack, best: wireStack }).partial();
export type WireStacks = z.infer<typeof wireStacks>;

/** How many of the same treatment. */
export const wireQuantity = z
  .number({ error: fault('is not a number', 'give how many of them, 1 or more') })
  .int({ error: fault('is not a whole number', 'give how many of them, 1 or more') })
  .min(1, { error: fault('is less than one', 'give how many of them, 1 or more') })
  .max(500, { error: fault('is more than 500', 'split the job') });
