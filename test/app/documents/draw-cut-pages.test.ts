/** The paper of the cut plans: what it says equals what was laid, and it reads on either page. */
import { describe, expect, it } from 'vitest';
import { drawCutPages } from '#app/documents/draw-cut-pages.ts';
import { layOutCutPages } from '#app/documents/lay-out-cut-pages.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { overlap } from '#app/drawing/label-field.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import { assembleCutPlan } from '#app/proposal/assemble-cut-plan.ts';
import { houseOf, readHouse } from '../pricing/plan-house.ts';
import type { HouseGiven } from '../pricing/plan-house.ts';
import { askedLetters, extractPages, fontSet, givenOf, lettersOf, placedTexts } from './read-paper.ts';

const HOUSE: HouseGiven = {
  cloth: { name: 'Fern trail', repeat: { vertical: 25.25, match: 'half-drop' }, bolt: '60 yd' },
  windows: [96, 84, 84, 60, 88, 54, 90].map((finishedLength, index) => ({
    finishedLength,
    widths: [2.5, 1.5, 1, 2, 3][index % 5],
    stacks: { good: { behind: ['std-white'] } },
  })),
  cutting: {
    remnants: [{ cloth: 'face', name: 'End of the hall', length: '7 yd', dyeLot: 'A7', startsAt: 4 }],
    bolts: [
      { cloth: 'face', name: 'first', length: '60 yd', dyeLot: 'A7', startsAt: 0 },
      { cloth: 'face', name: 'second', length: '60 yd', dyeLot: 'A7', startsAt: 3.5 },
    ],
    flaws: [{ cloth: 'face', on: 'second', from: '20 yd', to: '21 1/2 yd' }],
    fixed: [{ cloth: 'face', treatment: 'Room/Window 1/Panels', cut: 2, on: 'second', at: 21.75 }],
  },
};
const fonts = fontSet();
const job = readHouse(houseOf(HOUSE));
const laid = planJob(job, 'good');
const paper = assembleCutPlan(job, laid, { date: '2026-11-25', of: 'good' });

describe.each(['letter', 'a4'] as const)('on %s', (size) => {
  const frame = FRAMES[size];
  const pages = layOutCutPages(paper, frame, fonts);

  it('no text lies on another, and none outside the margins', () => {
    for (const page of pages) {
      const texts = placedTexts(page, fonts);
      texts.forEach((text, i) => {
        const under = texts.slice(i + 1).filter((other) => overlap(text.box, other.box));
        expect(under.map((other) => `${text.field} "${text.text}" and ${other.field} "${other.text}"`)).toEqual([]);
        const inside = text.box.x >= frame.left - 1 && text.box.x + text.box.width <= frame.right + 1;
        expect(inside && text.box.y + text.box.height < page.height - 24 ? '' : text.text).toBe('');
      });
    }
  });

  it('the file reads as it was laid out', async () => {
    const drawn = await drawCutPages(paper, givenOf({ page: size }));
    expect(drawn.pages).toBe(pages.length);
    expect((await extractPages(drawn.bytes)).map(lettersOf)).toEqual(pages.map(askedLetters));
  });
});

describe('what it says', () => {
  const [face] = paper.sections;
  const [planned] = laid.plans;

  it('every cut stands once in the list, in the order in which it comes off its bolt, behind its position', () => {
    const listed = face!.bolts.flatMap(({ title, cuts }) => cuts.map((cut) => [title, cut.label, cut.length]));
    expect(listed).toHaveLength(planned!.input.cuts.length);
    expect(new Set(listed.map(String)).size).toBe(listed.length);
    expect(face!.bolts.map(({ title }) => title)).toEqual(['Remnant End of the hall', 'Bolt first', 'Bolt second']);
    for (const [index, { cuts }] of face!.bolts.entries())
      expect(cuts.map(({ label }) => label)).toEqual(planned!.plan.bolts[index]!.cuts.map(({ label }) => label));
  });

  it('a search that was ended early is told', () => {
    const ended = planJob(job, 'good', { watch: { cancelled: () => true } });
    expect(ended.plans[0]!.plan.cancelled).toBe(true);
    const notesOf = (of: typeof laid) =>
      assembleCutPlan(job, of, { date: '2026-11-25', of: 'good' }).sections[0]!.notes;
    expect(notesOf(ended).join(' ')).toContain('The search was ended before it was through');
    expect(notesOf(laid).join(' ')).not.toContain('was ended');
  });

  it('the figures are those of the plan: laid, bound, chart and order', () => {
    expect(face!.figures.map(({ label }) => label)).toEqual([
      'laid together',
      'no layout takes less than',
      'by the chart',
      'each treatment alone',
      'order',
    ]);
    expect(face!.figures[2]!.rests).toMatch(/^every cut by itself: .* more, \d+(\.\d)? %$/u);
  });

  it('flaws, what is fixed and what is kept are said, and what to do before the first cut', () => {
    const notes = face!.notes.join('\n');
    expect(notes).toContain('Second is bad from 720\u00a0in to 774\u00a0in (20\u00a0yd to 21½\u00a0yd)');
    expect(notes).toMatch(/Window 1 2 is fixed by hand: it (costs nothing|adds)/u);
    expect(paper.cautions[0]).toMatch(/^Before the first cut, measure the piece and look it over/u);
    expect(paper.opening).toContain('promised to nobody');
  });

  it('no price is on it', () => {
    expect(JSON.stringify(paper)).not.toMatch(/\$\d/u);
  });

  it('cloth that cannot be laid is named with what is wrong, the rest is laid', () => {
    const short = { ...HOUSE, cutting: { bolts: [{ cloth: 'face', name: 'short', length: 70 }] } };
    const wrong = readHouse(houseOf(short));
    const told = assembleCutPlan(wrong, planJob(wrong, 'good'), { date: '2026-11-25', of: 'good' });
    expect(told.faults[0]).toMatch(/longer than every bolt/u);
    expect(told.sections.map(({ cloth }) => cloth)).toEqual(['std-white']);
  });

  it('an order of several pieces says what of each: 208 in and a repeat of 27 are 6¾ yd, twice', () => {
    const given = readHouse(houseOf({ cloth: { repeat: { vertical: 27 }, bolt: '8 yd' }, windows: [{}] }));
    const [section] = assembleCutPlan(given, planJob(given, 'good'), { date: '2026-11-25', of: 'good' }).sections;
    const order = section?.figures.find(({ label }) => label === 'order');
    const breakable = [order?.value, order?.rests].map((text) => text?.replaceAll('\u00a0', ' '));
    expect(breakable).toEqual([
      '13½ yd',
      'bolt 1: 5.78 yd + ¾ yd, 6¾ yd; bolt 2: 5.78 yd + ¾ yd, 6¾ yd, each up to ¼ yd; each treatment alone would be 13½ yd',
    ]);
  });

  it('the same paper and id give the same bytes; with nothing to cut it says so', async () => {
    const [one, two] = await Promise.all([
      drawCutPages(paper, givenOf()),
      drawCutPages(structuredClone(paper), givenOf()),
    ]);
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
    const empty = await drawCutPages({ ...paper, sections: [] }, givenOf());
    expect((await extractPages(empty.bytes)).join(' ')).toContain('Nothing to cut yet');
  });
});
