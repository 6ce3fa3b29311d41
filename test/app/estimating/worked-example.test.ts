/** The example worked by hand in the job file's description, figure by figure: 72 in rod, 84 in long, 27 in repeat. */
import { describe, expect, it } from 'vitest';
import { estimateCase, faceLine } from './panels-case.ts';

const example = {
  cloth: { width: 54, repeat: { vertical: 27, horizontal: 27, match: 'straight' as const } },
  panels: { rodWidth: 72, finishedLength: 84, fullness: 2.5, return: 3.5, overlap: 3.5 },
  behind: ['std-white'],
};

describe('the worked example', () => {
  const made = estimateCase(example);
  const line = faceLine(made);
  const step = (id: string) => made.working.find((each) => each.id === id);

  it.each([
    ['finished width', made.in(made.finished.width), 82.5],
    ['widths', (line.halfWidths ?? 0) / 2, 4],
    ['cuts', line.cuts, 4],
    ['plain cut', made.in(line.plainCut), 100],
    ['repeats in a cut', line.repeatsPerCut, 4],
    ['cut length', made.in(line.cutLength), 108],
    ['handbook, in', made.in(line.handbook), 432],
    ['handbook, yd', made.yards(line.handbook), 12],
    ['laid out, in', made.in(line.plan), 424],
    ['laid out, yd', made.yards(line.plan), 11.7778],
    ['order, yd', made.yards(line.order), 12.75],
    ['lining widths', (made.takeoff[1]?.halfWidths ?? 0) / 2, 4],
    ['lining cut', made.in(made.takeoff[1]?.cutLength ?? 0), 90],
    ['lining, in', made.in(made.takeoff[1]?.handbook ?? 0), 360],
    ['lining, yd', made.yards(made.takeoff[1]?.order ?? 0), 10],
  ])('%s', (_, found, wanted) => {
    expect(found).toBe(wanted);
  });

  it('fullness made is (4 × 54 - 4 × 3) / 82.5', () => {
    expect(made.fullnessMade).toBeCloseTo(204 / 82.5, 12);
  });

  it.each([
    ['finished-width', '72 + 3½ + 3½ + 3½', '82½'],
    ['flat-width', '82½ × 2.5', '206¼'],
    ['widths', '206¼ ÷ 54 = 3.82, up to whole widths', '4'],
    ['fullness-made', '(4 × 54 − 4 × 3) ÷ 82½', '2.47'],
    ['plain-cut', '84 + 8 + 8', '100'],
    ['repeats', '100 ÷ 27 = 3.7, up', '4'],
    ['cut-length', '4 × 27', '108'],
    ['laid-out', '3 × 108 + 100; by the chart 12 yd', '11.78 yd'],
    ['order', '11.78 yd + ¾ yd, up to ¼ yd', '12¾ yd'],
    ['layer-1-cut', '84 + 3 + 4 − 1', '90'],
  ])('working says %s: %s', (id, formula, value) => {
    expect(step(id)).toMatchObject({ formula, value });
  });
});
