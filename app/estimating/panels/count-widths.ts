/** How many widths of the face, and the fullness that they make: the arithmetic of panels, settled. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { finishedWidth, headingLength } from './finished-width.ts';
import { halvesUpToTick, toNearestWhole, upToWhole } from '../round.ts';
import { wavePiece } from './wave.ts';

/** Widths of one treatment, all pieces, with what they make. */
export interface CountedWidths {
  /** Widths in halves: 7 is 3½. */
  readonly halves: number;
  readonly joins: number;
  readonly edges: number;
  /** Twice the finished flat width in ticks: N × usable less joins and hems. Doubled, so that half widths stay whole. */
  readonly made2: number;
  readonly fullnessMade: number;
}

/**
 * Flat width asked, in thousandths of a tick: fullness is in thousandths, so this is exact. The gliders of a wave
 * heading decide for themselves.
 */
export function flatAskedMilli(panels: PanelsTreatment): number {
  if (panels.heading === 'wave') return panels.pieces * wavePiece(panels).flatMilli;
  const returns = panels.returns.left + panels.returns.right;
  if (panels.practice.fullnessOver === 'face')
    return panels.fullness * (headingLength(panels) + panels.overlap) + 1000 * returns;
  return panels.fullness * finishedWidth(panels);
}

/** The flat width asked, up to a tick: for showing, and for cloth that runs sideways. */
export function flatAsked(panels: PanelsTreatment): Ticks {
  return ticks(upToWhole(flatAskedMilli(panels), 1000));
}

/** Seams of one treatment in so many halves of a width, shared out among its pieces. */
export function joinsOf({ pieces }: Pick<PanelsTreatment, 'pieces'>, halves: number): number {
  return pieces * Math.max(0, upToWhole(halves, 2 * pieces) - 1);
}

/** What a number of widths makes: joins, hems taken off, fullness. */
export function measureWidths(panels: PanelsTreatment, usable: Ticks, halves: number): CountedWidths {
  const pieces = panels.pieces;
  const edges = 2 * pieces;
  const joins = joinsOf(panels, halves);
  const { seam, sideHem } = panels.practice;
  const made2 = halves * usable - 2 * (joins * 2 * seam + edges * sideHem);
  return { halves, joins, edges, made2, fullnessMade: fullnessOf(panels, made2) };
}

/** Fullness of a flat width (doubled, in ticks) over what it covers; with `face`, returns are taken off both. */
export function fullnessOf(panels: PanelsTreatment, made2: number): number {
  const returns = panels.returns.left + panels.returns.right;
  if (panels.practice.fullnessOver === 'face') return (made2 / 2 - returns) / (headingLength(panels) + panels.overlap);
  return made2 / 2 / finishedWidth(panels);
}

/**
 * The step between two counts, in halves: whole widths of all pieces together, or half a width of each piece. More than
 * two pieces have half widths each even then: nobody cuts a width in three (common practice: whole or half widths only).
 */
export function widthStep(panels: Pick<PanelsTreatment, 'pieces' | 'practice'>): number {
  return panels.practice.widthRounding === 'up' ? Math.max(2, panels.pieces) : panels.pieces;
}

/** Widths asked for by fullness, or given for still panels. `checkPanels` has refused what would never end. */
export function countWidths(panels: PanelsTreatment, usable: Ticks): CountedWidths {
  const pieces = panels.pieces;
  if (panels.halfWidths !== null) return measureWidths(panels, usable, panels.halfWidths * pieces);
  const flat = flatAskedMilli(panels);
  if (!panels.practice.hemsInWidth) return measureWidths(panels, usable, roundedHalves(panels, flat, usable));
  const grid = widthStep(panels);
  let halves = Math.max(grid, upToWhole(2 * flat, 1000 * usable * grid) * grid - grid);
  let counted = measureWidths(panels, usable, halves);
  while (counted.made2 * 1000 < 2 * flat) {
    halves += grid;
    counted = measureWidths(panels, usable, halves);
  }
  return counted;
}

/** Flat over usable width, rounded by the practice's rule, in halves. Never less than the smallest step. */
function roundedHalves(panels: PanelsTreatment, flatMilli: number, usable: Ticks): number {
  const pieces = panels.pieces;
  switch (panels.practice.widthRounding) {
    case 'up': {
      const grid = widthStep(panels);
      return grid * Math.max(1, upToWhole(2 * flatMilli, 1000 * usable * grid));
    }
    case 'half-up':
      return pieces * Math.max(1, upToWhole(2 * flatMilli, 1000 * usable * pieces));
    case 'nearest-half':
      return pieces * Math.max(1, toNearestWhole(2 * flatMilli, 1000 * usable * pieces));
  }
}

/** The made flat width in whole ticks, for showing. */
export function madeWidth(counted: CountedWidths): Ticks {
  return halvesUpToTick(counted.made2);
}
