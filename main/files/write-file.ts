/**
 * Files are written whole or not at all: into a temporary file beside their place, flushed, then put under their name.
 * What is there already under that name is never lost unless the person chose it in a dialog.
 */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import path from 'node:path';
import { tellFileTrouble } from './file-trouble.ts';

/**
 * Writes into `folder` (made when it is not there) under `name`, or `name (2)` and so on when something else lies there.
 * Returns the path, which is that of the old file when it holds the same bytes already. Throws `FileTrouble`.
 */
export function writeBeside(folder: string, name: string, bytes: Uint8Array): string {
  const wanted = path.join(folder, name);
  try {
    mkdirSync(folder, { recursive: true });
    const temporary = writeTemporary(folder, bytes);
    try {
      return claimName(temporary, wanted, bytes);
    } finally {
      rmSync(temporary, { force: true });
      flushFolder(folder);
    }
  } catch (error) {
    throw tellFileTrouble(error, wanted);
  }
}

/** Writes to exactly this path, over what is there: the person chose it in a dialog, which asked. Throws `FileTrouble`. */
export function writeOver(file: string, bytes: Uint8Array): void {
  const folder = path.dirname(file);
  try {
    const temporary = writeTemporary(folder, bytes);
    try {
      renameSync(temporary, file);
    } catch (error) {
      rmSync(temporary, { force: true });
      throw error;
    }
    flushFolder(folder);
  } catch (error) {
    throw tellFileTrouble(error, file);
  }
}

function writeTemporary(folder: string, bytes: Uint8Array): string {
  const temporary = path.join(folder, `.linenfold-${randomBytes(8).toString('hex')}.tmp`);
  const handle = openSync(temporary, 'wx');
  try {
    for (let written = 0; written < bytes.byteLength;) written += writeSync(handle, bytes, written);
    fsyncSync(handle);
  } catch (error) {
    closeSync(handle);
    rmSync(temporary, { force: true });
    throw error;
  }
  closeSync(handle);
  return temporary;
}

/** The first free name for what lies in `temporary`; two writers at once never get the same. */
function claimName(temporary: string, wanted: string, bytes: Uint8Array): string {
  const { dir, name, ext } = path.parse(wanted);
  for (let count = 1; ; count += 1) {
    const candidate = count === 1 ? wanted : path.join(dir, `${name} (${count})${ext}`);
    if (existsSync(candidate)) {
      if (holds(candidate, bytes)) return candidate;
    } else if (take(temporary, candidate)) {
      return candidate;
    }
  }
}

/** False when somebody else took the name in between. */
function take(temporary: string, candidate: string): boolean {
  try {
    linkSync(temporary, candidate);
    return true;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'EEXIST') return false;
    if (code === 'EACCES' || code === 'EROFS' || code === 'ENOSPC') throw error;
    return takeWithoutLinks(temporary, candidate);
  }
}

/** Some disks (FAT, network shares) know no links: the name is taken by an empty file, which the rename replaces. */
function takeWithoutLinks(temporary: string, candidate: string): boolean {
  try {
    closeSync(openSync(candidate, 'wx'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
  renameSync(temporary, candidate);
  return true;
}

function holds(file: string, bytes: Uint8Array): boolean {
  const stats = statSync(file);
  return stats.isFile() && stats.size === bytes.byteLength && readFileSync(file).equals(bytes);
}

/** The name itself is on disk only when its folder is; Windows has no way to ask for it. */
function flushFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
