/** Good, better and best out of a ranked list, each of its effort and a step above the one before. */
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import type { Ranked, RankedTiers } from './ranked-stack.ts';
import { DARK } from '../say/say-readings.ts';
import type { TierEffort } from './tier-effort.ts';

export type IsStep = (before: Ranked, after: Ranked) => boolean;

/** `open` is ranked, best first. Each tier takes the best of its effort that no tier has and that takes more than the one before. */
export function pickTiers(
  open: readonly Ranked[],
  wanted: readonly Tier[],
  efforts: TierEffort,
  mustBeDark: boolean,
  isStep: IsStep,
): RankedTiers {
  const used = new Set<string>();
  let before = -1;
  let lightBefore = Infinity;
  let last: Ranked | null = null;
  const pick = (tier: Tier, place: number): Ranked => {
    const [from, to] = efforts[tier];
    const free = open.filter((each) => !used.has(each.key));
    // A tier leaves enough above it for those that follow.
    const after = wanted.length - 1 - place;
    const leaves = (each: Ranked): boolean => free.filter((other) => other.effort > each.effort).length >= after;
    const more = free.filter((each) => each.effort > before && leaves(each));
    const steps = more.filter((each) => last === null || isStep(last, each));
    const above = steps.length > 0 ? steps : more;
    const fitting = above.filter((each) => each.effort >= from && each.effort <= to);
    // Where it must be dark, best is never lighter than better.
    const asDark = (most: number): Ranked | undefined => fitting.find((each) => each.judgement.readings.light <= most);
    const darkest = mustBeDark && tier === 'best' ? (asDark(lightBefore) ?? asDark(DARK)) : undefined;
    const least = [...above].sort((a, b) => a.effort - b.effort)[0];
    const found = darkest ?? fitting[0] ?? least ?? free[0] ?? pickAny(open);
    used.add(found.key);
    before = found.effort;
    last = found;
    lightBefore = found.judgement.readings.light;
    return found;
  };
  const picked = new Map(wanted.map((tier, place) => [tier, pick(tier, place)]));
  // A tier that is given stands for itself.
  const taken = (tier: Tier): Ranked => picked.get(tier) ?? pickAny(open);
  const [good, better, best] = [taken('good'), taken('better'), taken('best')];
  if (wanted.length < TIERS.length || isStep(better, best)) return { good, better, best };
  // Nothing rises above better: where something lies between good and it, that is better, and it is best.
  const between = open.find(
    (each) => each.effort > good.effort && each.effort < better.effort && isStep(good, each) && isStep(each, better),
  );
  return between === undefined ? { good, better, best } : { good, better: between, best: better };
}

function pickAny(open: readonly Ranked[]): Ranked {
  const [first] = open;
  if (first === undefined) throw new Error('no stack without a stop is left to choose from');
  return first;
}
