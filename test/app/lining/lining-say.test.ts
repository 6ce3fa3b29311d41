/** Figures of readings, advice and working in the decimal sign of the locale, as the take-off writes them. */
import { describe, expect, it } from 'vitest';
import { GENERIC_CLOTH_IDS } from '#shared/words.ts';
import { decimalSign, LOCALES } from '#shared/locale.ts';
import type { Locale } from '#shared/locale.ts';
import type { Judgement, WorkingStep } from '#shared/result.ts';
import { judgeOpening } from '#app/lining/judge-opening.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { measureTransmittance } from '#app/lining/cloth/home-measure.ts';
import { liningSay } from '#app/lining/say/lining-say.ts';
import { caseOf, KINDS } from './kind-case.ts';
import type { KindName } from './kind-case.ts';
import { inputOf, ownOf, starters } from './window-case.ts';
import type { BackCloth } from '#shared/cloth.ts';

const NAMES = Object.keys(KINDS) as KindName[];
const STACKS: readonly (readonly BackCloth[])[] = [
  [],
  ...GENERIC_CLOTH_IDS.map((id) => starters(id)),
  starters('inter-heavy', 'black-sateen', 'std-white'),
  [ownOf('std-white', { shade: '#3366aa', usableWidth: 300000 as never })],
];
const COMMA = LOCALES.filter((locale) => decimalSign(locale) === ',');

function textsOf({ words, advice, working }: Judgement): readonly string[] {
  return [
    ...Object.values(words).flatMap((each) => [each.words, each.figure, each.rests]),
    ...advice.map((each) => each.says),
    ...stepTexts(working),
  ];
}

function stepTexts(working: readonly WorkingStep[]): readonly string[] {
  return working.flatMap((step) => [step.formula, step.value, step.rests]);
}

/** Every judgement of these tests, told in one locale. */
function toldIn(locale: Locale): readonly string[] {
  const inputs = STACKS.flatMap((behind) =>
    (['in', 'cm'] as const).flatMap((units) => [
      { ...inputOf(behind), units, locale },
      ...NAMES.map((name) => caseOf(name, behind, { made: { grams: 5432, brackets: 3 } }, { units, locale })),
    ]),
  );
  const [first] = inputs;
  if (first === undefined) throw new Error('there is no case');
  const together = judgeOpening(first.room, first.opening, [
    { name: 'Drapery', input: { ...first, behind: starters('std-white') }, drawn: true },
    { name: 'Sheer', input: first, drawn: true },
  ]);
  const measured = measureTransmittance({
    pairs: [{ bare: 3210.5, covered: 33.4 }],
    glazing: 'double',
    reflectance: null,
    locale,
  });
  return [
    ...inputs.flatMap((input) => textsOf(judgeStack(input))),
    ...stepTexts(together.working),
    ...stepTexts([measured.working]),
  ];
}

describe('the decimal sign of the locale', () => {
  const pointed = toldIn('en-GB');
  it.each(COMMA)('%s: no decimal is left with a point, and a figure is the same figure', (locale) => {
    const told = toldIn(locale);
    expect(told).toHaveLength(pointed.length);
    told.forEach((text, i) => {
      expect(text).not.toMatch(/\d\.\d/);
      // A comma between the figures of a list gives way to a semicolon.
      expect(text.replace(/; (?=-?\d|[A-Z])/gu, ', ').replace(/(\d),(\d)/gu, '$1.$2')).toBe(
        (pointed[i] ?? '').replace(/; (?=-?\d|[A-Z])/gu, ', '),
      );
    });
    expect(told.some((text) => /\d,\d/u.test(text))).toBe(true);
  });

  it('the figures of a colour stay apart', () => {
    const step = judgeStack({ ...inputOf(starters('std-ivory')), locale: 'de-DE' }).working.find(
      ({ id }) => id === 'colour-shift',
    );
    expect(step?.formula).toMatch(/\(\d+,\d; -?\d+,\d; -?\d+,\d\) and \(/);
  });
});

describe('figures', () => {
  const say = liningSay('cm', 'pl-PL');
  it.each([
    [say.figure(0.0413), '0,0413'],
    [say.figure(0.00000123), '0,00000123'],
    [say.figure(0), '0'],
    [say.percent(0.004), '0,4 %'],
    [say.percent(0.0004), 'less than 0,1 %'],
    [say.percent(0.999), 'over 99 %'],
    [say.about(0.004), 'about 0,4 %'],
    [say.about(0.0004), 'less than 0,1 %'],
    [say.weight(5.44), '5,4 kg'],
    [say.areaWeight(240.4), '240 g/m²'],
    [say.resistance(0.0876), '0,088 m²K/W'],
    [liningSay().resistance(0.0876), '0.088 m²K/W (R 0.5)'],
    [liningSay().weight(5.44), '12 lb'],
  ])('%s', (found, expected) => {
    expect(found).toBe(expected);
  });
});
