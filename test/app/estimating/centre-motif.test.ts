/**
 * A motif in the middle of the width. Rules: a flat treatment shows its pattern whole, a motif in the middle and the seams
 * equally far from it; a width cut about a motif may have to begin up to half a repeat further in (common practice). The
 * figures are reckoned by hand beside each: cloth 54 usable, 13.5 across unless told, joins lose 1/2 of each width.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centreMotif } from '#app/estimating/centre-motif.ts';
import type { CentredCloth } from '#app/estimating/centre-motif.ts';
import { pieceCentred } from '#app/estimating/roman-shade/piece-width.ts';
import { seamCentred, seamWidths } from '#app/estimating/top-treatment/seam-widths.ts';
import { lengthFrom, lengthIn, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { readPlacement, placedCase } from './placement-case.ts';
import { readShade } from './roman-shade-case.ts';

const inch = (value: number): Ticks => lengthFrom(value, 'in');
const centred = { place: 'middle', centred: true };
const practice = { seam: 0.5 };

function cutsOf(treatment: Readonly<Record<string, unknown>>, horizontal = 13.5, behind: string[] = []): number {
  const { made } = placedCase({ treatment, practice, behind, cloth: { repeat: { vertical: 27, horizontal } } });
  return made().estimate.takeoff[0]?.cuts ?? 0;
}

describe('a motif in the middle takes extra cloth across', () => {
  const valance = { kind: 'valance' };
  it.each([
    // 40 and two hems of 1: 42 in one width of 54.
    ['the pattern as it falls', { ...valance, pattern: { place: 'middle' } }, 1],
    // Motifs nobody knows: 54 - 13.5 = 40.5 about one. 42 + 2 - 40.5 = 3.5 beside it, both sides from one width.
    ['motifs anywhere', { ...valance, pattern: centred }, 2],
    // A motif at 27, in the very middle: 54 about it.
    ['a motif in the middle of the cloth', { ...valance, pattern: { ...centred, motifAcross: 27 } }, 1],
    // At 6, 19.5, 33, 46.5: 33 has 21 on its right, half of 42.
    ['a motif with just enough beside it', { ...valance, pattern: { ...centred, motifAcross: 6 } }, 1],
    // At 6.75, 20.25, 33.75: 20.25 on the nearer side, less than 21.
    ['the motif as far off as can be', { ...valance, pattern: { ...centred, motifAcross: 6.75 } }, 2],
    // 36 and hems 38, the left end 6 more: 22 left and 16 right of the middle of the front. Motif at 27 - 5 = 22.
    [
      'ends that differ: the middle of the front, not of the cut',
      { ...valance, width: 30, return: { left: 6, right: 0 }, pattern: { ...centred, motifAcross: 22 } },
      1,
    ],
    // 122 + 2 - 54 = 70, 35 a side; a match begins 12.5 in, so a width gives 41.5 to each side.
    [
      'a wide one about the middle of the cloth',
      { ...valance, width: 120, pattern: { ...centred, motifAcross: 27 } },
      3,
    ],
    // 40.5 about a motif, 2 x 28 beside it, 29.5 left of it: more than the 27 that one width gives both sides.
    ['a wide one, motifs anywhere', { ...valance, width: 120, pattern: centred }, 5],
    // 40, two ends of 4, padding and turn 2 x 3: 54; 54 + 2 - 40.5 = 15.5, both from one.
    ['a cornice', { kind: 'cornice', pattern: centred }, 2],
    // 27 + 4 in 40.5.
    ['a Roman shade', { kind: 'roman-shade', pattern: centred }, 1],
    // 60 + 4 + 2 - 40.5 = 25.5, within 54 - 27 = 27: both from one.
    [
      'a wide Roman shade',
      { kind: 'roman-shade', size: { basis: 'finished', width: 60, length: 58 }, pattern: centred },
      2,
    ],
    // Flat 40 x 1.25 = 50 each: 50 + 2 - 40.5 = 11.5, both from one; 2 swags of 20 are 25 flat and fit in 40.5.
    ['one swag', { kind: 'swags', swags: 1, pattern: centred }, 2],
    ['two swags, each about its own motif', { kind: 'swags', swags: 2, pattern: centred }, 2],
  ])('%s', (_, treatment, cuts) => {
    expect(cutsOf(treatment)).toBe(cuts);
  });

  it('half the cloth across: both sides of a shade take a width each', () => {
    // 27 about a motif; 60 + 4 + 2 - 27 = 39, 19.5 a side, and 54 - 2 x 27 leaves no width for both.
    const wide = { kind: 'roman-shade', size: { basis: 'finished', width: 60, length: 58 } };
    expect(cutsOf({ ...wide, pattern: { place: 'middle' } }, 27)).toBe(2);
    expect(cutsOf({ ...wide, pattern: centred }, 27)).toBe(3);
  });

  it('narrow shades lie side by side a repeat apart, one fewer where the first has to begin further in', () => {
    // 8 + 4 = 12, 13.5 apart: 1 + (54 - 12) / 13.5 = 4, about a motif 1 + (54 - 12 - 13.5) / 13.5 = 3.
    const narrow = { kind: 'roman-shade', quantity: 4, size: { basis: 'finished', width: 8, length: 58 } };
    expect(cutsOf({ ...narrow, pattern: { place: 'middle' } })).toBe(1);
    expect(cutsOf({ ...narrow, pattern: centred })).toBe(2);
    const { made } = placedCase({ treatment: { ...narrow, pattern: centred }, practice });
    // The joint plan puts three side by side, no more.
    expect(made().cuts[0]?.width).toBe(inch(18));
  });

  it('the working and the result say how much of a width lies about a motif', () => {
    const { made } = placedCase({ treatment: { ...valance, pattern: centred }, practice });
    const { working, takeoff } = made().estimate;
    expect(working.find(({ id }) => id === 'motif-across')).toMatchObject({ formula: '54 − 13½', value: '40½' });
    expect(working.find(({ id }) => id === 'motif-across')?.rests).toMatch(/not given.*half a repeat is given up/);
    expect(working.find(({ id }) => id === 'widths')?.formula).toBe(
      '42: 40½ about a motif in the middle, 2 sides of 1¾, both out of one width, 2 seams of 2 × ½ counted in',
    );
    expect(takeoff[0]?.pattern?.about).toBe(inch(40.5));
  });

  it('an odd number of box pleats is told: the motif stands in the middle one', () => {
    const advised = (pleats: number): readonly string[] =>
      placedCase({ treatment: { ...valance, style: 'box-pleated', pleats, pattern: centred } })
        .made()
        .advice.map(({ rule }) => rule);
    expect(advised(5)).toContain('motif-in-pleat');
    expect(advised(4)).not.toContain('motif-in-pleat');
    expect(advised(4)).not.toContain('motif-centred');
  });

  it.each<[string, Readonly<Record<string, unknown>>, Readonly<Record<string, unknown>>, RegExp]>([
    ['panels', { kind: 'panels' }, {}, /pattern\.centred.*asked of panels/],
    ['a gathered valance', { ...valance, style: 'gathered' }, {}, /pattern\.centred.*a gathered valance/],
    ['a bed skirt', { kind: 'bed-skirt' }, {}, /pattern\.centred.*a bed skirt/],
    ['no repeat across', valance, { repeat: { vertical: 27 } }, /repeat across of face is not known/],
    [
      'a repeat as wide as the cloth, motifs anywhere',
      { kind: 'roman-shade' },
      { repeat: { vertical: 27, horizontal: 54 } },
      /pattern\.centred.*leaves too little/,
    ],
    [
      'a motif at the very edge',
      { kind: 'roman-shade', pattern: { ...centred, motifAcross: 0 } },
      { repeat: { vertical: 27, horizontal: 54 } },
      /no widths of face read on/,
    ],
    [
      'a motif off the cloth',
      { kind: 'cornice', pattern: { ...centred, motifAcross: 60 } },
      {},
      /pattern\.motifAcross 60 in lies beyond the usable width/,
    ],
  ])('%s is refused by field, with a remedy', (_, treatment, cloth, told) => {
    const { faults } = placedCase({ treatment: { pattern: centred, ...treatment }, cloth: { name: 'face', ...cloth } });
    expect(faults.map(({ path, wrong }) => `${path} ${wrong}`).join('\n')).toMatch(told);
    expect(faults.every(({ right }) => right !== '')).toBe(true);
  });

  it('where motifs lie is refused unless one is centred', () => {
    const read = readPlacement({ treatments: [{ ...valance, pattern: { place: 'middle', motifAcross: 6 } }] });
    expect(!read.ok && read.faults.map(({ path }) => path).join()).toMatch(/pattern\.motifAcross$/);
  });
});

/** Ways of cutting, tried one by one: the pattern is a ruler with a motif at `motif` and every `across` beyond it. */
interface Tried {
  readonly usable: number;
  readonly across: number;
  readonly motif: number;
  readonly seam: number;
}

