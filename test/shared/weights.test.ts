/** Cloth weights against exact definitions: `unit-*` records of `test/reference/physics-checks.json`. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { lengthFrom } from '#shared/length.ts';
import { parseWeight } from '#shared/weight.ts';

const records = z
  .array(
    z.object({
      id: z.string(),
      inputs: z.record(z.string(), z.unknown()),
      expected: z.record(z.string(), z.unknown()),
    }),
  )
  .parse(JSON.parse(readFileSync(new URL('../reference/physics-checks.json', import.meta.url), 'utf8')));
const wide = lengthFrom(54, 'in');

describe('cloth weights', () => {
  it.each(records.filter((record) => /^unit-(ozyd2|\d)/.test(record.id)).map((record) => [record.id, record] as const))(
    '%s',
    (_, record) => {
      const given = Object.values(record.inputs)[0];
      const ounces = typeof given === 'number' ? given : Number.NaN;
      expect(parseWeight(`${ounces} oz/yd2`, wide)).toBeCloseTo(z.number().parse(record.expected['g_m2']), 3);
    },
  );

  it('unit-linyd: an ounce of a running yard at 54 in', () => {
    expect(parseWeight('1 oz/yd', wide)).toBeCloseTo(22.603832, 6);
  });

  it('5 oz a running yard at 54 in is 113 g/m2, a square yard 170 (common practice: ask which is meant)', () => {
    expect(Math.round(parseWeight('5 oz/yd', wide) ?? 0)).toBe(113);
    expect(Math.round(parseWeight('5 oz/yd2', wide) ?? 0)).toBe(170);
    expect(parseWeight('5 oz', wide)).toBeNull();
  });

  it.each([
    ['7 oz/sq yd', 237.34],
    ['7 oz/square yard', 237.34],
    ['5 oz/lin yd', 113.02],
    ['5 oz / running yard', 113.02],
    ['240 g/sq m', 240],
  ])('%s is read', (text, grams) => {
    expect(parseWeight(text, wide)).toBeCloseTo(grams, 1);
  });

  it('grams a square metre are taken as they are', () => {
    expect(parseWeight('240 g/m2', wide)).toBe(240);
    expect(parseWeight('170,5 g/m²', wide)).toBe(170.5);
  });
});
