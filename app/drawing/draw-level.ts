/**
 * The level that a room keeps its pattern at (common practice: one level a room): a fine broken line over what follows it,
 * with a small ring at the middle of each. The decorator's own; what a client is handed does not carry it.
 */
import type { Given } from './drawn-room.ts';
import { circle, line } from './make-shapes.ts';
import type { PlacedOpening, PlacedRoom } from './place-rooms.ts';
import type { Sheet } from './lay-out-sheet.ts';
import type { Group, Shape } from './shape.ts';

/** The first level that a treatment of the room is placed by; null where none is. */
export function levelOfRoom(room: {
  readonly openings: readonly { readonly treatments: readonly { readonly motifLevel?: Given }[] }[];
}): Given {
  const levels = room.openings.flatMap(({ treatments }) => treatments.map(({ motifLevel }) => motifLevel ?? null));
  return levels.find((level) => level !== null) ?? null;
}

/** How far the line reaches past what follows it, in points. */
const PAST = 3;

export function drawLevel(room: PlacedRoom, sheet: Sheet): readonly Shape[] {
  const level = levelOfRoom(room.reckoned.source);
  if (level === null || sheet.detail === 'paper') return [];
  const follow = room.openings.filter((opening) => follows(opening, level));
  const { style, floor, scale } = sheet;
  const y = floor - level * scale;
  // A level that was mistyped is told beside its field; over the sheet or under the floor nothing is drawn.
  if (y < 0 || y > floor) return [];
  const left = Math.max(room.left, Math.min(...follow.map((opening) => opening.left)) - PAST);
  const right = Math.min(room.right, Math.max(...follow.map((opening) => opening.right)) + PAST);
  const dash = [style.hair * 7, style.hair * 3.5];
  const pale = sheet.selected !== null && room.chosen === null;
  const group: Group = {
    kind: 'group',
    ...(pale ? { opacity: 0.5 } : {}),
    shapes: [
      // A light edge keeps the line apart from a dark cloth.
      line(left, y, right, y, { stroke: 'paper', strokeWidth: style.hair * 2.6, opacity: 0.55 }),
      line(left, y, right, y, { stroke: 'pencil', strokeWidth: style.hair, dash }),
      ...follow.map((opening) =>
        circle((opening.left + opening.right) / 2, y, style.figure * 0.22, {
          fill: 'paper',
          stroke: 'pencil',
          strokeWidth: style.hair,
        }),
      ),
    ],
  };
  return [group];
}

function follows({ reckoned }: PlacedOpening, level: number): boolean {
  return reckoned.source.treatments.some(({ motifLevel }) => motifLevel === level);
}
