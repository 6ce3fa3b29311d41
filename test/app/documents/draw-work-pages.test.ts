/** Work sheets as a PDF: a sheet a treatment, inside the margins, nothing over anything else, and it reads as laid out. */
import { describe, expect, it } from 'vitest';
import { drawWorkPages } from '#app/documents/draw-work-pages.ts';
import { layOutWorkPages } from '#app/documents/lay-out-work-pages.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { overlap } from '#app/drawing/label-field.ts';
import { assembleWork } from '#app/proposal/assemble-work.ts';
import { flatten } from '../drawing/read-drawing.ts';
import { kindsHouse } from '../proposal/house-of-kinds.ts';
import { askedLetters, boundsOf, extractPages, fontSet, givenOf, lettersOf, placedTexts } from './read-paper.ts';

const fonts = fontSet();
const GIVEN = { date: '2026-11-25', number: '2026-014', chosen: {} } as const;
const house = kindsHouse();
const paper = assembleWork(house.job, house.result, GIVEN);

describe.each(['letter', 'a4'] as const)('on %s', (size) => {
  const frame = FRAMES[size];
  const pages = layOutWorkPages(paper, frame, fonts);

  it('each treatment begins a page, with its first drawing', () => {
    paper.pages.forEach((_, i) => {
      const page = pages.find((each) => each.items.some((item) => item.field === `pages[${i}].room`))!;
      expect(page.items.some((item) => item.field === `pages[${i}].drawings[0]`)).toBe(true);
      const rooms = page.items.filter((item) => /^pages\[\d+\]\.room$/u.test(item.field));
      expect(rooms).toHaveLength(1);
    });
  });

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
      for (const { box, text } of placedTexts(page, fonts)) {
        const inside = box.x >= frame.left - 1 && box.x + box.width <= frame.right + 1;
        expect(inside ? '' : text).toBe('');
      }
      for (const item of page.items) {
        for (const shape of flatten(item.shapes)) {
          const box = boundsOf(shape);
          if (box === null) continue;
          expect(item.x + box.x, JSON.stringify(shape)).toBeGreaterThan(frame.left - 3);
          expect(item.x + box.x + box.width, JSON.stringify(shape)).toBeLessThan(frame.right + 3);
          expect(item.y + box.y + box.height).toBeLessThan(page.height - 24);
        }
      }
    }
  });

  it('the file reads as it was laid out', async () => {
    const drawn = await drawWorkPages(paper, givenOf({ page: size }));
    expect(drawn.pages).toBe(pages.length);
    expect((await extractPages(drawn.bytes)).map(lettersOf)).toEqual(pages.map(askedLetters));
  });
});

describe('what is handed over', () => {
  it('every step of the take-off stands behind a box to tick, and no reading does', () => {
    for (const [i, page] of paper.pages.entries()) {
      const own = house.result.treatments[i]!;
      const made = own.tiers[own.advised.tier];
      const judged = new Set(made.judgement.working.map((step) => step.id));
      const asked = made.working.filter((step) => !judged.has(step.id)).map((step) => step.label);
      expect(page.steps.map((step) => step.label)).toEqual(asked);
    }
  });

  it('a corded shade in a nursery is stopped, and what is raised without a cord says so', () => {
    const notes = (name: string) =>
      paper.pages[house.treatments.findIndex((each) => each.name === name)]!.notes.join(' ');
    expect(notes('Soft shade')).toMatch(/^Stop: .*cord/iu);
    expect(notes('Flat shade')).toMatch(/cord/iu);
    expect(notes('Cornice')).toMatch(/ladders/u);
  });

  it('no price is on it', () => {
    expect(JSON.stringify(paper)).not.toMatch(/\$\d/u);
  });

  it('the chosen option is drawn, not the advised one', () => {
    const [first] = house.treatments;
    const other = house.result.treatments[0]!.advised.tier === 'good' ? 'best' : 'good';
    const chosen = assembleWork(house.job, house.result, { ...GIVEN, chosen: { [first!.key]: other } });
    expect(chosen.pages[0]!.option).toContain(house.result.treatments[0]!.tiers[other].title);
  });

  it('the same paper and id give the same bytes', async () => {
    const [one, two] = await Promise.all([
      drawWorkPages(paper, givenOf()),
      drawWorkPages(structuredClone(paper), givenOf()),
    ]);
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
  });

  it('without a treatment it says that nothing is taken off yet', async () => {
    const empty = { ...paper, pages: [] };
    const drawn = await drawWorkPages(empty, givenOf());
    expect((await extractPages(drawn.bytes)).join(' ')).toContain('Nothing is taken off yet');
  });
});
