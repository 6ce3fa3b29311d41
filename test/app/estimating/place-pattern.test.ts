/**
 * Where the pattern stands. Rules: one level a room, every treatment's motif at the same height from the floor; a whole
 * motif at the top or at the hem; pleat and space together are the repeat across divided by a whole number (common
 * practice). The figures are reckoned by hand beside each.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPanels } from '#app/estimating/panels/check-panels.ts';
import { cutsOfPanels } from '#app/estimating/panels/cuts-of-panels.ts';
import { placePattern } from '#app/estimating/place-pattern.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { estimateCase, faceLine, jobOf, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const repeat = { vertical: 27, horizontal: 27 } as const;
const inch = (value: number): number => lengthFrom(value, 'in');

/** Sill 30, opening 54 high, rod 4 above: the heading is 88 above the floor. 84 long, unlined: 8 of heading, 8 of hem. */
function placed(pattern: object, more: Partial<PanelsCase> = {}): PanelsCase {
  return {
    sill: 30,
    cloth: { repeat },
    ...more,
    panels: { mount: { where: 'wall', above: 4 }, pattern: pattern as never, ...more.panels },
  };
}

function phaseOf(given: PanelsCase): number {
  const { panels, face, behind } = readPanels(given);
  const found = placePattern(panels, face, behind.length > 0);
  if (found === null) throw new Error('nothing is placed');
  return lengthIn(found.phase, 'in');
}

