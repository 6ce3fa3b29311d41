import { copyFileSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Plugin } from 'vite';
import { findFontFile, fontFiles } from '../main/host/fonts.ts';

/** Puts the fonts that papers embed beside the built program: node_modules is not part of it. */
export function copyFonts(folder: string): Plugin {
  return {
    name: 'linenfold:copy-fonts',
    closeBundle() {
      mkdirSync(folder, { recursive: true });
      for (const file of Object.values(fontFiles)) {
        copyFileSync(findFontFile(file), path.join(folder, path.posix.basename(file)));
      }
    },
  };
}
