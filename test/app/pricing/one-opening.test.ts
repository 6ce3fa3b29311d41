/**
 * Treatments at one opening know of each other. Common practice: a drapery over another returns 6 to 6 1/2 in, a valance
 * the return underneath and 2 in more; what covers the head goes past the rod; the inner of two rods is no longer.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { sayFault } from '#shared/fault.ts';

type Fields = Readonly<Record<string, unknown>>;

const bare = { behind: [] };
const STACKS = { good: bare, better: bare, best: bare };
const DRAPERY: Fields = {
  ...{ name: 'Drapery', kind: 'panels', heading: 'pinch-pleat', arrangement: 'pair', face: 'plain' },
  ...{ rodWidth: 76, finishedLength: 84, return: 6, overlap: 3.5, mount: { where: 'wall', above: 4 } },
};
const SHEER: Fields = { ...DRAPERY, name: 'Sheers', face: 'sheer', rodWidth: 74, return: 3.5 };
const VALANCE: Fields = {
  ...{ name: 'Valance', kind: 'valance', style: 'tailored', width: 80, finishedLength: 15, return: 8 },
  ...{ mount: { where: 'wall', above: 8 }, face: 'plain' },
};
const SHADE: Fields = {
  ...{ name: 'Shade', kind: 'roman-shade', style: 'flat', size: { basis: 'finished', width: 64, length: 60 } },
  ...{ mount: { where: 'wall', above: 2 }, return: 3, face: 'plain' },
};

function told(treatments: readonly Fields[], more: Fields = {}): string[] {
  const read = readJob({
    linenfold: 1,
    units: 'in',
    currency: 'USD',
    client: { name: 'Invented client' },
    priceBook: 'example',
    cloth: [
      { id: 'plain', role: 'face', width: 54, price: '10/yd' },
      { id: 'sheer', role: 'face', family: 'sheer', width: 118, price: '8/yd' },
    ],
    rooms: [
      {
        name: 'Room',
        use: 'living',
        openings: [
          {
            ...{ name: 'Window', width: 60, height: 60, sill: 20 },
            treatments: treatments.map((each) => ({ stacks: STACKS, ...each })),
          },
        ],
      },
    ],
    ...more,
  });
  if (!read.ok) throw new Error(read.faults.map(sayFault).join('\n'));
  const result = priceJob(read.job, [], { plan: false });
  if (result.faults.length > 0) throw new Error(result.faults.map(sayFault).join('\n'));
  return result.warnings.map(({ path, says }) => `${path.replace(/^.*treatments/, '')}: ${says}`);
}

describe('several treatments at one opening', () => {
  it('sheers at 3½, a drapery at 6, a valance at 8: nothing to tell, in whatever order they are listed', () => {
    const all = [DRAPERY, SHEER, VALANCE];
    for (const each of [all, [...all].reverse(), [SHEER, DRAPERY, VALANCE]]) expect(told(each)).toEqual([]);
  });
  it('a drapery over sheers that returns as much as they do', () => {
    expect(told([SHEER, { ...DRAPERY, return: 3.5 }])).toEqual([
      '[1].return: Drapery hangs over Sheers, which stands 3½ in from the wall: a return of 3½ in does not clear it. Give 6 in, or hang Sheers closer to the glass.',
    ]);
  });
  it('sheers that stand further out than the drapery before them', () => {
    expect(told([DRAPERY, { ...SHEER, return: 6.5 }])).toEqual([
      '[0].return: Drapery hangs over Sheers, which stands 6½ in from the wall: a return of 6 in does not clear it. Give 8½ in, or hang Sheers closer to the glass.',
    ]);
  });
  it('a valance takes the deepest return underneath and 2 in', () => {
    expect(told([DRAPERY, SHEER, { ...VALANCE, return: 7.5 }])).toEqual([
      '[2].return: Valance hangs over Drapery, which stands 6 in from the wall: a return of 7½ in does not clear it. Give 8 in, or hang Drapery closer to the glass.',
    ]);
  });
  it('a valance no wider than the rod underneath', () => {
    expect(told([DRAPERY, { ...VALANCE, width: 76 }])).toEqual([
      '[1].width: Valance is 76 in wide, and the rod of Drapery underneath 76 in: to cover its ends it takes 78 in, and more over finials.',
    ]);
  });
  it('a valance mounted below the rod that it should cover', () => {
    const low = { ...VALANCE, mount: { where: 'wall', above: 2 } };
    expect(told([DRAPERY, low])).toEqual([
      '[1].mount.above: Drapery underneath starts 2 in higher than Valance: it would stand out over the top. Mount it higher.',
    ]);
  });
  it('an inner rod that is longer than the outer one', () => {
    expect(told([DRAPERY, { ...SHEER, rodWidth: 80 }])).toEqual([
      '[1].rodWidth: The rod of Sheers, 80 in, is longer than that of Drapery before it (76 in): its ends would stand through the returns. Take an inner rod no longer than the outer one.',
    ]);
  });
  it('panels over a shade in front of the frame: it returns 3 in, 5 clears it', () => {
    expect(told([{ ...DRAPERY, return: 3.5 }, SHADE])).toEqual([
      '[0].return: Drapery hangs over Shade, which stands 3 in from the wall: a return of 3½ in does not clear it. Give 5 in, or hang Shade closer to the glass.',
    ]);
    expect(told([{ ...DRAPERY, return: 5 }, SHADE])).toEqual([]);
    const wide = { ...SHADE, size: { basis: 'finished', width: 78, length: 60 } };
    expect(told([{ ...DRAPERY, return: 5 }, wide]).map((says) => says.slice(0, 12))).toEqual(['[0].rodWidth']);
  });
  it('nothing of what hangs inside the frame, of café tiers, of two single panels, of what was declined', () => {
    const inside = {
      ...SHADE,
      mount: { where: 'inside' },
      return: 0,
      size: { basis: 'finished', width: 59, length: 60 },
    };
    const tier = { ...DRAPERY, name: 'Tier', cafe: true, return: 3.5, finishedLength: 30 };
    const single = { ...DRAPERY, arrangement: 'single', rodWidth: 20, return: 3.5, overlap: 0 };
    const close = { ...DRAPERY, return: 3.5 };
    for (const each of [
      [close, inside],
      [close, tier],
      [single, { ...single, name: 'Right panel' }],
      [close, { ...SHEER, decision: 'declined' }],
    ])
      expect(told(each)).toEqual([]);
  });
  it('the practice decides how far', () => {
    const practice = { layers: { drapery: 5, clear: 1.5, past: 3 } };
    expect(told([SHEER, { ...DRAPERY, return: 5 }], { practice })).toEqual([]);
    expect(told([DRAPERY, VALANCE], { practice })).toHaveLength(1);
  });
  it('the return that is told is taken, and no smaller one', () => {
    const quarter = (least: number, most: number) =>
      fc.integer({ min: 4 * least, max: 4 * most }).map((value) => value / 4);
    fc.assert(
      fc.property(quarter(1, 8), quarter(1, 12), (inner, outer) => {
        const [found] = told([
          { ...SHEER, return: inner },
          { ...DRAPERY, return: outer },
        ]);
        const needed = Math.max(6, inner + 2);
        expect(found === undefined).toBe(outer >= needed);
        if (found !== undefined)
          expect(
            told([
              { ...SHEER, return: inner },
              { ...DRAPERY, return: needed },
            ]),
          ).toEqual([]);
      }),
      { seed: 53, numRuns: 40 },
    );
  });
});
