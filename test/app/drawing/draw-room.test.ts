/** The elevation against geometry itself: scale, order, symmetry; and against what a person would see go wrong. */
import { wcagContrast } from 'culori';
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { drawRoom, drawRooms } from '#app/drawing/draw-room.ts';
import type { RoomsInput } from '#app/drawing/drawn-room.ts';
import type { Path } from '#app/drawing/shape.ts';
import type { Ticks } from '#shared/length.ts';
import { AWKWARD, inches, opening, panels, room, sheet } from './awkward-rooms.ts';
import {
  brokenNumbers,
  clashes,
  flatten,
  groupsOf,
  pathsOf,
  rectsFilled,
  strays,
  targetOf,
  textsOf,
  wordsOf,
} from './read-drawing.ts';

function widest(values: readonly { readonly width: number }[]): number {
  return Math.max(...values.map((value) => value.width));
}

/** The bar of the rod and the floor, in points. */
function rodOf(input: RoomsInput, key = 'a'): { width: number; fromFloor: number; x: number } {
  const drawing = drawRooms(input);
  const bars = rectsFilled(targetOf(drawing, key).shapes, 'rod');
  const bar = bars.find((each) => each.width === widest(bars))!;
  const floor = flatten(drawing.shapes).find(
    (shape) => shape.kind === 'line' && shape.style.stroke === 'ink' && shape.x1 === 0 && shape.x2 === drawing.width,
  );
  if (floor?.kind !== 'line') throw new Error('no floor');
  return { width: bar.width, fromFloor: floor.y1 - bar.y, x: bar.x };
}

/** The opening itself among its frame's rectangles: the one that is `width` at the scale told by a 72 in rod. */
function frameWidths(input: RoomsInput): number[] {
  return rectsFilled(targetOf(drawRooms(input), 'a').shapes, 'frame').map((frame) => frame.width);
}

describe('scale', () => {
  const plain = sheet([room('Nursery', [opening('a', 'East window')])]);

  test('a 72 in rod is 72/60 of a 60 in opening', () => {
    const rod = rodOf(plain).width;
    expect(frameWidths(plain).some((width) => Math.abs(rod / width - 72 / 60) < 1e-9)).toBe(true);
  });

  test('up and along have one scale: a 60 in square opening is square', () => {
    const square = sheet([
      room('Hall', [opening('a', 'Square', { height: inches(60), sill: inches(20), treatments: [] })]),
    ]);
    const frames = rectsFilled(targetOf(drawRooms(square), 'a').shapes, 'frame');
    expect(frames.some((frame) => Math.abs(frame.width - frame.height) < 1e-9)).toBe(true);
  });

  test('rooms side by side have one scale and one floor', () => {
    const two = sheet([room('One', [opening('a', 'A')]), room('Two', [opening('b', 'B')], { ceiling: inches(96) })], {
      width: 900,
    });
    expect(rodOf(two, 'b').width).toBeCloseTo(rodOf(two, 'a').width, 9);
    expect(rodOf(two, 'b').fromFloor).toBeCloseTo(rodOf(two, 'a').fromFloor, 9);
  });

  test.each([
    ['wide sheet', 1200, 260],
    ['tall sheet', 300, 700],
    ['paper', 500, 180],
  ])('%s: as wide as asked and no higher', (_, width, height) => {
    const drawing = drawRooms({ ...plain, width, height });
    expect(drawing.width).toBe(width);
    expect(drawing.height).toBeLessThanOrEqual(height + 1e-6);
  });

  test('measured places are kept: 40 in apart in the room is 40 in apart on the sheet', () => {
    const measured = sheet(
      [room('Hall', [opening('a', 'A', { at: inches(20) }), opening('b', 'B', { at: inches(120) })])],
      { width: 800 },
    );
    const [a, b] = [rodOf(measured, 'a'), rodOf(measured, 'b')];
    expect((b.x - a.x) / a.width).toBeCloseTo(100 / 72, 9);
  });
});

describe('order', () => {
  test('a higher rod is drawn higher', () => {
    const heights = [-2, 0, 2, 4, 6, 8, 12, 16].map((above) => {
      const hung = panels({ mount: { where: 'wall', above: inches(above) } });
      const rod = rodOf(sheet([room('Hall', [opening('a', 'A', { treatments: [hung] })])]));
      return rod.fromFloor / rod.width;
    });
    heights.slice(1).forEach((height, place) => expect(height).toBeGreaterThan(heights[place]!));
  });

  test('longer panels hang lower, and none through the floor', () => {
    const hems = [40, 60, 80, 88, 96].map((length) => {
      const hung = panels({ finishedLength: inches(length) });
      const drawing = drawRooms(sheet([room('Hall', [opening('a', 'A', { treatments: [hung] })])]));
      const steps = pathsOf(targetOf(drawing, 'a').shapes).flatMap((path) => path.steps);
      return Math.max(...steps.map((step) => ('y' in step ? step.y : 0)));
    });
    hems.slice(1).forEach((hem, place) => expect(hem).toBeGreaterThanOrEqual(hems[place]!));
    expect(hems[4]! - hems[3]!).toBeLessThan(3);
  });

  test('open panels cover as much rod as their stackback', () => {
    const stacked = (left: number) => {
      const hung = panels({ stackback: { left: inches(left), right: inches(9) } });
      const drawing = drawRooms(sheet([room('Hall', [opening('a', 'A', { treatments: [hung] })])]));
      return JSON.stringify(drawing);
    };
    expect(stacked(9)).not.toBe(stacked(14));
  });
});

