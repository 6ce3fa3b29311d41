/**
 * Worked examples from outside the project: each row names its record in `test/reference/estimating-examples.json`,
 * which carries source, address, inputs, steps and answer. Negative rows must not be reproduced.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { lengthFrom } from '#shared/length.ts';
import { areaOf, GRAMS_PER_OUNCE, parseWeight } from '#shared/weight.ts';
import { estimateCase, faceLine } from './panels-case.ts';
import type { PanelsCase } from './panels-case.ts';

const figures = z.record(z.string(), z.unknown());
const record = z.object({ id: z.string(), source: z.string(), inputs: figures, steps: figures, answer: figures });
const records = z
  .array(record)
  .parse(JSON.parse(readFileSync(new URL('../../reference/estimating-examples.json', import.meta.url), 'utf8')));

function example(id: string): z.infer<typeof record> & {
  input: (key: string) => number;
  step: (key: string) => number;
  says: (key: string) => number;
} {
  const found = records.find((each) => each.id === id);
  if (!found) throw new Error(`no record ${id}`);
  const number = (from: z.infer<typeof figures>, key: string): number => z.number().parse(from[key]);
  return {
    ...found,
    input: (key) => number(found.inputs, key),
    step: (key) => number(found.steps, key),
    says: (key) => number(found.answer, key),
  };
}

/** A practice in which heading and hem together add this much to the finished length. */
function adding(heading: number, hem: number, squaring = 0): NonNullable<PanelsCase['practice']> {
  return { headingAllowance: { 'pinch-pleat': heading }, bottomHem: hem, squaring };
}

const straight = (vertical: number) => ({ vertical, match: 'straight' as const });

