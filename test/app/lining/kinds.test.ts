/** What each kind of treatment is judged for; facts of the trade are common practice, without a published source. */
import { describe, expect, it } from 'vitest';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { LOCALES } from '#shared/locale.ts';
import { TIERS } from '#shared/words.ts';
import type { GenericClothId, RoomUse } from '#shared/words.ts';
import { chooseStacks } from '#app/lining/choose-stacks.ts';
import type { ChosenStacks } from '#app/lining/choose-stacks.ts';
import { sayCordLaw } from '#app/lining/cord-law.ts';
import { assumedHoleShare, holeShare } from '#app/lining/count-stitches.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import type { JudgeInput } from '#app/lining/judge-input.ts';
import { RULES } from '#app/lining/rules/index.ts';
import { caseOf, inches, judgeKind, KINDS } from './kind-case.ts';
import type { KindName } from './kind-case.ts';
import { inputOf, levelOf, ownOf, rulesOf, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

function chooseFor(name: KindName, told: Told = {}): ChosenStacks {
  const input = caseOf(name, [], told);
  const { face, room, opening, treatment } = input;
  const judge = (behind: readonly BackCloth[]) => judgeStack({ ...input, behind });
  return chooseStacks({ face, room, opening, treatment, ownCloth: [], judge });
}

const inRoom = (use: RoomUse): Told => ({ room: { use } });
const CORDS: Told = { treatment: { shade: { style: 'flat', lift: 'cords', rings: 48, ribs: 9 } } };
const PALE: Partial<FaceCloth> = { colour: '#f5f2ec' };
const CONTRAST = ownOf('std-white', { family: 'contrast', shade: '#d8775f' });

type Case = readonly [KindName, readonly GenericClothId[], Told?, Partial<JudgeInput>?];
interface Fact {
  readonly fact: string;
  readonly rule: string;
  readonly level: string;
  readonly fires: Case;
  readonly quiet: Case;
}

const FACTS: readonly Fact[] = [
  {
    fact: 'needle holes show in the body of a Roman shade, and nothing mends that',
    rule: 'needle-holes-body',
    level: 'caution',
    fires: ['flat shade', ['blackout-3-pass']],
    quiet: ['flat shade', ['soft-blackout']],
  },
  {
    fact: 'a soft blackout is for stitching through the body',
    rule: 'soft-blackout-folds',
    level: 'praise',
    fires: ['flat shade', ['soft-blackout']],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'sew through a sample and hold it to the light',
    rule: 'sew-a-sample',
    level: 'note',
    fires: ['swags', ['soft-blackout']],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'a stiff blackout does not fold softly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['soft-fold shade', ['blackout-3-pass']],
    quiet: ['flat shade', ['blackout-3-pass']],
  },
  {
    fact: 'three-pass blackout swags badly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['swags', ['blackout-3-pass']],
    quiet: ['cornice', ['blackout-3-pass']],
  },
  {
    fact: 'three-pass blackout gathers badly',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: ['gathered valance', ['blackout-3-pass']],
    quiet: ['gathered valance', ['soft-blackout']],
  },
  {
    fact: 'three-pass blackout suits tailored, board-mounted valances',
    rule: 'blackout-suits-flat',
    level: 'praise',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['gathered valance', ['blackout-3-pass']],
  },
  {
    fact: 'machine-sewn hems of a flat valance show needle holes',
    rule: 'needle-holes-hems',
    level: 'note',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'a valance well above the window, lined with blackout, shows no line where glass meets wall',
    rule: 'glass-line-hidden',
    level: 'praise',
    fires: ['tailored valance', ['blackout-3-pass']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'without one that line shows by day',
    rule: 'glass-line-shows',
    level: 'note',
    fires: ['tailored valance', ['std-white']],
    quiet: ['tailored valance', ['std-white'], { treatment: { mount: { where: 'wall', above: inches(16) } } }],
  },
  {
    fact: 'cascades show their lining: a contrast can be chosen',
    rule: 'tails-show-lining',
    level: 'note',
    fires: ['swags', ['std-white']],
    quiet: ['cornice', ['std-white']],
  },
  {
    fact: 'what daylight through a contrast lining does to the face is computed',
    rule: 'contrast-tints-tails',
    level: 'note',
    fires: ['swags', ['std-white'], { treatment: { tails: { lining: CONTRAST } } }],
    quiet: ['swags', ['std-white'], { treatment: { tails: { lining: ownOf('blackout-3-pass', {}) } } }],
  },
  {
    fact: 'a contrast lining that tints nothing is praised',
    rule: 'contrast-shows-on-tails',
    level: 'praise',
    fires: [
      'swags',
      ['std-white'],
      { treatment: { tails: { lining: ownOf('blackout-3-pass', { family: 'contrast', shade: '#d8775f' } as never) } } },
    ],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'a light lining suits a bed skirt, where light does not matter',
    rule: 'light-lining-suits-make',
    level: 'praise',
    fires: ['bed skirt', ['std-white']],
    quiet: ['bed skirt', ['blackout-3-pass']],
  },
  {
    fact: 'a light lining suits a shower curtain',
    rule: 'light-lining-suits-make',
    level: 'praise',
    fires: ['shower curtain', ['std-white']],
    quiet: ['tailored valance', ['std-white']],
  },
  {
    fact: 'unlined, a bed skirt hangs better with a light lining',
    rule: 'lining-helps-make',
    level: 'note',
    fires: ['bed skirt', []],
    quiet: ['bed skirt', ['std-white']],
  },
  {
    fact: 'a blackout is more than a bed skirt needs',
    rule: 'more-than-it-needs',
    level: 'note',
    fires: ['bed skirt', ['blackout-3-pass']],
    quiet: ['bed skirt', ['std-white']],
  },
  {
    fact: 'a reachable cord in a nursery is a stop',
    rule: 'cord-in-child-room',
    level: 'stop',
    fires: ['flat shade', ['std-white'], { ...CORDS, ...inRoom('nursery') }],
    quiet: ['flat shade', ['std-white'], inRoom('nursery')],
  },
  {
    fact: 'a reachable cord in a child’s room is a stop',
    rule: 'cord-in-child-room',
    level: 'stop',
    fires: ['flat shade', ['soft-blackout'], { ...CORDS, ...inRoom('child') }],
    quiet: ['flat shade', ['soft-blackout'], { ...CORDS, ...inRoom('living') }],
  },
  {
    fact: 'a reachable cord elsewhere is cautioned of',
    rule: 'cord-in-reach',
    level: 'caution',
    fires: ['flat shade', ['std-white'], CORDS],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'rear cords of a shade are held close in a child’s room',
    rule: 'shade-cords-child',
    level: 'caution',
    fires: ['flat shade', ['std-white'], inRoom('child')],
    quiet: ['cornice', ['std-white'], inRoom('child')],
  },
  {
    fact: 'cordless is the default of a shade, and said',
    rule: 'shade-cords',
    level: 'note',
    fires: ['flat shade', ['std-white']],
    quiet: ['swags', ['std-white']],
  },
  {
    fact: 'button cells in remotes are a swallowing hazard',
    rule: 'button-cells',
    level: 'note',
    fires: ['flat shade', ['std-white'], inRoom('nursery')],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'escape windows stay free',
    rule: 'escape-window',
    level: 'note',
    fires: ['flat shade', ['std-white'], inRoom('bedroom')],
    quiet: ['cornice', ['std-white'], inRoom('bedroom')],
  },
  {
    fact: 'inside the frame daylight stays at the sides',
    rule: 'light-inside-frame',
    level: 'note',
    fires: ['soft-fold shade', ['soft-blackout']],
    quiet: ['flat shade', ['soft-blackout']],
  },
  {
    fact: 'a flat make wants firm cloth',
    rule: 'limp-for-flat',
    level: 'note',
    fires: ['flat shade', [], { face: { family: 'silk' } }],
    quiet: ['flat shade', ['inter-med', 'std-white']],
  },
  {
    fact: 'a thick interlining folds up badly in a shade',
    rule: 'bulky-shade',
    level: 'caution',
    fires: ['flat shade', ['inter-heavy', 'std-white']],
    quiet: ['flat shade', ['inter-light', 'std-white']],
  },
  {
    fact: 'interlining is not for a shower curtain',
    rule: 'interlining-damp',
    level: 'stop',
    fires: ['shower curtain', ['inter-light', 'std-white']],
    quiet: ['bed skirt', ['inter-light', 'std-white']],
  },
  {
    fact: 'interlining is not for a rod pocket, but goes on a board',
    rule: 'interlining-heading',
    level: 'stop',
    fires: ['gathered valance', ['inter-light', 'std-white']],
    quiet: ['swags', ['inter-light', 'std-white']],
  },
  {
    fact: 'a shower curtain takes a liner',
    rule: 'shower-liner',
    level: 'note',
    fires: ['shower curtain', []],
    quiet: ['shower curtain', [], { treatment: { liner: true } }],
  },
  {
    fact: 'a shower curtain has to be washed',
    rule: 'shower-wants-washable',
    level: 'caution',
    fires: ['shower curtain', ['std-white'], { face: { care: 'dry-clean' } }],
    quiet: ['shower curtain', ['std-white'], { face: { care: 'wash' } }],
  },
  {
    fact: 'steam spoils velvet and silk',
    rule: 'face-in-damp',
    level: 'caution',
    fires: ['flat shade', ['std-white'], { face: { family: 'velvet' }, ...inRoom('bath') }],
    quiet: ['flat shade', ['std-white'], { face: { family: 'print' }, ...inRoom('bath') }],
  },
  {
    fact: 'a nap holds damp, in a bathroom',
    rule: 'napped-in-damp',
    level: 'note',
    fires: ['flat shade', ['combo-white'], inRoom('bath')],
    quiet: ['flat shade', ['combo-white'], inRoom('living')],
  },
  {
    fact: 'and in a kitchen: a combination lining is half an interlining',
    rule: 'napped-in-damp',
    level: 'note',
    fires: ['flat shade', ['combo-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('kitchen')],
  },
  {
    fact: 'cloth keeps clear of stoves and open flames',
    rule: 'kitchen-flame',
    level: 'caution',
    fires: ['flat shade', ['std-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('dining')],
  },
  {
    fact: 'what is lined dries slowly in a shower, and folded damp cloth grows mould',
    rule: 'shower-dries',
    level: 'note',
    fires: ['shower curtain', ['std-white'], inRoom('bath')],
    quiet: ['shower curtain', [], inRoom('bath')],
  },
  {
    fact: 'the layers take the care of the most delicate',
    rule: 'care-differs',
    level: 'note',
    fires: ['bed skirt', [], { face: { care: 'wash' } }, { behind: [ownOf('std-white', { care: 'dry-clean' })] }],
    quiet: ['bed skirt', [], { face: { care: 'wash' } }, { behind: [ownOf('std-white', { care: 'wash' })] }],
  },
  {
    fact: 'difference in shrinkage makes a hem pucker',
    rule: 'shrinkage-differs',
    level: 'caution',
    fires: [
      'bed skirt',
      [],
      { face: { shrinkage: { length: 0.05, width: 0.02 } } },
      { behind: [ownOf('std-white', { shrinkage: { length: 0.01, width: 0.02 } })] },
    ],
    quiet: [
      'bed skirt',
      [],
      { face: { shrinkage: { length: 0.02, width: 0.02 } } },
      { behind: [ownOf('std-white', { shrinkage: { length: 0.01, width: 0.02 } })] },
    ],
  },
  {
    fact: 'a rule for clothing is never evidence for drapery (16 CFR 1610)',
    rule: 'flame-clothing-rule',
    level: 'caution',
    fires: [
      'cornice',
      ['std-white'],
      { face: { flame: { test: '16 CFR 1610', certificate: 'invented' } }, ...inRoom('public') },
    ],
    quiet: [
      'cornice',
      ['std-white'],
      { face: { flame: { test: 'NFPA 701', certificate: 'invented' } }, ...inRoom('public') },
    ],
  },
  {
    fact: 'public rooms need a flame-tested stack, whatever hangs there',
    rule: 'flame-test',
    level: 'caution',
    fires: ['bed skirt', ['std-white'], inRoom('public')],
    quiet: ['bed skirt', ['std-white'], inRoom('living')],
  },
  {
    fact: 'blackout joined to a napped back: two layers’ labour',
    rule: 'napped-blackout-labour',
    level: 'praise',
    fires: ['flat shade', ['blackout-napped']],
    quiet: ['tailored valance', ['blackout-napped']],
  },
  {
    fact: 'a patterned lining shows through a pale face',
    rule: 'patterned-lining-shows',
    level: 'note',
    fires: ['flat shade', [], { face: PALE }, { behind: [CONTRAST] }],
    quiet: ['flat shade', [], { face: { colour: '#2f4a7a' } }, { behind: [CONTRAST] }],
  },
  {
    fact: 'a contrast lining shows on turned-back edges',
    rule: 'contrast-shows',
    level: 'praise',
    fires: ['flat shade', [], {}, { behind: [CONTRAST] }],
    quiet: ['flat shade', ['std-white']],
  },
  {
    fact: 'a light lining where light should come through',
    rule: 'light-lining-lets-light',
    level: 'praise',
    fires: ['flat shade', ['std-white'], inRoom('kitchen')],
    quiet: ['flat shade', ['std-white'], inRoom('media')],
  },
  {
    fact: 'a thin face pales in strong sun',
    rule: 'thin-face-pales',
    level: 'note',
    fires: ['flat shade', ['std-white'], { face: { weight: 110 }, room: { facing: 'S' } }],
    quiet: ['flat shade', ['combo-white'], { face: { weight: 110 }, room: { facing: 'S' } }],
  },
];

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
  it('every kind gets three different stacks of rising effort, none stopped, each with its why', () => {
    for (const name of Object.keys(KINDS) as KindName[])
      for (const use of ['living', 'nursery', 'bath', 'public'] as const) {
        const { stacks } = chooseFor(name, inRoom(use));
        const ids = Object.values(stacks).map((stack) => stack.behind.join('+'));
        expect(new Set(ids).size, `${name} ${use}`).toBe(3);
        for (const { behind, why } of Object.values(stacks)) {
          expect(why).toMatch(/^.{20,}\.$/);
          const advice = judgeKind(name, behind as GenericClothId[], inRoom(use)).advice;
          expect(advice.filter((each) => each.level === 'stop')).toEqual([]);
        }
      }
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
