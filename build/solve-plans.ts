/**
 * Recomputes what the tests of the cut plan compare with: `node build/solve-plans.ts` tries every layout of the small
 * questions, solves the larger ones with HiGHS, and writes test/reference/plan-oracle.json (a few minutes), and the growing
 * questions of `npm run bench` into test/reference/plan-growth.json.
 * `node build/solve-plans.ts --table` prints the table of the twelve invented houses as markdown instead.
 */
import highsLoader from 'highs';
import { readFileSync, writeFileSync } from 'node:fs';
import { format } from 'prettier';
import type { Options } from 'prettier';
import { listHouses, writeHouseTable } from './plan-oracle/house-table.ts';
import type { GrowthFile, OracleFile } from './plan-oracle/oracle-file.ts';
import { GROWTH_FILE, LARGE_SEEDS, ORACLE_FILE, SMALL_SEEDS } from './plan-oracle/oracle-file.ts';
import type { PlanFile } from './plan-oracle/plan-file.ts';
import { readPlanFile } from './plan-oracle/plan-file.ts';
import { searchAll } from './plan-oracle/search-all.ts';
import { GROWING, growingPlan, housePlan, smallPlan } from './plan-oracle/seeded-plans.ts';
import { solveModel } from './plan-oracle/solve-model.ts';

/** Seconds that the solver gets for one house. */
const PATIENCE = 60;

if (process.argv.includes('--table')) {
  const file = readFileSync(new URL('../test/reference/plan-houses.json', import.meta.url), 'utf8');
  const { houses } = JSON.parse(file) as { houses: PlanFile[] };
  console.log(writeHouseTable(listHouses(houses)));
} else {
  const highs = await highsLoader();
  const small = SMALL_SEEDS.map((seed) => {
    const ordered = searchAll(smallPlan(seed));
    return { seed, ordered: ordered === Infinity ? null : ordered };
  });
  console.log(`${small.length} small questions searched`);
  const large = LARGE_SEEDS.map((seed) => {
    const house = housePlan(seed);
    const { proved, ordered, bound, seconds } = solveModel(highs, readPlanFile(house), PATIENCE);
    console.log(`${house.name}: ${proved ? 'proved' : 'not proved'} in ${seconds.toFixed(1)} s`);
    return { house, proved, ordered, bound };
  });
  const style = JSON.parse(readFileSync(new URL('prettier.json', import.meta.url), 'utf8')) as Options;
  writeFileSync(ORACLE_FILE, await format(writeFile({ small, large }), { ...style, parser: 'json' }));
  const growing = GROWING.map(({ least, on }) => growingPlan(least, on));
  writeFileSync(GROWTH_FILE, await format(writeGrowth({ growing }), { ...style, parser: 'json' }));
}

function writeGrowth({ growing }: GrowthFile): string {
  return `{ "growing": [\n${growing.map((each) => JSON.stringify(each)).join(',\n')}\n] }\n`;
}

/** One question a line where it fits, so that a change shows as a line. */
function writeFile({ small, large }: OracleFile): string {
  const lines = (list: readonly unknown[]): string => list.map((each) => `    ${JSON.stringify(each)}`).join(',\n');
  return `{\n  "small": [\n${lines(small)}\n  ],\n  "large": [\n${lines(large)}\n  ]\n}\n`;
}
