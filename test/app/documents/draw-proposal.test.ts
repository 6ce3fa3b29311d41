/** The proposal as a PDF: what is asked for is what is printed, inside the margins, nothing over anything else. */
import { describe, expect, it } from 'vitest';
import { drawProposal } from '#app/documents/draw-proposal.ts';
import { layOutProposal } from '#app/documents/lay-out-proposal.ts';
import type { LaidPage } from '#app/documents/page-item.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { overlap } from '#app/drawing/label-field.ts';
import type { Bounds } from '#app/drawing/shape.ts';
import type { Audience } from '#app/proposal/proposal-paper.ts';
import { TIERS } from '#shared/words.ts';
import { flatten } from '../drawing/read-drawing.ts';
import { paperOf } from '../proposal/sample-house.ts';
import type { HouseGiven } from '../proposal/sample-house.ts';
import {
  askedLetters,
  boundsOf,
  extractPages,
  fontSet,
  givenOf,
  hasPdfToText,
  lettersOf,
  placedTexts,
  readWithPdfToText,
} from './read-paper.ts';

const fonts = fontSet();

const CASES: readonly (readonly [string, HouseGiven, 'letter' | 'a4', Audience])[] = [
  ['one window', { windows: 1 }, 'letter', 'client'],
  ['three windows', { windows: 3 }, 'letter', 'client'],
  ['three windows on A4', { windows: 3 }, 'a4', 'client'],
  ['twenty windows', { windows: 20 }, 'letter', 'client'],
  ['twenty windows on A4', { windows: 20 }, 'a4', 'client'],
  ['long names', { windows: 5, longNames: true }, 'letter', 'client'],
  ['the decorator’s copy', { windows: 3, change: { priceBook: 'example' } }, 'letter', 'decorator'],
  ['the decorator’s copy with long names on A4', { windows: 3, longNames: true }, 'a4', 'decorator'],
];

/** Rounding of coordinates, and half a line's width. */
const SLACK = 1;

function outside(box: Bounds, page: LaidPage, frame: (typeof FRAMES)['letter']): boolean {
  return (
    box.x < frame.left - SLACK ||
    box.x + box.width > frame.right + SLACK ||
    box.y < 30 ||
    box.y + box.height > page.height - 24
  );
}

describe.each(CASES)('%s', (_, house, size, audience) => {
  const { paper } = paperOf(house, { audience });
  const frame = FRAMES[size];
  const pages = layOutProposal(paper, frame, fonts);

  it('no text lies on another', () => {
    for (const page of pages) {
      const texts = placedTexts(page, fonts);
      texts.forEach((text, i) => {
        const under = texts.slice(i + 1).filter((other) => overlap(text.box, other.box));
        expect(under.map((other) => `${text.field} "${text.text}" and ${other.field} "${other.text}"`)).toEqual([]);
      });
    }
  });

  it('nothing lies outside the margins', () => {
    for (const page of pages) {
      const texts = placedTexts(page, fonts).filter(({ box }) => outside(box, page, frame));
      expect(texts.map((text) => `${text.field} "${text.text}"`)).toEqual([]);
      for (const item of page.items) {
        for (const shape of flatten(item.shapes)) {
          const box = boundsOf(shape);
          const there = box && { ...box, x: box.x + item.x, y: box.y + item.y };
          expect(there && outside(there, page, frame) ? `${item.field} ${JSON.stringify(shape)}` : '').toBe('');
        }
      }
    }
  });

  it('content ends above the foot, and no page is empty', () => {
    pages.forEach((page, i) => {
      const content = page.items.filter((item) => item.role !== 'Artifact');
      expect(content.length, `page ${i + 1}`).toBeGreaterThan(0);
      const lowest = Math.max(...placedTexts({ ...page, items: content }, fonts).map(({ box }) => box.y + box.height));
      expect(lowest).toBeLessThan(frame.bottom + 2);
    });
  });

  it('a window’s prices stand on the page of its options', () => {
    paper.windows.forEach((__, i) => {
      const pageOf = (field: string) =>
        pages.findIndex((page) => page.items.some((item) => item.field === `windows[${i}].options[0].${field}`));
      expect(pageOf('price')).toBe(pageOf('title'));
      expect(pageOf('litWindow')).toBe(pageOf('title'));
    });
  });

  it('signature and at least one line to accept stand on one page', () => {
    const sign = pages.find((page) => page.items.some((item) => item.field === 'closing.acceptance.blanks[0]'));
    expect(sign?.items.some((item) => item.field.startsWith('closing.acceptance.lines'))).toBe(true);
  });

  it('what is read from the file is what was asked for, letter for letter', async () => {
    const drawn = await drawProposal(paper, givenOf({ page: size }));
    const read = await extractPages(drawn.bytes);
    expect(drawn.pages).toBe(pages.length);
    expect(read.map(lettersOf)).toEqual(pages.map(askedLetters));
  });

  it('every page but its count carries the reference and its number', async () => {
    const asked = pages.map(askedLetters);
    asked.forEach((letters, i) => {
      expect(letters).toContain(lettersOf(`page ${i + 1} of ${pages.length}`));
      expect(letters).toContain(lettersOf(paper.reference));
      if (paper.mark !== null) expect(letters).toContain(lettersOf(paper.mark));
    });
  });
});

