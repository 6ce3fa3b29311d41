// The steps of `npm test` and `npm run check`, each counted. Every step shows its own output as it comes.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.dirname(path.dirname(fileURLToPath(import.meta.url)));
const tool = (...parts) => path.join(root, 'node_modules', ...parts);

/** Each floor is checked with the types that belong there; the page's floor by svelte-check, which knows components. */
const floors = ['shared', 'app', 'documents', 'main', 'preload', 'test'];

/** @typedef {{ passed: number, failed: number, skipped: number }} Counts */

/** @returns {Counts} */
export function addCounts(one, other) {
  return {
    passed: one.passed + other.passed,
    failed: one.failed + other.failed,
    skipped: one.skipped + other.skipped,
  };
}

export const noCounts = { passed: 0, failed: 0, skipped: 0 };

/** The closing line, for example `412 passed, 0 failed, 1 skipped`. */
export function writeCounts({ passed, failed, skipped }) {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

export function runFormat() {
  return check('format', tool('prettier', 'bin', 'prettier.cjs'), ['--config', 'build/prettier.json', '--check', '.']);
}

export function runLint() {
  return check('lint', tool('eslint', 'bin', 'eslint.js'), ['-c', 'build/eslint.config.js', '.']);
}

export function runTypes() {
  const tsc = tool('typescript', 'bin', 'tsc');
  const floorCounts = floors.map((floor) => check(`types: ${floor}`, tsc, ['-p', `build/tsconfig.${floor}.json`]));
  const page = check('types: renderer', tool('svelte-check', 'bin', 'svelte-check'), [
    ...['--tsconfig', 'build/tsconfig.renderer.json', '--fail-on-warnings', '--output', 'human'],
  ]);
  return [...floorCounts, page].reduce(addCounts, noCounts);
}

/**
 * Runs one vitest project. `filters` are file names or parts of them; `env` is added to the environment; `before` is a
 * command that runs it, such as xvfb-run.
 */
export function runVitest(project, { filters = [], env = {}, before = [], title = project, mayBeEmpty = false } = {}) {
  const folder = mkdtempSync(path.join(tmpdir(), 'linenfold-counts-'));
  const report = path.join(folder, 'report.json');
  const command = [
    ...before,
    process.execPath,
    tool('vitest', 'vitest.mjs'),
    ...['run', '--config', 'build/vitest.config.ts', '--project', project],
    ...['--reporter', 'default', '--reporter', 'json', `--outputFile.json=${report}`],
    ...(mayBeEmpty ? ['--passWithNoTests'] : []),
    ...filters,
  ];
  const status = run(title, command, env);
  try {
    return readReport(JSON.parse(readFileSync(report, 'utf8')), status);
  } catch {
    // No report: vitest itself failed, or found nothing to run where that is allowed.
    return status === 0 && mayBeEmpty ? noCounts : { ...noCounts, failed: 1 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Counts tests; a file that could not be loaded, or an error outside any test, counts as one failed. */
function readReport(report, status) {
  const brokenFiles = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  const failed = report.numFailedTests + brokenFiles;
  return {
    passed: report.numPassedTests,
    failed: failed === 0 && status !== 0 ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** A step that counts as one check. */
function check(title, script, args) {
  const status = run(title, [process.execPath, script, ...args]);
  return status === 0 ? { ...noCounts, passed: 1 } : { ...noCounts, failed: 1 };
}

function run(title, [command, ...args], env = {}) {
  console.log(`\n== ${title}`);
  const started = performance.now();
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
  if (done.error !== undefined) console.log(`cannot run ${command}: ${done.error.message}`);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  // Some tools leave their last line open.
  console.log(`\n== ${title}: ${done.status === 0 ? 'passed' : 'FAILED'} (${seconds} s)`);
  return done.status ?? 1;
}
