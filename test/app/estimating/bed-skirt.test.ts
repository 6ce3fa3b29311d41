/**
 * Bed skirts: worked examples from outside the project (records of `test/reference/estimating-examples.json`), facts of the
 * trade marked "common practice", and rows worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { shareOut } from '#app/estimating/share-out.ts';
import { sayFault } from '#shared/fault.ts';
import { wireBedSkirt } from '#shared/job-file/wire-bed-skirt.ts';
import { TICKS_PER_YARD, lengthFrom } from '#shared/length.ts';
import { estimateSkirt, skirtFaults } from './bed-skirt-case.ts';
import type { SkirtCase } from './bed-skirt-case.ts';
import { publishedExample } from './soft-goods-case.ts';

describe('published worked examples', () => {
  it('BS-01 gathered queen skirt: 554 in of strip, 11 cuts of 19 in (SFGate Home Guides)', () => {
    const of = publishedExample('BS-01');
    const made = estimateSkirt({
      cloth: { width: of.input('fabric_width') },
      making: { hem: of.input('hem_seam') - 0.5, topSeam: 0.5, endHem: of.input('end_seams') / 2 },
      skirt: {
        bed: { width: of.input('bed_w'), length: of.input('bed_l') },
        drop: of.input('drop'),
        fullness: of.input('fullness'),
      },
    });
    const line = made.takeoff[0]!;
    expect(made.in(made.sheet.perimeter)).toBe(of.step('perimeter'));
    expect(made.in(made.sheet.strip)).toBe(of.step('strip'));
    expect(made.in(line.plainCut)).toBe(of.step('cut_drop'));
    expect(line.cuts).toBe(of.says('cuts'));
    expect(made.in(line.handbook)).toBe(of.says('inches'));
    expect(line.handbook / TICKS_PER_YARD).toBeCloseTo(of.says('yards'), 2);
    expect(made.working.find((step) => step.id === 'strip')?.formula).toBe('220 × 2.5 + 2 × 2');
  });

  it('BS-03 two long strips along the selvage: 220 in, 7 yards (eHow; a 45 in cloth is our assumption)', () => {
    const of = publishedExample('BS-03');
    const made = estimateSkirt({
      // The record gives no width: any from 32 to under 48 in holds two drops of 16.
      cloth: { width: 45, railroad: true },
      practice: { orderStep: '1 yd' },
      making: { hem: of.input('add') - 0.5, topSeam: 0.5, endHem: 0 },
      skirt: {
        bed: { width: of.input('bed_w'), length: of.input('bed_l') },
        drop: of.input('drop'),
        fullness: 2,
        strips: 'sideways',
      },
    });
    const line = made.takeoff[0]!;
    expect(made.in(made.sheet.strip)).toBe(of.step('ruffle'));
    expect(made.in(line.plainCut)).toBe(of.step('strip'));
    expect(line).toMatchObject({ railroaded: true, cuts: 2 });
    expect(made.in(line.cutLength)).toBe(of.step('half'));
    expect(line.plan / TICKS_PER_YARD).toBeCloseTo(of.step('yards_raw'), 1);
    expect(line.order / TICKS_PER_YARD).toBe(of.says('yards'));
  });

  it('sideways is taken unasked only where it takes no more cloth', () => {
    // Upright 10 × 16 = 160 in of 45 in cloth, sideways 220.
    const of = (width: number, drop: number) =>
      estimateSkirt({ cloth: { width, railroad: true }, making: { endHem: 0 }, skirt: { fullness: 2, drop } })
        .takeoff[0]!;
    expect(of(45, 13.5)).toMatchObject({ railroaded: false, cuts: 10 });
    // 48 in: upright 10 × 16 = 160; three strips of 16, 440 ÷ 3 = 146⅔.
    expect(of(48, 13.5)).toMatchObject({ railroaded: true, cuts: 3 });
  });

  const tailored = (of: ReturnType<typeof publishedExample>) =>
    estimateSkirt({
      cloth: { width: of.input('fabric_width') },
      practice: { orderStep: '0.5 yd' },
      making: {
        hem: of.input('hem'),
        topSeam: of.input('seam'),
        endHem: of.input('turn') / 2,
        cornerPleat: of.input('pleat_each'),
      },
      skirt: {
        style: 'tailored',
        bed: { width: of.input('bed_w'), length: of.input('bed_l') },
        drop: of.input('skirt'),
      },
    });

  it('BS-04 tailored queen skirt: 250 in flat, 6 widths of 20½, 3½ yards (eHow)', () => {
    const of = publishedExample('BS-04');
    const made = tailored(of);
    const line = made.takeoff[0]!;
    expect(made.in(made.sheet.strip)).toBe(of.step('flat'));
    expect(line.halfWidths).toBe(2 * of.step('widths'));
    expect(made.in(line.cutLength)).toBe(of.step('cut'));
    expect(made.in(line.handbook)).toBe(of.step('total_inches'));
    expect(line.handbook / TICKS_PER_YARD).toBeCloseTo(of.step('yards_raw'), 1);
    expect(line.order / TICKS_PER_YARD).toBe(of.says('yards'));
  });

  it('BS-04 the printed sum without the foot (190), and its prose rule (252), are not reproduced (negative)', () => {
    const made = tailored(publishedExample('BS-04'));
    expect(made.in(made.sheet.strip)).not.toBe(190);
    expect(made.in(made.sheet.strip)).not.toBe(252);
    expect(made.sheet.pieces[0]?.stretches.map((stretch) => [stretch.is, made.in(stretch.length)])).toEqual([
      ['end hem', 1],
      ['side', 76],
      ['corner pleat', 18],
      ['side', 60],
      ['corner pleat', 18],
      ['side', 76],
      ['end hem', 1],
    ]);
  });
});

describe('rows worked by hand', () => {
  it('box pleats: whole pleats, re-spaced, three times the cloth', () => {
    // 80 ÷ 6 = 13.3: 13 of 6.1538; 60 ÷ 6 = 10. Strip 220 × 3 + 4 = 664; 664 ÷ 54 = 12.3: 13 widths.
    const made = estimateSkirt({ skirt: { style: 'box-pleated' } });
    expect(made.sheet.sides.map((side) => side.pleats)).toEqual([13, 10, 13]);
    expect(made.in(made.sheet.sides[0]!.visible)).toBe(6.1538);
    expect(made.in(made.sheet.sides[0]!.takeUp)).toBe(12.3077);
    expect(made.in(made.sheet.strip)).toBe(664);
    expect(made.takeoff[0]!.cuts).toBe(13);
    // In eighths: 13 × 6⅛ = 79⅝, three of them an eighth wider.
    const shares = made.sheet.sides[0]!.shares!;
    expect([made.in(shares.each), shares.wider, shares.rest]).toEqual([6.125, 3, 0]);
  });

  it('open corners: three pieces with their own ends; a tailored one has a piece behind each corner', () => {
    const gathered = estimateSkirt({ skirt: { splitCorners: true, fullness: 2 } });
    // 440 + 6 ends of 2.
    expect(gathered.in(gathered.sheet.strip)).toBe(452);
    const tailored = estimateSkirt({ skirt: { splitCorners: true, style: 'tailored' } });
    // 220 + 6 × 2 and two underlays of 12 + 4; no corner pleats.
    expect(tailored.in(tailored.sheet.strip)).toBe(220 + 12 + 32);
    expect(tailored.sheet.cornerPleats).toBe(0);
    expect(tailored.sheet.pieces.map((piece) => piece.name)).toEqual([
      'left',
      'foot',
      'right',
      'underlay 1',
      'underlay 2',
    ]);
  });

  it('a day bed along the wall has two ends and one long side', () => {
    const made = estimateSkirt({ skirt: { style: 'tailored', against: 'long-side' } });
    expect(made.in(made.sheet.perimeter)).toBe(60 + 80 + 60);
  });

  it('the deck lies the way that takes less: 2 × 61 across the bed, not 2 × 81½ along it', () => {
    const made = estimateSkirt({ skirt: { deck: 'std-white' } });
    expect(made.sheet.deck).toMatchObject({ lies: 'across', cuts: 2 });
    expect(made.in(made.sheet.deck!.length)).toBe(61);
    expect(made.takeoff.map((line) => [line.cloth, line.layer, made.in(line.plan)])).toEqual([
      ['face', 0, 11 * 16.5],
      ['std-white', 1, 122],
    ]);
    expect(made.parts).toEqual([]);
  });

  it('a deck of the lining, or of the face, is summed with it before the order is rounded', () => {
    const lined = estimateSkirt({ behind: ['std-white'], skirt: { deck: 'std-white' } });
    // Lining 14 + ½ + 2 − ½ = 16 in 11 widths, and the deck.
    expect(lined.takeoff.map((line) => [line.cloth, lined.in(line.plan)])).toEqual([
      ['face', 11 * 16.5],
      ['std-white', 11 * 16 + 122],
    ]);
    const self = estimateSkirt({ skirt: { deck: 'face' } });
    expect(self.takeoff).toHaveLength(1);
    expect(self.in(self.takeoff[0]!.plan)).toBe(11 * 16.5 + 122);
    expect(self.takeoff[0]!.cuts).toBe(13);
  });

  it('without a deck it hangs by hook and loop tape', () => {
    const made = estimateSkirt({ quantity: 2 });
    expect(made.parts).toEqual([{ part: 'hookTape', length: 2 * 220 * 8128 }]);
  });

  it('every width of a strip is cut to the repeat; half-drop widths alternate', () => {
    const straight = estimateSkirt({ cloth: { repeat: { vertical: 12, match: 'straight' } } });
    // 16½ to 24; the last tail of 7½ is left off.
    expect(straight.takeoff[0]).toMatchObject({ repeatsPerCut: 2 });
    expect(straight.in(straight.takeoff[0]!.plan)).toBe(10 * 24 + 16.5);
    const drop = estimateSkirt({ cloth: { repeat: { vertical: 12, match: 'half-drop' } } });
    expect(drop.cuts.map((cut) => [cut.name, cut.count])).toEqual([
      ['skirt width, level', 6],
      ['skirt width, dropped', 5],
    ]);
    // From one phase to the other 18: 10 changes and a last cut of 16½.
    expect(drop.in(drop.takeoff[0]!.plan)).toBe(10 * 18 + 16.5);
  });

  it('the fullness that results is told, end hems off (common practice: 2 to 3)', () => {
    const made = estimateSkirt({});
    expect(made.fullnessMade).toBeCloseTo((11 * 54 - 4) / 220, 9);
  });

  it('a length is shared out without loss', () => {
    for (const [total, count] of [
      [60, 7],
      [61.3, 11],
      [5, 40],
    ] as const) {
      for (const unit of ['in', 'cm'] as const) {
        const length = lengthFrom(total, 'in');
        const { each, wider, grain, rest } = shareOut(length, count, unit);
        expect(each * count + wider * grain + rest).toBe(length);
        expect(wider).toBeLessThan(count);
        expect(rest).toBeLessThan(grain);
      }
    }
  });
});

describe('faults name the field and the remedy', () => {
  it.each<[string, SkirtCase, string]>([
    ['no width', { skirt: { bed: { width: 0, length: 80 } } }, 'bed.width'],
    ['no length', { skirt: { bed: { width: 60, length: 0 } } }, 'bed.length'],
    ['no drop', { skirt: { drop: 0 } }, 'drop'],
    ['a deck nobody listed', { skirt: { deck: 'canvas' } }, 'deck'],
    ['sideways in cloth that may not', { skirt: { strips: 'sideways' } }, 'strips'],
    ['a drop wider than the cloth', { cloth: { railroad: true, width: 12 }, skirt: { strips: 'sideways' } }, 'strips'],
    ['no box pleat', { skirt: { style: 'box-pleated' }, making: { boxPleat: 0 } }, 'practice.bedSkirt.boxPleat'],
    ['pleats like hairs', { skirt: { style: 'box-pleated' }, making: { boxPleat: 0.1 } }, 'practice.bedSkirt.boxPleat'],
    ['a lining of nothing', { making: { liningShorter: 40 } }, 'practice.bedSkirt.liningShorter'],
    ['seams over the whole cloth', { practice: { seam: 27 } }, 'practice.seam'],
    ['cloth like a ribbon', { cloth: { width: 0.25 } }, 'face'],
  ])('%s', (_, given, path) => {
    const faults = skirtFaults(given);
    expect(faults.map((fault) => fault.path)).toContain(`treatment.${path}`);
    faults.forEach((fault) => expect(sayFault(fault)).toMatch(/^treatment\.[\w.]+: .+; .+$/));
  });

  it('the schema refuses what contradicts the style', () => {
    const skirt = { kind: 'bed-skirt', style: 'tailored', bed: { width: 60, length: 80 }, drop: 14 };
    const schema = wireBedSkirt({});
    expect(schema.safeParse(skirt).success).toBe(true);
    expect(schema.safeParse({ ...skirt, fullness: 2.5 }).success).toBe(false);
    expect(schema.safeParse({ ...skirt, style: 'gathered', middlePleats: 2 }).success).toBe(false);
    expect(schema.safeParse({ ...skirt, dropp: 3 }).success).toBe(false);
  });
});
