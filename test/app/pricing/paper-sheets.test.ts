/**
 * Three treatments of the sample household, each worked once on paper from nothing but the lines of its working, as a
 * decorator would before she cuts. A line is what was written down: the step, the sum on paper in inches or yards, and
 * the step's own answer. The sums stand here as they were done; the program is held to them.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { readJob } from '#shared/job-file/read-job.ts';

type Line = readonly [step: string, sum: number, unit?: 'yd'];

const sample = readFileSync(new URL('../../reference/sample.job.json', import.meta.url), 'utf8');
const FRACTIONS: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** A figure as the working prints it: "2¾ yd", "≈5 11/16", "37½". */
function readFigure(text: string): number {
  const found = /^≈?(\d[\d.]*)?\s*([¼½¾⅛⅜⅝⅞]|(\d+)\/(\d+))?(?: yd)?$/u.exec(text);
  if (found === null) throw new Error(`no figure: ${text}`);
  const [, ones = '0', part, over, under] = found;
  const share = over === undefined ? (FRACTIONS[part ?? ''] ?? 0) : Number(over) / Number(under);
  return Number(ones) + share;
}

/** Up to a whole one; a sum that is whole but for the last digit stays. */
const whole = (count: number): number => Math.ceil(count - 1e-9);
/** Up to the next quarter of a yard, as the counter does it. */
const quarters = (yards: number): number => whole(yards * 4) / 4;

const GOBLETS: readonly Line[] = [
  ['finished-width', 84 + 3.5 + 3.5],
  ['flat-width', 91 * 2.25],
  ['widths', whole(204.75 / 54)],
  ['plain-cut', 95.5 + 8 + 8],
  ['points', 5 * 2],
  // 4 widths less four side hems of 3 in are 204, 102 a panel; a panel is 42 of rod and one return.
  ['pleat', (102 - 45.5) / 10],
  ['pleat-space', (45.5 - 3.5) / 9],
  // The middle of the last whole motif is half a repeat above the hem.
  ['motif-below', 95.5 - 27 / 2],
  // From the top of the cut to that middle are 82 + 8; three repeats are 81, so 9 of the repeat are left, and 13½ − 9.
  ['pattern-start', 13.5 - 9],
  ['repeats', whole(111.5 / 27)],
  ['cut-length', 5 * 27],
  ['laid-out', (3 * 135 + 111.5) / 36, 'yd'],
  ['order', quarters(516.5 / 36 + 27 / 36), 'yd'],
  ['layer-1-cut', 95.5 + 3 + 4 - 1],
  ['layer-1-order', quarters((4 * 101.5) / 36), 'yd'],
  // Doubled 2 in and a seam of ½ at either edge: 5 in; ten lie across 54, so both strips come from one cut.
  ['band-leading', 111.5 / 36, 'yd'],
  ['band-leading-order', quarters(111.5 / 36), 'yd'],
  ['rod', 84 + 7],
  ['brackets', whole(84 / 48) + 1],
  ['fixings', (10 + 2) * 2],
  ['heading-tape', 204 / 36, 'yd'],
  ['weights', 2 * 2 + 2],
];

const BOX_PLEATED_VALANCE: readonly Line[] = [
  ['finished-width', 50 + 3.5 + 3.5],
  ['cut-width', 57 + 5 * 8 + 2 * 1 + 2 * 0.5],
  // 100 and two joins that eat an inch each: 102 of cloth; a whole width of 54 leaves 48, 24 a side, out of one more.
  ['widths', 1 + whole((2 * 24) / 54)],
  ['plain-cut', 13 + 3.5 + 0.5],
  ['pleat-spaces', 50 / 6],
  ['board-cover', 2 * (3.5 + 0.75) + 1],
  ['board-cover-strips', whole((50 + 2 * 1.75) / 54)],
  ['cut-length', 2 * 12.5],
  // A half-drop: the second cut starts half a repeat on, at 12½ + 6¼, and ends 17 later.
  ['laid-out', (18.75 + 17) / 36, 'yd'],
  ['order', quarters((18.75 + 17 + 12.5) / 36), 'yd'],
  ['layer-1-cut', 13 + 3.5 + 0.5],
  ['layer-1-laid-out', (2 * 17 + 9.5) / 36, 'yd'],
  ['layer-1-order', quarters(43.5 / 36), 'yd'],
];

const FLAT_SHADE: readonly Line[] = [
  ['finished-width', 39.875 - 0.25],
  ['finished-length', 48.125],
  ['cut-width', 39.625 + 6],
  ['plain-cut', 48.125 + 10],
  ['laid-out', 58.125 / 36, 'yd'],
  ['order', quarters(58.125 / 36), 'yd'],
  ['layer-1-plain-cut', 48.125 + 6],
  ['layer-1-order', quarters(54.125 / 36), 'yd'],
  ['rows', Math.round(48.125 / 6 + 0.5)],
  ['row-spacing', 48.125 / 8.5],
  ['first-row', 48.125 / 8.5 / 2],
  // From 1 in to 38⅝ in are 37⅝: four spaces keep within 12.
  ['columns', whole((39.625 - 2) / 12) + 1],
  ['rings', 8 * 5],
  ['raised-stack', 48.125 / 8.5 + 7 * 0.375 + 48.125 / 17],
  ['cords', 5 * (48.125 + 12)],
  ['board', 39.625],
];

describe('on paper, from the working alone', () => {
  const read = readJob(JSON.parse(sample));
  if (!read.ok) throw new Error('the sample is refused');
  const { treatments } = writeResult(read.job, priceJob(read.job));

  it.each([
    ['Dining room/South window/Panels', GOBLETS],
    ['Kitchen/Sink window/Valance', BOX_PLEATED_VALANCE],
    ['Study/Desk window/Shade', FLAT_SHADE],
  ] as const)('%s', (path, sheet) => {
    const working = treatments.find((each) => each.path === path)?.tiers.good.working ?? [];
    for (const [id, sum, unit] of sheet) {
      const step = working.find((each) => each.id === id);
      const value = step?.value ?? 'no such step';
      expect(value.endsWith(' yd'), id).toBe(unit === 'yd');
      // Yards are printed to the hundredth, what no tape shows to the next sixteenth.
      const within = (unit === 'yd' && 0.005) || (value.startsWith('≈') && 1 / 32) || 0;
      expect(Math.abs(readFigure(value) - sum), `${id}: ${value}, on paper ${sum}`).toBeLessThanOrEqual(within + 1e-9);
    }
  });
});
