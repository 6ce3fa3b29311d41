import { mayInterline } from './interlining.ts';
import type { Rule } from './rule.ts';
import { AT_GLASS, COMMON } from './rule.ts';

const GOOD_KEEPING = 0.45;

/** What the sun does to the face. */
export const SUN_RULES: readonly Rule[] = [
  {
    id: 'silk-unlined',
    cause: 'fading',
    level: 'caution',
    where: AT_GLASS,
    when: (f) => f.silk && f.unlined,
    says: () => 'Silk is always lined, best interlined: bare, it splits and fades within a few summers.',
    rests: COMMON,
  },
  {
    id: 'unlined-cotton-in-sun',
    cause: 'fading',
    level: 'caution',
    where: AT_GLASS,
    when: (f) => f.cotton && f.unlined && f.strongSun,
    says: () => 'Unlined cotton fades and rots fast at a sunny window. Any lining slows that.',
    rests: COMMON,
  },
  {
    id: 'unlined-in-sun',
    cause: 'fading',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.unlined && f.strongSun,
    says: () => 'Unlined at a sunny window the face takes all the fading itself.',
    rests: 'CIE 89/3 damage at the back of the face; unlined is the measure',
  },
  {
    id: 'lining-slows-fading',
    cause: 'fading',
    level: 'praise',
    where: AT_GLASS,
    when: (f) => !f.unlined && f.strongSun && f.r.readings.fade >= GOOD_KEEPING,
    says: (f) => `Keeps ${f.r.say.about(f.r.readings.fade)} of the sun's fading from the back of the face.`,
    rests: 'computed: CIE 89/3 damage behind the same glass, against unlined',
  },
  {
    id: 'silk-interline',
    cause: 'silk',
    level: 'note',
    to: 'client',
    costs: 0.05,
    where: AT_GLASS,
    when: (f) => f.silk && !f.unlined && !f.interlined && mayInterline(f),
    says: () => 'Silk hangs and lasts best with an interlining behind it.',
    rests: COMMON,
  },
  {
    id: 'silk-leading-edge',
    cause: 'silk-edge',
    level: 'note',
    to: 'client',
    where: AT_GLASS,
    when: (f) => f.silk && f.strongSun,
    says: () =>
      'The sunny leading edge of silk goes first: turn back a wide edge, or draw the panels clear of the sun.',
    rests: COMMON,
  },
];
