/** A valance on the table: flat with its lines, pleats, scallops or ring columns, made, and its board with the cover. */
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import type { FoldLine, ValanceSheet } from '#app/estimating/valance/sheet-valance.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, linksBetween, whole } from './chain-of.ts';
import type { Link } from './chain-of.ts';
import { faceLine, nameOf, sayQuantity } from './cloth-words.ts';
import { marksOn } from './marks-of-valance.ts';
import { pictured } from './pictured.ts';
import { pieceOfBoard, pieceOfCover } from './pieces-of-board.ts';
import { piecesOfLayers } from './pieces-of-layers.ts';
import type { Chain, PieceLine, PieceZone, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<ValanceTreatment>;

export function piecesOfValance(given: Given): readonly WorkRow[] {
  const sheet = readSheet('valance', given.made);
  if (sheet === null) return [];
  const layers = piecesOfLayers(given);
  const board: readonly WorkPiece[] = [
    ...(sheet.board === null ? [] : [pieceOfBoard(sheet.board, given.say, given.sayUnit)]),
    ...(sheet.board?.cover ? [pieceOfCover(sheet.board.cover, given.say)] : []),
  ];
  return [
    { pieces: [flatPiece(given, sheet)], high: 0.8 },
    { pieces: [madePiece(given, sheet)], high: 0.6 },
    ...(board.length === 0 ? [] : [{ pieces: board, shares: board.map(() => 0.5), high: 0.3 }]),
    ...(layers.length === 0
      ? []
      : [{ pieces: layers, shares: layers.map(() => Math.min(0.3, 1 / layers.length)), high: 0.5 }]),
  ];
}

const FOLD_WORDS: Readonly<Record<FoldLine['name'], string>> = {
  turn: 'turn',
  'pocket-stitch': 'pocket',
  'header-stitch': 'header',
  top: 'to the top edge',
  bottom: 'finished',
};

function flatPiece(given: Given, sheet: ValanceSheet): WorkPiece {
  const valance = given.treatment;
  const { cutWidth, cutLength } = sheet;
  const face = faceLine(given);
  const folds = [...sheet.folds].sort((a, b) => a.at - b.at);
  const down: Link[] = [];
  let at = 0;
  for (const fold of folds) {
    if (fold.at > at) down.push({ length: fold.at - at, says: FOLD_WORDS[fold.name] });
    at = fold.at;
  }
  const rest = valance.style === 'balloon' ? 'drawn up and hem' : 'below';
  if (cutLength > at) down.push({ length: cutLength - at, says: rest });
  const lines = folds.map(({ name, at: y }): PieceLine => ({
    is: name.endsWith('stitch') ? 'stitch' : 'fold',
    from: { x: 0, y },
    to: { x: cutWidth, y },
  }));
  const marks = marksOn(given, sheet);
  const name = face === null ? '' : nameOf(given, face.cloth);
  return {
    title: 'Face, flat as cut',
    says: [[name, saySeams(sheet), ...sayQuantity(valance.quantity)].filter((part) => part !== '').join('; ')],
    width: cutWidth,
    height: cutLength,
    face: { middle: middleOf(given, sheet) },
    zones: [...sideZones(given, sheet), ...marks.zones],
    lines: [...lines, ...seamLines(sheet), ...marks.lines],
    dots: marks.dots,
    chains: [
      ...marks.chains,
      chainOf('left', down, given.say),
      whole('right', cutLength, given.say, 'cut'),
      whole('bottom', cutWidth, given.say, 'cut, seams closed'),
    ],
  };
}

/** Of the front, which is not that of the cut where the returns differ. */
function middleOf({ treatment }: Given, { cutWidth }: ValanceSheet): number {
  const { left, right } = treatment.returns;
  return (cutWidth + left - right) / 2;
}

function saySeams(sheet: ValanceSheet): string {
  const { seamed } = sheet;
  if (seamed === null || seamed.whole === 0) return '';
  const whole = sheet.aboutMotif ? 'width about a motif' : 'whole width';
  return `${seamed.whole === 1 ? `one ${whole}` : `${seamed.whole} ${sheet.aboutMotif ? 'widths' : 'whole widths'}`} in the middle, equal side pieces`;
}

function seamLines(sheet: ValanceSheet): readonly PieceLine[] {
  const { seamed, cutWidth, cutLength } = sheet;
  if (seamed === null || seamed.whole === 0) return [];
  const middle = Math.max(0, cutWidth - 2 * seamed.side);
  const stops = Array.from({ length: seamed.whole + 1 }, (_, place) => seamed.side + (middle * place) / seamed.whole);
  return stops.map((x) => ({ is: 'seam', from: { x, y: 0 }, to: { x, y: cutLength } }));
}

function sideZones(given: Given, sheet: ValanceSheet): readonly PieceZone[] {
  const { sideHem } = given.treatment.practice.valance;
  if (sideHem <= 0) return [];
  const side = (x: number): PieceZone => ({ x, y: 0, width: sideHem, height: sheet.cutLength, is: 'turn' });
  return [side(0), side(sheet.cutWidth - sideHem)];
}

function madePiece(given: Given, sheet: ValanceSheet): WorkPiece {
  const valance = given.treatment;
  const view = pictured(given);
  const top = madeChain(given, sheet);
  return {
    title: 'Made, from in front',
    says: [sayMade(given, sheet)],
    width: valance.width,
    height: valance.finishedLength,
    ...(view === null ? {} : { picture: view.picture }),
    chains: [
      ...(top === null ? [] : [top]),
      whole('bottom', valance.width, given.say, 'face'),
      whole('left', valance.finishedLength, given.say, 'finished'),
      ...(sheet.scallops === null
        ? []
        : [
            chainOf(
              'right',
              [{ length: sheet.scallops.depth, says: 'deep' }],
              given.say,
              valance.finishedLength - sheet.scallops.depth,
            ),
          ]),
    ],
  };
}

function sayMade(given: Given, sheet: ValanceSheet): string {
  const { returns, welt } = given.treatment;
  const parts = [
    `returns ${given.say(returns.left)} left, ${given.say(returns.right)} right`,
    ...(sheet.rod === null
      ? []
      : [
          `rod ${given.sayUnit(sheet.rod.length)} with its returns, pocket ${given.say(sheet.rod.pocket)}${sheet.rod.header > 0 ? `, header ${given.say(sheet.rod.header)}` : ''}`,
        ]),
    ...(welt === null ? [] : [`welt of ${nameOf(given, welt)} along the lower edge`]),
  ];
  return parts.join('; ');
}

/** Along the face: where pleats, scallops and puffs stand. */
function madeChain(given: Given, sheet: ValanceSheet): Chain | null {
  const { width } = given.treatment;
  if (sheet.pleats !== null)
    return chainOf(
      'top',
      linksBetween(sheet.pleats.centres, 0, width).filter((link) => link.length > 1),
      given.say,
    );
  const repeated = sheet.scallops ?? sheet.puffs;
  if (repeated === null) return null;
  // Gathered on a rod they share the returns too, so that each is wider than its part of the face.
  const each = width / repeated.count;
  const what = sheet.scallops === null ? 'puffs' : 'scallops';
  return {
    side: 'top',
    parts: [
      {
        from: 0,
        to: width,
        words: `${repeated.count} ${what} × ${given.say(repeated.width)}`,
        inner: Array.from({ length: repeated.count - 1 }, (_, mark) => each * (mark + 1)),
      },
    ],
  };
}
