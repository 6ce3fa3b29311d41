/** Rod, brackets and finials as seen from the room. Points. */
import type { MountPlace } from '#shared/words.ts';
import { circle, rect } from './make-shapes.ts';
import { FINIAL, INCH } from './measure-given.ts';
import type { Paint, Shape } from './shape.ts';
import { onesToCover } from './round-shapes.ts';

export interface RodLine {
  /** Middle of the rod. */
  readonly y: number;
  readonly thickness: number;
  readonly paint: Paint;
  readonly shine: Paint;
}

export interface RodPlace {
  readonly middle: number;
  /** Half the rod face. */
  readonly half: number;
  /** Points a tick. */
  readonly scale: number;
  readonly where: MountPlace;
}

/** A picture's brackets: one at each end and one more for every so much. The hardware list has the real count. */
const BRACKET_SPAN = 60 * INCH;

export function drawRod(rod: RodLine, place: RodPlace): readonly Shape[] {
  const { middle, half, scale, where } = place;
  const { y, thickness, paint } = rod;
  const fill = { fill: paint };
  const bar = rect(middle - half, y - thickness / 2, half * 2, thickness, fill, where === 'wall' ? 0 : thickness / 3);
  const shine = rect(middle - half, y - thickness * 0.32, half * 2, thickness * 0.2, {
    fill: rod.shine,
    opacity: 0.28,
  });
  if (where !== 'wall') return [bar, shine];
  const spans = Math.max(1, Math.min(12, onesToCover((half * 2) / scale / BRACKET_SPAN)));
  const inset = Math.min(1.4 * INCH * scale, half * 0.2);
  const plate = {
    width: Math.max(thickness * 0.7, 1.1 * INCH * scale),
    height: Math.max(thickness * 2, 3.4 * INCH * scale),
  };
  const brackets = Array.from({ length: spans + 1 }, (_, span) => {
    const x = middle - half + inset + ((half - inset) * 2 * span) / spans;
    return rect(x - plate.width / 2, y - plate.height / 2, plate.width, plate.height, fill, plate.width / 3);
  });
  return [...brackets, bar, shine, ...finial(rod, place, -1), ...finial(rod, place, 1)];
}

/** Collar, neck and ball beyond the end of the rod face. */
function finial(rod: RodLine, place: RodPlace, side: -1 | 1): readonly Shape[] {
  const { y, thickness, paint } = rod;
  const end = place.middle + side * place.half;
  const reach = Math.max(FINIAL * place.scale, thickness * 2.2);
  const r = Math.max(thickness * 0.85, reach / 3.2);
  const collar = Math.max(0.8, (reach - 2 * r) * 0.5);
  const at = end + side * (reach - r);
  return [
    rect(Math.min(end, at), y - thickness * 0.3, Math.abs(at - end), thickness * 0.6, { fill: paint }),
    rect(end - (side < 0 ? collar : 0), y - thickness * 0.75, collar, thickness * 1.5, { fill: paint }, collar / 3),
    circle(at, y, r, { fill: paint }),
    circle(at - r * 0.3, y - r * 0.35, r * 0.26, { fill: rod.shine, opacity: 0.4 }),
  ];
}
