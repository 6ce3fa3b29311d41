/**
 * A placed motif on every kind. Rules: one level a room, every treatment's motif at the same height from floor or ceiling; a
 * whole motif at the top or at the hem; a swag shows what lies in its middle, and turns its pattern on the bias (common
 * practice). The figures are reckoned by hand beside each: the repeat is 27, the middle of the motif 13.5 into it.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hungCloth } from '#app/estimating/panels/hung-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { sayFault } from '#shared/fault.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import { wireResult } from '#shared/job-file/wire-result.ts';
import { placedCase, placedCases, readPlacement } from './placement-case.ts';
import type { Placed, PlacementCase } from './placement-case.ts';

const inch = (value: number): number => lengthFrom(value, 'in');
const middle = { place: 'middle' };

/** Where the cuts of the face begin in the repeat, in inches: as the joint plan takes them. */
function beginnings({ made }: Placed): readonly (number | string | null)[] {
  const phases = made()
    .cuts.filter(({ layer, phase }) => layer === 0 && phase !== 'any')
    .map(({ phase }) => phase);
  return [...new Set(phases)].map((phase) => (typeof phase === 'number' ? lengthIn(phase, 'in') : phase));
}

describe('cuts begin in the repeat where the motif of the kind asks', () => {
  it.each<[string, PlacementCase['treatments'][number], number, (readonly string[])?]>([
    // 3.5 on top of the board, 16 long. 13.5 - (8 + 3.5) = 2.
    ['a tailored valance, middle', { kind: 'valance', pattern: middle }, 2],
    // 13.5 - (13.5 + 3.5) = -3.5, 23.5 in the repeat.
    ['a tailored valance, top', { kind: 'valance', pattern: { place: 'top' } }, 23.5],
    // 16 - 13.5 = 2.5 below the top: 13.5 - (2.5 + 3.5) = 7.5.
    ['a tailored valance, hem', { kind: 'valance', pattern: { place: 'hem' } }, 7.5],
    ['a box-pleated one', { kind: 'valance', style: 'box-pleated', pleats: 4, pattern: middle }, 2],
    ['a gathered one on its board', { kind: 'valance', style: 'gathered', pattern: middle }, 2],
    ['a scalloped one', { kind: 'valance', style: 'scalloped', scallopDepth: 3, pattern: middle }, 2],
    ['a balloon', { kind: 'valance', style: 'balloon', pattern: middle }, 2],
    // Padding 1 and 2 to the back; 14 high. 13.5 - (7 + 3) = 3.5.
    ['a cornice', { kind: 'cornice', pattern: middle }, 3.5],
    // 58 long, unlined: 3 of what is added lies above. 13.5 - (29 + 3) = -18.5, 8.5 in the repeat.
    ['a flat Roman shade', { kind: 'roman-shade', pattern: middle }, 8.5],
    // Lined: hem 4, top 6. 13.5 - (29 + 6) = -21.5, 5.5 in the repeat.
    ['a lined one', { kind: 'roman-shade', pattern: middle }, 5.5, ['std-white']],
    // Twice the cloth: 58 along it. 13.5 - (58 + 3) = -47.5, 6.5 in the repeat.
    ['one of soft folds', { kind: 'roman-shade', style: 'soft-fold', pattern: middle }, 6.5],
    ['a relaxed one', { kind: 'roman-shade', style: 'relaxed', pattern: middle }, 8.5],
    // Half an inch of seam, 14 deep. 13.5 - (7 + 0.5) = 6.
    ['a bed skirt', { kind: 'bed-skirt', pattern: middle }, 6],
    // 3 of top hem, 72 long. 13.5 - (36 + 3) = -25.5, 1.5 in the repeat.
    ['a shower curtain', { kind: 'shower-curtain', pattern: middle }, 1.5],
    // Depth 18 x 1.8 = 32.4 flat, 2 on the board. 13.5 - (16.2 + 2) = -4.7, 22.3 in the repeat.
    ['a swag on the straight grain', { kind: 'swags', pattern: middle }, 22.3],
  ])('%s', (_, treatment, expected, behind = []) => {
    const found = beginnings(placedCase({ treatment, behind }));
    expect(found).toHaveLength(1);
    expect(found[0]).toBeCloseTo(expected, 2);
  });

  it('half-drop widths half a repeat further, on every kind of several widths', () => {
    const cloth = { repeat: { vertical: 27, match: 'half-drop' } };
    for (const [treatment, level] of [
      [{ kind: 'valance', style: 'gathered', width: 72, pattern: middle }, 2],
      [{ kind: 'roman-shade', size: { basis: 'finished', width: 70, length: 58 }, pattern: middle }, 8.5],
      [{ kind: 'bed-skirt', pattern: middle }, 6],
      [{ kind: 'shower-curtain', pattern: middle }, 1.5],
    ] as const)
      expect([...beginnings(placedCase({ treatment, cloth }))].sort(byNumber)).toEqual(
        [level, level + 13.5].sort(byNumber),
      );
  });

  it('a shade with a valance of its own: both tops are at the board, so the motif stands as far below both', () => {
    // Shade in the middle of 58: 8.5 as above. Its valance has 3 above its own top: 13.5 - (29 + 3), the same 8.5.
    const own = { kind: 'roman-shade', valance: { depth: 10 }, pattern: middle };
    expect(beginnings(placedCase({ treatment: own }))).toEqual([8.5]);
    // Lined, 6 lie above the shade and 3 above the valance: 5.5 and 8.5.
    const lined = placedCase({ treatment: own, behind: ['std-white'] });
    expect(beginnings(lined)).toEqual([5.5, 8.5]);
    expect(lined.made().estimate.working.find(({ id }) => id === 'valance-pattern-start')?.value).toBe('8½');
    // Shade 58 + 10 = 68, its end 5.5 + 68 = 73.5 in; next 8.5 at 89.5 - 5.5 = 84; valance 16 on: 100. The other way
    // round: 16, next 5.5 at 24, 68 on: 92.
    const [line] = lined.made().estimate.takeoff;
    expect(line && lengthIn(line.plan, 'in')).toBe(92);
  });
});

