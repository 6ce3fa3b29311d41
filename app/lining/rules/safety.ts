import { nfpaMethod } from '../flame-method.ts';
import { toWhole } from '../round-figures.ts';
import type { Rule } from './rule.ts';
import { COMMON } from './rule.ts';

/** What is said always, and to whom. Local law and the makers decide, never the program. */
export const SAFETY_RULES: readonly Rule[] = [
  {
    id: 'cords-child',
    cause: 'cords',
    level: 'caution',
    when: (f) => f.childRoom,
    says: () =>
      "No cord, loop or tieback within a child's reach: these draw by hand or wand. The cot stands clear of cloth and pole.",
    rests: 'looped and reachable cords strangle; local product-safety law and certified parts decide',
  },
  {
    id: 'cords',
    cause: 'cords',
    level: 'note',
    when: (f) => !f.childRoom && !f.stationary,
    says: () => 'Drawn by hand or wand: no free-hanging cord. Tieback loops stay out of reach of children and pets.',
    rests: 'looped and reachable cords strangle; local product-safety law and certified parts decide',
  },
  {
    id: 'heat-source-below',
    cause: 'heat',
    level: 'caution',
    when: (f) => f.r.input.opening.heatSourceBelow,
    says: () =>
      'There is heat below this window: keep cloth clear of it, about 6 in beside and 12 in above and in front.',
    rests: "the appliance maker's clearances decide; the figures are common home advice",
  },
  {
    id: 'flame-test',
    cause: 'flame',
    level: 'caution',
    when: (f) => f.use === 'public',
    says: (f) => {
      const method = nfpaMethod(f.r.gsm, f.threePass);
      return `A public room needs flame-tested cloth, and the whole stack is what has to comply: about ${toWhole(f.r.gsm)} g/m2, so NFPA 701 test ${method} where that code holds.`;
    },
    rests:
      'NFPA 701: test 1 to 700 g/m2, test 2 above and for vinyl-coated blackout; layers that pass alone may fail together (NISTIR 89-4138). Rules for clothing prove nothing here; the authority having jurisdiction decides',
  },
  {
    id: 'ways-out',
    cause: 'ways-out',
    level: 'note',
    when: (f) => f.use === 'public',
    says: () => 'Exits, escape windows and sprinklers stay free of cloth.',
    rests: COMMON,
  },
];
