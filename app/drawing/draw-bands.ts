/** Contrast edges: a strip of another cloth along the leading edge, both sides or the hem, falling in the same folds. */
import { clothTones, drawFolds, pointOn } from './draw-folds.ts';
import type { HangingPiece } from './draw-folds.ts';
import type { Extent } from './draw-panels.ts';
import type { DrawnBand } from './drawn-room.ts';
import { take } from './measure-given.ts';
import type { ReckonedPanels } from './reckoned.ts';
import type { Shape } from './shape.ts';

export function drawBands(
  panels: ReckonedPanels,
  extent: Extent,
  piece: HangingPiece,
  scale: number,
): readonly Shape[] {
  const bands = panels.source.bands ?? [];
  // The hem goes first: a strip down the side runs over its end.
  const order = [...bands].sort((a, b) => Number(b.edge === 'hem') - Number(a.edge === 'hem'));
  return order.flatMap((band) => {
    if (band.edge === 'hem') return hemBand(piece, band, scale);
    const leading = extent.outer === 'right' ? 'left' : 'right';
    const sides = band.edge === 'both-sides' ? (['left', 'right'] as const) : ([leading] as const);
    return sides.flatMap((side) => sideBand(piece, band, side, scale));
  });
}

function hemBand(piece: HangingPiece, band: DrawnBand, scale: number): readonly Shape[] {
  const deep = piece.bottom - piece.top;
  const high = Math.min(deep * 0.8, take(band.width, 'part').ticks * scale);
  const down = 1 - high / Math.max(1, deep);
  const [left, right] = [pointOn(piece, 0, down), pointOn(piece, 1, down)];
  return drawFolds({
    left: left.x,
    right: right.x,
    top: piece.bottom - high,
    bottom: piece.bottom,
    folds: piece.folds,
    heading: 0,
    flare: piece.flare * (1 - down ** 1.6),
    hem: 0,
    tones: clothTones(band.colour),
    hair: piece.hair,
  });
}

/** Of an edge that stands in folds about two thirds of the strip are seen. */
const SEEN = 0.66;

function sideBand(piece: HangingPiece, band: DrawnBand, side: 'left' | 'right', scale: number): readonly Shape[] {
  const width = piece.right - piece.left;
  const seen = Math.max(1.2, Math.min(width * 0.4, take(band.width, 'part').ticks * scale * SEEN));
  const strip =
    side === 'left' ? { left: piece.left, right: piece.left + seen } : { left: piece.right - seen, right: piece.right };
  const { crown } = piece;
  return drawFolds({
    ...strip,
    top: crown === undefined ? piece.top : crown((strip.left + strip.right) / 2),
    bottom: piece.bottom,
    folds: 1,
    heading: 0,
    flare: piece.flare * (seen / width),
    hem: 0,
    tones: clothTones(band.colour),
    hair: piece.hair,
  }).map((shape) => lean(shape, piece, side));
}

/** The strip swings out with the edge that it lies on. */
function lean(shape: Shape, piece: HangingPiece, side: 'left' | 'right'): Shape {
  if (shape.kind !== 'path' || piece.flare === 0) return shape;
  const sign = side === 'left' ? -1 : 1;
  const deep = Math.max(1, piece.bottom - piece.top);
  const out = (y: number) => sign * piece.flare * 0.94 * Math.max(0, Math.min(1, (y - piece.top) / deep)) ** 1.6;
  return {
    ...shape,
    steps: shape.steps.map((step) => {
      if (step.to === 'close') return step;
      if (step.to === 'curve')
        return { ...step, x1: step.x1 + out(step.y1), x2: step.x2 + out(step.y2), x: step.x + out(step.y) };
      return { ...step, x: step.x + out(step.y) };
    }),
  };
}
