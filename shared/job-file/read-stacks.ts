import type { StackIds } from '../treatments/treatment-base.ts';
import { TIERS } from '../words.ts';
import type { Tier } from '../words.ts';
import type { WireStacks } from './wire-stacks.ts';

/** The stacks that were given; a stack without a face of its own takes the treatment's. */
export function readStacks(wire: WireStacks | undefined, face: string): Partial<Record<Tier, StackIds>> {
  const stacks: Partial<Record<Tier, StackIds>> = {};
  for (const tier of TIERS) {
    const given = wire?.[tier];
    if (given) stacks[tier] = { face: given.face ?? face, behind: given.behind };
  }
  return stacks;
}
