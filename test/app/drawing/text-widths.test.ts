/** The generated widths against the font files themselves, laid out by fontkit without kerning. */
import * as fontkit from 'fontkit';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { fitText, textBox } from '#app/drawing/label-field.ts';
import { textWidth } from '#app/drawing/text-widths.ts';

const require = createRequire(import.meta.url);
const FACES = [
  ['serif', 'regular', 'fraunces/400Regular/Fraunces_400Regular.ttf'],
  ['serif', 'semibold', 'fraunces/600SemiBold/Fraunces_600SemiBold.ttf'],
  ['sans', 'regular', 'source-sans-3/400Regular/SourceSans3_400Regular.ttf'],
  ['sans', 'semibold', 'source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf'],
] as const;

describe.each(FACES)('%s %s', (family, weight, file) => {
  const font = fontkit.openSync(require.resolve(`@expo-google-fonts/${file}`)) as fontkit.Font;

  test.each(['Nursery', '84½', '103⅝', '≈215,58', 'Wohnzimmer Süd', 'pokój dziecięcy', 'Łazienka', 'ceiling 108 in'])(
    '"%s"',
    (words) => {
      const advances = [...words].map((letter) => font.glyphForCodePoint(letter.codePointAt(0)!).advanceWidth);
      const wanted = (advances.reduce((sum, each) => sum + each, 0) * 12) / font.unitsPerEm;
      const known = [...words].every((letter) => font.hasGlyphForCodePoint(letter.codePointAt(0)!));
      // Rounded to a thousandth of the size for each letter; letters that the face lacks are reckoned wide.
      if (known) expect(Math.abs(textWidth(words, family, weight, 12) - wanted)).toBeLessThan(0.006 * words.length);
      else expect(textWidth(words, family, weight, 12)).toBeGreaterThan(0);
    },
  );

  test('figures are all as wide as one another in the sans, so that columns stand', () => {
    if (family !== 'sans') return;
    const widths = Array.from({ length: 10 }, (_, figure) => String(figure)).map((figure) =>
      textWidth(figure, family, weight, 10),
    );
    expect(new Set(widths).size).toBe(1);
  });
});

test('twice the size is twice as wide, two words as wide as both', () => {
  expect(textWidth('rod', 'sans', 'regular', 20)).toBeCloseTo(2 * textWidth('rod', 'sans', 'regular', 10), 9);
  expect(textWidth('rod face', 'sans', 'regular', 10)).toBeCloseTo(
    textWidth('rod', 'sans', 'regular', 10) + textWidth(' face', 'sans', 'regular', 10),
    9,
  );
});

test('a name too long is cut with an ellipsis and fits', () => {
  const look = { font: 'sans', weight: 'regular', size: 12 } as const;
  const cut = fitText('Stairwell casement number 3', look, 80);
  expect(cut.endsWith('…')).toBe(true);
  expect(textWidth(cut, 'sans', 'regular', 12)).toBeLessThanOrEqual(80);
  expect(fitText('Hall', look, 80)).toBe('Hall');
  expect(fitText('Stairwell', look, 4)).toBe('');
});

test.each([
  ['start', 100],
  ['middle', 100],
  ['end', 100],
] as const)('a box anchored at its %s covers the words', (anchor, x) => {
  const box = textBox({
    kind: 'text',
    x,
    y: 50,
    text: '84½',
    size: 10,
    anchor,
    font: 'sans',
    weight: 'regular',
    paint: 'ink',
  });
  const left = { start: x, middle: x - box.width / 2, end: x - box.width }[anchor];
  expect(box.x).toBeCloseTo(left, 9);
  expect(box.y).toBeLessThan(50);
});
