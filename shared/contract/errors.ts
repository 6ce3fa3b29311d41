/** Errors that are expected, declared once: each with what a screen needs to say field, fault and remedy. */
import * as z from 'zod';

const fault = z.object({ path: z.string(), wrong: z.string(), right: z.string() });

export const PORTFOLIO_TROUBLES = ['newer', 'damaged', 'unwritable', 'missing', 'busy'] as const;
export type PortfolioTrouble = (typeof PORTFOLIO_TROUBLES)[number];

export const portfolioTrouble = z.object({
  trouble: z.enum(PORTFOLIO_TROUBLES),
  /** The file, as the person would look for it. */
  file: z.string(),
  says: z.string(),
  remedy: z.string(),
});
export type ToldTrouble = z.infer<typeof portfolioTrouble>;

export const ERRORS = {
  /** What was given is wrong; every fault with its path. */
  BAD_INPUT: { status: 422, message: 'What was given is not right.', data: z.object({ faults: z.array(fault) }) },
  NOT_FOUND: {
    status: 404,
    message: 'It is not there any more.',
    data: z.object({ what: z.string(), id: z.string() }),
  },
  /** The change would break a promise: a sent proposal, a sample in use. */
  REFUSED: {
    status: 409,
    message: 'That cannot be done now.',
    data: z.object({ why: z.string(), remedy: z.string() }),
  },
  PORTFOLIO_UNAVAILABLE: { status: 503, message: 'The portfolio cannot be opened.', data: portfolioTrouble },
  /** The world's: disk full, folder gone, no right to write. */
  FILE_TROUBLE: {
    status: 507,
    message: 'The file could not be written.',
    data: z.object({ file: z.string(), says: z.string(), remedy: z.string() }),
  },
  /** The shell that runs now has no such thing. */
  LACKING: {
    status: 501,
    message: 'This window cannot do that.',
    data: z.object({ what: z.string(), instead: z.string() }),
  },
} as const;
