/**
 * Fewer than three where fewer are honest (common practice): an option that nobody would advise is not made up to fill a
 * column. The option before stands for it, so that every option keeps its stack, its price and its sum.
 */
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';

export interface HonestTiers<Stack> {
  readonly tiers: Readonly<Record<Tier, Stack>>;
  /** Which option an option repeats, and what was not offered in its place. */
  readonly same: Readonly<Partial<Record<Tier, { readonly as: Tier; readonly instead: Stack }>>>;
}

/** `wanted` are those that were not given by hand; `isIdle` says whether a stack is no step worth offering after another. */
export function keepHonest<Stack>(
  chosen: Readonly<Record<Tier, Stack>>,
  wanted: readonly Tier[],
  isIdle: (stack: Stack, before: Stack) => boolean,
): HonestTiers<Stack> {
  const kept: Stack[] = [];
  const idle: Stack[] = [];
  for (const tier of TIERS.filter((each) => wanted.includes(each))) {
    const before = kept[kept.length - 1];
    (before !== undefined && isIdle(chosen[tier], before) ? idle : kept).push(chosen[tier]);
  }
  const as = wanted[kept.length - 1];
  const last = kept[kept.length - 1];
  if (as === undefined || last === undefined || idle.length === 0) return { tiers: chosen, same: {} };
  const repeated = wanted.slice(kept.length);
  const stackAt = (tier: Tier): Stack => {
    const at = wanted.indexOf(tier);
    return at < 0 ? chosen[tier] : (kept[at] ?? last);
  };
  return {
    tiers: { good: stackAt('good'), better: stackAt('better'), best: stackAt('best') },
    same: Object.fromEntries(repeated.map((tier, i) => [tier, { as, instead: idle[i] ?? last }])),
  };
}
