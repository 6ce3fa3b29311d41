/**
 * Grommets of one piece: an even number, so that both edges turn to the wall, spread evenly, and no ring on a seam (common
 * practice). Where one falls on a seam two more are taken while they stand no closer than the practice lets them; else a
 * strip is trimmed off at the wall side, the least that moves the seams clear.
 */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import { finishedWidth } from './finished-width.ts';
import { downToWhole } from '../round-down.ts';
import { toNearestTick, upToEven, upToWhole } from '../round.ts';

export interface Grommets {
  readonly count: number;
  /** Between two, in ticks of flat cloth, unrounded. */
  readonly space: number;
  /** Of these, taken to clear the seams. */
  readonly more: number;
  /** Taken off the flat cloth at the wall side, in ticks. */
  readonly trimmed: number;
  /** From a grommet's middle to the nearest seam, in ticks, unrounded; null without seams. */
  readonly nearest: number | null;
  /** False where a ring lies on a seam whatever was tried. */
  readonly clear: boolean;
}

/** The table marks to an eighth of an inch. */
const TRIM_STEP = TICKS_PER_INCH / 8;

/** `flat`: of one piece after side hems. `seams`: from its wall side, hem off. */
export function placeGrommets(panels: PanelsTreatment, flat: number, seams: readonly number[]): Grommets {
  const { grommetTrim } = panels.practice.spacing;
  const spread = (trimmed: number, more: number): Grommets => spreadGrommets(panels, flat, seams, trimmed, more);
  const first = spread(0, 0);
  if (first.clear) return first;
  const closer = spread(0, 2);
  if (closer.clear && isApart(panels, closer)) return closer;
  const most = downToWhole(Math.max(0, Math.min(grommetTrim, flat - leastFlat(panels))), TRIM_STEP);
  for (let steps = 1; steps <= most; steps += 1)
    for (const more of [0, 2]) {
      const tried = spread(steps * TRIM_STEP, more);
      if (tried.clear && (more === 0 || isApart(panels, tried))) return tried;
    }
  return first;
}

function spreadGrommets(
  { practice }: PanelsTreatment,
  flat: number,
  seams: readonly number[],
  trimmed: number,
  more: number,
): Grommets {
  const { grommet, grommetEdge, grommetRing } = practice.spacing;
  const between = Math.max(0, flat - trimmed - 2 * grommetEdge);
  const spaces = grommet === 0 ? 1 : Math.max(1, upToWhole(toNearestTick(2 * between), 2 * grommet));
  const count = Math.max(2, upToEven(spaces + 1)) + more;
  const space = between / (count - 1);
  const nearest = seams.reduce<number | null>((least, seam) => {
    const off = offGrommet(seam - trimmed - grommetEdge, space, between);
    return least === null ? off : Math.min(least, off);
  }, null);
  return { count, space, more, trimmed, nearest, clear: nearest === null || 2 * nearest > grommetRing };
}

/** From a place along the row of grommets to the nearest one. */
function offGrommet(along: number, space: number, between: number): number {
  if (along <= 0 || space === 0) return Math.abs(along);
  if (along >= between) return along - between;
  const past = along % space;
  return Math.min(past, space - past);
}

function isApart({ practice }: PanelsTreatment, { space }: Grommets): boolean {
  return space >= practice.spacing.grommetLeast;
}

/** The flat cloth that a piece keeps at the least; widths that were given need only reach over the rod. */
function leastFlat(panels: PanelsTreatment): number {
  const least = panels.halfWidths === null ? panels.practice.leastFullness.grommet / 1000 : 1;
  return (least * finishedWidth(panels)) / panels.pieces;
}

/** Seams of one piece from its wall side after hems, of `halves` widths in all: a half width is the first there. */
export function seamsFromWall({ pieces, practice }: PanelsTreatment, made2: number, halves: number): number[] {
  const { seam, sideHem } = practice;
  const each = halves / pieces;
  const joins = Math.max(0, (each + (each % 2)) / 2 - 1);
  const cloth = made2 / 2 / pieces + 2 * sideHem + joins * 2 * seam;
  const usable = (2 * cloth) / Math.max(1, each);
  const first = each % 2 === 1 ? 0.5 : 1;
  return Array.from({ length: joins }, (_, join) => (first + join) * usable - (2 * join + 1) * seam - sideHem);
}
