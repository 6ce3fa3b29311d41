/** Lines about light are looked at together: nothing that is typed is lost, and nothing that cannot be is kept as a value. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClothRecord } from '#shared/records/records.ts';
import {
  changeShare,
  changeSpectrum,
  putMeasured,
  readShareLine,
  readSpectrumLine,
  sharesOf,
} from '../../../renderer/state/known-edits.ts';
import { readMeasure } from '../../../renderer/state/measure-light.ts';
import { fieldsOfPage } from '../../../renderer/state/fields-of-page.ts';
import { typicalOf } from '../../../renderer/state/typical-cloth.ts';
import { STARTER_BOOK } from '#app/lining/cloth/starter-book.ts';
import { sampleCloth } from './sample-document.ts';

const type = (cloth: ClothRecord, side: 'transmittance' | 'reflectance' | 'street', text: string): ClothRecord => ({
  ...cloth,
  ...changeShare(cloth, 'visible', side, text),
});

describe('what passes and what is sent back', () => {
  it('one alone is kept, and the other stays typical as far as light is left', () => {
    const cloth = type(sampleCloth(), 'transmittance', '90 %');
    expect(cloth.visible).toEqual({ transmittance: 0.9, reflectance: null });
    expect(typicalOf(cloth)?.visible.reflectance).toBeCloseTo(0.1, 9);
  });

  it('more than there is stays a draft, with what would be right; mending the other lets it in', () => {
    const both = type(type(sampleCloth(), 'transmittance', '60 %'), 'reflectance', '30 %');
    const over = type(both, 'reflectance', '70 %');
    expect(over.visible).toEqual({ transmittance: 0.6, reflectance: 0.3 });
    expect(over.drafts).toEqual({ 'visible.reflectance': '70 %' });
    expect(readShareLine(over, 'visible', 'reflectance', '70 %')).toMatchObject({
      wrong: 'passed and sent back make 130 %, more than the light there is',
      right: 'write 40 % or less, or lower the other first',
    });
    const mended = type(over, 'transmittance', '20 %');
    expect(mended.visible).toEqual({ transmittance: 0.2, reflectance: 0.7 });
    expect(mended.drafts).toEqual({});
  });

  it('the street side is held to the same', () => {
    const cloth = type(type(sampleCloth(), 'transmittance', '60 %'), 'street', '50 %');
    expect([cloth.streetReflectance, cloth.drafts]).toEqual([null, { 'visible.street': '50 %' }]);
  });

  it('whatever is typed in whatever order, no side is ever kept above all the light, and no text is lost', () => {
    const sides = fc.constantFrom('transmittance' as const, 'reflectance' as const, 'street' as const);
    const texts = fc.oneof(
      fc.integer({ min: 0, max: 120 }).map((n) => `${n} %`),
      fc.constantFrom('', '0.4', 'x'),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(sides, texts), { maxLength: 12 }), (acts) => {
        let cloth = sampleCloth();
        const last = new Map<string, string>();
        for (const [side, text] of acts) {
          cloth = type(cloth, side, text);
          last.set(side, text);
          const { transmittance, reflectance, street } = sharesOf(cloth, 'visible');
          if (transmittance !== null)
            expect(transmittance + Math.max(reflectance ?? 0, street ?? 0)).toBeLessThanOrEqual(1 + 1e-9);
        }
        for (const [side, text] of last) {
          const kept = cloth.drafts[`visible.${side}`];
          const value = sharesOf(cloth, 'visible')[side as 'street'];
          const shown = value === null ? '' : `${Math.round(value * 100)} %`;
          expect([kept, shown]).toContain(text);
        }
      }),
    );
  });

  it('a value typed over a guess or a home measurement is neither any more; a supplier keeps speaking for it', () => {
    const measured = sampleCloth({
      visible: { transmittance: 0.2, reflectance: 0.4 },
      transmittanceWithin: 0.02,
      sources: { transmittance: 'measured-at-home', reflectance: 'supplier', weight: 'assumed' },
    });
    const typed = type(measured, 'transmittance', '25');
    expect(typed.sources).toEqual({ reflectance: 'supplier', weight: 'assumed' });
    expect(typed.transmittanceWithin).toBeNull();
    expect(type(measured, 'reflectance', '45').sources).toEqual(measured.sources);
    expect(type(measured, 'transmittance', '20 %')).toMatchObject({ transmittanceWithin: 0.02 });
  });
});

describe('spectra', () => {
  const flat = (share: number): string => Array.from({ length: 16 }, () => share).join(' ');
  it('name the band in which the two make too much', () => {
    const one = { ...sampleCloth(), ...changeSpectrum(sampleCloth(), 'transmittance', flat(0.3)) };
    expect(one.spectra?.reflectance).toBeNull();
    const wrong = flat(0.5).replace(/0\.5 0\.5$/, '0.8 0.5');
    expect(readSpectrumLine(one, 'reflectance', wrong)).toMatchObject({
      wrong: 'at 680 nm the two spectra make 110 %',
    });
    const kept = { ...one, ...changeSpectrum(one, 'reflectance', wrong) };
    expect([kept.spectra?.reflectance, kept.drafts]).toEqual([null, { 'spectra.reflectance': wrong }]);
    expect(changeSpectrum(one, 'transmittance', '').spectra).toBeNull();
  });
});

describe('a home measurement', () => {
  const typed = (pairs: [string, string][], dark = '') => ({
    pairs: pairs.map(([bare, covered]) => ({ bare, covered })),
    dark,
    glazing: 'single' as const,
    reflectance: 0.5,
  });
  it('takes whole pairs, leaves out empty rows, and goes in with its tolerance and its source', () => {
    const { result, faults } = readMeasure(
      typed([
        ['', ''],
        ['10,000', '3000'],
        ['', ''],
      ]),
      'en-US',
    );
    expect(faults).toEqual({});
    // 0.3 × (1 − 0.1474 × 0.5), as in the engine's own worked check.
    expect(result?.transmittance).toBeCloseTo(0.2779, 4);
    const sources = { transmittance: 'supplier' as const };
    const cloth = sampleCloth({ visible: { transmittance: 0.1, reflectance: 0.5 }, sources });
    expect(putMeasured(cloth, result!.transmittance, result!.within)).toMatchObject({
      visible: { transmittance: result!.transmittance, reflectance: 0.5 },
      transmittanceWithin: result!.within,
      sources: { transmittance: 'measured-at-home', reflectance: 'supplier' },
    });
  });
  it('does not go in beside more sent back than it leaves', () => {
    const cloth = sampleCloth({ visible: { transmittance: 0.1, reflectance: 0.8 } });
    expect(putMeasured(cloth, 0.28, 0.04)).toBeNull();
  });
  it.each([
    ['more light behind the sample', [['1000', '1500']], 'pairs[0].covered', /1500 lux is more than the 1000 without/],
    ['a zero', [['0', '0']], 'pairs[0].bare', /0 lux is too dim to measure by; read at a sunny window/],
    ['words', [['sunny', '3000']], 'pairs[0].bare', /"sunny" is not a reading/],
    [
      'in a later row',
      [
        ['', ''],
        ['12000', '3000'],
        ['9000', '99000'],
      ],
      'pairs[2].covered',
      /more than the 9000/,
    ],
  ] as [string, [string, string][], string, RegExp][])('%s is told at its own field', (_, pairs, field, says) => {
    const { faults, result } = readMeasure(typed(pairs), 'en-US');
    expect(result).toBeNull();
    expect(Object.keys(faults)).toEqual([field]);
    expect(faults[field]).toMatch(says);
  });
});

describe('a page of the starter book made hers', () => {
  it.each(STARTER_BOOK.map((page) => [page.key, page] as const))(
    '%s has every value, each marked as a guess',
    (_, page) => {
      const made = sampleCloth({
        ...fieldsOfPage({ page, inPlace: page.id !== null, taken: [], price: null }),
        colour: null,
      });
      expect(made.code).toBe(page.id ?? made.code);
      const typical = typicalOf(made)!;
      expect(typical.visible).toEqual(page.cloth.visible);
      expect(typical.weight).toBe(page.cloth.weight);
      for (const value of ['transmittance', 'uv', 'solar', 'weight', 'thickness', 'hand'] as const)
        expect(made.sources?.[value]).toBe('assumed');
      expect(made.sources?.needle).toBe(page.cloth.needle === undefined ? undefined : 'assumed');
    },
  );
  it('beside the generic one it has a code and a price of its own', () => {
    const page = STARTER_BOOK.find(({ id }) => id === 'std-white')!;
    const taken = ['standard-lining-white'];
    expect(fieldsOfPage({ page, inPlace: false, taken, price: '6.50/yd' })).toMatchObject({
      code: 'standard-lining-white-2',
      price: '6.50/yd',
    });
  });
});
