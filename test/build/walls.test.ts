import { ESLint } from 'eslint';
import path from 'node:path';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';

/** Lints small texts as if they stood in a folder: each wall is broken once, and a door beside it used once. */
const root = path.resolve(import.meta.dirname, '../..');
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: path.join(root, 'build/eslint.config.js'),
  // The texts are no files on the disk, so the rules that need types are left out.
  overrideConfig: [{ files: ['**/*.ts'], ...tseslint.configs.disableTypeChecked }],
});

async function lint(file: string, text: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${text}\n`, { filePath: path.join(root, file) });
  return (result?.messages ?? []).map((message) => `${message.ruleId ?? 'parse'}: ${message.message}`);
}

const broken: readonly (readonly [name: string, file: string, text: string, rule: string])[] = [
  ['shared imports app', 'shared/a.ts', "export * from '#app/plan/a.ts';", 'walls/imports'],
  ['shared imports main', 'shared/a.ts', "import '#main/desk/a.ts';", 'walls/imports'],
  ['shared climbs out by a relative path', 'shared/a.ts', "import '../app/plan/a.ts';", 'walls/imports'],
  ['app imports main', 'app/plan/a.ts', "import '#main/desk/a.ts';", 'walls/imports'],
  [
    'app imports main for a type',
    'app/plan/a.ts',
    "import type { A } from '#main/desk/a.ts'; export type B = A;",
    'walls/imports',
  ],
  ['app imports renderer', 'app/plan/a.ts', "import '../../renderer/main.ts';", 'walls/imports'],
  ['main imports renderer', 'main/desk/a.ts', "import '../../renderer/main.ts';", 'walls/imports'],
  ['renderer imports main', 'renderer/state/a.ts', "import '#main/desk/a.ts';", 'walls/imports'],
  [
    'renderer imports main later',
    'renderer/state/a.ts',
    "export const a = import('#main/desk/a.ts');",
    'walls/imports',
  ],
  [
    'a component imports main',
    'renderer/places/A.svelte',
    '<script lang="ts">import \'#main/desk/a.ts\';</script>',
    'walls/imports',
  ],
  ['the desk imports the Electron shell', 'main/desk/a.ts', "import '#main/shell/menu.ts';", 'walls/imports'],
  ['the desk imports the browser shell', 'main/desk/a.ts', "import '../browser/serve.ts';", 'walls/imports'],
  ['one shell imports another', 'main/shell/a.ts', "import '#main/browser/serve.ts';", 'walls/imports'],
  ['shared imports a module of Node', 'shared/a.ts', "import 'node:fs';", 'walls/imports'],
  ['app imports a module of Node', 'app/plan/a.ts', "import 'node:crypto';", 'walls/imports'],
  ['renderer imports a module of Node', 'renderer/state/a.ts', "import 'node:path';", 'walls/imports'],
  ['preload imports a module of Node', 'main/shell/preload.ts', "import 'node:fs';", 'walls/imports'],
  ['a module of Node without its prefix', 'main/desk/a.ts', "import 'fs';", 'walls/imports'],
  ['the host imports electron', 'main/host/a.ts', "import { app } from 'electron'; app.quit();", 'walls/imports'],
  ['the host requires electron', 'main/host/a.ts', "export const a: unknown = require('electron');", 'walls/imports'],
  ['renderer imports electron', 'renderer/state/a.ts', "import 'electron';", 'walls/imports'],
  ['app imports pdf-lib outside documents', 'app/proposal/a.ts', "import 'pdf-lib';", 'walls/imports'],
  ['main imports fontkit', 'main/desk/a.ts', "import 'fontkit';", 'walls/imports'],
  ['renderer imports the papers', 'renderer/state/a.ts', "import '#app/documents/a.ts';", 'walls/imports'],
  [
    'app imports the papers, and so would renderer',
    'app/proposal/a.ts',
    "import '#app/documents/a.ts';",
    'walls/imports',
  ],
  ['the desk imports better-sqlite3', 'main/desk/a.ts', "import 'better-sqlite3';", 'walls/imports'],
  [
    'the desk imports kysely',
    'main/desk/a.ts',
    "import type { Kysely } from 'kysely'; export type A = Kysely<object>;",
    'walls/imports',
  ],
  ['app imports zod', 'app/plan/a.ts', "import 'zod';", 'walls/imports'],
  ['a package that has no room', 'main/desk/a.ts', "import 'fast-check';", 'walls/imports'],
  ['an import cycle', 'main/browser/serve.ts', "import './start.ts';", 'import-x/no-cycle'],
  ['app asks the time', 'app/plan/a.ts', 'export const a = Date.now();', 'no-restricted-properties'],
  ['app asks the date', 'app/plan/a.ts', 'export const a = new Date();', 'no-restricted-syntax'],
  ['shared asks the date', 'shared/a.ts', 'export const a = new Date();', 'no-restricted-syntax'],
  ['app draws a random number', 'app/plan/a.ts', 'export const a = Math.random();', 'no-restricted-properties'],
  ['app formats by Intl', 'app/plan/a.ts', "export const a = new Intl.NumberFormat('en');", 'no-restricted-globals'],
  [
    'shared formats by the machine',
    'shared/a.ts',
    'export const a = (1).toLocaleString();',
    'no-restricted-properties',
  ],
  ['app rounds inline', 'app/plan/a.ts', 'export const a = Math.ceil(1.5);', 'no-restricted-properties'],
  ['an enum', 'shared/a.ts', 'export enum A { b }', 'no-restricted-syntax'],
  [
    'a parameter property',
    'main/desk/a.ts',
    'export class A { constructor(readonly b: string) {} }',
    'no-restricted-syntax',
  ],
  [
    'a rule switched off by a comment',
    'app/plan/a.ts',
    '/* eslint-disable */\nexport const a = Math.random();',
    'no-restricted-properties',
  ],
];

const allowed: readonly (readonly [name: string, file: string, text: string])[] = [
  ['shared imports zod and itself', 'shared/a.ts', "import 'zod';\nimport './length.ts';"],
  ['app imports shared', 'app/plan/a.ts', "import '#shared/length.ts';"],
  ['main imports app and shared', 'main/desk/a.ts', "import '#app/plan/a.ts';\nimport '#shared/length.ts';"],
  ['main makes papers', 'main/desk/a.ts', "import '#app/documents/a.ts';"],
  ['renderer imports app', 'renderer/state/a.ts', "import '#app/plan/a.ts';"],
  ['papers import pdf-lib', 'app/documents/a.ts', "import 'pdf-lib';\nimport 'fontkit';"],
  [
    'the portfolio imports better-sqlite3 and kysely',
    'main/portfolio/a.ts',
    "import 'better-sqlite3';\nimport 'kysely';",
  ],
  ['the Electron shell imports electron', 'main/shell/a.ts', "import 'electron';\nimport 'node:fs';"],
  ['app reads a date that it was given', 'app/plan/a.ts', "export const a = new Date('2026-01-02').getUTCDate();"],
  ['a file of named roundings rounds', 'app/estimating/round-cuts.ts', 'export const a = Math.ceil(1.5);'],
  ['a test imports what it likes', 'test/desk/a.test.ts', "import 'fast-check';\nimport '#main/browser/serve.ts';"],
];

describe('the walls of the house', () => {
  it.each(broken)('refuses: %s', async (_name, file, text, rule) => {
    expect(await lint(file, text)).toContainEqual(expect.stringContaining(`${rule}:`));
  });

  it.each(allowed)('lets pass: %s', async (_name, file, text) => {
    expect(await lint(file, text)).toEqual([]);
  });
});
