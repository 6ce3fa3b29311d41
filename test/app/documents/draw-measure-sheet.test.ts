/** The blank measure sheet: everything asked, for every window, one page a room. */
import { describe, expect, it } from 'vitest';
import { drawMeasureSheet } from '#app/documents/draw-measure-sheet.ts';
import { layOutMeasureSheet } from '#app/documents/lay-out-measure-sheet.ts';
import { MEASURE_ROWS } from '#app/documents/measure-rows.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { MEASURES } from '#app/documents/sketch-window.ts';
import { overlap } from '#app/drawing/label-field.ts';
import { flatten } from '../drawing/read-drawing.ts';
import { LONG_NAME, UNBROKEN } from '../proposal/sample-house.ts';
import { askedLetters, boundsOf, extractPages, fontSet, givenOf, lettersOf, placedTexts } from './read-paper.ts';

const fonts = fontSet();
const SHEET = {
  letterhead: { name: 'Thistle & Thread', lines: [] },
  client: 'Ada Fenn',
  date: '2026-11-25',
  units: 'in',
  rooms: [
    { name: 'Nursery', windows: ['East window', 'North window'] },
    { name: LONG_NAME, windows: [UNBROKEN, 'B', 'C', 'D'] },
  ],
} as const;

describe.each(['letter', 'a4'] as const)('on %s', (size) => {
  const frame = FRAMES[size];
  const pages = layOutMeasureSheet(SHEET, frame, fonts);

  it('one page a room, more when it has more than three windows', () => {
    expect(pages).toHaveLength(3);
    expect(layOutMeasureSheet({ ...SHEET, rooms: [] }, frame, fonts)).toHaveLength(1);
  });

  it('no text lies on another and nothing outside the margins', () => {
    for (const page of pages) {
      const texts = placedTexts(page, fonts);
      texts.forEach((text, i) => {
        const under = texts.slice(i + 1).filter((other) => overlap(text.box, other.box));
        expect(under.map((other) => `"${text.text}" and "${other.text}"`)).toEqual([]);
        expect(text.box.x).toBeGreaterThan(frame.left - 1);
        expect(text.box.x + text.box.width).toBeLessThan(frame.right + 1);
        expect(text.box.y + text.box.height).toBeLessThan(frame.height - 24);
      });
      for (const item of page.items) {
        for (const shape of flatten(item.shapes)) {
          const box = boundsOf(shape);
          if (box === null) continue;
          expect(item.x + box.x).toBeGreaterThan(frame.left - 1);
          expect(item.x + box.x + box.width).toBeLessThan(frame.right + 1);
        }
      }
    }
  });

  it('the file reads as it was laid out', async () => {
    const drawn = await drawMeasureSheet({ ...SHEET, ...givenOf({ page: size }) });
    expect((await extractPages(drawn.bytes)).map(lettersOf)).toEqual(pages.map(askedLetters));
  });
});

it('every measurement of the sketch has its row, and each is asked at the places that matter (common practice)', () => {
  const numbers = MEASURE_ROWS.map((row) => row.number).filter((number) => number !== null);
  expect(numbers).toEqual(Object.values(MEASURES));
  const places = (number: number) => MEASURE_ROWS.find((row) => row.number === number)?.places;
  expect(places(MEASURES.width)).toEqual(['top', 'middle', 'bottom']);
  expect(places(MEASURES.height)).toEqual(['left', 'middle', 'right']);
  expect(places(MEASURES.floor)).toEqual(['left', 'middle', 'right']);
});