function byNumber(a: number | string | null, b: number | string | null): number {
  return Number(a) - Number(b);
}

describe('a placed motif on other kinds than panels', () => {
  it('takes no longer cuts and no more of them than the pattern as it falls', () => {
    for (const kind of ['valance', 'cornice', 'roman-shade', 'bed-skirt', 'shower-curtain', 'swags'])
      for (const place of kind === 'swags' ? ['middle'] : ['top', 'hem', 'middle']) {
        const [free] = placedCase({ treatment: { kind } }).made().estimate.takeoff;
        const [line] = placedCase({ treatment: { kind, pattern: { place } } }).made().estimate.takeoff;
        expect([line?.cuts, line?.cutLength, line?.order]).toEqual([free?.cuts, free?.cutLength, free?.order]);
      }
  });

  it('its working says it after the plain cut, and the result has it on the line of the face', () => {
    const read = readPlacement({
      treatments: [{ kind: 'roman-shade', pattern: { place: 'level', level: 60 } }],
      cloth: { content: { cotton: 100 }, weight: '7 oz/yd2' },
    });
    if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
    const priced = priceJob(read.job);
    expect(priced.planFaults).toEqual([]);
    const result = writeResult(read.job, priced);
    expect(wireResult.safeParse(result).error).toBeUndefined();
    const tier = result.treatments[0]?.tiers.good;
    // The board at 30 + 54 = 84: 24 below it. 13.5 - (24 + 3) = -13.5, 13.5 in the repeat.
    expect(tier?.takeoff[0]?.pattern).toEqual({ place: 'level', level: 60, motifBelow: 24, cutsBegin: 13.5 });
    const ids = tier?.working.map(({ id }) => id) ?? [];
    expect(ids.slice(ids.indexOf('plain-cut'), ids.indexOf('plain-cut') + 3)).toEqual([
      'plain-cut',
      'motif-below',
      'pattern-start',
    ]);
  });

  it('soft folds: the way along the cloth is told beside the way it hangs', () => {
    const { made } = placedCase({
      treatment: { kind: 'roman-shade', style: 'soft-fold', pattern: { place: 'level', level: 60 } },
    });
    const { working, takeoff } = made().estimate;
    expect(working.find(({ id }) => id === 'motif-below')).toMatchObject({
      formula: '84 − 60 = 24, along the folds × 2 = 48',
      value: '24',
    });
    expect(takeoff[0]?.pattern?.below).toBe(inch(24));
  });

  it('cloth that runs sideways is told: no motif is placed on it', () => {
    const { made } = placedCase({
      treatment: { kind: 'bed-skirt', strips: 'sideways', pattern: middle },
      cloth: { railroad: true },
    });
    expect(made().estimate.takeoff[0]).toMatchObject({ railroaded: true });
    expect(made().estimate.takeoff[0]?.pattern).toBeUndefined();
    expect(
      made()
        .warnings.map(({ says }) => says)
        .join(' '),
    ).toMatch(/used sideways.*no motif is placed/);
  });

  it.each([
    ['panels', {}],
    ['valance', {}],
    ['cornice', {}],
    ['roman-shade', {}],
    ['bed-skirt', {}],
    ['shower-curtain', {}],
    ['swags', {}],
  ])('%s of cloth without a repeat: refused by field, with a remedy', (kind, more) => {
    const { faults } = placedCase({ treatment: { kind, pattern: middle, ...more }, cloth: { repeat: undefined } });
    expect(faults).toEqual([
      expect.objectContaining({
        path: expect.stringMatching(/pattern\.place$/),
        wrong: expect.stringMatching(/has no repeat/),
      }),
    ]);
  });

  it.each([
    ['at the top of swags', { place: 'top' }, {}, /folds take the pattern up/],
    ['on swags on the bias', middle, { onBias: true }, /bias, where the pattern turns by 45 degrees/],
  ])('%s: refused by field, with a remedy', (_, pattern, more, told) => {
    const { faults } = placedCase({ treatment: { kind: 'swags', pattern, ...more } });
    expect(faults.map(({ wrong }) => wrong).join('\n')).toMatch(told);
    expect(faults.every(({ right }) => right !== '')).toBe(true);
  });
});

