/** Good, better and best: from what the room needs, different, never stopped, and named in a client's words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BackCloth, Cloth, Content } from '#shared/cloth.ts';
import {
  CLIMATES,
  FACE_FAMILIES,
  FACINGS,
  GENERIC_CLOTH_IDS,
  GLAZINGS,
  HEADINGS,
  ROOM_USES,
  TIERS,
} from '#shared/words.ts';
import type { GenericClothId } from '#shared/words.ts';
import { adviseTier } from '#app/lining/choose/advise-tier.ts';
import { chooseStacks, needsOf } from '#app/lining/choose/choose-stacks.ts';
import type { ChosenStacks, ChooseInput } from '#app/lining/choose/choose-stacks.ts';
import { compareStacks, describeBeside } from '#app/lining/say/compare-stacks.ts';
import { describeStack } from '#app/lining/say/describe-stack.ts';
import { listReadings } from '#app/lining/say/list-readings.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { nameStack } from '#app/lining/say/name-stack.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { expectDifferentOrSame } from './different-or-same.ts';
import { faceOf, inputOf, judge, ownOf, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

function choose(told: Told, ownCloth: readonly Cloth[] = [], given: ChooseInput['given'] = {}): ChosenStacks {
  const input = inputOf([], told);
  const { face, room, opening, treatment } = input;
  const judgeIt = (behind: readonly BackCloth[]) => judgeStack({ ...input, behind });
  return chooseStacks({ face, room, opening, treatment, ownCloth, judge: judgeIt, given });
}

function behindOf(ids: readonly string[], own: readonly Cloth[] = []): BackCloth[] {
  return ids.map((id) => resolveCloth(id, own) as BackCloth);
}

const idsOf = (chosen: ChosenStacks): string[] => TIERS.map((tier) => chosen.stacks[tier].behind.join('+'));

describe('chosen stacks (common practice)', () => {
  it('a nursery: blackout in every tier, and best is truly dark', () => {
    const chosen = choose({ room: { use: 'nursery', facing: 'E', climate: 'cold' } });
    expect(idsOf(chosen)).toEqual(['blackout-3-pass', 'soft-blackout', 'inter-med+black-sateen+std-white']);
    expect(chosen.advised.tier).toBe('best');
  });
  it('a media room: best is never lighter than better', () => {
    for (const family of FACE_FAMILIES) {
      const told: Told = { face: { family }, room: { use: 'media' }, treatment: { heading: 'pencil-pleat' } };
      const { stacks } = choose(told);
      const light = (tier: 'better' | 'best') => judge(behindOf(stacks[tier].behind), told).readings.light;
      expect(light('best')).toBeLessThanOrEqual(Math.max(light('better'), 0.0008));
    }
  });
  it('a living room: standard lining, then interlined; nothing dark that nobody asked for', () => {
    const chosen = choose({ room: { use: 'living', facing: 'S' } });
    expect(idsOf(chosen)).toEqual(['std-white', 'inter-med+std-white', 'inter-heavy+std-white']);
  });
  it('silk is always lined, best interlined', () => {
    const { stacks } = choose({ face: { family: 'silk' }, room: { use: 'living', facing: 'W' } });
    for (const tier of TIERS) expect(stacks[tier].behind.length).toBeGreaterThan(0);
    expect(stacks.best.behind[0]).toMatch(/^inter-/);
  });
  it('a sheer hangs alone, and no lining is made up behind it to fill a column', () => {
    for (const use of ['living', 'dining', 'kitchen', 'sunroom'] as const) {
      const { stacks, advised } = choose({ face: { family: 'sheer' }, room: { use, facing: 'N' } });
      expect(TIERS.map((tier) => stacks[tier].behind)).toEqual([[], [], []]);
      expect([stacks.good.sameAs, stacks.better.sameAs, stacks.best.sameAs]).toEqual([undefined, 'good', 'good']);
      expect(stacks.best.why).toBe(
        'Nothing more is offered. A lining takes the light that a sheer is there for: it is taken only where it has to hide or to darken.',
      );
      expect(advised.tier).toBe('good');
    }
  });
  it('a sheer that has to hide by night, or to darken, is offered its lining', () => {
    const family = 'sheer';
    for (const room of [{ use: 'living', privacy: 'night' }, { use: 'bedroom' }] as const) {
      const ids = idsOf(choose({ face: { family }, room }));
      expect(new Set(ids).size, room.use).toBe(3);
    }
  });
  it('no blackout is offered where nobody asked for darkness: a bathroom, a kitchen, a public room', () => {
    for (const use of ['bath', 'kitchen', 'public'] as const)
      for (const heading of ['tab', 'grommet', 'pinch-pleat'] as const)
        expect(idsOf(choose({ room: { use }, treatment: { heading } })).join(), `${use} ${heading}`).not.toMatch(
          /blackout|black-sateen/,
        );
  });
  it('what stands above the others is not beaten in the thing that it is advised for', () => {
    const { advised } = choose({ room: { use: 'bath' }, treatment: { heading: 'tab' } });
    expect(advised).toEqual({
      tier: 'good',
      why: expect.stringMatching(/^Standard lining answers this bathroom best: .*a window that glows by day/),
    });
    expect(advised.why).not.toMatch(/fading/);
  });
  it('a bathroom and a grommet heading are never interlined', () => {
    for (const told of [{ room: { use: 'bath' } }, { treatment: { heading: 'grommet' } }] as const) {
      for (const ids of idsOf(choose(told))) expect(ids).not.toMatch(/inter-/);
    }
  });
  it('a wave takes neither interlining nor a stiff blackout, however dark the room', () => {
    for (const use of ['living', 'bedroom', 'media', 'nursery'] as const)
      for (const ids of idsOf(choose({ face: { family: 'velvet' }, room: { use }, treatment: { heading: 'wave' } })))
        expect(ids, use).not.toMatch(/inter-|blackout-3-pass|blackout-napped/);
  });
  it('thin silk is advised a light interlining, and never offered a thick one', () => {
    const chosen = choose({ face: { family: 'silk', weight: 110 }, room: { use: 'living', facing: 'W' } });
    expect(chosen.stacks[chosen.advised.tier].behind).toEqual(['inter-light', 'std-white']);
    expect(idsOf(chosen).join()).not.toMatch(/inter-heavy/);
  });
  it('nothing napped or interlined is thought of in a bathroom or a kitchen', () => {
    for (const use of ['bath', 'kitchen'] as const)
      for (const ids of idsOf(choose({ room: { use } }))) expect(ids, use).not.toMatch(/combo|inter-|napped/);
  });
  it('a sheer is advised bare where nobody asks for darkness, and nothing napped is ever offered behind it', () => {
    for (const use of ['living', 'dining', 'kitchen', 'sunroom'] as const) {
      const chosen = choose({ face: { family: 'sheer' }, room: { use } });
      expect(chosen.stacks[chosen.advised.tier].behind, use).toEqual([]);
      expect(idsOf(chosen).join(), use).not.toMatch(/combo|inter-|napped/);
    }
  });
  it('warmth weighs little before good glass', () => {
    const better = (glazing: 'single' | 'triple'): number =>
      needsOf({ ...inputOf([], { room: { climate: 'cold' }, opening: { glazing } }) }).warmth;
    expect(better('triple')).toBeLessThan(better('single'));
  });
  it('warmth is promised of no cloth that shuts a heater in behind it', () => {
    const told: Told = { room: { climate: 'cold' }, opening: { heatSourceBelow: true } };
    expect(judge(starters('inter-heavy', 'std-white'), told).words.warmth.words).toBe('heat stays behind it');
    for (const tier of TIERS) expect(choose(told).stacks[tier].why).not.toMatch(/warmth/);
    const saved = listReadings(inputOf(starters('inter-heavy', 'std-white'), told)).find(
      ({ id }) => id === 'heatSaved',
    );
    expect(saved?.rests).toMatch(/with the heat off/);
    const wet = judge(starters('inter-heavy', 'std-white'), {
      ...told,
      opening: { ...told.opening, glazing: 'single' },
    });
    expect(wet.advice.find(({ rule }) => rule === 'condensation')?.says).toMatch(/^On a cold night with the heat off/);
  });
  it('says why not the nearest stack that was left out', () => {
    const { notChosen } = choose({ room: { use: 'nursery' } });
    expect(notChosen?.why).toMatch(/was left out/);
  });
  it('her own white lining stands in for the generic one; ivory has to be asked for', () => {
    const white = ownOf('std-white', { id: 'her-white' });
    const ivory = ownOf('std-ivory', { id: 'her-ivory' });
    expect(idsOf(choose({}, [ivory, white]))[0]).toBe('her-white');
    expect(idsOf(choose({}, [ivory]))[0]).toBe('std-white');
  });
  it('does not choose again what is given for another tier', () => {
    const chosen = choose({}, [], { best: ['std-white'] });
    expect(chosen.stacks.good.behind).not.toEqual(['std-white']);
  });
});

describe('any window', () => {
  const windows = fc.record({
    use: fc.constantFrom(...ROOM_USES),
    facing: fc.constantFrom(null, ...FACINGS),
    climate: fc.constantFrom(...CLIMATES),
    glazing: fc.constantFrom(...GLAZINGS),
    heading: fc.constantFrom(...HEADINGS),
    family: fc.constantFrom(...FACE_FAMILIES),
    content: fc.constantFrom<Content | null>(null, { cotton: 100 }, { cotton: 60, polyester: 40 }),
  });
  it('gets three different stacks, or fewer that say so, none with a stop, explained, the same each time', () => {
    fc.assert(
      fc.property(windows, ({ use, facing, climate, glazing, heading, family, content }) => {
        const told: Told = {
          face: { family, content },
          room: { use, facing, climate },
          opening: { glazing },
          treatment: { heading },
        };
        const chosen = choose(told);
        expectDifferentOrSame(chosen.stacks);
        for (const tier of TIERS) {
          const { behind, why } = chosen.stacks[tier];
          const judgement = judge(behindOf(behind), told);
          expect(judgement.advice.filter((each) => each.level === 'stop')).toEqual([]);
          expect(why).toMatch(/^.{20,}\.$/);
        }
        expect(chosen.advised.why).toMatch(/\.$/);
        expect(choose(told)).toEqual(chosen);
      }),
      { seed: 31, numRuns: 60 },
    );
  });
  it('whatever is given by hand, the others are still chosen, and none is what was given', () => {
    const stacks = fc.constantFrom<readonly string[]>([], ['std-white'], ['dim-out'], ['inter-med', 'std-white']);
    const given = fc.record({ good: stacks, better: stacks, best: stacks }, { requiredKeys: [] });
    fc.assert(
      fc.property(windows, given, ({ use, facing, heading, family }, byHand) => {
        const told: Told = { face: { family }, room: { use, facing }, treatment: { heading } };
        const chosen = choose(told, [], byHand);
        const left = TIERS.filter((tier) => byHand[tier] === undefined);
        const hand = Object.values(byHand).map((ids) => ids.join('+'));
        for (const tier of left) {
          expect(chosen.stacks[tier].why).toMatch(/\.$/);
          expect(hand, tier).not.toContain(chosen.stacks[tier].behind.join('+'));
          expect(left).toContain(chosen.stacks[tier].sameAs ?? tier);
        }
      }),
      { seed: 31, numRuns: 120 },
    );
  });
  it('keeps its choice while a length grows, but for the lengths where the closing changes', () => {
    const at = (inches: number): string =>
      idsOf(choose({ treatment: { finishedLength: (inches * 8128) as never } })).join(' | ');
    const found = Array.from({ length: 40 }, (_, i) => at(60 + i));
    const changes = found.slice(1).filter((each, i) => each !== found[i]).length;
    expect(changes).toBeLessThanOrEqual(1);
  });
});

describe('the advised tier of stacks that were given', () => {
  it('is none with a stop while another is left', () => {
    const told: Told = { treatment: { heading: 'grommet' } };
    const input = inputOf([], told);
    const asked = (...ids: GenericClothId[]) => ({
      behind: starters(...ids),
      title: nameStack(input.face, starters(...ids)),
      judgement: judge(starters(...ids), told),
    });
    const { tier } = adviseTier({
      ...input,
      tiers: {
        good: asked('inter-med', 'std-white'),
        better: asked('std-white'),
        best: asked('inter-heavy', 'std-white'),
      },
    });
    expect(tier).toBe('better');
  });
});

describe('names and sentences', () => {
  it.each([
    ['Unlined', []],
    ['Standard lining', ['std-white']],
    ['Ivory lining', ['std-ivory']],
    ['Combination lining', ['combo-white']],
    ['Dim-out lining', ['dim-out']],
    ['Soft blackout', ['soft-blackout']],
    ['Three-pass blackout', ['blackout-3-pass']],
    ['Napped blackout', ['blackout-napped']],
    ['Interlined', ['inter-med', 'std-white']],
    ['Lightly interlined', ['inter-light', 'std-white']],
    ['Thickly interlined', ['inter-heavy', 'std-white']],
    ['Interlined blackout', ['inter-med', 'blackout-3-pass']],
    ['Interlined soft blackout', ['inter-med', 'soft-blackout']],
    ['Interlined with black cloth', ['inter-med', 'black-sateen', 'std-white']],
    ['Black cloth', ['black-sateen']],
  ] as const)('%s', (name, ids) => {
    expect(nameStack(faceOf(), starters(...ids))).toBe(name);
  });
  it('every generic stack has a name and one or two sentences, without a dash or a class', () => {
    for (const id of GENERIC_CLOTH_IDS) {
      const behind = starters(id);
      const says = describeStack({ face: faceOf(), behind, judgement: judge(behind) });
      expect(nameStack(faceOf(), behind)).not.toBe('');
      expect(says.split('. ').length).toBeLessThanOrEqual(2);
      expect(says).not.toMatch(/[\u2013\u2014]|\bclass\b/);
    }
  });
  it('tells what an option does more than the one before it', () => {
    const lined = judge(starters('std-white'));
    const inter = judge(starters('inter-med', 'std-white'));
    expect(compareStacks(lined, inter)).toEqual([
      'by day the light is dim',
      "the cloth's colours look a touch warmer by day",
      'nearly nine tenths of the fading is kept off',
      'clearly more warmth in winter',
      'full in the hand',
    ]);
    expect(compareStacks(lined, lined)).toEqual([]);
    const face = faceOf();
    const again = { face, behind: starters('std-white'), judgement: lined };
    expect(describeBeside({ title: 'Standard lining', judgement: lined }, again)).toMatch(
      /reads as with standard lining\.$/,
    );
  });
});
