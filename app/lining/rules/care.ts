import { DAMP_FACES } from './rule-facts.ts';
import { ANYWHERE, COMMON } from './rule.ts';
import type { Rule } from './rule.ts';

/** Washing, damp and what the layers allow together. */
export const CARE_RULES: readonly Rule[] = [
  {
    id: 'shower-wants-washable',
    cause: 'damp',
    level: 'caution',
    where: ['away'],
    when: (f) => f.shower && f.dryCleanOnly !== null,
    says: (f) => `${f.dryCleanOnly ?? 'It'} is dry-cleaned, and a shower curtain has to be washed.`,
    rests: `${COMMON}: what hangs in the damp is washed often`,
  },
  {
    id: 'face-in-damp',
    cause: 'damp',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.damp && (f.dryCleanOnly !== null || DAMP_FACES.includes(f.r.input.face.family)),
    says: () => 'Steam spots and slackens this cloth: in a bathroom one that can be washed lasts longer.',
    rests: COMMON,
  },
  {
    id: 'napped-in-damp',
    cause: 'damp-nap',
    level: 'note',
    to: 'client',
    costs: 0.3,
    where: ANYWHERE,
    when: (f) => (f.damp || f.use === 'kitchen') && f.napped && !f.interlined,
    says: () => 'A napped lining takes up steam and dries slowly: a plain one is better here.',
    rests: `${COMMON}: interlining is not for damp rooms, and a nap is half of one`,
  },
  {
    id: 'shower-liner',
    cause: 'shower-liner',
    level: 'note',
    to: 'client',
    where: ['away'],
    when: (f) => f.shower && f.r.input.treatment.liner !== true,
    says: () => 'Without a liner this cloth takes the water itself: a liner on the same rings keeps it dry.',
    rests: COMMON,
  },
  {
    id: 'shower-dries',
    cause: 'shower-dries',
    level: 'note',
    to: 'client',
    where: ['away'],
    when: (f) => f.shower && !f.unlined,
    says: () => 'Lined, it dries slowly: draw it out after use, for folded damp cloth grows mould.',
    rests: COMMON,
  },
  {
    id: 'care-differs',
    cause: 'care',
    level: 'note',
    where: ANYWHERE,
    when: (f) => f.washedFace && f.dryCleanOnly !== null,
    says: (f) =>
      `The face could be washed, but ${f.dryCleanOnly ?? 'what is behind it'} not: the whole is dry-cleaned.`,
    rests: `${COMMON}: sewn together, the layers take the care of the most delicate`,
  },
];
