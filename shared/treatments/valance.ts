/** Valances: a short treatment along the head of a window, on a board or on a rod. */
import type { Mount, TreatmentBase } from './treatment-base.ts';
import type { Ticks } from '../length.ts';
import type { Practice, Thousandths } from '../practice.ts';
import type { ValancePractice } from './valance-practice.ts';

export const VALANCE_STYLES = ['tailored', 'box-pleated', 'gathered', 'scalloped', 'balloon'] as const;
export type ValanceStyle = (typeof VALANCE_STYLES)[number];

/** `between`: the pleats share the face, none at a corner. `corners`: the outer two stand at the corners of the board. */
export const PLEAT_PLACES = ['between', 'corners'] as const;

export interface BoardHang {
  readonly by: 'board';
  /** From the wall to the front of the board. */
  readonly depth: Ticks;
}
export interface RodHang {
  readonly by: 'rod';
  readonly diameter: Ticks;
  /** Finished header above the pocket; 0 for none. */
  readonly header: Ticks;
}

interface ValanceBase extends TreatmentBase {
  readonly kind: 'valance';
  /** Resolved for this treatment alone, its own section with it. */
  readonly practice: Practice & { readonly valance: ValancePractice };
  readonly mount: Mount;
  /** Face of board or rod, end to end, before returns. */
  readonly width: Ticks;
  /** Top of board or heading to the lowest point of the hem. */
  readonly finishedLength: Ticks;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  /** The return of the treatment that hangs under it; null when there is none. */
  readonly over: Ticks | null;
  /** The whole drop that it tops, for its proportion; null when unknown. */
  readonly dropOf: Ticks | null;
  /** Cloth id of a welt along the hem; null for none. */
  readonly welt: string | null;
}

export interface TailoredValance extends ValanceBase {
  readonly style: 'tailored';
  readonly hang: BoardHang;
  /** Held flat by buckram. */
  readonly stiffened: boolean;
}
export interface BoxPleatedValance extends ValanceBase {
  readonly style: 'box-pleated';
  readonly hang: BoardHang;
  readonly pleats: number;
  readonly pleatsAt: (typeof PLEAT_PLACES)[number];
  /** Cloth that one pleat takes. */
  readonly takeUp: Ticks;
}
interface Gathers {
  readonly fullness: Thousandths;
  /** False when the fullness is the practice's. */
  readonly fullnessGiven: boolean;
}
export interface GatheredValance extends ValanceBase, Gathers {
  readonly style: 'gathered';
  readonly hang: BoardHang | RodHang;
}
export interface ScallopedValance extends ValanceBase, Gathers {
  readonly style: 'scalloped';
  /** Flat on a board (its fullness is then 1), gathered on a rod. */
  readonly hang: BoardHang | RodHang;
  /** Null: by the practice's usual width of one. */
  readonly scallops: number | null;
  /** From the lowest point of a scallop to its point against the next. */
  readonly depth: Ticks;
}
export interface BalloonValance extends ValanceBase, Gathers {
  readonly style: 'balloon';
  readonly hang: BoardHang | RodHang;
  /** Puffs side by side; null: by the practice's usual width of one. */
  readonly puffs: number | null;
}

export type ValanceTreatment =
  TailoredValance | BoxPleatedValance | GatheredValance | ScallopedValance | BalloonValance;
/** Those whose cloth is drawn up along the top. */
export type FullValance = GatheredValance | ScallopedValance | BalloonValance;

/** Gathered on top: every style with a fullness, but a scalloped one that lies flat on its board. */
export function isFull(valance: ValanceTreatment): valance is FullValance {
  if (valance.style === 'scalloped') return valance.hang.by === 'rod';
  return valance.style === 'gathered' || valance.style === 'balloon';
}
