// `npm test`: every check there is, then one closing line. `npm test -- PART [NAME]...` runs one part, or of its test
// files those whose path holds NAME:
//
//   format lint types      as in `npm run check`
//   unit                   unit, reference and contract tests (test/**/*.test.ts)
//   zones                  test/**/*.zones.test.ts again, each in three time zones
//   build                  the program, into out/
//   browser                end to end in Chromium, on the browser shell
//   electron               end to end in Electron, where its runtime is (ELECTRON_OVERRIDE_DIST_PATH, or fetched)
//
// A failing part counts as failed, and the rest still runs.
import { compile } from './compile.mjs';
import { findElectron } from './electron-runtime.mjs';
import { addCounts, noCounts, runFormat, runLint, runTypes, runVitest, writeCounts } from './run-step.mjs';
import { hasCommand, prepareMachine } from './test-machine.mjs';

/** West of Greenwich with summer time, east with a half hour, and the day's very edge. */
const zones = ['America/St_Johns', 'Asia/Kolkata', 'Pacific/Kiritimati'];

const parts = {
  format: runFormat,
  lint: runLint,
  types: runTypes,
  unit: (filters) => runVitest('unit', { filters, title: 'unit, reference and contract tests' }),
  zones: () =>
    zones
      .map((zone) =>
        runVitest('unit', {
          filters: ['.zones.test.ts'],
          env: { TZ: zone },
          title: `time zone ${zone}`,
          mayBeEmpty: true,
        }),
      )
      .reduce(addCounts, noCounts),
  build: runBuild,
  browser: (filters) => runVitest('browser', { filters, title: 'end to end in Chromium' }),
  electron: runElectron,
};
/** What a part alone needs to have run before it. */
const needsBuild = ['browser', 'electron'];

function runBuild() {
  console.log('\n== build');
  const worked = compile({ quiet: true });
  console.log(`== build: ${worked ? 'passed' : 'FAILED'}`);
  return worked ? { ...noCounts, passed: 1 } : { ...noCounts, failed: 1 };
}

function runElectron(filters) {
  if (findElectron() === null) {
    console.log('\n== end to end in Electron: skipped, its runtime is not here (set ELECTRON_OVERRIDE_DIST_PATH)');
    return { ...noCounts, skipped: 1 };
  }
  const needsScreen = process.platform === 'linux' && !process.env.DISPLAY && hasCommand('xvfb-run');
  const before = needsScreen ? ['xvfb-run', '-a', '-s', '-screen 0 1600x1000x24'] : [];
  return runVitest('electron', { filters, before, title: 'end to end in Electron' });
}

const args = process.argv.slice(2);
const askedParts = args.filter((arg) => arg in parts);
const filters = args.filter((arg) => !(arg in parts));
if (askedParts.length === 0 && filters.length > 0) {
  console.error(`there is no part "${filters[0]}"; there are ${Object.keys(parts).join(', ')}`);
  process.exit(2);
}
const names = Object.keys(parts).filter(
  (name) =>
    askedParts.length === 0 ||
    askedParts.includes(name) ||
    (name === 'build' && needsBuild.some((part) => askedParts.includes(part))),
);
if (names.some((name) => ['unit', 'browser', 'electron'].includes(name))) prepareMachine();
const counts = names.map((name) => parts[name](filters)).reduce(addCounts, noCounts);
console.log(`\n${writeCounts(counts)}`);
process.exit(counts.failed > 0 ? 1 : 0);
