/** Facts of the trade (common practice; no published source): the program's advice and defaults agree with each. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { parseWeight } from '#shared/weight.ts';
import { FACE_FAMILIES, GENERIC_CLOTH_IDS, HEADINGS, ROOM_USES } from '#shared/words.ts';
import type { GenericClothId, Heading, Privacy } from '#shared/words.ts';
import { nameLiningWeight } from '#app/lining/lining-weight.ts';
import { RULES } from '#app/lining/rules/index.ts';
import { STARTER_CLOTH } from '#app/lining/starter-cloth.ts';
import { faceAppearance, LIGHT_SETTINGS } from '#app/lining/show-light.ts';
import { faceOf, judge, levelOf, ownOf, rulesOf, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

interface Fact {
  /** The fact, in the trade's words. */
  readonly fact: string;
  readonly rule: string;
  readonly level: string;
  readonly fires: readonly [readonly GenericClothId[], Told];
  /** A case next to it where the rule must not speak. */
  readonly quiet: readonly [readonly GenericClothId[], Told];
}

const COTTON = { content: { cotton: 100 } };
const NONE = { left: lengthFrom(0, 'in'), right: lengthFrom(0, 'in') };
const NURSERY: Told = { room: { use: 'nursery' } };
const heading = (name: Heading): Told => ({ treatment: { heading: name } });

const SHEER = { family: 'sheer', visible: { transmittance: 0.5, reflectance: 0.3 } } as const;
const hidden = (privacy: Privacy, told: Told = {}): Told => ({ ...told, room: { privacy } });

