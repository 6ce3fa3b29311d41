/**
 * Rows and columns of rings. Two conventions are in print and agree where the head room is 0: spacing =
 * length / (rows - 1/2) with the board line as the last row, and spacing = (length - head room) / (ring rows + 1/2).
 * The first row is half a space up in both (Simple Sewing Projects, ring spacing; common practice).
 */
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { toNearestWhole, upToWhole } from '../round.ts';
import type { ShadeSize } from './size-shade.ts';

export interface RingRows {
  /** As the row rule counts them. */
  readonly counted: number;
  /** Rows that rings are sewn in. */
  readonly sewn: number;
  readonly headRoom: Ticks;
  /** In ticks, unrounded; the places below are to the nearest tick. */
  readonly spacing: number;
  readonly firstRow: number;
  /** From the finished hem up. */
  readonly heights: readonly Ticks[];
  /** Where the folds come forward, from the hem up: half-way between two rows. */
  readonly folds: readonly Ticks[];
}

/** Large shades take rows further apart. */
export function isLarge(shade: RomanShadeTreatment, size: ShadeSize): boolean {
  const { largeWidth, largeLength } = shade.practice.romanShade;
  return size.width >= largeWidth || size.length >= largeLength;
}

export function usualRowSpacing(shade: RomanShadeTreatment, size: ShadeSize): Ticks {
  const { rowSpacing, largeRowSpacing } = shade.practice.romanShade;
  return isLarge(shade, size) ? largeRowSpacing : rowSpacing;
}

/** Rows as the rule counts them: given, or the number whose spacing is nearest the usual one. */
export function countRows(shade: RomanShadeTreatment, size: ShadeSize): number {
  if (shade.rows !== null) return shade.rows;
  const { rowRule, headRoom } = shade.practice.romanShade;
  const usual = usualRowSpacing(shade, size);
  if (rowRule === 'board-line') return Math.max(2, toNearestWhole(2 * size.length + usual, 2 * usual));
  return Math.max(1, toNearestWhole(Math.max(0, 2 * (size.length - headRoom) - usual), 2 * usual));
}

export function placeRows(shade: RomanShadeTreatment, size: ShadeSize): RingRows {
  const practice = shade.practice.romanShade;
  const counted = countRows(shade, size);
  const byBoard = practice.rowRule === 'board-line';
  const headRoom = byBoard ? ticks(0) : practice.headRoom;
  const sewn = byBoard ? counted - 1 : counted;
  const run = size.length - headRoom;
  const halves = 2 * sewn + 1;
  const place = (half: number): Ticks => ticks(toNearestWhole(half * run, halves));
  return {
    counted,
    sewn,
    headRoom,
    spacing: (2 * run) / halves,
    firstRow: run / halves,
    heights: Array.from({ length: sewn }, (_, row) => place(2 * row + 1)),
    folds: Array.from({ length: sewn }, (_, row) => place(2 * row + 2)),
  };
}

/** Outer columns from the edge: a relaxed shade has its two further in, so that it dips between them. */
export function insetOf(shade: RomanShadeTreatment): Ticks {
  const { edgeInset, relaxedInset } = shade.practice.romanShade;
  return shade.style === 'relaxed' ? relaxedInset : edgeInset;
}

/** Ends of the stretches that columns share out: the outer columns, and the seams between them. */
function columnBounds(shade: RomanShadeTreatment, size: ShadeSize, seams: readonly Ticks[]): Ticks[] {
  const inset = insetOf(shade);
  const last = ticks(size.width - inset);
  if (shade.style === 'relaxed' || shade.columns !== null) return [inset, last];
  return [inset, ...seams.filter((seam) => seam > inset && seam < last), last];
}

/** How many columns there will be, before any place is worked out. */
export function countColumns(shade: RomanShadeTreatment, size: ShadeSize, seams: readonly Ticks[]): number {
  if (shade.style === 'relaxed') return 2;
  if (shade.columns !== null) return shade.columns;
  const bounds = columnBounds(shade, size, seams);
  const { columnSpacing } = shade.practice.romanShade;
  return bounds.slice(1).reduce((sum, to, index) => sum + upToWhole(to - (bounds[index] ?? to), columnSpacing), 1);
}

/**
 * Columns from the left finished edge: on both edges and on every seam, the rest evenly between and no further apart than
 * the greatest spacing. A number that was given is shared out evenly over the width.
 */
export function placeColumns(shade: RomanShadeTreatment, size: ShadeSize, seams: readonly Ticks[]): Ticks[] {
  const bounds = columnBounds(shade, size, seams);
  const { columnSpacing } = shade.practice.romanShade;
  const columns: Ticks[] = bounds.slice(0, 1);
  bounds.slice(1).forEach((to, index) => {
    const from = bounds[index] ?? to;
    const evenly = countColumns(shade, size, seams) - 1;
    const gaps =
      shade.style === 'relaxed' || shade.columns !== null ? evenly : Math.max(1, upToWhole(to - from, columnSpacing));
    for (let gap = 1; gap <= gaps; gap += 1) columns.push(ticks(from + toNearestWhole(gap * (to - from), gaps)));
  });
  return columns;
}
