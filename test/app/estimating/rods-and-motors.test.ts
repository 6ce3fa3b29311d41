/** What panels hang on: rings or a track, a rod bent to an arch, a motor at one end. Common practice. */
import { describe, expect, it } from 'vitest';
import { advisePanels } from '#app/estimating/panels/advise-panels.ts';
import { estimateCase, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const partsOf = (panels: PanelsCase['panels']): Record<string, number> =>
  Object.fromEntries(
    estimateCase({ panels }).parts.map((part) => [part.part, 'count' in part ? part.count : part.length / 8128]),
  );
const rulesOf = (panels: PanelsCase['panels']): string[] =>
  advisePanels(readPanels({ panels }).panels, undefined).map(({ rule, level }) => `${level} ${rule}`);

describe('a rod under an arch', () => {
  it('was as long as the window is wide: it follows the curve, 1.571 times for a half circle', () => {
    // 72 × 1.5708 = 113.1, with two returns of 3 1/2; brackets 1 + ⌈113.1 / 48⌉.
    const parts = partsOf({ arrangement: 'pair-stationary', arch: { rise: 36 }, return: 3.5 });
    expect(parts['rod']).toBeCloseTo((72 * Math.PI) / 2 + 7, 2);
    expect(parts['bracket']).toBe(4);
    expect(parts).not.toHaveProperty('finial');
  });
});

describe('rings or a track', () => {
  it('a track has carriers instead of rings, and no finials', () => {
    const rings = partsOf({ rod: 'rings' });
    const track = partsOf({ rod: 'track' });
    expect(track['glider']).toBe(rings['ring']);
    expect(track).not.toHaveProperty('ring');
    expect(track).not.toHaveProperty('finial');
    expect(rings['finial']).toBe(2);
    expect(partsOf({})).toEqual(rings);
  });
  it('a true overlap with nothing said of the rod is noted', () => {
    expect(rulesOf({ overlap: 3.5 })).toEqual(['note overlap-on-rings']);
    expect(rulesOf({ overlap: 1 })).toEqual([]);
    expect(rulesOf({ overlap: 3.5, rod: 'track' })).toEqual([]);
    expect(rulesOf({ overlap: 3.5, mount: { where: 'ceiling' } })).toEqual([]);
  });
});

describe('a motor', () => {
  it('takes room at its end, and round a bay its load falls', () => {
    expect(rulesOf({ motor: { at: 'left' } })).toEqual(['caution motor']);
    const bay = { rodWidth: undefined, bay: { runs: [30, 60, 30], turns: [45, 45], projection: 4 } };
    const told = advisePanels(readPanels({ panels: { ...bay, motor: { at: 'left' } } }).panels, undefined);
    expect(told.map(({ says }) => says).join()).toContain('falls at every bend');
  });
});
