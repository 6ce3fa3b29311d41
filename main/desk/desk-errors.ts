/** The contract's errors, one function each, and how errors of the rooms below become one of them. */
import { ORPCError } from '@orpc/server';
import type * as z from 'zod';
import { ERRORS } from '#shared/contract/errors.ts';
import type { Fault } from '#shared/fault.ts';
import { FileTrouble } from '#main/files/file-trouble.ts';
import { MachineLacks } from '#main/host/machine.ts';
import { PortfolioUnavailable, PortfolioWriteFailed } from '#main/portfolio/portfolio-trouble.ts';

type ErrorCode = keyof typeof ERRORS;
type DataOf<Code extends ErrorCode> = z.infer<(typeof ERRORS)[Code]['data']>;
export type DeskError = ORPCError<string, unknown>;

function make<Code extends ErrorCode>(code: Code, data: DataOf<Code>, cause?: unknown): DeskError {
  const { status, message } = ERRORS[code];
  return new ORPCError<string, unknown>(code, { defined: true, status, message, data, cause });
}

export function badInput(faults: readonly Fault[]): DeskError {
  return make('BAD_INPUT', { faults: [...faults] });
}

export type Findable =
  | 'client'
  | 'project'
  | 'room'
  | 'opening'
  | 'treatment'
  | 'cloth'
  | 'remnant'
  | 'cutting'
  | 'proposal'
  | 'sample household';

export function notFound(what: Findable, id: string): DeskError {
  return make('NOT_FOUND', { what, id });
}

export function refused(why: string, remedy: string): DeskError {
  return make('REFUSED', { why, remedy });
}

export function fileTrouble(file: string, says: string, remedy: string, cause?: unknown): DeskError {
  return make('FILE_TROUBLE', { file, says, remedy }, cause);
}

/** What is found, or NOT_FOUND thrown. */
export function mustFind<T>(found: T | null, what: Findable, id: string): T {
  if (found === null) throw notFound(what, id);
  return found;
}

/** The contract's error for what was thrown below; null when it is a fault of ours. */
export function tellDeskError(error: unknown): DeskError | null {
  if (error instanceof ORPCError) return error as DeskError;
  if (error instanceof PortfolioUnavailable) return make('PORTFOLIO_UNAVAILABLE', error.trouble, error);
  if (error instanceof PortfolioWriteFailed || error instanceof FileTrouble)
    return fileTrouble(error.file, error.message, error.remedy, error);
  if (error instanceof MachineLacks) return make('LACKING', { what: error.act, instead: error.message }, error);
  return null;
}
