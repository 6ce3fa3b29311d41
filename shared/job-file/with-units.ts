/** Puts the unit into every bare length of a practice, so that it means the same in a project of another unit. */
import type { LengthUnit } from '../length.ts';
import { HEADINGS } from '../words.ts';
import type { WirePractice, WirePriceBook } from './wire-practice.ts';

type WireLength = string | number;

function fix(value: WireLength, unit: LengthUnit): WireLength {
  const bare = typeof value === 'number' || !/[a-z"'″′”’]/i.test(value);
  return bare ? `${value} ${unit}` : value;
}

function fixAll<T extends object>(given: T, keys: readonly (keyof T)[], unit: LengthUnit): T {
  const changed = { ...given };
  for (const key of keys) {
    const value: unknown = given[key];
    if (typeof value === 'number' || typeof value === 'string') changed[key] = fix(value, unit) as T[keyof T];
  }
  return changed;
}

/** Groups that hold nothing but lengths. */
const LENGTH_GROUPS = ['spacing', 'tab', 'pocket', 'hang', 'band', 'lining', 'interlining'] as const;

function fixGroup<T extends object>(group: T, unit: LengthUnit): T {
  return fixAll(group, Object.keys(group) as (keyof T)[], unit);
}

export function practiceWithUnits(practice: WirePractice, unit: LengthUnit): WirePractice {
  const fixed: WirePractice = fixAll(
    practice,
    ['bottomHem', 'sideHem', 'seam', 'squaring', 'orderStep', 'bracketSpacing'],
    unit,
  );
  const groups: WirePractice = {};
  for (const name of LENGTH_GROUPS) {
    const group = practice[name];
    if (group) groups[name] = fixGroup(group, unit);
  }
  const { headingAllowance, stackback } = practice;
  return {
    ...fixed,
    ...groups,
    ...(stackback ? { stackback: fixRanges(stackback, unit) } : {}),
    ...(headingAllowance ? { headingAllowance: fixTurns(headingAllowance, unit) } : {}),
  };
}

type Ranges = NonNullable<WirePractice['stackback']>;

function fixRanges(ranges: Ranges, unit: LengthUnit): Ranges {
  const fixed: Ranges = {};
  for (const name of ['unlined', 'lined', 'interlined'] as const) {
    const range = ranges[name];
    if (range) fixed[name] = fixGroup(range, unit);
  }
  return fixed;
}

type Turns = NonNullable<WirePractice['headingAllowance']>;

function fixTurns(turns: Turns, unit: LengthUnit): Turns {
  const fixed: Turns = {};
  for (const heading of HEADINGS) {
    const value = turns[heading];
    if (value === undefined) continue;
    fixed[heading] =
      typeof value === 'object'
        ? { unlined: fix(value.unlined, unit), lined: fix(value.lined, unit) }
        : fix(value, unit);
  }
  return fixed;
}

export function priceBookWithUnits(book: WirePriceBook, unit: LengthUnit): WirePriceBook {
  return book.labour ? { ...book, labour: fixAll(book.labour, ['billableWidth'], unit) } : book;
}
