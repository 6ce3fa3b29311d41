/**
 * Cascades and jabots: cloth in knife folds, shortest on top. Where a fold turns under, its wrong side looks out below the
 * fold above it, so that the lining shows in steps. The lower edge runs straight along the flat cloth from the longest to
 * the shortest point.
 */
import type { ClothTones } from './draw-folds.ts';
import { outline, path } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { ReckonedTail } from './reckoned.ts';
import type { Shape } from './shape.ts';

export interface TailPlace {
  readonly tail: ReckonedTail;
  /** Outer edge of a cascade, at the end of the board; middle of a jabot. */
  readonly x: number;
  /** The end of the board that a cascade hangs at: its longest point is there. */
  readonly side: 'left' | 'right';
  readonly top: number;
  readonly scale: number;
  readonly tones: ClothTones;
  readonly lining: ClothTones;
  readonly hair: number;
}

/** Depth of one knife pleat (from memory). */
const DEPTH = 2.5 * INCH;

export function drawTail(place: TailPlace): readonly Shape[] {
  const { tail, side, x, scale } = place;
  return drawSteps(place, {
    outer: x,
    width: tail.width.ticks * scale,
    towards: side === 'left' ? 1 : -1,
    pleats: tail.pleats,
  });
}

/** Both halves fall from the middle, where it is longest. */
export function drawJabot(place: TailPlace): readonly Shape[] {
  const { tail, x, scale } = place;
  const half = (tail.width.ticks / 2) * scale;
  const pleats = Math.max(1, (tail.pleats - (tail.pleats % 2)) / 2);
  return [
    ...drawSteps(place, { outer: x, width: half, towards: -1, pleats }),
    ...drawSteps(place, { outer: x, width: half, towards: 1, pleats }),
  ];
}

interface Steps {
  /** Where it is longest. */
  readonly outer: number;
  readonly width: number;
  /** From the longest edge to the shortest: 1 goes right. */
  readonly towards: 1 | -1;
  readonly pleats: number;
}

function drawSteps(place: TailPlace, { outer, width, towards, pleats }: Steps): readonly Shape[] {
  const { tail, top, scale, tones, lining, hair } = place;
  const face = width / pleats;
  const depth = DEPTH * scale;
  // The fold at the longest edge is the face of the last pleat: nothing turns under behind it.
  const flat = width + 2 * depth * (pleats - 1);
  const [long, short] = [tail.longest.ticks * scale, Math.min(tail.shortest.ticks, tail.longest.ticks) * scale];
  /** How low the flat cloth hangs, `along` from its shortest edge. */
  const low = (along: number) => top + short + ((long - short) * Math.max(0, Math.min(flat, along))) / flat;
  // A fold goes under as deep as it is cut, but is not drawn further than the fold it lies under.
  const under = Math.min(depth, face * 0.92);
  const edge = { stroke: tones.edge, strokeWidth: hair * 0.8 } as const;
  const shapes: Shape[] = [];
  for (let pleat = pleats - 1; pleat >= 0; pleat -= 1) {
    const along = pleat * (face + 2 * depth);
    // Distances from the shortest edge, towards the longest.
    const near = pleat * face;
    const at = (distance: number) => outer + towards * (width - distance);
    const strip = (from: number, to: number, yFrom: number, yTo: number) =>
      outline([
        { x: at(from), y: top },
        { x: at(to), y: top },
        { x: at(to), y: yTo },
        { x: at(from), y: yFrom },
      ]);
    const [inner, fold] = [at(near), at(near + face)];
    const tucked = pleat === 0 ? 0 : under;
    shapes.push(
      path(strip(near - tucked, near + face, low(along - (pleat === 0 ? 0 : depth)), low(along + face)), {
        fill: {
          from: { x: inner, y: 0, paint: mixColours(tones.base, tones.shade, 0.8) },
          to: { x: fold, y: 0, paint: mixColours(tones.base, tones.light, 0.75) },
        },
        ...edge,
      }),
    );
    if (pleat > 0) {
      // The layer before this one turns under at `near`: its wrong side hangs lower than the face in front of it.
      const before = along - 2 * depth;
      shapes.push(
        path(strip(near, near - under, low(before), low(before + depth)), {
          fill: lining.base,
          stroke: lining.edge,
          strokeWidth: hair * 0.7,
        }),
      );
    }
  }
  return shapes;
}
