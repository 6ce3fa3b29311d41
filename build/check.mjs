// `npm run check`: format, lint and types; `npm run check -- types` runs one of them.
import { addCounts, noCounts, runFormat, runLint, runTypes, writeCounts } from './run-step.mjs';

const steps = { format: runFormat, lint: runLint, types: runTypes };
const asked = process.argv.slice(2);
const unknown = asked.find((name) => !(name in steps));
if (unknown !== undefined) {
  console.error(`there is no check "${unknown}"; there are ${Object.keys(steps).join(', ')}`);
  process.exit(2);
}
const names = asked.length > 0 ? asked : Object.keys(steps);
const counts = names.map((name) => steps[name]()).reduce(addCounts, noCounts);
console.log(`\n${writeCounts(counts)}`);
process.exit(counts.failed > 0 ? 1 : 0);
