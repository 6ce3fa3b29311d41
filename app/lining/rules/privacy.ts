import type { Rule } from './rule.ts';
import { COMMON } from './rule.ts';

const BRIGHTER_SIDE = `${COMMON}: whoever stands in the dark sees into the light; a sheer hides by day and not by night`;

/** Who may see in. Spoken of only where the room asks for it. */
export const PRIVACY_RULES: readonly Rule[] = [
  {
    id: 'lamps-show-silhouettes',
    cause: 'seen-by-night',
    level: 'caution',
    when: (f) => f.privateByNight && f.draws && f.seenThrough,
    says: () =>
      'By night with the lamps on, silhouettes show through this to the street: a lining hides them, or something to draw over it.',
    rests: BRIGHTER_SIDE,
  },
  {
    id: 'lamps-show-shadows',
    cause: 'seen-by-night',
    level: 'note',
    when: (f) => f.privateByNight && f.draws && !f.seenThrough && f.shadowsShow,
    says: () => 'By night, whoever stands close to it before a lamp throws a shadow that the street can see.',
    rests: BRIGHTER_SIDE,
  },
  {
    id: 'private-by-night',
    cause: 'seen-by-night',
    level: 'praise',
    when: (f) => f.privateByNight && f.draws && !f.shadowsShow,
    says: () => 'Drawn by night it shows the street nothing but a glow at its edges, lamps on or off.',
    rests: BRIGHTER_SIDE,
  },
  {
    id: 'sheer-hides-by-day',
    cause: 'seen-by-day',
    level: 'praise',
    when: (f) => f.privateByDay && f.draws && f.seenThrough,
    says: () => 'By day, while it is brighter outside than in, it hides the room and still lets the daylight in.',
    rests: BRIGHTER_SIDE,
  },
  {
    id: 'hides-while-drawn',
    cause: 'seen-by-day',
    level: 'note',
    about: 'make',
    when: (f) => f.privateByDay && f.draws && !f.seenThrough,
    says: () =>
      'By day it hides the room only while it is drawn, and then it takes the daylight: a sheer beside it does both.',
    rests: BRIGHTER_SIDE,
  },
  {
    id: 'hides-nothing',
    cause: 'seen-by-night',
    level: 'caution',
    where: ['window', 'top'],
    about: 'make',
    when: (f) => (f.privateByNight || f.privateByDay) && !f.draws,
    says: () => 'It does not close over the window, so it hides nothing: a shade or a sheer has to hang with it.',
    rests: COMMON,
  },
];
