/** Cornices, worked by hand. No record of the example file is of a cornice; facts marked common practice have no source. */
import { describe, expect, it } from 'vitest';
import { corniceCase, corniceFaults, lineOf, stepOf } from './top-case.ts';

const inches = (value: number): number => value * 8128;

describe('a cornice of 60 by 14, ends of 5½, worked by hand', () => {
  const made = corniceCase({
    fields: { welt: 'trim', topWelt: 'trim', dropOf: 84 },
    others: [{ id: 'trim', role: 'face', width: 54 }],
    behind: ['std-white'],
  });

  it('boards: face 60, ends 5½ less ¾, dust board between them', () => {
    expect(made.sheet.box.face).toEqual({ width: inches(60), height: inches(14) });
    expect(made.sheet.box.ends).toEqual({ left: inches(4.75), right: inches(4.75), height: inches(14) });
    expect(made.sheet.box.dustBoard).toEqual({ length: inches(58.5), depth: inches(4.75) });
    expect(stepOf(made, 'dust-board')).toEqual({ formula: '60 − 2 × ¾', value: '58½' });
    expect(made.parts).toContainEqual({ part: 'board', length: inches(60 + 4.75 + 4.75 + 58.5) });
  });

  it('face: 77 by 20 in two widths, one whole in the middle', () => {
    // 60 + 5½ + 5½ + 2 × (½ + 2½) = 77; 14 + 2 × 3 = 20; sides (77 − 54) / 2.
    expect(stepOf(made, 'cut-width')).toEqual({ formula: '60 + 5½ + 5½ + 2 × ½ + 2 × 2½', value: '77' });
    expect(stepOf(made, 'plain-cut')).toEqual({ formula: '14 + 2 × ½ + 2 × 2½', value: '20' });
    expect(made.sheet.face.seamed).toEqual({ whole: 1, side: inches(11.5) });
    expect(made.in(lineOf(made).plan)).toBe(40);
  });

  it('lining inside: 72 by 15, and the cover of the dust board from the same cloth', () => {
    // Cover 2 × (4¾ + ¾) + 1 = 12 round, 58½ + 2 × 1¾ = 62 along: two strips.
    expect(stepOf(made, 'layer-1-cut').value).toBe('15');
    expect(stepOf(made, 'layer-1-cut-width').value).toBe('72');
    expect(made.in(lineOf(made, 'std-white').plan)).toBe(2 * 15 + 2 * 12);
  });

  it('both welts are cut from one cloth together: 2 × (71 + 2)', () => {
    expect(stepOf(made, 'welt-top')).toEqual({ formula: '60 + 5½ + 5½ + 2', value: '73' });
    expect(stepOf(made, 'welt-trim').formula).toBe('146 × 1½ ÷ 54 + 1½');
    expect(made.in(lineOf(made, 'trim').plan)).toBeCloseTo((146 * 1.5) / 54 + 1.5, 3);
    expect(made.parts).toContainEqual({ part: 'welt', length: inches(146) });
  });

  it('padding goes over face and ends; labour by the foot of the face', () => {
    expect(made.parts).toContainEqual({ part: 'padding', length: inches(71) });
    expect(made.labour).toEqual([
      { work: 'cornicePerFoot', count: 5 },
      { work: 'installPerBoard', count: 1 },
    ]);
  });

  it('14 in for a drop of 84 is a sixth: nothing to say (common practice)', () => {
    expect(made.advice).toEqual([]);
  });
});

describe('other cornices', () => {
  it('a shaped edge is welted along its template', () => {
    const made = corniceCase({ fields: { shapedEdge: 68, welt: 'face', quantity: 2 } });
    expect(stepOf(made, 'welt-bottom')).toEqual({ formula: '68 + 5½ + 5½ + 2', value: '81' });
    // Welt and cover of the face's own cloth stand in its line.
    expect(made.takeoff).toHaveLength(1);
    expect(made.cuts.map(({ name, count }) => [name, count])).toEqual([
      ['cornice', 4],
      ['board cover', 4],
      ['welt, on the bias', 1],
    ]);
  });

  it('straight strips of welt lose a strip at every join', () => {
    const made = corniceCase({
      fields: { welt: 'trim' },
      making: { weltGrain: 'straight' },
      others: [{ id: 'trim', role: 'face', width: 54 }],
    });
    // 73 / (54 − 1½) = 1.39: 2 strips of 1½.
    expect(lineOf(made, 'trim')).toMatchObject({ cuts: 2, plan: inches(3) });
  });

  it('over a treatment its ends are that return + 2; inside a frame it has none', () => {
    const over = corniceCase({ fields: { over: 3.5, return: undefined } });
    expect(over.in(over.finished.width)).toBe(60 + 2 * 5.5);
    const inside = corniceCase({ fields: { return: undefined, mount: { where: 'inside' } } });
    expect(inside.in(inside.finished.width)).toBe(60);
    expect(inside.in(inside.sheet.box.dustBoard.length)).toBe(60);
  });

  it('interlining lies over the padding and is not turned; a box without lining is told', () => {
    const made = corniceCase({ behind: ['inter-med'] });
    expect(made.in(lineOf(made, 'inter-med').plainCut)).toBe(15);
    expect(made.advice.map(({ rule }) => rule)).toEqual(['cornice-unlined']);
    expect(made.labour).toContainEqual({ work: 'interlining', widths: 2 });
  });

  it('washed cloth is cut longer before it goes up to whole repeats', () => {
    const made = corniceCase({ practice: { shrinkage: 0.05 }, cloth: { repeat: { vertical: 21 } } });
    expect(stepOf(made, 'plain-cut').formula).toBe('(14 + 2 × ½ + 2 × 2½) ÷ (1 − 0.05)');
    expect(made.in(lineOf(made).cutLength)).toBe(42);
  });
});

describe('what is refused', () => {
  it.each([
    ['ends thinner than the board', { return: 0.5 }, 'top.return'],
    ['a shaped edge shorter than the face', { shapedEdge: 40 }, 'top.shapedEdge'],
    ['a face narrower than two ends are thick', { width: 1, return: 1 }, 'top.practice.cornice.boardThickness'],
    ['a welt nobody listed', { topWelt: 'nothing' }, 'top.topWelt'],
    ['an end that does not clear', { over: 6 }, 'top.return'],
  ])('%s', (_, fields, path) => {
    expect(corniceFaults({ fields }).map((fault) => fault.path)).toContain(path);
  });

  it('a strip wider than its cloth', () => {
    const others = [{ id: 'tape', role: 'face', width: 2 }];
    expect(corniceFaults({ fields: { welt: 'tape' }, others })).toMatchObject([
      { path: 'top.practice.cornice.weltStrip' },
    ]);
  });
});
