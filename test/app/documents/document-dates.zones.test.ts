/** A file is dated by the paper, wherever and whenever it is drawn. */
import { expect, it } from 'vitest';
import { getDocumentProxy } from 'unpdf';
import { drawMeasureSheet } from '#app/documents/draw-measure-sheet.ts';
import { givenOf } from './read-paper.ts';

it('noon UTC of the given day in every time zone', async () => {
  const letterhead = { name: 'Thistle & Thread', lines: [] };
  const { bytes } = await drawMeasureSheet({
    ...givenOf(),
    letterhead,
    client: null,
    date: '2026-11-25',
    units: 'cm',
    rooms: [],
  });
  const { info } = await (await getDocumentProxy(bytes)).getMetadata();
  expect(info).toMatchObject({ CreationDate: 'D:20261125120000Z', ModDate: 'D:20261125120000Z' });
});
