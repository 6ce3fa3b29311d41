/** Valances: published examples (each names its record), hand-worked sums, faults. Facts marked common practice have no source. */
import { describe, expect, it } from 'vitest';
import { referenceRecord } from './reference-record.ts';
import { BARE_VALANCE, lineOf, stepOf, valanceCase, valanceFaults } from './top-case.ts';

describe('published valances', () => {
  it('VA-01 a rod of 48 with two returns of 3½ is 55, so the flat is 82½, not the printed 81 (negative)', () => {
    const of = referenceRecord('VA-01');
    const made = valanceCase({
      fields: {
        style: 'gathered',
        width: of.input('rod'),
        return: of.input('return_'),
        fullness: of.input('fullness'),
        finishedLength: 16,
        rod: { diameter: 1, header: 2 },
      },
      // Its 7 in at the top: header 2 again, rod 1, turn and ease together 4; its hem 1.
      practice: { pocket: { turn: 1, ease: 3 } },
      making: { bottomHem: of.input('bottom_hem') },
    });
    expect(made.in(made.finished.width)).toBe(55);
    expect(made.in(made.finished.width)).not.toBe(of.step('face'));
    expect(stepOf(made, 'flat-width')).toEqual({ formula: '55 × 1.5', value: '82½' });
    expect(stepOf(made, 'flat-width').value).not.toBe(String(of.says('flat')));
    expect(made.in(lineOf(made).plainCut) - 16).toBe(of.says('hem_allow'));
  });

  it('VA-02 scalloped on a rod: flat 54, cut 20½', () => {
    const of = referenceRecord('VA-02');
    // The sheet's header of 3 is a doubled 1½, its pocket and hem of 5 a doubled 2¼ and a turn of ½: our reading.
    const [header, pocket, turn] = [of.input('header') / 2, 2.25, 0.5];
    expect(2 * pocket + turn).toBe(of.input('pocket_and_hem'));
    const made = valanceCase({
      fields: {
        style: 'scalloped',
        width: of.input('window'),
        finishedLength: of.input('finished_below_rod') + pocket + header,
        scallopDepth: 3,
        rod: { diameter: 1.75, header },
        fullness: of.input('fullness'),
      },
      practice: { pocket: { turn, ease: pocket - 1.75 } },
      making: { facedSeam: of.input('seam') },
      behind: ['std-white'],
    });
    expect(stepOf(made, 'flat-width').value).toBe(String(of.says('flat_width')));
    expect(lineOf(made).halfWidths).toBe(2);
    expect(made.in(lineOf(made).plainCut)).toBe(of.says('cut_length'));
    expect(made.in(lineOf(made, 'std-white').plainCut)).toBe(of.says('cut_length'));
  });

  it('VA-03 balloon: 150 flat go to 3 widths; cut = length + 24 + rod + 2 + 4', () => {
    const of = referenceRecord('VA-03');
    const [length, rod] = [18, 1];
    const made = valanceCase({
      fields: {
        style: 'balloon',
        width: of.input('rod'),
        finishedLength: length,
        fullness: of.input('fullness'),
        // The ruffle over the rod is its header once more.
        rod: { diameter: rod, header: of.input('ruffle') },
      },
      cloth: { width: of.input('fabric_width') },
      practice: { pocket: { turn: 0.5, ease: of.input('top_hem_ease') - 0.5 } },
      making: { balloonTakeUp: of.input('balloon_and_hem') },
    });
    expect(stepOf(made, 'flat-width').value).toBe(String(of.step('flat')));
    expect((lineOf(made).halfWidths ?? 0) / 2).toBe(of.says('widths'));
    expect(made.in(lineOf(made).plainCut)).toBe(length + 24 + rod + 2 + 4);
  });

  it('VA-04 one box pleat on a board: cut 63½ by 20½', () => {
    const of = referenceRecord('VA-04');
    const made = valanceCase({
      fields: {
        style: 'box-pleated',
        width: of.input('face'),
        finishedLength: of.input('height'),
        return: of.input('returns_total') / 2,
        pleats: of.input('pleats'),
        pleatTakeUp: of.input('per_pleat'),
        board: { depth: of.input('board') },
      },
      making: { sideHem: of.input('side_hems') / 2, wrap: of.input('wrap') / 2, facedSeam: of.input('hems') },
      behind: ['std-white'],
    });
    expect(made.in(made.sheet.cutWidth)).toBe(of.says('cut_width'));
    expect(made.in(made.sheet.cutLength)).toBe(of.says('cut_height'));
    expect(stepOf(made, 'cut-width')).toEqual({ formula: '47 + 3½ + 3½ + 8 + 2 × ¼ + 2 × ½', value: '63½' });
    expect(stepOf(made, 'plain-cut').formula).toBe('16 + 3½ + 1');
    // One pleat in the middle of the face.
    expect(made.sheet.pleats?.centres.map(made.in)).toEqual([23.5]);
  });
});

