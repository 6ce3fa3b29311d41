/** The ways in which a portfolio cannot be opened or written, each with a way out. Told once, here; the file stays as it is. */
import Database from 'better-sqlite3';
import path from 'node:path';
import type { PortfolioTrouble, ToldTrouble } from '#shared/contract/errors.ts';

/** The portfolio cannot be used. Nothing in it was changed. */
export class PortfolioUnavailable extends Error {
  readonly trouble: ToldTrouble;

  constructor(trouble: ToldTrouble, cause?: unknown) {
    super(`${trouble.says} ${trouble.remedy}`, { cause });
    this.name = 'PortfolioUnavailable';
    this.trouble = trouble;
  }
}

/** One write failed for the disk's sake; the portfolio is as it was before, and may still be read. */
export class PortfolioWriteFailed extends Error {
  readonly file: string;
  readonly remedy: string;

  constructor(file: string, says: string, remedy: string, cause: unknown) {
    super(says, { cause });
    this.name = 'PortfolioWriteFailed';
    this.file = file;
    this.remedy = remedy;
  }
}

const REMEDIES: Readonly<Record<PortfolioTrouble, (file: string) => string>> = {
  newer: () => 'Open it with the newer Linenfold that wrote it. The file was not changed.',
  damaged: (file) =>
    `Move ${path.basename(file)} aside, copy the newest file of "${path.join(path.dirname(file), 'backups')}" into its place ` +
    `under the same name, and try again. The file was not changed.`,
  unwritable: (file) => `Give yourself the right to write in "${path.dirname(file)}", or free the disk, and try again.`,
  missing: (file) =>
    `Put ${path.basename(file)} back and try again. To begin anew, move all else out of "${path.dirname(file)}" first.`,
  busy: () => 'Close the other Linenfold, or wait until it has ended, and try again.',
};

export function makeTrouble(
  trouble: PortfolioTrouble,
  file: string,
  says: string,
  cause?: unknown,
): PortfolioUnavailable {
  return new PortfolioUnavailable({ trouble, file, says, remedy: REMEDIES[trouble](file) }, cause);
}

/** What SQLite's own error means for the portfolio. Returns the error itself when it is our fault, not the file's. */
export function tellTrouble(error: unknown, file: string): unknown {
  if (!(error instanceof Database.SqliteError)) return error;
  const code = error.code;
  if (/^SQLITE_(BUSY|LOCKED)/.test(code)) return makeTrouble('busy', file, 'The portfolio is open elsewhere.', error);
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code))
    return makeTrouble('damaged', file, `The portfolio is damaged: ${error.message}.`, error);
  if (/^SQLITE_(READONLY|CANTOPEN|PERM|AUTH)/.test(code))
    return makeTrouble('unwritable', file, 'The portfolio, or the folder it lies in, cannot be written.', error);
  if (code.startsWith('SQLITE_FULL'))
    return new PortfolioWriteFailed(
      file,
      'The disk is full.',
      'Free some space, then do it again. Nothing was lost.',
      error,
    );
  if (code.startsWith('SQLITE_IOERR'))
    return new PortfolioWriteFailed(
      file,
      `The disk answered with an error (${code}).`,
      'Look after the disk and copy the data folder to another one, then do it again.',
      error,
    );
  return error;
}

/** The same while the file is being opened, when a disk that refuses means that nothing can be written at all. */
export function tellOpeningTrouble(error: unknown, file: string): unknown {
  const told = tellTrouble(error, file);
  return told instanceof PortfolioWriteFailed ? makeTrouble('unwritable', file, told.message, error) : told;
}
