/** A bed from its side with the skirt that hangs from its platform. Mattress, pillow and head board are only hinted at. */
import { clothTones, drawFolds } from './draw-folds.ts';
import type { Hex } from './drawn-room.ts';
import { curveTo, CLOSE, line, move, outline, path, rect, strokes } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import { mixColours } from './mix-colours.ts';
import { HEAD_BOARD, HEAD_BOARD_THICK, MATTRESS } from './reckon-furniture.ts';
import type { BedView, ReckonedBed } from './reckon-furniture.ts';
import type { Shape, Style } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface StandingPlace {
  /** Left edge of the opening that it stands for. */
  readonly x: number;
  readonly floor: number;
  readonly scale: number;
}

interface SkirtBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly scale: number;
  readonly hair: number;
}

export function drawBed(bed: ReckonedBed, place: StandingPlace, style: SheetStyle): readonly Shape[] {
  const side = boxOf(bed, bed.sideView, place, style);
  const foot = boxOf(bed, bed.footView, place, style);
  const headed = bed.source.against === 'head';
  return [
    ...(headed ? [...headBoard(side, place.floor, style), ...headBoardBehind(foot, place.floor, style)] : []),
    ...mattress(side, headed, style),
    ...drawSkirt(bed, bed.sideView, side, headed ? 'right' : 'both'),
    ...mattress(foot, false, style),
    ...drawSkirt(bed, bed.footView, foot, headed ? 'both' : 'right'),
  ];
}

function boxOf(bed: ReckonedBed, view: BedView, place: StandingPlace, style: SheetStyle): SkirtBox {
  const { scale, floor } = place;
  const left = place.x + (bed.at + view.at) * scale;
  return {
    left,
    right: left + view.wide.ticks * scale,
    top: floor - (bed.hem + bed.drop.ticks) * scale,
    bottom: floor - bed.hem * scale,
    scale,
    hair: style.hair * 0.85,
  };
}

function headBoard(box: SkirtBox, floor: number, style: SheetStyle): readonly Shape[] {
  const thick = HEAD_BOARD_THICK * box.scale;
  const top = box.top - HEAD_BOARD * box.scale;
  const pen: Style = { fill: 'frame', stroke: 'pencil', strokeWidth: style.hair * 0.8 };
  return [rect(box.left - thick, top, thick, floor - top, pen, thick * 0.4)];
}

/** Seen from the foot it stands behind the bed. */
function headBoardBehind(box: SkirtBox, floor: number, style: SheetStyle): readonly Shape[] {
  const top = box.top - HEAD_BOARD * box.scale;
  const pen: Style = { fill: 'frame', stroke: 'faint', strokeWidth: style.hair * 0.8 };
  return [rect(box.left, top, box.right - box.left, floor - top, pen, 3 * INCH * box.scale)];
}

/** Mattress with its cover turned down, and a pillow at the head. */
function mattress(box: SkirtBox, pillow: boolean, style: SheetStyle): readonly Shape[] {
  const { scale } = box;
  const soft: Style = { fill: 'frame', stroke: 'faint', strokeWidth: style.hair * 0.9 };
  const thick = MATTRESS * scale;
  const top = box.top - thick;
  const long = 19 * INCH * scale;
  const high = 5 * INCH * scale;
  const at = box.left + 1.5 * INCH * scale;
  const lines: readonly (readonly [number, number, number, number])[] = [
    [box.left + thick * 0.3, top + thick * 0.36, box.right - thick * 0.3, top + thick * 0.36],
    ...(pillow
      ? [[at + long + 3 * INCH * scale, top + thick * 0.03, at + long + INCH * scale, top + thick * 0.36] as const]
      : []),
  ];
  return [
    ...(pillow
      ? [
          path(
            [
              move(at, top),
              curveTo(
                at - high * 0.5,
                top - high * 0.9,
                at + long * 0.1,
                top - high * 1.12,
                at + long * 0.5,
                top - high,
              ),
              curveTo(at + long * 0.9, top - high * 1.1, at + long + high * 0.4, top - high * 0.7, at + long, top),
              CLOSE,
            ],
            soft,
          ),
        ]
      : []),
    rect(box.left, top, box.right - box.left, thick, soft, Math.min(thick / 2.6, 3.5 * INCH * scale)),
    strokes(lines, { stroke: 'rule', strokeWidth: style.hair }),
  ];
}

