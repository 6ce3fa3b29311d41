/**
 * Pleats by the cloth that they are made of. Rules: the published table of pleats a width (PL-05) is of cloth of about
 * 54 in; spaces 3 1/2 to 4 in (common practice).
 */
import { describe, expect, it } from 'vitest';
import { referenceRecord } from './reference-record.ts';
import { estimateCase, faceLine } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const PAIR = { rodWidth: 72, fullness: 2.5, return: 3.5, overlap: 3.5 };
const pleatsOf = (given: PanelsCase) => {
  const made = estimateCase(given);
  const pleats = made.pleats!;
  return { count: pleats.count, pleat: made.in(Math.round(pleats.pleat)), space: made.in(Math.round(pleats.space)) };
};
const partOf = (given: PanelsCase, name: string) => estimateCase(given).parts.find(({ part }) => part === name);

describe('pleats of wide and narrow cloth', () => {
  it('a panel of one 118 in width had 5 pleats of 14 in, 9 in apart: 5 × 118 / 54 = 10.9, 11', () => {
    // Flat 118 - 6 = 112, finished 41.25: pleat 70.75 / 11 = 6.43; space (41.25 - 5.25) / 10 = 3.6.
    const made = pleatsOf({ cloth: { width: 118 }, panels: PAIR });
    expect(made.count).toBe(11);
    expect(made.pleat).toBeCloseTo(70.75 / 11, 3);
    expect(made.space).toBeCloseTo(3.6, 3);
  });
  it('280 cm cloth had 41.6 cm in a pleat: 5 × 280 / 137 = 10.2, 10', () => {
    const panels = { ...PAIR, rodWidth: 183, return: 9, overlap: 9 };
    const made = pleatsOf({ units: 'cm', cloth: { width: 280 }, panels });
    expect(made.count).toBe(10);
    expect(made.space).toBeGreaterThan(9);
    expect(made.space).toBeLessThan(10.5);
  });
  it('36 in cloth had 15 pleats, 2 9/16 in apart: 3 widths each are 108 in, 10 pleats', () => {
    const made = pleatsOf({ cloth: { width: 36 }, panels: PAIR });
    expect(made.count).toBe(10);
    expect(made.space).toBeCloseTo(4, 3);
  });
  it('PL-01 (Singer Sewing Library No. 102): 3 widths of 48 in are 13 pleats of 7 in', () => {
    const record = referenceRecord('PL-01');
    const made = pleatsOf({
      practice: { sideHem: 0 },
      cloth: { width: 48 },
      panels: { arrangement: 'single', rodWidth: 49, return: { left: 4, right: 0 }, widths: 3 },
    });
    expect(made.count).toBe(13);
    expect(made.pleat).toBeCloseTo(7, 3);
    expect(record.id).toBe('PL-01');
  });
  it.each([50, 52, 54, 55, 59])('cloth of %d in is about the usual width: 2 widths each keep 10', (width) => {
    expect(pleatsOf({ cloth: { width }, panels: { rodWidth: 72, widths: 2 } }).count).toBe(10);
  });
  it('the working tells the cloth that it counted: 5 × 118 ÷ 54, to the nearest', () => {
    const made = estimateCase({ cloth: { width: 118 }, panels: PAIR });
    expect(made.working.find(({ id }) => id === 'points')).toMatchObject({
      formula: '5 × 118 ÷ 54, to the nearest',
      value: '11',
    });
  });
});

describe('pleats of cloth run sideways', () => {
  const WIDE = { ...PAIR, rodWidth: 90 };
  const sideways: PanelsCase = { cloth: { width: 118, railroad: true }, panels: WIDE };
  it('a pinch pleated pair run sideways had no pleats: 251¼ and 4 hems of 3 is 263¼, 131⅝ each, 12.2', () => {
    expect(faceLine(estimateCase(sideways)).railroaded).toBe(true);
    const made = pleatsOf(sideways);
    expect(made.count).toBe(12);
    // (125.625 - 50.25) / 12 and (50.25 - 5.25) / 11
    expect(made.pleat).toBeCloseTo(6.28, 2);
    expect(made.space).toBeCloseTo(4.09, 2);
  });
  it.each(['pinch-pleat', 'goblet', 'box-pleat'] as const)(
    '%s: rings and hooks, one for a pleat and one for each end',
    (heading) => {
      const given: PanelsCase = { ...sideways, panels: { ...WIDE, heading } };
      expect(partOf(given, 'ring')).toEqual({ part: 'ring', count: 28 });
      expect(partOf(given, 'hook')).toEqual({ part: 'hook', count: 28 });
    },
  );
});