describe('numbers in the file', () => {
  it.each([1, 3, 20])(
    '%i windows: every amount is one of the result’s, and the printed ones add up',
    async (windows) => {
      const { result, paper } = paperOf({ windows });
      const { bytes } = await drawProposal(paper, givenOf());
      const text = (await extractPages(bytes)).join(' ');
      const printed = [...text.matchAll(/\$([\d,]+\.\d\d)/gu)].map((found) => Number(found[1]!.replace(/[,.]/gu, '')));
      const known = new Set<number>();
      for (const tier of TIERS) {
        const totals = result.totals![tier];
        [totals.net, totals.total, totals.deposit, ...totals.taxes.map((tax) => tax.amount)].forEach((amount) =>
          known.add(amount),
        );
        const prices = result.treatments.map((treatment) => treatment.tiers[tier].price!);
        prices.forEach((price) => known.add(price.total));
        for (const price of prices) expect(price.lines.reduce((sum, line) => sum + line.amount, 0)).toBe(price.total);
        expect(prices.reduce((sum, price) => sum + price.total, 0)).toBe(totals.net);
        expect(totals.net + totals.taxes.reduce((sum, tax) => sum + tax.amount, 0)).toBe(totals.total);
      }
      expect(printed.filter((amount) => !known.has(amount))).toEqual([]);
      for (const amount of known) expect(printed).toContain(amount);
    },
  );
});

describe('bytes', () => {
  it('the same paper and id give the same bytes; another id does not', async () => {
    const { paper } = paperOf({ windows: 2 });
    const [one, two, other] = await Promise.all([
      drawProposal(paper, givenOf()),
      drawProposal(structuredClone(paper), givenOf()),
      drawProposal(paper, givenOf({ id: 'another' })),
    ]);
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
    expect(Buffer.compare(one.bytes, other.bytes)).not.toBe(0);
  });

  it('a paper kept as JSON prints the same bytes', async () => {
    const { paper } = paperOf({ windows: 2 });
    const kept = JSON.parse(JSON.stringify(paper)) as typeof paper;
    const [one, two] = await Promise.all([drawProposal(paper, givenOf()), drawProposal(kept, givenOf())]);
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
  });

  it.runIf(hasPdfToText)('another reader finds the same amounts and typeset fractions', async () => {
    const { paper } = paperOf({ windows: 1 });
    const { bytes } = await drawProposal(paper, givenOf());
    const read = readWithPdfToText(bytes);
    expect(read).toContain('84½ in long');
    for (const option of paper.windows[0]!.options) expect(read).toContain(option.price);
  });
});

describe('texts too long for any page', () => {
  it('break over pages instead of being cut', () => {
    const { paper } = paperOf({ windows: 1 });
    const [window] = paper.windows;
    const says = Array.from({ length: 400 }, (__, i) => `word${i}`).join(' ');
    const [good, better, best] = window!.options;
    const long = {
      ...paper,
      windows: [{ ...window!, options: [{ ...good, says }, better, best] as const }],
      closing: { ...paper.closing, terms: [Array.from({ length: 900 }, (__, i) => `term${i}`).join(' ')] },
    };
    const pages = layOutProposal(long, FRAMES.letter, fonts);
    const letters = pages.map(askedLetters).join('');
    expect(letters).toContain('word399');
    expect(letters).toContain('term899');
    for (const page of pages) {
      for (const { box, text } of placedTexts(page, fonts)) {
        expect(outside(box, page, FRAMES.letter) ? text : '').toBe('');
      }
    }
  });
});

it.each(Array.from({ length: 19 }, (_, i) => i + 2))('no price stands alone on a page: %i windows', (windows) => {
  const { paper } = paperOf({ windows }, { audience: 'client' });
  for (const frame of [FRAMES.letter, FRAMES.a4]) {
    const rows = layOutProposal(paper, frame, fonts).map(
      (page) =>
        new Set(page.items.flatMap(({ field }) => /^summary\.rows\[(\d+)\]\.opening/.exec(field)?.[1] ?? [])).size,
    );
    expect(rows.filter((count) => count === 1)).toEqual([]);
    expect(rows.reduce((sum, count) => sum + count, 0)).toBe(windows);
  }
});
