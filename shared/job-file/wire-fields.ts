/** Leaves of the wire form: how lengths, shares, rates and dates are written in a job file. No transforms. */
import * as z from 'zod';
import { parseDecimal } from '../decimal.ts';
import { parseLength } from '../parse-length.ts';
import { parseLengthRate } from '../rate.ts';
import { parseWeight } from '../weight.ts';
import { lengthFrom, LONGEST, LONGEST_RUN, ticksPer } from '../length.ts';
import type { Ticks } from '../length.ts';

/** A fault's two halves travel in one message, split again where faults are told. */
export function fault(wrong: string, right: string): string {
  return `${wrong}; ${right}`;
}

const LENGTH_TEXT = 'A number in the file\'s units, or text as people write it: "84 1/2", "7\' 0 1/2\\"", "214.6 cm".';

/** A length up to `longest`: a bare number in `units`, or text. Text is tried in inches here; the parse proper knows the units. */
function lengthUpTo(longest: Ticks) {
  const metres = longest / ticksPer('m');
  // In the smallest unit of a file: no bare number of any unit may be more.
  const most = longest / ticksPer('mm');
  return z
    .union([z.number(), z.string()], {
      error: fault('is not a length', 'give a number, or text such as "84 1/2" or "214.6 cm"'),
    })
    .superRefine((value, context) => {
      if (typeof value === 'number') {
        if (!Number.isFinite(value) || value < 0)
          context.addIssue({ code: 'custom', message: fault(`${value} is negative`, 'give a length of 0 or more') });
        else if (value > most)
          context.addIssue({
            code: 'custom',
            message: fault(`${value} is longer than ${metres} m`, `give a length of 0 to ${metres} m`),
          });
        return;
      }
      const parsed = parseLength(value, 'in', longest);
      if (!parsed.ok) context.addIssue({ code: 'custom', message: fault(parsed.wrong, parsed.right) });
    })
    .meta({ description: LENGTH_TEXT });
}

export const wireLength = lengthUpTo(LONGEST);
/** Along the bolt. */
export const wireRun = lengthUpTo(LONGEST_RUN);

export const wireName = z
  .string({ error: fault('is not text', 'give a name between quotes') })
  .refine((value) => value.trim() !== '', { error: fault('is empty', 'give it a name') });

export const wireText = z.string({ error: fault('is not text', 'give text between quotes') });

/** A share from 0 to 1. */
export const wireShare = z
  .number({ error: fault('is not a number', 'give a share from 0 to 1, for example 0.03') })
  .min(0, { error: fault('is below 0', 'give a share from 0 to 1') })
  .max(1, { error: fault('is above 1', 'give a share from 0 to 1, for example 0.30 for 30 %') });

/** A share that leaves something: what is lost in cleaning, or how far a measured share may be off. */
export const wireLoss = wireShare.refine((value) => value < 1, {
  error: fault('is all of it', 'give a share below 1, for example 0.03 for 3 %'),
});

/** Fullness from 1 to 6, in thousandths at the finest. */
export const wireFullness = z
  .number({ error: fault('is not a number', 'give the fullness as a ratio, for example 2.5') })
  .min(1, { error: fault('is less than flat cloth', 'give 1 or more, for example 2.5') })
  .max(6, { error: fault('is more than six times', 'give a ratio such as 2.5, not a per cent') })
  .refine((value) => Math.abs(value * 1000 - Math.round(value * 1000)) < 1e-6, {
    error: fault('has more than three decimals', 'give thousandths at the finest, for example 2.473'),
  });

/** An exact decimal, as text or a number: `"38.00"`. */
export const wireAmount = z
  .union([z.string(), z.number()], { error: fault('is not an amount', 'give it as text, for example "38.00"') })
  .refine((value) => parseDecimal(value) !== null && !String(value).trim().startsWith('-'), {
    error: fault('is not an amount', 'give it as text, for example "38.00"'),
  });

/** A multiplier or share as an exact decimal, 0 or more. */
export const wireFactor = z
  .union([z.number(), z.string()], { error: fault('is not a number', 'give a number, for example 0.0625') })
  .refine((value) => parseDecimal(value) !== null && !String(value).trim().startsWith('-'), {
    error: fault('is not a number of 0 or more', 'give a number, for example 0.0625'),
  });

export const wireLengthRate = wireText
  .refine((value) => parseLengthRate(value) !== null, {
    error: fault('is not a price by length', 'give it as "42.00/yd" or "38.50/m"'),
  })
  .meta({ description: 'What it costs the decorator by the yard or metre: "42.00/yd", "38.50/m".' });

export const wireWeight = wireText
  .refine((value) => parseWeight(value, lengthFrom(54, 'in')) !== null, {
    error: fault('is not a cloth weight', 'give it as "7 oz/yd2", "5 oz/yd" (a running yard) or "240 g/m2"'),
  })
  .meta({ description: '"7 oz/yd2" (a square yard), "5 oz/yd" (a running yard of this width) or "240 g/m2".' });

export const wireDate = wireText.refine(isCalendarDate, {
  error: fault('is not a date', 'give year, month and day, for example "2026-11-25"'),
});

/** True for a day that exists: `2026-02-30` does not. */
export function isCalendarDate(text: string): boolean {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!found) return false;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return month >= 1 && month <= 12 && day >= 1 && day <= (days[month - 1] ?? 0);
}

export const wireColour = wireText.regex(/^#[0-9a-fA-F]{6}$/, {
  error: fault('is not a colour', 'give it as "#c9b79a"'),
});

/** One of a closed list; the fault prints the list. */
export function wireChoice<const T extends readonly [string, ...string[]]>(values: T) {
  return z.enum(values, {
    error: (issue) => fault(`${JSON.stringify(issue.input)} is not known here`, `give one of ${values.join(', ')}`),
  });
}

export function wireFlag() {
  return z.boolean({ error: fault('is not true or false', 'give true or false without quotes') });
}
