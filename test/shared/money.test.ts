/** Money against dinero.js (v2, alpha), an independent library for the same arithmetic, and by its own laws. */
import fc from 'fast-check';
import { allocate, dinero, multiply, toSnapshot, transformScale, halfUp, USD } from 'dinero.js';
import { describe, expect, it } from 'vitest';
import { decimalOf, divideRounded, parseDecimal, sayDecimalPlain } from '#shared/decimal.ts';
import type { Decimal } from '#shared/decimal.ts';
import { TICKS_PER_YARD } from '#shared/length.ts';
import { formatDate, formatMoney, formatNumber } from '#shared/locale.ts';
import { minor, priceOf, shareOf, splitMoney } from '#shared/money.ts';
import { parseLengthRate } from '#shared/rate.ts';

function decimal(text: string): Decimal {
  const parsed = parseDecimal(text);
  if (!parsed) throw new Error(text);
  return parsed;
}

describe('money', () => {
  it('12.75 yd at 42.00 doubled is 1071.00', () => {
    expect(
      priceOf(decimal('42.00'), [decimalOf(12.75 * TICKS_PER_YARD), decimal('2')], TICKS_PER_YARD, 'USD', 'half-up'),
    ).toBe(107100);
  });

  it.each([
    ['half-up', 5n, 10n, 1n],
    ['half-up', -5n, 10n, -1n],
    ['half-even', 5n, 10n, 0n],
    ['half-even', 15n, 10n, 2n],
    ['up', 1n, 10n, 1n],
    ['down', 9n, 10n, 0n],
    ['half-up', 4n, 10n, 0n],
  ] as const)('%s of %d / %d is %d', (rule, num, den, wanted) => {
    expect(divideRounded(num, den, rule)).toBe(wanted);
  });

  it('multiplying by an exact rate agrees with dinero.js, half up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), fc.integer({ min: 0, max: 99_999 }), (amount, rate) => {
        const ours = shareOf(minor(amount), { digits: BigInt(rate), scale: 4 }, 'half-up');
        const theirs = toSnapshot(
          transformScale(multiply(dinero({ amount, currency: USD }), { amount: rate, scale: 4 }), 2, halfUp),
        ).amount;
        expect(ours).toBe(theirs);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });

  it('parts sum to the whole, and agree with the shares of dinero.js to one minor unit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10_000_000 }),
        fc
          .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 8 })
          .filter((list) => list.some((each) => each > 0)),
        (amount, weights) => {
          const parts = splitMoney(minor(amount), weights);
          expect(parts.reduce((sum, part) => sum + part, 0)).toBe(amount);
          const theirs = allocate(dinero({ amount, currency: USD }), weights).map((each) => toSnapshot(each).amount);
          parts.forEach((part, index) => expect(Math.abs(part - (theirs[index] ?? NaN))).toBeLessThanOrEqual(1));
        },
      ),
      { seed: 5, numRuns: 500 },
    );
  });

  it('a negative whole splits as its mirror', () => {
    expect(splitMoney(minor(-100), [1, 1, 1])).toEqual([-34, -33, -33]);
  });

  it('decimals read and say themselves without loss', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }),
        fc.integer({ min: 0, max: 8 }),
        (digits, scale) => {
          const text = sayDecimalPlain({ digits, scale });
          const back = parseDecimal(text);
          expect(back && sayDecimalPlain(back)).toBe(text);
        },
      ),
      { seed: 9, numRuns: 500 },
    );
  });

  it.each([
    ['42.00/yd', 'yd', '42.00'],
    ['38,50 / m', 'm', '38.50'],
    ['9 per ft', 'ft', '9'],
  ])('rate %s', (text, per, amount) => {
    const rate = parseLengthRate(text);
    expect(rate && [rate.per, sayDecimalPlain(rate.amount)]).toEqual([per, amount]);
  });

  it.each(['42', '42/inch', 'x/yd', '-3/yd'])('rate %s is refused', (text) => {
    expect(parseLengthRate(text)).toBeNull();
  });
});

describe('saying money, dates and figures', () => {
  it.each([
    [128400, 'USD', 'en-US', '$1,284.00'],
    [-350, 'GBP', 'en-GB', '-£3.50'],
    [123456789, 'PLN', 'pl-PL', '1\u00a0234\u00a0567,89\u00a0zł'],
    [5, 'EUR', 'de-DE', '0,05\u00a0€'],
    [1500, 'JPY', 'en-US', '¥1,500'],
  ] as const)('%d %s in %s', (amount, currency, locale, wanted) => {
    expect(formatMoney(amount, currency, locale)).toBe(wanted);
  });

  it('short form drops only zeros', () => {
    expect(formatMoney(128400, 'USD', 'en-US', 'short')).toBe('$1,284');
    expect(formatMoney(128450, 'USD', 'en-US', 'short')).toBe('$1,284.50');
  });

  it('dates follow the locale', () => {
    expect(formatDate('2026-11-25', 'en-US')).toBe('November 25, 2026');
    expect(formatDate('2026-11-05', 'en-GB')).toBe('5 November 2026');
  });

  it('figures drop trailing zeros and follow the locale', () => {
    expect([formatNumber(2.4727, 2, 'en-US'), formatNumber(3, 2, 'en-US'), formatNumber(2.5, 2, 'sv-SE')]).toEqual([
      '2.47',
      '3',
      '2,5',
    ]);
  });
});
