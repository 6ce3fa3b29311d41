import type { Heading } from '#shared/words.ts';
import type { Rule } from './rule.ts';
import type { RuleFacts } from './rule-facts.ts';
import { ANYWHERE, AT_GLASS, COMMON } from './rule.ts';

/** Headings that an interlining is too thick for (common practice). */
export const NOT_INTERLINED: readonly Heading[] = ['grommet', 'tab', 'rod-pocket', 'wave'];

/** An interlining may be named as the remedy here. */
export function mayInterline(f: RuleFacts): boolean {
  return !f.damp && f.use !== 'kitchen' && !NOT_INTERLINED.includes(f.heading);
}

/** Where interlining does not belong. */
export const INTERLINING_RULES: readonly Rule[] = [
  {
    id: 'interlining-damp',
    cause: 'damp',
    level: 'stop',
    where: ANYWHERE,
    when: (f) => f.interlined && f.damp,
    says: () => 'Interlining holds damp and is not for a bathroom: use a lining alone.',
    rests: `${COMMON}: interlining is not for damp rooms`,
  },
  {
    id: 'interlining-kitchen',
    cause: 'damp',
    level: 'caution',
    where: AT_GLASS,
    when: (f) => f.interlined && f.use === 'kitchen',
    says: () => 'Interlining takes up steam and smells and cannot be washed: think twice in a kitchen.',
    rests: `${COMMON}: interlining is not for damp rooms`,
  },
  {
    id: 'interlining-heading',
    cause: 'interlining-heading',
    level: 'stop',
    where: AT_GLASS,
    when: (f) => f.interlined && NOT_INTERLINED.includes(f.heading),
    says: () => 'Interlining does not go with this heading: it is too thick to slide or fold there.',
    rests: `${COMMON}: not behind grommets, tabs, pockets or wave headings`,
  },
  {
    id: 'interlining-dry-clean',
    cause: 'care',
    level: 'note',
    to: 'client',
    where: ANYWHERE,
    when: (f) => f.interlined,
    says: () => 'What is interlined is dry-cleaned, never washed.',
    rests: COMMON,
  },
  {
    id: 'coating-care',
    cause: 'care',
    level: 'note',
    to: 'client',
    where: ANYWHERE,
    when: (f) => f.coated,
    says: () => 'The coating cracks and marks when folded: no hot iron, and ask before dry cleaning.',
    rests: COMMON,
  },
  {
    id: 'combination-labour',
    cause: 'combination',
    level: 'praise',
    where: ANYWHERE,
    when: (f) => f.combination && !f.interlined && !f.damp && f.use !== 'kitchen',
    says: () => "Part of an interlining's body at the labour of a plain lining.",
    rests: COMMON,
  },
  {
    id: 'combination-and-interlining',
    cause: 'combination',
    level: 'caution',
    where: ANYWHERE,
    when: (f) => f.combination && f.interlined,
    says: () =>
      'A combination lining is lining and interlining in one: it replaces both. Leave the interlining out, or take a plain lining behind it.',
    rests: `${COMMON}: part of an interlining's body, at two layers' labour`,
  },
  {
    id: 'napped-blackout-labour',
    cause: 'combination',
    level: 'praise',
    when: (f) => f.nappedBlackout && !f.interlined,
    says: () => 'Darkness and warmth in one cloth, at the labour of a plain lining.',
    rests: `${COMMON}: blackout joined to a napped back`,
  },
];
