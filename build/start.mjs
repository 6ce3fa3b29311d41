// `npm start`: builds what is stale and opens Linenfold, in Electron where its runtime is there or can be fetched and a
// screen is there to show it; else, or with --browser, the browser shell, which shows the same program in a browser.
import { spawn, spawnSync } from 'node:child_process';
import { constants } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileIfStale } from './compile.mjs';
import { fetchScript, findElectron, writeElectronArguments } from './electron-runtime.mjs';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
/** The runtime is about 100 MB. */
const fetchLimit = 5 * 60_000;

/** The Electron program, or the reason why there is none to open. */
function prepareElectron(args) {
  if (args.includes('--browser')) return { reason: 'asked for with --browser' };
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) {
    return { reason: 'there is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set)' };
  }
  const there = findElectron();
  if (there !== null) return { program: there };
  process.stderr.write('linenfold: fetching the Electron runtime (about 100 MB, this once)\n');
  const done = spawnSync(process.execPath, [fetchScript], { cwd: root, encoding: 'utf8', timeout: fetchLimit });
  const program = findElectron();
  if (done.status === 0 && program !== null) return { program };
  const fault = done.error?.code === 'ETIMEDOUT' ? 'it took more than five minutes' : readFault(done.stderr);
  return { reason: `the Electron runtime could not be fetched (${fault})` };
}

/** The line that names the fault in what a failed script printed. */
function readFault(text) {
  return (
    text
      ?.split('\n')
      .find((line) => /error/i.test(line))
      ?.trim() ?? 'no reason given'
  );
}

function run(program, args) {
  const child = spawn(program, args, { cwd: root, stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.on('error', (error) => {
    process.stderr.write(`linenfold: cannot start ${program}: ${error.message}\n`);
    process.exit(1);
  });
  child.on('exit', (code, signal) => process.exit(code ?? 128 + (constants.signals[signal] ?? 1)));
}

const args = process.argv.slice(2);
if (!compileIfStale({ quiet: true })) {
  process.stderr.write('linenfold: the build failed; the reason is above\n');
  process.exit(1);
}
const electron = prepareElectron(args);
if (electron.program !== undefined) run(electron.program, [...writeElectronArguments(), ...args]);
else {
  process.stderr.write(`linenfold: opening the browser shell: ${electron.reason}\n`);
  run(process.execPath, [path.join(root, 'main', 'browser', 'start.ts'), ...args]);
}