function drawSkirt(bed: ReckonedBed, view: BedView, box: SkirtBox, turned: 'right' | 'both'): readonly Shape[] {
  const tones = clothTones(bed.source.colour);
  const { left, right, top, bottom, hair, scale } = box;
  const seam = line(left, top, right, top, { stroke: tones.edge, strokeWidth: hair * 1.7 });
  if (bed.source.style === 'gathered') {
    return [
      ...drawFolds({
        left,
        right,
        top,
        bottom,
        folds: view.folds,
        heading: Math.min((bottom - top) * 0.16, 1.6 * INCH * scale),
        flare: 0,
        hem: INCH * scale,
        tones,
        hair,
      }),
      tucks(box, view.folds, tones.edge),
      seam,
    ];
  }
  const flat = rect(left, top, right - left, bottom - top, {
    fill: {
      from: { x: left, y: 0, paint: mixColours(tones.base, tones.light, 0.5) },
      to: { x: right, y: 0, paint: mixColours(tones.base, tones.shade, 0.18) },
    },
    stroke: tones.edge,
    strokeWidth: hair,
  });
  const pleat = (x: number, open: number): readonly Shape[] => [
    path(
      outline([
        { x, y: top },
        { x: Math.min(right, x + open), y: bottom },
        { x: Math.max(left, x - open), y: bottom },
      ]),
      { fill: { from: { x: x - open, y: 0, paint: tones.edge }, to: { x: x + open, y: 0, paint: tones.shade } } },
    ),
    strokes(
      [
        [x, top, Math.max(left, x - open), bottom],
        [x, top, Math.min(right, x + open), bottom],
      ],
      { stroke: tones.edge, strokeWidth: hair },
    ),
  ];
  if (bed.source.style === 'box-pleated') {
    const each = (right - left) / view.folds;
    const open = Math.min(each * 0.16, 1.2 * INCH * scale);
    return [
      flat,
      ...Array.from({ length: view.folds - 1 }, (_, fold) => pleat(left + (fold + 1) * each, open)).flat(),
      seam,
    ];
  }
  const middles = Math.min(4, Math.max(0, bed.source.middlePleats ?? 0));
  const open = 1.1 * INCH * scale;
  const inner = Array.from({ length: middles }, (_, i) =>
    pleat(left + ((right - left) * (i + 1)) / (middles + 1), open),
  ).flat();
  const hem = bottom - INCH * scale;
  return [
    flat,
    line(left, hem, right, hem, { stroke: tones.edge, strokeWidth: hair * 0.7, opacity: 0.5 }),
    ...inner,
    ...(turned === 'both' ? pleat(left, 1.6 * INCH * scale) : []),
    ...pleat(right, 1.6 * INCH * scale),
    seam,
  ];
}

/** Tucks are not all alike: shares of the longest. */
const TUCKS = [1, 0.55, 0.75] as const;

function tucks(box: SkirtBox, folds: number, edge: Hex): Shape {
  const count = Math.max(2, Math.min(240, folds * 3));
  const width = box.right - box.left;
  const deep = (box.bottom - box.top) * 0.22;
  return strokes(
    Array.from({ length: count }, (_, tuck) => {
      const x = box.left + (width * (tuck + 0.5)) / count;
      return [x, box.top, x, box.top + deep * (TUCKS[tuck % 3] ?? 1)] as const;
    }),
    { stroke: edge, strokeWidth: box.hair * 0.7, opacity: 0.5 },
  );
}
