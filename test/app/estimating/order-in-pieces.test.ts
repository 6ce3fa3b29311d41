/**
 * Orders that come in more than one piece of cloth: each piece with its own extra, no cut over two pieces. Rules are
 * common practice ("two pieces in one delivery are two extra repeats"); figures are worked by hand.
 */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planAlone } from '#app/estimating/cut-cloth.ts';
import { layOnPieces } from '#app/estimating/lay-on-pieces.ts';
import { takeOffJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthFrom, lengthIn, ticks } from '#shared/length.ts';
import { planHouse } from '../pricing/plan-house.ts';
import { estimateCase, faceLine } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

/** The worked example: 4 cuts of 100 in, with a repeat of 27 in 108 from cut to cut. */
const PANELS = { return: 3.5, overlap: 3.5, rodWidth: 72, fullness: 2.5 };
const PRINT = { repeat: { vertical: 27, match: 'straight' } } as const;

function ordered(given: PanelsCase) {
  const estimate = estimateCase({ panels: PANELS, ...given });
  const line = faceLine(estimate);
  const step = estimate.working.find(({ id }) => id === 'order');
  return {
    yards: estimate.yards(line.order),
    pieces: line.pieces?.map((piece) => [piece.cuts, estimate.in(piece.base), estimate.yards(piece.order)]) ?? null,
    formula: step?.formula,
    rests: step?.rests,
  };
}

