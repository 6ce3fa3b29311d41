/**
 * What a wish about the purse makes of three options: each is moved down, or up, to what still answers the room, never
 * past its neighbour. Where nothing else answers well enough an option stays as it is.
 */
import type { Budget, Tier } from '#shared/words.ts';

export interface Moved {
  readonly key: string;
  readonly effort: number;
  readonly score: number;
  readonly judgement: { readonly readings: { readonly light: number } };
}
type Three<Stack> = Readonly<Record<Tier, Stack>>;

/** What an option may lose of its answer to follow the purse, as a share of all that the room asks. */
const MAY_LOSE = 0.12;
/** Options that differ by less than this answer alike, and the purse decides which is advised. */
export const AS_GOOD = 0.04;

/** `free` is ranked, best first, without what is given or stopped. `darkest`: where it must be dark no option gets lighter than this or than it was. */
export function followPurse<Stack extends Moved>(
  budget: Budget | null,
  usual: Three<Stack>,
  free: readonly Stack[],
  darkest: number | null,
): Three<Stack> {
  if (budget === null) return usual;
  const answers = (tier: Tier) => (each: Stack) =>
    each.score >= usual[tier].score - MAY_LOSE &&
    (darkest === null || each.judgement.readings.light <= Math.max(darkest, usual[tier].judgement.readings.light));
  return budget === 'careful' ? keepModest(usual, free, answers) : stepUp(usual, free, answers);
}

type Answers<Stack> = (tier: Tier) => (each: Stack) => boolean;

/** From the first upwards: the least effort that answers and is above the option before. */
function keepModest<Stack extends Moved>(
  usual: Three<Stack>,
  free: readonly Stack[],
  answers: Answers<Stack>,
): Three<Stack> {
  const lower = (tier: Tier, above: number): Stack =>
    free
      .filter((each) => each.effort > above && each.effort < usual[tier].effort)
      .filter(answers(tier))
      .reduce((least, each) => (each.effort < least.effort ? each : least), usual[tier]);
  const good = lower('good', -1);
  const better = lower('better', good.effort);
  return { good, better, best: lower('best', better.effort) };
}

/** From the last downwards: the best answer that takes more and is below the option after. */
function stepUp<Stack extends Moved>(
  usual: Three<Stack>,
  free: readonly Stack[],
  answers: Answers<Stack>,
): Three<Stack> {
  const higher = (tier: Tier, below: number): Stack =>
    free.filter((each) => each.effort > usual[tier].effort && each.effort < below).find(answers(tier)) ?? usual[tier];
  const best = higher('best', Infinity);
  const better = higher('better', best.effort);
  return { good: higher('good', better.effort), better, best };
}
