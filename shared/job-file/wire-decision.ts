import { DECISIONS } from '../cutting.ts';
import { wireChoice } from './wire-fields.ts';

export const wireDecision = wireChoice(DECISIONS).describe(
  'What the client accepted; declined work is on no order and no cut plan. Not given: nothing is said yet.',
);
