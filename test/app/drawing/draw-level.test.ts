/** The level line of a room's pattern, against geometry: it stands where the scale of the sheet puts its height. */
import { describe, expect, test } from 'vitest';
import { describeDrawn } from '#app/drawing/describe-drawn.ts';
import { drawRooms } from '#app/drawing/draw-room.ts';
import type { RoomsInput } from '#app/drawing/drawn-room.ts';
import type { Line } from '#app/drawing/shape.ts';
import { placedCases } from '../estimating/placement-case.ts';
import { inches, opening, panels, room, sheet } from './awkward-rooms.ts';
import { clashes, flatten, strays, wordsOf } from './read-drawing.ts';

const level = { motifLevel: inches(42) };
const followers = room('Library', [
  opening('a', 'East window', { treatments: [panels({ ...level })] }),
  opening('b', 'Window seat', { sill: inches(20), treatments: [panels({ ...level, rodWidth: inches(64) })] }),
  opening('c', 'Door', { treatments: [panels()] }),
]);

function linesOf(input: RoomsInput): readonly Line[] {
  return flatten(drawRooms(input).shapes).filter((shape): shape is Line => shape.kind === 'line');
}
/** The broken line over the openings; the ceiling's is dotted. */
function levelLines(input: RoomsInput): readonly Line[] {
  return linesOf(input).filter(({ style }) => style.stroke === 'pencil' && (style.dash?.[0] ?? 0) > 4);
}

describe('the level line', () => {
  test('stands as high over the floor as the ceiling line tells the scale', () => {
    const input = sheet([followers], { width: 900 });
    const [found] = levelLines(input);
    const floor = linesOf(input).find(
      ({ style, x1 }) => style.stroke === 'ink' && style.dash === undefined && x1 === 0,
    );
    const ceiling = linesOf(input).find(({ style }) => style.stroke === 'pencil' && style.cap === 'round');
    expect(found && floor && ceiling).toBeDefined();
    if (!found || !floor || !ceiling) return;
    expect((floor.y1 - found.y1) / (floor.y1 - ceiling.y1)).toBeCloseTo(42 / 108, 6);
    expect(found.y1).toBe(found.y2);
  });

  test('runs over what follows it, with a ring at each, and not over what does not', () => {
    const drawing = drawRooms(sheet([followers], { width: 900 }));
    const rings = flatten(drawing.shapes).filter((shape) => shape.kind === 'circle' && shape.style.fill === 'paper');
    expect(rings).toHaveLength(2);
    const [found] = levelLines(sheet([followers], { width: 900 }));
    const door = flatten(drawing.shapes).find((shape) => shape.kind === 'text' && shape.text === 'Door');
    expect(door?.kind === 'text' && found && found.x2 < door.x).toBe(true);
  });

  test('is told beside the ceiling, in words for those who cannot see it, and stands on no other word', () => {
    const drawing = drawRooms(sheet([followers], { width: 900 }));
    expect(wordsOf(drawing)).toContain('motif level 42 in');
    expect(drawing.title).toMatch(/motifs at one level, 42 in above the floor/);
    expect([...clashes(drawing), ...strays(drawing)]).toEqual([]);
  });

  test('is the decorator’s own: on paper it is neither drawn nor told', () => {
    const input = sheet([followers], { width: 504, height: 164, detail: 'paper' });
    expect(levelLines(input)).toEqual([]);
    expect(drawRooms(input).title).not.toMatch(/level/);
    expect(wordsOf(drawRooms(input)).join(' ')).not.toMatch(/level/);
  });

  test('is not drawn where nothing follows one, or where it would lie off the sheet', () => {
    expect(levelLines(sheet([room('Hall', [opening('a', 'Window')])]))).toEqual([]);
    const high = [opening('a', 'Window', { treatments: [panels({ motifLevel: inches(900) })] })];
    expect(levelLines(sheet([room('Hall', high)]))).toEqual([]);
  });

  test('every kind that is placed by the level says so to the drawing', () => {
    const pattern = { place: 'level', level: 60 };
    const kinds = ['panels', 'valance', 'cornice', 'roman-shade'];
    for (const { treatment } of placedCases({ treatments: kinds.map((kind) => ({ kind, pattern })) }))
      expect(describeDrawn(treatment, null, () => null).motifLevel).toBe(inches(60));
    const [hem] = placedCases({ treatments: [{ kind: 'valance', pattern: { place: 'hem' } }] });
    expect(hem && describeDrawn(hem.treatment, null, () => null).motifLevel).toBeUndefined();
  });
});
