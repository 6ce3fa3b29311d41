/**
 * Roman shades: worked examples from outside the project (records of `test/reference/estimating-examples.json`), facts of
 * the trade marked "common practice", and rows worked by hand.
 */
import { describe, expect, it } from 'vitest';
import { sayFault } from '#shared/fault.ts';
import { wireRomanShade } from '#shared/job-file/wire-roman-shade.ts';
import { TICKS_PER_YARD } from '#shared/length.ts';
import { publishedExample } from './soft-goods-case.ts';
import { estimateShade, finished, shadeFaults } from './roman-shade-case.ts';
import type { ShadeCase } from './roman-shade-case.ts';

describe('published worked examples', () => {
  it('RS-01 62 in with 10 folds: 6.526 apart, the first 3.263 up (Simple Sewing Projects)', () => {
    const of = publishedExample('RS-01');
    const made = estimateShade({ shade: { size: finished(27, of.input('finished_length')), rows: of.input('folds') } });
    const { rings } = made.sheet;
    expect(rings.rule).toBe('board-line');
    expect(made.in(rings.spacing)).toBeCloseTo(of.says('spacing'), 3);
    expect(made.in(rings.firstRow)).toBeCloseTo(of.says('first_row'), 3);
    // The record's own check: half a fold and 9 full ones are the length.
    expect(rings.firstRow + 9 * rings.spacing).toBeCloseTo(62 * 8128, 6);
    expect(rings.sewn).toBe(9);
    const step = made.working.find((each) => each.id === 'row-spacing');
    expect(step?.formula).toBe('62 ÷ (10 − ½) = 6.526');
  });

  it('RS-03 two lined shades of 27 by 58 in 55 in cloth: one a width, 33 by 68, 4 yards (Busy Geemaw, 2018)', () => {
    const of = publishedExample('RS-03');
    const made = estimateShade({
      cloth: { width: of.input('fabric_width') },
      behind: ['std-white'],
      quantity: of.input('shades'),
      practice: { orderStep: '1 yd' },
      making: { linedLength: of.input('hem') + of.input('top'), linedWidth: 2 * of.input('side_each') },
      shade: { size: finished(of.input('finished_width'), of.input('finished_length')) },
    });
    const line = made.takeoff[0]!;
    expect(made.in(made.sheet.layers[0]!.shade.cutWidth)).toBe(of.step('cut_width'));
    expect(made.in(line.cutLength)).toBe(of.step('cut_length'));
    expect(line.cuts).toBe(of.input('shades'));
    expect(line.plan / TICKS_PER_YARD).toBeCloseTo(of.says('yards_exact'), 2);
    expect(line.order / TICKS_PER_YARD).toBe(of.says('yards_bought'));
  });
});

