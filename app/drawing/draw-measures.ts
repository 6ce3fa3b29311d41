/** All dimension lines of the chosen opening, the rod faces of its neighbours, and the fine lines that lead to them. */
import { planAcrossLanes, planUprightLanes, spaceUprightLanes } from './dimension-opening.ts';
import type { Stretch } from './dimension-opening.ts';
import { drawDimension, leastLength } from './draw-dimension.ts';
import type { Dimension } from './draw-dimension.ts';
import type { LabelField } from './label-field.ts';
import { strokes } from './make-shapes.ts';
import type { PlacedOpening } from './place-rooms.ts';
import type { Sheet } from './lay-out-sheet.ts';
import type { Shape } from './shape.ts';

export interface Measures {
  /** Behind the openings. */
  readonly witnesses: readonly Shape[];
  readonly dimensions: readonly Shape[];
}

type Segment = readonly [number, number, number, number];

/** A length that passes the floor is drawn past it, so that it looks wrong, but no further than this. */
const BELOW_FLOOR = 9;

export function drawMeasures(sheet: Sheet, field: LabelField): Measures {
  const witnesses: Segment[] = [];
  const dimensions: Shape[] = [];
  const add = (dimension: Dimension, leads: readonly Segment[]) => {
    const drawn = drawDimension(dimension, sheet.style, field);
    if (drawn.length === 0) return;
    dimensions.push(...drawn);
    witnesses.push(...leads);
  };
  const current = sheet.rooms.filter((room) => sheet.selected === null || room.chosen !== null);
  for (const room of current) {
    if (room.chosen !== null && room.lanes !== null) measureUpright(room.chosen, room.lanes, sheet, add);
    const order = [...room.openings].sort((a, b) => Number(b === room.chosen) - Number(a === room.chosen));
    for (const opening of order) measureAcross(opening, isChosen(opening, sheet), sheet, add);
  }
  const pen = { stroke: 'faint', strokeWidth: sheet.style.hair * 0.75 } as const;
  return { witnesses: witnesses.length === 0 ? [] : [strokes(witnesses, pen)], dimensions };
}

function isChosen(opening: PlacedOpening, sheet: Sheet): boolean {
  return opening.reckoned.source.key === sheet.selected;
}

function fitsInLine(length: number, sheet: Sheet): boolean {
  return Math.abs(length) >= leastLength('upright', '', sheet.style);
}

type Add = (dimension: Dimension, leads: readonly Segment[]) => void;

function measureUpright(
  chosen: PlacedOpening,
  lanes: { readonly from: number; readonly outer: 1 | -1 },
  sheet: Sheet,
  add: Add,
): void {
  const plan = planUprightLanes(chosen.reckoned, sheet.wording);
  const spacing = spaceUprightLanes(plan, sheet.style);
  const toY = (ticks: number) => Math.min(sheet.floor + BELOW_FLOOR, sheet.floor - ticks * sheet.scale);
  const { outer } = lanes;
  const inner = outer < 0 ? chosen.left : chosen.right;
  plan.forEach((lane, place) => {
    const at = lanes.from + outer * (spacing.at[place] ?? 0);
    for (const part of lane) {
      const [from, to] = [toY(part.from), toY(part.to)];
      // Figures beside a line need the air outside the last lane.
      if (place < plan.length - 1 && !fitsInLine(to - from, sheet)) continue;
      const leads = [from, to]
        .filter((y) => Math.abs(y - sheet.floor) > 0.5)
        .map((y): Segment => [inner + outer * 2, y, at + outer * 3, y]);
      add({ along: 'upright', from, to, at, words: part.words, sure: part.sure, outer }, leads);
    }
  });
}

function measureAcross(opening: PlacedOpening, chosen: boolean, sheet: Sheet, add: Add): void {
  const lanes = planAcrossLanes(opening.reckoned, sheet.wording);
  // Neighbours show their outermost width only: the rod, or the opening where nothing hangs.
  const shown = chosen || sheet.selected === null ? lanes : lanes.slice(-1);
  const outermost = lanes.length - 1;
  shown.forEach((lane, place) => {
    const row = chosen || sheet.selected === null ? place : outermost;
    const at = sheet.lanes[row];
    if (at === undefined) return;
    for (const part of lane) addAcross(part, at, opening, sheet, add);
  });
}

function addAcross(part: Stretch, at: number, opening: PlacedOpening, sheet: Sheet, add: Add): void {
  const [from, to] = [opening.x + part.from * sheet.scale, opening.x + part.to * sheet.scale];
  const foot = sheet.floor - opening.reckoned.top * sheet.scale + 1;
  const leads = [from, to].map((x): Segment => [x, foot, x, at - 3]);
  add({ along: 'across', from, to, at, words: part.words, sure: part.sure, outer: 1 }, leads);
}
