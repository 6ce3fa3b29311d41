/** A Roman shade on the table: the face as cut, its back with every ring, row and rib, its valance, returns and board. */
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { LayerSheet, PieceSheet, RomanShadeSheet } from '#app/estimating/roman-shade/roman-shade-sheet.ts';
import { topOfShade } from '#app/estimating/roman-shade/top-of-shade.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, linksBetween, whole } from './chain-of.ts';
import { nameOf, sayQuantity } from './cloth-words.ts';
import { pieceOfBoard } from './pieces-of-board.ts';
import { BOARD_THICK } from './board-thick.ts';
import type { PieceLine, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<RomanShadeTreatment>;

export function piecesOfRomanShade(given: Given): readonly WorkRow[] {
  const sheet = readSheet('roman-shade', given.made);
  const face = sheet?.layers[0];
  if (sheet === null || face === undefined) return [];
  const layers = sheet.layers.slice(1).map((layer) => layerPiece(given, layer));
  const small = [
    ...(sheet.valance === null || face.valance === null ? [] : [valancePiece(given, sheet, face.valance)]),
    ...returnPieces(given, sheet),
    pieceOfBoard({ ...sheet.board, thickness: BOARD_THICK }, given.say, given.sayUnit),
  ];
  return [
    { pieces: [facePiece(given, sheet, face), backPiece(given, sheet)], shares: [0.44, 0.56], high: 1.25 },
    ...(layers.length === 0
      ? []
      : [{ pieces: layers, shares: layers.map(() => Math.min(0.42, 1 / layers.length)), high: 0.6 }]),
    { pieces: small, shares: small.map(() => Math.min(0.5, 1 / small.length)), high: 0.4 },
  ];
}

function seamLines(piece: PieceSheet, added: number, height: number): readonly PieceLine[] {
  return piece.seams.map((seam): PieceLine => ({
    is: 'seam',
    from: { x: seam + added / 2, y: 0 },
    to: { x: seam + added / 2, y: height },
  }));
}

function facePiece(given: Given, sheet: RomanShadeSheet, face: LayerSheet): WorkPiece {
  const { cutWidth, cutLength } = face.shade;
  const shade = given.treatment;
  const added = cutWidth - sheet.finished.width;
  const side = added / 2;
  const body = bodyOf(sheet, shade);
  const spare = Math.max(0, cutLength - body);
  const top = Math.min(spare, topOfShade(shade, given.made.stack.behind.length > 0));
  return {
    title: 'Face, flat as cut',
    says: [
      [
        nameOf(given, face.cloth),
        sayPieced(given, face.shade),
        ...(face.railroaded ? ['sideways'] : []),
        ...sayQuantity(shade.quantity),
      ]
        .filter((part) => part !== '')
        .join('; '),
    ],
    width: cutWidth,
    height: cutLength,
    face: {},
    zones: [
      { x: 0, y: 0, width: side, height: cutLength, is: 'turn' },
      { x: cutWidth - side, y: 0, width: side, height: cutLength, is: 'turn' },
    ],
    lines: seamLines(face.shade, added, cutLength),
    chains: [
      chainOf(
        'top',
        [
          { length: side, says: 'turn' },
          { length: sheet.finished.width, says: 'finished' },
          { length: side, says: 'turn' },
        ],
        given.say,
      ),
      ...(face.shade.seams.length === 0
        ? []
        : [
            chainOf(
              'bottom',
              linksBetween(
                face.shade.seams.map((seam) => seam + side),
                0,
                cutWidth,
              ),
              given.say,
            ),
          ]),
      whole('bottom', cutWidth, given.say, 'cut, seams closed'),
      chainOf(
        'left',
        [
          { length: top, says: 'top' },
          { length: body, says: BODY_WORDS[shade.style] },
          { length: spare - top, says: 'hem' },
        ],
        given.say,
      ),
      whole('right', cutLength, given.say, 'cut'),
    ],
  };
}

const BODY_WORDS: Readonly<Record<RomanShadeTreatment['style'], string>> = {
  flat: 'finished',
  'soft-fold': 'cloth of the folds',
  relaxed: 'finished and dip',
};

/** Length of cloth between top and hem by style. */
function bodyOf(sheet: RomanShadeSheet, shade: RomanShadeTreatment): number {
  const { softFoldFullness, relaxedExtra } = shade.practice.romanShade;
  if (shade.style === 'soft-fold') return (sheet.finished.length * softFoldFullness) / 1000;
  return sheet.finished.length + (shade.style === 'relaxed' ? relaxedExtra : 0);
}

function sayPieced(given: Given, piece: PieceSheet): string {
  if (piece.side === null) return '';
  const centres = piece.centres === 1 ? 'one width' : `${piece.centres} widths`;
  return `${centres} of ${given.say(piece.centre)} in the centre, side pieces ${given.say(piece.side)}`;
}

/** Seen from behind: rows from the finished hem up, columns from its left edge. */
function backPiece(given: Given, sheet: RomanShadeSheet): WorkPiece {
  const { width, length } = sheet.finished;
  const { columns, heights, folds } = sheet.rings;
  const rows = heights.map((height) => length - height);
  const dots = rows.flatMap((y) => columns.map((x) => ({ x, y })));
  const across = (y: number, is: PieceLine['is']): PieceLine => ({ is, from: { x: 0, y }, to: { x: width, y } });
  const ribs = new Set(sheet.ribs);
  const lines: PieceLine[] = [
    ...heights.map((height) => across(length - height, ribs.has(height) ? 'rib' : 'stitch')),
    ...folds.map((fold) => across(length - fold, 'fold')),
  ];
  const seams = sheet.layers[0]?.shade.seams ?? [];
  const up = [...rows].sort((a, b) => a - b);
  const says = [
    `${sheet.rings.count} rings: ${columns.length} columns × ${heights.length} rows, ${sheet.rings.rule === 'board-line' ? 'the board line is the last row' : 'under the head room'}; folds come forward at the dashed lines`,
    `raised stack ${given.sayUnit(sheet.raisedStack)}; ${LIFT_WORDS[given.treatment.lift]}, worked at the ${given.treatment.control}${sheet.bottomBar ? '; bottom bar in the hem' : ''}`,
  ];
  return {
    title: 'The back, made',
    says,
    width,
    height: length,
    lines: [
      ...lines,
      ...seams.map((x): PieceLine => ({ is: 'seam', from: { x: width - x, y: 0 }, to: { x: width - x, y: length } })),
    ],
    dots,
    chains: [
      chainOf('top', linksBetween(columns, 0, width), given.say),
      whole('bottom', width, given.say, 'finished'),
      chainOf('left', linksBetween(up, 0, length), given.say),
      whole('right', length, given.say, 'finished'),
    ],
  };
}

const LIFT_WORDS: Readonly<Record<RomanShadeTreatment['lift'], string>> = {
  cordless: 'cordless lift',
  'inaccessible-cords': 'cords covered over their whole run',
  motor: 'raised by a motor',
  cords: 'cords within reach: lock and cleat',
};

function layerPiece(given: Given, layer: LayerSheet): WorkPiece {
  const role = given.clothOf(layer.cloth)?.role;
  const { cutWidth, cutLength } = layer.shade;
  return {
    title: role === 'interlining' ? 'Interlining, cut' : 'Lining, cut',
    says: [[nameOf(given, layer.cloth), sayPieced(given, layer.shade)].filter((part) => part !== '').join('; ')],
    width: cutWidth,
    height: cutLength,
    lines: layer.shade.seams.map((x): PieceLine => ({ is: 'seam', from: { x, y: 0 }, to: { x, y: cutLength } })),
    chains: [whole('bottom', cutWidth, given.say), whole('left', cutLength, given.say)],
  };
}

function valancePiece(given: Given, sheet: RomanShadeSheet, piece: PieceSheet): WorkPiece {
  const finished = sheet.valance;
  return {
    title: 'Its own valance, cut',
    says: finished === null ? [] : [`made ${given.say(finished.width)} × ${given.sayUnit(finished.depth)} deep`],
    width: piece.cutWidth,
    height: piece.cutLength,
    face: { of: 'own-valance' },
    chains: [whole('bottom', piece.cutWidth, given.say), whole('left', piece.cutLength, given.say)],
  };
}

function returnPieces(given: Given, sheet: RomanShadeSheet): readonly WorkPiece[] {
  const { returns } = sheet;
  if (returns === null) return [];
  return [
    {
      title: 'Side return, cut',
      says: [
        `made ${given.say(returns.left)} left, ${given.say(returns.right)} right, ${given.sayUnit(returns.drop)} long`,
      ],
      width: returns.cutWidth,
      height: returns.cutLength,
      chains: [whole('bottom', returns.cutWidth, given.say), whole('left', returns.cutLength, given.say)],
    },
  ];
}
