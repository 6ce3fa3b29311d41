/** The pieces of a valance from each cloth: face, facing, layers behind it. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { areaOf } from '#shared/weight.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { placePattern } from '../place-pattern.ts';
import { halvesUpToTick, upToWhole } from '../round.ts';
import { flatAskedOf, fullnessOf, gatherWidths } from '../top-treatment/gather-widths.ts';
import { halvesOf } from '../top-treatment/laid-widths.ts';
import type { LaidWidths } from '../top-treatment/laid-widths.ts';
import { layFlat } from '../top-treatment/lay-flat.ts';
import { freePiece, sidewaysPiece } from '../top-treatment/lay-pieces.ts';
import type { Piece } from '../top-treatment/lay-pieces.ts';
import { layWidths } from '../top-treatment/lay-widths.ts';
import type { LaidLayer } from '../top-treatment/lay-widths.ts';
import { seamWidths } from '../top-treatment/seam-widths.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import {
  faceAddends,
  facePlain,
  flatAddends,
  flatFace,
  gatheredPiece,
  layerPlain,
  needsFacing,
} from './measure-valance.ts';

export interface LaidValance {
  readonly face: LaidLayer;
  readonly layers: readonly LaidLayer[];
  /** Twice the flat width of the face as made, in ticks, hems off. */
  readonly made2: number;
  readonly fullnessMade: number | null;
}

export function layValance(
  valance: ValanceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  massOf: (cloth: Cloth) => number,
): LaidValance {
  const plain = facePlain(valance, behind);
  const full = isFull(valance) ? gatheredPiece(valance) : null;
  const over = valance.practice.fullnessOver;
  const asked = full ? ticks(flatAskedOf(full, over) + 2 * full.sideHem) : ticks(addUp(flatAddends(valance)));
  const upright: LaidWidths = full
    ? { by: 'gathers', flat: flatAskedOf(full, over), gathered: gatherWidths(full, face.usableWidth, valance.practice) }
    : layFlat(flatFace(valance), face, valance.pattern, valance.practice.seam);
  const laid = layWidths(
    face,
    {
      ...{ name: 'valance', layer: 0, plain, upright, run: asked, count: valance.quantity },
      starts: placePattern(valance, face, behind.length > 0)?.phase ?? null,
    },
    valance.practice,
  );
  const made2 = madeTwice(valance, laid.widths, asked);
  const fullnessMade = full ? fullnessOf(full, over, made2) : null;
  const facing = needsFacing(valance, behind) ? [facingPiece(valance, laid)] : [];
  // As it hangs: hems and wraps stay in, squaring is trimmed away, washing has taken its share.
  const hungWidth = full ? made2 / 2 + 2 * full.sideHem : asked;
  const hungLength = addUp(faceAddends(valance, behind)) - valance.practice.squaring;
  const hung = areaOf(hungWidth, hungLength) * massOf(face) * valance.quantity;
  const layers = behind.map((layer, index) => {
    const own = layLayer(valance, layer, index + 1, behind, { face, widths: laid.widths, asked, made2 });
    const grams = areaOf(made2 / 2, own.plain) * massOf(layer) * valance.quantity;
    return { ...own, parcel: { ...own.parcel, grams } };
  });
  return {
    face: {
      ...laid,
      parcel: { ...laid.parcel, pieces: [...laid.parcel.pieces, ...facing], fullnessMade, grams: hung },
    },
    layers,
    made2,
    fullnessMade,
  };
}

/** Twice the flat width, hems and wraps off. */
function madeTwice(valance: ValanceTreatment, widths: LaidWidths, asked: Ticks): number {
  if (widths.by === 'gathers') return widths.gathered.made2;
  const ends = isFull(valance)
    ? valance.practice.valance.sideHem
    : valance.practice.valance.sideHem + valance.practice.valance.wrap;
  return 2 * (asked - 2 * ends);
}

interface FaceAsLaid {
  readonly face: FaceCloth;
  readonly widths: LaidWidths;
  readonly asked: Ticks;
  readonly made2: number;
}

function layLayer(
  valance: ValanceTreatment,
  layer: BackCloth,
  index: number,
  behind: readonly BackCloth[],
  { face, widths, asked, made2 }: FaceAsLaid,
): LaidLayer {
  const plain = layerPlain(valance, layer, behind);
  const lay = (upright: LaidWidths, run: Ticks): LaidLayer =>
    layWidths(
      layer,
      { name: layer.role, layer: index, plain, upright, run, count: valance.quantity },
      valance.practice,
    );
  if (!isFull(valance))
    return lay(
      { by: 'seams', total: asked, seamed: seamWidths(asked, layer.usableWidth, valance.practice.seam) },
      asked,
    );
  const run = halvesUpToTick(made2);
  const halves = halvesOf(widths);
  if (halves !== null && layer.usableWidth === face.usableWidth) return lay({ by: 'same-widths', halves }, run);
  const own = 2 * Math.max(1, upToWhole(made2, 2 * layer.usableWidth));
  return lay({ by: 'own-widths', flat: made2 / 2, halves: own }, run);
}

/** The facing of unlined scallops: as wide as the face, as deep as the scallops and its own height and seam. */
function facingPiece(valance: ValanceTreatment, face: LaidLayer): Piece {
  const { quantity } = valance;
  const main = face.parcel.pieces[0];
  const length = facingLength(valance);
  if (face.widths.by !== 'sideways') return freePiece('facing', length, main?.count ?? quantity);
  return sidewaysPiece('facing, sideways', length, face.widths.run, quantity);
}

export function facingLength(valance: ValanceTreatment): Ticks {
  const depth = valance.style === 'scalloped' ? valance.depth : 0;
  return ticks(depth + valance.practice.valance.facing + valance.practice.valance.facedSeam);
}
