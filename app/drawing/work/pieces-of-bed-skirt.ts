/** A bed skirt on the table: the bed from above with its sides, every strip as it is marked, one cut, the deck. */
import type { BedSkirtTreatment } from '#shared/treatments/bed-skirt.ts';
import type { BedSkirtSheet } from '#app/estimating/bed-skirt/bed-skirt-sheet.ts';
import type { WorkGiven } from './work-given.ts';
import { readSheet } from '../read-sheet.ts';
import { chainOf, whole } from './chain-of.ts';
import { nameOf, sayQuantity } from './cloth-words.ts';
import type { PieceLine, PieceZone, WorkPiece, WorkRow } from './work-piece.ts';

type Given = WorkGiven<BedSkirtTreatment>;

export function piecesOfBedSkirt(given: Given): readonly WorkRow[] {
  const sheet = readSheet('bed-skirt', given.made);
  if (sheet === null) return [];
  const strips = sheet.pieces.map((piece) => stripPiece(given, sheet, piece));
  return [
    { pieces: [bedPlan(given, sheet), madeStrip(given, sheet)], shares: [0.46, 0.54], high: 0.8 },
    ...strips.map((piece): WorkRow => ({ pieces: [piece], high: 0.28 })),
    { pieces: [...layerPieces(given, sheet), ...deckPiece(given, sheet)], high: 0.55 },
  ];
}

/** From above, the head or the wall at the top. */
function bedPlan(given: Given, sheet: BedSkirtSheet): WorkPiece {
  const { bed, against } = given.treatment;
  const headed = against === 'head';
  const [width, height] = headed ? [bed.width, bed.length] : [bed.length, bed.width];
  const side = (name: string) => sheet.sides.find((each) => each.name === name);
  const words = (name: string) => {
    const found = side(name);
    if (found === undefined) return '';
    return `${name}: flat ${given.say(found.flat)}${found.pleats > 0 ? `, ${found.pleats} pleats` : ''}`;
  };
  return {
    title: 'The platform, from above',
    says: [
      `${headed ? 'head' : 'wall'} at the top, no skirt there; ${sheet.splitCorners ? 'open' : 'closed'} at the corners; ${given.sayUnit(sheet.perimeter)} round three sides`,
      [words('left'), words('foot'), words('right')].filter((part) => part !== '').join('; '),
    ],
    width,
    height,
    lines: skirted(width, height),
    labels: [{ x: width / 2, y: height * 0.1, words: headed ? 'head' : 'wall' }],
    chains: [whole('bottom', width, given.say), whole('left', height, given.say)],
  };
}

/** The three sides that the skirt hangs from. */
function skirted(width: number, height: number): readonly PieceLine[] {
  const inset = Math.min(width, height) * 0.03;
  const line = (x1: number, y1: number, x2: number, y2: number): PieceLine => ({
    is: 'rib',
    from: { x: x1, y: y1 },
    to: { x: x2, y: y2 },
  });
  return [
    line(inset, 0, inset, height - inset),
    line(inset, height - inset, width - inset, height - inset),
    line(width - inset, 0, width - inset, height - inset),
  ];
}

function madeStrip(given: Given, sheet: BedSkirtSheet): WorkPiece {
  const foot = sheet.sides.find((side) => side.name === 'foot');
  const width = foot?.finished ?? sheet.perimeter;
  const pleats = foot?.pleats ?? 0;
  const lines = Array.from({ length: Math.max(0, pleats - 1) }, (_, pleat): PieceLine => {
    const x = (width * (pleat + 1)) / pleats;
    return { is: 'edge', from: { x, y: 0 }, to: { x, y: sheet.drop } };
  });
  const hem: PieceLine = {
    is: 'stitch',
    from: { x: 0, y: sheet.drop - sheet.hem / 2 },
    to: { x: width, y: sheet.drop - sheet.hem / 2 },
  };
  const shares = foot?.shares ?? null;
  return {
    title: 'The foot, made',
    says: [
      sheet.style,
      ...(shares === null
        ? []
        : [
            `pleats ${given.say(shares.each)}${shares.wider > 0 ? `, ${shares.wider} of them ${given.say(shares.grain)} wider` : ''}`,
          ]),
      ...(sheet.cornerPleats > 0 ? [`${sheet.cornerPleats} corner pleats`] : []),
      ...(sheet.middlePleats > 0 ? [`${sheet.middlePleats} other pleats, on the middle of a side as a rule`] : []),
    ],
    width,
    height: sheet.drop,
    lines: [...lines, hem],
    chains: [
      ...(pleats > 1
        ? [
            chainOf(
              'top',
              Array.from({ length: pleats }, () => ({ length: width / pleats })),
              given.say,
            ),
          ]
        : []),
      whole('bottom', width, given.say, 'finished'),
      whole('left', sheet.drop, given.say, 'drop'),
    ],
  };
}

