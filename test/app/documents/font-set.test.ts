/** Letters: every one is checked before anything is drawn, falls back by family, or fails by name. */
import { describe, expect, it } from 'vitest';
import * as fontkit from 'fontkit';
import { drawProposal } from '#app/documents/draw-proposal.ts';
import { FEATURES } from '#app/documents/font-set.ts';
import { MissingLetter } from '#app/documents/missing-letter.ts';
import { writeDocument } from '#app/documents/write-document.ts';
import type { LaidPage, PageItem } from '#app/documents/page-item.ts';
import type { Text } from '#app/drawing/shape.ts';
import { paperOf } from '../proposal/sample-house.ts';
import type { HouseGiven } from '../proposal/sample-house.ts';
import { extractPages, FONTS, fontSet, givenOf, hasPdfToText, readWithPdfToText } from './read-paper.ts';

const fonts = fontSet();
const META = {
  title: 'Letters',
  author: 'Thistle & Thread',
  subject: 'Letters',
  language: 'en',
  date: '2026-11-25',
  id: 'letters',
  programVersion: '1.2.3',
};

const LETTERS = '½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ″ ′ é ł ñ ø ß Ł Ż č € £ ¥ × ÷ ≈ – “ ” ’ … ° ²';

function pageOf(lines: readonly Pick<Text, 'text' | 'font' | 'weight'>[]): LaidPage {
  const items = lines.map((line, i): PageItem => {
    const text: Text = { kind: 'text', x: 0, y: 0, size: 12, anchor: 'start', paint: 'ink', ...line };
    return { role: 'P', field: `lines[${i}]`, x: 54, y: 72 + 24 * i, shapes: [text] };
  });
  return { width: 612, height: 792, items };
}

const LOOKS = [
  ['sans', 'regular'],
  ['sans', 'semibold'],
  ['serif', 'regular'],
  ['serif', 'semibold'],
] as const;

describe('letters', () => {
  it.each(LOOKS)('%s %s prints and extracts them exactly', async (font, weight) => {
    const { bytes } = await writeDocument([pageOf([{ text: LETTERS, font, weight }])], META, fonts);
    const [read = ''] = await extractPages(bytes);
    expect(read.replace(/\s+/gu, ' ').trim()).toBe(LETTERS);
  });

  // It takes single letters with spaces between for one word set wide: words are what it is asked for.
  it.runIf(hasPdfToText).each(LOOKS)('%s %s: another reader finds words of them', async (font, weight) => {
    const words = '84½ in, 3⅝″ × 2⅛″, Éloïse in Łódź, 12 € a yard';
    const { bytes } = await writeDocument([pageOf([{ text: words, font, weight }])], META, fonts);
    expect(readWithPdfToText(bytes).trim()).toBe(words);
  });

  it.each(LOOKS)('%s %s, shaped word by word, is what fontkit makes of the whole line', (font, weight) => {
    const lines = ['AV To. Ye, “Tall” — LT VA WA 11 ½ P. A 7 Y', ' To  AVA  Ty', 'Vat', 'Yoke Ada Tide W, V. Te '];
    for (const run of lines.flatMap((text) => fonts.split(text, { font, weight }, 'field'))) {
      const face = fontkit.create(Buffer.from(FONTS[run.face])) as fontkit.Font;
      const { glyphs, positions } = face.layout(run.text, FEATURES);
      const scale = 1000 / face.unitsPerEm;
      const kern = positions.map((each, i) => (each.xAdvance - (glyphs[i]?.advanceWidth ?? 0)) * scale);
      const advance = positions.reduce((sum, each) => sum + each.xAdvance, 0) * scale;
      expect(fonts.kern(run)).toHaveLength(kern.length);
      for (const [i, each] of kern.entries()) expect(fonts.kern(run)[i]).toBeCloseTo(each, 6);
      expect(fonts.widthOf(run, 1000)).toBeCloseTo(advance, 6);
    }
    const apart = ['A', 'V', ' ', 'T', 'o'].reduce((sum, each) => sum + fonts.measure(each, { font, weight }, 12), 0);
    expect(fonts.measure('AV To', { font, weight }, 12)).toBeLessThan(apart);
  });

  it('one that the serif lacks is set in the sans, in its place', () => {
    const runs = fonts.split('84⅝″ wide', { font: 'serif', weight: 'semibold' }, 'field');
    expect(runs.map((run) => run.face)).toContain('textSemiBold');
    expect(runs.map((run) => run.text).join('')).toBe('84⅝″ wide');
  });

  it('one that nobody has fails by its name and its field', () => {
    const split = () => fonts.split('Ada 中 Fenn', { font: 'sans', weight: 'regular' }, 'client.name');
    expect(split).toThrow(MissingLetter);
    expect(split).toThrow('client.name: the letter "中" (U+4E2D)');
  });

  it.each([
    ['client.name', { client: { name: 'Ada 中' } }],
    ['letterhead.name', { letterhead: { name: 'Thistle 𝄞 Thread', lines: [] } }],
  ] satisfies [string, HouseGiven['change']][])(
    'a proposal with such a letter in %s is not printed',
    async (field, change) => {
      const { paper } = paperOf({ windows: 1, change });
      await expect(drawProposal(paper, givenOf())).rejects.toMatchObject({ name: 'MissingLetter', field });
    },
  );

  it('accents in two pieces print as one letter', async () => {
    const { paper } = paperOf({ windows: 1 });
    const apart = { ...paper, client: { name: 'E\u0301loi\u0308se\u200b Fenn', lines: [] } };
    const [first = ''] = await extractPages((await drawProposal(apart, givenOf())).bytes);
    expect(first).toContain('Éloïse Fenn');
  });
});

describe('widths', () => {
  it('kerning is in the width: AV is narrower than A and V', () => {
    const look = { font: 'serif', weight: 'semibold' } as const;
    const apart = fonts.measure('A', look, 100) + fonts.measure('V', look, 100);
    expect(fonts.measure('AV', look, 100)).toBeLessThan(apart);
  });

  it('figures of the sans are tabular', () => {
    const widths = '0 1 2 3 4 5 6 7 8 9'
      .split(' ')
      .map((digit) => fonts.measure(digit, { font: 'sans', weight: 'regular' }, 100));
    expect(new Set(widths.map((width) => width.toFixed(3))).size).toBe(1);
  });
});

describe('what the file says of itself', () => {
  it('title, author, language, dates, tags', async () => {
    const { getDocumentProxy } = await import('unpdf');
    const { paper } = paperOf({ windows: 1 });
    const { bytes } = await drawProposal(paper, givenOf());
    const document = await getDocumentProxy(bytes.slice());
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({
      Title: 'Proposal 2026-014, revision 2, for Ada Fenn',
      Author: 'Thistle & Thread',
      Producer: 'Linenfold 1.2.3',
      CreationDate: 'D:20261125120000Z',
      ModDate: 'D:20261125120000Z',
      Language: 'en',
    });
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const tree = await (await document.getPage(2)).getStructTree();
    const roles = JSON.stringify(tree);
    for (const role of ['H1', 'H3', 'P', 'Figure']) expect(roles).toContain(`"role":"${role}"`);
    expect(roles).toContain('Elevation to scale');
  });
});
