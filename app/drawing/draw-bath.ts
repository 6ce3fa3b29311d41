/** A shower curtain on its rod before a tub that is only hinted at. Drawn across, it hangs in the folds that its width makes. */
import type { StandingPlace } from './draw-bed.ts';
import { clothTones, drawFolds } from './draw-folds.ts';
import type { HangingPiece } from './draw-folds.ts';
import { circle, curveTo, CLOSE, lineTo, move, path, rect, strokes } from './make-shapes.ts';
import { FINIAL, INCH } from './measure-given.ts';
import { TUB } from './reckon-furniture.ts';
import type { ReckonedBath } from './reckon-furniture.ts';
import type { Shape, Style } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

/** Of the rod that the drawn curtain covers, when it is pushed back a little so that the tub is seen. */
const DRAWN_ACROSS = 0.7;

export function drawBath(bath: ReckonedBath, place: StandingPlace, style: SheetStyle): readonly Shape[] {
  const { scale, floor } = place;
  const left = place.x + (bath.at + FINIAL) * scale;
  const right = left + bath.rod.ticks * scale;
  const top = floor - bath.top * scale;
  const thick = Math.max(style.hair * 2, 1.1 * INCH * scale);
  const rodAt = top - 2.2 * INCH * scale;
  const tones = clothTones(bath.source.colour);
  const pieces = bath.source.arrangement === 'pair' ? 2 : 1;
  const width = right - left;
  const cover = (width * DRAWN_ACROSS) / pieces;
  const bottom = floor - bath.hem * scale;
  const piece = (from: number): HangingPiece => ({
    left: from,
    right: from + cover,
    top,
    bottom,
    folds: bath.eyelets,
    heading: 1.6 * INCH * scale,
    flare: 0,
    hem: 3 * INCH * scale,
    tones,
    hair: style.hair * 0.85,
  });
  const hung = pieces === 2 ? [piece(left), piece(right - cover)] : [piece(left)];
  const rings = hung.flatMap((each) =>
    Array.from({ length: bath.eyelets }, (_, eyelet) => {
      const x = each.left + ((eyelet + 0.5) / bath.eyelets) * cover;
      return { x, y: each.top + 0.9 * INCH * scale };
    }),
  );
  const r = Math.max(0.7, 0.45 * INCH * scale);
  return [
    ...drawTub(left, right, floor, scale, style),
    ...(bath.source.liner ? [linerBehind(left, cover, top, bottom, scale, style)] : []),
    ...hung.flatMap((each) => drawFolds(each)),
    strokes(
      rings.map(({ x, y }) => [x, rodAt, x, y] as const),
      { stroke: 'rod', strokeWidth: style.hair },
    ),
    ...rings.map(({ x, y }) => circle(x, y, r, { fill: 'frame', stroke: 'rod', strokeWidth: style.hair * 0.8 })),
    rect(left, rodAt - thick / 2, width, thick, { fill: 'rod' }),
    ...[left, right].map((x) =>
      rect(x - thick * 0.7, rodAt - thick * 1.5, thick * 1.4, thick * 3, { fill: 'rod' }, thick * 0.5),
    ),
  ];
}

function drawTub(left: number, right: number, floor: number, scale: number, style: SheetStyle): readonly Shape[] {
  const pen: Style = { fill: 'frame', stroke: 'faint', strokeWidth: style.hair };
  const top = floor - TUB.height * scale;
  const rim = 1.8 * INCH * scale;
  return [
    path(
      [
        move(left + rim, top + rim),
        lineTo(right - rim, top + rim),
        curveTo(right - rim, floor - rim * 2, right - rim * 1.4, floor, right - rim * 3, floor),
        lineTo(left + rim * 3, floor),
        curveTo(left + rim * 1.4, floor, left + rim, floor - rim * 2, left + rim, top + rim),
        CLOSE,
      ],
      pen,
    ),
    rect(left, top, right - left, rim, pen, rim / 2),
  ];
}

/** A liner hangs behind, and its edge looks out beside the curtain. */
function linerBehind(
  left: number,
  cover: number,
  top: number,
  bottom: number,
  scale: number,
  style: SheetStyle,
): Shape {
  return rect(left, top, cover + 2.5 * INCH * scale, bottom - top - INCH * scale, {
    fill: 'frame',
    stroke: 'faint',
    strokeWidth: style.hair * 0.8,
  });
}