function stripPiece(given: Given, sheet: BedSkirtSheet, piece: BedSkirtSheet['pieces'][number]): WorkPiece {
  const drop = sheet.layers[0]?.cutDrop ?? sheet.drop;
  const { topSeam } = given.treatment.practice.bedSkirt;
  let at = 0;
  const zones: PieceZone[] = [];
  const lines: PieceLine[] = [];
  for (const stretch of piece.stretches) {
    if (stretch.is !== 'side' && stretch.is !== 'underlay')
      zones.push({ x: at, y: 0, width: stretch.length, height: drop, is: stretch.is === 'end hem' ? 'turn' : 'pleat' });
    at += stretch.length;
    if (at < piece.length) lines.push({ is: 'fold', from: { x: at, y: 0 }, to: { x: at, y: drop } });
  }
  const spare = drop - topSeam - sheet.drop - sheet.hem;
  return {
    title: `Strip, flat: ${piece.name}`,
    says: [
      `in the order sewn, from one end${given.treatment.quantity > 1 ? `; ${sayQuantity(given.treatment.quantity)[0] ?? ''}` : ''}`,
    ],
    width: piece.length,
    height: drop,
    zones,
    lines,
    chains: [
      chainOf(
        'top',
        piece.stretches.map((stretch) => ({ length: stretch.length, says: stretch.is })),
        given.say,
      ),
      whole('bottom', piece.length, given.say, 'in all'),
      chainOf(
        'left',
        [
          { length: topSeam, says: 'seam' },
          { length: sheet.drop, says: 'drop' },
          { length: sheet.hem, says: 'hem' },
          { length: Math.max(0, spare), says: 'more' },
        ],
        given.say,
      ),
    ],
  };
}

const TITLES = {
  face: 'Face, one cut',
  lining: 'Lining, one cut',
  interlining: 'Interlining, one cut',
} as const;

function layerPieces(given: Given, sheet: BedSkirtSheet): readonly WorkPiece[] {
  return sheet.layers.map((layer): WorkPiece => {
    const cloth = given.clothOf(layer.cloth);
    const usable = cloth?.usableWidth ?? layer.cutDrop;
    const title = TITLES[layer.layer === 0 ? 'face' : (cloth?.role ?? 'lining')];
    return {
      title,
      says: [`${nameOf(given, layer.cloth)}, ${layer.joined} joined ${layer.railroaded ? 'sideways' : 'end to end'}`],
      width: usable,
      height: layer.cutDrop,
      ...(layer.layer === 0 ? { face: {} } : {}),
      chains: [whole('bottom', usable, given.say), whole('left', layer.cutDrop, given.say)],
    };
  });
}

function deckPiece(given: Given, sheet: BedSkirtSheet): readonly WorkPiece[] {
  const { deck } = sheet;
  if (deck === null) return [];
  const lines = Array.from({ length: deck.cuts - 1 }, (_, join): PieceLine => {
    const share = (join + 1) / deck.cuts;
    return deck.lies === 'along'
      ? { is: 'seam', from: { x: deck.wide * share, y: 0 }, to: { x: deck.wide * share, y: deck.long } }
      : { is: 'seam', from: { x: 0, y: deck.long * share }, to: { x: deck.wide, y: deck.long * share } };
  });
  return [
    {
      title: 'Deck, joined',
      says: [`${nameOf(given, deck.cloth)}, ${deck.cuts} cuts of ${given.sayUnit(deck.length)}, ${deck.lies} the bed`],
      width: deck.wide,
      height: deck.long,
      lines,
      chains: [whole('bottom', deck.wide, given.say), whole('left', deck.long, given.say)],
    },
  ];
}
