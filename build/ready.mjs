// Makes the project ready and then runs one script under the project's own Node 24:
//
//   node build/ready.mjs FILE [argument]...
//
// Plain Node 20 or later with nothing installed. It has to be: it notices that node_modules is missing or stale and runs
// `npm ci`. Everything it says goes to stderr, so that FILE alone owns stdout; FILE's exit code is passed through.
// Node 24 is called by its path: the PATH of an npm script may have been looked up before node_modules existed, and
// better-sqlite3 13 ends the process on Node 20.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { constants } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const modules = path.join(root, 'node_modules');
const lockFile = path.join(root, 'package-lock.json');
const stampFile = path.join(modules, '.linenfold-lock');
const node24 = path.join(modules, 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node');

const say = (line) => process.stderr.write(`linenfold: ${line}\n`);

function readLockHash() {
  return createHash('sha256').update(readFileSync(lockFile)).digest('hex');
}

/**
 * Whether node_modules holds what the lock file asks for. A stamp of the lock file's hash answers at once; without it
 * (somebody ran npm by hand) npm's own record of what it installed is compared with the lock file, package by package.
 */
function isInstalled(lockHash) {
  if (!existsSync(node24)) return false;
  if (existsSync(stampFile)) return readFileSync(stampFile, 'utf8').trim() === lockHash || isSameAsLock();
  return isSameAsLock();
}

function isSameAsLock() {
  const record = path.join(modules, '.package-lock.json');
  if (!existsSync(record)) return false;
  const wanted = JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  const found = JSON.parse(readFileSync(record, 'utf8')).packages;
  return Object.entries(wanted).every(([place, entry]) => {
    if (place === '') return true;
    const there = found[place];
    // Packages for other systems stay away, and that is right.
    if (there === undefined) return entry.optional === true || entry.peer === true;
    return there.version === entry.version && there.integrity === entry.integrity;
  });
}

/** Runs `npm ci` with the npm and the Node that were started, never with the Node inside node_modules, which it replaces. */
function install() {
  const npmScript = process.env.npm_execpath;
  const outerNode = process.env.npm_node_execpath ?? process.execPath;
  const flags = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
  say(
    `${existsSync(modules) ? 'node_modules is not what package-lock.json asks for' : 'first run'}: npm ci (about 20 s)`,
  );
  const settings = { cwd: root, stdio: ['ignore', 2, 2] };
  const done =
    npmScript !== undefined && /\.[cm]?js$/.test(npmScript)
      ? spawnSync(outerNode, [npmScript, ...flags], settings)
      : spawnSync('npm', flags, { ...settings, shell: process.platform === 'win32' });
  if (done.error !== undefined || done.status !== 0) {
    say('npm ci failed; the reason is above. Mend it, or run "npm ci" by hand, and try again.');
    process.exit(done.status || 1);
  }
  if (!existsSync(node24)) {
    say('npm ci left no Node 24 in node_modules: is the install script of the package "node" forbidden here?');
    process.exit(1);
  }
}

function run(file, args) {
  const child = spawn(node24, [path.resolve(root, file), ...args], { stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.on('error', (error) => {
    say(`cannot run ${node24}: ${error.message}`);
    process.exit(1);
  });
  child.on('exit', (code, signal) => process.exit(code ?? 128 + (constants.signals[signal] ?? 1)));
}

const [file, ...args] = process.argv.slice(2);
if (file === undefined) {
  say('usage: node build/ready.mjs FILE [argument]...');
  process.exit(2);
}
const lockHash = readLockHash();
if (!isInstalled(lockHash)) install();
if (!existsSync(stampFile) || readFileSync(stampFile, 'utf8').trim() !== lockHash) writeFileSync(stampFile, lockHash);
run(file, args);
