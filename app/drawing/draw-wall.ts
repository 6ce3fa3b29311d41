/** The wall behind the openings: ceiling, baseboard, floor, and the corner between two rooms. */
import { line, strokes } from './make-shapes.ts';
import { INCH } from './measure-given.ts';
import type { PlacedRoom } from './place-rooms.ts';
import type { Sheet } from './lay-out-sheet.ts';
import type { Group, Shape } from './shape.ts';
import { wholeOnesIn } from './round-shapes.ts';

export function drawWall(room: PlacedRoom, sheet: Sheet): Group {
  const { style, floor, scale } = sheet;
  const base = floor - 5 * INCH * scale;
  const ceiling = floor - room.reckoned.ceiling.ticks * scale;
  const shapes: Shape[] = [
    line(room.left, base, room.right, base, { stroke: 'rule', strokeWidth: style.hair }),
    line(room.left, base + 2.2, room.right, base + 2.2, { stroke: 'rule', strokeWidth: style.hair * 0.6 }),
  ];
  if (room.reckoned.ceiling.given !== null) {
    const dash = [style.hair * 1.4, style.hair * 4];
    shapes.push(
      line(room.left, ceiling, room.right, ceiling, { stroke: 'pencil', strokeWidth: style.hair, dash, cap: 'round' }),
    );
  }
  return { kind: 'group', shapes };
}

/** The floor with a short hatch under it, as ground is drawn on a sheet. */
export function drawFloor(sheet: Sheet): readonly Shape[] {
  const { style, floor, width } = sheet;
  const step = style.figure * 0.62;
  const depth = style.figure * 0.34;
  const hatch = Array.from(
    { length: wholeOnesIn(width / step) },
    (_, place): readonly [number, number, number, number] => {
      const x = (place + 1) * step;
      return [x, floor + style.strong, x - depth, floor + style.strong + depth];
    },
  );
  return [
    strokes(hatch, { stroke: 'rule', strokeWidth: style.hair }),
    line(0, floor, width, floor, { stroke: 'ink', strokeWidth: style.strong }),
  ];
}

/** A fine upright between neighbouring rooms, from the higher ceiling to the floor. */
export function drawDividers(sheet: Sheet): readonly Shape[] {
  return sheet.rooms.slice(1).map((room, place) => {
    const top = Math.max(room.reckoned.top, sheet.rooms[place]?.reckoned.top ?? 0);
    return line(room.left, sheet.floor - top * sheet.scale, room.left, sheet.floor, {
      stroke: 'pencil',
      strokeWidth: sheet.style.strong * 0.85,
    });
  });
}
