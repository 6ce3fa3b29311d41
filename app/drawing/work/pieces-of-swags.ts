/** Swags on the table: one swag flat, on the bias or straight, cascades and jabots flat with their knife pleats, the row. */
import type { SwagsTreatment } from '#shared/treatments/swags.ts';
import type { SwagsSheet } from '#app/estimating/swags/estimate-swags.ts';
import type { CutTail } from '#app/estimating/swags/lay-swags.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, linksBetween, whole } from './chain-of.ts';
import type { Link } from './chain-of.ts';
import { faceLine, nameOf } from './cloth-words.ts';
import { pictured } from './pictured.ts';
import { pieceOfBoard, pieceOfCover } from './pieces-of-board.ts';
import type { PieceLine, PiecePoint, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<SwagsTreatment>;

export function piecesOfSwags(given: Given): readonly WorkRow[] {
  const sheet = readSheet('swags', given.made);
  if (sheet === null) return [];
  const tails = sheet.tails.map((tail) => tailPiece(given, tail));
  return [
    { pieces: [rowPiece(given, sheet)], high: 0.75 },
    {
      pieces: [swagPiece(given, sheet), ...tails],
      shares: tails.length === 0 ? [0.6] : [0.44, ...tails.map(() => 0.56 / tails.length)],
      high: 1.05,
    },
    {
      pieces: [
        pieceOfBoard(sheet.board, given.say, given.sayUnit),
        ...(sheet.cover === null ? [] : [pieceOfCover(sheet.cover, given.say)]),
      ],
      high: 0.3,
    },
  ];
}

/** The row as it hangs, with where each swag and jabot stands. */
function rowPiece(given: Given, sheet: SwagsSheet): WorkPiece {
  const swags = given.treatment;
  const view = pictured(given);
  const { row } = sheet;
  const long = Math.max(swags.finishedLength, swags.cascades?.longest ?? 0, swags.jabots?.longest ?? 0);
  const starts = linksBetween(row.lefts.slice(1), 0, swags.width);
  return {
    title: 'The row, made',
    says: [
      [
        `${row.count} ${row.count === 1 ? 'swag' : 'swags'}, each ${given.sayUnit(row.width)} wide`,
        ...(row.overlap > 0 ? [`overlaps ${given.say(row.overlap)}`] : []),
        ...(swags.welt === null ? [] : [`welt of ${nameOf(given, swags.welt)}`]),
      ].join('; '),
    ],
    width: swags.width,
    height: long,
    ...(view === null ? {} : { picture: view.picture }),
    chains: [
      ...(row.count > 1
        ? [
            chainOf(
              'top',
              [
                ...starts.slice(0, -1),
                { length: row.width + (swags.width - row.width - (row.lefts.at(-1) ?? 0)), says: 'the last swag' },
              ],
              given.say,
            ),
          ]
        : []),
      ...(sheet.jabots.length > 0 ? [chainOf('bottom', linksBetween(sheet.jabots, 0, swags.width), given.say)] : []),
      whole('bottom', swags.width, given.say, 'board'),
      chainOf('left', [{ length: swags.finishedLength, says: 'swag' }], given.say),
      ...(swags.cascades === null
        ? []
        : [
            chainOf(
              'right',
              [
                { length: swags.cascades.shortest, says: 'shortest' },
                { length: swags.cascades.longest - swags.cascades.shortest, says: 'to the longest' },
              ],
              given.say,
            ),
          ]),
    ],
  };
}

/** A trapezoid: the top between the folds is shorter than the lower edge. On the bias it lies across a square of cloth. */
function swagPiece(given: Given, sheet: SwagsSheet): WorkPiece {
  const { flat, onBias } = sheet;
  const inset = (flat.width - flat.top) / 2;
  const points: readonly PiecePoint[] = [
    { x: inset, y: 0 },
    { x: flat.width - inset, y: 0 },
    { x: flat.width, y: flat.depth },
    { x: 0, y: flat.depth },
  ];
  const face = faceLine(given);
  // Folds share the sides between the top and the lower edge; each joins its two sides.
  const folds = Array.from({ length: Math.max(0, flat.folds - 1) }, (_, fold): PieceLine => {
    const share = (fold + 1) / flat.folds;
    const x = inset * (1 - share);
    return { is: 'fold', from: { x, y: flat.depth * share }, to: { x: flat.width - x, y: flat.depth * share } };
  });
  const grain = Math.min(flat.width, flat.depth) * 0.2;
  const centre = { x: flat.width / 2, y: flat.depth * 0.5 };
  const grainLine: PieceLine = onBias
    ? {
        is: 'rib',
        from: { x: centre.x - grain, y: centre.y + grain },
        to: { x: centre.x + grain, y: centre.y - grain },
      }
    : { is: 'rib', from: { x: centre.x, y: centre.y + grain }, to: { x: centre.x, y: centre.y - grain } };
  return {
    title: 'One swag, flat',
    says: [
      `${face === null ? '' : `${nameOf(given, face.cloth)}, `}${onBias ? 'on the bias' : 'on the straight grain'}: ${given.sayUnit(sheet.swagCut)} of cloth each; lining on the bias`,
      `${flat.folds} folds at each side; the heavy line is the grain`,
    ],
    width: flat.width,
    height: flat.depth,
    face: {},
    outline: points,
    lines: [...folds, grainLine],
    chains: [
      chainOf('top', [{ length: flat.top, says: 'top' }], given.say, inset),
      whole('bottom', flat.width, given.say, 'lower edge'),
      whole('left', flat.depth, given.say, 'deep'),
      chainOf(
        'right',
        Array.from({ length: flat.folds }, () => ({ length: flat.depth / flat.folds, says: 'fold' })),
        given.say,
      ),
    ],
  };
}

/** Flat from its longest edge at the left: return, then face and twice the depth of each pleat. */
function tailPiece(given: Given, cut: CutTail): WorkPiece {
  const { tail, pleats, name } = cut;
  const swags = given.treatment;
  const { seam } = swags.practice.swags;
  const turn = name === 'cascades' ? swags.returns.left : 0;
  const width = cut.flat.left;
  const length = cut.length.reduce((sum, addend) => sum + addend.length * (addend.times ?? 1), 0);
  const top = length - tail.longest;
  const start = seam + turn;
  const run = width - start - seam;
  const lowest = (x: number) =>
    top + tail.longest - ((tail.longest - tail.shortest) * Math.max(0, x - start)) / Math.max(1, run);
  const each = pleats.face + 2 * pleats.depth;
  const lines: PieceLine[] = [];
  for (let pleat = 0; pleat < pleats.count; pleat += 1) {
    for (const offset of [pleats.face, pleats.face + pleats.depth]) {
      const x = start + pleat * each + offset;
      if (x < width - seam) lines.push({ is: 'fold', from: { x, y: 0 }, to: { x, y: lowest(x) } });
    }
  }
  const links: Link[] = [
    { length: seam, says: 'seam' },
    { length: turn, says: 'return' },
    ...Array.from({ length: pleats.count }, () => ({ length: each, says: 'a pleat' })),
    { length: seam, says: 'seam' },
  ];
  const lining = swags.contrast === null ? '' : `; lined with ${nameOf(given, swags.contrast)}, which shows`;
  const other = cut.flat.left === cut.flat.right ? '' : `; the right one ${given.sayUnit(cut.flat.right)} wide`;
  return {
    title: name === 'cascades' ? 'Left cascade, flat' : 'One jabot, flat',
    says: [
      name === 'cascades' ? `a pair, the right one in mirror image${other}${lining}` : `${cut.count} in all${lining}`,
      `${pleats.count} knife pleats: face ${given.say(pleats.face)}, depth ${given.say(pleats.depth)}; ${given.sayUnit(tail.width)} wide when pleated`,
    ],
    width,
    height: length,
    outline: [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: lowest(width - seam) },
      { x: width - seam, y: lowest(width - seam) },
      { x: start, y: lowest(start) },
      { x: 0, y: lowest(start) },
    ],
    lines: [...lines, { is: 'stitch', from: { x: 0, y: top }, to: { x: width, y: top } }],
    chains: [
      chainOf('top', links, given.say),
      whole('bottom', width, given.say, 'cut'),
      chainOf(
        'left',
        [
          { length: top, says: 'top, seam' },
          { length: tail.longest, says: 'longest' },
        ],
        given.say,
      ),
      chainOf('right', [{ length: tail.shortest, says: 'shortest' }], given.say, top),
    ],
  };
}
