/** Every kind in the elevation: to scale, counted, in the order in which it hangs, and drawn from nothing at all. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawRooms } from '#app/drawing/draw-room.ts';
import type { DrawnTreatment } from '#app/drawing/drawn-room.ts';
import type { Path, PathStep, Shape } from '#app/drawing/shape.ts';
import type { Ticks } from '#shared/length.ts';
import { inches, opening, panels, room, sheet } from './awkward-rooms.ts';
import { bedSkirt, cornice, EVERY_KIND, shade, showerCurtain, swags, untyped, valance } from './every-kind.ts';
import { brokenNumbers, clashes, flatten, pathsOf, rectsFilled, strays, targetOf, wordsOf } from './read-drawing.ts';

function drawn(treatments: readonly DrawnTreatment[], change: Parameters<typeof opening>[2] = {}) {
  return drawRooms(sheet([room('Hall', [opening('a', 'A', { treatments, ...change })])]));
}

function shapesOf(treatments: readonly DrawnTreatment[]): Shape[] {
  return flatten(targetOf(drawn(treatments), 'a').shapes);
}

/** Points an inch: the opening is 60 in wide. */
function scaleOf(treatments: readonly DrawnTreatment[]): number {
  const frames = rectsFilled(targetOf(drawn(treatments), 'a').shapes, 'frame');
  // The casing adds 3 in at each side; it is the widest but for the sill.
  const casing = frames.find((frame) => frame.height > frame.width * 0.5)!;
  return casing.width / 66;
}

function points(steps: readonly PathStep[]): { x: number; y: number }[] {
  return steps.flatMap((step) => (step.to === 'close' ? [] : [{ x: step.x, y: step.y }]));
}