describe('worked by hand', () => {
  const tailored = valanceCase({
    fields: { width: 96, over: 3.5, finishedLength: 16, dropOf: 90, quantity: 2, welt: 'trim' },
    cloth: { repeat: { vertical: 9, horizontal: 9 } },
    others: [{ id: 'trim', role: 'face', width: 54 }],
    behind: ['std-white'],
  });

  it('over a treatment with returns of 3½ its own are 5½ (common practice: its return + 2)', () => {
    expect(stepOf(tailored, 'return')).toEqual({ formula: '3½ + 2', value: '5½, 5½' });
    expect(tailored.in(tailored.finished.width)).toBe(107);
  });

  it('110 in are a whole width in the middle and two sides, never a seam in the middle', () => {
    // 96 + 5½ + 5½ + 2 × 1 + 2 × ½ = 110; 110 / 54 = 2.04: three widths, 54 whole and 28 each side.
    expect(tailored.sheet.seamed).toEqual({ whole: 1, side: 28 * 8128 });
    expect(stepOf(tailored, 'widths')).toEqual({
      formula: '110 ÷ 54 = 2.04, up: 1 whole in the middle and 2 sides of 28',
      value: '3',
    });
  });

  it('six cuts of 22 and the board cover in one line, summed before the order is rounded', () => {
    // 16 + 5½ + ½ = 22 → 3 repeats of 9 = 27. Six cuts: 5 × 27 + 22 = 157.
    const line = lineOf(tailored);
    expect(tailored.in(line.plainCut)).toBe(22);
    expect(tailored.in(line.cutLength)).toBe(27);
    expect(line.cuts).toBe(6);
    expect(tailored.in(line.plan)).toBe(157);
    expect(stepOf(tailored, 'laid-out').formula).toBe('6 × 27 − 5; by the chart 4½ yd');
    // Lining 6 × 22, and the covers: round the board 2 × (5½ + ¾) + 1 = 13½, along it 96 + 2 × 1¾ = 99½: 2 strips each.
    expect(tailored.in(lineOf(tailored, 'std-white').plan)).toBe(6 * 22 + 4 * 13.5);
    expect(stepOf(tailored, 'layer-1-laid-out').formula).toBe('6 × 22 + 4 × 13½; by the chart 5.17 yd');
  });

  it('a welt of other cloth is a line of its own, after the face', () => {
    expect(stepOf(tailored, 'welt-run')).toEqual({ formula: '2 × (107 + 2)', value: '218' });
    // On the bias 218 × 1½ / 54 = 6.06, and one strip of 1½.
    expect(tailored.takeoff.map(({ cloth, layer }) => [cloth, layer])).toEqual([
      ['face', 0],
      ['trim', 0],
      ['std-white', 1],
    ]);
    expect(lineOf(tailored, 'trim')).toMatchObject({ use: 'welt, on the bias', cuts: 1, halfWidths: null });
    expect(tailored.in(lineOf(tailored, 'trim').plan)).toBeCloseTo(7.5556, 3);
    expect(tailored.parts).toContainEqual({ part: 'welt', length: 218 * 8128 });
  });

  it('counts board, brackets, hook tape and feet of labour for both', () => {
    expect(tailored.parts).toContainEqual({ part: 'board', length: 2 * 96 * 8128 });
    expect(tailored.parts).toContainEqual({ part: 'hookTape', length: 2 * 107 * 8128 });
    expect(tailored.labour).toContainEqual({ work: 'valancePerFoot', count: 2 * 9 });
    expect(tailored.labour).toContainEqual({ work: 'installPerBoard', count: 2 });
  });

  it('hands the joint plan every piece with its place in the repeat', () => {
    expect(tailored.cuts.map(({ name, count, phase, turnable }) => [name, count, phase, turnable])).toEqual([
      ['valance', 6, null, false],
      ['welt, on the bias', 1, 'any', true],
      ['lining', 6, 'any', false],
      ['board cover', 4, 'any', true],
    ]);
  });

  it('16 in for a drop of 90 looks right, 12 does not (common practice: a fifth to a sixth)', () => {
    expect(tailored.advice.map(({ rule }) => rule)).toEqual(['motif-centred']);
    const shallow = valanceCase({ fields: { finishedLength: 12, dropOf: 90 } });
    expect(shallow.advice).toMatchObject([{ rule: 'top-proportion', level: 'note' }]);
    expect(shallow.advice[0]?.says).toBe('A valance of 12 is shallow for a drop of 90: 15 to 18 looks right.');
  });

  it('runs sideways where that takes less, and says so where it only saves a seam', () => {
    // 60 + 2 × 1 + 2 × ½ = 63 along the cloth, against two cuts of 40 + 3½ + ½ = 44.
    const deep = valanceCase({ fields: { finishedLength: 40 }, cloth: { railroad: true }, behind: ['std-white'] });
    expect(lineOf(deep)).toMatchObject({ railroaded: true, halfWidths: null });
    expect(deep.in(lineOf(deep).plan)).toBe(63);
    expect(deep.cuts[0]).toMatchObject({ name: 'valance, sideways', length: 63 * 8128, width: 44 * 8128 });
    // Two cuts of 20 are less than 63: stays upright, the run is told.
    const shallow = valanceCase({ cloth: { railroad: true }, behind: ['std-white'] });
    expect(lineOf(shallow).railroaded).toBe(false);
    expect(shallow.advice).toMatchObject([{ rule: 'sideways-seamless' }]);
  });

  it('gathered on a rod: 2 × 67 = 134 in 3 widths, cut with header, pocket and hem', () => {
    const made = valanceCase({
      fields: { style: 'gathered', return: 3.5, finishedLength: 15, rod: { diameter: 1, header: 1.5 } },
      behind: ['std-white'],
    });
    const { turn, ease } = { turn: 0.5, ease: 0.5 };
    expect(stepOf(made, 'flat-width')).toEqual({ formula: '67 × 2', value: '134' });
    expect(lineOf(made).halfWidths).toBe(6);
    expect(made.in(lineOf(made).plainCut)).toBe(15 + 1.5 + 1 + ease + turn + 3);
    expect(made.in(lineOf(made, 'std-white').plainCut)).toBe(15 + 0.5 + 2 - 0.5);
    // 3 × 54 − 2 × 1 = 160 over 67.
    expect(stepOf(made, 'fullness-made')).toEqual({ formula: '(3 × 54 − 2 × 1) ÷ 67', value: '2.39' });
    expect(made.labour).toContainEqual({ work: 'installPerRod', count: 1 });
    expect(made.sheet.folds.map(({ name, at }) => [name, made.in(at)])).toEqual([
      ['turn', 0.5],
      ['top', 3.5],
      ['header-stitch', 5],
      ['pocket-stitch', 6.5],
      ['bottom', 18.5],
    ]);
  });

  it('scallops on a board share the face; unlined ones have a facing', () => {
    const made = valanceCase({
      fields: { style: 'scalloped', width: 60, return: 3.5, finishedLength: 16, scallopDepth: 3 },
    });
    expect(made.sheet.scallops?.points.map(made.in)).toEqual([0, 12, 24, 36, 48, 60]);
    // 60 + 7 + 2 + 1 = 70 in 2 widths: cut 16 + 3½ + ½ = 20, facing 3 + 2 + ½ = 5½, cover 9½ in 2 strips (63½ / 54).
    expect(stepOf(made, 'laid-out').formula).toBe('2 × 20 + 2 × 5½ + 2 × 9½; by the chart 1.94 yd');
  });

  it.each([
    [106, 2, 'two widths have two joins: 106 + 2 × 2 × ½ is just 108'],
    [106.5, 3, 'half an inch more takes a third'],
  ])('%f in with seams of ½ take %i widths: %s', (width, widths) => {
    const made = valanceCase({
      fields: { width },
      making: BARE_VALANCE,
      practice: { seam: 0.5 },
      behind: ['std-white'],
    });
    expect(lineOf(made).halfWidths).toBe(2 * widths);
    const { whole, side } = made.sheet.seamed ?? { whole: 0, side: 0 };
    // Two seams at each of two joins come out of the pieces.
    expect(made.in(whole * 54 * 8128 + 2 * side) - 2).toBe(width);
  });

  it('a half-drop says how far each cut is from the next', () => {
    // Three widths of two valances: 4 level, 2 dropped. 22 is 22½ to the other phase, 27 to the same one.
    const made = valanceCase({
      fields: { width: 96, return: 5.5, quantity: 2 },
      cloth: { repeat: { vertical: 9, match: 'half-drop' } },
      behind: ['std-white'],
    });
    expect(stepOf(made, 'phases')).toEqual({ formula: '4 × 22½ + 1 × 27 + 22', value: '139, to a whole repeat 144' });
    expect(made.in(lineOf(made).plan)).toBe(139);
    expect(made.cuts.slice(0, 2).map(({ count, phase }) => [count, phase])).toEqual([
      [4, 0],
      [2, 4.5 * 8128],
    ]);
  });

  it('box pleats at the corners: 3 pleats on 60 stand 30 apart', () => {
    const made = valanceCase({
      fields: { style: 'box-pleated', pleats: 3, pleatsAt: 'corners' },
      behind: ['std-white'],
    });
    expect(made.sheet.pleats?.centres.map(made.in)).toEqual([0, 30, 60]);
    expect(stepOf(made, 'pleat-spaces')).toEqual({ formula: '60 ÷ 2', value: '30' });
  });

  it('balloon puffs: 5 of 12 on 60, six columns of five rings', () => {
    const made = valanceCase({ fields: { style: 'balloon', board: {} }, behind: ['std-white'] });
    expect(made.sheet.puffs).toMatchObject({ count: 5, rows: 5 });
    expect(made.parts).toContainEqual({ part: 'shadeRing', count: 30 });
    expect(made.parts).toContainEqual({ part: 'shadeCord', length: 6 * 24 * 8128 });
  });
});

