import { spawnSync } from 'node:child_process';
import { chmodSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { clients } from '#main/portfolio/clients.ts';
import { makeTestFolder, testClient } from './test-portfolio.ts';
import type { TestFolder } from './test-portfolio.ts';

let place: TestFolder;
beforeEach(() => {
  place = makeTestFolder();
  const portfolio = place.open();
  portfolio.write((writing) => clients.add(writing, testClient('a')));
  portfolio.close();
});
afterEach(() => {
  chmodSync(place.folder, 0o755);
  place.remove();
});

/** What a person without rights gets. The superuser may write everywhere, so somebody else opens it then. */
function openAsSomebody(): { trouble?: string; opened?: boolean } {
  const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
  const script = path.join(import.meta.dirname, 'open-and-tell.ts');
  const { stdout, stderr } = spawnSync(process.execPath, [script, place.file], { encoding: 'utf8', ...nobody });
  expect(stderr.replace(/.*ExperimentalWarning.*\n.*\n/, '')).toBe('');
  return JSON.parse(stdout) as { trouble?: string; opened?: boolean };
}

test.runIf(process.platform !== 'win32').each([
  ['the file', 0o444, 0o777],
  ['the folder', 0o644, 0o555],
  ['both', 0o444, 0o555],
  ['not even readable', 0o000, 0o777],
])('a portfolio that may only be read is unwritable by name, and stays as it is: %s', (_name, file, folder) => {
  const before = { bytes: readFileSync(place.file), mtime: statSync(place.file).mtimeMs };
  chmodSync(place.file, file);
  chmodSync(place.folder, folder);
  expect(openAsSomebody()).toEqual({ trouble: 'unwritable' });
  chmodSync(place.file, 0o644);
  expect(readFileSync(place.file).equals(before.bytes)).toBe(true);
  expect(statSync(place.file).mtimeMs).toBe(before.mtime);
});
