/** Valances as they hang, by style: flat with its corners, box pleats counted and spaced, gathers, scallops, puffs. */
import { exhaustive } from '#shared/fault.ts';
import { drawFolds } from './draw-folds.ts';
import type { HangingPiece } from './draw-folds.ts';
import { drawRod } from './draw-rod.ts';
import type { RodLine } from './draw-rod.ts';
import { boxOf, castBelow, drawEnds, drawWelt, flatFill, stitchLine, weltThickness } from './hung-cloth.ts';
import type { HungBox, HungPlace } from './hung-cloth.ts';
import { curveTo, CLOSE, line, lineTo, move, outline, path, rect, strokes } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { drawPuffs } from './draw-puffs.ts';
import type { ReckonedValance } from './reckoned.ts';
import { nearestCount } from './round-shapes.ts';
import type { PathStep, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

/** A finished pocket on a short rod. */
const POCKET = 1.5 * INCH;

export function drawValance(valance: ReckonedValance, place: HungPlace, style: SheetStyle): readonly Shape[] {
  const box = boxOf(valance, place, style);
  const edge = lowerEdge(valance, box);
  const shadow = castBelow(box.left, box.right, box.bottom - dipOf(valance, box), Math.min(7, 3 * INCH * box.scale));
  const welt = valance.source.welt === null ? [] : drawWelt(edge, valance.source.welt, weltThickness(box));
  const cloth = [
    ...drawEnds(box, valance.returns, {
      left: box.bottom - dipOf(valance, box),
      right: box.bottom - dipOf(valance, box),
    }),
    ...drawStyle(valance, box, edge),
    ...welt,
  ];
  if (valance.source.hang === 'board') return [...shadow, ...cloth];
  const rod: RodLine = {
    y: box.top + (valance.header + POCKET / 2) * box.scale,
    thickness: Math.max(style.hair * 2.2, 1.2 * INCH * box.scale),
    paint: 'rod',
    shine: 'frame',
  };
  const half = (box.right - box.left) / 2;
  return [
    ...shadow,
    ...drawRod(rod, { middle: place.middle, half, scale: box.scale, where: valance.source.mount.where }),
    ...cloth,
    ...drawPocket(valance, box),
  ];
}

function drawStyle(valance: ReckonedValance, box: HungBox, edge: readonly PathStep[]): readonly Shape[] {
  const { style } = valance.source;
  switch (style) {
    case 'tailored':
      return [...drawFlat(box, edge), ...stitchLine(box, 1.5 * INCH), ...corners(box, 0)];
    case 'box-pleated':
      return [...drawFlat(box, edge), ...stitchLine(box, 1.5 * INCH), ...drawBoxPleats(valance, box)];
    case 'gathered':
      return drawGathered(valance, box);
    case 'scalloped':
      return [
        ...drawFlat(box, edge),
        ...(valance.source.hang === 'rod' ? foldsOverScallops(valance, box) : corners(box, dipOf(valance, box))),
      ];
    case 'balloon':
      return drawPuffs(box, valance.puffs, valance.folds);
    default:
      return exhaustive(style);
  }
}

/** How far the ends of the lower edge lie above its lowest point. */
function dipOf(valance: ReckonedValance, box: HungBox): number {
  if (valance.source.style === 'scalloped') return valance.scallopDepth * box.scale;
  if (valance.source.style === 'balloon') return (box.bottom - box.top) * 0.14;
  return 0;
}

/** The lower edge from the left end to the right one. A scallop is a parabola: depth and width alone make it. */
function lowerEdge(valance: ReckonedValance, box: HungBox): readonly PathStep[] {
  if (valance.source.style !== 'scalloped') return [move(box.left, box.bottom), lineTo(box.right, box.bottom)];
  const dip = dipOf(valance, box);
  const y = box.bottom - dip;
  const each = (box.right - box.left) / valance.scallops;
  return [
    move(box.left, y),
    ...Array.from({ length: valance.scallops }, (_, scallop) => {
      const x = box.left + scallop * each;
      return curveTo(x + each / 3, y + (dip * 4) / 3, x + (each * 2) / 3, y + (dip * 4) / 3, x + each, y);
    }),
  ];
}

function drawFlat(box: HungBox, edge: readonly PathStep[]): readonly Shape[] {
  return [
    path([...edge, lineTo(box.right, box.top), lineTo(box.left, box.top), CLOSE], {
      fill: flatFill(box),
      stroke: box.tones.edge,
      strokeWidth: box.hair,
    }),
    line(box.left, box.top, box.right, box.top, { stroke: box.tones.edge, strokeWidth: box.hair * 1.6 }),
  ];
}

/** Where the cloth turns round the corners of the board. */
function corners(box: HungBox, dip: number): readonly Shape[] {
  const inset = Math.min(1.1 * INCH * box.scale, (box.right - box.left) * 0.02);
  const style = { fill: box.tones.shade, opacity: 0.4 } as const;
  const tall = box.bottom - dip - box.top;
  return [rect(box.left, box.top, inset, tall, style), rect(box.right - inset, box.top, inset, tall, style)];
}

/** An inverted pleat: two edges that meet at the board and open a little towards the hem, dark between. */
function drawBoxPleats(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const { pleats } = valance;
  const width = box.right - box.left;
  const atCorners = valance.source.pleatsAt === 'corners' && pleats > 1;
  const parts = atCorners ? pleats - 1 : pleats + 1;
  const open = Math.min(1.6 * INCH * box.scale, (width / parts) * 0.16);
  const tones = box.tones;
  return Array.from({ length: pleats }, (_, pleat) => {
    const x = box.left + (width * (atCorners ? pleat : pleat + 1)) / parts;
    const [from, to] = [Math.max(box.left, x - open), Math.min(box.right, x + open)];
    return [
      path(
        outline([
          { x, y: box.top },
          { x: to, y: box.bottom },
          { x: from, y: box.bottom },
        ]),
        { fill: { from: { x: from, y: 0, paint: tones.edge }, to: { x: to, y: 0, paint: tones.shade } } },
      ),
      strokes(
        [
          [x, box.top, from, box.bottom],
          [x, box.top, to, box.bottom],
        ],
        { stroke: tones.edge, strokeWidth: box.hair },
      ),
    ];
  }).flat();
}

function pieceOf(valance: ReckonedValance, box: HungBox, top: number): HangingPiece {
  return {
    left: box.left,
    right: box.right,
    top,
    bottom: box.bottom,
    folds: valance.folds,
    heading: valance.source.hang === 'rod' ? POCKET * box.scale : 1.5 * INCH * box.scale,
    flare: 0,
    hem: 1.5 * INCH * box.scale,
    tones: box.tones,
    hair: box.hair,
  };
}

function drawGathered(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const below = box.top + valance.header * box.scale;
  const piece = pieceOf(valance, box, valance.source.hang === 'rod' ? below : box.top);
  return [...drawHeader(valance, box), ...drawFolds(piece), ...gathersUnder(valance, box)];
}

/** The frill above a pocket stands up in small waves. */
function drawHeader(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const rise = valance.header * box.scale;
  if (rise < 0.5) return [];
  const count = nearestCount(valance.folds * 1.6, 4, 140);
  const each = (box.right - box.left) / count;
  const wave = Math.min(rise * 0.35, each * 0.5);
  const steps: PathStep[] = [
    move(box.left, box.top + rise + 1),
    lineTo(box.left, box.top + wave / 2),
    ...Array.from({ length: count }, (_, frill) => {
      const x = box.left + frill * each;
      const y = box.top + wave / 2;
      return curveTo(x + each * 0.3, y - wave, x + each * 0.7, y - wave, x + each, y);
    }),
    lineTo(box.right, box.top + rise + 1),
    CLOSE,
  ];
  return [path(steps, { fill: box.tones.base, stroke: box.tones.edge, strokeWidth: box.hair * 0.8 })];
}

/** Tucks are not all alike: shares of the longest. */
const TUCKS = [1, 0.62, 0.8] as const;

/** Short tucks under the board or above and below the pocket. */
function gathersUnder(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const width = box.right - box.left;
  const count = nearestCount(Math.min(valance.folds * 3, width / 1.8), 2, 260);
  const start = box.top + (valance.source.hang === 'rod' ? valance.header * box.scale : 0);
  const deep = Math.min((box.bottom - start) * 0.3, 2.6 * INCH * box.scale);
  const tucks = Array.from({ length: count }, (_, tuck): readonly [number, number, number, number] => {
    const x = box.left + (width * (tuck + 0.5)) / count;
    return [x, start, x, start + deep * (TUCKS[tuck % 3] ?? 1)];
  });
  return [strokes(tucks, { stroke: box.tones.edge, strokeWidth: box.hair * 0.7, opacity: 0.55 })];
}

/** The two lines of stitches that make the pocket, and the tucks between them. */
function drawPocket(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const top = box.top + valance.header * box.scale;
  const bottom = top + POCKET * box.scale;
  if (bottom - top < 1.5) return [];
  const pen = { stroke: box.tones.edge, strokeWidth: box.hair * 0.7, opacity: 0.7 } as const;
  const lines = [line(box.left, bottom, box.right, bottom, pen)];
  return valance.header > 0 ? [line(box.left, top, box.right, top, pen), ...lines] : lines;
}

/** Soft folds over a scalloped edge, each ending at the edge under it. */
function foldsOverScallops(valance: ReckonedValance, box: HungBox): readonly Shape[] {
  const width = box.right - box.left;
  const dip = dipOf(valance, box);
  const start = box.top + (valance.header + POCKET) * box.scale;
  const fold = (from: number, to: number): PathStep[] => {
    const x = (share: number) => box.left + width * share;
    const y = (share: number) => {
      const within = (share * valance.scallops) % 1;
      return box.bottom - dip + 4 * dip * within * (1 - within);
    };
    const narrow = from + (to - from) * 0.4;
    return outline([
      { x: x(narrow), y: start },
      { x: x(to), y: start },
      { x: x(to), y: y(to) },
      { x: x(from), y: y(from) },
    ]);
  };
  const strips = (from: number, to: number) =>
    Array.from({ length: valance.folds }, (_, place) =>
      fold((place + from) / valance.folds, Math.min(1, (place + to) / valance.folds)),
    ).flat();
  return [
    path(strips(0.14, 0.4), { fill: box.tones.light, opacity: 0.7 }),
    path(strips(0.62, 0.96), { fill: box.tones.shade, opacity: 0.75 }),
    ...gathersUnder(valance, box),
  ];
}
