/** What is to be heeded whichever of the three is taken: said once under them, not three times. */
import type { Advice, TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';

const ORDER = ['stop', 'caution', 'note', 'praise'] as const satisfies readonly Advice['level'][];

/** Advice that all three stacks share, the gravest first. */
export function commonAdvice(result: TreatmentResult): readonly Advice[] {
  const [first = [], ...others] = TIERS.map((tier) => result.tiers[tier].judgement.advice);
  return first
    .filter((advice) =>
      others.every((list) => list.some((each) => each.says === advice.says && each.level === advice.level)),
    )
    .sort((a, b) => ORDER.indexOf(a.level) - ORDER.indexOf(b.level));
}
