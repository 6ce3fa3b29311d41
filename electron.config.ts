/**
 * How the program is built: main and host process, preload and page, all into out/. Always passed by `-c
 * electron.config.ts`: the build tool looks only for a file of another name.
 */
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';
import path from 'node:path';
import { copyFonts } from './build/copy-fonts.ts';

const root = import.meta.dirname;
/** CommonJS, which every Electron from 25 on loads, under names that "type": "module" does not mistake. */
const commonJs = {
  format: 'cjs' as const,
  entryFileNames: '[name].cjs',
  chunkFileNames: 'chunks/[name]-[hash].cjs',
};

export default defineConfig({
  main: {
    plugins: [copyFonts(path.join(root, 'out', 'fonts'))],
    build: {
      sourcemap: true,
      rolldownOptions: {
        input: {
          main: path.join(root, 'main/shell/main.ts'),
          host: path.join(root, 'main/host/host.ts'),
          'cut-paper-thread': path.join(root, 'main/host/cut-paper-thread.ts'),
        },
        output: commonJs,
      },
    },
  },
  preload: {
    build: {
      rolldownOptions: {
        input: { preload: path.join(root, 'main/shell/preload.ts') },
        output: commonJs,
      },
    },
  },
  renderer: {
    root: path.join(root, 'renderer'),
    plugins: [svelte({ configFile: false })],
    build: {
      rolldownOptions: { input: path.join(root, 'renderer/index.html') },
      // A font or picture in the page's own files keeps the policy simple: nothing is inlined as data.
      assetsInlineLimit: 0,
    },
  },
});
