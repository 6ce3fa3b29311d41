import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { PaperFonts } from '#app/documents/document-given.ts';

/**
 * The TrueType files that papers embed; the page shows the same ones. Each value is the file inside its package (SIL Open
 * Font License 1.1).
 */
export const fontFiles = {
  text: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  textSemiBold: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  display: '@expo-google-fonts/fraunces/400Regular/Fraunces_400Regular.ttf',
  displaySemiBold: '@expo-google-fonts/fraunces/600SemiBold/Fraunces_600SemiBold.ttf',
} as const satisfies Record<keyof PaperFonts, string>;

/** Reads every font: from `folder`, where the build has put them under their own names, or from node_modules when null. */
export async function readFonts(folder: string | null): Promise<PaperFonts> {
  const read = (file: string): Promise<Uint8Array> =>
    readFile(folder === null ? findFontFile(file) : path.join(folder, path.posix.basename(file)));
  const [text, textSemiBold, display, displaySemiBold] = await Promise.all([
    read(fontFiles.text),
    read(fontFiles.textSemiBold),
    read(fontFiles.display),
    read(fontFiles.displaySemiBold),
  ]);
  return { text, textSemiBold, display, displaySemiBold };
}

/** Where a font lies in node_modules. */
export function findFontFile(file: string): string {
  return createRequire(import.meta.url).resolve(file);
}
