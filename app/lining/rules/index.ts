/** Every rule, and the advice of those that speak. */
import { ADVICE_LEVELS } from '#shared/result.ts';
import type { Advice } from '#shared/result.ts';
import { CARE_RULES } from './care.ts';
import { MATCH_RULES } from './cloth-match.ts';
import { CORD_RULES } from './cords.ts';
import { DARKNESS_RULES } from './darkness.ts';
import { INTERLINING_RULES } from './interlining.ts';
import { MAKE_RULES } from './make-and-hang.ts';
import { PRIVACY_RULES } from './privacy.ts';
import type { Rule } from './rule.ts';
import type { RuleFacts } from './rule-facts.ts';
import { SAFETY_RULES } from './safety.ts';
import { SHOWN_LINING_RULES } from './shown-lining.ts';
import { SUN_RULES } from './sun.ts';
import { TRUE_COLOUR_RULES } from './true-colour.ts';
import { WINTER_RULES } from './winter.ts';

export const RULES: readonly Rule[] = [
  ...CORD_RULES,
  ...SAFETY_RULES,
  ...INTERLINING_RULES,
  ...CARE_RULES,
  ...DARKNESS_RULES,
  ...PRIVACY_RULES,
  ...MAKE_RULES,
  ...SUN_RULES,
  ...MATCH_RULES,
  ...WINTER_RULES,
  ...TRUE_COLOUR_RULES,
  ...SHOWN_LINING_RULES,
];

/** Gravest first; of one cause only the gravest, and of those the first of the table. */
export function adviseStack(facts: RuleFacts): readonly Advice[] {
  const here = RULES.filter((rule) => (rule.where ?? ['window']).includes(facts.r.place));
  const speaking = ADVICE_LEVELS.flatMap((level) => here.filter((rule) => rule.level === level && rule.when(facts)));
  const first = speaking.filter((rule, i) => speaking.findIndex((other) => other.cause === rule.cause) === i);
  return first.map((rule) => ({
    rule: rule.id,
    level: rule.level,
    says: rule.says(facts),
    rests: typeof rule.rests === 'string' ? rule.rests : rule.rests(facts),
  }));
}

/** True of a note that the client reads before she signs. */
export function isForClient(id: string): boolean {
  return RULES.find((rule) => rule.id === id)?.to === 'client';
}

/** False for a rule about the window or the make, which no choice of stack can help. */
export function isOfStack(id: string): boolean {
  return RULES.find((rule) => rule.id === id)?.about !== 'make';
}
