/** Words of the cut plan. */
import type { WorkLaid } from '#app/pricing/plan-work.ts';

export const WORK_WORDS: Readonly<
  Record<WorkLaid, (names: Readonly<Record<'good' | 'better' | 'best', string>>) => string>
> = {
  likely: () => 'what is accepted, the rest as advised',
  accepted: () => 'what is accepted alone',
  good: ({ good }) => `everything as ${good}`,
  better: ({ better }) => `everything as ${better}`,
  best: ({ best }) => `everything as ${best}`,
};

/** Why the plan may be shorter than the sum of the windows, and whose that is. */
export const RESERVE =
  'Prices rest on each window by itself. What laying them together saves is your reserve for flaws: it stands on no proposal.';

export const CHECK_FIRST =
  'Check the whole piece for flaws before the first cut, and type in what is bad: the plan lays the cuts round it.';
