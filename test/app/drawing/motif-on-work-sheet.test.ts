/** What the workroom reads of a placed motif: its line on the cut of the face, and in words where the cuts begin. */
import { describe, expect, test } from 'vitest';
import { drawWorkRows } from '#app/drawing/draw-work-sheet.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { priceJob } from '#app/pricing/price-job.ts';
import type { Drawing, Line, Rect } from '#app/drawing/shape.ts';
import { sayFault } from '#shared/fault.ts';
import { readPlacement } from '../estimating/placement-case.ts';
import { clashes, flatten, strays, wordsOf } from './read-drawing.ts';

function drawn(treatment: Readonly<Record<string, unknown>>, cloth: object = {}): readonly Drawing[] {
  const read = readPlacement({
    treatments: [treatment],
    cloth: { content: { cotton: 100 }, weight: '7 oz/yd2', ...cloth },
  });
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const result = priceJob(read.job, [], { plan: false });
  const hung = read.job.rooms[0]?.openings[0]?.treatments[0];
  const made = result.treatments[0]?.tiers.good;
  if (!hung || !made) throw new Error('nothing was made');
  return drawWorkRows({
    ...{ treatment: hung, made, units: 'in', width: 504, detail: 'paper' },
    clothOf: (id) => resolveCloth(id, read.job.cloth),
  });
}

function isMotif(shape: ReturnType<typeof flatten>[number]): shape is Line {
  return shape.kind === 'line' && shape.style.cap === 'round' && shape.style.dash?.length === 4;
}

/** How far down the cut the line stands, as a share of it: the cut is the last card before the line. */
function shareDown(rows: readonly Drawing[]): number {
  for (const { shapes } of rows) {
    const flat = flatten(shapes);
    const place = flat.findIndex(isMotif);
    const found = flat[place];
    if (found?.kind !== 'line') continue;
    const isCut = (shape: (typeof flat)[number]): shape is Rect => shape.kind === 'rect' && shape.style.fill === 'card';
    const cut = flat.slice(0, place).filter(isCut).at(-1);
    if (cut) return (found.y1 - cut.y) / cut.height;
  }
  throw new Error('no motif is drawn');
}

const middle = { place: 'middle' };

describe('the motif on the work sheet', () => {
  test.each([
    // 3.5 on the board and 8 down a cut of 3.5 + 16 + 2.
    ['a valance', { kind: 'valance', pattern: middle }, 11.5 / 21.5],
    // 3 of padding and turn and 7 down a cut of 14 + 6.
    ['a cornice', { kind: 'cornice', pattern: middle }, 10 / 20],
    // 3 at the top and 29 down a cut of 58 + 5.
    ['a Roman shade', { kind: 'roman-shade', pattern: middle }, 32 / 63],
    // 8 of heading and 42 down a cut of 108, four repeats.
    ['panels', { kind: 'panels', pattern: middle }, 50 / 108],
    // 3 of hem and 36 down a cut of 72 + 3 + 6.
    ['a shower curtain', { kind: 'shower-curtain', pattern: middle }, 39 / 81],
    // Half an inch and 7 down a cut of 14 + 0.5 + 2.
    ['a bed skirt', { kind: 'bed-skirt', pattern: middle }, 7.5 / 16.5],
    // The board is at 84, the level 24 below it: 27 down of 63.
    ['a shade at the level of the room', { kind: 'roman-shade', pattern: { place: 'level', level: 60 } }, 27 / 63],
  ])('%s: stands where it is measured from the top of the cut', (_, treatment, share) => {
    expect(shareDown(drawn(treatment))).toBeCloseTo(share, 6);
  });

  test('says how far below the top, at which level, and where in the repeat cuts begin', () => {
    const words = drawn({ kind: 'roman-shade', pattern: { place: 'level', level: 60, centred: true } })
      .flatMap(wordsOf)
      .join(' ');
    expect(words).toMatch(/middle of the motif 24 below the finished top, 60 in above the floor/);
    expect(words).toMatch(/cuts begin 13½ in into the repeat of 27; a motif in the middle across/);
  });

  test('a valance of its own says where it begins, since more or less lies above its top than above the shade', () => {
    // Shade: 13.5 - (29 + 3), its valance the same 3 above its top: 8.5 each.
    const words = drawn({ kind: 'roman-shade', pattern: middle, valance: { depth: 10 } })
      .flatMap(wordsOf)
      .join(' ');
    expect(words.match(/cuts begin 8½ in into the repeat of 27/g)).toHaveLength(2);
  });

  test('a half-drop says that every second width begins half a repeat further', () => {
    const cloth = { repeat: { vertical: 27, horizontal: 13.5, match: 'half-drop' } };
    expect(drawn({ kind: 'panels', pattern: middle }, cloth).flatMap(wordsOf).join(' ')).toMatch(
      /every second width half a repeat further/,
    );
  });

  test('swags show it on the flat swag; a pattern that falls as it falls shows none', () => {
    expect(
      drawn({ kind: 'swags', pattern: { ...middle, centred: true } })
        .flatMap(({ shapes }) => flatten(shapes))
        .filter(isMotif),
    ).toHaveLength(1);
    expect(
      drawn({ kind: 'panels' })
        .flatMap(({ shapes }) => flatten(shapes))
        .filter(isMotif),
    ).toEqual([]);
  });

  test.each(['panels', 'valance', 'cornice', 'swags', 'roman-shade', 'bed-skirt', 'shower-curtain'])(
    '%s: no word stands on another or off the sheet',
    (kind) => {
      for (const row of drawn({ kind, pattern: middle })) expect([...clashes(row), ...strays(row)]).toEqual([]);
    },
  );
});
