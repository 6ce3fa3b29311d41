/** The twelve invented houses of test/reference/plan-houses.json: cloth by the plan and by the handbook, with the bound. */
import { cutToRepeat, handbookLength, orderExtra } from '#app/estimating/cut-cloth.ts';
import { upToOrderStep } from '#app/estimating/round.ts';
import { speaker } from '#app/estimating/say.ts';
import type { CutPlan } from '#app/plan/cut-plan.ts';
import { planCuts } from '#app/plan/plan-cuts.ts';
import { sayFault } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { PlanFile } from './plan-file.ts';
import { readPlanFile, repeatOf } from './plan-file.ts';
import { CM, cm } from './seeded-plans.ts';

export interface HouseRow {
  readonly name: string;
  readonly cuts: number;
  readonly plan: CutPlan;
  /** The handbook's lengths of all sets, added up. */
  readonly handbook: number;
  /** With one repeat extra and the order step, once for each treatment by the handbook, once for each bolt by the plan. */
  readonly orderByHandbook: number;
  readonly orderByPlan: number;
}

/** What is bought by the tenth of a metre where the bolt has no step of its own. */
const ORDER_STEP = cm(10);

export function listHouses(houses: readonly PlanFile[]): HouseRow[] {
  return houses.map((house) => {
    const input = readPlanFile(house);
    const outcome = planCuts(input, speaker('cm', 'en-US'));
    if (!outcome.ok) throw new Error(outcome.faults.map(sayFault).join('\n'));
    const repeat = repeatOf(house);
    const extra = orderExtra({ repeat }, 'one-repeat');
    const bySet = house.sets.map((set) => {
      const cut = cutToRepeat(cm(set.cut), repeat, 'whole');
      return handbookLength(cut, Math.ceil(set.widths * set.quantity), repeat);
    });
    const bought = outcome.plan.bolts.filter((bolt) => bolt.kind === 'bolt');
    return {
      name: house.name,
      cuts: input.cuts.length,
      plan: outcome.plan,
      handbook: bySet.reduce((sum, length) => sum + length, 0),
      orderByHandbook: bySet.reduce((sum, length) => sum + upToOrderStep(ticks(length + extra), ORDER_STEP), 0),
      orderByPlan: bought.reduce((sum, bolt) => {
        // A bolt whose start is known needs no extra; an unlimited one is taken to start in phase.
        const more = bolt.length === null ? extra : ticks(0);
        return sum + upToOrderStep(ticks(bolt.ordered + more), ORDER_STEP);
      }, 0),
    };
  });
}

/** The table of the README, as markdown. */
export function writeHouseTable(rows: readonly HouseRow[]): string {
  const metres = (length: number): string => (length / (100 * CM)).toFixed(2);
  const less = (plan: number, chart: number): string =>
    `${(100 * (1 - plan / chart)).toFixed(1).replace('-0.0', '0.0')} %`;
  const mean = (share: (row: HouseRow) => number): string =>
    `${((100 * rows.reduce((sum, row) => sum + share(row), 0)) / rows.length).toFixed(1)} %`;
  return [
    '| house (invented) | cuts | by the chart, m | laid together, m | no layout below, m | less | ordered by the chart, m | ordered by the plan, m | less |',
    '|---|---:|---:|---:|---:|---:|---:|---:|---:|',
    ...rows.map(
      (row) =>
        `| ${row.name} | ${row.cuts} | ${metres(row.handbook)} | ${metres(row.plan.ordered)} | ${metres(row.plan.bound)} | ${less(row.plan.ordered, row.handbook)} | ${metres(row.orderByHandbook)} | ${metres(row.orderByPlan)} | ${less(row.orderByPlan, row.orderByHandbook)} |`,
    ),
    `| mean of the twelve | | | | | ${mean((row) => 1 - row.plan.ordered / row.handbook)} | | | ${mean((row) => 1 - row.orderByPlan / row.orderByHandbook)} |`,
    '',
  ].join('\n');
}
