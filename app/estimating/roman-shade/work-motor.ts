/** A motor in the head of a Roman shade takes some inches at its end: no cord can be wound there (common practice). */
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { Advice, WorkingStep } from '#shared/result.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

export function workMotor(shade: RomanShadeTreatment, width: Ticks, say: Say): WorkingStep[] {
  if (shade.lift !== 'motor') return [];
  const { least, most } = shade.practice.motor;
  const left = (takes: Ticks): string => say.length(Math.max(0, width - takes));
  return [
    step(
      'motor',
      'board left beside the motor',
      `${say.length(width)} − ${say.length(least)} to ${say.length(most)}`,
      `${left(most)} to ${left(least)}`,
      `practice: what a motor takes at its end, the ${shade.control} one; no cord is wound there`,
    ),
  ];
}

/** `columns`: of rings, from the left edge. */
export function warnMotor(shade: RomanShadeTreatment, width: Ticks, columns: readonly Ticks[], say: Say): Warning[] {
  if (shade.lift !== 'motor') return [];
  const { least, most } = shade.practice.motor;
  const fromEnd = columns.map((column) => (shade.control === 'left' ? column : width - column));
  const nearest = Math.min(...fromEnd);
  if (nearest >= most) return [];
  return [
    {
      path: at(shade.key, 'lift'),
      says: `The outer column of rings stands ${say.length(nearest)} ${say.unit} from the ${shade.control} end, where the motor takes ${say.length(least)} to ${say.length(most)} ${say.unit}: ask the maker where its first cord may be wound, and move that column or turn its cord over a pulley.`,
    },
  ];
}

/** Wiring and parts are for licensed people. */
export function adviseMotor(shade: RomanShadeTreatment): Advice[] {
  if (shade.lift !== 'motor') return [];
  return [
    {
      rule: 'motor',
      level: 'caution',
      says: `The motor stands at the ${shade.control} end of the board and takes room there: see the working. Its wiring is for those whom the local code lets do it, and the maker's rating for the weight of the shade decides.`,
      rests: 'common practice: a motor takes some inches at one end',
    },
  ];
}
