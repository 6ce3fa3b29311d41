import { describe, expect, it } from 'vitest';
import { lineOfFault, readAt, writeAt } from '../../../renderer/state/form-path.ts';
import { withFewerWidths } from '../../../renderer/state/near-whole.ts';
import { priceDocument } from '../../../renderer/state/price-document.ts';
import { readClothLength } from '../../../renderer/state/read-field.ts';
import { readLine, showLine } from '../../../renderer/state/read-line.ts';
import { countedSides, readSide, writeSide } from '../../../renderer/state/write-sides.ts';
import type { SheetLine } from '../../../renderer/words/kind-sheets/sheet.ts';
import { lengthFrom } from '#shared/length.ts';
import { inches, sampleDocument, sampleMake, sampleOpening, sampleRoom, sampleTreatment } from './sample-document.ts';

describe('a path in a form', () => {
  it('reads and writes objects and lists on the way, and leaves the old form alone', () => {
    const form = { size: { widths: [1] } };
    expect(writeAt(form, 'size.widths.2', 3)).toEqual({ size: { widths: [1, null, 3] } });
    expect(writeAt(form, 'mount.above', 4)).toEqual({ size: { widths: [1] }, mount: { above: 4 } });
    expect(writeAt(form, 'size', undefined)).toEqual({});
    expect(writeAt(form, 'rod.diameter', undefined)).toEqual(form);
    expect(form).toEqual({ size: { widths: [1] } });
    expect(readAt(form, 'size.widths.0')).toBe(1);
    expect(readAt(form, 'rod.header')).toBeUndefined();
  });
  it('is how a fault names it', () => {
    expect(lineOfFault('size.widths[0]')).toBe('size.widths.0');
  });
});

describe('a return of each side', () => {
  it('stands for both until the right one differs', () => {
    expect(writeSide(undefined, 'left', 5)).toBe(5);
    expect(countedSides(5)).toEqual({ left: 5, right: 5 });
    expect(readSide(5, 'right')).toBeNull();
    expect(writeSide(5, 'right', 3)).toEqual({ left: 5, right: 3 });
    expect(writeSide({ left: 5, right: 3 }, 'right', null)).toBe(5);
    expect(writeSide(5, 'left', null)).toBeUndefined();
    expect(countedSides(undefined)).toBeNull();
  });
});

describe('what a line reads', () => {
  const count: SheetLine = { type: 'count', path: 'rows', label: 'rows', least: 2, most: 200 };
  const turn: SheetLine = { type: 'readings', of: 'degrees', path: 'turns', label: 'turn', names: [] };
  const ratio: SheetLine = { type: 'ratio', path: 'fullness', label: 'fullness' };
  it.each([
    [count, '9', 9],
    [count, '1', null],
    [count, 'nine', null],
    [turn, '45', 45],
    [turn, '22.5°', 22.5],
    [turn, '180', null],
    [ratio, '2 1/2', 2.5],
    [ratio, '9', null],
  ])('%o %s', (line, text, value) => {
    const read = readLine(line, text, 'in');
    expect(read.is === 'value' ? read.value : null).toBe(value);
  });
  it('is shown as it was written', () => {
    expect(showLine(ratio, 2.5, 'in', 'en-US')).toBe('2½');
    expect(showLine(turn, 22.5, 'cm', 'de-DE')).toBe('22,5');
    expect(showLine(count, 9, 'in', 'en-US')).toBe('9');
  });
});

describe('cloth by the length', () => {
  it('takes a bare number as yards or metres', () => {
    expect(readClothLength('60', 'in')).toEqual({ is: 'value', value: lengthFrom(60, 'yd') });
    expect(readClothLength('0.5', 'cm')).toEqual({ is: 'value', value: lengthFrom(0.5, 'm') });
    expect(readClothLength('50 m', 'in')).toEqual({ is: 'value', value: lengthFrom(50, 'm') });
    expect(readClothLength('', 'in')).toEqual({ is: 'empty' });
  });
});

describe('the near-whole case', () => {
  // 79 + 2 x 3 1/2 + 3 1/2 = 89 1/2; x 2.5 = 223 3/4; / 54 = 4.14: five widths, and four still make 2.28.
  const treatment = sampleTreatment({ make: sampleMake({ rodWidth: inches(79) }) });
  const opening = sampleOpening({ treatments: [treatment] });
  const document = sampleDocument({ rooms: [sampleRoom({ openings: [opening] })] });

  it('is priced both ways, and written only when it is taken', () => {
    const result = priceDocument(document, new WeakMap()).treatments.get('treatment')?.tiers.good;
    expect(result?.takeoff[0]?.halfWidths).toBe(10);
    if (!result) throw new Error('nothing was priced');
    const fewer = withFewerWidths(document, opening, treatment, 'good', result);
    expect(fewer?.make.halfWidths).toBe(4);
    expect(fewer?.result.takeoff[0]?.halfWidths).toBe(8);
    expect(fewer?.result.price?.total).toBeLessThan(result.price?.total ?? 0);
    expect(treatment.make).toMatchObject({ halfWidths: null });
  });
});
