/** Panels as they hang: rod, brackets and finials; open they stand back at the sides, closed they meet in the middle. */
import { crownOf, bentRod, gatherAlong } from './draw-arch.ts';
import { drawBands } from './draw-bands.ts';
import { drawBayCorners } from './draw-bay.ts';
import type { HangingPiece } from './draw-folds.ts';
import { clothTones, drawFolds, pointOn } from './draw-folds.ts';
import { HEADING_LOOKS } from './draw-heading.ts';
import { drawRod } from './draw-rod.ts';
import type { RodLine } from './draw-rod.ts';
import { curveTo, CLOSE, lineTo, move, outline, path } from './make-shapes.ts';
import { INCH, RING_DROP } from './measure-given.ts';
import type { ReckonedPanels } from './reckoned.ts';
import type { PathStep, Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface PanelsPlace {
  /** Middle of the opening. */
  readonly middle: number;
  readonly floor: number;
  readonly scale: number;
}

export interface Extent {
  readonly left: number;
  readonly right: number;
  /** The side that hangs at the wall: where the return is. */
  readonly outer: 'left' | 'right' | 'both' | 'none';
}

export function drawPanels(panels: ReckonedPanels, place: PanelsPlace, style: SheetStyle): readonly Shape[] {
  const { scale, floor, middle } = place;
  const look = HEADING_LOOKS[panels.source.heading];
  const half = (panels.rod.ticks / 2) * scale;
  const top = floor - panels.top * scale;
  const rodThickness = Math.max(style.hair * 2.2, 1.5 * INCH * scale);
  const drops = { ring: -RING_DROP * scale, track: 0, over: (look.depth / 2) * scale } as const;
  const rod: RodLine = { y: top + drops[look.hangs], thickness: rodThickness, paint: 'rod', shine: 'frame' };
  const tones = clothTones(panels.source.colour);
  const floorReach = Math.max(0, panels.hem) * scale;
  const pieces = extents(panels, middle, half, scale).map((extent) => {
    const piece: HangingPiece = {
      left: extent.left,
      right: extent.right,
      top,
      bottom: Math.max(top + 2, floor - floorReach),
      folds: panels.folds,
      heading: Math.min(look.depth, panels.length.ticks / 3) * scale,
      flare: panels.source.drawn === 'open' ? Math.min(1.4 * INCH * scale, (extent.right - extent.left) * 0.07) : 0,
      hem: 4 * INCH * scale,
      tones,
      hair: style.hair * 0.85,
      ...(panels.source.sheer === true ? { sheer: true } : {}),
      ...(panels.arch > 0 ? { crown: crownOf(panels, middle, top, half, scale) } : {}),
    };
    return { extent, piece };
  });
  if (panels.arch > 0) {
    const crown = crownOf(panels, middle, top, half, scale);
    return [
      ...pieces.flatMap(({ extent, piece }) => [
        ...drawFolds(piece),
        ...drawBands(panels, extent, piece, scale),
        ...gatherAlong(piece),
      ]),
      ...bentRod(crown, middle, half, rodThickness),
    ];
  }
  const hidesRod = look.hangs === 'over' && panels.source.heading === 'rod-pocket';
  const rodShapes = drawRod(rod, { middle, half, scale, where: panels.source.mount.where });
  const cloth = pieces.flatMap(({ extent, piece }) => [
    ...(panels.source.sheer === true ? [] : [castShadow(piece), ...returnsOf(panels, extent, piece, scale)]),
    ...drawFolds(piece),
    ...drawBands(panels, extent, piece, scale),
    ...look.draw(piece, rod),
    ...(panels.hem < -INCH / 4 ? pool(piece, Math.min(10 * INCH, -panels.hem) * scale) : []),
  ]);
  const corners = drawBayCorners(panels, middle, half, rod.y, floor, style);
  return hidesRod || look.hangs === 'ring'
    ? [...corners, ...rodShapes, ...cloth]
    : [...corners, ...cloth, ...rodShapes];
}

function extents(panels: ReckonedPanels, middle: number, half: number, scale: number): readonly Extent[] {
  const [left, right] = [middle - half, middle + half];
  if (panels.pieces > 2) return evenExtents(panels, left, right, scale);
  const pair = panels.pieces === 2;
  const open = panels.source.drawn === 'open' || panels.source.arrangement === 'pair-stationary';
  if (!pair) {
    const toRight = panels.stack.right > panels.stack.left;
    const outer = toRight ? 'right' : 'left';
    if (!open) return [{ left, right, outer: panels.source.arrangement === 'one-way' ? 'both' : outer }];
    return toRight
      ? [{ left: right - panels.stack.right * scale, right, outer }]
      : [{ left, right: left + panels.stack.left * scale, outer }];
  }
  if (!open) {
    const lap = (panels.overlap / 2) * scale;
    return [
      { left: middle - lap, right, outer: 'right' },
      { left, right: middle + lap, outer: 'left' },
    ];
  }
  return [
    { left, right: left + panels.stack.left * scale, outer: 'left' },
    { left: right - panels.stack.right * scale, right, outer: 'right' },
  ];
}

/** More still panels than two stand evenly along the rod, the outer ones at its ends. */
function evenExtents(panels: ReckonedPanels, left: number, right: number, scale: number): readonly Extent[] {
  const each = panels.stack.left * scale;
  const pitch = (right - left - each) / (panels.pieces - 1);
  return Array.from({ length: panels.pieces }, (_, piece) => ({
    left: left + piece * pitch,
    right: left + piece * pitch + each,
    outer: outerOf(piece, panels.pieces),
  }));
}

function outerOf(piece: number, pieces: number): Extent['outer'] {
  if (piece === 0) return 'left';
  return piece === pieces - 1 ? 'right' : 'none';
}

/** A soft edge of shade on the wall, away from the light. */
function castShadow(piece: HangingPiece): Shape {
  const [a, b] = [pointOn(piece, 1, 0), pointOn(piece, 1, 1)];
  const reach = Math.min(4, Math.max(1.2, (piece.right - piece.left) * 0.08));
  return path(
    outline([
      { x: a.x - 1, y: a.y + 1 },
      { x: a.x + reach, y: a.y + reach },
      { x: b.x + reach, y: b.y },
      { x: b.x - 1, y: b.y },
    ]),
    { fill: 'faint', opacity: 0.35 },
  );
}

/** The return goes back to the wall and is hardly seen from in front: a dark sliver in its proportion. */
function returnsOf(panels: ReckonedPanels, extent: Extent, piece: HangingPiece, scale: number): readonly Shape[] {
  const sliver = (side: 'left' | 'right'): Shape[] => {
    if (extent.outer !== side && extent.outer !== 'both') return [];
    const reach = panels.returns[side] * 0.22 * scale;
    if (reach <= 0) return [];
    const [across, away] = side === 'left' ? [0, -1] : [1, 1];
    const [a, b] = [pointOn(piece, across, 0), pointOn(piece, across, 1)];
    return [
      path(
        outline([
          { x: a.x, y: a.y + piece.hair },
          { x: a.x + away * reach, y: a.y + piece.hair * 2 },
          { x: b.x + away * reach, y: b.y - piece.hair },
          { x: b.x, y: b.y },
        ]),
        { fill: piece.tones.shade, stroke: piece.tones.edge, strokeWidth: piece.hair * 0.7 },
      ),
    ];
  };
  return [...sliver('left'), ...sliver('right')];
}

/** Cloth that is longer than the drop lies on the floor. */
function pool(piece: HangingPiece, spare: number): readonly Shape[] {
  const [left, right] = [pointOn(piece, 0, 1), pointOn(piece, 1, 1)];
  const out = spare * 0.5;
  const rise = Math.min(spare * 0.35, 6);
  const steps: PathStep[] = [
    move(left.x, left.y - rise),
    curveTo(left.x - out * 0.4, left.y - rise * 0.8, left.x - out, left.y - rise * 0.4, left.x - out, left.y),
    lineTo(right.x + out, right.y),
    curveTo(right.x + out, right.y - rise * 0.4, right.x + out * 0.4, right.y - rise * 0.8, right.x, right.y - rise),
    CLOSE,
  ];
  return [path(steps, { fill: piece.tones.shade, stroke: piece.tones.edge, strokeWidth: piece.hair })];
}
