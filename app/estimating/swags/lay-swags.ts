/** The pieces of swags and tails from each cloth. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { SwagsTreatment, Tail } from '#shared/treatments/swags.ts';
import { areaOf } from '#shared/weight.ts';
import { placePattern } from '../place-pattern.ts';
import { upForShrinkage } from '../round.ts';
import { matchedPiece } from '../top-treatment/lay-pieces.ts';
import type { Parcel, Piece } from '../top-treatment/lay-pieces.ts';
import { layFlat } from '../top-treatment/lay-flat.ts';
import { layWidths } from '../top-treatment/lay-widths.ts';
import { seamWidths } from '../top-treatment/seam-widths.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import { flatOf, isOnBias, rowOf, tailOf } from './measure-swags.ts';
import type { FlatSwag, SwagRow, TailCut } from './measure-swags.ts';
import { pieceOnBias } from './piece-on-bias.ts';

export interface CutTail extends TailCut {
  readonly name: 'cascades' | 'jabots';
  readonly tail: Tail;
  /** Of one treatment. */
  readonly count: number;
}

export interface CutSwags {
  readonly row: SwagRow;
  readonly flat: FlatSwag;
  readonly onBias: boolean;
  readonly tails: readonly CutTail[];
}

export function cutSwags(swags: SwagsTreatment): CutSwags {
  const row = rowOf(swags);
  const { cascades, jabots } = swags;
  return {
    row,
    flat: flatOf(swags, row.width),
    onBias: isOnBias(swags, row.width),
    tails: [
      ...(cascades
        ? [{ ...tailOf(swags, cascades, swags.returns), name: 'cascades' as const, tail: cascades, count: 2 }]
        : []),
      ...(jabots
        ? [{ ...tailOf(swags, jabots, null), name: 'jabots' as const, tail: jabots, count: jabots.count }]
        : []),
    ],
  };
}

/** Lining, and every layer between, goes on the bias always; the face as it was chosen. */
export function swagPiece(swags: SwagsTreatment, cut: CutSwags, cloth: Cloth, layer: number): Piece {
  const { practice } = swags;
  const count = cut.row.count * swags.quantity;
  const washed = (length: Ticks): Ticks => (layer === 0 ? upForShrinkage(length, practice.shrinkage) : length);
  if (layer > 0 || cut.onBias) {
    const { length } = pieceOnBias(cut.flat, cloth);
    return matchedPiece('swags, on the bias', cloth, practice.repeatRule, { plain: washed(length), count });
  }
  const flat = { total: cut.flat.width, leftMore: 0 };
  const laid = layWidths(
    cloth,
    {
      name: 'swags, straight',
      layer,
      plain: washed(cut.flat.depth),
      upright: layFlat(flat, cloth, swags.pattern, practice.seam),
      run: cut.flat.width,
      count,
      starts: placePattern(swags, cloth, true)?.phase ?? null,
    },
    practice,
  );
  const [piece] = laid.parcel.pieces;
  if (!piece) throw new Error('a swag is cut from cloth');
  return piece;
}

/** Tails are cut as long as their longest point, each from its own width, or widths. */
export function tailPiece(swags: SwagsTreatment, tail: CutTail, cloth: Cloth, layer: number): Piece {
  const { practice } = swags;
  const asked = ticks(addUp(tail.length));
  const wider = ticks(Math.max(tail.flat.left, tail.flat.right));
  const { widths } = seamWidths(wider, cloth.usableWidth, practice.seam);
  return matchedPiece(tail.name, cloth, practice.repeatRule, {
    plain: layer === 0 ? upForShrinkage(asked, practice.shrinkage) : asked,
    count: tail.count * widths * swags.quantity,
    ...(widths === 1 ? { across: wider } : {}),
  });
}

/** Parcels of the face, of a contrast that lines the tails, and of each layer behind. */
export function laySwags(
  swags: SwagsTreatment,
  cut: CutSwags,
  face: FaceCloth,
  behind: readonly BackCloth[],
  contrast: Cloth | null,
  massOf: (cloth: Cloth) => number,
): Parcel[] {
  const tails = (cloth: Cloth, layer: number): Piece[] => cut.tails.map((tail) => tailPiece(swags, tail, cloth, layer));
  const grams = (cloth: Cloth, withSwags: boolean, withTails: boolean): number =>
    massOf(cloth) *
    swags.quantity *
    ((withSwags ? swagArea(cut) : 0) + (withTails ? cut.tails.reduce((sum, tail) => sum + tailArea(tail), 0) : 0));
  const parcel = (cloth: Cloth, layer: number, pieces: readonly Piece[], weight: number): Parcel => ({
    cloth,
    layer,
    pieces,
    halfWidths: null,
    fullnessMade: null,
    grams: weight,
  });
  const layers = behind.map((layer, index) => {
    const own = !(contrast && layer.role === 'lining');
    const pieces = [swagPiece(swags, cut, layer, index + 1), ...(own ? tails(layer, index + 1) : [])];
    return parcel(layer, index + 1, pieces, grams(layer, true, own));
  });
  return [
    parcel(face, 0, [swagPiece(swags, cut, face, 0), ...tails(face, 0)], grams(face, true, true)),
    // Lining that shows: cut like the tails themselves, and no swag.
    ...(contrast
      ? [
          {
            ...parcel(contrast, 0, contrastPieces(swags, cut, contrast), grams(contrast, false, true)),
            use: 'lining of the tails',
          },
        ]
      : []),
    ...layers,
  ];
}

function contrastPieces(swags: SwagsTreatment, cut: CutSwags, contrast: Cloth): Piece[] {
  return cut.tails.map((tail) => ({ ...tailPiece(swags, tail, contrast, 1), name: `lining of ${tail.name}` }));
}

/** A swag spread flat is narrower at the top: the mean of both edges times its depth. Of one treatment, in m2. */
function swagArea({ row, flat }: CutSwags): number {
  return row.count * areaOf((flat.top + flat.width) / 2, flat.depth);
}

/** A tail runs from its shortest to its longest point. */
function tailArea({ flat, tail, count }: CutTail): number {
  return count * areaOf((flat.left + flat.right) / 2, (tail.longest + tail.shortest) / 2);
}
