/** What each kind of treatment is judged for; facts of the trade are common practice, without a published source. */
import { describe, expect, it } from 'vitest';
import type { BackCloth } from '#shared/cloth.ts';
import { LOCALES } from '#shared/locale.ts';
import { TIERS } from '#shared/words.ts';
import type { GenericClothId, RoomUse } from '#shared/words.ts';
import { adviseTier } from '#app/lining/choose/advise-tier.ts';
import { chooseStacks } from '#app/lining/choose/choose-stacks.ts';
import type { ChosenStacks } from '#app/lining/choose/choose-stacks.ts';
import { sayCordLaw } from '#app/lining/cord-law.ts';
import { assumedHoleShare, holeShare } from '#app/lining/light-and-heat/count-stitches.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import type { JudgeInput } from '#app/lining/judge-input.ts';
import { nameStack } from '#app/lining/say/name-stack.ts';
import { RULES } from '#app/lining/rules/index.ts';
import { expectDifferentOrSame } from './different-or-same.ts';
import { CORDS, FACTS } from './facts-of-kinds.ts';
import type { Case } from './facts-of-kinds.ts';
import { caseOf, inches, judgeKind, KINDS } from './kind-case.ts';
import type { KindName } from './kind-case.ts';
import { inputOf, levelOf, rulesOf, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

function chooseFor(name: KindName, told: Told = {}): ChosenStacks {
  const input = caseOf(name, [], told);
  const { face, room, opening, treatment } = input;
  const judge = (behind: readonly BackCloth[]) => judgeStack({ ...input, behind });
  return chooseStacks({ face, room, opening, treatment, ownCloth: [], judge });
}

const inRoom = (use: RoomUse): Told => ({ room: { use } });

const judgeCase = ([name, ids, told, over]: Case) => judgeKind(name, ids, told, over);

describe('facts of the trade for each kind (common practice)', () => {
  it.each(FACTS.map((fact) => [`${fact.rule}: ${fact.fact}`, fact] as const))('%s', (_, fact) => {
    expect(levelOf(judgeCase(fact.fires), fact.rule)).toBe(fact.level);
    expect(rulesOf(judgeCase(fact.quiet))).not.toContain(fact.rule);
  });

  it('no kind is told of a cord, a draw or a cold glass that it does not have', () => {
    const unlike = /cord|draw|reach|condensation|stress|still-panels|fit-decides|not-dark|ways-out|escape/;
    for (const name of ['tailored valance', 'cornice', 'swags', 'bed skirt', 'shower curtain'] as const)
      for (const ids of [['std-white'], ['soft-blackout'], ['blackout-3-pass']] as const)
        for (const use of ['nursery', 'living'] as const)
          for (const rule of rulesOf(judgeKind(name, ids, { room: { use, climate: 'cold', facing: 'S' } })))
            expect(rule, name).not.toMatch(unlike);
  });

  it('no cause speaks twice, in any kind', () => {
    const causeOf = new Map(RULES.map((rule) => [rule.id, rule.cause]));
    for (const name of Object.keys(KINDS) as KindName[])
      for (const ids of [
        [],
        ['std-white'],
        ['inter-heavy', 'blackout-3-pass'],
        ['soft-blackout'],
        ['combo-white'],
      ] as const)
        for (const use of ['nursery', 'bath', 'public', 'kitchen'] as const) {
          const causes = rulesOf(judgeKind(name, ids, { ...CORDS_FOR(name), room: { use, facing: 'W' } })).map((rule) =>
            causeOf.get(rule),
          );
          expect(new Set(causes).size, `${name} ${use}`).toBe(causes.length);
        }
  });
});

function CORDS_FOR(name: KindName): Told {
  return name === 'flat shade' ? CORDS : {};
}

describe('stitches', () => {
  const sewn = { lines: [{ label: 'rib tapes', metres: 20 }], points: 48, area: 2.5 };
  it('each hole of 0.05 mm² is counted: 20 m × 330 and 48 rings × 4 over 2.5 m² (worked by hand)', () => {
    expect(holeShare(sewn)).toBeCloseTo(((20 * 330 + 48 * 4) * 0.05e-6) / 2.5, 12);
    expect(assumedHoleShare(8)).toBeCloseTo(8 * 330 * 0.05e-6, 12);
  });
  it('more stitches let in more light, and none through a cloth that closes round the needle', () => {
    const light = (ids: readonly GenericClothId[], metres: number) =>
      judgeKind('flat shade', ids, {
        made: { fullnessMade: 1, sewn: { ...sewn, lines: [{ label: 'rib tapes', metres }] } },
      }).readings.lightInRoom;
    expect(light(['blackout-3-pass'], 40)).toBeGreaterThan(light(['blackout-3-pass'], 20));
    expect(light(['soft-blackout'], 40)).toBe(light(['soft-blackout'], 20));
  });
});

describe('what a kind covers', () => {
  it('a cornice is a box: no light passes it, so it has no colour by day, no fading and no line of the glass', () => {
    const judged = judgeKind('cornice', ['std-white']);
    expect(judged.readings).toMatchObject({ light: 0, colourShift: 0, fade: 0 });
    expect(judged.words).toMatchObject({ light: { words: 'a box over the top' }, fade: { words: 'no sun behind it' } });
    expect(rulesOf(judged).filter((rule) => /glass-line|finish|tint|true|fading|suits/.test(rule))).toEqual([]);
    expect(judged.readings.lightInRoom).toBe(judgeKind('cornice', ['blackout-3-pass']).readings.lightInRoom);
  });
  it('a cornice is offered for its padding alone, with a neat lining inside', () => {
    const { stacks } = chooseFor('cornice', inRoom('dining'));
    for (const tier of TIERS) expect(stacks[tier].behind.join('+'), tier).toMatch(/^(inter-\w+\+)?std-white$/);
  });
  it('a valance leaves the room its light: 8 of 54 in of the glass (16 deep, 8 above)', () => {
    const { readings, words, ranges } = judgeKind('tailored valance', ['blackout-3-pass']);
    const covered = 8 / 54;
    expect(readings.lightInRoom).toBeCloseTo(0.6907 * (1 - covered), 3);
    expect(words.light.words).toBe('covers the top only');
    expect(readings.warmth).toBeLessThanOrEqual((0.03 * covered) / 2 + 1e-9);
    expect(ranges.warmth?.[0]).toBe(0);
  });
  it('a bed skirt has no daylight behind it: no shift, no fading, no warmth', () => {
    const { readings, words } = judgeKind('bed skirt', ['std-ivory']);
    expect([readings.colourShift, readings.fade, readings.warmth]).toEqual([0, 0, 0]);
    expect(words.light.words).toBe('not at the window');
  });
  it('an inside mount lets in what its clearance leaves: ⅛ in a side of 60', () => {
    const open = (rod: number): number =>
      judgeKind('soft-fold shade', ['blackout-3-pass'], { treatment: { rodWidth: inches(rod) } }).readings.lightInRoom;
    expect(open(59.75)).toBeGreaterThan(open(60));
    expect(open(59)).toBeGreaterThan(open(59.75));
  });
  it('café panels leave the upper half of the window open', () => {
    const half = inputOf(starters('blackout-3-pass'), { treatment: { cafe: true, finishedLength: inches(27) } });
    const whole = inputOf(starters('blackout-3-pass'));
    const seen = (input: JudgeInput) => judgeStack(input).readings.lightInRoom;
    expect(seen(half)).toBeGreaterThan(0.6907 / 2);
    expect(seen(whole)).toBeLessThan(0.05);
  });
  it('a board above closes the top over panels, and they keep more warmth', () => {
    const floor = { treatment: { finishedLength: inches(87.5) } };
    const alone = judgeStack(inputOf(starters('std-white'), floor));
    const under = judgeStack({ ...inputOf(starters('std-white'), floor), pelmet: true });
    expect(under.readings.warmth).toBeGreaterThan(alone.readings.warmth);
  });
});

describe('choosing for a kind', () => {
  it('a Roman shade in a child’s room is never given a coated blackout unasked', () => {
    for (const use of ['child', 'nursery', 'bedroom', 'media'] as const)
      for (const { behind } of Object.values(chooseFor('flat shade', inRoom(use)).stacks))
        expect(behind, use).not.toContain('blackout-3-pass');
  });
  it('a tailored valance over glass and wall is advised a blackout', () => {
    const chosen = chooseFor('tailored valance');
    expect(chosen.stacks[chosen.advised.tier].behind).toEqual(['blackout-3-pass']);
  });
  it('swags and gathers are never given a coated blackout', () => {
    for (const name of ['swags', 'gathered valance'] as const)
      for (const { behind } of Object.values(chooseFor(name).stacks)) expect(behind).not.toContain('blackout-3-pass');
  });
  it('a bed skirt and a shower curtain are advised a light lining', () => {
    for (const name of ['bed skirt', 'shower curtain'] as const) {
      const chosen = chooseFor(name, inRoom(name === 'bed skirt' ? 'bedroom' : 'bath'));
      expect(chosen.stacks[chosen.advised.tier].behind, name).toEqual(['std-white']);
    }
  });
  it('every kind gets three different stacks, or fewer that say so, none stopped, each with its why', () => {
    for (const name of Object.keys(KINDS) as KindName[])
      for (const use of ['living', 'nursery', 'bath', 'public'] as const) {
        const { stacks } = chooseFor(name, inRoom(use));
        expectDifferentOrSame(stacks, `${name} ${use}`);
        for (const { behind, why } of Object.values(stacks)) {
          expect(why).toMatch(/^.{20,}\.$/);
          const advice = judgeKind(name, behind as GenericClothId[], inRoom(use)).advice;
          expect(advice.filter((each) => each.level === 'stop')).toEqual([]);
        }
      }
  });
  it('a bed skirt and a shower curtain are offered bare or lined, and nothing that they do not need', () => {
    for (const name of ['bed skirt', 'shower curtain'] as const) {
      const { stacks } = chooseFor(name, inRoom(name === 'bed skirt' ? 'bedroom' : 'bath'));
      expect(Object.values(stacks).map((stack) => stack.behind)).toEqual([[], ['std-white'], ['std-white']]);
      expect(stacks.best.sameAs).toBe('better');
      expect(stacks.best.why).toMatch(/^Nothing more is offered\. .* is more than a (bed skirt|shower curtain) needs/);
    }
  });
  it('a thick interlining that folds up badly is not advised in a shade for a little less fading', () => {
    const told: Told = {
      face: { family: 'silk', weight: 95 },
      room: { use: 'public', facing: null, privacy: 'night' },
    };
    const input = caseOf('flat shade', [], told);
    const asked = (...ids: GenericClothId[]) => ({
      behind: starters(...ids),
      title: nameStack(input.face, starters(...ids)),
      judgement: judgeKind('flat shade', ids, told),
    });
    const tiers = {
      good: asked('std-white'),
      better: asked('inter-light', 'std-white'),
      best: asked('inter-heavy', 'std-white'),
    };
    expect(rulesOf(tiers.best.judgement)).toContain('bulky-shade');
    expect(adviseTier({ ...input, tiers }).tier).toBe('better');
  });
  it('a reachable cord stops no stack by itself: the choice is still made, and every option says so', () => {
    const { stacks } = chooseFor('flat shade', { ...CORDS, ...inRoom('nursery') });
    for (const { behind } of Object.values(stacks)) {
      const judged = judgeKind('flat shade', behind as GenericClothId[], { ...CORDS, ...inRoom('nursery') });
      expect(levelOf(judged, 'cord-in-child-room')).toBe('stop');
    }
  });
});

describe('cord law beside the caution', () => {
  it('names what holds where the job is, and defers', () => {
    const rests = (locale: (typeof LOCALES)[number]) =>
      judgeKind('flat shade', ['std-white'], CORDS, { locale }).advice.find((each) => each.rule === 'cord-in-reach')
        ?.rests;
    // SOR/2019-97: reachable cord at most 22 cm, loop at most 44 cm; Australia: 220 mm at or below 1,600 mm.
    expect(rests('en-CA')).toMatch(/SOR\/2019-97: a reachable cord of 22 cm and a loop of 44 cm/);
    expect(rests('en-AU')).toMatch(/220 mm or more at or below 1,600 mm/);
    expect(rests('en-GB')).toMatch(/EN 13120/);
    for (const locale of LOCALES) expect(rests(locale)).toMatch(/local product-safety law/);
    expect(sayCordLaw(undefined)).toBe('');
  });
});

describe('units', () => {
  it('weights and clearances are in the units of the job', () => {
    const heat: Told = { opening: { heatSourceBelow: true } };
    const says = (units: 'in' | 'cm') =>
      judgeKind('flat shade', ['std-white'], heat, { units }).advice.find((each) => each.rule === 'heat-source-below')
        ?.says;
    expect(says('in')).toMatch(/6 in beside and 12 in above/);
    expect(says('cm')).toMatch(/15 cm beside and 30 cm above/);
    const steps = (units: 'in' | 'cm') => JSON.stringify(judgeKind('flat shade', ['std-white'], {}, { units }).working);
    expect(steps('in')).toMatch(/ lb"/);
    expect(steps('in')).toMatch(/oz\/yd²/);
    expect(steps('cm')).toMatch(/ kg"/);
    for (const units of ['in', 'cm'] as const) {
      const judged = judgeKind('flat shade', ['blackout-3-pass'], { room: { use: 'public' } }, { units });
      const text = [judged.working, judged.advice, judged.words].map((each) => JSON.stringify(each)).join(' ');
      expect(text).not.toMatch(/m2K|g\/m2|W\/m2|\d x \d| - \d|yd2/);
    }
  });
});
