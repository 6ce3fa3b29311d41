/** Puts the unit into every bare length, so that it means the same in a project of another unit. */
import type { LengthUnit } from '../length.ts';
import { mapLengths } from './map-lengths.ts';
import { wirePractice, wirePriceBook } from './wire-practice.ts';
import type { WirePractice, WirePriceBook } from './wire-practice.ts';

function fix(value: unknown, unit: LengthUnit): unknown {
  const bare = typeof value === 'number' || (typeof value === 'string' && !/[a-z"'″′”’]/i.test(value));
  return bare ? `${value} ${unit}` : value;
}

/** `practice` satisfies its schema; so does what comes back. */
export function practiceWithUnits(practice: WirePractice, unit: LengthUnit): WirePractice {
  return mapLengths(wirePractice, practice, (length) => fix(length, unit)) as WirePractice;
}

export function priceBookWithUnits(book: WirePriceBook, unit: LengthUnit): WirePriceBook {
  return mapLengths(wirePriceBook, book, (length) => fix(length, unit)) as WirePriceBook;
}
