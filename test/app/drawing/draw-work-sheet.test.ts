/** Work drawings: every measure of the take-off is on its sheet, nothing collides, nothing is off the sheet. */
import { describe, expect, test } from 'vitest';
import { drawWorkRows, drawWorkSheet } from '#app/drawing/draw-work-sheet.ts';
import { readSheet } from '#app/drawing/read-sheet.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { formatLength } from '#shared/format-length.ts';
import { kindsHouse } from '../proposal/house-of-kinds.ts';
import { brokenNumbers, clashes, strays, wordsOf } from './read-drawing.ts';

const house = kindsHouse();

function sheetOf(name: string, detail: 'screen' | 'paper' = 'paper', width = 504) {
  const { treatment, made } = house.find(name);
  const clothOf = (id: string) => resolveCloth(id, house.job.cloth);
  const input = { treatment, made, clothOf, units: house.job.units, width, detail } as const;
  return { drawing: drawWorkSheet(input), rows: drawWorkRows(input), made, treatment };
}

/** All that is written, as one text. */
function said(name: string): string {
  return wordsOf(sheetOf(name).drawing).join(' | ');
}

const set = (length: number) => formatLength(length, 'in', { fractions: 'set', decimal: '.' });

describe.each(house.treatments.map((treatment) => treatment.name))('%s', (name) => {
  test.each([
    ['paper', 504],
    ['screen', 760],
    ['screen', 420],
  ] as const)('on %s, %i points wide: sound, nothing on anything, nothing off the sheet', (detail, width) => {
    const { drawing, rows } = sheetOf(name, detail, width);
    expect(brokenNumbers(drawing)).toEqual([]);
    for (const row of rows) {
      expect(clashes(row)).toEqual([]);
      expect(strays(row)).toEqual([]);
    }
    expect(rows.length).toBeGreaterThan(0);
    expect(drawing.title.length).toBeGreaterThan(30);
    expect(sheetOf(name, detail, width).drawing).toEqual(drawing);
  });
});

