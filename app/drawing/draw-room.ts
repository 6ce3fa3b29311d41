/**
 * The elevation: walls to scale on one floor line, every opening with its treatment as it hangs, measured as on a
 * drafting sheet. Scale is the same along and up, and never larger than the sheet allows.
 */
import { drawNames, drawRoomHeads } from './draw-names.ts';
import { drawBath } from './draw-bath.ts';
import { drawBed } from './draw-bed.ts';
import { drawHung } from './draw-hung.ts';
import { drawLevel } from './draw-level.ts';
import { drawMeasures } from './draw-measures.ts';
import { drawWall, drawFloor, drawDividers } from './draw-wall.ts';
import { drawWindow } from './draw-window.ts';
import { layOutSheet } from './lay-out-sheet.ts';
import type { Sheet } from './lay-out-sheet.ts';
import type { RoomInput, RoomsInput } from './drawn-room.ts';
import { makeLabelField } from './label-field.ts';
import { nameOpening, nameRooms } from './name-drawing.ts';
import type { PlacedOpening, PlacedRoom } from './place-rooms.ts';
import type { Drawing, Group, Shape } from './shape.ts';

export type * from './drawn-room.ts';

/** One room's wall with its openings. Points; as wide as asked, at most as high. */
export function drawRoom(input: RoomInput): Drawing {
  const { room, ...sheet } = input;
  return drawRooms({ ...sheet, rooms: [room] });
}

/** Several rooms side by side on one floor line and one scale; rooms without the chosen opening are paler on screen. */
export function drawRooms(input: RoomsInput): Drawing {
  const sheet = layOutSheet(input);
  const field = makeLabelField(sheet.width, sheet.height);
  const names = drawNames(sheet, field);
  const heads = drawRoomHeads(sheet, field);
  const measures = drawMeasures(sheet, field);
  return {
    width: sheet.width,
    height: sheet.height,
    title: nameRooms(input.rooms, sheet.wording, sheet.detail),
    shapes: [
      ...sheet.rooms.map((room) => drawWall(room, sheet)),
      ...measures.witnesses,
      ...drawFloor(sheet),
      ...drawDividers(sheet),
      ...sheet.rooms.flatMap((room) => drawOpenings(room, sheet, names)),
      ...sheet.rooms.flatMap((room) => drawLevel(room, sheet)),
      ...measures.dimensions,
      ...heads,
    ],
  };
}

function drawOpenings(room: PlacedRoom, sheet: Sheet, names: ReadonlyMap<string, readonly Shape[]>): readonly Shape[] {
  const pale = sheet.detail === 'screen' && sheet.selected !== null && room.chosen === null;
  return room.openings.map((opening): Group => {
    const { source } = opening.reckoned;
    const named = names.get(source.key) ?? [];
    const picture: Group = { kind: 'group', shapes: drawOpening(opening, sheet), ...(pale ? { opacity: 0.5 } : {}) };
    const top = sheet.floor - opening.reckoned.top * sheet.scale;
    return {
      kind: 'group',
      key: source.key,
      label: nameOpening(source, sheet.wording),
      bounds: {
        x: opening.left - 4,
        y: top - 4,
        width: opening.right - opening.left + 8,
        height: footOf(named, sheet) - top + 4,
      },
      shapes: [picture, ...named],
    };
  });
}

/** Just below the opening's name, or below the floor where it has none. */
function footOf(named: readonly Shape[], sheet: Sheet): number {
  const feet = named.map((shape) => (shape.kind === 'text' ? shape.y + shape.size * 0.4 : 0));
  return Math.max(sheet.floor + 12, ...feet);
}

function drawOpening(opening: PlacedOpening, sheet: Sheet): readonly Shape[] {
  const { reckoned, x } = opening;
  const place = { x, floor: sheet.floor, scale: sheet.scale };
  const middle = x + (reckoned.width.ticks / 2) * sheet.scale;
  const hungPlace = { middle, floor: sheet.floor, scale: sheet.scale };
  return [
    ...(reckoned.window ? drawWindow(reckoned, place, sheet.style) : []),
    ...reckoned.treatments.flatMap((treatment) => drawHung(treatment, hungPlace, sheet.style)),
    ...reckoned.furniture.flatMap((piece) =>
      piece.kind === 'bed-skirt' ? drawBed(piece, place, sheet.style) : drawBath(piece, place, sheet.style),
    ),
  ];
}