describe('figures', () => {
  const input = sheet([
    room('Nursery', [
      opening('a', 'East window', {
        width: inches(60.5),
        height: inches(54.125),
        sill: inches(30.25),
        treatments: [
          panels({
            rodWidth: inches(72.75),
            finishedLength: inches(84.875),
            mount: { where: 'wall', above: inches(4.5) },
          }),
        ],
      }),
    ]),
  ]);

  test('are the typed measurements, typeset', () => {
    expect(wordsOf(drawRooms(input))).toEqual(
      expect.arrayContaining(['60½', '54⅛', '30¼', '72¾', '84⅞', '4½', 'ceiling 108 in', 'Nursery', 'East window']),
    );
  });

  test('follow units and decimal sign', () => {
    const words = wordsOf(drawRooms({ ...input, units: 'cm', decimal: ',' }));
    // 60.5 in is 153.67 cm, 84.875 in is 215.5825 cm (1 in = 2.54 cm exactly): shown to 0.1 mm with the sign for about.
    expect(words).toContain('153,67');
    expect(words).toContain('≈215,58');
  });

  test('what nobody measured has no figure', () => {
    const nothing = AWKWARD.find((row) => row.name === 'nothing measured yet')!;
    expect(wordsOf(drawRooms(nothing.input)).sort()).toEqual(['New opening', 'New room']);
  });

  test('numbers that cannot be drawn keep their figures, underlined', () => {
    const absurd = AWKWARD.find((row) => row.name === 'absurd numbers')!;
    const drawing = drawRooms(absurd.input);
    const label = textsOf(drawing).find((each) => each.text === '3900')!;
    const underlines = flatten(drawing.shapes).filter(
      (shape) =>
        shape.kind === 'line' && shape.y1 === shape.y2 && shape.y1 > label.y && shape.y1 < label.y + label.size / 2,
    );
    expect(underlines.length).toBeGreaterThan(0);
  });
});

describe('targets', () => {
  const two = sheet([room('One', [opening('a', 'A'), opening('b', 'B')]), room('Two', [])], { width: 800 });

  test('each opening and each empty room is one, with its name and its reach', () => {
    const targets = groupsOf(drawRooms(two).shapes).filter((group) => group.key !== undefined);
    expect(targets.map((target) => target.key)).toEqual(['a', 'b', 'room Two']);
    for (const target of targets) {
      expect(target.label).toBeTruthy();
      // WCAG 2.2, 2.5.8: targets of at least 24 by 24.
      expect(target.bounds!.width).toBeGreaterThanOrEqual(24);
      expect(target.bounds!.height).toBeGreaterThanOrEqual(24);
    }
  });

  test('the thread lies under the chosen one alone', () => {
    const threads = (selected: string | null) =>
      flatten(drawRooms({ ...two, selected }).shapes).filter(
        (shape) => shape.kind === 'line' && shape.style.stroke === 'thread',
      );
    expect(threads('b')).toHaveLength(1);
    expect(threads(null)).toHaveLength(0);
  });

  test('rooms without the chosen opening are paler on screen, never on paper, and their words never', () => {
    const rooms = [room('One', [opening('a', 'A')]), room('Two', [opening('b', 'B')])];
    const pale = (detail: 'screen' | 'paper') =>
      groupsOf(drawRooms(sheet(rooms, { detail })).shapes).filter((group) => group.opacity !== undefined);
    expect(pale('screen')).toHaveLength(1);
    expect(
      pale('screen')
        .flatMap((group) => flatten(group.shapes))
        .filter((shape) => shape.kind === 'text'),
    ).toEqual([]);
    expect(pale('paper')).toEqual([]);
  });

  test('choosing another opening moves nothing where the sheet is wide enough', () => {
    const wide = { ...two, width: 1400 };
    const places = (selected: string) =>
      rectsFilled(drawRooms({ ...wide, selected }).shapes, 'frame').map((frame) => frame.x);
    expect(places('b')).toEqual(places('a'));
  });

  test('one room is drawn alike alone and as a list of one', () => {
    const { rooms, ...rest } = sheet([room('One', [opening('a', 'A')])]);
    expect(drawRoom({ ...rest, room: rooms[0]! })).toEqual(drawRooms({ ...rest, rooms }));
  });
});

