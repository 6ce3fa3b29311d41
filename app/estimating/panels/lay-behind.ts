/** A layer behind the face: cut by its own allowances, on its own width. */
import type { BackCloth } from '#shared/cloth.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { LayerAllowances } from '#shared/practice.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { CountedWidths } from './count-widths.ts';
import { upToWhole } from '../round.ts';

/** A layer behind with both ways it could lie: what was not taken is told beside what was. */
export interface LaidLayer {
  readonly layer: BackCloth;
  readonly line: TakeoffLine;
  /** Seams of one treatment. */
  readonly joins: number;
  /** In widths, and sideways where it may be. */
  readonly upright: Pick<TakeoffLine, 'plan' | 'halfWidths'>;
  readonly sideways: Pick<TakeoffLine, 'plan'> | null;
}

export function allowancesOf(panels: PanelsTreatment, layer: BackCloth): LayerAllowances {
  return layer.role === 'interlining' ? panels.practice.interlining : panels.practice.lining;
}

/** The plain cut of a layer: finished length, its heading and hem, less what it hangs short of the face. */
export function layerCut(panels: PanelsTreatment, layer: BackCloth): Ticks {
  const allowances = allowancesOf(panels, layer);
  return ticks(panels.finishedLength + allowances.headingAllowance + allowances.bottomHem - allowances.shorter);
}

/** Flat width that a layer has to cover, twice, in ticks: the face as made, less what it is narrower, with its own hems. */
export function layerFlat2(panels: PanelsTreatment, layer: BackCloth, faceMade2: number): number {
  const allowances = allowancesOf(panels, layer);
  const pieces = panels.pieces;
  return Math.max(2, faceMade2 - 2 * pieces * allowances.narrower + 2 * 2 * pieces * allowances.sideHem);
}

/** True when the layer is as wide as the face, so that their seams line up. */
export function linesUp(layer: BackCloth, faceUsable: Ticks): boolean {
  return layer.usableWidth === faceUsable;
}

/** Widths of a layer, in halves: the face's own where it is as wide, else on its own, whole ones unless several pieces share them. */
export function layerHalves(
  panels: PanelsTreatment,
  layer: BackCloth,
  face: { readonly usable: Ticks; readonly counted: CountedWidths | null; readonly made2: number },
): number {
  if (face.counted && linesUp(layer, face.usable)) return face.counted.halves;
  const grid = Math.max(2, panels.pieces);
  return grid * Math.max(1, upToWhole(layerFlat2(panels, layer, face.made2), grid * layer.usableWidth));
}
