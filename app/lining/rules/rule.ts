/** A rule is data: what it looks at, how grave it is, what it says to a client, what it rests on. */
import type { Advice } from '#shared/result.ts';
import type { RuleFacts } from './rule-facts.ts';

export interface Rule {
  /** Stable: results and settings name it. */
  readonly id: string;
  /** Rules of one cause never speak together: the gravest, then the first of the table, speaks for it. */
  readonly cause: string;
  readonly level: Advice['level'];
  readonly when: (facts: RuleFacts) => boolean;
  /** Short, in a client's plain words. */
  readonly says: (facts: RuleFacts) => string;
  readonly rests: string;
}

export const COMMON = 'common practice';