describe('published worked examples', () => {
  it('US-01 pair, two-way draw, 24 in repeat (custom workroom, formula sheet)', () => {
    const of = example('US-01');
    const made = estimateCase({
      practice: adding(8, 8),
      cloth: { width: of.input('fabric_width'), repeat: straight(of.input('repeat_v')) },
      panels: {
        rodWidth: of.input('rod_width'),
        finishedLength: of.input('finished_length'),
        fullness: of.input('fullness'),
        return: { left: of.input('return_left'), right: of.input('return_right') },
        overlap: of.input('overlap_total'),
      },
    });
    const line = faceLine(made);
    expect(made.in(made.finished.width)).toBe(of.step('overall_width'));
    expect(made.in(line.plainCut)).toBe(of.step('cut_length_plain'));
    expect(line.repeatsPerCut).toBe(of.step('repeats_per_cut'));
    expect(made.in(line.cutLength)).toBe(of.step('cut_length'));
    expect((line.halfWidths ?? 0) / 2).toBe(of.step('widths'));
    expect(made.in(line.handbook)).toBe(of.says('total_inches'));
    expect(made.yards(line.handbook)).toBeCloseTo(of.says('yards'), 2);
  });

  it('US-02 yards are never cut short: 12.667, not the printed 12.6 (negative)', () => {
    const of = example('US-02');
    const made = estimateCase({
      practice: adding(6, 6),
      panels: { rodWidth: of.input('window_outside_width'), finishedLength: of.input('cut_length') - 12, fullness: 3 },
    });
    const line = faceLine(made);
    expect((line.halfWidths ?? 0) / 2).toBe(of.step('widths'));
    expect(made.in(line.handbook)).toBe(of.step('total_inches'));
    expect(made.yards(line.handbook)).toBe(12.6667);
    expect(made.yards(line.order)).toBeGreaterThan(of.says('yards'));
  });

  it('US-03 11 in repeat: cuts of 121 in', () => {
    const of = example('US-03');
    const made = estimateCase({
      practice: adding(6, 6),
      cloth: { repeat: straight(of.input('repeat_v')) },
      panels: { rodWidth: of.input('window_outside_width'), finishedLength: of.input('cut_length') - 12, fullness: 3 },
    });
    const line = faceLine(made);
    expect(made.in(line.cutLength)).toBe(of.step('cut_length'));
    expect(made.yards(line.handbook)).toBeCloseTo(of.says('yards'), 2);
  });

  it('US-04 cut length with squaring', () => {
    const of = example('US-04');
    const made = estimateCase({
      practice: adding(8, 8, 2),
      panels: { rodWidth: of.input('finished_width'), finishedLength: of.input('finished_length') },
    });
    expect(made.in(faceLine(made).plainCut)).toBe(of.says('cut_length'));
  });

  it('US-05 9.08 repeats go to 10', () => {
    const of = example('US-05');
    const made = estimateCase({
      practice: adding(8, 8, 2),
      cloth: { repeat: straight(of.input('repeat_v')) },
      panels: { finishedLength: 100 },
    });
    const line = faceLine(made);
    expect(made.in(line.plainCut)).toBe(of.input('cut_length_plain'));
    expect(line.repeatsPerCut).toBe(of.step('repeats'));
    expect(made.in(line.cutLength)).toBe(of.says('cut_length'));
  });

  it('US-07 up to the next multiple of the repeat, with its waste', () => {
    const of = example('US-07');
    const made = estimateCase({
      practice: adding(8, 8),
      cloth: { repeat: straight(of.input('repeat_v')) },
      panels: { finishedLength: of.input('finished_length') },
    });
    const line = faceLine(made);
    expect(made.in(line.cutLength)).toBe(of.says('cut_length'));
    expect(made.in(line.cutLength - line.plainCut)).toBe(of.says('waste_per_cut'));
  });

  it('US-10 3.6 repeats go to 4', () => {
    const of = example('US-10');
    const made = estimateCase({
      practice: adding(8, 8),
      cloth: { repeat: straight(of.input('repeat_v')) },
      panels: { finishedLength: of.input('cut_length_plain') - 16 },
    });
    const line = faceLine(made);
    expect(made.in(line.cutLength)).toBe(of.says('cut_length'));
    expect(made.in(line.cutLength - line.plainCut)).toBe(of.says('waste'));
  });

  it('US-11 2.59 widths go to 3', () => {
    const of = example('US-11');
    const made = estimateCase({
      panels: { arrangement: 'single', rodWidth: of.input('finished_width'), fullness: of.input('fullness') },
    });
    expect((faceLine(made).halfWidths ?? 0) / 2).toBe(of.says('widths'));
  });

  it('US-12 returns and overlap of 12 in: 3 widths, one and a half a side', () => {
    const of = example('US-12');
    const made = estimateCase({
      panels: {
        rodWidth: of.input('rod_width'),
        fullness: of.input('fullness'),
        return: 4,
        overlap: of.input('add_for_returns_overlap') - 8,
      },
    });
    expect((faceLine(made).halfWidths ?? 0) / 2).toBe(of.says('widths'));
    expect((faceLine(made).halfWidths ?? 0) / 4).toBe(of.says('per_side'));
  });

  it('US-13 5 widths of 108 in are 15 yards', () => {
    const of = example('US-13');
    const made = estimateCase({
      practice: adding(8, 8),
      panels: { arrangement: 'single', finishedLength: of.input('finished_length'), widths: of.input('widths') },
    });
    expect(made.in(faceLine(made).cutLength)).toBe(of.step('cut_length'));
    expect(made.yards(faceLine(made).handbook)).toBe(of.says('yards'));
  });

  it('UK-06 one repeat added to each cut, as its setting', () => {
    const of = example('UK-06');
    const given: PanelsCase = {
      units: 'cm',
      practice: { ...adding(0, 0), repeatRule: 'add-one' },
      cloth: { width: 137, repeat: straight(of.input('repeat_v')) },
      panels: { arrangement: 'single', finishedLength: of.input('cut_drop'), widths: of.input('widths') },
    };
    const made = estimateCase(given);
    expect(made.in(faceLine(made).cutLength)).toBe(of.step('adjusted'));
    expect(made.in(faceLine(made).handbook)).toBe(of.step('total_cm'));
    // The default rule keeps an exact quotient: 135 is 5 × 27.
    const whole = estimateCase({ ...given, practice: adding(0, 0) });
    expect(made.in(faceLine(whole).handbook)).toBe(540);
  });

  it('UK-10 exactly 3 widths stay 3; 7.2 m, not the printed 2.4 m (negative)', () => {
    const of = example('UK-10');
    const made = estimateCase({
      units: 'cm',
      practice: adding(20, 20),
      cloth: { width: of.input('fabric_width') },
      panels: { rodWidth: of.input('track'), finishedLength: of.input('drop'), fullness: of.input('fullness') },
    });
    const line = faceLine(made);
    expect((line.halfWidths ?? 0) / 2).toBe(of.step('widths'));
    expect(made.in(line.cutLength)).toBe(of.step('cut'));
    expect(made.in(line.handbook) / 100).toBe(of.says('metres_correct'));
    expect(made.in(line.handbook) / 100).not.toBe(of.says('metres_printed'));
  });

  it('UK-11 2.73 widths of 137 cm go to 3', () => {
    const of = example('UK-11');
    const made = estimateCase({
      units: 'cm',
      cloth: { width: of.input('fabric_width') },
      panels: { rodWidth: of.input('pole'), finishedLength: 200, fullness: of.input('fullness') },
    });
    expect((faceLine(made).halfWidths ?? 0) / 2).toBe(of.says('widths'));
  });

  it('PM-01 the rounding rule against adding a repeat: 208 in against 252 in', () => {
    const of = example('PM-01');
    const given: PanelsCase = {
      practice: adding(8, 8),
      cloth: { repeat: straight(of.input('repeat_v')) },
      panels: { arrangement: 'single', finishedLength: of.input('cut_length_plain') - 16, widths: of.input('widths') },
    };
    const exact = estimateCase(given);
    const easy = estimateCase({ ...given, practice: { ...adding(8, 8), repeatRule: 'add-one' } });
    expect(exact.in(faceLine(exact).handbook)).toBe(of.says('exact_inches'));
    expect(easy.in(faceLine(easy).handbook)).toBe(of.says('easy_inches'));
  });

  it('HD-01 half-drop by the printed rule, even and odd widths (Encyclopaedia of Curtains p. 119)', () => {
    const of = example('HD-01');
    const halfDrop = (widths: number): PanelsCase => ({
      units: 'cm',
      practice: adding(20, 20),
      cloth: { width: 137, repeat: { vertical: of.input('repeat_v'), match: 'half-drop' } },
      panels: { arrangement: 'single', finishedLength: of.input('cut_drop_plain') - 40, widths },
    });
    const even = estimateCase(halfDrop(of.input('widths_even')));
    const odd = estimateCase(halfDrop(of.input('widths_odd')));
    expect(even.in(faceLine(even).handbook) / 100).toBe(of.says('metres_even'));
    expect(odd.in(faceLine(odd).handbook) / 100).toBe(of.says('metres_odd'));
    expect(faceLine(even).plan).toBeLessThanOrEqual(faceLine(even).handbook);
    expect(faceLine(odd).plan).toBeLessThanOrEqual(faceLine(odd).handbook);
  });

  it('RR-01 voile used sideways: the flat width is the run', () => {
    const of = example('RR-01');
    const made = estimateCase({
      units: 'cm',
      practice: { ...adding(100 * of.input('top_hem'), 100 * of.input('bottom_hem')), sideHem: 0 },
      cloth: { width: 100 * of.step('required_roll_width'), railroad: true, family: 'sheer' },
      panels: {
        rodWidth: 100 * of.input('track'),
        finishedLength: 100 * of.input('finished_height'),
        fullness: of.input('fullness'),
      },
    });
    const line = faceLine(made);
    expect(line.railroaded).toBe(true);
    expect(line.halfWidths).toBeNull();
    expect(made.in(line.handbook) / 100).toBe(of.says('metres'));
  });

  it('IN-01 face and lining, with its own practice: 4 in heading, doubled 4 in hem; lining doubled 3 in hem, hung 1 in short', () => {
    const of = example('IN-01');
    const made = estimateCase({
      practice: {
        headingAllowance: { 'pinch-pleat': 4 },
        bottomHem: 8,
        lining: { headingAllowance: 4, bottomHem: 6, shorter: of.says('lining_above_face_hem') },
      },
      panels: { finishedLength: of.input('ring_to_floor') - of.input('clearance') },
      behind: ['std-white'],
    });
    expect(made.in(made.finished.length)).toBe(of.step('finished'));
    expect(made.in(faceLine(made).cutLength)).toBe(of.says('face_cut'));
    expect(made.in(made.takeoff[1]?.cutLength ?? 0)).toBe(of.says('lining_cut'));
  });

  it('LN-01 a lining 2 in shorter than the turned panel', () => {
    const of = example('LN-01');
    const made = estimateCase({
      practice: { lining: { headingAllowance: 0, bottomHem: 0, shorter: of.input('shorter') } },
      panels: { finishedLength: of.input('panel_after_top_hem') },
      behind: ['std-white'],
    });
    expect(made.in(made.takeoff[1]?.cutLength ?? 0)).toBe(of.says('lining_cut'));
  });

  it('US-09 3.33 repeats go to 4, with its hems and without; 19 in of hems would take a fifth', () => {
    const of = example('US-09');
    const cutWith = (hems: number): number => {
      const made = estimateCase({
        practice: adding(0, hems),
        cloth: { repeat: straight(of.input('repeat_v')) },
        panels: { finishedLength: of.input('finished_length') },
      });
      return made.in(faceLine(made).cutLength);
    };
    expect([cutWith(0), cutWith(16), cutWith(19)]).toEqual([of.says('cut_length'), of.says('cut_length'), 135]);
  });

  it('US-18 two lengths of 45 in cloth in each panel of a full gathered pair: 328 in', () => {
    const of = example('US-18');
    const made = estimateCase({
      practice: { headingAllowance: { 'pencil-pleat': of.input('top_allow') }, bottomHem: of.input('below') },
      cloth: { width: of.input('fabric_width') },
      panels: {
        heading: 'pencil-pleat',
        rodWidth: of.input('window_width') * of.input('panels'),
        finishedLength: of.input('finished_length'),
        widths: Math.ceil(of.input('panel_width') / of.input('fabric_width')),
      },
    });
    expect(made.in(faceLine(made).cutLength)).toBe(of.step('cut_length'));
    expect((faceLine(made).halfWidths ?? 0) / 4).toBe(of.step('lengths_per_panel'));
    expect(made.yards(faceLine(made).handbook)).toBeCloseTo(of.says('yards'), 2);
  });

  it('RP-01 a cased curtain in one piece: 61¼ by 63¾ in', () => {
    const of = example('RP-01');
    const seam = of.input('seam_each');
    const made = estimateCase({
      practice: { headingAllowance: { 'rod-pocket': of.input('casing') + seam }, bottomHem: seam, sideHem: seam },
      cloth: { width: 70, railroad: true },
      panels: {
        arrangement: 'single',
        heading: 'rod-pocket',
        rodWidth: of.input('window_width'),
        finishedLength: of.input('window_height'),
        fullness: of.input('fullness'),
      },
    });
    // Cut across the cloth: its length across, its width along.
    expect(faceLine(made).railroaded).toBe(true);
    expect(made.in(faceLine(made).cutLength)).toBe(of.says('cut_width'));
    expect(made.in(faceLine(made).plainCut)).toBe(of.says('cut_length'));
  });

  it('HW-02 48 square yards at the stated 6 oz are 18 lb, not the printed 12 (negative: it reckoned with 4)', () => {
    const of = example('HW-02');
    const wide = lengthFrom(of.input('fabric_width_in'), 'in');
    const grams = (ounces: number): number =>
      areaOf(wide, lengthFrom(of.input('yards'), 'yd')) * (parseWeight(`${ounces} oz/yd2`, wide) ?? 0);
    const pounds = (ounces: number): number => grams(ounces) / (16 * GRAMS_PER_OUNCE);
    expect(pounds(of.input('oz_per_sqyd_stated'))).toBeCloseTo(18, 9);
    expect(pounds(of.input('oz_per_sqyd_used'))).toBeCloseTo(of.says('lb'), 9);
  });

  it('every record is reproduced by a test, or listed with the reason', () => {
    const listed = z
      .object({ unanswered: z.record(z.string(), z.string().min(20)) })
      .parse(JSON.parse(readFileSync(new URL('../../reference/unanswered-estimating.json', import.meta.url), 'utf8')));
    const tests = readdirSync(import.meta.dirname)
      .filter((file) => file.endsWith('.test.ts'))
      .map((file) => readFileSync(new URL(file, import.meta.url), 'utf8'))
      .concat(readFileSync(new URL('../pricing/price-job.test.ts', import.meta.url), 'utf8'))
      .join('\n');
    const named = (id: string): boolean => new RegExp(`['"\`(/ ]${id}[^0-9]`).test(tests);
    expect(records.filter(({ id }) => named(id) === id in listed.unanswered).map(({ id }) => id)).toEqual([]);
    expect(records.filter(({ id }) => named(id)).length).toBeGreaterThanOrEqual(40);
  });
});
