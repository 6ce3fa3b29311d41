/** What the table marks on the flat cloth of a valance, by style: pleats, scallops, columns of rings, corners of the board. */
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceSheet } from '#app/estimating/valance/sheet-valance.ts';
import type { WorkGiven } from './work-given.ts';
import { chainOf, linksBetween } from './chain-of.ts';
import type { Link } from './chain-of.ts';
import type { Chain, PieceLine, PieceZone } from './work-piece.ts';

type Given = WorkGiven<ValanceTreatment>;

export interface Marks {
  readonly zones: readonly PieceZone[];
  readonly lines: readonly PieceLine[];
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  readonly chains: readonly Chain[];
}

const NOTHING: Marks = { zones: [], lines: [], dots: [], chains: [] };

/** What is marked on the flat cloth by style. */
export function marksOn(given: Given, sheet: ValanceSheet): Marks {
  if (sheet.pleats !== null) return markPleats(given, sheet, sheet.pleats);
  if (sheet.scallops !== null) return markScallops(given, sheet, sheet.scallops);
  if (sheet.puffs !== null) return markPuffs(given, sheet, sheet.puffs);
  const { practice, returns, width } = given.treatment;
  const { sideHem, wrap } = practice.valance;
  if (isFull(given.treatment)) {
    const links: Link[] = [
      { length: sideHem, says: 'side hem' },
      { length: sheet.cutWidth - 2 * sideHem, says: 'gathered' },
      { length: sideHem, says: 'side hem' },
    ];
    return { ...NOTHING, chains: [chainOf('top', links, given.say)] };
  }
  const left = sideHem + wrap;
  const corners = [left + returns.left, left + returns.left + width];
  return {
    ...NOTHING,
    lines: corners.map((x) => ({ is: 'fold', from: { x, y: 0 }, to: { x, y: sheet.cutLength } })),
    chains: [
      chainOf(
        'top',
        [
          { length: left, says: 'hem and wrap' },
          { length: returns.left, says: 'return' },
          { length: width, says: 'face' },
          { length: returns.right, says: 'return' },
          { length: left, says: 'hem and wrap' },
        ],
        given.say,
      ),
    ],
  };
}

function markPleats(given: Given, sheet: ValanceSheet, pleats: NonNullable<ValanceSheet['pleats']>): Marks {
  const { practice, returns, width } = given.treatment;
  const left = practice.valance.sideHem + practice.valance.wrap;
  const start = left + returns.left;
  // Each pleat takes its cloth where its middle stands on the face.
  const zones = pleats.centres.map((centre, place): PieceZone => ({
    x: start + centre + place * pleats.takeUp,
    y: 0,
    width: pleats.takeUp,
    height: sheet.cutLength,
    is: 'pleat',
  }));
  const gaps = linksBetween(pleats.centres, 0, width).map((link) => link.length);
  const links: Link[] = [
    { length: left, says: 'hem and wrap' },
    { length: returns.left, says: 'return' },
  ];
  gaps.forEach((gap, place) => {
    if (gap > 1) links.push({ length: gap });
    if (place < pleats.centres.length) links.push({ length: pleats.takeUp, says: 'pleat' });
  });
  links.push({ length: returns.right, says: 'return' }, { length: left, says: 'hem and wrap' });
  return {
    zones,
    lines: zones.map((zone) => ({
      is: 'fold',
      from: { x: zone.x + zone.width / 2, y: 0 },
      to: { x: zone.x + zone.width / 2, y: sheet.cutLength },
    })),
    dots: [],
    chains: [chainOf('top', links, given.say)],
  };
}

function markScallops(given: Given, sheet: ValanceSheet, scallops: NonNullable<ValanceSheet['scallops']>): Marks {
  const { practice, returns } = given.treatment;
  const full = isFull(given.treatment);
  const left = practice.valance.sideHem + (full ? 0 : practice.valance.wrap + returns.left);
  const points = Array.from({ length: scallops.count + 1 }, (_, place) => left + place * scallops.flatWidth);
  const bottom = sheet.folds.find((fold) => fold.name === 'bottom')?.at ?? sheet.cutLength;
  const lines: PieceLine[] = [];
  // The curve in short strokes: a parabola by width and depth.
  const parts = 16;
  points.slice(0, -1).forEach((from) => {
    const y = (share: number) => bottom - scallops.depth + 4 * scallops.depth * share * (1 - share);
    for (let part = 0; part < parts; part += 1) {
      const [a, b] = [part / parts, (part + 1) / parts];
      lines.push({
        is: 'edge',
        from: { x: from + a * scallops.flatWidth, y: y(a) },
        to: { x: from + b * scallops.flatWidth, y: y(b) },
      });
    }
  });
  const end = points.at(-1) ?? left;
  return {
    zones: [],
    lines,
    dots: points.map((x) => ({ x, y: bottom - scallops.depth })),
    chains: [
      chainOf(
        'top',
        [
          { length: left, says: full ? 'side hem' : 'hem, wrap, return' },
          ...Array.from({ length: scallops.count }, () => ({ length: scallops.flatWidth })),
          { length: sheet.cutWidth - end, says: full ? 'side hem' : 'return, wrap, hem' },
        ],
        given.say,
      ),
      chainOf('right', [{ length: scallops.depth, says: 'scallop' }], given.say, bottom - scallops.depth),
    ],
  };
}

function markPuffs(given: Given, sheet: ValanceSheet, puffs: NonNullable<ValanceSheet['puffs']>): Marks {
  const { sideHem } = given.treatment.practice.valance;
  const columns = Array.from({ length: puffs.count + 1 }, (_, place) => sideHem + place * puffs.flatWidth);
  const rows = Array.from({ length: puffs.rows }, (_, row) => sheet.cutLength - row * puffs.ringSpacing).filter(
    (y) => y > 0,
  );
  const lines = columns.map((x): PieceLine => ({ is: 'stitch', from: { x, y: 0 }, to: { x, y: sheet.cutLength } }));
  return {
    zones: [],
    lines,
    dots: columns.flatMap((x) => rows.map((y) => ({ x, y }))),
    chains: [
      chainOf(
        'top',
        [
          { length: sideHem, says: 'side hem' },
          ...Array.from({ length: puffs.count }, () => ({ length: puffs.flatWidth })),
          { length: sideHem, says: 'side hem' },
        ],
        given.say,
      ),
      ...(rows.length > 1
        ? [
            chainOf(
              'right',
              Array.from({ length: rows.length - 1 }, () => ({ length: puffs.ringSpacing, says: 'rings' })),
              given.say,
              sheet.cutLength - (rows.length - 1) * puffs.ringSpacing,
            ),
          ]
        : []),
    ],
  };
}
