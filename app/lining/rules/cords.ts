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
      "Not in a child's room: this shade is worked by cords within reach, and they can strangle. Choose a cordless lift.",
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
      'No cord hangs in reach; those behind the shade are held close at every ring. The cot stands clear of it.',
    rests: RESTS,
  },
  {
    id: 'cords-child',
    cause: 'cords',
    level: 'caution',
    about: 'make',
    when: (f) => f.childRoom,
    says: () =>
      "No cord, loop or tieback within a child's reach: these draw by hand or wand. The cot stands clear of cloth and pole.",
    rests: RESTS,
  },
  {
    id: 'shade-cords',
    cause: 'cords',
    level: 'note',
    about: 'make',
    when: (f) => f.shade !== null,
    says: () => 'Raised without a cord in reach; the cords behind are held close at every ring.',
    rests: RESTS,
  },
  {
    id: 'cords',
    cause: 'cords',
    level: 'note',
    about: 'make',
    when: (f) => f.draws,
    says: () => 'Drawn by hand or wand: no free-hanging cord. Tieback loops stay out of reach of children and pets.',
    rests: RESTS,
  },
  {
    id: 'button-cells',
    cause: 'button-cells',
    level: 'note',
    about: 'make',
    when: (f) => f.childRoom && f.draws,
    says: () => "If a motor works it, the remote's button cell is locked in: swallowed, it burns within hours.",
    rests: 'button cells are a swallowing hazard; common practice',
  },
];
