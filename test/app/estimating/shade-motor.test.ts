/** A motor raises a Roman shade: common practice gives it 2 to 4 in at one end. Figures are worked by hand. */
import { describe, expect, it } from 'vitest';
import { adviseMotor } from '#app/estimating/roman-shade/work-motor.ts';
import { estimateShade, readShade } from './roman-shade-case.ts';
import type { ShadeCase } from './roman-shade-case.ts';

const size = { basis: 'finished', width: 40, length: 60 } as const;
const shade = (more: ShadeCase['shade'], making: ShadeCase['making'] = {}): ShadeCase => ({
  shade: { size, control: 'left', ...more },
  making,
});
const told = (given: ShadeCase): string[] =>
  estimateShade(given)
    .sheet.warnings.filter(({ path }) => path.endsWith('lift'))
    .map(({ says }) => says);

describe('a Roman shade raised by a motor', () => {
  it('leaves 36 to 38 of 40 in beside it', () => {
    const step = estimateShade(shade({ lift: 'motor' })).working.find(({ id }) => id === 'motor');
    expect(step).toMatchObject({ formula: '40 − 2 to 4', value: '36 to 38' });
    expect(step?.rests).toContain('the left one');
  });
  it('tells of the column of rings that stands where the motor is: 1 in from the edge', () => {
    const says = told(shade({ lift: 'motor' }));
    expect(says).toHaveLength(1);
    expect(says[0]).toMatch(/stands 1 in from the left end, where the motor takes 2 to 4 in/);
    expect(told(shade({ lift: 'motor' }, { edgeInset: 4 }))).toEqual([]);
  });
  it('winds each cord above its own column, as a cordless lift does', () => {
    const totals = (['motor', 'cordless', 'inaccessible-cords'] as const).map(
      (lift) => estimateShade(shade({ lift })).sheet.cords.total,
    );
    expect(totals[0]).toBe(totals[1]);
    expect(totals[0]).toBeLessThan(totals[2] ?? 0);
  });
  it('is no cord in reach, and its wiring is for licensed people', () => {
    expect(estimateShade(shade({ lift: 'motor' })).sheet.cords.accessible).toBe(false);
    expect(adviseMotor(readShade(shade({ lift: 'motor' })).shade).map(({ level }) => level)).toEqual(['caution']);
  });
  it('nothing of it where there is none', () => {
    const made = estimateShade(shade({}));
    expect(made.working.some(({ id }) => id === 'motor')).toBe(false);
    expect([told(shade({})), adviseMotor(readShade(shade({})).shade)]).toEqual([[], []]);
  });
});
