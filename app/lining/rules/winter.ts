import type { Rule } from './rule.ts';
import type { RuleFacts } from './rule-facts.ts';

/** From this added resistance on (m2K/W) the drapery itself makes the glass clearly colder. */
const TIGHT = 0.08;

/** A heater that stands behind the cloth keeps the glass warm while it runs. */
function onColdNight(f: RuleFacts): string {
  return f.beforeHeat ? 'On a cold night with the heat off' : 'On a cold night';
}

/** Cold glass behind warm cloth. */
export const WINTER_RULES: readonly Rule[] = [
  {
    id: 'condensation',
    cause: 'cold-glass',
    level: 'caution',
    when: (f) => f.r.condensation.wet && f.draws && (!f.r.condensation.wetBare || f.r.warmth.middle >= TIGHT),
    says: (f) =>
      f.r.condensation.wetBare
        ? `${onColdNight(f)} this glass is wet even bare, and wetter behind so tight a stack: clear the window by day and air the room against mould.`
        : `${onColdNight(f)} the glass behind this gets wet, and damp breeds mould: clear the window by day and air the room.`,
    rests: 'computed: glass behind the drapery is below the dew point of the room (ISO 13788, from memory)',
  },
  {
    id: 'condensation-anyway',
    cause: 'cold-glass',
    level: 'note',
    to: 'client',
    when: (f) => f.r.condensation.wetBare && f.draws,
    says: (f) => `${onColdNight(f)} this glass is wet even bare, and a little more so behind cloth: air the room.`,
    rests: 'computed: the bare glass is below the dew point of the room (ISO 13788, from memory)',
  },
  {
    id: 'thermal-stress',
    cause: 'glass-stress',
    level: 'note',
    to: 'client',
    when: (f) => (f.blackout || f.blackCloth) && f.strongSun && f.r.closing.class !== 'open' && f.draws,
    says: () =>
      'A tight, dense or black stack before sunny glass heats it unevenly: ask the glazier first, above all about coated or wired glass.',
    rests: 'thermal stress in some glass behind tight stacks',
  },
];