describe('every measure is on the sheet', () => {
  test('a Roman shade: cut and finished sizes, every spacing of rings, board and stack', () => {
    const { made } = sheetOf('Flat shade');
    const sheet = readSheet('roman-shade', made)!;
    const words = said('Flat shade');
    const face = sheet.layers[0]!.shade;
    for (const length of [
      face.cutWidth,
      face.cutLength,
      sheet.finished.width,
      sheet.finished.length,
      sheet.board.length,
    ])
      expect(words).toContain(set(length));
    // Spaces between columns: the first, and those between, which are alike on this shade.
    expect(words).toContain(set(sheet.rings.columns[0]!));
    expect(words).toContain(set(sheet.rings.columns[1]! - sheet.rings.columns[0]!));
    expect(words).toContain(set(sheet.rings.heights[0]!));
    expect(words).toContain(`${sheet.rings.count} rings`);
    expect(words).toContain(set(sheet.raisedStack));
  });

  test('a box-pleated valance: flat width, take-up and spaces, board and cover', () => {
    const { made } = sheetOf('Box valance');
    const sheet = readSheet('valance', made)!;
    const words = said('Box valance');
    for (const length of [
      sheet.cutWidth,
      sheet.cutLength,
      sheet.pleats!.takeUp,
      sheet.pleats!.space,
      sheet.board!.length,
      sheet.board!.depth,
      sheet.board!.cover!.girth,
      sheet.board!.cover!.run,
    ])
      expect(words).toContain(set(length));
  });

  test('scallops by their depth and flat width, puffs by their rings', () => {
    const scallops = readSheet('valance', sheetOf('Scallops').made)!.scallops!;
    expect(said('Scallops')).toContain(`${set(scallops.depth)} scallop`);
    expect(said('Scallops')).toContain(`${scallops.count} × ${set(scallops.flatWidth)}`);
    const puffs = readSheet('valance', sheetOf('Balloon').made)!.puffs!;
    expect(said('Balloon')).toContain(`${puffs.count} × ${set(puffs.flatWidth)}`);
    expect(said('Balloon')).toContain(`${set(puffs.ringSpacing)} rings`);
  });

  test('a cornice: boards, padding, welts and cloth', () => {
    const { made } = sheetOf('Cornice');
    const sheet = readSheet('cornice', made)!;
    const words = said('Cornice');
    for (const length of [
      sheet.face.width,
      sheet.face.length,
      sheet.box.face.width,
      sheet.box.face.height,
      sheet.box.ends.left,
      sheet.box.dustBoard.length,
      sheet.padding.width,
      sheet.welts.top!,
      sheet.welts.bottom!,
    ])
      expect(words).toContain(set(length));
  });

  test('swags: flat swag on the bias, tails with their pleats, the row with its overlaps', () => {
    const { made } = sheetOf('Swags');
    const sheet = readSheet('swags', made)!;
    const words = said('Swags');
    for (const length of [
      sheet.flat.width,
      sheet.flat.depth,
      sheet.flat.top,
      sheet.row.width,
      sheet.row.overlap,
      sheet.swagCut,
    ])
      expect(words).toContain(set(length));
    for (const tail of sheet.tails)
      for (const length of [tail.flat.left, tail.tail.longest, tail.tail.shortest, tail.pleats.depth, tail.pleats.face])
        expect(words).toContain(set(length));
    expect(words).toContain('on the bias');
  });

  test.each(['Tailored skirt', 'Box skirt', 'Gathered skirt'])(
    '%s: every stretch of every strip, drop and deck',
    (name) => {
      const { made } = sheetOf(name);
      const sheet = readSheet('bed-skirt', made)!;
      const words = said(name);
      for (const piece of sheet.pieces) {
        expect(words).toContain(`${set(piece.length)} in all`);
        for (const stretch of piece.stretches) expect(words).toContain(`${set(stretch.length)} ${stretch.is}`);
      }
      expect(words).toContain(`${set(sheet.drop)} drop`);
      if (sheet.deck !== null) expect(words).toContain(set(sheet.deck.long));
    },
  );

  test('a shower curtain: hems, cut size, eyelets and their spacing', () => {
    const { made } = sheetOf('Shower curtain');
    const sheet = readSheet('shower-curtain', made)!;
    const words = said('Shower curtain');
    for (const length of [
      sheet.cutLength,
      sheet.cutWidth,
      sheet.hems.top,
      sheet.hems.bottom,
      sheet.hems.side,
      sheet.eyelets.places[0]!,
    ])
      expect(words).toContain(set(length));
    expect(words).toContain(`${sheet.eyelets.places.length} eyelets`);
  });

  test('panels: the worked example by hand', () => {
    // 84 + 8 + 8 = 100, up to 4 repeats of 27 is 108; 2 widths of 54 a panel; 10 pleats (7 in 1 1/2, 10 in 2: common
    // practice); finished (72 + 3 1/2 + 2 x 3 1/2) / 2 = 41 1/4; spaces (41 1/4 - 3 1/2 - 1 3/4) / 9 = 4.
    const words = said('Panels');
    for (const part of [
      '84 finished',
      '8 hem',
      '8 heading',
      '8 to the repeat',
      '108',
      '54 usable',
      '108 flat',
      '3½ return',
      '1¾ overlap',
      '9 × 4',
      '41¼ finished',
    ])
      expect(words).toContain(part);
  });
});

test('before there is a take-off the sheet says so', () => {
  const { treatment, made } = house.find('Cornice');
  const drawing = drawWorkSheet({
    treatment,
    made: { ...made, sheet: null },
    clothOf: () => null,
    units: 'in',
    width: 500,
    detail: 'screen',
  });
  expect(drawing.shapes).toEqual([]);
  expect(drawing.title).toContain('nothing is taken off yet');
});

describe('in centimetres, whose figures are longer', () => {
  const metric = kindsHouse({ units: 'cm', locale: 'fr-FR', currency: 'EUR' });

  test.each(metric.treatments.map((treatment) => treatment.name))(
    '%s: nothing on anything, nothing off the sheet',
    (name) => {
      const { treatment, made } = metric.find(name);
      const clothOf = (id: string) => resolveCloth(id, metric.job.cloth);
      for (const [detail, width] of [
        ['paper', 504],
        ['screen', 560],
      ] as const)
        for (const row of drawWorkRows({ treatment, made, clothOf, units: 'cm', decimal: ',', width, detail })) {
          expect(clashes(row)).toEqual([]);
          expect(strays(row)).toEqual([]);
        }
    },
  );
});
