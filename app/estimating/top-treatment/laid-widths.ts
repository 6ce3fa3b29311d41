/** How the widths of one layer came about, flat or gathered. */
import type { Ticks } from '#shared/length.ts';
import type { CentredCloth } from '../centre-motif.ts';
import type { GatheredWidths } from './gather-widths.ts';
import type { SeamedWidths } from './seam-widths.ts';

export type LaidWidths =
  | {
      readonly by: 'seams';
      readonly total: Ticks;
      readonly seamed: SeamedWidths;
      /** Where a motif stands in the middle: what a width then gives. */
      readonly centred?: CentredCloth;
    }
  | { readonly by: 'gathers'; readonly flat: Ticks; readonly gathered: GatheredWidths }
  | { readonly by: 'same-widths'; readonly halves: number }
  | { readonly by: 'own-widths'; readonly flat: number; readonly halves: number }
  | { readonly by: 'sideways'; readonly across: Ticks; readonly run: Ticks };

/** Widths of a layer as one counts them upright, in halves; null when the cloth runs sideways. */
export function halvesOf(widths: LaidWidths): number | null {
  switch (widths.by) {
    case 'seams':
      return 2 * widths.seamed.widths;
    case 'gathers':
      return widths.gathered.halves;
    case 'same-widths':
    case 'own-widths':
      return widths.halves;
    case 'sideways':
      return null;
  }
}
