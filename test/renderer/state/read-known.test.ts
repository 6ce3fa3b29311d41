import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readLossField,
  readLuxField,
  readShareField,
  readSpectrum,
  readThicknessField,
  showShare,
} from '../../../renderer/state/read-known.ts';

const said = (reading: { is: string; wrong?: string; right?: string; value?: unknown }): unknown =>
  reading.is === 'fault' ? `${reading.wrong ?? ''}; ${reading.right ?? ''}` : (reading.value ?? reading.is);

describe('a share', () => {
  it.each<[string, unknown]>([
    ['35', 0.35],
    ['35 %', 0.35],
    ['0,01 %', 0.0001],
    ['0.35%', 0.0035],
    ['100', 1],
    ['0', 0],
    [' ', 'empty'],
    ['0.35', '"0.35" could mean 0.35 % or 35 %; write 0.35 % or 35 %'],
    ['135', '"135" is more than all of it; write 100 % or less'],
    ['-3', '"-3" cannot be read as per cent; write it as 35 %, or 0.01 % for next to nothing'],
    ['bright', '"bright" cannot be read as per cent; write it as 35 %, or 0.01 % for next to nothing'],
  ])('%j', (text, expected) => expect(said(readShareField(text))).toEqual(expected));

  it('that is shown is read back the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (millionths) => {
        const share = millionths / 1_000_000;
        for (const locale of ['en-US', 'de-DE'] as const)
          expect(readShareField(showShare(share, locale))).toEqual({ is: 'value', value: share });
      }),
    );
  });

  it('of what is lost is never all of it', () => {
    expect(said(readLossField('100 %'))).toMatch(/all of it/);
    expect(said(readLossField('3'))).toBe(0.03);
  });
});

describe('a thickness', () => {
  it.each<[string, unknown]>([
    ['0.4', 0.4],
    ['0,55 mm', 0.55],
    ['1/64 in', 0.397],
    ['0', '"0" is no thickness; write it in millimetres, such as 0.4'],
    ['60', '"60" is thicker than any cloth; write it in millimetres, such as 0.4'],
    ['thin', '"thin" cannot be read as a thickness; write it in millimetres, such as 0.4'],
  ])('%j', (text, expected) => expect(said(readThicknessField(text))).toEqual(expected));
});

describe('sixteen numbers', () => {
  const shares = Array.from({ length: 16 }, (_, at) => (at + 20) / 100);
  const nm = shares.map((_, at) => 400 + 20 * at);
  it.each([
    ['one after the other', shares.join(' ')],
    ['a line each', shares.join('\n')],
    ['parted by commas', shares.join(',')],
    ['by commas and spaces', shares.join(', ')],
    ['with decimal commas', shares.map((share) => String(share).replace('.', ',')).join('; ')],
    ['in per cent', shares.map((share) => `${Math.round(share * 100)} %`).join(' ')],
    ['with the wavelength before each, as from a table', shares.map((share, at) => `${nm[at]}\t${share}`).join('\n')],
  ])('%s', (_, text) => expect(readSpectrum(text)).toEqual({ is: 'value', value: shares }));

  const withOne = (at: number, word: string): string => shares.map((share, i) => (i === at ? word : share)).join(' ');
  it.each([
    [withOne(6, 'x'), 'the 7th number, at 520 nm, is "x"; write a share such as 0.35 there'],
    [withOne(0, '-0.1'), 'the 1st number, at 400 nm, is "-0.1"; write a share such as 0.35 there'],
    [
      withOne(2, '43'),
      'the 3rd number, at 440 nm, is 43: more than all the light; write shares such as 0.35, or put % behind the last one',
    ],
    [shares.slice(1).join(' '), 'there are 15 numbers; give 16, from 400 nm to 700 nm by 20 nm'],
  ])('%j names which one is wrong', (text, expected) => expect(said(readSpectrum(text))).toBe(expected));
});

describe('a reading of a meter', () => {
  it.each<[string, 'en-US' | 'de-DE', unknown]>([
    ['12000', 'en-US', 12000],
    ['12,000', 'en-US', 12000],
    ['12 000 lx', 'en-US', 12000],
    ['12.5 klx', 'en-US', 12500],
    ['12.000', 'de-DE', 12000],
    [
      '12,000',
      'de-DE',
      '"12,000" could be thousands or a decimal; write the number that the meter shows, such as 12000',
    ],
    ['0', 'en-US', 0],
    ['bright', 'en-US', '"bright" is not a reading; write the number that the meter shows, such as 12000'],
  ])('%j in %s', (text, locale, expected) => expect(said(readLuxField(text, locale))).toEqual(expected));
});
