// Builds the program into out/. As a script it always builds; `compileIfStale` skips it when out/ was made from these
// very sources for the same Electron.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const stampFile = path.join(root, 'out', 'built-from');
const sources = ['app', 'main', 'renderer', 'shared', 'build/copy-fonts.ts', 'electron.config.ts', 'package-lock.json'];

/** A hash of every source's path, size and time, and of the Electron that is built for. */
function readSourcesHash() {
  const hash = createHash('sha256').update(`electron ${process.env.ELECTRON_MAJOR_VER ?? ''}\n`);
  const add = (file) => {
    const state = statSync(file, { throwIfNoEntry: false });
    if (state === undefined) return;
    if (state.isDirectory()) for (const name of readdirSync(file).sort()) add(path.join(file, name));
    else hash.update(`${path.relative(root, file)} ${state.size} ${state.mtimeMs}\n`);
  };
  for (const source of sources) add(path.join(root, source));
  return hash.digest('hex');
}

/** Builds; the build tool's output goes to stderr. Returns whether it worked. */
export function compile({ quiet = false } = {}) {
  const hash = readSourcesHash();
  const tool = path.join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js');
  const flags = ['build', '-c', 'electron.config.ts', ...(quiet ? ['--logLevel', 'warn'] : [])];
  const done = spawnSync(process.execPath, [tool, ...flags], { cwd: root, stdio: ['ignore', 2, 2] });
  if (done.status !== 0) return false;
  writeFileSync(stampFile, hash);
  return true;
}

export function compileIfStale(settings) {
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === readSourcesHash()) return true;
  return compile(settings);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exit(compile() ? 0 : 1);
