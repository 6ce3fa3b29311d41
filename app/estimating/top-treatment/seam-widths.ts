/**
 * Widths of what lies flat along a board. Never a seam in the middle: a whole width stands at the centre and equal side
 * pieces beside it; an even number of widths splits one of them for both sides.
 */
import type { Ticks } from '#shared/length.ts';
import { holdsCentred } from '../centre-motif.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import type { CentredCloth } from '../centre-motif.ts';
import { upToWhole } from '../round.ts';

export interface SeamedWidths {
  readonly widths: number;
  readonly joins: number;
  /** Widths that are not split, side by side in the middle; 0 when one width does. */
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

/**
 * The same with a motif in the middle of the front: the middle width gives what it has on both sides of a motif, the others
 * what reads on. Of several widths the longer side decides for both. Null where no number of them does.
 */
export function seamCentred(
  { total, leftMore }: { readonly total: Ticks; readonly leftMore: number },
  cloth: CentredCloth,
  seam: Ticks,
): SeamedWidths | null {
  if (holdsCentred(cloth, total, leftMore)) return { widths: 1, joins: 0, whole: 0, side: total };
  if (cloth.centre <= 2 * seam) return null;
  for (let whole = 1; whole < MOST_WIDTHS; whole += 2) {
    const joins = whole + 1;
    const both = total + Math.abs(leftMore) + 2 * seam * joins - cloth.centre - (whole - 1) * cloth.between;
    if (both <= cloth.pair) return { widths: whole + 1, joins, whole, side: both / 2 };
    if (both <= 2 * cloth.beside) return { widths: whole + 2, joins, whole, side: both / 2 };
    if (cloth.between <= 2 * seam) return null;
  }
  return null;
}
