/** What a client reads of every kind: its words, its pictures where it hangs at a window, its cautions. */
import { describe, expect, it } from 'vitest';
import { drawProposal } from '#app/documents/draw-proposal.ts';
import { layOutProposal } from '#app/documents/lay-out-proposal.ts';
import { FRAMES } from '#app/documents/paper-style.ts';
import { overlap } from '#app/drawing/label-field.ts';
import { assembleProposal } from '#app/proposal/assemble-proposal.ts';
import { cordNote } from '#app/proposal/kind-notes.ts';
import { askedLetters, extractPages, fontSet, givenOf, lettersOf, placedTexts } from '../documents/read-paper.ts';
import { brokenNumbers } from '../drawing/read-drawing.ts';
import { kindsHouse } from './house-of-kinds.ts';
import { GIVEN } from './sample-house.ts';

const house = kindsHouse();
const paper = assembleProposal(house.job, house.result, GIVEN);
const windowOf = (name: string) => paper.windows[house.treatments.findIndex((each) => each.name === name)]!;

it.each([
  ['Flat shade', 'Flat Roman shade in Larch stripe, inside the frame, 34¼ in wide, 58¼ in long, cordless.'],
  [
    'Soft shade',
    'Roman shade in soft folds in Moss linen, in front of the frame, 66 in wide, 60 in long, raised by cords within reach, with a valance of its own, 8 in deep.',
  ],
  ['Box valance', 'Box-pleated valance in Moss linen, 80 in wide, 16 in deep, three pleats, a welt along its hem.'],
  ['Scallops', 'Scalloped valance in Straw twill, 74 in wide, 16 in deep, scallops 4 in deep.'],
  ['Balloon', 'Balloon valance in Sky cotton, 74 in wide, 20 in deep, 2.64 times full.'],
  ['Cornice', 'Padded cornice in Larch stripe, 74 in wide, 14 in high, welted at top and bottom.'],
  [
    'Swags',
    'Overlapped swags with cascades and jabots in Brick twill, 88 in wide, 18 in deep, cascades to 42 in, their lining showing in the folds.',
  ],
  ['Tailored skirt', 'Tailored bed skirt in Sky cotton, for a bed 60 in by 80 in, 14 in drop, on three sides.'],
  [
    'Box skirt',
    'Box-pleated bed skirt in Moss linen, for a bed 60 in by 80 in, 14 in drop, 3 times full, open at the corners.',
  ],
  ['Shower curtain', 'Shower curtain in Sky cotton, 72 in wide, 72 in long, with a liner.'],
  ['Café tiers', 'Grommet-top pair of café tiers in Moss linen, 59½ in wide, 28 in long, 1.61 times full.'],
])('%s', (name, words) => {
  expect(windowOf(name).words.replace(/\u00a0/gu, ' ')).toBe(words);
});

/** Without those that are the same as one before them, and say so alone. */
const ownOptions = (name: string) => windowOf(name).options.filter(({ title }) => !title.startsWith('The same as '));

describe('options', () => {
  it('what repeats an option before it says so, with its price and nothing else', () => {
    const [good, better, best] = windowOf('Tailored skirt').options;
    expect([good.title, better.title, best.title]).toEqual(['Unlined', 'Standard lining', 'The same as Better']);
    expect(best.says).toMatch(/^Nothing more is offered\. .* is more than a bed skirt needs/);
    expect([best.readings, best.litWindow, best.strip, best.price]).toEqual([[], null, null, better.price]);
  });
  it('what hangs at a window has its picture, its strip and five readings', () => {
    for (const name of ['Flat shade', 'Box valance', 'Cornice', 'Swags', 'Relaxed shade', 'Panels'])
      for (const option of ownOptions(name)) {
        expect(option.litWindow).not.toBeNull();
        expect(option.strip).not.toBeNull();
        expect(option.readings.map((reading) => reading.label)).toEqual([
          'light',
          'by noon',
          'warmth',
          'fading',
          name === 'Panels' ? 'folds' : 'body',
        ]);
      }
  });

  it('a bed skirt and a shower curtain have neither, but body, care and price', () => {
    for (const name of ['Tailored skirt', 'Box skirt', 'Gathered skirt', 'Shower curtain'])
      for (const option of ownOptions(name)) {
        expect([option.litWindow, option.strip]).toEqual([null, null]);
        expect(option.readings.map((reading) => reading.label)).toEqual(['body', 'care']);
        expect(option.price).toMatch(/^\$\d/u);
      }
  });

  it('pieces are counted as pieces where not all of them are windows', () => {
    expect(paper.windows[0]!.count).toBe(`piece 1 of ${paper.windows.length}`);
    expect(paper.closing.acceptance.says.join(' ')).toContain('each piece');
  });

  it('every number of it is sound, and it is plain JSON', () => {
    expect(brokenNumbers(paper, 'paper')).toEqual([]);
    expect(JSON.parse(JSON.stringify(paper))).toEqual(paper);
  });
});

describe('cords', () => {
  const all = [...paper.windows.flatMap((window) => window.notes), ...paper.notes].map((note) => note.says).join(' ');

  it('a corded shade says why it is not cordless, and in a nursery that it is not to be made so', () => {
    const { treatment } = house.find('Soft shade');
    expect(cordNote(treatment, { use: 'living' })).toMatch(/asked for/u);
    expect(cordNote(treatment, { use: 'nursery' })).toMatch(/not to be made/u);
    expect(all).toMatch(/not in a child’s room/iu);
  });

  it('what is raised without a cord within reach says so; what has none says nothing', () => {
    expect(cordNote(house.find('Flat shade').treatment, { use: 'living' })).toMatch(/without a cord/u);
    for (const name of ['Cornice', 'Swags', 'Tailored skirt', 'Shower curtain'])
      expect(cordNote(house.find(name).treatment, { use: 'nursery' })).toBeNull();
  });

  it('ladders, old paint and motors are spoken of where something hangs at a window', () => {
    expect(all).toMatch(/ladders/u);
    expect(all).toMatch(/electric motor/u);
  });
});

describe.each(['letter', 'a4'] as const)('printed on %s', (page) => {
  const fonts = fontSet();
  const pages = layOutProposal(paper, FRAMES[page], fonts);

  it('no text lies on another', () => {
    for (const each of pages) {
      const texts = placedTexts(each, fonts);
      texts.forEach((text, i) => {
        const under = texts.slice(i + 1).filter((other) => overlap(text.box, other.box));
        expect(under.map((other) => `${text.field} "${text.text}" and ${other.field} "${other.text}"`)).toEqual([]);
      });
    }
  });

  it('what is read from the file is what was asked for', async () => {
    const drawn = await drawProposal(paper, givenOf({ page }));
    expect((await extractPages(drawn.bytes)).map(lettersOf)).toEqual(pages.map(askedLetters));
  });
});
