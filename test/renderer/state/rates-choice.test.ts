import { describe, expect, it } from 'vitest';
import {
  sellsClothAtCost,
  useExampleRates,
  useOwnRates,
  usesExampleRates,
} from '../../../renderer/state/rates-choice.ts';
import { sampleDocument } from './sample-document.ts';

const OWN = { labour: { hour: '61.00' } };

describe('example rates and her own', () => {
  it('switching there and back leaves her book as it was', () => {
    const before = { priceBook: OWN, exampleRates: false };
    const example = { ...before, ...useExampleRates() };
    expect([usesExampleRates(example), example.priceBook]).toEqual([true, OWN]);
    expect({ ...example, ...useOwnRates(example) }).toEqual(before);
  });

  it('an earlier "example" in place of the book is read, and left for an empty book', () => {
    const old = { priceBook: 'example', exampleRates: false } as const;
    expect(usesExampleRates(old)).toBe(true);
    expect(useOwnRates(old)).toEqual({ exampleRates: false, priceBook: {} });
  });
});

describe('cloth is sold at cost', () => {
  const { settings, project } = sampleDocument();
  const written = (priceBook: object) => ({ project, settings: { ...settings, exampleRates: false, priceBook } });

  it('where nothing is added on it', () => {
    expect(sellsClothAtCost(written(OWN))).toBe(true);
    expect(sellsClothAtCost(written({ ...OWN, markup: { cloth: '0' } }))).toBe(true);
  });
  it('not with a markup, nor by the example rates, which have one', () => {
    expect(sellsClothAtCost(written({ ...OWN, markup: { cloth: '0.5' } }))).toBe(false);
    expect(sellsClothAtCost({ project, settings })).toBe(false);
  });
  it("and a project's own book counts before hers", () => {
    const of = { ...written({ markup: { cloth: 1 } }), project: { ...project, priceBook: OWN } };
    expect(sellsClothAtCost(of)).toBe(true);
  });
});
