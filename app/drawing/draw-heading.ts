/** The heading at the top of a piece, and how it meets its rod, by heading type. One entry a type; the compiler asks for each. */
import type { Heading } from '#shared/words.ts';
import type { HangingPiece } from './draw-folds.ts';
import { pointOn } from './draw-folds.ts';
import { circle, path, rect, strokes, curveTo, move } from './make-shapes.ts';
import type { RodLine } from './draw-rod.ts';
import type { Shape } from './shape.ts';
import { INCH } from './measure-given.ts';
import { nearestCount } from './round-shapes.ts';

export interface HeadingLook {
  /** Height of the heading, in ticks. */
  readonly depth: number;
  /** `ring`: hangs below the rod on rings or tabs; `over`: the rod goes through the heading; `track`: meets it. */
  readonly hangs: 'ring' | 'over' | 'track';
  readonly draw: (piece: HangingPiece, rod: RodLine) => readonly Shape[];
}

export const HEADING_LOOKS: Readonly<Record<Heading, HeadingLook>> = {
  'pinch-pleat': {
    depth: 4 * INCH,
    hangs: 'ring',
    draw: (piece, rod) => [...rings(piece, rod), ...pinches(piece, 0.26)],
  },
  goblet: { depth: 4.5 * INCH, hangs: 'ring', draw: (piece, rod) => [...rings(piece, rod), ...goblets(piece)] },
  'box-pleat': { depth: 4 * INCH, hangs: 'track', draw: boxes },
  'pencil-pleat': { depth: 3 * INCH, hangs: 'track', draw: (piece) => gathers(piece, 4) },
  'rod-pocket': { depth: 4 * INCH, hangs: 'over', draw: (piece) => gathers(piece, 3) },
  tab: { depth: INCH, hangs: 'ring', draw: tabs },
  grommet: { depth: 4 * INCH, hangs: 'over', draw: grommets },
  wave: { depth: 2.5 * INCH, hangs: 'track', draw: () => [] },
  flat: { depth: 2 * INCH, hangs: 'ring', draw: (piece, rod) => rings(piece, rod) },
};

function middles(piece: HangingPiece): number[] {
  return Array.from({ length: piece.folds }, (_, fold) => (fold + 0.5) / piece.folds);
}

function widthOfFold(piece: HangingPiece): number {
  return (piece.right - piece.left) / piece.folds;
}

function rings(piece: HangingPiece, rod: RodLine): readonly Shape[] {
  const bottom = piece.top;
  const reach = rod.y - rod.thickness * 0.5;
  if (bottom <= reach + 0.5) return [];
  const rx = Math.min(1.6, Math.max(0.5, widthOfFold(piece) * 0.16));
  const [middle, ry] = [(bottom + reach) / 2, (bottom - reach) / 2];
  const bow = ry * 1.33;
  const steps = middles(piece).flatMap((across) => {
    const { x } = pointOn(piece, across, 0);
    return [
      move(x, middle - ry),
      curveTo(x + rx * 1.33, middle - ry + (ry - bow * 0.55), x + rx * 1.33, middle + bow * 0.2, x, middle + ry),
      curveTo(x - rx * 1.33, middle + bow * 0.2, x - rx * 1.33, middle - ry + (ry - bow * 0.55), x, middle - ry),
    ];
  });
  return [path(steps, { stroke: rod.paint, strokeWidth: piece.hair })];
}

/** Three fingers spreading upwards from where they are tacked together. */
function pinches(piece: HangingPiece, spread: number): readonly Shape[] {
  const width = widthOfFold(piece);
  const fan = Math.min(width * spread, piece.heading * 0.4);
  const tack = piece.top + piece.heading;
  const fingers = middles(piece).flatMap((across): (readonly [number, number, number, number])[] => {
    const { x } = pointOn(piece, across, 0);
    const rays = width < 3.2 ? [0] : [-fan, 0, fan];
    return rays.map((ray) => [x + ray * 0.25, tack, x + ray, piece.top + piece.hair] as const);
  });
  const tacks = middles(piece).map((across): readonly [number, number, number, number] => {
    const { x } = pointOn(piece, across, 0);
    const half = Math.min(fan * 0.5, 1.6);
    return [x - half, tack, x + half, tack];
  });
  return [
    strokes(fingers, { stroke: piece.tones.edge, strokeWidth: piece.hair * 0.9, opacity: 0.8 }),
    strokes(tacks, { stroke: piece.tones.edge, strokeWidth: piece.hair * 1.5, cap: 'round' }),
  ];
}

function goblets(piece: HangingPiece): readonly Shape[] {
  const half = Math.min(widthOfFold(piece) * 0.3, piece.heading * 0.35);
  const tack = piece.top + piece.heading;
  const cups = middles(piece).flatMap((across) => {
    const { x } = pointOn(piece, across, 0);
    const top = piece.top + piece.hair;
    return [
      move(x - half, top),
      curveTo(x - half, top + piece.heading * 0.6, x - half * 0.3, tack - piece.heading * 0.2, x, tack),
      curveTo(x + half * 0.3, tack - piece.heading * 0.2, x + half, top + piece.heading * 0.6, x + half, top),
      curveTo(x + half * 0.5, top + half * 0.4, x - half * 0.5, top + half * 0.4, x - half, top),
    ];
  });
  return [path(cups, { fill: piece.tones.light, stroke: piece.tones.edge, strokeWidth: piece.hair * 0.9 })];
}

function boxes(piece: HangingPiece): readonly Shape[] {
  const tack = piece.top + piece.heading;
  const edges = middles(piece).flatMap((across): (readonly [number, number, number, number])[] => {
    const half = 0.36 / piece.folds;
    return [across - half, across + half].map((side) => {
      const { x } = pointOn(piece, side, 0);
      return [x, piece.top, x, tack] as const;
    });
  });
  return [strokes(edges, { stroke: piece.tones.edge, strokeWidth: piece.hair * 0.9, opacity: 0.8 })];
}

function gathers(piece: HangingPiece, each: number): readonly Shape[] {
  const count = nearestCount((piece.right - piece.left) / 1.6, 1, piece.folds * each);
  const tucks = Array.from({ length: count }, (_, tuck): readonly [number, number, number, number] => {
    const { x } = pointOn(piece, (tuck + 0.5) / count, 0);
    return [x, piece.top, x, piece.top + piece.heading];
  });
  return [strokes(tucks, { stroke: piece.tones.edge, strokeWidth: piece.hair * 0.7, opacity: 0.6 })];
}

function tabs(piece: HangingPiece, rod: RodLine): readonly Shape[] {
  const width = Math.min(widthOfFold(piece) * 0.5, rod.thickness * 2.4);
  const top = rod.y - rod.thickness * 0.75;
  return middles(piece).map((across) => {
    const { x } = pointOn(piece, across, 0);
    return rect(x - width / 2, top, width, piece.top + piece.heading - top, {
      fill: piece.tones.base,
      stroke: piece.tones.edge,
      strokeWidth: piece.hair * 0.8,
    });
  });
}

function grommets(piece: HangingPiece, rod: RodLine): readonly Shape[] {
  const r = Math.min(widthOfFold(piece) * 0.28, rod.thickness * 0.95);
  return middles(piece).map((across) =>
    circle(pointOn(piece, across, 0).x, rod.y, r, { stroke: rod.paint, strokeWidth: Math.max(piece.hair, r * 0.35) }),
  );
}