describe('what is refused', () => {
  it.each([
    ['an inside mount with returns', { mount: { where: 'inside' }, return: 3.5 }, 'top.return'],
    ['a return that does not clear', { over: 6, return: 5 }, 'top.return'],
    ['returns larger than the face', { return: 80 }, 'top.return'],
    ['no width', { width: 0 }, 'top.width'],
    ['no length', { finishedLength: 0 }, 'top.finishedLength'],
    ['a drop shorter than itself', { dropOf: 10 }, 'top.dropOf'],
    ['a welt nobody listed', { welt: 'nothing' }, 'top.welt'],
    ['too many pleats', { style: 'box-pleated', pleats: 40 }, 'top.pleats'],
    ['one pleat at the corners', { style: 'box-pleated', pleats: 1, pleatsAt: 'corners' }, 'top.pleats'],
    ['scallops through the heading', { style: 'scalloped', scallopDepth: 16 }, 'top.scallopDepth'],
    ['a header longer than the valance', { style: 'gathered', rod: { diameter: 1, header: 20 } }, 'top.rod'],
    ['99 metres of it', { width: '99 m' }, null],
  ])('%s', (_, fields, path) => {
    const faults = valanceFaults({ fields });
    if (path === null) expect(faults).toEqual([]);
    else expect(faults.map((fault) => fault.path)).toContain(path);
    for (const fault of faults) expect(fault.right).not.toBe('');
  });

  it('refuses more widths than any board takes, and seams that take the cloth', () => {
    expect(valanceFaults({ fields: { width: '99 m' }, cloth: { width: 3 } })).toMatchObject([{ path: 'top.width' }]);
    expect(valanceFaults({ practice: { seam: 14 } })).toMatchObject([{ path: 'top.practice.seam' }]);
    expect(valanceFaults({ fields: { style: 'gathered', board: {} }, making: { sideHem: 200 } })).toMatchObject([
      { path: 'top.practice.valance.sideHem' },
    ]);
    expect(valanceFaults({ cloth: { bolt: 12 } })).toMatchObject([{ path: 'top.face' }]);
  });

  it.each([
    ['a fullness of tailored', { fullness: 2 }],
    ['pleats of gathered', { style: 'gathered', rod: { diameter: 1 }, pleats: 3 }],
    ['box pleats without a number', { style: 'box-pleated' }],
    ['scallops without a depth', { style: 'scalloped' }],
    ['gathered on nothing', { style: 'gathered' }],
    ['board and rod', { style: 'balloon', rod: { diameter: 1 }, board: {} }],
    ['fullness of flat scallops', { style: 'scalloped', scallopDepth: 3, fullness: 2 }],
    ['an unknown key', { colour: 'red' }],
  ])('the schema refuses %s', (_, fields) => {
    expect(() => valanceCase({ fields })).toThrow();
  });

  it('nothing added leaves the treatment itself', () => {
    const made = valanceCase({ fields: { width: 54, finishedLength: 16 }, making: BARE_VALANCE });
    expect(made.in(lineOf(made).plan)).toBe(16);
    expect(lineOf(made).halfWidths).toBe(2);
  });
});
