/**
 * Shower curtains: a worked example from outside the project (`test/reference/estimating-examples.json`), facts of the
 * trade marked "common practice", and rows worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { sayFault } from '#shared/fault.ts';
import { wireShowerCurtain } from '#shared/job-file/wire-shower-curtain.ts';
import { TICKS_PER_YARD } from '#shared/length.ts';
import { estimateShower, showerFaults } from './shower-curtain-case.ts';
import type { ShowerCase } from './shower-curtain-case.ts';
import { publishedExample } from './soft-goods-case.ts';

describe('published worked examples', () => {
  it('SC-02 75 by 75 in: two panels of 84 by 40, 4.67 yards (eHow)', () => {
    const of = publishedExample('SC-02');
    const made = estimateShower({
      cloth: { width: of.input('panel_width') },
      making: { topHem: 3, bottomHem: of.input('add_length') - 3, sideHem: of.input('side_hems') / 2 },
      curtain: { finishedWidth: of.input('finished_width'), finishedLength: of.input('finished_length') },
    });
    const line = made.takeoff[0]!;
    expect(made.in(line.cutLength)).toBe(of.step('cut_length'));
    expect(made.in(made.sheet.cutWidth)).toBe(of.step('cut_width'));
    expect(line.cuts).toBe(of.step('panels'));
    expect(line.handbook / TICKS_PER_YARD).toBeCloseTo(of.says('yards'), 2);
  });
});

describe('rows worked by hand', () => {
  it('12 eyelets for 72 in, the outer ones 1½ in from the edges (common practice)', () => {
    const made = estimateShower({});
    const { eyelets, seams } = made.sheet;
    expect(eyelets.places).toHaveLength(12);
    expect([made.in(eyelets.places[0]!), made.in(eyelets.places[11]!)]).toEqual([1.5, 70.5]);
    expect(made.in(eyelets.spacing)).toBe(6.2727);
    // Two widths of 54 for 75: the seam is in the middle, between two eyelets.
    expect(seams.map(made.in)).toEqual([36]);
    expect(eyelets.clearOfSeams).toBe(true);
    expect(made.parts).toEqual([
      { part: 'curtainRing', count: 12 },
      { part: 'eyelet', count: 12 },
    ]);
  });

  it('an eyelet more keeps them off the seam; a number that was given stays and is told', () => {
    // 75 in would take 13, the middle one on the seam.
    const made = estimateShower({ curtain: { finishedWidth: 75 } });
    expect(made.sheet.eyelets.places).toHaveLength(14);
    const given = estimateShower({ curtain: { finishedWidth: 75, eyelets: 13 } });
    expect(given.sheet.eyelets.places).toHaveLength(13);
    expect(given.sheet.warnings[0]?.path).toBe('treatment.eyelets');
  });

  it('a pair shares three widths, half a width each from one cut', () => {
    // 130 + 4 × 1½ = 136; 136 ÷ 54 = 2.5: 3.
    const made = estimateShower({ curtain: { arrangement: 'pair', finishedWidth: 130 } });
    expect(made.takeoff[0]).toMatchObject({ cuts: 3, halfWidths: 6 });
    expect(made.in(made.sheet.finished.width)).toBe(65);
    expect(made.sheet.seams).toHaveLength(1);
  });

  it('a lining hangs 1 in shorter; a liner that is made is summed with its cloth and has its own eyelets', () => {
    const lined = estimateShower({ behind: ['std-white'] });
    // 72 + 3 + 3 − 1.
    expect(lined.in(lined.takeoff[1]!.plainCut)).toBe(77);
    const liner = estimateShower({ curtain: { liner: { cloth: 'face' } } });
    expect(liner.takeoff).toHaveLength(1);
    // Curtain 2 × 81, liner 2 × 80.
    expect(liner.in(liner.takeoff[0]!.plan)).toBe(322);
    expect(liner.parts).toEqual([
      { part: 'curtainRing', count: 12 },
      { part: 'eyelet', count: 24 },
    ]);
    const bought = estimateShower({ curtain: { liner: 'bought' }, quantity: 2 });
    expect(bought.sheet.liner).toMatchObject({ from: 'bought', count: 2 });
    expect(bought.in(bought.sheet.liner!.length)).toBe(71);
  });

  it('sideways it has no seam', () => {
    const made = estimateShower({ cloth: { width: 118, railroad: true } });
    expect(made.takeoff[0]).toMatchObject({ railroaded: true, cuts: 1 });
    expect(made.in(made.takeoff[0]!.plan)).toBe(75);
    expect(made.sheet.seams).toEqual([]);
  });
});

describe('faults name the field and the remedy', () => {
  it.each<[string, ShowerCase, string]>([
    ['no width', { curtain: { finishedWidth: 0 } }, 'finishedWidth'],
    ['no length', { curtain: { finishedLength: 0 } }, 'finishedLength'],
    ['a liner nobody listed', { curtain: { liner: { cloth: 'vinyl' } } }, 'liner'],
    ['no eyelet spacing', { making: { eyeletSpacing: 0 } }, 'practice.showerCurtain.eyeletSpacing'],
    ['eyelets like a zip', { making: { eyeletSpacing: 0.1 } }, 'finishedWidth'],
    ['insets over the whole width', { making: { eyeletInset: 36 } }, 'practice.showerCurtain.eyeletInset'],
    ['a lining of nothing', { making: { liningShorter: 90 } }, 'practice.showerCurtain.liningShorter'],
    ['a liner of nothing', { making: { linerShorter: 90 } }, 'practice.showerCurtain.linerShorter'],
    ['seams over the whole cloth', { practice: { seam: 27 } }, 'practice.seam'],
    ['cloth like a thread', { cloth: { width: 0.05 } }, 'finishedWidth'],
  ])('%s', (_, given, path) => {
    const faults = showerFaults(given);
    expect(faults.map((fault) => fault.path)).toContain(`treatment.${path}`);
    faults.forEach((fault) => expect(sayFault(fault)).toMatch(/^treatment\.[\w.]+: .+; .+$/));
  });

  it('the schema refuses unknown keys and liners', () => {
    const curtain = { kind: 'shower-curtain', finishedWidth: 72, finishedLength: 72 };
    const schema = wireShowerCurtain({});
    expect(schema.safeParse(curtain).success).toBe(true);
    expect(schema.safeParse({ ...curtain, liner: 'vinyl' }).success).toBe(false);
    expect(schema.safeParse({ ...curtain, eyelets: 1 }).success).toBe(false);
    expect(schema.safeParse({ ...curtain, hooks: 12 }).success).toBe(false);
  });
});
