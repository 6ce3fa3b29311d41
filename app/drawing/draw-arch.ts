/** An arched top: half an ellipse over the whole rod, its heading gathered along the curve. It does not draw. */
import type { HangingPiece } from './draw-folds.ts';
import { pointOn } from './draw-folds.ts';
import { lineTo, move, path, strokes } from './make-shapes.ts';
import type { ReckonedPanels } from './reckoned.ts';
import { nearestCount } from './round-shapes.ts';
import type { Shape } from './shape.ts';

/** Height of the top edge over each place, in drawing units; `top` is its highest. */
export function crownOf(
  panels: ReckonedPanels,
  middle: number,
  top: number,
  half: number,
  scale: number,
): (x: number) => number {
  const rise = panels.arch * scale;
  return (x) => {
    const out = Math.min(1, Math.abs(x - middle) / Math.max(1, half));
    return top + rise * (1 - Math.sqrt(1 - out * out));
  };
}

export function bentRod(crown: (x: number) => number, middle: number, half: number, thick: number): readonly Shape[] {
  const parts = 48;
  const steps = Array.from({ length: parts + 1 }, (_, part) => {
    const x = middle + half * Math.sin(((part / parts) * 2 - 1) * (Math.PI / 2));
    return part === 0 ? move(x, crown(x)) : lineTo(x, crown(x));
  });
  return [path(steps, { stroke: 'rod', strokeWidth: Math.max(1, thick * 0.6), cap: 'round' })];
}

/** Short tucks that follow the curve. */
export function gatherAlong(piece: HangingPiece): readonly Shape[] {
  const count = nearestCount((piece.right - piece.left) / 1.8, 2, piece.folds * 3);
  const tucks = Array.from({ length: count }, (_, tuck): readonly [number, number, number, number] => {
    const { x, y } = pointOn(piece, (tuck + 0.5) / count, 0);
    return [x, y, x, y + piece.heading * (tuck % 2 === 0 ? 0.9 : 0.55)];
  });
  return [strokes(tucks, { stroke: piece.tones.edge, strokeWidth: piece.hair * 0.7, opacity: 0.6 })];
}
