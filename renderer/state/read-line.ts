/** What one line of a kind's sheet makes of its text, and how it shows what is kept. */
import type { LengthUnit, Ticks } from '#shared/length.ts';
import type { Locale } from '#shared/locale.ts';
import { decimalSign } from '#shared/locale.ts';
import type { CountLine, SheetLine } from '../words/kind-sheets/sheet.ts';
import { readFullnessField, readLengthField, showFullness, showLength } from './read-field.ts';
import type { FieldReading } from './read-field.ts';

/** Reads as the kept form writes it: lengths in ticks, ratios plain. */
export function readLine(line: SheetLine, text: string, unit: LengthUnit): FieldReading<number> {
  switch (line.type) {
    case 'ratio': {
      const read = readFullnessField(text);
      return read.is === 'value' ? { is: 'value', value: read.value / 1000 } : read;
    }
    case 'count':
      return readCount(line, text);
    case 'readings':
      return line.of === 'degrees' ? readDegrees(text) : readLengthField(text, unit);
    default:
      return readLengthField(text, unit);
  }
}

function readCount({ least, most }: CountLine, text: string): FieldReading<number> {
  const plain = text.trim();
  if (plain === '') return { is: 'empty' };
  const count = /^\d+$/.test(plain) ? Number(plain) : -1;
  if (count >= least && count <= most) return { is: 'value', value: count };
  return {
    is: 'fault',
    wrong: `"${plain}" is not a count from ${least} to ${most}`,
    right: `write a whole number from ${least} to ${most}`,
  };
}

/** A rod that turns a little or almost back on itself: the same limits as in a job file. */
function readDegrees(text: string): FieldReading<number> {
  const plain = text
    .trim()
    .replace(/\s*(°|deg|degrees)$/i, '')
    .replace(',', '.');
  if (plain === '') return { is: 'empty' };
  const degrees = /^\d+(\.\d+)?$/.test(plain) ? Number(plain) : 0;
  if (degrees >= 1 && degrees <= 170) return { is: 'value', value: degrees };
  return {
    is: 'fault',
    wrong: `"${text.trim()}" is not an angle`,
    right: 'write the degrees that the rod turns, for example 45',
  };
}

export function showLine(line: SheetLine, value: unknown, unit: LengthUnit, locale: Locale): string {
  if (typeof value !== 'number') return '';
  switch (line.type) {
    case 'ratio':
      return showFullness(Math.round(value * 1000), locale);
    case 'count':
      return String(value);
    case 'readings':
      return line.of === 'degrees'
        ? String(value).replace('.', decimalSign(locale))
        : showLength(value as Ticks, unit, locale);
    default:
      return showLength(value as Ticks, unit, locale);
  }
}
