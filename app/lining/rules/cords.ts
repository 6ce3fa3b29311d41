import { sayCordLaw } from '../cord-law.ts';
import type { Rule } from './rule.ts';
import type { RuleFacts } from './rule-facts.ts';

const RESTS = (f: RuleFacts): string =>
  `looped and reachable cords strangle; local product-safety law and certified parts decide${sayCordLaw(f.r.input.locale)}`;

/** Cords, by how the treatment is worked. What has no cord is not spoken of. */
export const CORD_RULES: readonly Rule[] = [
  {
    id: 'cord-in-child-room',
    cause: 'cords',
    level: 'stop',
    about: 'make',
    when: (f) => f.childRoom && f.cordInReach,
    says: () =>
      "Not in a child's room: cords within reach, and those behind a shade, can strangle. Choose a cordless lift; the law may forbid this one. The cot stands clear of it.",
    rests: RESTS,
  },
  {
    id: 'cord-in-reach',
    cause: 'cords',
    level: 'caution',
    about: 'make',
    when: (f) => f.cordInReach,
    says: () =>
      'Cords within reach can strangle small children and pets: a cordless lift is safer. Hold these tight on a cleat.',
    rests: RESTS,
  },
  {
    id: 'shade-cords-child',
    cause: 'cords',
    level: 'caution',
    about: 'make',
    when: (f) => f.childRoom && f.shade !== null,
    says: () =>
      'To be raised without a cord in reach, those behind it shrouded so that none can be drawn into a loop. The cot stands clear of it.',
    rests: RESTS,
  },
  {
    id: 'cords-child',
    cause: 'cords',
    level: 'caution',
    about: 'make',
    when: (f) => f.childRoom,
    says: () =>
      "No cord, loop or tieback within a child's reach: to be drawn by hand or wand. The cot stands clear of cloth and pole.",
    rests: RESTS,
  },
  {
    id: 'shade-cords',
    cause: 'cords',
    level: 'note',
    about: 'make',
    when: (f) => f.shade !== null,
    says: () => 'To be raised without a cord in reach, those behind it shrouded so that none can be drawn into a loop.',
    rests: RESTS,
  },
  {
    id: 'cords',
    cause: 'cords',
    level: 'note',
    about: 'make',
    when: (f) => f.draws,
    says: () =>
      'To be drawn by hand or wand, with no free-hanging cord. Tieback loops stay out of reach of children and pets.',
    rests: RESTS,
  },
  {
    id: 'button-cells',
    cause: 'button-cells',
    level: 'note',
    about: 'make',
    to: 'client',
    when: (f) => f.childRoom && f.draws,
    says: () =>
      'Should a motor work it: keep the battery cover of the remote screwed shut, for a swallowed button cell burns within hours.',
    rests: 'button cells are a swallowing hazard; common practice',
  },
];
