// Where Electron's runtime is, and how it is started from the sources.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const electronFolder = path.join(root, 'node_modules', 'electron');

/** Path of the Electron program, or null when its runtime has not been fetched. */
export function findElectron() {
  const usual =
    { darwin: 'Electron.app/Contents/MacOS/Electron', win32: 'electron.exe' }[process.platform] ?? 'electron';
  const pathFile = path.join(electronFolder, 'path.txt');
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8').trim() : usual;
  const folder = process.env.ELECTRON_OVERRIDE_DIST_PATH || path.join(electronFolder, 'dist');
  const program = path.join(folder, name);
  return existsSync(program) ? program : null;
}

/** The script of the package "electron" that fetches the runtime. */
export const fetchScript = path.join(electronFolder, 'install.js');

/**
 * What Electron is started with, before any arguments of the program's own. ELECTRON_TEST_HOOK is a script that a test
 * runtime needs to be loaded first. Chromium's sandbox does not work for root on Linux.
 */
export function writeElectronArguments() {
  const hook = process.env.ELECTRON_TEST_HOOK;
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
  return [...(hook ? ['-r', hook] : []), ...(asRoot ? ['--no-sandbox'] : []), root];
}
