/** Wave headings: the gliders decide, and nothing contradicts them. Rules are common practice. */
import { describe, expect, it } from 'vitest';
import { warnPanels } from '#app/estimating/panels/warn-panels.ts';
import { speaker } from '#app/estimating/say.ts';
import { estimateCase, faceLine, readPanels } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const stepOf = (given: PanelsCase, id: string) => estimateCase(given).working.find((step) => step.id === id);
const warningsOf = (given: PanelsCase) =>
  warnPanels(readPanels(given).panels, estimateCase(given), speaker(given.units ?? 'in', 'en-US'));

describe('wave', () => {
  const pair: PanelsCase = {
    panels: {
      heading: 'wave',
      rodWidth: 72,
      fullness: 2,
      return: 3.5,
      overlap: 3.5,
    },
  };
  it('the working said 72 / 2 / 2⅜ and printed 20: its track is 82½, 41¼ / 2⅜ = 17.4, 18 and 1, made even', () => {
    expect(stepOf(pair, 'points')).toMatchObject({
      formula: '82½ ÷ 2 ÷ 2⅜, up, and 1, made even',
      value: '20',
    });
    expect(stepOf(pair, 'flat-width')).toMatchObject({
      formula: '2 × (19 × 2⅜ × 2 + 2)',
      value: '184½',
    });
  });
  it('the heading tape was as long as the cloth, 204 in: the pitch makes 184½', () => {
    const made = estimateCase(pair);
    const tape = made.parts.find(({ part }) => part === 'headingTape');
    expect(made.in(tape && 'length' in tape ? tape.length : 0)).toBe(184.5);
  });
  it('one width fewer was offered though its cloth is less than the gliders ask', () => {
    // 168¼ in asked takes 4 widths; 3 make 162 - 6 = 156, 1.97 times.
    const single: PanelsCase = {
      panels: {
        arrangement: 'one-way',
        heading: 'wave',
        rodWidth: 79,
        fullness: 2,
      },
    };
    const made = estimateCase(single);
    expect(stepOf(single, 'flat-width')?.value).toBe('168¼');
    expect(faceLine(made).halfWidths).toBe(8);
    expect(made.offer).toBeNull();
  });
  it('2 widths given for 40 gliders: 96 in of cloth where they ask 184½ is told', () => {
    const still: PanelsCase = {
      panels: {
        arrangement: 'pair-stationary',
        heading: 'wave',
        rodWidth: 75.5,
        return: 3.5,
        overlap: 0,
        widths: 1,
      },
    };
    expect(warningsOf(still)).toEqual([
      {
        path: 'rooms[0].openings[0].treatments[0].widths',
        says: '2 widths make 96 in of flat cloth after hems; 40 gliders ask 184½ in: give more widths, or a shorter track.',
      },
    ]);
  });
  it('counted widths whose hems take what the gliders need are told; hems counted in, there is a width more', () => {
    // 105 / 2⅜ = 44.2: 46 gliders, 45 × 4¾ + 2 = 215¾ of 216 - 6.
    const given: PanelsCase = {
      panels: {
        arrangement: 'one-way',
        heading: 'wave',
        rodWidth: 105,
        fullness: 2,
      },
    };
    expect(faceLine(estimateCase(given)).halfWidths).toBe(8);
    expect(warningsOf(given).map(({ says }) => says)).toEqual([
      '4 widths make 210 in of flat cloth after hems; 46 gliders ask 215¾ in: count hems in the width, or leave gliders out.',
    ]);
    const counted: PanelsCase = { ...given, practice: { hemsInWidth: true } };
    expect(faceLine(estimateCase(counted)).halfWidths).toBe(10);
    expect(warningsOf(counted)).toEqual([]);
  });
});
