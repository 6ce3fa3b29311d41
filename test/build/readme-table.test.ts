/** The table of the README is what the program computes today. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { listHouses, writeHouseTable } from '../../build/plan-oracle/house-table.ts';
import type { PlanFile } from '../../build/plan-oracle/plan-file.ts';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

/** Cells of the rows of every table, without the padding that a formatter gives them and without the rule under the head. */
function cellsOf(markdown: string): string[][] {
  return markdown
    .split('\n')
    .filter((line) => line.startsWith('|') && !/^\|\s*-/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()));
}

describe('cloth of the twelve invented houses', () => {
  const { houses } = JSON.parse(read('test/reference/plan-houses.json')) as { houses: PlanFile[] };

  it('stands in the README as it is computed', { timeout: 60_000 }, () => {
    const rows = listHouses(houses);
    expect(rows).toHaveLength(12);
    expect(cellsOf(read('README.md'))).toEqual(cellsOf(writeHouseTable(rows)));
  });
});
