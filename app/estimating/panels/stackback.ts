/**
 * How much wall the open panels take. The only rule in print that answers to fullness and lining counts per width of
 * cloth (a workroom's table: unlined 10-15 cm, lined or blackout 15-20 cm, interlined 20-30 cm a width; a second
 * source says 5-6 in a width). Sources for the same window differ threefold, so the range is kept.
 */
import type { BackCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { toNearestWhole } from '../round.ts';

export interface Stackback {
  /** Of one piece, in ticks. */
  readonly least: Ticks;
  readonly usual: Ticks;
  readonly most: Ticks;
}

/** The stack of one piece with `halves` half widths (all pieces together) and these layers behind the face. */
export function measureStackback(panels: PanelsTreatment, halves: number, behind: readonly BackCloth[]): Stackback {
  const range = panels.practice.stackback[backing(behind)];
  const pieces = panels.pieces;
  const of = (twicePerWidth: number): Ticks => ticks(toNearestWhole(twicePerWidth * halves, 4 * pieces));
  return { least: of(2 * range.least), usual: of(range.least + range.most), most: of(2 * range.most) };
}

export function backing(behind: readonly BackCloth[]): keyof PanelsTreatment['practice']['stackback'] {
  if (behind.some((layer) => layer.role === 'interlining')) return 'interlined';
  return behind.length > 0 ? 'lined' : 'unlined';
}
