/** What stands along each heading: counts and spaces worked by hand; rules are common practice unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { Part } from '#shared/parts.ts';
import { estimateCase, faceLine } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

function counted(given: PanelsCase): Record<string, number> {
  const parts: readonly Part[] = estimateCase(given).parts;
  return Object.fromEntries(parts.map((part) => [part.part, 'count' in part ? part.count : part.length / 8128]));
}
const single = (panels: PanelsCase['panels'], practice?: PanelsCase['practice']): PanelsCase => ({
  panels: { arrangement: 'single', ...panels },
  ...(practice ? { practice } : {}),
});

describe('pleats', () => {
  it.each([
    [1, 5],
    [1.5, 7],
    [2, 10],
    [2.5, 12],
    [3, 15],
    [3.5, 17],
  ])('PL-05 (published table at 2.5 times): %d widths take %d pleats', (widths, pleats) => {
    expect(estimateCase(single({ widths })).pleats?.count).toBe(pleats);
  });

  it('pleat and space: a pair of 2 widths each on 72 in with 3½ in returns and overlap', () => {
    // Piece: finished 41.25, flat (216 - 12) / 2 = 102, 10 pleats of 6.075; space (41.25 - 3.5 - 1.75) / 9 = 4.
    const made = estimateCase({ panels: { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5 } });
    expect(made.pleats).toMatchObject({ count: 10 });
    expect(made.in(Math.round(made.pleats!.pleat))).toBeCloseTo(6.075, 3);
    expect(made.in(Math.round(made.pleats!.space))).toBeCloseTo(4, 3);
  });

  it('PL-01 (Singer Sewing Library No. 102): 91 in to be pleated away at 7 in is 13 pleats; ours shares the same cloth over its own count', () => {
    // Half of a pair: finished 53, flat after hems 144: 91 to pleat away, whatever the number of pleats.
    const made = estimateCase({
      practice: { sideHem: 0 },
      cloth: { width: 48 },
      panels: { arrangement: 'single', rodWidth: 49, return: { left: 4, right: 0 }, widths: 3 },
    });
    const pleats = made.pleats!;
    expect(made.in(Math.round(pleats.pleat * pleats.count))).toBeCloseTo(91, 2);
  });

  it('hooks and rings: one for a pleat and one for each end', () => {
    expect(counted(single({ widths: 2 }))).toMatchObject({ ring: 12, hook: 12 });
  });
});

describe('grommets', () => {
  it('an even number, spaced again: flat 102, edges 2: 98 / 6½ = 15.08, 16 + 1 is 17, 18', () => {
    expect(counted(single({ heading: 'grommet', widths: 2 }))).toMatchObject({ grommet: 18 });
  });
  it.each([1, 1.5, 2, 2.5, 3, 4])('%d widths: always even', (widths) => {
    expect((counted(single({ heading: 'grommet', widths }))['grommet'] ?? 1) % 2).toBe(0);
  });
});

describe('wave', () => {
  it('gliders decide: 72 / 2⅜ = 30.3, 31 spaces, 32 gliders; flat 31 × 2⅜ × 2 + 2 = 149¼, 3 widths', () => {
    const made = estimateCase(single({ heading: 'wave', rodWidth: 72, fullness: 2 }));
    expect(made.working.find((step) => step.id === 'flat-width')).toMatchObject({
      formula: '1 × (31 × 2⅜ × 2 + 2)',
      value: '149¼',
    });
    expect(faceLine(made).halfWidths).toBe(6);
    expect(counted(single({ heading: 'wave', rodWidth: 72, fullness: 2 }))).toMatchObject({ glider: 32 });
  });
  it('made even: 70 / 2⅜ = 29.5, 30 spaces would be 31 gliders, so 32', () => {
    expect(counted(single({ heading: 'wave', rodWidth: 70, fullness: 2 }))).toMatchObject({ glider: 32 });
  });
  it('each piece of a pair has its own gliders', () => {
    expect(counted({ panels: { heading: 'wave', rodWidth: 140, fullness: 2 } })).toMatchObject({ glider: 64 });
  });
});

describe('tabs', () => {
  it('cut in rows from the same cloth: flat 102 / 7 = 14.6, 16 tabs of 5 × 7 in, 10 across, 2 rows of 7 in', () => {
    const made = estimateCase(single({ heading: 'tab', widths: 2 }));
    expect(made.working.find((step) => step.id === 'tabs')).toMatchObject({
      formula: '16 of 5 × 7, 10 across: 2 rows',
      value: '14',
    });
    // 2 × (84 + 2 + 8) + 14
    expect(made.in(faceLine(made).plan)).toBe(202);
    expect(counted(single({ heading: 'tab', widths: 2 }))).not.toHaveProperty('hook');
  });
});

describe('other headings', () => {
  it('a rod pocket hangs on the rod alone', () => {
    expect(Object.keys(counted(single({ heading: 'rod-pocket', widths: 2 })))).toEqual([
      'rod',
      'bracket',
      'finial',
      'weight',
    ]);
  });
  it('pencil pleat hooks sit on the gathered heading: 72 / 3 = 24 and 1', () => {
    expect(counted(single({ heading: 'pencil-pleat', widths: 3, rodWidth: 72 }))).toMatchObject({ hook: 25 });
  });
  it('flat panels: rings by the flat width, 102 / 6 = 17 and 1', () => {
    expect(counted(single({ heading: 'flat', widths: 2 }))).toMatchObject({ ring: 18 });
  });
  it('UK-09 (track 183 cm at 2.25): heading tape by the flat width asked, 411.75 cm, printed 412', () => {
    const made = estimateCase({
      units: 'cm',
      practice: { sideHem: 0 },
      cloth: { width: 411.75 },
      panels: { arrangement: 'single', heading: 'pencil-pleat', rodWidth: 183, finishedLength: 200, fullness: 2.25 },
    });
    const tape = made.parts.find((part) => part.part === 'headingTape');
    expect(Math.ceil(made.in(tape && 'length' in tape ? tape.length : 0))).toBe(412);
  });
});

describe('rods and weights', () => {
  it('returns are part of the rod; one bracket more for each span over 48 in', () => {
    const parts = counted({ panels: { rodWidth: 100, return: 3.5 } });
    expect(parts).toMatchObject({ rod: 107, bracket: 4 });
  });
  it('a pole has two finials; a wave track, a rod inside the frame and one round a bay have none', () => {
    expect(counted({})).toMatchObject({ finial: 2 });
    expect(counted({ panels: { heading: 'wave' } })).not.toHaveProperty('finial');
    expect(counted({ panels: { rodWidth: 60, mount: { where: 'inside' } } })).not.toHaveProperty('finial');
  });
  it('weights at corners and joins: a pair of 2 widths each has 4 corners and 2 joins', () => {
    expect(counted({ panels: { widths: 2 } })).toMatchObject({ weight: 6 });
  });
});
