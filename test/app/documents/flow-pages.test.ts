/** The filling of pages: nothing lost, nothing cut, what belongs together together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '#app/documents/block.ts';
import { makeFlow } from '#app/documents/flow-pages.ts';
import { FRAMES, STYLES } from '#app/documents/paper-style.ts';
import { breakLines } from '#app/documents/set-text.ts';
import { fontSet } from './read-paper.ts';

const frame = FRAMES.letter;
const full = frame.bottom - frame.top;

const block = (height: number, keepWithNext: boolean, before: number, name: string): Block => ({
  height,
  before,
  keepWithNext,
  items: [{ role: 'P', field: name, x: 0, y: 0, shapes: [] }],
});

const blocks = fc
  .array(
    fc.record({
      height: fc.integer({ min: 5, max: 400 }),
      before: fc.integer({ min: 0, max: 30 }),
      keepWithNext: fc.boolean(),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((rows) => rows.map((row, i) => block(row.height, row.keepWithNext, row.before, `b${i}`)));

describe('pages', () => {
  it('hold every block once, in order, inside the frame', () => {
    fc.assert(
      fc.property(blocks, (given) => {
        const flow = makeFlow(frame, frame.top);
        flow.add(given);
        const placed = flow.pages.flat();
        expect(placed.map((item) => item.field)).toEqual(given.map((_, i) => `b${i}`));
        for (const page of flow.pages) {
          let y = frame.top;
          for (const item of page) {
            expect(item.y).toBeGreaterThanOrEqual(y - 1e-6);
            y = item.y + given[Number(item.field.slice(1))]!.height;
            expect(y).toBeLessThanOrEqual(frame.bottom + 0.01);
          }
        }
      }),
    );
  });

  it('a heading is never the last thing on a page', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: full }), fc.integer({ min: 10, max: 60 }), (filled, height) => {
        const flow = makeFlow(frame, frame.top);
        flow.add([block(filled, false, 0, 'filled')]);
        flow.add([block(20, true, 0, 'heading'), block(height, false, 0, 'text')]);
        const page = flow.pages.find((items) => items.some((item) => item.field === 'heading'));
        expect(page?.some((item) => item.field === 'text')).toBe(true);
      }),
    );
  });
});

describe('lines', () => {
  const fonts = fontSet();
  it('hold every letter, none wider than asked', () => {
    const words = fc.array(fc.stringMatching(/^[a-zA-Zéł½]{1,40}$/u), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 300 }), (given, width) => {
        const lines = breakLines(given.join(' '), STYLES.body, width, fonts);
        expect(lines.join('').replace(/ /gu, '')).toBe(given.join(''));
        for (const line of lines) expect(fonts.measure(line, STYLES.body, STYLES.body.size)).toBeLessThanOrEqual(width);
      }),
      { numRuns: 60 },
    );
  });

  it('a number stays with its unit', () => {
    const lines = breakLines('about 84½\u00a0in long', STYLES.body, 52, fonts);
    expect(lines.some((line) => line.includes('84½ in'))).toBe(true);
  });
});