describe('a placed motif', () => {
  it.each([
    // Middle of the motif 13.5 into the repeat. Level 42: 88 - 42 = 46 below the top, 8 of heading: 13.5 - 54 + 2 x 27 = 13.5.
    ['at the level of the room', { place: 'level', level: 42 }, 13.5],
    // Half a repeat below the top: 13.5 - 13.5 - 8 = -8, 19 in the repeat.
    ['whole, below the heading', { place: 'top' }, 19],
    // 84 - 13.5 = 70.5 below the top: 13.5 - 78.5 + 3 x 27 = 16.
    ['whole, above the hem', { place: 'hem' }, 16],
    // 42 below the top: 13.5 - 50 + 2 x 27 = 17.5.
    ['in the middle of the drop', { place: 'middle' }, 17.5],
    // The motif 5 into the repeat: 5 - 54 + 2 x 27 = 5.
    ['its own place in the repeat', { place: 'level', level: 42, motif: 5 }, 5],
  ])('%s: cuts begin in the repeat where it says', (_, pattern, expected) => {
    expect(phaseOf(placed(pattern))).toBeCloseTo(expected, 4);
  });

  it('a lined heading turns less, and the cuts begin that much later in the repeat', () => {
    const practice = { headingAllowance: { 'pinch-pleat': { unlined: 8, lined: 4 } } };
    const bare = phaseOf(placed({ place: 'middle' }, { practice }));
    const lined = phaseOf(placed({ place: 'middle' }, { practice, behind: ['std-white'] }));
    expect(lined - bare).toBeCloseTo(4, 4);
  });

  it('takes no longer cuts, no more of them, and no longer order than the pattern as it falls', () => {
    const free = faceLine(estimateCase({ sill: 30, cloth: { repeat } }));
    for (const place of ['top', 'hem', 'middle'] as const) {
      const line = faceLine(estimateCase(placed({ place }, { panels: { mount: { where: 'wall', above: 0 } } })));
      expect([line.cuts, line.cutLength, line.order]).toEqual([free.cuts, free.cutLength, free.order]);
    }
  });

  it('its working says how far below the top it stands, on which level, and what was assumed', () => {
    const { working } = estimateCase(placed({ place: 'level', level: 42 }));
    expect(working.find(({ id }) => id === 'motif-below')).toMatchObject({ formula: '88 − 42 = 46', value: '46' });
    expect(working.find(({ id }) => id === 'motif-below')?.rests).toMatch(/one level a room.*not given/);
    expect(working.find(({ id }) => id === 'pattern-start')).toMatchObject({ value: '13½' });
  });

  it.each([
    // 3 1/2 of overlap and two hems of 3: 9 1/2 of cloth that nobody sees.
    ['27 across', 27, 3.5, '9½'],
    ['4 across: whole repeats are left out', 4, 3.5, '1½'],
    ['no overlap, 6 across: the hems are a whole repeat', 6, 0, '0'],
  ])('the leading edges of a pair read on when closed: %s', (_, horizontal, overlap, back) => {
    const { working } = estimateCase(
      placed({ place: 'middle' }, { cloth: { repeat: { vertical: 27, horizontal } }, panels: { overlap } }),
    );
    expect(working.find(({ id }) => id === 'leading-edges')?.value).toBe(back);
  });

  it('panels that never close have no leading edges to match', () => {
    const still = placed({ place: 'middle' }, { panels: { arrangement: 'pair-stationary' } });
    expect(estimateCase(still).working.some(({ id }) => id === 'leading-edges')).toBe(false);
  });

  it('every width of a set begins alike; half-drop widths half a repeat further by turns', () => {
    const straight = placed({ place: 'level', level: 42 });
    const drop = placed(
      { place: 'level', level: 42 },
      { cloth: { repeat: { ...repeat, match: 'half-drop' } }, panels: { fullness: 3 } },
    );
    const phases = (given: PanelsCase): (number | string | null)[] => {
      const { panels, face } = readPanels(given);
      return [...new Set(cutsOfPanels(panels, estimateCase(given), face, []).map(({ phase }) => phase))];
    };
    expect(phases(straight)).toEqual([inch(13.5)]);
    expect(phases(drop).sort()).toEqual([0, inch(13.5)]);
  });

  it('windows of one room, high or low, hung over frame, fixing or ceiling, have their motifs at one height', () => {
    fc.assert(
      fc.property(
        fc.record({
          sill: fc.integer({ min: 0, max: 40 }),
          above: fc.integer({ min: 0, max: 12 }),
          length: fc.integer({ min: 30, max: 110 }),
          size: fc.integer({ min: 3, max: 40 }),
          motif: fc.integer({ min: 0, max: 40 }),
          level: fc.integer({ min: 10, max: 80 }),
          lined: fc.boolean(),
        }),
        ({ sill, above, length, size, motif, level, lined }) => {
          const given: PanelsCase = {
            sill,
            cloth: { repeat: { vertical: size } },
            behind: lined ? ['std-white'] : [],
            panels: {
              mount: { where: 'wall', above },
              finishedLength: length,
              pattern: { place: 'level', level, motif },
            },
          };
          const { panels, face, behind } = readPanels(given);
          const found = placePattern(panels, face, behind.length > 0);
          const turn = inch(8);
          const top = inch(sill + 54 + above);
          // From the floor up: where a motif's middle stands nearest to the level, from where the cut begins.
          const start = top + turn;
          const into = (found?.phase ?? 0) - inch(motif);
          const heights = Array.from({ length: 400 }, (__, count) => start + into - (count - 100) * inch(size));
          expect(heights.some((height) => height === inch(level))).toBe(true);
          expect((found?.phase ?? -1) >= 0 && (found?.phase ?? Infinity) < inch(size)).toBe(true);
        },
      ),
    );
  });

  it('one that gives no level takes that of the room; another level in the same room is told', () => {
    const job = jobOf(placed({ place: 'level', level: 42 }));
    const [room] = job.rooms;
    const [opening] = room?.openings ?? [];
    if (!room || !opening) throw new Error('no window');
    const second = (pattern: object) => {
      const treatments = opening.treatments.map((each) => ({ ...each, pattern }));
      return readJob({
        ...job,
        rooms: [{ ...room, openings: [opening, { ...opening, name: 'Low', sill: 20, treatments }] }],
      });
    };
    const follows = second({ place: 'level' });
    if (!follows.ok) throw new Error(follows.faults[0]?.wrong);
    const low = follows.job.rooms[0]?.openings[1]?.treatments[0];
    expect(low?.kind === 'panels' ? low.pattern : null).toMatchObject({ level: inch(42), top: inch(78) });
    const other = second({ place: 'level', level: 40 });
    expect(other.ok && other.warnings.map(({ says }) => says).join(' ')).toMatch(/40 in is not the 42 in of the room/);
  });

  it.each([
    ['a level nobody gives', placed({ place: 'level' }), /pattern\.level.*is missing/],
    [
      'a heading of unknown height',
      { cloth: { repeat }, panels: { pattern: { place: 'level', level: 42 } } },
      /pattern\.place/,
    ],
    ['a level for another place', placed({ place: 'hem', level: 42 }), /pattern\.level.*at the hem/],
  ] as const)('%s is refused by field', (_, given, told) => {
    const read = readJob(jobOf(given));
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults.map(({ path, wrong }) => `${path} ${wrong}`).join('\n')).toMatch(told);
  });

  it('a level above the ceiling is refused by field', () => {
    const job = jobOf(placed({ place: 'level', level: 900 }));
    const read = readJob({ ...job, rooms: job.rooms.map((room) => ({ ...room, ceiling: 108 })) });
    expect(read.ok ? [] : read.faults).toEqual([
      expect.objectContaining({
        path: 'rooms[0].openings[0].treatments[0].pattern.level',
        wrong: '900 in is above the ceiling at 108 in',
      }),
    ]);
  });

  it('a level given wrongly is told once, and not at who follows it', () => {
    const job = jobOf(placed({ place: 'level', level: 'abc' }));
    const [room] = job.rooms;
    const [opening] = room?.openings ?? [];
    if (room === undefined || opening === undefined) throw new Error('no opening');
    const treatments = jobOf(placed({ place: 'level' })).rooms[0]?.openings[0]?.treatments ?? [];
    const read = readJob({
      ...job,
      rooms: [{ ...room, openings: [opening, { ...opening, name: 'Other', treatments }] }],
    });
    expect(read.ok ? [] : read.faults.map(({ path }) => path)).toEqual([
      'rooms[0].openings[0].treatments[0].pattern.level',
    ]);
  });

  it.each([
    [
      'a motif beyond its repeat',
      { place: 'top', motif: 40 },
      84,
      /40 in lies beyond the repeat of 27 in: 13 in is taken/,
    ],
    // The top hangs at 88: 10 long it ends at 78, a motif stands at 70 and the next at 97.
    ['a short piece between two motifs', { place: 'level', level: 70 }, 10, /one stands 8 in below its hem/],
  ] as const)('%s is told', (_, pattern, finishedLength, says) => {
    const job = readJob(jobOf(placed(pattern, { panels: { finishedLength } })));
    if (!job.ok) throw new Error(job.faults.map(({ wrong }) => wrong).join('\n'));
    const told = priceJob(job.job).warnings.map((each) => each.says);
    expect(told.filter((each) => says.test(each))).toHaveLength(1);
    const right = readJob(jobOf(placed({ place: 'level', level: 82, motif: 13 }, { panels: { finishedLength } })));
    if (!right.ok) throw new Error('refused');
    expect(priceJob(right.job).warnings.filter((each) => says.test(each.says))).toEqual([]);
  });
});