describe('an order of more than a whole piece had one extra repeat', () => {
  it('two pieces of 8 yd: 2 cuts each, 108 + 100 + 27 = 235 in, 6¾ yd twice instead of 12¾ once', () => {
    const found = ordered({ cloth: { ...PRINT, bolt: '8 yd' } });
    expect(found).toEqual({
      yards: 13.5,
      pieces: [
        [2, 208, 6.75],
        [2, 208, 6.75],
      ],
      formula: '2 pieces of 2 cuts: 208 + 27 in, 6¾ yd each, each up to ¼ yd',
      rests:
        'practice: from the layout, one repeat extra for each piece of cloth supplied, order step, a whole piece is 8 yd, of which 27 in may be lost before the first cut, and no cut goes over two',
    });
  });
  it.each<[string, PanelsCase, number, readonly (readonly number[])[] | null]>([
    // Without a bolt, and from one that holds 3 x 108 + 100 + 27 = 451 in.
    ['an endless bolt', { cloth: PRINT }, 12.75, null],
    ['one piece of 12¾ yd', { cloth: { ...PRINT, bolt: '12.75 yd' } }, 12.75, null],
    // 451 in fits 452, and 12 3/4 yd is 459: the whole piece.
    ['one piece of 452 in', { cloth: { ...PRINT, bolt: 452 } }, 452 / 36, null],
    // 2 x 108 + 100 + 27 = 343, 9.53 up to 9.75; 100 + 27 = 127, 3.53 up to 3.75.
    [
      '3 cuts and 1',
      { cloth: { ...PRINT, bolt: '12.5 yd' } },
      13.5,
      [
        [3, 316, 9.75],
        [1, 100, 3.75],
      ],
    ],
    // Plain: 2 x 100 = 200 in, 5.56 up to 5.75, twice.
    [
      'plain cloth',
      { cloth: { bolt: '8 yd' } },
      11.5,
      [
        [2, 200, 5.75],
        [2, 200, 5.75],
      ],
    ],
    // Cut at our place: 208 in, 5.78 up to 6, twice.
    [
      'cut on the repeat',
      { cloth: { repeat: { ...PRINT.repeat, cutOnRepeat: true }, bolt: '8 yd' } },
      12,
      [
        [2, 208, 6],
        [2, 208, 6],
      ],
    ],
    // 2 x 108 + 27 = 243 in is 6 3/4 yd each.
    [
      'by the chart',
      { cloth: { ...PRINT, bolt: '8 yd' }, practice: { orderFrom: 'handbook' } },
      13.5,
      [
        [2, 216, 6.75],
        [2, 216, 6.75],
      ],
    ],
    // 208 + 36 = 244 in, 6.78 up to 7.
    [
      'the greater of a repeat and a yard',
      { cloth: { ...PRINT, bolt: '8 yd' }, practice: { orderExtra: 'repeat-or-yard' } },
      14,
      [
        [2, 208, 7],
        [2, 208, 7],
      ],
    ],
    [
      'nothing extra',
      { cloth: { ...PRINT, bolt: '8 yd' }, practice: { orderExtra: 'none' } },
      12,
      [
        [2, 208, 6],
        [2, 208, 6],
      ],
    ],
    [
      'the supplier sells whole yards',
      { cloth: { ...PRINT, bolt: '8 yd', orderStep: '1 yd' } },
      14,
      [
        [2, 208, 7],
        [2, 208, 7],
      ],
    ],
  ])('%s', (_, given, yards, pieces) => {
    const found = ordered(given);
    expect(found.yards).toBeCloseTo(yards, 4);
    expect(found.pieces).toEqual(pieces);
  });
  it('pieces that differ are told one by one, and nothing extra is not added', () => {
    // 3 x 100 = 300 in is 8 1/3 yd; 100 in is 2.78.
    expect(ordered({ cloth: { bolt: '8 1/2 yd' } }).formula).toBe(
      '1 piece of 3 cuts: 300 in, 8½ yd; 1 piece of 1 cut: 100 in, 3 yd, each up to ¼ yd',
    );
  });
  it('a lining has pieces of its own: 4 cuts of 90 in from 6 yd are two and two', () => {
    const lining = { id: 'l', role: 'lining', family: 'standard', width: 54, price: '5/yd', bolt: '6 yd' } as const;
    const estimate = estimateCase({ panels: PANELS, linings: [lining], behind: ['l'] });
    expect(estimate.takeoff[1]?.pieces?.map(({ cuts, base }) => [cuts, estimate.in(base)])).toEqual([
      [2, 180],
      [2, 180],
    ]);
  });
  it('the joint plan of one treatment orders the same, and says why', () => {
    const { plan, order } = planHouse({ cloth: { ...PRINT, bolt: '8 yd' }, windows: [{}] });
    expect(lengthIn(order, 'yd')).toBe(13.5);
    expect(plan.working.find(({ id }) => id === 'plan-order')).toMatchObject({
      formula: 'bolt 1: 5.78 yd + ¾ yd, 6¾ yd; bolt 2: 5.78 yd + ¾ yd, 6¾ yd, each up to ¼ yd',
      rests:
        'practice: from the plan, the extra once for each piece of cloth supplied; a whole piece is 8 yd, and no cut goes over two',
    });
  });
  it('the joint plan by the chart has an extra for every piece too: 432 + 2 × 27 = 486 in', () => {
    const practice = { orderFrom: 'handbook' } as const;
    const house = { cloth: { ...PRINT, bolt: '8 yd' }, windows: [{}], practice };
    expect(lengthIn(planHouse(house).order, 'yd')).toBe(13.5);
  });
  it('a plan that fits a piece only from a lucky place in the repeat takes two: 280 of 288 in', () => {
    // 100 + 16 is 116, 5 repeats of 27 are 135: 135 + 116 = 251 in fits 288 less 27, and 258 does not.
    const house = (bolt: number) =>
      planHouse({ cloth: { ...PRINT, bolt }, windows: [{ finishedLength: 100, widths: 1 }] });
    expect(house(278).plan.bolts).toHaveLength(1);
    expect(house(277).plan.bolts).toHaveLength(2);
  });
});

/** Fewest pieces, then least cloth, by trying every way to share the cuts of two phases out. */
function best(level: number, dropped: number, lengthOf: (a: number, b: number) => number, room: number): number[] {
  if (level === 0 && dropped === 0) return [0, 0];
  let found = [Infinity, Infinity];
  for (let a = 0; a <= level; a += 1)
    for (let b = 0; b <= dropped; b += 1) {
      if (a + b === 0 || lengthOf(a, b) > room) continue;
      const [pieces = 0, length = 0] = best(level - a, dropped - b, lengthOf, room);
      const tried = [pieces + 1, length + lengthOf(a, b)];
      if (tried[0]! < found[0]! || (tried[0] === found[0] && tried[1]! < found[1]!)) found = tried;
    }
  return found;
}

