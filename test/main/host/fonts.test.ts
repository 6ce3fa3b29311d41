import { mkdtempSync, readdirSync, rmSync, copyFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { findFontFile, fontFiles, readFonts } from '#main/host/fonts.ts';

/** OpenType 1.9, "Table directory": the first four bytes of a font with TrueType outlines. */
const trueType = Buffer.from([0, 1, 0, 0]);

it('reads TrueType files from node_modules, and the same from a folder', async () => {
  const fonts = await readFonts(null);
  for (const bytes of Object.values(fonts) as Uint8Array[]) expect(Buffer.from(bytes.subarray(0, 4))).toEqual(trueType);

  const folder = mkdtempSync(path.join(tmpdir(), 'linenfold-fonts-'));
  for (const file of Object.values(fontFiles)) copyFileSync(findFontFile(file), path.join(folder, path.basename(file)));
  expect(readdirSync(folder)).toHaveLength(4);
  expect(await readFonts(folder)).toEqual(fonts);
  rmSync(folder, { recursive: true });
});