describe('common practice', () => {
  it('both row conventions are the same where the head room is 0', () => {
    const byBoard = estimateShade({ shade: { size: finished(30, 62), rows: 10 } });
    const byRings = estimateShade({
      shade: { size: finished(30, 62), rows: 9 },
      making: { rowRule: 'head-room', headRoom: 0 },
    });
    expect(byRings.sheet.rings.heights).toEqual(byBoard.sheet.rings.heights);
    expect(byRings.sheet.rings.spacing).toBe(byBoard.sheet.rings.spacing);
  });

  it('spacing = (length − head room) ÷ (ring rows + ½): 60 with 5 of room and 10 rows gives 5.2381', () => {
    const made = estimateShade({
      shade: { size: finished(30, 60), rows: 10 },
      making: { rowRule: 'head-room', headRoom: 5 },
    });
    const { rings } = made.sheet;
    expect(made.in(rings.spacing)).toBe(5.2381);
    expect(made.in(rings.firstRow)).toBe(2.619);
    // 10 rows, the last a whole space under the head room.
    expect(made.in(rings.heights[9]!)).toBeCloseTo(60 - 5 - 5.2381, 3);
  });

  it.each([
    { length: 58, rows: 10, spacing: 6.1053 },
    { length: 36, rows: 7, spacing: 5.5385 },
    { length: 63, rows: 11, spacing: 6 },
    { length: 90, rows: 11, spacing: 8.5714 },
  ])('$length in takes rows about 6 in apart, 8 to 10 on large shades', ({ length, rows, spacing }) => {
    const { sheet, ...made } = estimateShade({ shade: { size: finished(40, length) } });
    expect(sheet.rings.counted).toBe(rows);
    expect(made.in(sheet.rings.spacing)).toBe(spacing);
  });

  it.each([
    { behind: [], width: 31, length: 63 },
    { behind: ['std-white'], width: 33, length: 68 },
  ])('cut: unlined + 4 wide, + 5 long; lined + 6 wide, + 10 long ($behind)', ({ behind, width, length }) => {
    const made = estimateShade({ behind });
    expect(made.in(made.sheet.layers[0]!.shade.cutWidth)).toBe(width);
    expect(made.in(made.sheet.layers[0]!.shade.cutLength)).toBe(length);
  });

  it('soft folds take 2 × length + 10, twice the cloth between rows', () => {
    const made = estimateShade({ shade: { style: 'soft-fold', ribs: 'none' } });
    expect(made.in(made.takeoff[0]!.plainCut)).toBe(126);
    expect(made.sheet.rings.clothBetween).toBe(2 * made.sheet.rings.spacing);
  });

  it('a relaxed shade takes 4 to 6 in more, two columns, no bar', () => {
    const made = estimateShade({ shade: { style: 'relaxed' }, behind: ['std-white'] });
    expect(made.in(made.takeoff[0]!.plainCut)).toBe(58 + 5 + 10);
    expect(made.sheet.rings.columns.map(made.in)).toEqual([3, 24]);
    expect(made.sheet.bottomBar).toBe(false);
    expect(made.parts.some((part) => part.part === 'shadeRod')).toBe(false);
  });

  it('inside: narrowest of three readings − ¼, thick − ⅜, the longest length', () => {
    const shade: ShadeCase['shade'] = {
      mount: { where: 'inside' },
      return: undefined,
      size: { basis: 'opening', widths: [34.5, 34.25, 34.625], lengths: [60, 60.25, 60.125] },
    };
    const thin = estimateShade({ shade });
    expect([thin.finished.width, thin.finished.length].map(thin.in)).toEqual([34, 60.25]);
    const thick = estimateShade({ shade: { ...shade, thick: true }, making: { insideLength: 'shortest-less' } });
    expect([thick.finished.width, thick.finished.length].map(thick.in)).toEqual([33.875, 59.75]);
    expect(thin.working[0]?.formula).toBe('narrowest of 34½, 34¼, 34⅝ − ¼');
  });

  it('a finished size is never deducted twice', () => {
    const made = estimateShade({ shade: { mount: { where: 'inside' }, size: finished(34, 60) } });
    expect(made.in(made.finished.width)).toBe(34);
    expect(made.working[0]?.rests).toContain('deductions taken');
  });

  it('diagonals more than ¼ apart ask for an outside mount', () => {
    const of = (second: number) =>
      estimateShade({
        shade: {
          mount: { where: 'inside' },
          size: { basis: 'opening', widths: [34, 34, 34], lengths: [60], diagonals: [69, second], depth: 3 },
        },
      }).sheet.warnings;
    expect(of(69.25)).toEqual([]);
    expect(of(69.375)[0]?.path).toBe('treatment.size.diagonals');
  });

  it.each([
    { width: 48, centres: 1, side: null },
    { width: 48.0625, centres: 1, side: 3 },
    // 80 + 6 = 86; 86 + 2 × 1 − 54 = 34; halved.
    { width: 80, centres: 1, side: 17 },
    // 160 + 6 = 166; a single centre would need sides of 57: three, (166 + 4 − 162) ÷ 2 = 4.
    { width: 160, centres: 3, side: 4 },
  ])('$width in: one width when finished + 6 fits, else a whole centre and equal sides', ({ width, centres, side }) => {
    const made = estimateShade({ behind: ['std-white'], shade: { size: finished(width, 60) } });
    const piece = made.sheet.layers[0]!.shade;
    expect(piece.centres).toBe(centres);
    expect(piece.side === null ? null : made.in(piece.side)).toBe(side);
    const joined = piece.centres * piece.centre + 2 * (piece.side ?? 0) - (side === null ? 0 : (centres + 1) * 8128);
    expect(joined).toBeGreaterThanOrEqual(piece.cutWidth);
    expect(joined - piece.cutWidth).toBeLessThan(centres);
  });

  it('columns stand on edges and seams, at most 12 in apart', () => {
    const made = estimateShade({ behind: ['std-white'], shade: { size: finished(80, 60) } });
    // Side piece 17, less ½ of seam and 3 turned: the seam is 13½ from the edge.
    const { columns } = made.sheet.rings;
    expect(made.sheet.layers[0]!.shade.seams.map(made.in)).toEqual([13.5, 66.5]);
    const inches = columns.map(made.in);
    expect(inches).toContain(13.5);
    expect(inches).toContain(66.5);
    expect([inches[0], inches.at(-1)]).toEqual([1, 79]);
    inches.slice(1).forEach((column, index) => expect(column - inches[index]!).toBeLessThanOrEqual(12));
    expect(made.sheet.rings.count).toBe(columns.length * made.sheet.rings.sewn);
    expect(made.seamsLineUp).toBe(true);
  });

  it('a lining wide enough has no seam', () => {
    const wide = { id: 'wide', role: 'lining', family: 'standard', width: 118 } as const;
    const made = estimateShade({ linings: [wide], behind: ['wide'], shade: { size: finished(80, 60) } });
    expect(made.sheet.layers[1]!.shade.seams).toEqual([]);
    expect(made.takeoff[1]!.cuts).toBe(1);
  });

  it('a valance of its own is its own cut, one order with the shade', () => {
    const made = estimateShade({
      behind: ['std-white'],
      cloth: { repeat: { vertical: 27, match: 'straight' } },
      shade: { size: finished(40, 60), valance: { depth: 9 }, return: 3.5 },
    });
    const [face] = made.takeoff;
    // Shade 70 to 81; valance 9 + 6 = 15 to 27; 40 + 2 × 3½ = 47 finished is still one width.
    expect(made.in(made.sheet.valance!.width)).toBe(47);
    expect(made.in(face!.cutLength)).toBe(81);
    // 54 − 46 = 8 beside the shade: one return of 6½ across and one of 64 along; the other takes a cut.
    expect(made.sheet.returns).toMatchObject({ besideTheShade: 1 });
    expect(face!.cuts).toBe(3);
    expect(made.in(face!.handbook)).toBe(81 + 27 + 64);
    // The longest tail (valance, 12) is left off.
    expect(made.in(face!.plan)).toBe(81 + 15 + 64);
    expect(made.cuts.filter((cut) => cut.layer === 0).map((cut) => cut.name)).toEqual([
      'shade',
      'valance',
      'side return',
    ]);
  });

  it.each(['length', 'stack'] as const)('narrow returns come from beside the shade (%s)', (returnDrop) => {
    const made = estimateShade({
      behind: ['std-white'],
      making: { returnDrop },
      shade: { size: finished(30, 60), return: 1.5 },
    });
    expect(made.sheet.returns).toMatchObject({ besideTheShade: 2 });
    expect(made.sheet.returns!.drop).toBe(returnDrop === 'length' ? 60 * 8128 : made.sheet.raisedStack);
    expect(made.takeoff[0]!.cuts).toBe(1);
  });

  it('an outside mount without a return given takes the depth of its board', () => {
    const made = estimateShade({ shade: { return: undefined } });
    expect(made.in(made.sheet.returns!.left)).toBe(1.5);
  });

  it('half-drop sides are dropped, and the raised stack is told', () => {
    const made = estimateShade({
      cloth: { repeat: { vertical: 20, match: 'half-drop' } },
      behind: ['std-white'],
      shade: { size: finished(80, 60) },
    });
    expect(made.cuts.filter((cut) => cut.layer === 0).map(({ name, count, phase }) => [name, count, phase])).toEqual([
      ['shade, centre', 1, 0],
      ['shade, side piece', 2, 10 * 8128],
    ]);
    // 80 in wide is large, rows about 9 in apart: 60 ÷ 6½ = 9.2308; 9.2308 + 5 × ⅜ + 4.6154.
    expect(made.in(made.sheet.raisedStack)).toBeCloseTo(15.7212, 3);
  });

  it('cordless is the default, and a cord within reach is told', () => {
    const plain = estimateShade({});
    expect(plain.sheet.cords).toMatchObject({ lift: 'cordless', accessible: false });
    expect(plain.sheet.warnings.filter((warning) => warning.path === 'treatment.lift')).toEqual([]);
    const corded = estimateShade({ shade: { lift: 'cords' } });
    expect(corded.sheet.cords.accessible).toBe(true);
    // The advice of the stack tells it (rules/cords.ts), once: no warning beside it.
    expect(corded.sheet.warnings.filter((warning) => warning.path === 'treatment.lift')).toEqual([]);
    expect(corded.sheet.cords.total).toBeGreaterThan(plain.sheet.cords.total);
  });

  it('small shades of plain cloth lie side by side; patterned ones only by the horizontal repeat', () => {
    const of = (cloth: ShadeCase['cloth']) =>
      estimateShade({ cloth, quantity: 4, shade: { size: finished(20, 40) } }).takeoff[0]!.cuts;
    expect(of({})).toBe(2);
    expect(of({ repeat: { vertical: 10 } })).toBe(4);
    expect(of({ repeat: { vertical: 10, horizontal: 27 } })).toBe(2);
    expect(of({ repeat: { vertical: 10, horizontal: 18 } })).toBe(4);
  });

  it('sideways where it fits across and takes less', () => {
    const made = estimateShade({ cloth: { railroad: true }, shade: { size: finished(80, 40) } });
    expect(made.takeoff[0]).toMatchObject({ railroaded: true, halfWidths: null, cuts: 1 });
    expect(made.in(made.takeoff[0]!.cutLength)).toBe(84);
    expect(made.sheet.layers[0]!.shade.seams).toEqual([]);
  });
});