function mod(value: number, by: number): number {
  return ((value % by) + by) % by;
}

/** A piece of this width that begins where the pattern says fits into one width of the cloth. */
function fits({ usable, across }: Tried, begins: number, width: number): boolean {
  return mod(begins, across) + width <= usable;
}

/** Both in one width, the right-hand piece of the treatment left of the other one. */
function fitsBoth(tried: Tried, rightBegins: number, leftBegins: number, width: number): boolean {
  const { usable, across } = tried;
  const first = mod(rightBegins, across);
  for (let second = mod(leftBegins, across); second + width <= usable; second += across)
    if (second >= first + width) return true;
  return false;
}

/** Middle, then outwards on both sides, alike: every piece has to be found somewhere across the cloth. */
function isCut(tried: Tried, middle: number, others: readonly number[], side: number, shared: boolean): boolean {
  const { usable, across, motif, seam } = tried;
  const about = mod(motif - middle / 2, across) + middle <= usable;
  let right = motif + middle / 2 - 2 * seam;
  let left = motif - middle / 2 + 2 * seam;
  for (const width of others) {
    if (!fits(tried, right, width) || !fits(tried, left - width, width)) return false;
    right += width - 2 * seam;
    left -= width - 2 * seam;
  }
  if (side === 0) return about;
  return (
    about &&
    (shared ? fitsBoth(tried, right, left - side, side) : fits(tried, right, side) && fits(tried, left - side, side))
  );
}

