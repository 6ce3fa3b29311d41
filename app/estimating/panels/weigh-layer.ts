/** Grams of a layer as it hangs: made width, finished length and the hems that stay in; repeat waste is trimmed off. */
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { areaOf } from '#shared/weight.ts';
import type { BackCloth } from '#shared/cloth.ts';
import { headingTurn } from './heading-turn.ts';
import { layerCut, layerFlat2 } from './lay-behind.ts';

/** Width and length in ticks that hang on the rod, for one treatment. */
export interface Hung {
  readonly width: number;
  readonly length: number;
}

/** The face: its flat width with side hems, its length with heading and hem; squaring is trimmed away. */
export function hungFace(panels: PanelsTreatment, made2: number, lined: boolean): Hung {
  const sides = 2 * panels.pieces * panels.practice.sideHem;
  return {
    width: made2 / 2 + sides,
    length: panels.finishedLength + headingTurn(panels, lined) + panels.practice.bottomHem,
  };
}

/**
 * A layer behind: the face's flat width less what it is cut narrower, with its own side turns. A layer that lines up
 * with the face lies edge to edge inside the face's hems, so its own cloth to the edge counts.
 */
export function hungLayer(panels: PanelsTreatment, layer: BackCloth, faceMade2: number): Hung {
  return { width: layerFlat2(panels, layer, faceMade2) / 2, length: layerCut(panels, layer) };
}

/** Grams of `hung` at a mass per area in g/m2. */
export function gramsOf(hung: Hung, massPerArea: number): number {
  return areaOf(hung.width, hung.length) * massPerArea;
}
