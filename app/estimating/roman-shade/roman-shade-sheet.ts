/** The named measures a workroom needs to draw, cut and string a Roman shade. */
import type { Warning } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadePractice, RomanStyle } from '#shared/treatments/roman-shade.ts';
import type { CordCaution } from './cord-caution.ts';
import type { RingRows } from './place-rings.ts';
import type { ShadeCords } from './raise-shade.ts';

/** Cut sizes of one piece in one cloth. */
export interface PieceSheet {
  readonly cutWidth: Ticks;
  /** Before any repeat. */
  readonly cutLength: Ticks;
  /** Whole widths in the centre, and the cut width of each. */
  readonly centres: number;
  readonly centre: Ticks;
  /** Cut width of each of two side pieces; null where one width does. */
  readonly side: Ticks | null;
  /** From the left finished edge. */
  readonly seams: readonly Ticks[];
}

export interface LayerSheet {
  readonly cloth: string;
  readonly layer: number;
  readonly railroaded: boolean;
  readonly shade: PieceSheet;
  readonly valance: PieceSheet | null;
}

export interface RomanShadeSheet {
  readonly kind: 'roman-shade';
  readonly style: RomanStyle;
  readonly finished: { readonly width: Ticks; readonly length: Ticks };
  /** The face first, then the layers behind it. */
  readonly layers: readonly LayerSheet[];
  readonly rings: RingRows & {
    readonly rule: RomanShadePractice['rowRule'];
    /** From the left finished edge. */
    readonly columns: readonly Ticks[];
    /** Of one shade. */
    readonly count: number;
    /** Face cloth between two rows, in ticks, unrounded: twice the spacing on soft folds. */
    readonly clothBetween: number;
  };
  /** Ribs from the hem up; empty without. */
  readonly ribs: readonly Ticks[];
  readonly bottomBar: boolean;
  /** Height from the board when fully raised. */
  readonly raisedStack: Ticks;
  readonly valance: { readonly depth: Ticks; readonly width: Ticks } | null;
  readonly returns: {
    readonly left: Ticks;
    readonly right: Ticks;
    readonly drop: Ticks;
    readonly cutWidth: Ticks;
    readonly cutLength: Ticks;
    /** So many, of all quantity, are cut from what a shade leaves at the side of its one width. */
    readonly besideTheShade: number;
  } | null;
  readonly board: { readonly length: Ticks; readonly depth: Ticks };
  readonly cords: ShadeCords & CordCaution;
  readonly warnings: readonly Warning[];
}
