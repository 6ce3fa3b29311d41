/** The painter of drawings as markup: one picture, or targets with names. Pointer and keyboard are tried in a browser elsewhere. */
import { render } from 'svelte/server';
import { expect, test } from 'vitest';
import { drawRooms } from '#app/drawing/draw-room.ts';
import Drawing from '../../../renderer/parts/Drawing.svelte';
import { opening, room, sheet } from '../../app/drawing/awkward-rooms.ts';

const drawing = drawRooms(
  sheet([room('Nursery', [opening('a', 'East <window>'), opening('b', 'North window')])], { width: 900 }),
);

test('without a pick it is one picture with a description', () => {
  const { body } = render(Drawing, { props: { drawing } });
  expect(body).toContain('role="img"');
  expect(body).toContain('aria-label="Elevation to scale. Nursery');
  expect(body).not.toContain('role="button"');
});

test('with a pick every opening is a button that says what it is and whether it is chosen', () => {
  const { body } = render(Drawing, { props: { drawing, selected: 'a', onpick: () => undefined } });
  expect(body.match(/role="button"/g)).toHaveLength(2);
  expect(body).toMatch(/aria-label="East &lt;window>: wide 60 in[^"]*" aria-pressed="true"/);
  expect(body).toMatch(/aria-label="North window: wide 60 in[^"]*" aria-pressed="false"/);
});

test('every gradient that is used is there, under a name of its own', () => {
  const { body } = render(Drawing, { props: { drawing } });
  const made = [...body.matchAll(/<linearGradient id="([^"]+)"/g)].map((found) => found[1]);
  const used = [...body.matchAll(/url\(#([^)]+)\)/g)].map((found) => found[1]);
  expect(new Set(made).size).toBe(made.length);
  expect(new Set(used)).toEqual(new Set(made));
  expect(made.length).toBeGreaterThan(0);
});