describe('whatever the cloth', () => {
  // Even, so that no half of a piece falls between ticks.
  const even = (min: number, max: number) => fc.integer({ min, max }).map((value) => 4 * value);
  const cases = fc.record({
    usable: even(150, 400),
    across: even(10, 500),
    motif: even(0, 400),
    seam: fc.constantFrom(0, 4, 8),
    total: even(20, 2500),
    known: fc.boolean(),
  });
  type Case = typeof cases extends fc.Arbitrary<infer Value> ? Value : never;

  function clothOf({ usable, across, motif, seam, known }: Case): CentredCloth {
    const repeat = { vertical: ticks(40), horizontal: ticks(across), match: 'straight' as const, cutOnRepeat: false };
    const pattern = {
      ...{ place: 'middle' as const, motif: null, level: null, top: null, centred: true },
      motifAcross: known ? ticks(motif % usable) : null,
    };
    const found = centreMotif(pattern, { usableWidth: ticks(usable), repeat }, ticks(seam));
    if (found === null) throw new Error('it repeats across');
    return found;
  }
  /** The places that the motif may have: the one that was given, or any. */
  function placesOf(each: Case): readonly number[] {
    if (each.known) return [each.motif % each.usable];
    return Array.from({ length: 25 }, (_, place) => Math.floor((place * each.across) / 25));
  }

  it('a board: every piece that is counted on can be cut, wherever the motif may be', () => {
    let pieced = 0;
    fc.assert(
      fc.property(cases, (each) => {
        const cloth = clothOf(each);
        const { usable, across, seam, total } = each;
        const made = seamCentred({ total: ticks(total), leftMore: 0 }, cloth, ticks(seam));
        if (made === null) return;
        expect(made.widths).toBeGreaterThanOrEqual(seamWidths(ticks(total), ticks(usable), ticks(seam)).widths);
        const others = Array.from({ length: Math.max(0, (made.whole - 1) / 2) }, () => cloth.between);
        const shared = made.widths === made.whole + 1;
        if (made.whole > 0) pieced += 1;
        for (const motif of placesOf(each))
          expect(
            isCut(
              { usable, across, motif, seam },
              made.whole === 0 ? total : cloth.centre,
              others,
              made.whole === 0 ? 0 : made.side,
              shared,
            ),
          ).toBe(true);
      }),
      { seed: 42, numRuns: 1500 },
    );
    expect(pieced).toBeGreaterThan(200);
  });

  it('a Roman shade: the same, its widths in the centre cut alike', () => {
    const { shade } = readShade({});
    const rules = {
      ...shade.practice.romanShade,
      oneWidthMargin: ticks(0),
      leastMargin: ticks(0),
      leastSide: ticks(24),
    };
    let pieced = 0;
    fc.assert(
      fc.property(cases, (each) => {
        const { usable, across, seam, total } = each;
        const cloth = { ...readShade({}).face, width: ticks(usable), usableWidth: ticks(usable) };
        const made = pieceCentred(cloth, ticks(total), ticks(0), { ...rules, seam: ticks(seam) }, clothOf(each));
        if (made === null) return;
        const others = Array.from({ length: (made.centres - 1) / 2 }, () => made.centre);
        if (made.side > 0) pieced += 1;
        for (const motif of placesOf(each)) {
          const tried = { usable, across, motif, seam };
          expect(isCut(tried, made.centre, others, made.side, false)).toBe(true);
          if (made.centred && 2 * made.side <= made.centred.pair)
            expect(isCut(tried, made.centre, others, made.side, true)).toBe(true);
        }
      }),
      { seed: 43, numRuns: 1500 },
    );
    expect(pieced).toBeGreaterThan(200);
  });

  it('knowing where the motifs lie never takes more widths than not knowing', () => {
    fc.assert(
      fc.property(cases, (each) => {
        const widths = (known: boolean): number =>
          seamCentred({ total: ticks(each.total), leftMore: 0 }, clothOf({ ...each, known }), ticks(each.seam))
            ?.widths ?? Infinity;
        expect(widths(true)).toBeLessThanOrEqual(widths(false));
      }),
      { seed: 44, numRuns: 500 },
    );
  });

  it('54 in of cloth, 27 across: 27 is sure about a motif, all 54 where one stands in its middle', () => {
    const about = (motifAcross: number | null): number => {
      const pattern = { ...{ place: 'middle' as const, motif: null, level: null, top: null, centred: true } };
      const repeat = { vertical: inch(27), horizontal: inch(27), match: 'straight' as const, cutOnRepeat: false };
      const known = motifAcross === null ? null : inch(motifAcross);
      return lengthIn(
        centreMotif({ ...pattern, motifAcross: known }, { usableWidth: inch(54), repeat }, ticks(0))?.centre ?? 0,
        'in',
      );
    };
    expect([about(null), about(27), about(0), about(13.5), about(20)]).toEqual([27, 54, 54, 27, 40]);
  });
});
