/**
 * A swag at 45 degrees against the width of its cloth. Lengths: about 2 yd for a 44 in swag (SW-02). Spans: the
 * trapezoid turned by 45 degrees, worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { pieceOnBias } from '#app/estimating/swags/piece-on-bias.ts';
import { lengthFrom, lengthIn } from '#shared/length.ts';
import { lineOf, stepOf, swagsCase } from './top-case.ts';

const inches = (value: number) => lengthFrom(value, 'in');
const flat = (width: number, top: number, depth: number) => ({
  width: inches(width),
  top: inches(top),
  depth: inches(depth),
  folds: 6,
});
const pieced = (of: ReturnType<typeof flat>, usable: number) => {
  const { span, corner, length } = pieceOnBias(of, { usableWidth: inches(usable) });
  return { span: lengthIn(span, 'in'), corner: lengthIn(corner, 'in'), length: lengthIn(length, 'in') };
};

describe('across the cloth', () => {
  const usual = flat(61.6, 22, 40);
  it('a 44 in swag, 61.6 over 22 and 40 deep, spans (30.8 + 51) / √2 = 57.8, not the 71.8 of its square', () => {
    expect(pieced(usual, 58).corner).toBe(0);
    expect(pieced(usual, 58).span).toBeCloseTo(81.8 / Math.SQRT2, 2);
    expect(pieced(usual, 58).length).toBeCloseTo(101.6 / Math.SQRT2, 2);
  });
  it('in 54 in cloth its corner is 3.84 × 80 / 59.8 = 5.1 long, from the 14 in that its length leaves', () => {
    expect(pieced(usual, 54).corner).toBeCloseTo(((81.8 / Math.SQRT2 - 54) * 80) / 59.8, 2);
    expect(pieced(usual, 54).length).toBeCloseTo(101.6 / Math.SQRT2, 2);
  });
  it('in 45 in cloth it is 12.84 × 80 / 59.8 = 17.2 long: 57.8 + 17.2, more than 71.8', () => {
    const corner = ((81.8 / Math.SQRT2 - 45) * 80) / 59.8;
    expect(pieced(usual, 45).length).toBeCloseTo(81.8 / Math.SQRT2 + corner, 2);
  });
  it('without a slope it is a square on its corner: of 56.6 across, the 2.6 beyond 54 are 5.1 along', () => {
    const square = 80 / Math.SQRT2;
    expect(pieced(flat(40, 40, 40), 54).length).toBeCloseTo(square + 2 * (square - 54), 2);
  });
  it('strips of any cloth hold at least what the swag is large', () => {
    for (const usable of [12, 20, 30, 44, 54]) {
      const area = ((80 + 28) / 2) * 40;
      expect(pieced(flat(80, 28, 40), usable).length * usable).toBeGreaterThanOrEqual(area);
    }
  });
  it('a quarter wider or deeper never takes less', () => {
    for (let more = 1; more < 200; more += 1)
      for (const usable of [36, 45, 54]) {
        const before = (more - 1) / 4;
        const wider = (by: number) => pieced(flat(40 + 1.4 * by, 14 + by / 2, 30), usable).length;
        const deeper = (by: number) => pieced(flat(61.6, 22, 20 + by), usable).length;
        expect(wider(more / 4)).toBeGreaterThanOrEqual(wider(before) - 1e-3);
        expect(deeper(more / 4)).toBeGreaterThanOrEqual(deeper(before) - 1e-3);
      }
  });
});

describe('a swag wider on the bias than its cloth', () => {
  const given = { fields: { width: 114, swags: 3 }, behind: ['std-white'], making: { boardCover: 'none' } };
  it('a lining of 54 in was counted as one length with no word of a join', () => {
    const made = swagsCase(given);
    // 57 in wide: 79.8 over 28.5, 40 deep: straight itself, its lining (39.9 + 54.25) / √2 = 66.6 in wide on the bias.
    expect(stepOf(made, 'swag-span')).toMatchObject({ formula: '(54¼ + ≈39⅞) ÷ √2', value: '≈66 9/16' });
    expect(made.advice.filter(({ rule }) => rule === 'swag-pieced').map(({ level, says }) => [level, says])).toEqual([
      [
        'note',
        'On the bias a swag spans ≈66 9/16 in, more than Standard lining, white (54 in wide): its lower corners are pieced, the seams in the folds at its ends.',
      ],
    ]);
    expect(made.in(lineOf(made, 'std-white').plan)).toBeCloseTo((3 * 119.8) / Math.SQRT2, 2);
  });
  it('a lining of 118 in takes it in one, and nothing is told', () => {
    const wide = { id: 'wide', role: 'lining' as const, family: 'standard' as const, width: 118 };
    const made = swagsCase({ ...given, others: [wide], behind: ['wide'] });
    expect(made.advice.map(({ rule }) => rule)).not.toContain('swag-pieced');
  });
  it('a narrow lining takes more for each swag, and the working says so', () => {
    const narrow = { id: 'narrow', role: 'lining' as const, family: 'standard' as const, width: 40 };
    const made = swagsCase({ ...given, others: [narrow], behind: ['narrow'] });
    // 66.57 - 40 across, × 80 / 65.65 along: 32.4, and 66.6.
    expect(stepOf(made, 'layer-1-cut').formula).toBe('≈66 9/16 + ≈32⅜');
    expect(made.in(lineOf(made, 'narrow').plan)).toBeCloseTo(3 * (66.573 + 32.381), 1);
  });
});