describe('a sheet worked on paper', () => {
  it('two shades of 80 by 60 with a valance of 9 and returns of 3, 25 in repeat, interlined', () => {
    const made = estimateShade({
      cloth: { repeat: { vertical: 25, match: 'straight' } },
      behind: ['inter-med', 'std-white'],
      quantity: 2,
      shade: { size: finished(80, 60), valance: { depth: 9 }, return: 3 },
    });
    const figures = (id: string): string => made.working.find((step) => step.id === id)?.formula ?? '';
    // A centre of 54 and sides of 17, two of them from one cut: 2 + 2 cuts. The valance, 86 finished, likewise.
    expect(figures('pieces')).toBe('more than one width of 54: (86 + 2 × 1 − 54) ÷ 2 = 17');
    expect(figures('valance-pieces')).toBe('more than one width of 54: (92 + 2 × 1 − 54) ÷ 2 = 20');
    // Four returns of 6 by 64 lie side by side in one width.
    expect(figures('return-cut')).toBe('wide: 3 + 3; long: 60 + 4');
    // 464 in less the valance's tail of 10 is 454; one repeat more is 479 in, 13.31 yd: 13½.
    expect(figures('laid-out')).toBe('4 × 75 + 4 × 25 + 1 × 64 − 10, the tail of the last cut; by the chart 12.89 yd');
    expect(made.takeoff.map((line) => [line.cuts, made.in(line.plan), line.order / TICKS_PER_YARD])).toEqual([
      [9, 454, 13.5],
      [8, 4 * 63 + 4 * 12, 8.5],
      [8, 4 * 66 + 4 * 15, 9],
    ]);
    expect(figures('rows')).toBe('60 ÷ 9 + ½ = 7.17, to the nearest');
    expect(figures('row-spacing')).toBe('60 ÷ (7 − ½) = 9.231');
  });
});

