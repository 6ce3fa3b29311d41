/** Speed of the cut plan as ratios within one run: against the oracle on the same questions, and as the house grows. */
import highsLoader from 'highs';
import { readFileSync } from 'node:fs';
import { speaker } from '#app/estimating/say.ts';
import type { CutPlan } from '#app/plan/cut-plan.ts';
import type { PlanInput } from '#app/plan/plan-input.ts';
import { planCuts } from '#app/plan/plan-cuts.ts';
import { sayFault } from '#shared/fault.ts';
import type { GrowthFile, OracleFile } from './plan-oracle/oracle-file.ts';
import { GROWTH_FILE, ORACLE_FILE } from './plan-oracle/oracle-file.ts';
import { readPlanFile } from './plan-oracle/plan-file.ts';
import { solveModel } from './plan-oracle/solve-model.ts';

const say = speaker('cm', 'en-US');

interface Timed {
  readonly plan: CutPlan;
  readonly ms: number;
}

/** Milliseconds of one plan: the least of three, since the same question does the same work each time. */
function time(input: PlanInput): Timed {
  const runs = Array.from({ length: 3 }, () => {
    const start = performance.now();
    const outcome = planCuts(input, say);
    const ms = performance.now() - start;
    if (!outcome.ok) throw new Error(outcome.faults.map(sayFault).join('\n'));
    return { plan: outcome.plan, ms };
  });
  return runs.reduce((best, run) => (run.ms < best.ms ? run : best));
}

function gapOf(plan: CutPlan): string {
  return `${((100 * plan.gap) / Math.max(1, plan.ordered)).toFixed(2)} %`;
}

/** Prints two tables; asserts nothing. Every fifth of the checked-in houses is solved again by HiGHS in the same run. */
export async function benchPlan(): Promise<void> {
  const highs = await highsLoader();
  const { large } = JSON.parse(readFileSync(ORACLE_FILE, 'utf8')) as OracleFile;
  const picked = large.filter((_, index) => index % 5 === 0);
  console.log('cut plan against the oracle (HiGHS), the same questions');
  console.log('house        cuts  bolts    plan ms  oracle ms   plan / oracle   plan above oracle   gap to the bound');
  let [plans, oracles] = [0, 0];
  for (const { house } of picked) {
    const input = readPlanFile(house);
    const { plan, ms } = time(input);
    const solved = solveModel(highs, input, 20);
    const oracle = 1000 * solved.seconds;
    [plans, oracles] = [plans + ms, oracles + oracle];
    const above =
      solved.ordered === null
        ? 'unsolved'
        : `${((100 * (plan.ordered - solved.ordered)) / solved.ordered).toFixed(2)} %`;
    console.log(
      house.name.padEnd(11) +
        String(input.cuts.length).padStart(6) +
        String(input.bolts.length).padStart(7) +
        ms.toFixed(1).padStart(11) +
        oracle.toFixed(0).padStart(11) +
        (ms / oracle).toFixed(3).padStart(16) +
        above.padStart(20) +
        gapOf(plan).padStart(19),
    );
  }
  console.log(`All together the plan takes ${(plans / oracles).toFixed(2)} of the oracle's time.\n`);
  const { growing } = JSON.parse(readFileSync(GROWTH_FILE, 'utf8')) as GrowthFile;
  for (const on of ['one bolt', 'bolts of 45 m']) {
    console.log(`growth on ${on}`);
    console.log('cuts     plan ms    against the first   cuts against the first   gap to the bound');
    let first: { ms: number; cuts: number } | null = null;
    for (const house of growing.filter(({ name }) => name.endsWith(on))) {
      const input = readPlanFile(house);
      const { plan, ms } = time(input);
      first = first ?? { ms, cuts: input.cuts.length };
      console.log(
        String(input.cuts.length).padEnd(5) +
          ms.toFixed(1).padStart(11) +
          (ms / first.ms).toFixed(1).padStart(21) +
          (input.cuts.length / first.cuts).toFixed(1).padStart(25) +
          gapOf(plan).padStart(19),
      );
    }
  }
}