describe('one level a room', () => {
  /** Where motifs stand above the floor, nearest to `level`, from where the cuts begin. */
  function nearest({ treatment, face, made }: Placed, level: number, lined: boolean): number {
    const [line] = made().estimate.takeoff;
    const { turn } = hungCloth(treatment, lined);
    const size = face.repeat?.vertical ?? 1;
    const from = (treatment.pattern?.top ?? 0) + turn + (line?.pattern?.starts ?? 0) - inch(13.5);
    return from - Math.round((from - level) / size) * size;
  }

  it('a shade, panels, a valance, a cornice and a shower curtain, each as high as it hangs, have it at one height', () => {
    fc.assert(
      fc.property(
        fc.record({
          level: fc.integer({ min: 20, max: 80 }),
          sills: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 5, maxLength: 5 }),
          above: fc.integer({ min: 0, max: 12 }),
          length: fc.integer({ min: 30, max: 90 }),
          lined: fc.boolean(),
        }),
        ({ level, sills, above, length, lined }) => {
          const mount = { where: 'wall', above };
          const follows = { place: 'level' };
          const cases = placedCases({
            treatments: [
              { kind: 'roman-shade', mount, pattern: { place: 'level', level } },
              { kind: 'panels', mount, finishedLength: length, pattern: follows },
              { kind: 'valance', mount, pattern: follows },
              { kind: 'cornice', mount, pattern: follows },
              { kind: 'shower-curtain', pattern: { place: 'level', topAt: sills[4] ?? 0 } },
            ],
            openings: sills.map((sill) => ({ sill })),
            behind: lined ? ['std-white'] : [],
          });
          for (const each of cases) expect(nearest(each, inch(level), lined)).toBe(inch(level));
        },
      ),
      { seed: 41, numRuns: 40 },
    );
  });

  it('from the ceiling: 36 below a ceiling of 108 is 72 above the floor', () => {
    const [shade, panels] = placedCases({
      treatments: [
        { kind: 'roman-shade', mount: { where: 'ceiling' }, pattern: { place: 'level', belowCeiling: 36 } },
        { kind: 'panels', mount: { where: 'ceiling' }, finishedLength: 107, pattern: { place: 'level' } },
      ],
      ceiling: 108,
    });
    expect(shade?.treatment.pattern).toMatchObject({ level: inch(72), top: inch(108) });
    expect(panels?.treatment.pattern).toMatchObject({ level: inch(72), top: inch(108) });
  });

  it('inside a frame the top is the head of the opening', () => {
    const { treatment } = placedCase({
      treatment: {
        ...{ kind: 'roman-shade', mount: { where: 'inside' } },
        size: { basis: 'opening', widths: [30], lengths: [54] },
        pattern: { place: 'level', level: 60 },
      },
    });
    expect(treatment.pattern?.top).toBe(inch(84));
  });

  it.each<[string, PlacementCase['treatments'], Partial<PlacementCase>, RegExp]>([
    [
      'nobody gives one',
      [{ kind: 'cornice', pattern: { place: 'level' } }],
      {},
      /pattern\.level: is missing, and no other treatment/,
    ],
    [
      'how high a bed is, is not known',
      [{ kind: 'bed-skirt', pattern: { place: 'level', level: 12 } }],
      {},
      /pattern\.place: follows the level of the room, but how high its top hangs is not known; .*topAt/,
    ],
    [
      'the sill is not known',
      [{ kind: 'valance', pattern: { place: 'level', level: 60 } }],
      { openings: [{ sill: undefined }] },
      /pattern\.place: follows the level/,
    ],
    [
      'the ceiling is not known',
      [{ kind: 'valance', pattern: { place: 'level', belowCeiling: 36 } }],
      {},
      /pattern\.belowCeiling: is given, but the height of the room is not known/,
    ],
    [
      'both ways are given',
      [{ kind: 'valance', pattern: { place: 'level', level: 72, belowCeiling: 36 } }],
      { ceiling: 108 },
      /pattern\.belowCeiling: is given beside level/,
    ],
    [
      'it is under the floor',
      [{ kind: 'valance', pattern: { place: 'level', belowCeiling: 120 } }],
      { ceiling: 108 },
      /is under the floor/,
    ],
    [
      'the motif stands elsewhere',
      [{ kind: 'valance', pattern: { place: 'hem', level: 60 } }],
      {},
      /pattern\.level: is given for a pattern at the hem/,
    ],
  ])('%s: refused by field', (_, treatments, more, told) => {
    const read = readPlacement({ ...more, treatments });
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults.map(sayFault).join('\n')).toMatch(told);
  });

  it('another level in the same room is told, whatever the kinds', () => {
    const read = readPlacement({
      treatments: [
        { kind: 'valance', pattern: { place: 'level', level: 72 } },
        { kind: 'roman-shade', pattern: { place: 'level', level: 70 } },
      ],
    });
    expect(read.ok && read.warnings.map(({ says }) => says).join(' ')).toMatch(/70 in is not the 72 in of the room/);
  });
});