describe('faults name the field and the remedy', () => {
  const inside = { where: 'inside' } as const;
  const opening = (width: number) => ({ basis: 'opening' as const, widths: [width, width, width], lengths: [60] });
  it.each<[string, ShadeCase, string]>([
    ['an opening measured for an outside mount', { shade: { size: opening(30) } }, 'size.basis'],
    ['a return inside a frame', { shade: { mount: inside, return: 2, size: opening(30) } }, 'return'],
    ['an opening smaller than its deduction', { shade: { mount: inside, size: opening(0.2) } }, 'size.widths'],
    ['no width', { shade: { size: finished(0, 60) } }, 'size.width'],
    ['ribs in a relaxed shade', { shade: { style: 'relaxed', ribs: 'rows' } }, 'ribs'],
    ['five columns on a relaxed shade', { shade: { style: 'relaxed', columns: 5 } }, 'columns'],
    ['a valance longer than the shade', { shade: { valance: { depth: 70 } } }, 'valance.depth'],
    [
      'head room over the whole length',
      { making: { rowRule: 'head-room', headRoom: 58 } },
      'practice.romanShade.headRoom',
    ],
    ['no row spacing', { making: { rowSpacing: 0 } }, 'practice.romanShade.rowSpacing'],
    ['rows a hair apart', { making: { rowSpacing: 0.01 } }, 'rows'],
    ['insets over the whole width', { making: { edgeInset: 14 } }, 'practice.romanShade.edgeInset'],
    ['seams over the whole cloth', { making: { seam: 27 } }, 'practice.romanShade.seam'],
    ['cloth like a ribbon', { cloth: { width: 1.5 }, shade: { size: finished(2000, 60) } }, 'face'],
  ])('%s', (_, given, path) => {
    const faults = shadeFaults(given);
    expect(faults.map((fault) => fault.path)).toContain(`treatment.${path}`);
    faults.forEach((fault) => expect(sayFault(fault)).toMatch(/^treatment\.[\w.]+: .+; .+$/));
  });

  it('the schema refuses unknown keys and sizes without a basis', () => {
    const shade = { kind: 'roman-shade', style: 'flat', mount: { where: 'wall' }, size: finished(27, 58) };
    expect(wireRomanShade({}).safeParse(shade).success).toBe(true);
    expect(wireRomanShade({}).safeParse({ ...shade, colour: 'red' }).success).toBe(false);
    expect(wireRomanShade({}).safeParse({ ...shade, size: { width: 27, length: 58 } }).success).toBe(false);
    expect(wireRomanShade({}).safeParse({ ...shade, rows: 1 }).success).toBe(false);
  });
});
