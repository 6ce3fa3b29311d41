/**
 * How much wall the open panels take. The only rule in print that answers to fullness and lining counts per width of
 * cloth (a workroom's table: unlined 10-15 cm, lined or blackout 15-20 cm, interlined 20-30 cm a width; a second
 * source says 5-6 in a width). Sources for the same window differ threefold, so the range is kept.
 */
import type { BackCloth } from '#shared/cloth.ts';
import { piecesOf } from '#shared/job.ts';
import type { PanelsTreatment } from '#shared/job.ts';
import { TICKS_PER_MM, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { toNearestWhole } from './round.ts';

export interface Stackback {
  /** Of one piece, in ticks. */
  readonly least: Ticks;
  readonly usual: Ticks;
  readonly most: Ticks;
}

/** Millimetres of stack for one width of cloth. */
const PER_WIDTH_MM = {
  unlined: { least: 100, most: 150 },
  lined: { least: 150, most: 200 },
  interlined: { least: 200, most: 300 },
} as const;

/** The stack of one piece with `halves` half widths (all pieces together) and these layers behind the face. */
export function measureStackback(panels: PanelsTreatment, halves: number, behind: readonly BackCloth[]): Stackback {
  const rule = PER_WIDTH_MM[backing(behind)];
  const pieces = piecesOf(panels.arrangement);
  const of = (millimetres: number): Ticks => ticks(toNearestWhole(millimetres * TICKS_PER_MM * halves, 2 * pieces));
  return { least: of(rule.least), usual: of((rule.least + rule.most) / 2), most: of(rule.most) };
}

function backing(behind: readonly BackCloth[]): keyof typeof PER_WIDTH_MM {
  if (behind.some((layer) => layer.role === 'interlining')) return 'interlined';
  return behind.length > 0 ? 'lined' : 'unlined';
}
