import type { Rule } from './rule.ts';

/** From this added resistance on (m2K/W) the drapery itself makes the glass clearly colder. */
const TIGHT = 0.08;

/** Cold glass behind warm cloth. */
export const WINTER_RULES: readonly Rule[] = [
  {
    id: 'condensation',
    cause: 'cold-glass',
    level: 'caution',
    when: (f) => f.r.condensation.wet && f.draws && (!f.r.condensation.wetBare || f.r.warmth.middle >= TIGHT),
    says: () =>
      'On a cold night the glass behind this may be wet, and damp breeds mould: clear the window by day and air the room.',
    rests: 'computed: glass behind the drapery is below the dew point of the room (ISO 13788, from memory)',
  },
  {
    id: 'condensation-anyway',
    cause: 'cold-glass',
    level: 'note',
    when: (f) => f.r.condensation.wetBare && f.draws,
    says: () => 'On a cold night this glass is wet even bare, and a little more so behind cloth: air the room.',
    rests: 'computed: the bare glass is below the dew point of the room (ISO 13788, from memory)',
  },
  {
    id: 'thermal-stress',
    cause: 'glass-stress',
    level: 'note',
    when: (f) => f.blackout && f.strongSun && f.r.closing.class !== 'open' && f.draws,
    says: () =>
      'A tight, dense stack before sunny glass heats it unevenly: ask the glazier about coated or wired glass.',
    rests: 'thermal stress in some glass behind tight stacks',
  },
];
