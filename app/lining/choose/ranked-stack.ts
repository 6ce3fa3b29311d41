/** A stack that was thought of for a window, judged and scored. */
import type { Judgement } from '#shared/result.ts';
import type { Tier } from '#shared/words.ts';
import type { Candidate } from './list-candidates.ts';

export interface Ranked extends Candidate {
  readonly key: string;
  readonly judgement: Judgement;
  readonly score: number;
  readonly stopped: string | null;
  /** Nothing speaks against it here that a plainer cloth would not have. */
  readonly isWise: boolean;
  readonly darkensUnasked: boolean;
}

export type RankedTiers = Readonly<Record<Tier, Ranked>>;

/** Best first: by score, then by less effort, then by id, so that the order is stable. */
export function byScore(a: Ranked, b: Ranked): number {
  return b.score - a.score || a.effort - b.effort || compareText(a.key, b.key);
}

export function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