describe('laid on pieces', () => {
  it('half-drop cuts take the fewest pieces there can be, and the least cloth on them (every way tried)', () => {
    const size = lengthFrom(24, 'in');
    const repeat = { vertical: size, horizontal: null, match: 'half-drop', cutOnRepeat: false } as const;
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 110 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: 0, max: 300 }),
        (inches, level, dropped, more) => {
          fc.pre(dropped <= level);
          const plain = lengthFrom(inches, 'in');
          const cut = { plain, length: plain, repeats: null };
          const plan = (a: number, b: number) => planAlone(cut, a + b, repeat, { level: a, dropped: b });
          const room = plain + lengthFrom(more, 'in');
          const lay = ([a = 0, b = 0]: readonly number[]) => ({ plan: plan(a, b), handbook: plan(a, b) });
          const pieces = layOnPieces({ counts: [level, dropped], lay }, room);
          expect(pieces.every((counts) => lay(counts).plan <= room)).toBe(true);
          expect(pieces.reduce((sum, [a = 0, b = 0]) => sum + 1000 * a + b, 0)).toBe(1000 * level + dropped);
          const length = pieces.reduce((sum, counts) => sum + lay(counts).plan, 0);
          expect([pieces.length, length]).toEqual(best(level, dropped, plan, room));
        },
      ),
      { seed: 51, numRuns: 300 },
    );
  });
  it('a half-drop from 10 m: 2 level cuts on one piece, 2 dropped on the other, as the joint plan lays them', () => {
    // 256 + 250 = 506 cm and 64 more, twice 5.7 m; by turns one piece would hold 3 of them, and 8.6 and 3.2 be ordered.
    const cloth = {
      width: '137 cm',
      repeat: { vertical: '64 cm', match: 'half-drop' },
      bolt: '10 m',
      orderStep: '0.1 m',
    };
    const house = planHouse({ cloth, windows: [{ finishedLength: '209.36 cm' }] });
    expect([lengthIn(house.order, 'm'), lengthIn(house.orderAlone, 'm')]).toEqual([11.4, 11.4]);
  });
  it('a thousand cuts of three lengths take at most 11/9 of the fewest and 6/9 (Dósa 2007, first fit decreasing)', () => {
    const lengths = [100, 60, 35].map((each) => lengthFrom(each, 'in'));
    const lay = (counts: readonly number[]) => {
      const sum = ticks(counts.reduce((total, count, kind) => total + count * (lengths[kind] ?? 0), 0));
      return { plan: sum, handbook: sum };
    };
    // One of each is 195 in: 400 pieces of 200 in hold them all, and no fewer could.
    expect(layOnPieces({ counts: [400, 400, 400], lay }, lengthFrom(200, 'in')).length).toBeLessThanOrEqual(
      (11 * 400 + 6) / 9,
    );
  });
});

describe('every kind from short pieces', () => {
  const HOUSE = JSON.parse(
    readFileSync(new URL('../../reference/every-kind.job.json', import.meta.url), 'utf8'),
  ) as WireJob;
  const boltsOf = (bolt: string | undefined) => {
    const read = readJob({
      ...HOUSE,
      cloth: (HOUSE.cloth ?? []).map((cloth) => (bolt === undefined ? cloth : { ...cloth, bolt })),
    });
    if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
    return takeOffJob(read.job);
  };
  it('no piece is longer than it can be, all cuts are on one, and nothing costs less cloth than endless bolts', () => {
    let split = 0;
    const endless = new Map(boltsOf(undefined).planned.best.map(({ key, takeoff }) => [key, takeoff]));
    for (const bolt of [4, 5, 6, 8, 12, 20]) {
      const whole = lengthFrom(bolt, 'yd');
      for (const { key, takeoff } of boltsOf(`${bolt} yd`).planned.best)
        takeoff.forEach((line, index) => {
          if (line.pieces === undefined) return;
          split += 1;
          const [cuts, order] = line.pieces.reduce(([a, b], piece) => [a + piece.cuts, b + piece.order], [0, 0]);
          expect(line.pieces.every((piece) => piece.order <= whole && piece.base <= whole)).toBe(true);
          if (!line.railroaded) expect(cuts, `${key} ${line.cloth}`).toBeGreaterThanOrEqual(line.cuts);
          expect(line.order).toBe(Math.max(order, 0));
          expect(line.order).toBeGreaterThanOrEqual(endless.get(key)?.[index]?.order ?? 0);
        });
    }
    expect(split).toBeGreaterThan(10);
  });
});
