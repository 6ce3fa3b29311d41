/** The tests as vitest sees them, passed by flag: `vitest run --config build/vitest.config.ts --project unit`. */
import { svelte } from '@sveltejs/vite-plugin-svelte';
import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = path.dirname(import.meta.dirname);
/** Long beyond any test, also on a slow and busy machine: only what hangs is ended by it. */
const HANGS = 180_000;
/** A browser or Electron is started in each file: one file at a time is fastest on two cores. */
const endToEnd = {
  fileParallelism: false,
  testTimeout: HANGS,
  hookTimeout: HANGS,
  expect: { poll: { timeout: 20_000 } },
};

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        plugins: [svelte({ configFile: false })],
        test: { name: 'unit', include: ['test/**/*.test.ts'], testTimeout: HANGS },
      },
      { root, test: { name: 'browser', include: ['test/end-to-end/browser/**/*.e2e.ts'], ...endToEnd } },
      { root, test: { name: 'electron', include: ['test/end-to-end/electron/**/*.e2e.ts'], ...endToEnd } },
    ],
  },
});
