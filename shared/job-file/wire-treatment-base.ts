/** The fields of the wire form that every kind of treatment has. */
import { wireDecision } from './wire-decision.ts';
import { wireName } from './wire-fields.ts';
import { wirePractice } from './wire-practice.ts';
import { wireQuantity, wireStacks } from './wire-stacks.ts';

export const treatmentBase = {
  name: wireName,
  face: wireName.describe('The id of the face cloth.'),
  quantity: wireQuantity.optional(),
  practice: wirePractice.optional(),
  stacks: wireStacks.optional(),
  decision: wireDecision.optional(),
};