/** Width and height of what paths of this treatment's own colours reach. */
function extent(paths: readonly Path[]) {
  const all = paths.flatMap((path) => points(path.steps));
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

describe.each(EVERY_KIND)('$name', ({ treatments }) => {
  test.each(['screen', 'paper'] as const)('on %s: sound, nothing on anything, nothing off the sheet', (detail) => {
    const input = sheet([room('Hall', [opening('a', 'A', { treatments })])], { detail });
    const drawing = drawRooms(input);
    expect(brokenNumbers(drawing)).toEqual([]);
    expect(clashes(drawing)).toEqual([]);
    expect(strays(drawing)).toEqual([]);
    expect(drawing.height).toBeLessThanOrEqual(300 + 1e-6);
    expect(drawRooms(input)).toEqual(drawing);
  });

  test('is drawn while nothing of it is typed, and then has no figure', () => {
    const bare = treatments.map(untyped);
    const drawing = drawRooms(
      sheet([
        room('Hall', [opening('a', 'A', { treatments: bare, width: null, height: null, sill: null })], {
          ceiling: null,
        }),
      ]),
    );
    expect(brokenNumbers(drawing)).toEqual([]);
    expect(wordsOf(drawing).sort()).toEqual(['A', 'Hall']);
  });

  test('is told in words', () => {
    const label = targetOf(drawn(treatments), 'a').label ?? '';
    expect(label).not.toMatch(/undefined|NaN/u);
    expect(label.length).toBeGreaterThan(12);
  });
});

describe('to scale', () => {
  test.each([
    ['tailored valance', [valance()], 74, 16],
    ['scalloped valance', [valance({ style: 'scalloped', scallops: 5, scallopDepth: inches(4) })], 74, 16],
  ] as const)('%s: 74 in wide and 16 in deep beside a 60 in opening', (_, treatments, width, height) => {
    const scale = scaleOf(treatments);
    const face = pathsOf(shapesOf(treatments)).find((path) => typeof path.style.fill === 'object')!;
    expect(extent([face]).width / scale).toBeCloseTo(width, 6);
    // A parabola's lowest point lies between its ends: a quarter of its handles above them.
    const curves = face.steps.flatMap((step) => (step.to === 'curve' ? [step.y + (step.y1 - step.y) * 0.75] : []));
    const ys = [...points(face.steps).map(({ y }) => y), ...curves];
    expect((Math.max(...ys) - Math.min(...ys)) / scale).toBeCloseTo(height, 6);
  });

  test('a cascade is as long as its longest point, and as wide as it is pleated', () => {
    const treatments = [swags({ jabots: null })];
    const scale = scaleOf(treatments);
    const board = rectsFilled(shapesOf(treatments), '#8a9a7b')[0]!;
    const folds = pathsOf(shapesOf(treatments)).filter((path) => typeof path.style.fill === 'object');
    const lowest = Math.max(...folds.flatMap((path) => points(path.steps).map(({ y }) => y)));
    // The board's own edge is drawn 0.6 in thick, four tenths of it above the line where the length starts.
    expect((lowest - board.y - board.height * 0.4) / scale).toBeCloseTo(42, 6);
  });

  test('a shaped cornice edge is as long as its template', () => {
    const treatments = [cornice({ shapedEdge: inches(82), welts: { top: null, bottom: null } })];
    const scale = scaleOf(treatments);
    const face = pathsOf(shapesOf(treatments)).find(
      (path) => path.steps.filter((step) => step.to === 'curve').length === 6,
    )!;
    let length = 0;
    let from = { x: 0, y: 0 };
    for (const step of face.steps) {
      if (step.to === 'curve') {
        let last = from;
        for (let part = 1; part <= 40; part += 1) {
          const t = part / 40;
          const u = 1 - t;
          const x = u ** 3 * from.x + 3 * u * u * t * step.x1 + 3 * u * t * t * step.x2 + t ** 3 * step.x;
          const y = u ** 3 * from.y + 3 * u * u * t * step.y1 + 3 * u * t * t * step.y2 + t ** 3 * step.y;
          length += Math.hypot(x - last.x, y - last.y);
          last = { x, y };
        }
      }
      if (step.to !== 'close') from = { x: step.x, y: step.y };
    }
    expect(Math.abs(length / scale - 82)).toBeLessThan(0.6);
  });

  test('a bed is as long and as wide as it was measured, a skirt drops as far', () => {
    const words = wordsOf(drawn([bedSkirt()]));
    expect(words).toEqual(expect.arrayContaining(['80', '60', '14']));
  });

  test('figures of what hangs are those typed', () => {
    expect(wordsOf(drawn([swags()]))).toEqual(expect.arrayContaining(['88', '18', '42', '6']));
    expect(wordsOf(drawn([shade()]))).toEqual(expect.arrayContaining(['59¾', '54', '60']));
    expect(wordsOf(drawn([showerCurtain()]))).toContain('72');
  });
});

describe('counted', () => {
  const creases = (treatments: readonly DrawnTreatment[]) =>
    pathsOf(shapesOf(treatments)).filter((path) => typeof path.style.fill === 'object' && path.steps.length === 4)
      .length;

  test.each([1, 3, 6])('%i box pleats', (pleats) => {
    expect(creases([valance({ style: 'box-pleated', pleats })])).toBe(pleats);
  });

  test.each([2, 5, 7])('%i scallops', (scallops) => {
    const face = pathsOf(shapesOf([valance({ style: 'scalloped', scallops, scallopDepth: inches(3) })])).find(
      (path) => typeof path.style.fill === 'object',
    )!;
    expect(face.steps.filter((step) => step.to === 'curve')).toHaveLength(scallops);
  });

  test('a row for each row of rings', () => {
    const rows = [6, 18, 30, 42].map(inches);
    const strokes = pathsOf(shapesOf([shade({ rows, finishedLength: inches(54) })])).map(
      (path) => path.steps.filter((step) => step.to === 'move').length,
    );
    expect(strokes).toContain(4);
  });

  test('four panels stand at even distances, the outer ones at the ends of the rod', () => {
    const many = panels({
      arrangement: 'pair-stationary',
      pieces: 4,
      stackback: { left: inches(10), right: inches(10) },
    });
    const bodies = pathsOf(shapesOf([many])).filter(
      (path) => path.style.fill === '#c9b79a' && path.style.stroke === undefined && path.style.opacity === undefined,
    );
    expect(bodies).toHaveLength(4);
    const lefts = bodies.map((body) => Math.min(...points(body.steps).map(({ x }) => x))).sort((a, b) => a - b);
    const gaps = lefts.slice(1).map((left, place) => left - lefts[place]!);
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 6);
  });
});

