/** A rule is data: what it looks at, how grave it is, what it says to a client, what it rests on. */
import type { Advice } from '#shared/result.ts';
import type { Place } from '../place-of-kind.ts';
import type { RuleFacts } from './rule-facts.ts';

export interface Rule {
  /** Stable: results and settings name it. */
  readonly id: string;
  /** Rules of one cause never speak together: the gravest, then the first of the table, speaks for it. */
  readonly cause: string;
  readonly level: Advice['level'];
  /** Where a treatment has to hang for the rule to look at it; not told, before a whole window. */
  readonly where?: readonly Place[];
  /** `make`: no stack can help it, so it rules none out. Not told, it is about the stack. */
  readonly about?: 'make';
  /** What it takes from the score of a stack; not told, the usual of a caution, and nothing for a note. */
  readonly costs?: number;
  /** A note that the client has to read before she signs; stops and cautions always are. */
  readonly to?: 'client';
  readonly when: (facts: RuleFacts) => boolean;
  /** Short, in a client's plain words. */
  readonly says: (facts: RuleFacts) => string;
  readonly rests: string | ((facts: RuleFacts) => string);
}

export const COMMON = 'common practice';
/** Daylight falls on it from behind, be it on the whole or on the top alone. */
export const AT_GLASS: readonly Place[] = ['window', 'top'];
export const ANYWHERE: readonly Place[] = ['window', 'top', 'board', 'away'];