describe('symmetry', () => {
  test('a pair hangs in mirror image about the middle of its rod', () => {
    const drawing = drawRooms(sheet([room('Hall', [opening('a', 'A')])]));
    const rod = rodOf(sheet([room('Hall', [opening('a', 'A')])]));
    const middle = rod.x + rod.width / 2;
    const bodies = pathsOf(targetOf(drawing, 'a').shapes).filter(
      (path) => path.style.fill === '#c9b79a' && path.style.stroke === undefined,
    );
    expect(bodies).toHaveLength(2);
    // Outlines close where they began: each place counts once.
    const reach = (body: Path, mirror: boolean) => {
      const xs = body.steps.flatMap((step) => ('x' in step ? [step.x] : []));
      return [...new Set(xs.map((x) => (mirror ? middle - x : x - middle).toFixed(6)))]
        .map(Number)
        .sort((one, other) => one - other);
    };
    expect(reach(bodies[0]!, false)).toEqual(reach(bodies[1]!, true));
  });

  test('a mirrored room keeps sizes and distances', () => {
    const wall = 200;
    const given = [
      { key: 'a', at: 20, width: 60 },
      { key: 'b', at: 130, width: 30 },
    ];
    const make = (mirror: boolean) =>
      sheet(
        [
          room(
            'Hall',
            given.map(({ key, at, width }) =>
              opening(key, key, {
                at: inches(mirror ? wall - at - width : at),
                width: inches(width),
                treatments: [panels({ rodWidth: inches(width + 12) })],
              }),
            ),
          ),
        ],
        { width: 900, selected: null },
      );
    const [plain, mirror] = [make(false), make(true)];
    const middleOf = (input: RoomsInput, key: string) => rodOf(input, key).x + rodOf(input, key).width / 2;
    const scale = (input: RoomsInput) => rodOf(input, 'a').width;
    const distance = (input: RoomsInput) => (middleOf(input, 'b') - middleOf(input, 'a')) / scale(input);
    expect(distance(mirror)).toBeCloseTo(-distance(plain), 9);
    expect(rodOf(mirror, 'b').width / scale(mirror)).toBeCloseTo(rodOf(plain, 'b').width / scale(plain), 9);
  });
});

describe.each(AWKWARD)('$name', ({ input }) => {
  const drawing = drawRooms(input);
  test('every number is finite', () => expect(brokenNumbers(drawing)).toEqual([]));
  test('no words on words', () => expect(clashes(drawing)).toEqual([]));
  test('no words off the sheet', () => expect(strays(drawing)).toEqual([]));
  test('the same again', () => expect(drawRooms(input)).toEqual(drawing));
  test('says in words what it shows', () => expect(drawing.title.length).toBeGreaterThan(5));
});

describe('anything typed', () => {
  const given = fc.option(fc.oneof(fc.integer({ min: 0, max: 32_000_000 }), fc.constant(Number.NaN)), {
    nil: null,
  }) as fc.Arbitrary<Ticks | null>;
  const drawnOpening = fc
    .record({
      width: given,
      height: given,
      sill: given,
      at: given,
      rodWidth: given,
      finishedLength: given,
      above: given,
      closed: fc.boolean(),
      name: fc.string({ maxLength: 30 }),
    })
    .map((typed) => ({
      ...typed,
      treatments: [
        panels({
          rodWidth: typed.rodWidth,
          finishedLength: typed.finishedLength,
          mount: { where: 'wall', above: typed.above },
          drawn: typed.closed ? 'closed' : 'open',
        }),
      ],
    }));

  test('is drawn without broken numbers, without clashes, within its height', () => {
    fc.assert(
      fc.property(
        fc.array(drawnOpening, { maxLength: 4 }),
        given,
        fc.integer({ min: 200, max: 1400 }),
        (openings, ceiling, width) => {
          const keyed = openings.map((each, place) => ({ ...each, key: place === 0 ? 'a' : `k${place}` }));
          const drawing = drawRooms(sheet([room('Room', keyed, { ceiling })], { width }));
          expect(brokenNumbers(drawing)).toEqual([]);
          expect(clashes(drawing)).toEqual([]);
          expect(strays(drawing)).toEqual([]);
          expect(drawing.height).toBeLessThanOrEqual(300 + 1e-6);
        },
      ),
      { numRuns: 150, seed: 20261125 },
    );
  });
});

describe('contrast', () => {
  const tokens = readFileSync(new URL('../../../renderer/look/tokens.css', import.meta.url), 'utf8');
  const [light = '', dark = ''] = tokens.split('prefers-color-scheme: dark');
  const read = (css: string, name: string) => new RegExp(`--(?:paint-)?${name}:\\s*(#[0-9a-f]{6})`, 'i').exec(css)?.[1];

  test.each([
    ['light', light],
    ['dark', dark],
  ])('%s: every paint that words are set in reads on paper and card (WCAG 2.2, 1.4.3: 4.5 to 1)', (_, css) => {
    const paints = new Set(AWKWARD.flatMap((row) => textsOf(drawRooms(row.input)).map((label) => label.paint)));
    for (const paint of paints) {
      for (const ground of ['paper', 'card']) {
        const [word, under] = [read(css, paint), read(css, ground)];
        if (word === undefined || under === undefined) throw new Error(`no token for ${paint} or ${ground}`);
        expect(wcagContrast(word, under)).toBeGreaterThanOrEqual(4.5);
      }
    }
  });
});
