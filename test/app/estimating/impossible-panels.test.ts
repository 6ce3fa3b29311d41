/** Panels that cannot be: refused by field, or told. Rules are common practice; figures are worked by hand. */
import { describe, expect, it } from 'vitest';
import { checkPanels } from '#app/estimating/panels/check-panels.ts';
import { speaker } from '#app/estimating/say.ts';
import { warnPanels } from '#app/estimating/panels/warn-panels.ts';
import { estimateCase, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const faultsOf = (given: PanelsCase): string[] => {
  const { panels, face, behind } = readPanels(given);
  return checkPanels(panels, face, behind, 'in').map(
    ({ path, wrong }) => `${path.replace(/^.*treatments\[0\]\./, '')} ${wrong}`,
  );
};
const warningsOf = (given: PanelsCase): string[] =>
  warnPanels(readPanels(given).panels, estimateCase(given), speaker('in', 'en-US')).map(({ says }) => says);

describe('too little cloth', () => {
  const still: PanelsCase = {
    panels: { arrangement: 'pair-stationary', rodWidth: 72, return: 3.5, widths: 1 },
  };
  it('2 widths on 79 in had less than nothing in a pleat: still panels stand at the ends, pleated as usual', () => {
    // Each 54 - 6 = 48 flat, at 2½ times 19.2: (48 - 19.2) / 5 = 5.76; spaces (19.2 - 3.5) / 4 = 3.925.
    const wide: PanelsCase = { panels: { ...still.panels, rodWidth: 120 } };
    const { pleats, in: inches } = estimateCase(wide);
    expect(pleats?.count).toBe(5);
    expect(inches(Math.round(pleats!.pleat))).toBeCloseTo(5.76, 3);
    expect(inches(Math.round(pleats!.space))).toBeCloseTo(3.925, 3);
    expect(faultsOf(wide)).toEqual([]);
    expect(warningsOf(wide)).toEqual([
      '2 widths make 96 in of flat cloth after hems for 127 in: still panels stand at the ends, and cover ≈38⅜ in together at the usual fullness.',
    ]);
  });
  it('still panels with cloth enough span the rod as before', () => {
    const enough: PanelsCase = { panels: { ...still.panels, widths: 2 } };
    expect(warningsOf(enough)).toEqual([]);
    // (204 - 79) / 2 / 10
    expect(estimateCase(enough).pleats?.pleat).toBeCloseTo(6.25 * 8128, 6);
  });
  it('a pair that draws cannot close with 1 width on 72 in, which was not told', () => {
    const pair: PanelsCase = { panels: { rodWidth: 72, widths: 0.5 } };
    expect(warningsOf(pair)).toEqual([
      '1 width makes 42 in of flat cloth after hems for 72 in: it cannot close, and covers ≈16 13/16 in at the usual fullness.',
    ]);
    expect(estimateCase(pair).pleats?.pleat).toBeGreaterThan(0);
  });
  it('counted widths whose hems leave less than the rod are told', () => {
    // 1 × 54 = 54: one width, 48 after hems.
    expect(warningsOf({ panels: { arrangement: 'one-way', heading: 'flat', rodWidth: 54, fullness: 1 } })).toEqual([
      '1 width makes 48 in of flat cloth after hems for 54 in: it cannot close, and covers 48 in at the usual fullness.',
    ]);
  });
});

describe('measures that no window has', () => {
  it.each([
    [
      'a header of 90 in on 84',
      { heading: 'rod-pocket', header: 90 },
      'header 90 in is no less than the finished length, 84 in',
    ],
    [
      'a header that is the whole panel',
      { heading: 'rod-pocket', header: 84 },
      'header 84 in is no less than the finished length, 84 in',
    ],
    ['a rod 200 in thick', { heading: 'rod-pocket', rodDiameter: 200 }, 'rodDiameter 200 in is thicker than any rod'],
    [
      'an arch of 90 in on a panel of 84',
      { arrangement: 'single', arch: { rise: 90 } },
      'arch.rise 90 in is no less than the finished length, 84 in, from the top of the arch to the hem',
    ],
  ] as const)('%s was priced', (_, panels, wanted) => {
    expect(faultsOf({ panels })).toEqual([wanted]);
  });
  it.each([
    ['a header of 3 in', { heading: 'rod-pocket', header: 3, rodDiameter: 2 }],
    ['an arch of 30 in', { arrangement: 'single', arch: { rise: 30 } }],
  ] as const)('%s is as it should be', (_, panels) => {
    expect(faultsOf({ panels })).toEqual([]);
  });
});
