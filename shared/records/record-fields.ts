/** Leaves of the portfolio's records: lengths are whole ticks, instants are ISO text, ids are opaque text. */
import * as z from 'zod';
import { LONGEST, LONGEST_RUN, ticksPer } from '../length.ts';
import type { Ticks } from '../length.ts';

export const recordId = z.string().min(1).max(64);

function ticksUpTo(longest: Ticks) {
  return z.custom<Ticks>(
    (value) => typeof value === 'number' && Number.isSafeInteger(value) && value >= 0 && value <= longest,
    {
      error: `is not a whole number of ticks; give a length of 0 to ${longest / ticksPer('m')} m`,
    },
  );
}

export const wholeTicks = ticksUpTo(LONGEST);
/** Along the bolt. */
export const runTicks = ticksUpTo(LONGEST_RUN);

/** Null where nobody has measured yet. */
export const maybeTicks = wholeTicks.nullable();

/** `2026-11-25T10:42:00.000Z`. */
export const instant = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?Z$/);

/** Text that could not be parsed yet, kept as it was typed, by field. */
export const drafts = z.record(z.string().max(60), z.string().max(2000));
export type Drafts = z.infer<typeof drafts>;

export const shortText = z.string().max(400);
export const longText = z.string().max(20000);
