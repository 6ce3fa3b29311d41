/** Boards and cuts of a cornice, as sums that the working prints. */
import type { BackCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import type { FlatFace } from '../top-treatment/lay-flat.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import type { Addend } from '../top-treatment/work-parcel.ts';

/** The boards of one box. The face board covers the ends; the dust board lies between them, flush with the top. */
export interface CorniceBox {
  readonly thickness: Ticks;
  readonly face: { readonly width: Ticks; readonly height: Ticks };
  /** From the back of the face board to the wall; 0 for a side without an end. */
  readonly ends: { readonly left: Ticks; readonly right: Ticks; readonly height: Ticks };
  readonly dustBoard: { readonly length: Ticks; readonly depth: Ticks };
}

/** Outside depth of the box: its deeper end, else the practice's board. */
export function projectionOf(cornice: CorniceTreatment): Ticks {
  const deeper = Math.max(cornice.returns.left, cornice.returns.right);
  return ticks(deeper > 0 ? deeper : cornice.practice.cornice.boardDepth);
}

export function boxOf(cornice: CorniceTreatment): CorniceBox {
  const { returns, width, finishedLength } = cornice;
  const thickness = cornice.practice.cornice.boardThickness;
  const end = (outside: Ticks): Ticks => ticks(outside === 0 ? 0 : outside - thickness);
  const ends = Number(returns.left > 0) + Number(returns.right > 0);
  return {
    thickness,
    face: { width, height: finishedLength },
    ends: { left: end(returns.left), right: end(returns.right), height: finishedLength },
    dustBoard: { length: ticks(width - ends * thickness), depth: ticks(projectionOf(cornice) - thickness) },
  };
}

export function finishedWidthOf(cornice: CorniceTreatment): Ticks {
  return ticks(cornice.width + cornice.returns.left + cornice.returns.right);
}

/** What the cut length and cut width of the face, or of a layer behind it, add up from. */
export interface CorniceCut {
  readonly length: readonly Addend[];
  readonly width: readonly Addend[];
}

function edges(cornice: CorniceTreatment, each: readonly Addend[]): CorniceCut {
  const both = each.map((addend) => ({ ...addend, times: 2 }));
  return {
    length: [{ says: 'height', length: cornice.finishedLength }, ...both],
    width: [
      { says: 'face', length: cornice.width },
      { says: 'left end', length: cornice.returns.left },
      { says: 'right end', length: cornice.returns.right },
      ...both,
    ],
  };
}

/** The face goes over padding and edges to the back of the boards. */
export function faceCut(cornice: CorniceTreatment): CorniceCut {
  const { wrap, padding } = cornice.practice.cornice;
  const cut = edges(cornice, [
    { says: 'over the padding', length: padding },
    { says: 'turned to the back', length: wrap },
  ]);
  return { ...cut, length: [...cut.length, { says: 'squaring', length: cornice.practice.squaring }] };
}

export function flatFace(cornice: CorniceTreatment): FlatFace {
  const { left, right } = cornice.returns;
  return { total: ticks(addUp(faceCut(cornice).width)), leftMore: left - right };
}

/** Lining covers the inside of the box; interlining lies under the face, over the padding, and is not turned. */
export function layerCut(cornice: CorniceTreatment, layer: BackCloth): CorniceCut {
  const { liningTurn, padding } = cornice.practice.cornice;
  return layer.role === 'interlining'
    ? edges(cornice, [{ says: 'over the padding', length: padding }])
    : edges(cornice, [{ says: 'turned in', length: liningTurn }]);
}

/** Welt along the top of the box, and along its lower edge as it is shaped; both ends turned in. */
export function weltAddends(cornice: CorniceTreatment, edge: 'top' | 'bottom'): Addend[] {
  const shaped = edge === 'bottom' ? cornice.shapedEdge : null;
  return [
    { says: shaped === null ? 'face' : 'shaped edge along its template', length: shaped ?? cornice.width },
    { says: 'left end', length: cornice.returns.left },
    { says: 'right end', length: cornice.returns.right },
    { says: 'ends of the welt', length: cornice.practice.cornice.weltEnds },
  ];
}
