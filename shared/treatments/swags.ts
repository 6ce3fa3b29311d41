/** Swags on a board, overlapped or separate, with cascades at the ends and jabots between. */
import type { Mount, TreatmentBase } from './treatment-base.ts';
import type { Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { SwagsPractice } from './swags-practice.ts';

/** `overlapped`: each swag laps half of its neighbour. `separate`: side by side. */
export const SWAG_STYLES = ['overlapped', 'separate'] as const;
export type SwagStyle = (typeof SWAG_STYLES)[number];

/** A pleated tail: a cascade at an end of the board, or a jabot between swags. */
export interface Tail {
  readonly longest: Ticks;
  readonly shortest: Ticks;
  /** Finished width of its face, pleated. */
  readonly width: Ticks;
  /** Knife pleats; null: by the practice's usual width of one. */
  readonly pleats: number | null;
}

export interface SwagsTreatment extends TreatmentBase {
  readonly kind: 'swags';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly swags: SwagsPractice };
  readonly style: SwagStyle;
  readonly mount: Mount;
  /** Face of the board, end to end. */
  readonly width: Ticks;
  /** Depth of a swag at its middle, from the top of the board. */
  readonly finishedLength: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  readonly over: Ticks | null;
  readonly dropOf: Ticks | null;
  /** Null: as few as keep every swag within the practice's widest. */
  readonly swags: number | null;
  /** Null: on the bias unless it is wider or deeper than the practice lets it. */
  readonly onBias: boolean | null;
  /** A pair, one at each end of the board; null for none. */
  readonly cascades: Tail | null;
  readonly jabots: (Tail & { readonly count: number }) | null;
  /** Cloth id that lines the tails and shows on their face; null: the layers behind line them too. */
  readonly contrast: string | null;
  /** Cloth id of a welt along the lower edge of the swags; null for none. */
  readonly welt: string | null;
}
