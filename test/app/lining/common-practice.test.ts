/** Facts of the trade (common practice; no published source): the program's advice and defaults agree with each. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import { parseWeight } from '#shared/weight.ts';
import { FACE_FAMILIES, GENERIC_CLOTH_IDS, HEADINGS, ROOM_USES } from '#shared/words.ts';
import type { GenericClothId } from '#shared/words.ts';
import { nameLiningWeight } from '#app/lining/cloth/lining-weight.ts';
import { RULES } from '#app/lining/rules/index.ts';
import { STARTER_CLOTH } from '#app/lining/cloth/starter-cloth.ts';
import { faceAppearance, LIGHT_SETTINGS } from '#app/lining/light-and-heat/show-light.ts';
import { FACTS } from './facts-of-windows.ts';
import { faceOf, judge, levelOf, ownOf, rulesOf, starters } from './window-case.ts';

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
  it('the working grades the lining: ivory is less white and yellower than white, and unlined there is nothing to grade', () => {
    const graded = (...ids: GenericClothId[]) =>
      judge(starters(...ids)).working.find(({ id }) => id === 'lining-white');
    const numbers = (...ids: GenericClothId[]) =>
      /^whiteness (-?\d+), tint (-?\d+), yellowness (-?\d+)$/.exec(graded(...ids)?.value ?? '')?.map(Number) ?? [];
    const [, white = 0, , yellow = 0] = numbers('std-white');
    const [, ivoryWhite = 0, , ivoryYellow = 0] = numbers('std-ivory');
    expect(ivoryWhite).toBeLessThan(white);
    expect(ivoryYellow).toBeGreaterThan(yellow);
    expect(graded()).toBeUndefined();
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
    const texts = ['common-practice.test.ts', 'facts-of-windows.ts', 'kinds.test.ts', 'facts-of-kinds.ts'].map((name) =>
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
