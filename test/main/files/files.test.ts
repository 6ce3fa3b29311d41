import fc from 'fast-check';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { FileTrouble } from '#main/files/file-trouble.ts';
import { makeFileName } from '#main/files/make-file-name.ts';
import { writeBeside, writeOver } from '#main/files/write-file.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'linenfold-files-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('a file name', () => {
  // Rules: learn.microsoft.com, "Naming Files, Paths, and Namespaces".
  test.each([
    ['Ada Fenn', 'Ada Fenn'],
    ['Zoë Świątek-Łąka', 'Zoë Świątek-Łąka'],
    ['a/b\\c:d*e?f"g<h>i|j', 'a-b-c-d-e-f-g-h-i-j'],
    ['../../etc/passwd', '-..-etc-passwd'],
    ['Fenn & Co.', 'Fenn & Co'],
    ['trailing dots... ', 'trailing dots'],
    ['.hidden', 'hidden'],
    ['CON', '_CON'],
    ['nul.txt', '_nul.txt'],
    ['com1', '_com1'],
    ['LPT9.tar.gz', '_LPT9.tar.gz'],
    ['console', 'console'],
    ['line\nbreak\ttab', 'line break tab'],
    ['\u202Efdp.exe', 'fdp.exe'],
    ['', 'Client'],
    ['  ...  ', 'Client'],
  ])('%j becomes %j', (text, expected) => {
    expect(makeFileName(text, 'Client')).toBe(expected);
  });

  test('is safe on every system, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.string({ unit: 'grapheme' }),
          fc.constantFrom('aux', 'PRN.x', 'a'.repeat(400), 'ł'.repeat(300)),
        ),
        (text) => {
          const name = makeFileName(text, 'Paper', '.pdf');
          expect(name.endsWith('.pdf')).toBe(true);
          expect(Buffer.byteLength(name)).toBeLessThanOrEqual(125);
          expect(name).not.toMatch(/[<>:"/\\|?*\p{Cc}\p{Cs}]/u);
          expect(name).not.toMatch(/^[. ]|[. ]\.pdf$/);
          expect(name.split('.')[0]).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)$/i);
        },
      ),
    );
  });
});

describe('writing beside what is there', () => {
  const bytes = (text: string) => Buffer.from(text);

  test('makes the folder, leaves no temporary file, and finds its own again', () => {
    const deep = path.join(folder, 'a', 'b');
    const first = writeBeside(deep, 'x.pdf', bytes('one'));
    expect(first).toBe(path.join(deep, 'x.pdf'));
    expect(writeBeside(deep, 'x.pdf', bytes('one'))).toBe(first);
    expect(readdirSync(deep)).toEqual(['x.pdf']);
  });

  test('never writes over something else', () => {
    writeFileSync(path.join(folder, 'x.pdf'), 'hers');
    mkdirSync(path.join(folder, 'x (2).pdf'));
    expect(writeBeside(folder, 'x.pdf', bytes('ours'))).toBe(path.join(folder, 'x (3).pdf'));
    expect(readFileSync(path.join(folder, 'x.pdf'), 'utf8')).toBe('hers');
    expect(readFileSync(path.join(folder, 'x (3).pdf'), 'utf8')).toBe('ours');
  });

  test('a folder that cannot be made is a trouble with a way out', () => {
    writeFileSync(path.join(folder, 'blocked'), '');
    expect(() => writeBeside(path.join(folder, 'blocked', 'in'), 'x.pdf', bytes('one'))).toThrow(FileTrouble);
    try {
      writeBeside(path.join(folder, 'blocked'), 'x.pdf', bytes('one'));
    } catch (error) {
      expect(error).toMatchObject({
        message: 'A file lies where a folder should be.',
        remedy: expect.stringMatching(/folder/),
      });
    }
  });
});

test('what a person chose in a dialog is written over whole', () => {
  const file = path.join(folder, 'chosen.pdf');
  writeFileSync(file, 'old and longer');
  writeOver(file, Buffer.from('new'));
  expect(readFileSync(file, 'utf8')).toBe('new');
  expect(readdirSync(folder)).toEqual(['chosen.pdf']);
  expect(() => writeOver(path.join(folder, 'gone', 'x.pdf'), Buffer.from('x'))).toThrow(FileTrouble);
  expect(() => writeOver(folder, Buffer.from('x'))).toThrow(FileTrouble);
});
