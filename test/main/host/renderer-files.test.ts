import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readRendererFile } from '#main/host/renderer-files.ts';

let folder: string;
beforeAll(() => {
  const parent = mkdtempSync(path.join(tmpdir(), 'linenfold-page-'));
  folder = path.join(parent, 'renderer');
  mkdirSync(path.join(folder, 'assets'), { recursive: true });
  mkdirSync(path.join(parent, 'renderer-not'));
  writeFileSync(path.join(folder, 'index.html'), 'page');
  writeFileSync(path.join(folder, 'assets/a.js'), 'code');
  writeFileSync(path.join(folder, 'notes.txt'), 'private');
  writeFileSync(path.join(parent, 'secret.json'), 'secret');
  writeFileSync(path.join(parent, 'renderer-not/a.js'), 'secret');
});
afterAll(() => {
  rmSync(path.dirname(folder), { recursive: true, force: true });
});

describe('files of the page', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', 'page'],
    ['/index.html', 'text/html; charset=utf-8', 'page'],
    ['/assets/a.js', 'text/javascript; charset=utf-8', 'code'],
  ])('%s is served', async (urlPath, type, text) => {
    const file = await readRendererFile(folder, urlPath);
    expect([file?.type, Buffer.from(file?.bytes ?? []).toString()]).toEqual([type, text]);
  });

  it.each([
    ['a file that is not there', '/assets/b.js'],
    ['a folder', '/assets'],
    ['a file below a file', '/index.html/a.js'],
    ['a file of an ending that is not served', '/notes.txt'],
    ['a path that climbs out', '/../secret.json'],
    ['a path that climbs out, encoded', '/%2e%2e/secret.json'],
    ['a path that climbs out, slash encoded', '/..%2fsecret.json'],
    ['a path that climbs out with a backslash', '/..%5csecret.json'],
    ['a folder whose name begins alike', '/../renderer-not/a.js'],
    ['a path with a zero byte', '/index.html%00.js'],
    ['a broken percent sequence', '/%E0%A4%A'],
  ])('nothing is served for %s', async (_name, urlPath) => {
    expect(await readRendererFile(folder, urlPath)).toBeNull();
  });
});
