/**
 * One hanging piece of cloth with its folds: a base, a lit and a shaded flank for every fold, the hem following them.
 * Light falls from the left. Small pieces get two shapes for all folds, large ones a gradient for each flank.
 */
import { curveTo, CLOSE, lineTo, move, outline, path } from './make-shapes.ts';
import type { Point } from './make-shapes.ts';
import { mixColours } from './mix-colours.ts';
import type { PathStep, Shape } from './shape.ts';
import type { Hex } from './drawn-room.ts';

export interface ClothTones {
  readonly base: Hex;
  readonly light: Hex;
  readonly shade: Hex;
  readonly edge: Hex;
}

export interface HangingPiece {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly folds: number;
  /** Height of the heading above the folds. */
  readonly heading: number;
  /** How far each side swings out at the hem. */
  readonly flare: number;
  /** From the hem up to its line of stitches; 0: none. */
  readonly hem: number;
  readonly tones: ClothTones;
  readonly hair: number;
  /** Height of the top edge over each place across, where it is not level: the crown of an arch. */
  readonly crown?: (x: number) => number;
  /** What lies behind shows through. */
  readonly sheer?: boolean;
}

const UMBER = '#2b1f12';

export function clothTones(colour: string | null): ClothTones {
  const base = mixColours(colour, '#000000', 0);
  return {
    base,
    light: mixColours(base, '#fffaf0', 0.3),
    shade: mixColours(base, UMBER, 0.27),
    edge: mixColours(base, UMBER, 0.5),
  };
}

/** From this fold width up, in points, flanks are drawn as gradients. */
const SOFT_FROM = 4.5;

/** The point at `across` 0..1 of the piece and `down` 0..1 of its length, with the swing of the hem. */
export function pointOn(piece: HangingPiece, across: number, down: number): Point {
  const width = piece.right - piece.left;
  const swing = (across - 0.5) * 2 * piece.flare * down ** 1.6;
  const x = piece.left + across * width;
  const top = piece.crown === undefined ? piece.top : piece.crown(x);
  return { x: x + swing, y: top + down * (piece.bottom - top) };
}

/** Folds are never quite even: each line wanders a little, always the same way, mirrored about the middle of the piece. */
function wander(fold: number, folds: number): number {
  const fromEdge = Math.min(fold, folds - fold);
  const side = Math.sign(folds - fold * 2);
  return side * Math.sin(fromEdge * 2.4) * 0.16;
}

export function drawFolds(piece: HangingPiece): readonly Shape[] {
  const foldWidth = (piece.right - piece.left) / piece.folds;
  const { tones, hair } = piece;
  const sheer = piece.sheer === true;
  const body: Shape = path([...sides(piece), ...hemSteps(piece, 1), CLOSE], {
    fill: tones.base,
    ...(sheer ? { opacity: 0.5 } : {}),
  });
  const flanks = foldWidth >= SOFT_FROM && !sheer ? softFlanks(piece) : plainFlanks(piece, sheer ? 0.4 : 1);
  const depth = piece.bottom - piece.top;
  const stitches: Shape[] =
    piece.hem > 1.5 && piece.hem < depth / 3
      ? [path(hemLine(piece, 1 - piece.hem / depth), { stroke: tones.edge, strokeWidth: hair * 0.8, opacity: 0.55 })]
      : [];
  const edge = path([...sides(piece), ...hemSteps(piece, 1), CLOSE], { stroke: tones.edge, strokeWidth: hair });
  return [body, ...flanks, ...stitches, edge];
}

/** Up the right side, along the top, down the left: the hem closes it from left to right. */
function sides(piece: HangingPiece): PathStep[] {
  const steps = [1, 0.75, 0.5, 0.25, 0];
  const right = steps.map((down) => pointOn(piece, 1, down));
  const left = [...steps].reverse().map((down) => pointOn(piece, 0, down));
  const along =
    piece.crown === undefined ? [] : Array.from({ length: 23 }, (_, place) => pointOn(piece, 1 - (place + 1) / 24, 0));
  const [first, ...rest] = [...right, ...along, ...left];
  return first === undefined ? [] : [move(first.x, first.y), ...rest.map((point) => lineTo(point.x, point.y))];
}

/** The lower edge at `down`, sagging a little under every fold (the ridge stands nearer to the eye). */
function hemSteps(piece: HangingPiece, down: number): PathStep[] {
  const sag = Math.min(1.8, ((piece.right - piece.left) / piece.folds) * 0.2);
  return Array.from({ length: piece.folds }, (_, fold) => {
    const [from, to] = [foldLine(piece, fold, down), foldLine(piece, fold + 1, down)];
    const third = (to.x - from.x) / 3;
    return curveTo(from.x + third, from.y + sag * 1.3, to.x - third, to.y + sag * 1.3, to.x, to.y);
  });
}

function hemLine(piece: HangingPiece, down: number): PathStep[] {
  const start = pointOn(piece, 0, down);
  return [move(start.x, start.y), ...hemSteps(piece, down)];
}

/** The valley before fold number `fold`, `down` the piece. */
function foldLine(piece: HangingPiece, fold: number, down: number): Point {
  const inner = fold > 0 && fold < piece.folds;
  const across = (fold + (inner ? wander(fold, piece.folds) * down : 0)) / piece.folds;
  return pointOn(piece, across, down);
}

/** A strip down the folds between two shares of one fold, from `narrow` of its width under the heading to all of it at the hem. */
function strip(piece: HangingPiece, fold: number, from: number, to: number, narrow: number): Point[] {
  const depth = piece.bottom - piece.top;
  const start = Math.min(0.9, piece.heading / Math.max(1, depth));
  const at = (share: number, down: number): Point => {
    const [left, right] = [foldLine(piece, fold, down), foldLine(piece, fold + 1, down)];
    return { x: left.x + share * (right.x - left.x), y: left.y };
  };
  const pinch = (share: number) => to + (share - to) * narrow;
  const knee = start + (1 - start) * 0.3;
  const widened = (share: number) => to + (share - to) * (narrow + (1 - narrow) * 0.7);
  return [at(pinch(from), start), at(widened(from), knee), at(from, 1), at(to, 1), at(to, knee), at(to, start)];
}

function eachFold(piece: HangingPiece): number[] {
  return Array.from({ length: piece.folds }, (_, fold) => fold);
}

function plainFlanks(piece: HangingPiece, strength: number): Shape[] {
  const lit = eachFold(piece).flatMap((fold) => outline(strip(piece, fold, 0.14, 0.4, 0.6)));
  const shaded = eachFold(piece).flatMap((fold) => outline(strip(piece, fold, 0.62, 1, 0.35)));
  return [
    path(lit, { fill: piece.tones.light, opacity: 0.75 * strength }),
    path(shaded, { fill: piece.tones.shade, opacity: 0.85 * strength }),
  ];
}

function softFlanks(piece: HangingPiece): Shape[] {
  const { base, light, shade } = piece.tones;
  const flank = (fold: number, from: number, to: number, narrow: number, first: Hex, last: Hex): Shape => {
    const points = strip(piece, fold, from, to, narrow);
    const [a, b] = [points[1], points[4]];
    const fill = {
      from: { x: a?.x ?? 0, y: 0, paint: first },
      to: { x: b?.x ?? 0, y: 0, paint: last },
    };
    return path(outline(points), { fill });
  };
  return eachFold(piece).flatMap((fold) => [
    flank(fold, 0, 0.3, 1, base, light),
    flank(fold, 0.3, 0.58, 1, light, base),
    flank(fold, 0.58, 1, 0.45, base, shade),
  ]);
}
