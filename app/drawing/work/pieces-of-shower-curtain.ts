/** A shower curtain on the table: cut with its hems, made with its eyelets clear of the seams, the liner. */
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import type { ShowerCurtainSheet } from '#app/estimating/shower-curtain/estimate-shower-curtain.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, linksBetween, whole } from './chain-of.ts';
import { faceLine, nameOf, sayQuantity } from './cloth-words.ts';
import { piecesOfLayers } from './pieces-of-layers.ts';
import type { PieceLine, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<ShowerCurtainTreatment>;

export function piecesOfShowerCurtain(given: Given): readonly WorkRow[] {
  const sheet = readSheet('shower-curtain', given.made);
  if (sheet === null) return [];
  const others = [...piecesOfLayers(given), ...linerPiece(given, sheet)];
  return [
    { pieces: [flatPiece(given, sheet), madePiece(given, sheet)], shares: [0.5, 0.5], high: 1.2 },
    ...(others.length === 0
      ? []
      : [{ pieces: others, shares: others.map(() => Math.min(0.4, 1 / others.length)), high: 0.6 }]),
  ];
}

function flatPiece(given: Given, sheet: ShowerCurtainSheet): WorkPiece {
  const { hems, pieces } = sheet;
  const width = sheet.cutWidth / pieces;
  const height = sheet.cutLength;
  const face = faceLine(given);
  const body = sheet.finished.length;
  const spare = Math.max(0, height - hems.top - body - hems.bottom);
  const seams = sheet.seams.map((seam): PieceLine => ({
    is: 'seam',
    from: { x: seam + hems.side, y: 0 },
    to: { x: seam + hems.side, y: height },
  }));
  return {
    title: pieces === 2 ? 'One of the pair, flat' : 'Flat, seams closed',
    says: [
      [face === null ? '' : nameOf(given, face.cloth), ...sayQuantity(given.treatment.quantity)]
        .filter((part) => part !== '')
        .join('; '),
    ],
    width,
    height,
    face: {},
    zones: [
      { x: 0, y: 0, width, height: hems.top, is: 'turn' },
      { x: 0, y: hems.top + body, width, height: hems.bottom, is: 'turn' },
      { x: 0, y: 0, width: hems.side, height, is: 'turn' },
      { x: width - hems.side, y: 0, width: hems.side, height, is: 'turn' },
    ],
    lines: seams,
    chains: [
      chainOf(
        'left',
        [
          { length: hems.top, says: 'top hem' },
          { length: body, says: 'finished' },
          { length: hems.bottom, says: 'hem' },
          { length: spare, says: 'more' },
        ],
        given.say,
      ),
      chainOf(
        'top',
        [
          { length: hems.side, says: 'side hem' },
          { length: width - 2 * hems.side, says: 'finished' },
          { length: hems.side, says: 'side hem' },
        ],
        given.say,
      ),
      ...(sheet.seams.length === 0
        ? []
        : [
            chainOf(
              'bottom',
              linksBetween(
                sheet.seams.map((seam) => seam + hems.side),
                0,
                width,
              ),
              given.say,
            ),
          ]),
      whole('bottom', width, given.say, 'cut'),
      whole('right', height, given.say, 'cut'),
    ],
  };
}

function madePiece(given: Given, sheet: ShowerCurtainSheet): WorkPiece {
  const { width, length } = sheet.finished;
  const { places, clearOfSeams } = sheet.eyelets;
  return {
    title: 'Made, from in front',
    says: [
      `${places.length} eyelets${sheet.pieces === 2 ? ' in each of the pair' : ''}${clearOfSeams ? '' : '; one stands on a seam: open the seam or move it by hand'}`,
    ],
    width,
    height: length,
    lines: sheet.seams.map((x): PieceLine => ({ is: 'seam', from: { x, y: 0 }, to: { x, y: length } })),
    dots: places.map((x) => ({ x, y: sheet.hems.top / 3 })),
    chains: [
      chainOf('top', linksBetween(places, 0, width), given.say),
      whole('bottom', width, given.say, 'finished'),
      whole('left', length, given.say, 'finished'),
    ],
  };
}

function linerPiece(given: Given, sheet: ShowerCurtainSheet): readonly WorkPiece[] {
  const { liner } = sheet;
  if (liner === null) return [];
  return [
    {
      title: liner.from === 'bought' ? 'Liner, bought ready' : 'Liner, made',
      says: [`${liner.count} in all, on the same rings`],
      width: liner.width,
      height: liner.length,
      chains: [whole('bottom', liner.width, given.say), whole('left', liner.length, given.say)],
    },
  ];
}
