// What tests need of the machine beyond Node: a browser, a screen in memory, fonts, a PDF reader.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';

/** Debian's package for each thing, and how to see that the thing is there. */
const needs = [
  { package: 'chromium', isThere: () => existsSync(findChromium()) },
  { package: 'xvfb', isThere: () => process.platform !== 'linux' || hasCommand('xvfb-run') },
  { package: 'xauth', isThere: () => process.platform !== 'linux' || hasCommand('xauth') },
  { package: 'fontconfig', isThere: () => process.platform !== 'linux' || hasCommand('fc-list') },
  {
    package: 'fonts-liberation',
    isThere: () => process.platform !== 'linux' || existsSync('/usr/share/fonts/truetype/liberation'),
  },
  { package: 'poppler-utils', isThere: () => hasCommand('pdftoppm') },
];

/** The Chromium that tests drive: CHROMIUM_PATH, or Debian's. */
export function findChromium() {
  return process.env.CHROMIUM_PATH || '/usr/bin/chromium';
}

/** Whether a command is on the PATH. */
export function hasCommand(name) {
  return (process.env.PATH ?? '').split(path.delimiter).some((folder) => {
    try {
      accessSync(path.join(folder, name), constants.X_OK);
      return true;
    } catch {
      // Not in this folder.
      return false;
    }
  });
}

/** Installs what is missing where that is possible (Debian, as root), and says what is missing where it is not. */
export function prepareMachine() {
  const missing = listMissing();
  if (missing.length === 0) return;
  const canInstall = process.platform === 'linux' && process.getuid?.() === 0 && hasCommand('apt-get');
  if (canInstall) {
    console.log(`installing what tests need: ${missing.join(' ')}`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const apt = (...args) => spawnSync('apt-get', args, { stdio: ['ignore', 'ignore', 'inherit'], env });
    apt('update', '-qq');
    apt('install', '-y', '-qq', '--no-install-recommends', ...missing);
  }
  const left = listMissing();
  if (left.length > 0) {
    console.log(
      `missing for tests: ${left.join(', ')} (Debian's names). Install them ("apt-get install ${left.join(' ')}"), ` +
        'or name a Chromium in CHROMIUM_PATH; tests that need them will fail.',
    );
  }
}

function listMissing() {
  return needs.filter((need) => !need.isThere()).map((need) => need.package);
}