describe('in the order in which it hangs', () => {
  const placeOf = (shapes: readonly Shape[], colour: string) =>
    shapes.findIndex((shape) => 'style' in shape && JSON.stringify(shape.style).includes(colour));

  test('a shade inside lies under the valance above it, whichever was entered first', () => {
    const top = valance({ style: 'gathered', colour: '#112233' });
    const inside = shade({ key: 'shade', style: 'soft-fold', colour: '#445566' });
    for (const treatments of [
      [top, inside],
      [inside, top],
    ]) {
      const shapes = shapesOf(treatments);
      const last =
        shapes.length - 1 - [...shapes].reverse().findIndex((shape) => JSON.stringify(shape).includes('#112233'));
      expect(last).toBeGreaterThan(placeOf(shapes, '#445566'));
    }
  });

  test('sheers lie under drapery and let the window through', () => {
    const shapes = shapesOf([
      panels({ colour: '#112233' }),
      panels({ key: 'sheer', sheer: true, colour: '#445566', drawn: 'closed' }),
    ]);
    expect(placeOf(shapes, '#445566')).toBeLessThan(placeOf(shapes, '#112233'));
    const sheer = pathsOf(shapes).find((path) => path.style.fill === '#445566')!;
    expect(sheer.style.opacity).toBeLessThan(1);
  });

  test('a bed and a bath have no window; beside a window they stand clear of it', () => {
    const casing = (treatments: readonly DrawnTreatment[]) =>
      shapesOf(treatments).some(
        (shape) =>
          'style' in shape && typeof shape.style.fill === 'object' && shape.style.fill.from.paint === 'glass-top',
      );
    expect(casing([bedSkirt()])).toBe(false);
    expect(casing([showerCurtain()])).toBe(false);
    expect(casing([panels(), bedSkirt({ key: 'bed' })])).toBe(true);
  });
});

describe('anything typed', () => {
  const given = fc.option(fc.oneof(fc.integer({ min: 0, max: 32_000_000 }), fc.constant(Number.NaN)), {
    nil: null,
  }) as fc.Arbitrary<Ticks | null>;
  const count = fc.option(fc.oneof(fc.integer({ min: -3, max: 9000 }), fc.constant(Number.NaN)), { nil: null });
  const kind = fc.integer({ min: 0, max: EVERY_KIND.length - 1 });

  /** Every measure and count of a treatment replaced by something typed. */
  function scramble(treatment: DrawnTreatment, lengths: readonly (Ticks | null)[], counts: readonly (number | null)[]) {
    let place = 0;
    const counted = [
      'pleats',
      'scallops',
      'puffs',
      'swags',
      'count',
      'eyelets',
      'middlePleats',
      'fullness',
      'halfWidths',
      'pieces',
    ];
    const replace = (value: unknown, name: string): unknown => {
      if (counted.includes(name)) return counts[place++ % counts.length] ?? null;
      if (typeof value === 'number') return lengths[place++ % lengths.length] ?? null;
      if (Array.isArray(value)) return value.map((part: unknown) => replace(part, ''));
      if (typeof value === 'object' && value !== null)
        return Object.fromEntries(Object.entries(value).map(([inner, part]) => [inner, replace(part, inner)]));
      return value;
    };
    return replace(treatment, '') as DrawnTreatment;
  }

  test('every kind is drawn without broken numbers, clashes or strays, within its height', () => {
    fc.assert(
      fc.property(
        kind,
        fc.array(given, { minLength: 3, maxLength: 12 }),
        fc.array(count, { minLength: 2, maxLength: 5 }),
        fc.integer({ min: 160, max: 1200 }),
        (place, lengths, counts, width) => {
          const treatments = EVERY_KIND[place]!.treatments.map((each) => scramble(each, lengths, counts));
          const made = { treatments, width: lengths[0] ?? null, height: lengths[1] ?? null, sill: lengths[2] ?? null };
          const drawing = drawRooms(sheet([room('Hall', [opening('a', 'A', made)])], { width }));
          expect(brokenNumbers(drawing)).toEqual([]);
          expect(clashes(drawing)).toEqual([]);
          expect(strays(drawing)).toEqual([]);
          expect(drawing.height).toBeLessThanOrEqual(300 + 1e-6);
        },
      ),
      { numRuns: 250, seed: 20261126 },
    );
  });
});
