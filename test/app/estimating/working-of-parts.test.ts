/** Every quantity can be checked by hand from its working alone: parts, half-drop, bands, labour. Worked by hand. */
import { describe, expect, it } from 'vitest';
import { estimateCase } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

function workingOf(given: PanelsCase): Record<string, string> {
  return Object.fromEntries(estimateCase(given).working.map(({ id, formula, value }) => [id, `${formula} = ${value}`]));
}
const PAIR: PanelsCase = { panels: { rodWidth: 72, return: 3.5, overlap: 3.5 } };

describe('what is bought had no working', () => {
  it('rod, brackets, rings, hooks, tape, weights and billable widths of the worked example', () => {
    expect(workingOf(PAIR)).toMatchObject({
      rod: '72 + 3½ + 3½ = 79',
      brackets: '72 ÷ 48 = 1.5, up, and 1 = 3',
      fixings: '(10 pleats + 2 ends) × 2 panels = 24',
      'heading-tape': '204 = 5.67 yd',
      weights: '2 × 2 + 2 = 6',
      'billable-widths': '4, up = 4',
    });
  });
  it('of two treatments alike', () => {
    expect(workingOf({ panels: { ...PAIR.panels, quantity: 2 } })).toMatchObject({
      rod: '(72 + 3½ + 3½) × 2 treatments = 158',
      brackets: '72 ÷ 48 = 1.5, up, and 1 × 2 treatments = 6',
      weights: '(2 × 2 + 2) × 2 treatments = 12',
    });
  });
  it('wide cloth bills by its flat width', () => {
    expect(workingOf({ ...PAIR, cloth: { width: 118 } })['billable-widths']).toBe('236 ÷ 54 = 4.37, up = 5');
  });
  it('a sheer has a cord and no weights', () => {
    const working = workingOf({ cloth: { family: 'sheer' }, panels: PAIR.panels! });
    expect(working['weighted-cord']).toMatch(/^\d+.* yd$/);
    expect(working).not.toHaveProperty('weights');
  });
  it('a motor takes 2 to 4 in at its end', () => {
    expect(workingOf({ panels: { ...PAIR.panels, rod: 'track', motor: { at: 'left' } } })['motor']).toBe(
      '72 − 2 to 4 = 68 to 70',
    );
  });
});

describe('a half-drop', () => {
  it('said "the better of two orders" and no figure', () => {
    // 100 in of 27: alike ⌈100/27⌉ × 27 = 108, to the other phase (⌈100/27 - ½⌉ + ½) × 27 = 121½; 2 level, 2 dropped:
    // one change 2 × 108 + 121½ + 100 = 437½; three changes 464½.
    const working = workingOf({ ...PAIR, cloth: { repeat: { vertical: 27, match: 'half-drop' } } });
    expect(working['laid-out']).toBe(
      '2 × 108 + 1 × 121½ to the other phase + 100, 2 level and 2 dropped; by the chart 4 × (108 + 13½) = 13½ yd = 12.15 yd',
    );
  });
});

describe('a band', () => {
  it('said nothing of the extra repeat in its order', () => {
    const working = workingOf({
      panels: { ...PAIR.panels, bands: [{ edge: 'leading', cloth: 'band', width: 3 }] },
      more: [{ id: 'band', role: 'face', width: 54, price: '9/yd', repeat: { vertical: 27, match: 'straight' } }],
    });
    // One cut of 100 in, 2.78 yd, and one repeat.
    expect(working['band-leading-order']).toBe('2.78 yd + ¾ yd, up to ¼ yd = 3¾ yd');
  });
});

it("an order names the supplier's own step", () => {
  const { working } = estimateCase({ ...PAIR, cloth: { orderStep: '1 yd', leastOrder: '15 yd' } });
  const order = working.find(({ id }) => id === 'order');
  expect([order?.formula, order?.value]).toEqual(['11.11 yd + 0 yd, up to 1 yd, at least 15 yd', '15 yd']);
  expect(order?.rests).toContain("the supplier's step");
});
