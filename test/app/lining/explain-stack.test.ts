/** "Why not blackout here?", for any stack, from its own readings and rules. */
import { describe, expect, it } from 'vitest';
import type { BackCloth } from '#shared/cloth.ts';
import { GENERIC_CLOTH_IDS, HEADINGS, ROOM_USES } from '#shared/words.ts';
import { chooseStacks } from '#app/lining/choose/choose-stacks.ts';
import type { ChooseInput, ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import { explainFamily, explainStack } from '#app/lining/choose/explain-stack.ts';
import { insistOn } from '#app/lining/choose/insist-on.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { inputOf, judge, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

function asked(told: Told): { readonly input: ChooseInput; readonly chosen: ChosenStacks } {
  const base = inputOf([], told);
  const { face, room, opening, treatment } = base;
  const judgeIt = (behind: readonly BackCloth[]) => judgeStack({ ...base, behind });
  const input: ChooseInput = { face, room, opening, treatment, ownCloth: [], judge: judgeIt };
  return { input, chosen: chooseStacks(input) };
}

describe('why not this stack here?', () => {
  it('blackout in a living room: nobody asked for darkness (common practice)', () => {
    const { input, chosen } = asked({ room: { use: 'living' } });
    const found = explainFamily(input, chosen, 'blackout-3-pass');
    expect(found.verdict).toBe('left-out');
    expect(found.says).toMatch(/^Why not three-pass blackout\? .*nobody asked for darkness/);
  });
  it('blackout in a pleated bedroom: its stiff hand first (common practice)', () => {
    const { input, chosen } = asked({ room: { use: 'bedroom' }, face: { family: 'velvet' } });
    expect(explainFamily(input, chosen, 'blackout-3-pass').says).toMatch(/This blackout is stiff/);
  });
  it('a fault that one of the three has too is no reason', () => {
    const { input, chosen } = asked({ room: { use: 'nursery', facing: 'E' } });
    const found = explainStack(input, chosen, starters('inter-med', 'soft-blackout'));
    expect(chosen.stacks.better.behind).toEqual(['soft-blackout']);
    expect(found.says).toMatch(/dark but for its edges by day, against nearly dark by day/);
  });
  it('interlining in a bathroom is stopped, and why', () => {
    const { input, chosen } = asked({ room: { use: 'bath' } });
    const found = explainStack(input, chosen, starters('inter-med', 'std-white'));
    expect(found.verdict).toBe('stopped');
    expect(found.says).toMatch(/holds damp/);
  });
  it('a stack that was chosen says why it was', () => {
    const { input, chosen } = asked({ room: { use: 'nursery' } });
    const found = explainStack(input, chosen, starters('soft-blackout'));
    expect(found).toMatchObject({ verdict: 'chosen', tier: 'better', says: chosen.stacks.better.why });
  });
  it('answers for every generic cloth in every room under every heading, in one or two sentences', () => {
    for (const use of ROOM_USES)
      for (const heading of HEADINGS) {
        const { input, chosen } = asked({ room: { use, facing: 'W' }, treatment: { heading } });
        for (const id of GENERIC_CLOTH_IDS) {
          const { says } = explainStack(input, chosen, starters(id));
          expect(says, `${use} ${heading} ${id}`).toMatch(/^[A-Z].{15,}[.?]$/);
          expect(says.length).toBeLessThan(240);
          expect(says).not.toMatch(/undefined|NaN|\.\.$/);
        }
      }
  });
});

describe('what she insists on', () => {
  const stopped = judge(starters('inter-med', 'std-white'), { treatment: { heading: 'grommet' } }).advice;
  it('is made, and the advice says that it was asked for', () => {
    const stop = insistOn(stopped, true).find((each) => each.level === 'stop');
    expect(stop?.says).toMatch(/offered because it was asked for/);
    expect(stop?.rests).toMatch(/asked for/);
    expect(stop?.insisted).toBe(true);
  });
  it('what was not given is left as it is', () => {
    expect(insistOn(stopped, false)).toEqual(stopped);
    const quiet = judge(starters('std-white')).advice;
    expect(insistOn(quiet, true)).toEqual(quiet);
  });
});

describe('the choice is steady', () => {
  const idsAt = (told: Told): string => {
    const { chosen } = asked(told);
    return Object.values(chosen.stacks)
      .map((stack) => stack.behind.join('+'))
      .join(' | ');
  };
  const changes = (found: readonly string[]): number => found.slice(1).filter((each, i) => each !== found[i]).length;
  it.each(['living', 'nursery', 'bath', 'public'] as const)(
    'in a %s room, as the face passes more light, it changes at most once for each word of light',
    (use) => {
      const at = (share: number) =>
        idsAt({ room: { use, facing: 'S' }, face: { visible: { transmittance: share, reflectance: 0.4 } } });
      expect(changes(Array.from({ length: 56 }, (_, i) => at(0.01 + i / 100)))).toBeLessThanOrEqual(6);
    },
  );
  it.each(['living', 'bedroom', 'kitchen'] as const)('in a %s, as the window widens, it does not change', (use) => {
    const at = (inches: number) => idsAt({ room: { use }, opening: { width: (inches * 8128) as never } });
    expect(changes(Array.from({ length: 40 }, (_, i) => at(31 + i)))).toBeLessThanOrEqual(1);
  });
});
