/** What a room asks for besides its use: privacy, and what the purse wants (common practice). */
import { describe, expect, it } from 'vitest';
import type { BackCloth } from '#shared/cloth.ts';
import type { Budget, Privacy, Tier } from '#shared/words.ts';
import { CLIMATES, FACE_FAMILIES, PRIVACIES, ROOM_USES, TIERS } from '#shared/words.ts';
import { chooseStacks } from '#app/lining/choose/choose-stacks.ts';
import type { ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import type { JudgeInput } from '#app/lining/judge-input.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { effortOf } from '#app/lining/choose/list-candidates.ts';
import { privacyFor } from '#app/lining/choose/privacy-asked.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { SEEN_THROUGH } from '#app/lining/say/say-readings.ts';
import { expectDifferentOrSame } from './different-or-same.ts';
import { caseOf } from './kind-case.ts';
import { inputOf } from './window-case.ts';
import type { Told } from './window-case.ts';

function chooseAt(base: JudgeInput): ChosenStacks {
  const { face, room, opening, treatment } = base;
  const judge = (behind: readonly BackCloth[]) => judgeStack({ ...base, behind });
  return chooseStacks({ face, room, opening, treatment, ownCloth: [], judge });
}
const choose = (told: Told): ChosenStacks => chooseAt(inputOf([], told));
const behindOf = (ids: readonly string[]): BackCloth[] => ids.map((id) => resolveCloth(id, []) as BackCloth);
const idsOf = (chosen: ChosenStacks): string[] => TIERS.map((tier) => chosen.stacks[tier].behind.join('+'));
const effortsOf = (chosen: ChosenStacks): number[] =>
  TIERS.map((tier) => effortOf(behindOf(chosen.stacks[tier].behind)));

const SHEER = { family: 'sheer', visible: { transmittance: 0.5, reflectance: 0.3 } } as const;
const BUDGETS_UP: readonly (Budget | null)[] = ['careful', null, 'generous'];

describe('privacy', () => {
  const lightest = (privacy: Privacy | null, told: Told): number => {
    const chosen = choose({ ...told, room: { ...told.room, privacy } });
    const stack = chosen.stacks[chosen.advised.tier].behind;
    return judgeStack({ ...inputOf(behindOf(stack), told) }).readings.light;
  };
  it('a sheer in a living room is not advised bare where the street may not see in by night', () => {
    const told: Told = { face: SHEER, room: { use: 'living', facing: 'N' } };
    expect(lightest(null, told)).toBeGreaterThanOrEqual(SEEN_THROUGH);
    expect(lightest('night', told)).toBeLessThan(SEEN_THROUGH);
    expect(lightest('day', told)).toBeGreaterThanOrEqual(SEEN_THROUGH);
  });
  it('the why names it', () => {
    const { stacks, advised } = choose({ face: SHEER, room: { use: 'living', privacy: 'night' } });
    expect(stacks[advised.tier].why).toMatch(/seen (by lamplight|from outside by night)/);
  });
  it.each(ROOM_USES)('in a %s a wish by night never makes the advised option lighter', (use) => {
    for (const family of FACE_FAMILIES) {
      const told: Told = { face: { family }, room: { use } };
      expect(lightest('night', told), family).toBeLessThanOrEqual(lightest(null, told));
    }
  });
  it('what dresses the head alone, or is not at a window, is chosen as if nobody had asked', () => {
    for (const kind of ['tailored valance', 'swags', 'bed skirt'] as const)
      for (const privacy of PRIVACIES) {
        const base = caseOf(kind, []);
        expect(idsOf(chooseAt({ ...base, room: { ...base.room, privacy } }))).toEqual(idsOf(chooseAt(base)));
      }
  });
  it('a sheer and a drapery at one window each answer for their own part', () => {
    const sheer = { closes: true, sheer: true };
    const drapery = { closes: true, sheer: false };
    const still = { closes: false, sheer: false };
    expect(privacyFor('always', sheer, [drapery])).toBe('day');
    expect(privacyFor('always', drapery, [sheer])).toBe('night');
    expect(privacyFor('night', sheer, [drapery])).toBeNull();
    expect(privacyFor('night', sheer, [])).toBe('night');
    expect(privacyFor('always', still, [])).toBe('always');
    expect(privacyFor('always', still, [sheer])).toBeNull();
    expect(privacyFor('always', drapery, [still])).toBe('always');
    expect(privacyFor(null, drapery, [])).toBeNull();
  });
});

describe('the purse', () => {
  const everywhere = ROOM_USES.flatMap((use) =>
    (['print', 'sheer', 'silk'] as const).flatMap((family) =>
      (['pinch-pleat', 'rod-pocket', 'grommet'] as const).map((heading) => ({ use, family, heading })),
    ),
  );
  const at = (each: (typeof everywhere)[number], budget: Budget | null): ChosenStacks =>
    choose({
      face: { family: each.family },
      room: { use: each.use, facing: 'W', budget },
      treatment: { heading: each.heading },
    });

  it('a careful purse never takes more cloth and work than the usual, a generous one never less, option by option', () => {
    for (const each of everywhere) {
      const [careful, usual, generous] = BUDGETS_UP.map((budget) => effortsOf(at(each, budget)));
      TIERS.forEach((tier, i) => {
        const where = `${JSON.stringify(each)} ${tier}`;
        expect(careful?.[i], where).toBeLessThanOrEqual(usual?.[i] ?? 0);
        expect(generous?.[i], where).toBeGreaterThanOrEqual(usual?.[i] ?? 0);
      });
    }
  });
  it('different stacks, or fewer that say so, each above the one before', () => {
    for (const each of everywhere)
      for (const budget of BUDGETS_UP) {
        const chosen = at(each, budget);
        expectDifferentOrSame(chosen.stacks, JSON.stringify(each));
        const own = effortsOf(chosen).filter((_, i) => chosen.stacks[TIERS[i] ?? 'good'].sameAs === undefined);
        own.slice(1).forEach((effort, i) => expect(effort).toBeGreaterThan(own[i] ?? 0));
      }
  });
  it('a nursery stays dark in every option, whatever the purse', () => {
    for (const budget of BUDGETS_UP) {
      const { stacks } = choose({ room: { use: 'nursery', budget } });
      for (const tier of TIERS)
        expect(stacks[tier].behind.join(), `${budget} ${tier}`).toMatch(/blackout|black-sateen/);
    }
  });
  it('says what the wish changed, and nothing where it changed nothing', () => {
    for (const each of everywhere)
      for (const budget of ['careful', 'generous'] as const) {
        const usual = at(each, null);
        const chosen = at(each, budget);
        for (const tier of TIERS) {
          // What an option says, it says against the one before it.
          const before = TIERS[TIERS.indexOf(tier) - 1] ?? tier;
          const isSame = (one: Tier): boolean => chosen.stacks[one].behind.join() === usual.stacks[one].behind.join();
          const same = isSame(tier);
          if (same && !isSame(before)) continue;
          const { why } = chosen.stacks[tier];
          if (chosen.stacks[tier].sameAs !== undefined) continue;
          if (same) expect(why).toBe(usual.stacks[tier].why);
          else expect(why).toMatch(budget === 'careful' ? /Kept modest, as was wished/ : /A step up from .*wished/);
          expect(why.length).toBeLessThan(230);
        }
      }
  });
  it('the advice goes down or up only to what answers as well, and says so', () => {
    let moved = 0;
    for (const each of everywhere)
      for (const budget of ['careful', 'generous'] as const) {
        const { advised } = at(each, budget);
        expect(advised.why).toMatch(/ answers this .* (best|as well as .*, (for less|and is the step up)): /);
        moved += advised.why.includes(' as well as ') ? 1 : 0;
      }
    expect(moved).toBeGreaterThan(0);
  });
});

describe('the choice with wishes is steady', () => {
  const wishes = PRIVACIES.flatMap((privacy) => BUDGETS_UP.map((budget) => ({ privacy, budget })));
  it('the same wishes give the same three, in any climate', () => {
    for (const wish of wishes)
      for (const climate of CLIMATES) {
        const told: Told = { room: { use: 'bedroom', climate, ...wish } };
        expect(choose(told)).toEqual(choose(told));
      }
  });
  it.each(wishes)(
    'privacy $privacy, purse $budget: at most one change for each word of light, by day and by lamp',
    (wish) => {
      for (const use of ['living', 'kitchen', 'bedroom'] as const) {
        const found = Array.from({ length: 56 }, (_, i) =>
          idsOf(
            choose({
              room: { use, facing: 'S', ...wish },
              face: { visible: { transmittance: 0.01 + i / 100, reflectance: 0.4 } },
            }),
          ).join('|'),
        );
        const changes = found.slice(1).filter((each, i) => each !== found[i]).length;
        // Six words of light; by lamplight two more, for silhouettes and for shadows.
        expect(changes, use).toBeLessThanOrEqual(wish.privacy === 'day' ? 6 : 8);
      }
    },
  );
  it.each(wishes)('privacy $privacy, purse $budget: a wider window changes nothing', (wish) => {
    const at = (inches: number) =>
      idsOf(choose({ room: { use: 'bedroom', ...wish }, opening: { width: (inches * 8128) as never } })).join('|');
    const found = Array.from({ length: 40 }, (_, i) => at(31 + i));
    expect(found.slice(1).filter((each, i) => each !== found[i]).length).toBeLessThanOrEqual(1);
  });
  it('stacks that judge alike are offered once', () => {
    for (const budget of BUDGETS_UP) {
      const { stacks } = choose({ room: { use: 'living', budget } });
      const readings = TIERS.map((tier) =>
        JSON.stringify(judgeStack(inputOf(behindOf(stacks[tier].behind), {})).readings),
      );
      expect(new Set(readings).size).toBe(3);
    }
  });
});