const FACTS: readonly Fact[] = [
  {
    fact: 'with the lamps on, silhouettes show through a sheer by night',
    rule: 'lamps-show-silhouettes',
    level: 'caution',
    fires: [[], hidden('night', { face: SHEER })],
    quiet: [[], hidden('day', { face: SHEER })],
  },
  {
    fact: 'through a light lining the shadow of who stands close shows',
    rule: 'lamps-show-shadows',
    level: 'note',
    fires: [['std-white'], hidden('always')],
    quiet: [['soft-blackout'], hidden('always')],
  },
  {
    fact: 'behind blackout or interlining nothing is seen by night',
    rule: 'private-by-night',
    level: 'praise',
    fires: [['soft-blackout'], hidden('night')],
    quiet: [['soft-blackout'], {}],
  },
  {
    fact: 'a sheer hides a room by day and keeps its light',
    rule: 'sheer-hides-by-day',
    level: 'praise',
    fires: [[], hidden('day', { face: SHEER })],
    quiet: [[], hidden('night', { face: SHEER })],
  },
  {
    fact: 'what is dense hides by day only while it is drawn, and takes the light',
    rule: 'hides-while-drawn',
    level: 'note',
    fires: [['std-white'], hidden('always')],
    quiet: [['std-white'], hidden('night')],
  },
  {
    fact: 'panels that do not draw hide nothing',
    rule: 'hides-nothing',
    level: 'caution',
    fires: [['std-white'], hidden('night', { treatment: { arrangement: 'pair-stationary' } })],
    quiet: [['std-white'], hidden('night')],
  },
  {
    fact: 'needle holes show in a three-pass blackout that is pleated',
    rule: 'needle-holes',
    level: 'caution',
    fires: [['blackout-3-pass'], {}],
    quiet: [['soft-blackout'], {}],
  },
  {
    fact: 'behind a flat heading only its sewn hems show daylight',
    rule: 'needle-holes-hems',
    level: 'note',
    fires: [['blackout-3-pass'], heading('grommet')],
    quiet: [['blackout-3-pass'], heading('goblet')],
  },
  {
    fact: 'three-pass blackout gathers and pleats badly: a caution, not a stop',
    rule: 'stiff-blackout-gathers-badly',
    level: 'caution',
    fires: [['blackout-3-pass'], heading('rod-pocket')],
    quiet: [['blackout-3-pass'], heading('tab')],
  },
  {
    fact: 'three-pass blackout suits tab and grommet panels',
    rule: 'blackout-suits-flat',
    level: 'praise',
    fires: [['blackout-3-pass'], heading('tab')],
    quiet: [['blackout-3-pass'], heading('pencil-pleat')],
  },
  {
    fact: 'a soft blackout drapes well',
    rule: 'soft-blackout-folds',
    level: 'praise',
    fires: [['soft-blackout'], {}],
    quiet: [['blackout-3-pass'], {}],
  },
  {
    fact: 'a soft blackout closes round the needle; sew through a sample and hold it to the light',
    rule: 'sew-a-sample',
    level: 'note',
    fires: [['soft-blackout'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'a soft blackout is nearly dark, not dark, in a nursery; the remedy is black cloth',
    rule: 'soft-blackout-nearly-dark',
    level: 'caution',
    fires: [['soft-blackout'], NURSERY],
    quiet: [['inter-med', 'black-sateen', 'std-white'], NURSERY],
  },
  {
    fact: 'a nursery must be dark',
    rule: 'nursery-not-dark',
    level: 'caution',
    fires: [['std-white'], NURSERY],
    quiet: [['blackout-3-pass'], NURSERY],
  },
  {
    fact: 'interlining darkens but is not room darkening by itself',
    rule: 'interlining-is-not-darkening',
    level: 'note',
    fires: [['inter-med', 'std-white'], { room: { use: 'bedroom' } }],
    quiet: [['inter-med', 'soft-blackout'], { room: { use: 'bedroom' } }],
  },
  {
    fact: 'with a blackout the fit decides how dark the room gets',
    rule: 'fit-decides',
    level: 'note',
    fires: [['blackout-3-pass'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'hems and seams stay lighter behind any blackout',
    rule: 'lighter-edges',
    level: 'note',
    fires: [['soft-blackout'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'daylight through ivory shifts the face towards yellow; from the street it looks like white',
    rule: 'ivory-shift',
    level: 'note',
    fires: [['std-ivory'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'a white lining shows the true colour by day',
    rule: 'white-keeps-true',
    level: 'praise',
    fires: [['std-white'], {}],
    quiet: [['std-ivory'], {}],
  },
  {
    fact: 'with interlining even a white lining shows a little warmer',
    rule: 'interlining-tint',
    level: 'note',
    fires: [['inter-med', 'std-white'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'behind blackout the face looks the same by day and by night',
    rule: 'same-day-and-night',
    level: 'praise',
    fires: [['blackout-3-pass'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'seam allowances show through a pale face at noon; interline',
    rule: 'seams-show-through',
    level: 'note',
    fires: [['std-white'], { face: { colour: '#f5f2ec' } }],
    quiet: [['inter-med', 'std-white'], { face: { colour: '#f5f2ec' } }],
  },
  {
    fact: 'a dark lining shows through a pale face',
    rule: 'dark-shows-through',
    level: 'note',
    fires: [['black-sateen'], { face: { colour: '#f5f2ec' } }],
    quiet: [['black-sateen'], { face: { colour: '#2f4a7a' } }],
  },
  {
    fact: 'interlining is not for damp rooms',
    rule: 'interlining-damp',
    level: 'stop',
    fires: [['inter-light', 'std-white'], { room: { use: 'bath' } }],
    quiet: [['std-white'], { room: { use: 'bath' } }],
  },
  {
    fact: 'interlining is doubtful in a kitchen',
    rule: 'interlining-kitchen',
    level: 'caution',
    fires: [['inter-light', 'std-white'], { room: { use: 'kitchen' } }],
    quiet: [['combo-white'], { room: { use: 'kitchen' } }],
  },
  ...(['grommet', 'tab', 'rod-pocket', 'wave'] as const).map((name): Fact => ({
    fact: `interlining is not for a ${name} heading`,
    rule: 'interlining-heading',
    level: 'stop',
    fires: [['inter-med', 'std-white'], heading(name)],
    quiet: [['inter-med', 'std-white'], heading('pinch-pleat')],
  })),
  {
    fact: 'interlining is for dry cleaning',
    rule: 'interlining-dry-clean',
    level: 'note',
    fires: [['inter-med', 'std-white'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'coatings crack, mark, and dislike hot irons',
    rule: 'coating-care',
    level: 'note',
    fires: [['blackout-3-pass'], {}],
    quiet: [['soft-blackout'], {}],
  },
  {
    fact: 'a combination lining gives part of the body at two layers’ labour',
    rule: 'combination-labour',
    level: 'praise',
    fires: [['combo-white'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'a combination lining gives the body of an interlining: behind one it is double',
    rule: 'combination-and-interlining',
    level: 'caution',
    fires: [['inter-med', 'combo-white'], {}],
    quiet: [['combo-white'], {}],
  },
  {
    fact: 'an all-cotton face wants an all-cotton lining',
    rule: 'match-content',
    level: 'note',
    fires: [['soft-blackout'], { face: COTTON }],
    quiet: [['std-white'], { face: COTTON }],
  },
  {
    fact: 'a cotton and polyester face wants a blend',
    rule: 'match-content',
    level: 'note',
    fires: [['std-white'], { face: { content: { cotton: 60, polyester: 40 } } }],
    quiet: [['blackout-3-pass'], { face: { content: { cotton: 60, polyester: 40 } } }],
  },
  {
    fact: 'the lustrous side of a lining faces the glass',
    rule: 'finish-to-glass',
    level: 'note',
    fires: [['std-white'], {}],
    quiet: [['blackout-3-pass'], {}],
  },
  {
    fact: 'which side of a coated lining faces the glass differs by maker',
    rule: 'coated-side',
    level: 'note',
    fires: [['blackout-3-pass'], {}],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'unlined cotton in strong sun fades and rots fast',
    rule: 'unlined-cotton-in-sun',
    level: 'caution',
    fires: [[], { face: COTTON, room: { facing: 'W' } }],
    quiet: [['std-white'], { face: COTTON, room: { facing: 'W' } }],
  },
  {
    fact: 'any lining slows fading',
    rule: 'lining-slows-fading',
    level: 'praise',
    fires: [['std-white'], { room: { facing: 'W' } }],
    quiet: [[], { room: { facing: 'W' } }],
  },
  {
    fact: 'silk is always lined',
    rule: 'silk-unlined',
    level: 'caution',
    fires: [[], { face: { family: 'silk' } }],
    quiet: [['std-white'], { face: { family: 'silk' } }],
  },
  {
    fact: 'silk is best interlined',
    rule: 'silk-interline',
    level: 'note',
    fires: [['std-white'], { face: { family: 'silk' } }],
    quiet: [['inter-light', 'std-white'], { face: { family: 'silk' } }],
  },
  {
    fact: 'the sunny leading edge of silk goes first',
    rule: 'silk-leading-edge',
    level: 'note',
    fires: [['inter-light', 'std-white'], { face: { family: 'silk' }, room: { facing: 'SW' } }],
    quiet: [['inter-light', 'std-white'], { face: { family: 'silk' }, room: { facing: 'N' } }],
  },
  {
    fact: 'a heavy lining lends body to a thin face',
    rule: 'body-lent',
    level: 'praise',
    fires: [['inter-light', 'std-white'], { face: { weight: 110 } }],
    quiet: [['inter-light', 'std-white'], { face: { weight: 300 } }],
  },
  {
    fact: 'a light lining suits a heavy face',
    rule: 'light-lining-suits-heavy-face',
    level: 'praise',
    fires: [['std-white'], { face: { family: 'velvet' } }],
    quiet: [['std-white'], { face: { family: 'print' } }],
  },
  {
    fact: 'a nursery or child’s room has no reachable cord',
    rule: 'cords-child',
    level: 'caution',
    fires: [['std-white'], { room: { use: 'child' } }],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'cords are cautioned of everywhere',
    rule: 'cords',
    level: 'note',
    fires: [['std-white'], {}],
    quiet: [['std-white'], NURSERY],
  },
  {
    fact: 'cloth keeps clear of heat below the window',
    rule: 'heat-source-below',
    level: 'caution',
    fires: [['std-white'], { opening: { heatSourceBelow: true }, treatment: { finishedLength: lengthFrom(58, 'in') } }],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'cloth that hangs before a heater over its whole height cannot keep clear of it',
    rule: 'heat-behind-cloth',
    level: 'caution',
    fires: [['std-white'], { opening: { heatSourceBelow: true } }],
    quiet: [['std-white'], { opening: { heatSourceBelow: true }, treatment: { finishedLength: lengthFrom(58, 'in') } }],
  },
  {
    fact: 'very light interlining is body for thin silk; a thick one is not',
    rule: 'thick-for-thin-face',
    level: 'note',
    fires: [['inter-heavy', 'std-white'], { face: { weight: 110 } }],
    quiet: [['inter-light', 'std-white'], { face: { weight: 110 } }],
  },
  {
    fact: 'a sheer has no seam of its own, and a lining’s shows in it',
    rule: 'seams-in-sheer',
    level: 'caution',
    fires: [['std-white'], { face: SHEER }],
    quiet: [[], { face: SHEER }],
  },
  {
    fact: 'a sheer lets the light in; a lining takes it',
    rule: 'lining-behind-sheer',
    level: 'note',
    fires: [['std-white'], { face: SHEER }],
    quiet: [['std-white'], { face: SHEER, room: { use: 'bedroom' } }],
  },
  {
    fact: 'hems and seams stay lighter behind black cloth too',
    rule: 'lighter-edges',
    level: 'note',
    fires: [['inter-med', 'black-sateen', 'std-white'], {}],
    quiet: [['inter-med', 'std-white'], {}],
  },
  {
    fact: 'black cloth before sunny glass heats it too',
    rule: 'thermal-stress',
    level: 'note',
    fires: [['black-sateen', 'std-white'], { room: { facing: 'W' } }],
    quiet: [['std-white'], { room: { facing: 'W' } }],
  },
  {
    fact: 'public rooms need a flame-tested stack',
    rule: 'flame-test',
    level: 'caution',
    fires: [['std-white'], { room: { use: 'public' } }],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'exits and escape windows stay free',
    rule: 'ways-out',
    level: 'note',
    fires: [['std-white'], { room: { use: 'public' } }],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'heavy drapery falls',
    rule: 'heavy-hang',
    level: 'caution',
    fires: [['inter-heavy', 'std-white'], { face: { family: 'velvet' } }],
    quiet: [['std-white'], { face: { family: 'sheer' } }],
  },
  {
    fact: 'tight heavy stacks over cold glass cause condensation and mould',
    rule: 'condensation',
    level: 'caution',
    fires: [['inter-heavy', 'std-white'], { room: { climate: 'cold' }, opening: { glazing: 'single' } }],
    quiet: [['inter-heavy', 'std-white'], { room: { climate: 'warm' }, opening: { glazing: 'triple' } }],
  },
  {
    fact: 'a dense stack before sunny glass can stress some glass',
    rule: 'thermal-stress',
    level: 'note',
    fires: [['blackout-3-pass'], { room: { facing: 'S' } }],
    quiet: [['blackout-3-pass'], { room: { facing: 'N' } }],
  },
  {
    fact: 'a lined media room is not dark',
    rule: 'room-not-dark',
    level: 'note',
    fires: [['std-white'], { room: { use: 'media' } }],
    quiet: [['soft-blackout'], { room: { use: 'media' } }],
  },
  {
    fact: 'a nursery with interlining alone is not dark, however heavy the face',
    rule: 'nursery-not-dark',
    level: 'caution',
    fires: [['inter-heavy', 'std-white'], { ...NURSERY, face: { family: 'velvet' } }],
    quiet: [['soft-blackout'], { ...NURSERY, face: { family: 'velvet' } }],
  },
  {
    fact: 'a thick stack is bulky at the heading and draws back wider',
    rule: 'bulky-heading',
    level: 'note',
    fires: [['inter-heavy', 'std-white'], {}],
    quiet: [['inter-light', 'std-white'], {}],
  },
  {
    fact: 'a thin unlined face is limp for pleats',
    rule: 'limp-for-heading',
    level: 'note',
    fires: [[], { face: { family: 'silk' } }],
    quiet: [['inter-light', 'std-white'], { face: { family: 'silk' } }],
  },
  {
    fact: 'unlined in strong sun any face takes the fading itself',
    rule: 'unlined-in-sun',
    level: 'note',
    fires: [[], { room: { facing: 'S' } }],
    quiet: [[], { room: { facing: 'N' } }],
  },
  {
    fact: 'a lining cut in other widths has its seams elsewhere',
    rule: 'seams-apart',
    level: 'note',
    fires: [['std-white'], { made: { liningMatchesFace: false } }],
    quiet: [['std-white'], {}],
  },
  {
    fact: 'glass that is wet even bare is said to be',
    rule: 'condensation-anyway',
    level: 'note',
    fires: [['std-white'], { room: { climate: 'cold' }, opening: { glazing: 'single' }, treatment: { returns: NONE } }],
    quiet: [['std-white'], { room: { climate: 'warm' }, opening: { glazing: 'triple' } }],
  },
  {
    fact: 'panels that do not draw keep out little',
    rule: 'still-panels',
    level: 'note',
    fires: [['std-white'], { treatment: { arrangement: 'pair-stationary' } }],
    quiet: [['std-white'], {}],
  },
];

describe('facts of the trade (common practice)', () => {
  it.each(FACTS.map((fact) => [`${fact.rule}: ${fact.fact}`, fact] as const))('%s', (_, fact) => {
    expect(levelOf(judge(starters(...fact.fires[0]), fact.fires[1]), fact.rule)).toBe(fact.level);
    expect(rulesOf(judge(starters(...fact.quiet[0]), fact.quiet[1]))).not.toContain(fact.rule);
  });

  it('a lining much narrower than a joined face is cautioned of, one a few inches narrower is not', () => {
    const narrow = (inches: number) => rulesOf(judge([ownOf('std-white', { usableWidth: lengthFrom(inches, 'in') })]));
    expect(narrow(45)).toContain('lining-narrower');
    expect(narrow(51)).not.toContain('lining-narrower');
    expect(narrow(54)).not.toContain('lining-narrower');
  });
  it('a lining much wider is waste', () => {
    expect(rulesOf(judge([ownOf('std-white', { usableWidth: lengthFrom(60, 'in') })]))).toContain('lining-wider');
  });
  it('a coloured lining shows what daylight through it does to the face', () => {
    const found = judge([ownOf('std-white', { family: 'contrast', shade: '#d08a3a' } as never)]);
    expect(found.advice.find((each) => each.rule === 'coloured-lining-shift')?.says).toMatch(/tints the face/);
  });

  it('most lining is about 54 in wide', () => {
    for (const id of GENERIC_CLOTH_IDS) expect(STARTER_CLOTH[id].width).toBe(lengthFrom(54, 'in'));
  });
  it('typical weights: lining 120 to 240, interlining 160 to 260, thick 280 to 410, three-pass 220 to 300 g/m2', () => {
    const within = (id: GenericClothId, low: number, high: number) => {
      expect(STARTER_CLOTH[id].weight, id).toBeGreaterThanOrEqual(low);
      expect(STARTER_CLOTH[id].weight, id).toBeLessThanOrEqual(high);
    };
    for (const id of ['std-white', 'std-ivory', 'combo-white', 'dim-out', 'soft-blackout', 'black-sateen'] as const)
      within(id, 120, 240);
    within('inter-light', 160, 260);
    within('inter-med', 160, 260);
    within('inter-heavy', 280, 410);
    within('blackout-3-pass', 220, 300);
  });
  it('5 oz a square yard is a good light lining, 5 to 6 serves most work, 7 is firm, 10 a luxury weight', () => {
    const named = (ounces: number) => nameLiningWeight(parseWeight(`${ounces} oz/yd2`, lengthFrom(54, 'in')) ?? 0);
    expect([4, 5, 6, 7, 9, 10].map(named)).toEqual(['light', 'light', 'middling', 'firm', 'firm', 'luxury']);
    // The same 5 oz by the running yard is lighter: it is always asked which is meant, and a bare 5 oz is not read.
    expect(nameLiningWeight(parseWeight('7 oz/yd', lengthFrom(54, 'in')) ?? 0)).toBe('light');
    expect(parseWeight('5 oz', lengthFrom(54, 'in'))).toBeNull();
  });
  it('5 oz a running yard at 54 in is 113 g/m2, 5 oz a square yard 170', () => {
    expect(parseWeight('5 oz/yd', lengthFrom(54, 'in'))).toBeCloseTo(113, 0);
    expect(parseWeight('5 oz/yd2', lengthFrom(54, 'in'))).toBeCloseTo(169.5, 1);
  });
  it('a soft blackout stops about 95 % of light, three-pass all but a ten-thousandth', () => {
    expect(STARTER_CLOTH['soft-blackout'].visible?.transmittance).toBe(0.05);
    expect(STARTER_CLOTH['blackout-3-pass'].visible?.transmittance).toBe(0.0001);
  });
  it('interlining darkens and insulates more than lining alone, and gives body', () => {
    const lined = judge(starters('std-white')).readings;
    const inter = judge(starters('inter-med', 'std-white')).readings;
    expect(inter.light).toBeLessThan(lined.light);
    expect(inter.warmth).toBeGreaterThan(lined.warmth);
    expect(inter.body).toBeGreaterThan(lined.body);
    expect(inter.fade).toBeGreaterThan(lined.fade);
  });
  it('any lining slows fading; a blackout all but stops it; interlining does better than lining', () => {
    expect(judge([]).readings.fade).toBe(0);
    const found = (['std-white', 'combo-white', 'soft-blackout', 'blackout-3-pass'] as const).map(
      (id) => judge(starters(id)).readings.fade,
    );
    expect([...found].sort((a, b) => a - b)).toEqual(found);
    expect(found[0]).toBeGreaterThan(0.4);
    expect(found[3]).toBeGreaterThan(0.99);
  });
  it('the yellower the lining the larger the shift, and white is the least', () => {
    const shift = (shade: string) => judge([ownOf('std-white', { shade })]).readings.colourShift;
    expect(shift('white')).toBeLessThan(shift('#f6f2e6'));
    expect(shift('#f6f2e6')).toBeLessThan(shift('#efe3bd'));
  });
  it('ivory behind blackout does not matter: no daylight comes through', () => {
    const found = judge([ownOf('blackout-3-pass', { shade: 'ivory' })]);
    expect(rulesOf(found)).not.toContain('ivory-shift');
    expect(found.words.colour.words).toBe('as by night');
  });
  it('behind blackout the face looks at noon as by room light; behind white lining it glows', () => {
    const face = faceOf({ colour: '#c9b79a' });
    const glow = (behind: readonly GenericClothId[]) =>
      faceAppearance(face, starters(...behind), 'double', LIGHT_SETTINGS.noon).glow;
    expect(glow(['std-white'])).toBeGreaterThan(1.5);
    expect(glow(['inter-med', 'std-white'])).toBeLessThan(glow(['std-white']));
    expect(glow(['blackout-3-pass'])).toBeLessThan(0.7);
  });
  it('words run from glows to dark but for its edges', () => {
    const words = (...ids: readonly GenericClothId[]) => judge(starters(...ids)).words.light.words;
    expect(words('std-white')).toBe('glows');
    expect(words('inter-med', 'std-white')).toBe('dim');
    expect(words('soft-blackout')).toBe('nearly dark');
    expect(words('blackout-3-pass')).toBe('dark but for its edges');
  });
  it('a lined print is soft, interlined full, soft blackout medium, three-pass firm', () => {
    const words = (...ids: readonly GenericClothId[]) => judge(starters(...ids)).words.body.words;
    expect(words('std-white')).toBe('soft');
    expect(words('inter-med', 'std-white')).toBe('full');
    expect(words('soft-blackout')).toBe('medium');
    expect(words('blackout-3-pass')).toBe('firm');
  });
});

describe('advice as a whole', () => {
  it('every rule is told of in a test', () => {
    const texts = ['common-practice.test.ts', 'kinds.test.ts'].map((name) =>
      readFileSync(new URL(name, import.meta.url), 'utf8'),
    );
    const untold = RULES.filter((rule) => !texts.some((text) => text.includes(`'${rule.id}'`)));
    expect(untold.map((rule) => rule.id)).toEqual([]);
  });
  const everyCase = ROOM_USES.flatMap((use) =>
    HEADINGS.flatMap((name) =>
      FACE_FAMILIES.flatMap((family) =>
        (
          [
            [],
            ['std-white'],
            ['std-ivory'],
            ['inter-heavy', 'std-white'],
            ['blackout-3-pass'],
            ['soft-blackout'],
          ] as const
        ).map((ids) => ({ use, name, family, ids })),
      ),
    ),
  );
  it('never says one thing twice, claims no class of a standard, is short, and holds no dash art', () => {
    for (const { use, name, family, ids } of everyCase) {
      const { advice } = judge(starters(...ids), {
        face: { family },
        room: { use, facing: 'W' },
        treatment: { heading: name },
      });
      expect(new Set(advice.map((each) => each.says)).size).toBe(advice.length);
      for (const { says } of advice) {
        expect(says.length).toBeLessThan(190);
        expect(says).not.toMatch(/\bclass\b|certified|grade|guarantee|[\u2013\u2014]/i);
      }
    }
  });
});
