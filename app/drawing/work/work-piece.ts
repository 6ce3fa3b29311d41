/** A piece on a work drawing, in ticks from its own top left corner: what is cut, or what it looks like when it is made. */
import type { Shape } from '../shape.ts';

export interface PiecePoint {
  readonly x: number;
  readonly y: number;
}

/** `seam` and `edge` of finished cloth, `fold` and `stitch` lines, `rib` of a shade, middle of a placed `motif`. */
export interface PieceLine {
  readonly is: 'seam' | 'edge' | 'fold' | 'stitch' | 'rib' | 'motif';
  readonly from: PiecePoint;
  readonly to: PiecePoint;
}

/** Cloth that is turned, pleated away or lies under another piece. */
export interface PieceZone {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly is: 'turn' | 'pleat';
}

/** One measured stretch. `inner` are marks within it: `5 × 11½` has four. */
export interface ChainPart {
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly inner?: readonly number[];
}

/** Measures along one side of the piece, the first nearest to it. */
export interface Chain {
  readonly side: 'top' | 'bottom' | 'left' | 'right';
  readonly parts: readonly ChainPart[];
}

export interface WorkPiece {
  readonly title: string;
  readonly says: readonly string[];
  readonly width: number;
  readonly height: number;
  /** The face as it is cut, from its top edge: `middle` is that of the front, where it is not that of the cut. */
  readonly face?: { readonly middle?: number; readonly of?: 'own-valance' };
  /** Outline where it is no rectangle; empty where the picture draws its own. */
  readonly outline?: readonly PiecePoint[];
  readonly zones?: readonly PieceZone[];
  readonly lines?: readonly PieceLine[];
  /** Rings, eyelets. */
  readonly dots?: readonly PiecePoint[];
  readonly chains: readonly Chain[];
  /** Words on the piece itself, where they fit. */
  readonly labels?: readonly (PiecePoint & { readonly words: string })[];
  /** The made piece as it hangs, drawn instead of an outline. */
  readonly picture?: (place: PicturePlace) => readonly Shape[];
}

export interface PicturePlace {
  /** Top left of the piece, in points. */
  readonly x: number;
  readonly y: number;
  /** Points a tick. */
  readonly scale: number;
}

/** Pieces that stand side by side. `shares` part the width among them. */
export interface WorkRow {
  readonly pieces: readonly WorkPiece[];
  readonly shares?: readonly number[];
  /** Greatest height of a piece, as a share of the usual one. */
  readonly high?: number;
}
