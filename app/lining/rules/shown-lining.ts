import { DEEP_SHIFT, sayTint } from '../say/say-readings.ts';
import { mayInterline } from './interlining.ts';
import { AT_GLASS, COMMON } from './rule.ts';
import type { Rule } from './rule.ts';

/** A lining that the room sees: in cascades and jabots, and where an edge turns back. */
export const SHOWN_LINING_RULES: readonly Rule[] = [
  {
    id: 'contrast-tints-tails',
    cause: 'shown-lining',
    level: 'note',
    where: ['top'],
    when: (f) => (f.r.tailShift?.shift ?? 0) >= DEEP_SHIFT,
    says: (f) =>
      `The contrast lining shows on the tails, as it should; by day it ${sayTint(f.r.tailShift?.shift ?? 0)} their face (colour difference ${f.r.say.fixed(f.r.tailShift?.shift ?? 0, 1)}).`,
    rests: `${COMMON}: coloured linings are chosen where they show; colour difference computed by spectra estimated from the colours`,
  },
  {
    id: 'contrast-shows-on-tails',
    cause: 'shown-lining',
    level: 'praise',
    where: ['top'],
    when: (f) => f.tails && (f.r.tailShift !== null || f.contrast),
    says: () => 'The contrast lining shows where the tails fold back.',
    rests: `${COMMON}: coloured and patterned linings are for where the lining shows`,
  },
  {
    id: 'tails-show-lining',
    cause: 'shown-lining',
    level: 'note',
    where: ['top'],
    when: (f) => f.tails && !f.unlined && !f.contrast && f.r.input.treatment.tails?.lining === null,
    says: () => 'The tails fold back and show their lining: a contrast can be chosen for them.',
    rests: `${COMMON}: coloured and patterned linings are for where the lining shows`,
  },
  {
    id: 'contrast-shows',
    cause: 'shown-lining',
    level: 'praise',
    when: (f) => f.contrast,
    says: () => 'A contrast lining shows where an edge turns back.',
    rests: `${COMMON}: coloured and patterned linings are for where the lining shows`,
  },
  {
    id: 'glass-line-hidden',
    cause: 'glass-line',
    level: 'praise',
    where: ['top'],
    when: (f) => f.overGlassAndWall && f.nearlyDark && f.darkening,
    says: () => 'No line shows through it where the glass meets the wall.',
    rests: `${COMMON}: a blackout hides the line where glass meets wall`,
  },
  {
    id: 'glass-line-shows',
    cause: 'glass-line',
    level: 'note',
    to: 'client',
    costs: 0.06,
    where: ['top'],
    when: (f) => f.overGlassAndWall && !(f.nearlyDark && f.darkening) && f.make === 'flat',
    says: () => 'By day a line may show through it where the glass meets the wall; a blackout lining hides it.',
    rests: `${COMMON}: a flat valance hangs half before wall and half before glass`,
  },
  {
    id: 'patterned-lining-shows',
    cause: 'show-through-pattern',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.contrast && f.paleFace && !f.interlined && !f.nearlyDark,
    says: (f) =>
      `A patterned lining shows through a pale face by day${mayInterline(f) ? '; interlining between them hides it' : ''}.`,
    rests: COMMON,
  },
];
