/** The stack strip: light only ever falls from street to room, every family can be drawn, words stay apart. */
import { describe, expect, test } from 'vitest';
import { drawStackStrip } from '#app/drawing/draw-strip.ts';
import { thicknessOf } from '#app/drawing/draw-layer.ts';
import type { DrawnLayer, StripInput } from '#app/drawing/drawn-stack.ts';
import { FACE_FAMILIES, GLAZINGS, INTERLINING_FAMILIES, LINING_FAMILIES } from '#shared/words.ts';
import { brokenNumbers, clashes, flatten, pathsOf, strays, wordsOf } from './read-drawing.ts';

const face = (light: number): DrawnLayer => ({
  role: 'face',
  family: 'print',
  name: 'face',
  colour: '#c9b79a',
  weight: 240,
  light,
});
const flannel = (light: number): DrawnLayer => ({
  role: 'interlining',
  family: 'medium',
  name: 'interlining',
  colour: null,
  weight: null,
  light,
});
const lining = (light: number, name = 'lining'): DrawnLayer => ({
  role: 'lining',
  family: 'standard',
  name,
  colour: null,
  weight: null,
  light,
});
const strip = (layers: readonly DrawnLayer[], changes: Partial<StripInput> = {}): StripInput => ({
  layers,
  glazing: 'double',
  lightBehindGlass: 0.8,
  needleHoles: false,
  width: 208,
  detail: 'screen',
  ...changes,
});

/** Opacities of the beam, from the street inwards. */
function beamOf(input: StripInput): number[] {
  return pathsOf(drawStackStrip(input).shapes).flatMap((path) => {
    const { fill, opacity } = path.style;
    const isSun = fill === 'sun' || (typeof fill === 'object' && fill.from.paint === 'sun' && opacity !== undefined);
    return isSun && opacity !== undefined ? [opacity] : [];
  });
}

test('the beam is paler behind every layer that takes light', () => {
  const beam = beamOf(strip([face(0.04), flannel(0.1), lining(0.3)]));
  expect(beam).toHaveLength(5);
  beam.slice(1).forEach((opacity, place) => expect(opacity).toBeLessThan(beam[place]!));
});

test('no light, no beam in the room', () => {
  expect(beamOf(strip([face(0), lining(0)]))).toHaveLength(3);
});

test('more light is never drawn paler', () => {
  const rooms = [0.0001, 0.001, 0.01, 0.05, 0.2, 0.7].map((light) => beamOf(strip([face(light)])).at(-1)!);
  rooms.slice(1).forEach((opacity, place) => expect(opacity).toBeGreaterThan(rooms[place]!));
});

test('names both ends and every layer, and says the light in words', () => {
  const drawing = drawStackStrip(strip([face(0.09), lining(0.3)]));
  expect(wordsOf(drawing).sort()).toEqual(['face', 'glass', 'lining', 'noon light', 'room']);
  expect(drawing.title).toContain('about 9 %');
});

test('needle holes are marked when asked', () => {
  const count = (needleHoles: boolean) =>
    flatten(drawStackStrip(strip([face(0.001), lining(0.01)], { needleHoles })).shapes).length;
  expect(count(true)).toBeGreaterThan(count(false));
});

test('heavier cloth is drawn thicker', () => {
  const at = (weight: number) => thicknessOf({ ...face(0.1), weight });
  expect(at(400)).toBeGreaterThan(at(100));
});

const everyLayer: DrawnLayer[] = [
  ...FACE_FAMILIES.map((family): DrawnLayer => ({ ...face(0.2), role: 'face', family, name: family })),
  ...LINING_FAMILIES.map((family): DrawnLayer => ({ ...lining(0.2), role: 'lining', family, name: family })),
  ...INTERLINING_FAMILIES.map((family): DrawnLayer => ({ ...flannel(0.2), role: 'interlining', family, name: family })),
];

describe.each(everyLayer.map((layer) => [`${layer.role} ${layer.family}`, layer] as const))('%s', (_, layer) => {
  test.each(GLAZINGS)('behind %s glazing', (glazing) => {
    const drawing = drawStackStrip(strip([face(0.1), layer], { glazing, needleHoles: true }));
    expect(brokenNumbers(drawing)).toEqual([]);
    expect(clashes(drawing)).toEqual([]);
  });
});

describe.each([120, 160, 200, 260, 420, 640])('%i wide', (width) => {
  const stacks: readonly (readonly [string, readonly DrawnLayer[]])[] = [
    ['nothing', []],
    ['unlined', [face(0.3)]],
    ['interlined', [face(0.04), flannel(0.1), lining(0.3)]],
    [
      'five layers with long names',
      [face(0.001), flannel(0.01), lining(0.01, 'black cloth'), flannel(0.1), lining(0.2, 'combination lining')],
    ],
  ];
  test.each(stacks)('%s: words apart, on the sheet, numbers finite', (_, layers) => {
    for (const detail of ['screen', 'paper'] as const) {
      const drawing = drawStackStrip(strip(layers, { width, detail }));
      expect(brokenNumbers(drawing)).toEqual([]);
      expect(clashes(drawing)).toEqual([]);
      expect(strays(drawing)).toEqual([]);
    }
  });
});

test('numbers that are none are drawn as no light', () => {
  expect(
    brokenNumbers(drawStackStrip(strip([face(Number.NaN)], { width: Number.NaN, lightBehindGlass: Number.NaN }))),
  ).toEqual([]);
});

test('by night no daylight is drawn: no beam behind the face, no points of light, and the street is called night', () => {
  const day = strip([face(0.4), lining(0.6)], { needleHoles: true });
  const drawing = drawStackStrip({ ...day, night: true });
  expect(wordsOf(drawing)).toContain('night');
  expect(wordsOf(drawing)).not.toContain('noon light');
  expect(drawing.title).toMatch(/By night: lamplight on the face, no daylight\.$/);
  expect(beamOf(day).length).toBeGreaterThan(2);
  expect(beamOf({ ...day, night: true })).toEqual([]);
});
