/** Cut sizes of a Roman shade in one cloth: the shade, its own valance and its side returns. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { centreMotif } from '../centre-motif.ts';
import { placeMotif, placePattern } from '../place-pattern.ts';
import type { PlacedPattern } from '../place-pattern.ts';
import { upForShrinkage, upToWhole } from '../round.ts';
import type { Say } from '../say.ts';
import { pieceCentred, pieceWidth } from './piece-width.ts';
import type { PiecedWidth } from './piece-width.ts';
import type { ShadeSize } from './size-shade.ts';
import { topOfOwnValance } from './top-of-shade.ts';

/** One term of a cut length, with its figures. */
export interface Term {
  readonly length: Ticks;
  readonly figures: (say: Say) => string;
}

export interface ShadePiece {
  readonly pieced: PiecedWidth;
  readonly terms: readonly Term[];
  /** As it hangs, hems in. */
  readonly asked: Ticks;
  /** Before any repeat: made longer for what washing takes. */
  readonly plain: Ticks;
  /** Where in the repeat it begins, where its pattern is placed. */
  readonly starts?: Ticks;
}

export interface ReturnPieces {
  readonly count: number;
  /** Finished drop from the board. */
  readonly drop: Ticks;
  readonly width: Ticks;
  readonly asked: Ticks;
  readonly plain: Ticks;
}

/** Everything that is cut from one cloth for one shade. */
export interface ShadeCut {
  readonly cloth: Cloth;
  readonly layer: number;
  /** Added to the finished width, both sides. */
  readonly added: Ticks;
  readonly shade: ShadePiece;
  readonly valance: ShadePiece | null;
  readonly returns: ReturnPieces | null;
}

function term(length: number): Term {
  return { length: ticks(length), figures: (say) => say.length(length) };
}

/** Finished length as the style takes it: soft folds take twice, a relaxed shade its dip. */
function styleTerms(shade: RomanShadeTreatment, length: Ticks, follows: boolean): Term[] {
  const { softFoldFullness, relaxedExtra } = shade.practice.romanShade;
  if (shade.style === 'relaxed') return [term(length), term(relaxedExtra)];
  if (shade.style !== 'soft-fold' || !follows) return [term(length)];
  return [
    {
      length: ticks(upToWhole(length * softFoldFullness, 1000)),
      figures: (say) => `${say.length(length)} × ${say.number(softFoldFullness / 1000, 3)}`,
    },
  ];
}

/** The wash takes its share of the face alone: linings are bought shrunk. */
function toPiece(
  pieced: PiecedWidth,
  terms: readonly Term[],
  shrinkage: number,
  placed: PlacedPattern | null = null,
): ShadePiece {
  const asked = ticks(terms.reduce((sum, each) => sum + each.length, 0));
  const starts = placed === null ? {} : { starts: placed.phase };
  return { pieced, terms, asked, plain: upForShrinkage(asked, shrinkage), ...starts };
}

/** Finished width of a valance of its own: it runs round the returns. */
export function valanceWidth(shade: RomanShadeTreatment, size: ShadeSize): Ticks {
  return ticks(size.width + shade.returns.left + shade.returns.right);
}

/** Added to the finished width of the face, both sides. */
export function addedWidth({ practice }: RomanShadeTreatment, lined: boolean): Ticks {
  return lined ? practice.romanShade.linedWidth : practice.romanShade.unlinedWidth;
}

export function cutFace(
  shade: RomanShadeTreatment,
  size: ShadeSize,
  face: FaceCloth,
  lined: boolean,
  stack: Ticks,
): ShadeCut {
  const own = shade.practice.romanShade;
  const { shrinkage } = shade.practice;
  const added = addedWidth(shade, lined);
  const addedLength = lined ? own.linedLength : own.unlinedLength;
  const ends = shade.style === 'soft-fold' ? own.softFoldAdded : addedLength;
  const pieced = pieceFace(shade, face, size.width, added);
  const valance =
    shade.valance === null
      ? null
      : toPiece(
          pieceFace(shade, face, valanceWidth(shade, size), added),
          [term(shade.valance.depth), term(own.valanceAdded)],
          shrinkage,
          placeOnOwnValance(shade, face, lined),
        );
  return {
    cloth: face,
    layer: 0,
    added,
    shade: toPiece(
      pieced,
      [...styleTerms(shade, size.length, true), term(ends)],
      shrinkage,
      placePattern(shade, face, lined),
    ),
    valance,
    returns: cutReturns(shade, size, stack),
  };
}

/** With a motif in the middle where it is asked; `checkPlacement` has refused what no widths bring about. */
function pieceFace(shade: RomanShadeTreatment, face: FaceCloth, finished: Ticks, added: Ticks): PiecedWidth {
  const own = shade.practice.romanShade;
  const centred = centreMotif(shade.pattern, face, own.seam);
  const about = centred === null ? null : pieceCentred(face, finished, added, own, centred);
  return about ?? pieceWidth(face, finished, added, own, false);
}

/** A valance of its own hangs smooth over the top of the shade: its motif stands as far below the same top. */
export function placeOnOwnValance(
  shade: RomanShadeTreatment,
  face: Pick<Cloth, 'repeat'>,
  lined: boolean,
): PlacedPattern | null {
  const { pattern, practice } = shade;
  const placed = placePattern(shade, face, lined);
  if (placed === null || pattern === null || face.repeat === null || shade.valance === null) return null;
  const below = { ...pattern, place: 'level' as const, level: ticks(0 - placed.below), top: ticks(0) };
  const hung = { length: shade.valance.depth, turn: topOfOwnValance(shade), fullness: 1000 };
  return placeMotif(below, face.repeat, hung, practice.shrinkage);
}

/** Side returns are faced with themselves: no layer behind. The wider of the two settles both. */
function cutReturns(shade: RomanShadeTreatment, size: ShadeSize, stack: Ticks): ReturnPieces | null {
  const own = shade.practice.romanShade;
  const sides = [shade.returns.left, shade.returns.right].filter((side) => side > 0);
  if (sides.length === 0) return null;
  const drop = own.returnDrop === 'length' ? size.length : ticks(Math.min(stack, size.length));
  const asked = ticks(drop + own.returnLength);
  return {
    count: sides.length,
    drop,
    width: ticks(Math.max(...sides) + own.returnWidth),
    asked,
    plain: upForShrinkage(asked, shade.practice.shrinkage),
  };
}

export function cutLayer(shade: RomanShadeTreatment, size: ShadeSize, cloth: BackCloth, layer: number): ShadeCut {
  const own = shade.practice.romanShade;
  const inter = cloth.role === 'interlining';
  const added = inter ? own.interliningWidth : own.liningWidth;
  const ends = inter ? own.interliningLength : own.liningLength;
  const follows = own.softFoldLining === 'with-face';
  const valance =
    shade.valance === null
      ? null
      : toPiece(
          pieceWidth(cloth, valanceWidth(shade, size), added, own, true),
          [term(shade.valance.depth), term(ends)],
          0,
        );
  return {
    cloth,
    layer,
    added,
    shade: toPiece(
      pieceWidth(cloth, size.width, added, own, true),
      [...styleTerms(shade, size.length, follows), term(ends)],
      0,
    ),
    valance,
    returns: null,
  };
}
