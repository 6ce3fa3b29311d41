/**
 * Widths of what lies flat along a board. Never a seam in the middle: a whole width stands at the centre and equal side
 * pieces beside it; an even number of widths splits one of them for both sides.
 */
import type { Ticks } from '#shared/length.ts';
import { upToWhole } from '../round.ts';

export interface SeamedWidths {
  readonly widths: number;
  readonly joins: number;
  /** Full widths that stay whole; 0 when one width does. */
  readonly whole: number;
  /** Cut width of each of the two side pieces, or of the one piece, seams included; in ticks, perhaps a half. */
  readonly side: number;
}

/** `total` is the cut width of the whole piece. Two seams at every join have to leave some of the cloth. */
export function seamWidths(total: Ticks, usable: Ticks, seam: Ticks): SeamedWidths {
  if (total <= usable) return { widths: 1, joins: 0, whole: 0, side: total };
  let widths = Math.max(2, upToWhole(total, usable));
  while (widths * usable < total + 2 * seam * joinsOf(widths)) widths += 1;
  const joins = joinsOf(widths);
  const whole = widths % 2 === 0 ? widths - 1 : widths - 2;
  return { widths, joins, whole, side: (total + 2 * seam * joins - whole * usable) / 2 };
}

function joinsOf(widths: number): number {
  return widths % 2 === 0 ? widths : widths - 1;
}
