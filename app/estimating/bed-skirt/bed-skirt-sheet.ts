/** The named measures a workroom needs to draw, cut and sew a bed skirt. */
import type { Ticks } from '#shared/length.ts';
import type { BedSkirtStyle } from '#shared/treatments/bed-skirt.ts';
import type { Shares } from '../share-out.ts';
import type { DeckCut } from './cut-deck.ts';
import type { SkirtPiece, SkirtSide } from './measure-skirt.ts';

export interface SkirtLayerSheet {
  readonly cloth: string;
  readonly layer: number;
  readonly railroaded: boolean;
  /** Cut drop before any repeat. */
  readonly cutDrop: Ticks;
  /** Widths sewn end to end upright, or strips sideways. */
  readonly joined: number;
}

export interface BedSkirtSheet {
  readonly kind: 'bed-skirt';
  readonly style: BedSkirtStyle;
  readonly drop: Ticks;
  readonly perimeter: Ticks;
  readonly splitCorners: boolean;
  /** `shares`: the visible widths of box pleats as the table marks them. */
  readonly sides: readonly (SkirtSide & { readonly shares: Shares | null })[];
  readonly pieces: readonly SkirtPiece[];
  readonly strip: Ticks;
  readonly cornerPleats: number;
  readonly middlePleats: number;
  readonly hem: Ticks;
  /** The face first, then the layers behind it. */
  readonly layers: readonly SkirtLayerSheet[];
  readonly deck: (DeckCut & { readonly cloth: string }) | null;
}