describe('pleats to the pattern', () => {
  it('a pleat and its space are the repeat across, divided by a whole number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 60 }),
        fc.integer({ min: 30, max: 160 }),
        fc.constantFrom('pinch-pleat' as const, 'goblet' as const, 'box-pleat' as const),
        fc.boolean(),
        (across, rodWidth, heading, returns) => {
          const given: PanelsCase = {
            cloth: { repeat: { vertical: 27, horizontal: across } },
            panels: { heading, rodWidth, pleatToPattern: true, return: returns ? 3.5 : 0 },
          };
          const { panels, face } = readPanels(given);
          if (checkPanels(panels, face, [], 'in').length > 0) return;
          const made = estimateCase(given);
          const { pleats } = made;
          if (pleats === null) throw new Error('no pleats');
          const parts = inch(across) / (pleats.pleat + pleats.space);
          expect(parts).toBeCloseTo(Math.round(parts), 6);
          expect(parts).toBeGreaterThan(0.99);
          expect(pleats.pleat).toBeGreaterThan(0);
          const kept = pleats.count * pleats.pleat + (made.finished.width - 0) / panels.pieces;
          expect(kept).toBeGreaterThanOrEqual(
            (panels.practice.leastFullness[heading] / 1000) * (made.finished.width / 2) - 1,
          );
          expect(kept).toBeLessThanOrEqual(made.madeWidth / panels.pieces + 1);
        },
      ),
    );
  });

  it('27 across in the sample pair: 9 a pleat and its space, and what is over is said', () => {
    const { working } = estimateCase({
      cloth: { repeat },
      panels: { pleatToPattern: true, return: 3.5, overlap: 3.5 },
    });
    const points = working.find(({ id }) => id === 'points');
    // 2 widths a panel, 108 - 6 = 102 flat, 41.25 finished, 5.25 of it flat: 36 between. Thirds: 9 n - 36 / (n - 1) fits 96.75 with n = 11.
    expect(points).toMatchObject({ value: '11' });
    expect(points?.formula).toMatch(/^a pleat and its space 27 ÷ 3 = 9; .* trimmed at the return$/);
  });

  it.each([
    ['a heading without pleats', { heading: 'grommet' as const }, { vertical: 27, horizontal: 27 }, /grommet heading/],
    ['no repeat across', {}, { vertical: 27 }, /repeat across of .* is not known/],
    [
      'too little cloth for any division',
      { practice: { leastFullness: { 'pinch-pleat': 2.9 } } },
      { vertical: 27, horizontal: 27 },
      /no whole part of 27 in/,
    ],
  ])('%s is refused by field, with a remedy', (_, more, given, told) => {
    const { panels, face } = readPanels({ cloth: { repeat: given }, panels: { pleatToPattern: true, ...more } });
    const [fault] = checkPanels(panels, face, [], 'in');
    expect(fault?.path).toMatch(/pleatToPattern$/);
    expect(fault?.wrong).toMatch(told);
    expect(fault?.right).not.toBe('');
  });
});
