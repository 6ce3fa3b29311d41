/** Cut lengths and flat widths of a valance, as sums that the working prints. */
import type { BackCloth, LiningCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { FullValance, ValanceTreatment } from '#shared/treatments/valance.ts';
import { toNearestWhole, upForShrinkage } from '../round.ts';
import type { GatheredPiece } from '../top-treatment/gather-widths.ts';
import type { FlatFace } from '../top-treatment/lay-flat.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import type { Addend } from '../top-treatment/work-parcel.ts';

function isLining(layer: BackCloth): layer is LiningCloth {
  return layer.role === 'lining';
}

/** Face and lining sewn together along the bottom and turned; scallops without a lining have a facing instead. */
export function isFaced(valance: ValanceTreatment, behind: readonly BackCloth[]): boolean {
  if (valance.style === 'scalloped') return true;
  const flat = valance.style === 'tailored' || valance.style === 'box-pleated';
  return flat && behind.some(isLining);
}

/** Unlined scallops need a facing of their own to finish the edge. */
export function needsFacing(valance: ValanceTreatment, behind: readonly BackCloth[]): boolean {
  return valance.style === 'scalloped' && !behind.some(isLining);
}

/** Finished width: face and both returns. */
export function finishedWidthOf(valance: ValanceTreatment): Ticks {
  return ticks(valance.width + valance.returns.left + valance.returns.right);
}

/** Flat front of the pocket: the rod and its ease. */
export function pocketOf(valance: ValanceTreatment): Ticks {
  return valance.hang.by === 'rod' ? ticks(valance.hang.diameter + valance.practice.pocket.ease) : ticks(0);
}

/** Cloth above the finished top: on top of the board, or the back of header and pocket with its turn. */
export function topOf(valance: ValanceTreatment): Addend[] {
  const { hang, practice } = valance;
  const making = valance.practice.valance;
  if (hang.by === 'board')
    return [
      {
        says: 'on top of the board',
        length: making.boardTurnFrom === 'board-depth' ? hang.depth : making.boardTurn,
      },
    ];
  return [
    { says: 'header again', length: hang.header },
    { says: 'back of the pocket: rod and ease', length: pocketOf(valance) },
    { says: 'turn', length: practice.pocket.turn },
  ];
}

/** What the plain cut of the face adds up from. */
export function faceAddends(valance: ValanceTreatment, behind: readonly BackCloth[]): Addend[] {
  const { practice } = valance;
  const making = valance.practice.valance;
  const bottom = (): Addend => {
    if (isFaced(valance, behind)) return { says: 'seam at the bottom', length: making.facedSeam };
    if (valance.style === 'balloon') return { says: 'drawn up, with its hem', length: making.balloonTakeUp };
    return { says: 'bottom hem', length: making.bottomHem };
  };
  return [
    { says: 'finished length', length: valance.finishedLength },
    ...topOf(valance),
    bottom(),
    { says: 'squaring', length: practice.squaring },
  ];
}

/** Plain cut of the face, up to a tick; washed cloth is cut longer by what it loses. */
export function facePlain(valance: ValanceTreatment, behind: readonly BackCloth[]): Ticks {
  return upForShrinkage(ticks(addUp(faceAddends(valance, behind))), valance.practice.shrinkage);
}

/** What the cut of a layer behind adds up from. A faced lining is cut like the face. */
export function layerAddends(valance: ValanceTreatment, layer: BackCloth, behind: readonly BackCloth[]): Addend[] {
  const { hang } = valance;
  const making = valance.practice.valance;
  const faced = isFaced(valance, behind);
  const finished = { says: 'finished length', length: valance.finishedLength };
  if (layer.role === 'interlining')
    return [
      finished,
      ...(hang.by === 'board' ? topOf(valance) : []),
      { says: 'drawn up', length: valance.style === 'balloon' ? making.balloonTakeUp : 0 },
      { says: 'shorter', length: faced ? 0 : 0 - making.interliningShorter },
    ];
  if (faced) return [finished, ...topOf(valance), { says: 'seam at the bottom', length: making.facedSeam }];
  const top = hang.by === 'board' ? topOf(valance) : [{ says: 'above the finished length', length: making.liningTop }];
  return [
    finished,
    ...top,
    { says: 'drawn up', length: valance.style === 'balloon' ? making.balloonTakeUp : 0 },
    { says: 'lining hem', length: making.liningHem },
    { says: 'shorter', length: 0 - making.liningShorter },
  ];
}

export function layerPlain(valance: ValanceTreatment, layer: BackCloth, behind: readonly BackCloth[]): Ticks {
  return ticks(addUp(layerAddends(valance, layer, behind)));
}

/** Cut width of a valance that lies flat on its board. */
export function flatAddends(valance: ValanceTreatment): Addend[] {
  const { returns } = valance;
  const making = valance.practice.valance;
  return [
    { says: 'face', length: valance.width },
    { says: 'left return', length: returns.left },
    { says: 'right return', length: returns.right },
    ...(valance.style === 'box-pleated' ? [{ says: 'box pleats', length: valance.takeUp, times: valance.pleats }] : []),
    { says: 'side hems', length: making.sideHem, times: 2 },
    { says: 'wrapped round the ends', length: making.wrap, times: 2 },
  ];
}

export function flatFace(valance: ValanceTreatment): FlatFace {
  const { left, right } = valance.returns;
  return { total: ticks(addUp(flatAddends(valance))), leftMore: left - right };
}

/** The hem as it hangs, spread flat: what a welt follows. */
export function flatHem(valance: ValanceTreatment): Ticks {
  const pleats = valance.style === 'box-pleated' ? valance.pleats * valance.takeUp : 0;
  return ticks(finishedWidthOf(valance) + pleats);
}

export function gatheredPiece(valance: FullValance): GatheredPiece {
  const { width, returns, fullness } = valance;
  const making = valance.practice.valance;
  return { width, returns, fullness, sideHem: making.sideHem };
}

/** Scallops or puffs: as given, else the whole number nearest to the usual width, at least one. */
export function countRepeated(given: number | null, width: Ticks, usual: Ticks): number {
  if (given !== null) return given;
  return usual === 0 ? 1 : Math.max(1, toNearestWhole(width, usual));
}

/** What scallops share: the face alone on a board, face and returns where the cloth is gathered. */
export function scallopedWidth(valance: ValanceTreatment): Ticks {
  return isFull(valance) ? finishedWidthOf(valance) : valance.width;
}
