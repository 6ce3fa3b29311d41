/** Lengths: what people write is read exactly, and what is shown can be read back without loss on the shown grid. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatClothLength, formatLength, PLAIN, SET } from '#shared/format-length.ts';
import {
  lengthFrom,
  lengthIn,
  LONGEST,
  SHOWN_STEP,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  TICKS_PER_YARD,
  ticks,
} from '#shared/length.ts';
import type { LengthUnit } from '#shared/length.ts';
import { parseLength } from '#shared/parse-length.ts';

const inch = (value: number): number => value * TICKS_PER_INCH;
const mm = (value: number): number => Math.round(value * TICKS_PER_MM);

describe('reading lengths', () => {
  it.each<[string, LengthUnit, number]>([
    ['84 1/2', 'in', inch(84.5)],
    ['84-1/2"', 'in', inch(84.5)],
    ['84 - 1/2 in', 'in', inch(84.5)],
    [`7' 0 1/2"`, 'in', inch(84.5)],
    [`7' 0 1/2`, 'in', inch(84.5)],
    ['7 ft 1/2 in', 'in', inch(84.5)],
    ['7′ 0½″', 'in', inch(84.5)],
    ['7’ 0 1/2”', 'in', inch(84.5)],
    ["7' 0 1/2''", 'in', inch(84.5)],
    ['84.5', 'in', inch(84.5)],
    ['84,5', 'in', inch(84.5)],
    ['84½', 'in', inch(84.5)],
    ['½', 'in', inch(0.5)],
    ['.5', 'in', inch(0.5)],
    ['3/16', 'in', inch(3 / 16)],
    ['5⅝"', 'in', inch(5.625)],
    ['84 1/64', 'in', inch(84) + 127],
    ['84 2⁄4', 'in', inch(84.5)],
    ['0', 'in', 0],
    ['2.146 m', 'in', mm(2146)],
    ['2,146 m', 'cm', mm(2146)],
    ['214,6 cm', 'in', mm(2146)],
    ['214.6', 'cm', mm(2146)],
    ['2146', 'mm', mm(2146)],
    ['1 m 20 cm', 'cm', mm(1200)],
    ['12 yd', 'in', 12 * TICKS_PER_YARD],
    ['3 1/2 yards', 'in', 3.5 * TICKS_PER_YARD],
    ['  84   1/2  ', 'in', inch(84.5)],
    ['84\u00a01/2', 'in', inch(84.5)],
  ])('%s read in %s', (text, unit, wanted) => {
    expect(parseLength(text, unit)).toEqual({ ok: true, ticks: wanted });
  });

  it.each<[string, LengthUnit, RegExp]>([
    ['', 'in', /nothing/],
    ['abc', 'in', /cannot be read/],
    ['-3', 'in', /negative/],
    ['84 1/0', 'in', /over zero/],
    ['84 furlongs', 'in', /not a unit/],
    ['2 m 10', 'cm', /two numbers and one unit/],
    ['1/2 in 7 ft', 'in', /out of order/],
    ['1,234', 'mm', /thousand or a part/],
    ['99999999', 'mm', /longer than 100 m/],
    ['≈84 1/2', 'in', /about/],
    ['84..5', 'in', /cannot be read|two numbers/],
    ['12 12 12', 'in', /two numbers|cannot be read/],
  ])('%s is refused in %s', (text, unit, wrong) => {
    const read = parseLength(text, unit);
    expect(read).toMatchObject({ ok: false, right: expect.stringMatching(/write it as/) as string });
    expect(read.ok ? '' : read.wrong).toMatch(wrong);
  });

  it('never throws and never loops, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), fc.constantFrom<LengthUnit>('in', 'cm', 'mm'), (text, unit) => {
        const read = parseLength(text, unit);
        return !read.ok || (Number.isSafeInteger(read.ticks) && read.ticks >= 0 && read.ticks <= LONGEST);
      }),
      { seed: 7, numRuns: 3000 },
    );
  });
});

describe('showing lengths', () => {
  it.each<[number, LengthUnit, string]>([
    [inch(84.5), 'in', '84½'],
    [inch(206.25), 'in', '206¼'],
    [inch(3 / 16), 'in', '3/16'],
    [inch(84 + 3 / 16), 'in', '84 3/16'],
    [inch(0.625), 'in', '⅝'],
    [0, 'in', '0'],
    [mm(2146), 'cm', '214.6'],
    [mm(2146.5), 'cm', '214.65'],
    [mm(2146), 'mm', '2146'],
    [mm(2146), 'in', '≈84½'],
    [inch(84) + 127, 'in', '≈84'],
  ])('%d ticks in %s is %s', (value, unit, wanted) => {
    expect(formatLength(value, unit, SET)).toBe(wanted);
  });

  it('cloth is shown in quarters of a yard where exact', () => {
    expect(formatClothLength(12.75 * TICKS_PER_YARD, 'in')).toBe('12¾ yd');
    expect(formatClothLength(inch(424), 'in')).toBe('11.78 yd');
    expect(formatClothLength(mm(7200), 'cm')).toBe('7.2 m');
    expect(formatClothLength(mm(7250), 'cm', { fractions: 'set', decimal: ',' })).toBe('7,25 m');
  });

  it.each<LengthUnit>(['in', 'cm', 'mm'])('on its grid, %s reads back to the tick, plain and typeset', (unit) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60_000 }),
        fc.constantFrom('.' as const, ',' as const),
        (steps, decimal) => {
          const value = ticks(steps * SHOWN_STEP[unit]);
          for (const fractions of ['plain', 'set'] as const) {
            const shown = formatLength(value, unit, { fractions, decimal });
            expect(shown.startsWith('≈')).toBe(false);
            expect(parseLength(shown, unit)).toEqual({ ok: true, ticks: value });
          }
        },
      ),
      { seed: 11, numRuns: 2000 },
    );
  });

  it('off the grid the sign for about is shown, and the value is within half a step', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: LONGEST }),
        fc.constantFrom<LengthUnit>('in', 'cm', 'mm'),
        (value, unit) => {
          const shown = formatLength(value, unit, PLAIN);
          expect(shown.startsWith('≈')).toBe(value % SHOWN_STEP[unit] !== 0);
          const read = parseLength(shown.replace('≈', ''), unit);
          expect(read.ok && Math.abs(read.ticks - value) <= SHOWN_STEP[unit] / 2).toBe(true);
        },
      ),
      { seed: 13, numRuns: 1000 },
    );
  });

  it('six decimals of any unit read back to the tick, so that an exported job is the same job', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: LONGEST }),
        fc.constantFrom<LengthUnit>('in', 'cm', 'mm'),
        (value, unit) => {
          expect(lengthFrom(lengthIn(value, unit, 6), unit)).toBe(value);
          expect(parseLength(String(lengthIn(value, unit, 6)), unit)).toEqual({ ok: true, ticks: value });
        },
      ),
      { seed: 17, numRuns: 2000 },
    );
  });
});
