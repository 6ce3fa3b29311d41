/** Puts the unit into every bare length of a practice, so that it means the same in a project of another unit. */
import type { LengthUnit } from '../length.ts';
import type { WirePractice, WirePriceBook } from './wire-practice.ts';

type WireLength = string | number;

function fix(value: WireLength, unit: LengthUnit): WireLength {
  return typeof value === 'number' ? `${value} ${unit}` : /[a-z"'″′”’]/i.test(value) ? value : `${value} ${unit}`;
}

function fixAll<T extends object>(given: T, keys: readonly (keyof T)[], unit: LengthUnit): T {
  const changed = { ...given };
  for (const key of keys) {
    const value: unknown = given[key];
    if (typeof value === 'number' || typeof value === 'string') changed[key] = fix(value, unit) as T[keyof T];
  }
  return changed;
}

const LAYER_LENGTHS = ['headingAllowance', 'bottomHem', 'shorter', 'narrower', 'sideHem'] as const;

export function practiceWithUnits(practice: WirePractice, unit: LengthUnit): WirePractice {
  const fixed: WirePractice = fixAll(
    practice,
    ['bottomHem', 'sideHem', 'seam', 'squaring', 'orderStep', 'bracketSpacing'],
    unit,
  );
  const turns = practice.headingAllowance;
  return {
    ...fixed,
    ...(practice.lining ? { lining: fixAll(practice.lining, LAYER_LENGTHS, unit) } : {}),
    ...(practice.interlining ? { interlining: fixAll(practice.interlining, LAYER_LENGTHS, unit) } : {}),
    ...(turns
      ? {
          headingAllowance: Object.fromEntries(
            Object.entries(turns).map(([heading, value]) => [
              heading,
              typeof value === 'object'
                ? { unlined: fix(value.unlined, unit), lined: fix(value.lined, unit) }
                : value === undefined
                  ? undefined
                  : fix(value, unit),
            ]),
          ) as NonNullable<WirePractice['headingAllowance']>,
        }
      : {}),
  };
}

export function priceBookWithUnits(book: WirePriceBook, unit: LengthUnit): WirePriceBook {
  return book.labour ? { ...book, labour: fixAll(book.labour, ['billableWidth'], unit) } : book;
}
