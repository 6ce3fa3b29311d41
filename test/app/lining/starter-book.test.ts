/** The starter book: a page for every kind, each value with where it comes from, within what is published. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { FACE_FAMILIES, GENERIC_CLOTH_IDS, INTERLINING_FAMILIES, LINING_FAMILIES } from '#shared/words.ts';
import { FACE_FAMILY_VALUES, KEYES_BOUNDS } from '#app/lining/cloth/face-families.ts';
import { nearestHand, STIFFNESS_OF_HAND } from '#app/lining/cloth/hand.ts';
import { fillCloth } from '#app/lining/cloth/resolve-cloth.ts';
import { PAGE_VALUES, STARTER_BOOK } from '#app/lining/cloth/starter-book.ts';
import { HANDS } from '#shared/cloth.ts';

interface Check {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
}
const checks = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../reference/physics-checks.json'), 'utf8'),
) as readonly Check[];

describe('the starter book', () => {
  it('has a page for every kind of cloth, and every generic cloth', () => {
    const kinds = STARTER_BOOK.map(({ cloth }) => `${cloth.role} ${cloth.family}`);
    const all = [
      ...FACE_FAMILIES.map((family) => `face ${family}`),
      ...LINING_FAMILIES.map((family) => `lining ${family}`),
      ...INTERLINING_FAMILIES.map((family) => `interlining ${family}`),
    ];
    expect(new Set(kinds)).toEqual(new Set(all));
    expect(STARTER_BOOK.flatMap(({ id }) => (id === null ? [] : [id]))).toEqual(GENERIC_CLOTH_IDS);
    expect(new Set(STARTER_BOOK.map(({ key }) => key)).size).toBe(STARTER_BOOK.length);
  });

  it.each(STARTER_BOOK.map((page) => [page.key, page] as const))(
    '%s says of every value where it comes from',
    (_, page) => {
      for (const value of PAGE_VALUES) {
        const given = page.cloth[value] !== undefined && page.cloth[value] !== null;
        const said = page.provenance[value];
        expect([value, said !== undefined]).toEqual([value, given]);
        if (given) expect(said).toMatch(/typical, assumed|common practice/);
      }
      expect(() => fillCloth(page.cloth)).not.toThrow();
    },
  );

  // Keyes 1967, normal incidence, as in the ESP-r database (reference checks keyes-…; read second-hand).
  it.each(FACE_FAMILIES)('the solar pair of %s lies between its two drapery classes', (family) => {
    const { transmittance, reflectance } = FACE_FAMILY_VALUES[family].solar;
    const classes = checks.filter(({ id }) => id.startsWith('keyes-'));
    const bounds = KEYES_BOUNDS[family];
    if (bounds === null) {
      expect(Math.max(...classes.map(({ inputs }) => inputs['tau_bt0']!))).toBeLessThan(transmittance);
      return;
    }
    const both = bounds.map((name) => classes.find(({ id }) => id === `keyes-${name}`)!.inputs);
    const between = (value: number, key: string): void => {
      const ends = both.map((inputs) => inputs[key]!);
      expect(value).toBeGreaterThanOrEqual(Math.min(...ends));
      expect(value).toBeLessThanOrEqual(Math.max(...ends));
    };
    between(transmittance, 'tau_bt0');
    between(reflectance, 'rho_bt0');
  });

  it('a soft blackout stops about 95 % of the light, a three-pass one practically all (common practice)', () => {
    const passes = (id: string) => STARTER_BOOK.find((page) => page.id === id)!.cloth.visible!.transmittance;
    expect(passes('soft-blackout')).toBeCloseTo(0.05, 2);
    expect(passes('blackout-3-pass')).toBeLessThanOrEqual(0.001);
  });
});

it('the hand nearest to a stiffness is the one whose stiffness it is', () => {
  for (const hand of HANDS) expect(nearestHand(STIFFNESS_OF_HAND[hand])).toBe(hand);
});
