/** Several still panels on one rod share widths in halves. Rule: whole or half widths only (common practice). */
import { describe, expect, it } from 'vitest';
import { cutsOfPanels } from '#app/estimating/panels/cuts-of-panels.ts';
import { estimateCase, faceLine, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

describe('several panels on one rod', () => {
  const three: PanelsCase = {
    panels: { arrangement: 'pair-stationary', panelsOnRod: 3, rodWidth: 72, fullness: 2.5, return: 3.5 },
  };
  it('three panels shared 4 widths, a third of one each: 197½ / 54 = 3.66 is 1½ each, 4½, from 5 cuts', () => {
    const line = faceLine(estimateCase(three));
    expect(line.halfWidths).toBe(9);
    expect(line.cuts).toBe(5);
  });
  it('its working says so', () => {
    const made = estimateCase(three);
    expect(made.working.find(({ id }) => id === 'widths')).toMatchObject({ value: '4½' });
    expect(made.working.find(({ id }) => id === 'widths')?.formula).toContain('each piece up to half widths');
  });
  it.each([3, 4, 5, 7])('%d panels: no piece has a third of a width, counted in hems or not', (panelsOnRod) => {
    for (const hemsInWidth of [false, true])
      for (const rodWidth of [40, 72, 110, 155]) {
        const made = estimateCase({ practice: { hemsInWidth }, panels: { ...three.panels, panelsOnRod, rodWidth } });
        expect((faceLine(made).halfWidths ?? 0.5) % panelsOnRod).toBe(0);
      }
  });
  it('the phases of a half-drop are those of 1½ widths each: 3 level widths, 3 halves half a repeat lower', () => {
    const given: PanelsCase = { ...three, cloth: { repeat: { vertical: 24, match: 'half-drop' } } };
    const { panels, face } = readPanels(given);
    const groups = cutsOfPanels(panels, estimateCase(given), face, []);
    const counted = (half: boolean) =>
      groups.filter((group) => (group.half ?? false) === half).reduce((sum, group) => sum + group.count, 0);
    expect([counted(false), counted(true)]).toEqual([3, 3]);
    expect(groups.map(({ phase, half }) => (half ? phase === 12 * 8128 : phase === 0))).not.toContain(false);
  });
  it('a lining on its own width is shared in halves too: 225 / 45 = 5 for three is 2 each', () => {
    const lining = { id: 'narrow', role: 'lining' as const, family: 'standard' as const, width: 45 };
    const made = estimateCase({ ...three, linings: [lining], behind: ['narrow'] });
    // The face makes 4½ × 54 - 6 × 3 = 225; 1½ each would be 4½ widths.
    expect(made.takeoff[1]?.halfWidths).toBe(12);
  });
});
