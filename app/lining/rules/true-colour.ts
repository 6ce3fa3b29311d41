import { sayTint } from '../say/say-readings.ts';
import { mayInterline } from './interlining.ts';
import type { Rule } from './rule.ts';
import { AT_GLASS, COMMON } from './rule.ts';

/** What daylight through the layers does to the face. */
export const TRUE_COLOUR_RULES: readonly Rule[] = [
  {
    id: 'ivory-shift',
    cause: 'tint',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.ivoryLining && !f.nearlyDark,
    says: () =>
      'By day an ivory lining warms the face towards yellow; white keeps it true. From the street the two look alike.',
    rests: `${COMMON}; computed colour difference by spectra`,
  },
  {
    id: 'coloured-lining-shift',
    cause: 'tint',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.colouredLining && !f.ivoryLining && !f.nearlyDark,
    says: (f) =>
      `By day the coloured lining ${sayTint(f.r.readings.colourShift)} the face: colour difference ${f.r.say.fixed(f.r.readings.colourShift, 1)}, against ${f.r.say.fixed(f.r.shiftIfWhite ?? f.r.readings.colourShift, 1)} with white.`,
    rests: 'computed colour difference by spectra estimated from the colours',
  },
  {
    id: 'interlining-tint',
    cause: 'tint',
    level: 'note',
    where: AT_GLASS,
    when: (f) => f.interlined && !f.nearlyDark,
    says: () => 'Interlining is off-white, so by day the face looks a little warmer, even with a white lining.',
    rests: `${COMMON}; computed colour difference by spectra`,
  },
  {
    id: 'same-day-and-night',
    cause: 'tint',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => f.dark && !f.unlined && (f.draws || f.r.place === 'top'),
    says: () => 'Behind a blackout the face looks the same by day and by night.',
    rests: COMMON,
  },
  {
    id: 'white-keeps-true',
    cause: 'tint',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => !f.unlined && !f.interlined && !f.nearlyDark && f.r.shiftIfWhite === null,
    says: () => 'A white lining keeps the colours true by day, and lined windows look alike from the street.',
    rests: `${COMMON}; computed colour difference by spectra`,
  },
  {
    id: 'dark-shows-through',
    cause: 'show-through',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.paleFace && f.deepLining && !f.interlined,
    says: (f) => `A dark lining greys a pale face${mayInterline(f) ? '; interlining between them hides it' : ''}.`,
    rests: COMMON,
  },
  {
    id: 'seams-show-through',
    cause: 'show-through',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.paleFace && !f.sheer && !f.interlined && !f.nearlyDark && !f.unlined,
    says: (f) =>
      `At noon seams and hem turns show as darker lines through a pale face${mayInterline(f) ? '; interlining hides them' : ''}.`,
    rests: COMMON,
  },
  {
    id: 'lining-behind-sheer',
    cause: 'show-through',
    level: 'note',
    to: 'client',
    costs: 0.1,
    when: (f) => f.sheer && f.denseLining && !f.wantsDark && !f.privateByNight,
    says: () =>
      'A lining takes the light that a sheer is there for: it is taken only where it has to hide or to darken.',
    rests: `${COMMON}: a sheer lets the light in and hangs alone or on another sheer`,
  },
];
