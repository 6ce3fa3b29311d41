import { expect } from 'vitest';
import type { ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import { TIERS } from '#shared/words.ts';

/** Every option is another stack, or says that it is the same as one before it and why nothing more is offered. */
export function expectDifferentOrSame(stacks: ChosenStacks['stacks'], where = ''): void {
  const own = TIERS.filter((tier) => stacks[tier].sameAs === undefined);
  expect(new Set(own.map((tier) => stacks[tier].behind.join('+'))).size, where).toBe(own.length);
  for (const tier of TIERS) {
    const { behind, sameAs, why } = stacks[tier];
    if (sameAs === undefined) continue;
    expect(own, where).toContain(sameAs);
    expect(TIERS.indexOf(sameAs), where).toBeLessThan(TIERS.indexOf(tier));
    expect(behind, where).toEqual(stacks[sameAs].behind);
    expect(why, where).toMatch(/^Nothing more is offered\. [A-Z].*\.$/);
  }
}
