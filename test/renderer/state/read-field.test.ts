import { describe, expect, it } from 'vitest';
import { lengthFrom } from '#shared/length.ts';
import {
  readAmountField,
  readContentField,
  readCountField,
  readFullnessField,
  readLengthField,
  readPercentField,
  readRateField,
  readWeightField,
  readWidthsField,
  showFullness,
  showLength,
  showPercent,
  showWidths,
  writeLengthText,
} from '../../../renderer/state/read-field.ts';
import type { FieldReading } from '../../../renderer/state/read-field.ts';

/** A value, `empty`, or `fault`. */
function outcome<T>(reading: FieldReading<T>): T | 'empty' | 'fault' {
  return reading.is === 'value' ? reading.value : reading.is;
}

describe('a field reads what people write', () => {
  it.each([
    ['2 1/2', 2500],
    ['2½', 2500],
    ['2.25', 2250],
    ['2,5 times', 2500],
    ['2.473', 2473],
    ['', 'empty'],
    ['0.9', 'fault'],
    ['250', 'fault'],
    ['2 ft', 'fault'],
    ['two', 'fault'],
  ])('fullness "%s"', (text, value) => {
    expect(outcome(readFullnessField(text))).toBe(value);
  });

  it.each([
    ['1 1/2', 3],
    ['2', 4],
    ['½', 1],
    ['1.25', 'fault'],
    ['0', 'fault'],
  ])('widths "%s" in halves', (text, value) => {
    expect(outcome(readWidthsField(text))).toBe(value);
  });

  it.each([
    ['84 1/2', 'in', lengthFrom(84.5, 'in')],
    ['214,6', 'cm', lengthFrom(214.6, 'cm')],
    ['8x', 'in', 'fault'],
    [' ', 'in', 'empty'],
  ] as const)('length "%s" in %s', (text, unit, value) => {
    expect(outcome(readLengthField(text, unit))).toBe(value);
  });

  it.each([
    ['42', 'in', '42/yd'],
    ['$42.00', 'in', '42.00/yd'],
    ['16,50', 'cm', '16.50/m'],
    ['9 per foot', 'in', '9/ft'],
    ['cheap', 'in', 'fault'],
    ['£42', 'in', 'fault'],
  ] as const)('price by length "%s" in a household of %s', (text, unit, value) => {
    expect(outcome(readRateField(text, unit, 'USD'))).toBe(value);
  });

  it.each([
    ['9', 'in', '9.00/ft', '9/ft'],
    ['3.5', 'in', '3.50/ft', '3.5/ft'],
    ['1.10', 'in', '1.10/yd', '1.10/yd'],
    ['9', 'cm', '9.00/ft', '9/m'],
    ['9/yd', 'in', '9.00/ft', '9/yd'],
  ] as const)('a bare "%s" in %s by the example %s', (text, unit, example, value) => {
    expect(outcome(readRateField(text, unit, 'USD', example))).toBe(value);
  });

  it.each([
    ['£42', 'USD'],
    ['$42', 'GBP'],
    ['€ 42/m', 'CHF'],
  ] as const)('says that "%s" is not in %s instead of dropping the sign', (text, currency) => {
    const reading = readRateField(text, 'in', currency);
    expect(reading.is === 'fault' ? reading.wrong : '').toContain(`not in ${currency}`);
  });

  it.each([
    ['38', 'USD', '38'],
    ['£38.50', 'GBP', '38.50'],
    ['$38.50', 'CAD', '38.50'],
    ['£38.50', 'USD', 'fault'],
    ['£', 'GBP', 'empty'],
    ['-3', 'USD', 'fault'],
  ] as const)('amount "%s" in %s', (text, currency, value) => {
    expect(outcome(readAmountField(text, currency))).toBe(value);
  });

  it.each([
    ['6.25', 100, '0.0625'],
    ['50 %', 100, '0.50'],
    ['120', 100, 'fault'],
    ['120', null, '1.20'],
  ] as const)('per cent "%s" of at most %s', (text, most, value) => {
    expect(outcome(readPercentField(text, most))).toBe(value);
  });

  it('refuses a bare "5 oz" because it could mean two weights', () => {
    const reading = readWeightField('5 oz', null);
    expect(reading.is === 'fault' ? reading.wrong : '').toContain('running or a square yard');
    expect(outcome(readWeightField('5 oz/yd', lengthFrom(54, 'in')))).toBe('5 oz/yd');
  });

  it.each([
    ['cotton', { cotton: 100 }],
    ['cotton 55, linen 45', { cotton: 55, linen: 45 }],
    ['55 % cotton; 45 % linen', { cotton: 55, linen: 45 }],
    ['cotton 55, linen 40', 'fault'],
    ['cotton, linen', 'fault'],
  ])('content "%s"', (text, value) => {
    expect(outcome(readContentField(text))).toEqual(value);
  });

  it.each([
    ['3', 3],
    ['0', 'fault'],
    ['1.5', 'fault'],
    ['501', 'fault'],
  ])('count "%s" of at most 500', (text, value) => {
    expect(outcome(readCountField(text, 500))).toBe(value);
  });
});

describe('a field shows what it read', () => {
  it.each([
    [2500, 'en-US', '2½'],
    [2473, 'en-US', '2.473'],
    [1100, 'de-DE', '1,1'],
  ] as const)('fullness %s in %s', (value, locale, text) => {
    expect(showFullness(value, locale)).toBe(text);
  });
  it('widths, lengths and shares', () => {
    expect([1, 2, 3].map(showWidths)).toEqual(['½', '1', '1½']);
    expect(showLength(lengthFrom(84.5, 'in'), 'in', 'en-US')).toBe('84½');
    expect(showLength(lengthFrom(214.6, 'cm'), 'cm', 'fr-FR')).toBe('214,6');
    expect(showPercent('0.0625', 'en-US')).toBe('6.25');
    expect(showPercent(0.5, 'en-US')).toBe('50');
    expect(writeLengthText(lengthFrom(8.5, 'in'), 'in')).toBe('8.5 in');
  });
});
