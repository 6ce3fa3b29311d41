/** The words of the sheet: rooms with their ceilings along the top, openings under the floor, the thread under the chosen one. */
import { levelOfRoom } from './draw-level.ts';
import type { LabelField } from './label-field.ts';
import { fitText, textBox } from './label-field.ts';
import { line, text } from './make-shapes.ts';
import type { PlacedOpening, PlacedRoom } from './place-rooms.ts';
import type { Sheet } from './lay-out-sheet.ts';
import type { Group, Shape, Text } from './shape.ts';
import { textWidth } from './text-widths.ts';
import { sayLength } from './dimension-opening.ts';

const NAME_AIR = 8;

/** Name and thread of each opening, by its key. Names that crowd one another stand in two rows. */
export function drawNames(sheet: Sheet, field: LabelField): ReadonlyMap<string, readonly Shape[]> {
  const all = sheet.rooms.flatMap((room) => room.openings).sort((a, b) => middleOf(a, sheet) - middleOf(b, sheet));
  const look = (opening: PlacedOpening) =>
    ({
      font: 'sans',
      weight: opening.reckoned.source.key === sheet.selected ? 'semibold' : 'regular',
      size: sheet.style.name,
    }) as const;
  const isTight = all.some((opening, place) => {
    const { font, weight, size } = look(opening);
    return textWidth(opening.reckoned.source.name, font, weight, size) > slotOf(all, place, 1, sheet);
  });
  const rows = isTight ? 2 : 1;
  // The chosen one first: where two names cannot both stand, it keeps its place.
  const order = all
    .map((opening, place) => ({ opening, place }))
    .sort((a, b) => Number(isChosen(b.opening, sheet)) - Number(isChosen(a.opening, sheet)));
  return new Map(
    order.map(({ opening, place }): [string, readonly Shape[]] => {
      const words = fitText(opening.reckoned.source.name, look(opening), slotOf(all, place, rows, sheet));
      const y = sheet.floor + sheet.style.strong + sheet.style.name * (1.45 + (place % rows) * 1.3);
      const paint = isChosen(opening, sheet) ? 'ink' : 'pencil';
      const label = text(middleOf(opening, sheet), y, words, { ...look(opening), paint, anchor: 'middle' });
      const shapes: Shape[] = words !== '' && field.take(textBox(label)) ? [label] : [];
      return [
        opening.reckoned.source.key,
        isChosen(opening, sheet) ? [...threadUnder(opening, sheet), ...shapes] : shapes,
      ];
    }),
  );
}

function isChosen(opening: PlacedOpening, sheet: Sheet): boolean {
  return opening.reckoned.source.key === sheet.selected;
}

function middleOf(opening: PlacedOpening, sheet: Sheet): number {
  return opening.x + (opening.reckoned.width.ticks / 2) * sheet.scale;
}

/** Room for a centred name between the neighbours that share its row, and the ends of the sheet. */
function slotOf(all: readonly PlacedOpening[], place: number, rows: number, sheet: Sheet): number {
  const own = all[place];
  if (own === undefined) return 0;
  const middle = middleOf(own, sheet);
  const before = all[place - rows];
  const after = all[place + rows];
  const left = before === undefined ? middle * 2 - NAME_AIR : middle - middleOf(before, sheet) - NAME_AIR;
  const right =
    after === undefined ? (sheet.width - middle) * 2 - NAME_AIR : middleOf(after, sheet) - middle - NAME_AIR;
  return Math.max(0, Math.min(left, right));
}

/** The one line of colour. */
function threadUnder(opening: PlacedOpening, sheet: Sheet): Shape[] {
  const { style, floor } = sheet;
  const y = floor + style.thread * 0.32;
  return [line(opening.left, y, opening.right, y, { stroke: 'thread', strokeWidth: style.thread, cap: 'round' })];
}

/** Each room's name, and its ceiling where there is room for it. A room without openings says so, and is a target itself. */
export function drawRoomHeads(sheet: Sheet, field: LabelField): readonly Shape[] {
  if (sheet.rooms.length === 0) return [emptyNote('No rooms yet', 0, sheet.width, sheet)];
  return sheet.rooms.flatMap((room): Shape[] => {
    const { source } = room.reckoned;
    const current = sheet.selected === null || room.chosen !== null;
    const x = room.left + (sheet.rooms.length > 1 ? 10 : 2);
    const space = room.right - x - 6;
    const look = { font: 'serif', weight: 'semibold', size: sheet.style.room } as const;
    const words = fitText(source.name, look, space);
    const name = text(x, sheet.heads, words, { ...look, paint: current ? 'ink' : 'pencil' });
    const heads: Text[] = words !== '' && field.take(textBox(name)) ? [name] : [];
    let after = x + textWidth(words, look.font, look.weight, look.size) + 9;
    for (const said of heads.length > 0 ? notesOf(room, sheet) : []) {
      const note = text(after, sheet.heads, said, { size: sheet.style.figure, paint: 'pencil' });
      const breadth = textWidth(said, 'sans', 'regular', sheet.style.figure);
      if (breadth > room.right - after - 6 || !field.take(textBox(note))) continue;
      heads.push(note);
      after += breadth + 9;
    }
    if (room.openings.length > 0) return heads;
    const target: Group = {
      kind: 'group',
      key: source.key,
      label: `${source.name}: no openings yet`,
      bounds: { x: room.left + 2, y: 0, width: room.right - room.left - 4, height: sheet.height },
      shapes: [...heads, emptyNote('no openings yet', room.left, room.right, sheet)],
    };
    return [target];
  });
}

/** What the lines across the wall are: its ceiling, and the level of its pattern. */
function notesOf({ reckoned }: PlacedRoom, { wording, detail }: Sheet): readonly string[] {
  const level = detail === 'screen' ? levelOfRoom(reckoned.source) : null;
  const said = (words: string, length: number): string => `${words} ${sayLength(length, wording)} ${wording.units}`;
  return [
    ...(reckoned.ceiling.given === null ? [] : [said('ceiling', reckoned.ceiling.given)]),
    ...(level === null ? [] : [said('motif level', level)]),
  ];
}

function emptyNote(words: string, left: number, right: number, sheet: Sheet): Text {
  const look = { font: 'sans', weight: 'regular', size: sheet.style.figure } as const;
  return text((left + right) / 2, sheet.floor - 42, fitText(words, look, right - left - 6), {
    ...look,
    paint: 'pencil',
    anchor: 'middle',
  });
}
