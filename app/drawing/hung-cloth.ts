/** What everything that hangs from a board shares: its box on the wall, ends that go back to it, the shade it casts. */
import type { ClothTones } from './draw-folds.ts';
import { clothTones } from './draw-folds.ts';
import type { Hex } from './drawn-room.ts';
import { line, outline, path, rect } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import type { ReckonedTreatment } from './reckoned.ts';
import type { PathStep, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface HungPlace {
  /** Middle of the opening. */
  readonly middle: number;
  readonly floor: number;
  readonly scale: number;
}

/** The face of something that hangs flat before a wall, in points. */
export interface HungBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly tones: ClothTones;
  readonly hair: number;
  readonly scale: number;
}

export function boxOf(hung: ReckonedTreatment, place: HungPlace, style: SheetStyle): HungBox {
  const { scale, floor, middle } = place;
  const half = (hung.rod.ticks / 2) * scale;
  const top = floor - hung.top * scale;
  return {
    left: middle - half,
    right: middle + half,
    top,
    bottom: Math.max(top + 2, floor - Math.max(0, hung.hem) * scale),
    tones: clothTones(hung.source.colour),
    hair: style.hair * 0.85,
    scale,
  };
}

const SHADE: Hex = '#2b1f12';

/** Shade on what hangs behind, softer further down. `depth` in points. */
export function castBelow(left: number, right: number, bottom: number, depth: number): readonly Shape[] {
  const steps = 4;
  return Array.from({ length: steps }, (_, step) =>
    rect(left, bottom, right - left, (depth * (step + 1)) / steps, { fill: SHADE, opacity: 0.055 }),
  );
}

/** Seen from in front the ends go straight back: a dark sliver in proportion to the return. */
export function drawEnds(
  box: HungBox,
  returns: { readonly left: number; readonly right: number },
  bottoms: { readonly left: number; readonly right: number } = { left: box.bottom, right: box.bottom },
): readonly Shape[] {
  const end = (side: 'left' | 'right'): readonly Shape[] => {
    const reach = returns[side] * 0.22 * box.scale;
    if (reach <= 0) return [];
    const x = box[side];
    const out = x + (side === 'left' ? -reach : reach);
    return [
      path(
        outline([
          { x, y: box.top },
          { x: out, y: box.top + box.hair * 1.5 },
          { x: out, y: bottoms[side] - box.hair * 1.5 },
          { x, y: bottoms[side] },
        ]),
        { fill: box.tones.shade, stroke: box.tones.edge, strokeWidth: box.hair * 0.7 },
      ),
    ];
  };
  return [...end('left'), ...end('right')];
}

/** A flat face: lighter where the light falls first. */
export function flatFill(box: HungBox): {
  readonly from: { x: number; y: number; paint: Hex };
  readonly to: { x: number; y: number; paint: Hex };
} {
  const { base, light } = box.tones;
  return {
    from: { x: box.left, y: 0, paint: mixColours(base, light, 0.55) },
    to: { x: box.right, y: 0, paint: mixColours(base, box.tones.shade, 0.16) },
  };
}

/** A covered cord along an edge. */
export function drawWelt(steps: readonly PathStep[], colour: Hex, thick: number): readonly Shape[] {
  const tones = clothTones(colour);
  return [
    path(steps, { stroke: tones.edge, strokeWidth: thick * 1.35, cap: 'round' }),
    path(steps, { stroke: tones.base, strokeWidth: thick, cap: 'round' }),
    path(steps, { stroke: tones.light, strokeWidth: thick * 0.3, cap: 'round', opacity: 0.8 }),
  ];
}

export function weltThickness(box: HungBox): number {
  return Math.max(box.hair * 1.6, 0.5 * INCH * box.scale);
}

/** A line of stitches above a hem. */
export function stitchLine(box: HungBox, up: number): readonly Shape[] {
  const rise = up * box.scale;
  if (rise < 1.5 || rise > (box.bottom - box.top) / 2.5) return [];
  return [
    line(box.left, box.bottom - rise, box.right, box.bottom - rise, {
      stroke: box.tones.edge,
      strokeWidth: box.hair * 0.7,
      opacity: 0.5,
    }),
  ];
}
