/** A cornice on the bench: its boards, padding, the cloth over it with its seams, welts and the cover of its dust board. */
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import type { CorniceSheet, CutSize } from '#app/estimating/cornice/estimate-cornice.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, whole } from './chain-of.ts';
import { faceLine, nameOf, sayQuantity } from './cloth-words.ts';
import { pictured } from './pictured.ts';
import { pieceOfBoard, pieceOfCover } from './pieces-of-board.ts';
import type { PieceLine, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<CorniceTreatment>;

export function piecesOfCornice(given: Given): readonly WorkRow[] {
  const sheet = readSheet('cornice', given.made);
  if (sheet === null) return [];
  const layers = sheet.layers.map((layer, place) => layerPiece(given, layer, place));
  return [
    { pieces: [facePiece(given, sheet)], high: 0.6 },
    { pieces: [madePiece(given, sheet)], high: 0.55 },
    { pieces: boxPieces(given, sheet), shares: [0.58, 0.42], high: 0.35 },
    {
      pieces: [
        pieceOfBoard(
          { ...sheet.box.dustBoard, thickness: sheet.box.thickness },
          given.say,
          given.sayUnit,
          'Dust board, from above',
        ),
        ...(sheet.cover === null ? [] : [pieceOfCover(sheet.cover, given.say)]),
      ],
      high: 0.3,
    },
    ...(layers.length === 0 ? [] : [{ pieces: layers, high: 0.4 }]),
  ];
}

function seamsOf(size: CutSize): readonly PieceLine[] {
  const { seamed, width, length } = size;
  if (seamed === null || seamed.whole === 0) return [];
  const middle = Math.max(0, width - 2 * seamed.side);
  return Array.from({ length: seamed.whole + 1 }, (_, place): PieceLine => {
    const x = seamed.side + (middle * place) / seamed.whole;
    return { is: 'seam', from: { x, y: 0 }, to: { x, y: length } };
  });
}

/** Wrap, padding, the face of the box, and round both ends. */
function facePiece(given: Given, sheet: CorniceSheet): WorkPiece {
  const cornice = given.treatment;
  const { wrap, padding } = cornice.practice.cornice;
  const turned = wrap + padding;
  const face = faceLine(given);
  const { width, length } = sheet.face;
  const corners = [turned + cornice.returns.left, turned + cornice.returns.left + cornice.width];
  const name = face === null ? '' : nameOf(given, face.cloth);
  const spare = Math.max(0, length - cornice.finishedLength - 2 * turned);
  return {
    title: 'Face, flat as cut',
    says: [[name, ...sayQuantity(cornice.quantity)].join('; ')],
    width,
    height: length,
    face: { middle: turned + cornice.returns.left + cornice.width / 2 },
    zones: [
      { x: 0, y: 0, width, height: turned, is: 'turn' },
      { x: 0, y: turned + cornice.finishedLength, width, height: turned, is: 'turn' },
      { x: 0, y: 0, width: turned, height: length, is: 'turn' },
      { x: width - turned, y: 0, width: turned, height: length, is: 'turn' },
    ],
    lines: [
      ...seamsOf(sheet.face),
      ...corners.map((x): PieceLine => ({ is: 'fold', from: { x, y: 0 }, to: { x, y: length } })),
    ],
    chains: [
      chainOf(
        'top',
        [
          { length: turned, says: 'turned' },
          { length: cornice.returns.left, says: 'end' },
          { length: cornice.width, says: 'face' },
          { length: cornice.returns.right, says: 'end' },
          { length: turned, says: 'turned' },
        ],
        given.say,
      ),
      chainOf(
        'left',
        [
          { length: turned, says: 'turned' },
          { length: cornice.finishedLength, says: 'height' },
          { length: turned, says: 'turned' },
          { length: spare, says: 'squaring' },
        ],
        given.say,
      ),
      whole('right', length, given.say, 'cut'),
      whole('bottom', width, given.say, 'cut, seams closed'),
    ],
  };
}

function madePiece(given: Given, sheet: CorniceSheet): WorkPiece {
  const cornice = given.treatment;
  const view = pictured(given);
  const { top, bottom } = sheet.welts;
  const welt = (run: number | null, id: string | null, where: string) =>
    run === null || id === null ? [] : [`welt at the ${where} ${given.sayUnit(run)}, of ${nameOf(given, id)}`];
  return {
    title: 'Made, from in front',
    says: [
      [
        `padding ${given.say(sheet.padding.width)} × ${given.say(sheet.padding.height)}`,
        ...welt(top, cornice.welts.top, 'top'),
        ...welt(bottom, cornice.welts.bottom, 'lower edge'),
        ...(cornice.shapedEdge === null
          ? []
          : [`lower edge by its template, ${given.sayUnit(cornice.shapedEdge)} long`]),
      ].join('; '),
    ],
    width: cornice.width,
    height: cornice.finishedLength,
    ...(view === null ? {} : { picture: view.picture }),
    chains: [
      whole('bottom', cornice.width, given.say, 'outside'),
      whole('left', cornice.finishedLength, given.say, 'high'),
    ],
  };
}

function boxPieces(given: Given, sheet: CorniceSheet): readonly WorkPiece[] {
  const { box } = sheet;
  const ends = box.ends.left + box.ends.right;
  const both = box.ends.left > 0 && box.ends.right > 0;
  return [
    {
      title: 'Face board',
      says: [`${given.sayUnit(box.thickness)} thick, covers the ends`],
      width: box.face.width,
      height: box.face.height,
      chains: [whole('bottom', box.face.width, given.say), whole('left', box.face.height, given.say)],
    },
    {
      title: both ? 'End boards' : 'End board',
      says: ['from the back of the face board to the wall'],
      width: Math.max(1, ends + (both ? box.thickness * 2 : 0)),
      height: box.ends.height,
      lines: both
        ? [box.ends.left, box.ends.left + box.thickness * 2].map((x): PieceLine => ({
            is: 'edge',
            from: { x, y: 0 },
            to: { x, y: box.ends.height },
          }))
        : [],
      chains: [{ side: 'bottom', parts: endParts(given, sheet) }, whole('left', box.ends.height, given.say)],
    },
  ];
}

function endParts(given: Given, sheet: CorniceSheet) {
  const { ends, thickness } = sheet.box;
  const right = ends.left > 0 ? ends.left + 2 * thickness : 0;
  return [
    ...(ends.left > 0 ? [{ from: 0, to: ends.left, words: `${given.say(ends.left)} left` }] : []),
    ...(ends.right > 0 ? [{ from: right, to: right + ends.right, words: `${given.say(ends.right)} right` }] : []),
  ];
}

function layerPiece(given: Given, size: CutSize, place: number): WorkPiece {
  const id = given.made.stack.behind[place];
  const cloth = id === undefined ? null : given.clothOf(id);
  return {
    title: cloth?.role === 'interlining' ? 'Interlining under the face, cut' : 'Lining inside the box, cut',
    says: id === undefined ? [] : [nameOf(given, id)],
    width: size.width,
    height: size.length,
    lines: seamsOf(size),
    chains: [whole('bottom', size.width, given.say), whole('left', size.length, given.say)],
  };
}
