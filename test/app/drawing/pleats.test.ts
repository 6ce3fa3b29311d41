/** Pleats by widths of cloth: the rule of thumb of the workroom (common practice). */
import { expect, test } from 'vitest';
import { countPleats, countWidths } from '#app/drawing/pleats.ts';
import { inches } from './awkward-rooms.ts';

const none = { pleats: null, fullness: null, finishedWidth: inches(82.5) } as const;

test.each([
  [1, 5],
  [1.5, 7],
  [2, 10],
  [2.5, 12],
  [3, 15],
])('%s widths take %s pleats (common practice)', (widths, pleats) => {
  expect(countPleats({ ...none, heading: 'pinch-pleat', pieces: 1, halfWidths: widths * 2 })).toBe(pleats);
});

test('a pair of 4 widths has 10 in each panel', () => {
  expect(countPleats({ ...none, heading: 'pinch-pleat', pieces: 2, halfWidths: 8 })).toBe(10);
});

test('pleats laid out by the engine are shared between the pieces', () => {
  expect(countPleats({ ...none, heading: 'pinch-pleat', pieces: 2, halfWidths: 8, pleats: 22 })).toBe(11);
});

test('without widths they follow from fullness: 2.5 on 82 1/2 in is 3.82 widths of 54', () => {
  expect(countWidths({ halfWidths: null, fullness: 2.5, finishedWidth: inches(82.5) })).toBeCloseTo(206.25 / 54, 9);
});

test.each([
  ['a thousand', 1000, 60],
  ['none', 0, 7],
  ['below none', -4, 7],
])('%s pleats are drawn as a sane number', (_, pleats, drawn) => {
  expect(countPleats({ ...none, heading: 'pinch-pleat', pieces: 1, halfWidths: 3, pleats })).toBe(drawn);
});
