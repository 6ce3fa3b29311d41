/**
 * Looks at a portfolio file before anything may write to it: whether it is there, ours, sound, and of a form that this
 * program reads. The header is read as bytes first, so that a newer or foreign file is not even opened by SQLite.
 */
import Database from 'better-sqlite3';
import { closeSync, existsSync, fstatSync, openSync, readdirSync, readSync, statSync } from 'node:fs';
import path from 'node:path';
import { readVersion } from './migrate.ts';
import { makeTrouble, tellOpeningTrouble } from './portfolio-trouble.ts';

/** "LNFD": says that a SQLite file is a portfolio of Linenfold. */
export const APPLICATION_ID = 0x4c4e4644;

/** `new`: nothing in it yet. Else the number of its form. */
export type FoundFile = { readonly state: 'new' } | { readonly state: 'ours'; readonly version: number };

/** Throws `PortfolioUnavailable` when the file cannot be used. Never changes it. */
export function inspectFile(file: string, newest: number, busyTimeout: number): FoundFile {
  if (!existsSync(file)) {
    refuseWhenLost(file);
    return { state: 'new' };
  }
  const header = readHeader(file);
  if (header === null) return { state: 'new' };
  refuseForeign(file, header.applicationId);
  refuseNewer(file, header.version, newest);
  return inspectDatabase(file, newest, busyTimeout);
}

/** A log or backups without the file itself: it was moved away, and a fresh one in its place would hide that. */
function refuseWhenLost(file: string): void {
  const log = `${file}-wal`;
  const backups = path.join(path.dirname(file), 'backups');
  const left =
    (existsSync(log) && statSync(log).size > 0) ||
    (existsSync(backups) && readdirSync(backups).some((name) => name.endsWith('.sqlite')));
  if (left)
    throw makeTrouble(
      'missing',
      file,
      `The portfolio is gone from "${path.dirname(file)}", yet parts of it are there.`,
    );
}

interface Header {
  readonly version: number;
  readonly applicationId: number;
}

/** Offsets by "Database File Format" (sqlite.org/fileformat2.html): user version at 60, application id at 68. */
function readHeader(file: string): Header | null {
  let handle: number;
  try {
    handle = openSync(file, 'r');
  } catch (error) {
    throw makeTrouble('unwritable', file, 'The portfolio cannot be read.', error);
  }
  try {
    const stats = fstatSync(handle);
    if (!stats.isFile()) throw makeTrouble('unwritable', file, 'A folder lies where the portfolio should be.');
    if (stats.size === 0) return null;
    const bytes = Buffer.alloc(100);
    const count = readSync(handle, bytes, 0, 100, 0);
    if (count < 100 || bytes.toString('latin1', 0, 16) !== 'SQLite format 3\0')
      throw makeTrouble('damaged', file, 'The portfolio is damaged: its beginning is not what it should be.');
    return { version: bytes.readUInt32BE(60), applicationId: bytes.readUInt32BE(68) };
  } finally {
    closeSync(handle);
  }
}

function refuseForeign(file: string, applicationId: number): void {
  if (applicationId !== 0 && applicationId !== APPLICATION_ID)
    throw makeTrouble('damaged', file, 'The file under the name of the portfolio was written by another program.');
}

function refuseNewer(file: string, version: number, newest: number): void {
  if (version > newest)
    throw makeTrouble(
      'newer',
      file,
      `The portfolio was written by a newer Linenfold (its form is ${version}; this program reads up to ${newest}).`,
    );
}

/** Through a read-only connection, which also sees what still lies in the log. */
function inspectDatabase(file: string, newest: number, busyTimeout: number): FoundFile {
  let db: Database.Database | undefined;
  try {
    db = new Database(file, { readonly: true, fileMustExist: true, timeout: busyTimeout });
    const version = readVersion(db);
    const applicationId = Number(db.pragma('application_id', { simple: true }));
    const objects = Number(db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get());
    const blank = applicationId === 0 && version === 0 && objects === 0;
    if (!blank && applicationId === 0)
      throw makeTrouble('damaged', file, 'The file under the name of the portfolio was written by another program.');
    refuseForeign(file, applicationId);
    refuseNewer(file, version, newest);
    const check = String(db.pragma('quick_check(1)', { simple: true }));
    if (check !== 'ok') throw makeTrouble('damaged', file, `The portfolio is damaged: ${check}.`);
    return blank ? { state: 'new' } : { state: 'ours', version };
  } catch (error) {
    throw tellOpeningTrouble(error, file);
  } finally {
    db?.close();
  }
}
