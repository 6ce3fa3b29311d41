/** Values that nobody measured, in words, cloth by cloth: `Larch stripe: its light and weight`. */
import type { Cloth } from '#shared/cloth.ts';
import { resolveCloth } from '../cloth/resolve-cloth.ts';
import type { AssumedValue } from '../cloth/resolve-cloth.ts';
import { sayList } from './say-number.ts';

const VALUE_WORDS: Readonly<Record<AssumedValue, string>> = {
  transmittance: 'light that it passes',
  reflectance: 'light that it sends back',
  'uv.transmittance': 'ultraviolet that it passes',
  'uv.reflectance': 'ultraviolet that it sends back',
  'solar.transmittance': 'sun that it passes',
  'solar.reflectance': 'sun that it sends back',
  weight: 'weight',
  colour: 'colour',
  shade: 'shade',
};

/** Entries of `assumed` that end in one of these values; empty when none does. */
export function sayAssumed(
  assumed: readonly string[],
  values: readonly AssumedValue[],
  ownCloth: readonly Cloth[],
): readonly string[] {
  const byCloth = new Map<string, string[]>();
  for (const entry of assumed) {
    // An id may hold a point, and so may a value.
    const value = [...values].sort((a, b) => b.length - a.length).find((each) => isOf(entry, each));
    if (value === undefined) continue;
    const id = entry.slice(0, -value.length - 1);
    byCloth.set(id, [...(byCloth.get(id) ?? []), VALUE_WORDS[value]]);
  }
  return [...byCloth].map(([id, words]) => `${resolveCloth(id, ownCloth)?.name ?? id}: ${sayList(words)}`);
}

function isOf(entry: string, value: AssumedValue): boolean {
  const isBand = /\.(uv|solar)\.[a-z]+$/u.test(entry);
  return entry.endsWith(`.${value}`) && isBand === value.includes('.');
}
