/** "Why not blackout here?", answered for any stack in one or two sentences from its own readings and rules. */
import type { BackCloth } from '#shared/cloth.ts';
import type { Judgement } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { LiningFamily, Tier } from '#shared/words.ts';
import { needsOf } from './choose-stacks.ts';
import type { ChooseInput, ChosenStacks } from './choose-stacks.ts';
import { sayAgainst, stopOf } from './left-out.ts';
import type { Contender } from './left-out.ts';
import { effortOf, liningOf } from './list-candidates.ts';
import { nameStack } from '../say/name-stack.ts';
import { resolveCloth } from '../cloth/resolve-cloth.ts';
import { lower, sayList } from '../say/say-number.ts';

export interface Explained {
  readonly behind: readonly string[];
  readonly name: string;
  /** `chosen`: it is one of the three. `stopped`: it must not be. `left-out`: it may be asked for. */
  readonly verdict: 'chosen' | 'stopped' | 'left-out';
  readonly tier: Tier | null;
  readonly says: string;
  readonly judgement: Judgement;
}

/** Explains one stack at this window against the three that were chosen. Throws `StackFault` for what cannot be judged. */
export function explainStack(input: ChooseInput, chosen: ChosenStacks, behind: readonly BackCloth[]): Explained {
  const judgement = input.judge(behind);
  const name = nameStack(input.face, behind);
  const ids = behind.map((cloth) => cloth.id);
  const tier = TIERS.find((each) => chosen.stacks[each].behind.join('+') === ids.join('+')) ?? null;
  const told = { behind: ids, name, tier, judgement };
  if (tier !== null) return { ...told, verdict: 'chosen', says: chosen.stacks[tier].why };
  const rivals = contendersOf(input, chosen);
  // Where one of the three is called alike, this one goes by its own cloth.
  const twin = rivals.some((each) => each.name === name);
  const called = twin ? sayList(behind.map((cloth) => cloth.name)) : name;
  const left: Contender = { name: called, behind, effort: effortOf(behind), judgement };
  const against = sayAgainst(left, rivals, { use: input.room.use, treatment: input.treatment, needs: needsOf(input) });
  const verdict = stopOf(judgement) === undefined ? 'left-out' : 'stopped';
  return {
    ...told,
    name: called,
    verdict,
    says: `Why not ${lower(called)}? ${against.charAt(0).toUpperCase()}${against.slice(1)}`,
  };
}

/** The same for a family of lining alone behind the face: "why not blackout here?". */
export function explainFamily(input: ChooseInput, chosen: ChosenStacks, family: LiningFamily): Explained {
  return explainStack(input, chosen, [liningOf(family, input.ownCloth)]);
}

function contendersOf(input: ChooseInput, chosen: ChosenStacks): readonly Contender[] {
  return TIERS.map((tier) => {
    const behind = chosen.stacks[tier].behind
      .map((id) => resolveCloth(id, input.ownCloth))
      .filter((cloth): cloth is BackCloth => cloth !== null && cloth.role !== 'face');
    return { name: nameStack(input.face, behind), behind, effort: effortOf(behind), judgement: input.judge(behind) };
  });
}
