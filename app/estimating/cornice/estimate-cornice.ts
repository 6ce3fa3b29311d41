/** A cornice from measurement to order: box, cloth over it, lining inside, cover of the dust board. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import { TICKS_PER_INCH, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { Advice, TakeoffLine } from '#shared/result.ts';
import type { CorniceTreatment } from '#shared/treatments/cornice.ts';
import { areaOf } from '#shared/weight.ts';
import { billableWidths } from '../billable-widths.ts';
import type { EstimateGiven, Labour } from '../estimate.ts';
import { placePattern } from '../place-pattern.ts';
import { upForShrinkage, upToWhole } from '../round.ts';
import { adviseDepth, adviseOver, adviseSideways } from '../top-treatment/advise-top.ts';
import { countBoardBrackets, coverBoard, coverPiece } from '../top-treatment/cover-board.ts';
import type { BoardCover } from '../top-treatment/cover-board.ts';
import { cutWelt } from '../top-treatment/cut-welt.ts';
import { finishTop } from '../top-treatment/finish-top.ts';
import { halvesOf } from '../top-treatment/laid-widths.ts';
import { addPieces } from '../top-treatment/lay-pieces.ts';
import { layFlat } from '../top-treatment/lay-flat.ts';
import { layWidths } from '../top-treatment/lay-widths.ts';
import type { LaidLayer } from '../top-treatment/lay-widths.ts';
import { seamWidths } from '../top-treatment/seam-widths.ts';
import type { TopEstimate } from '../top-treatment/top-estimate.ts';
import { addUp } from '../top-treatment/work-parcel.ts';
import { boxOf, faceCut, finishedWidthOf, flatFace, layerCut, weltAddends } from './measure-cornice.ts';
import type { CorniceBox, CorniceCut } from './measure-cornice.ts';
import { workCornice } from './work-cornice.ts';

/** A rectangle of cloth to be cut, seams closed. */
export interface CutSize {
  readonly width: Ticks;
  readonly length: Ticks;
  /** Widths that stay whole in the middle and the cut width of each side piece; null when sideways. */
  readonly seamed: { readonly whole: number; readonly side: number } | null;
}

export interface CorniceSheet {
  readonly box: CorniceBox;
  readonly face: CutSize;
  /** Layers behind, in order, room to street. */
  readonly layers: readonly CutSize[];
  /** Padding over face and ends. */
  readonly padding: { readonly width: Ticks; readonly height: Ticks };
  readonly welts: { readonly top: Ticks | null; readonly bottom: Ticks | null };
  readonly cover: BoardCover | null;
}

/** The take-off of one cornice under one stack. `checkCornice` must have found no fault. */
export function estimateCornice(
  cornice: CorniceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: EstimateGiven,
): TopEstimate<CorniceSheet> {
  const { say, massOf } = given;
  const { practice, quantity } = cornice;
  const box = boxOf(cornice);
  const laid = [face, ...behind].map((cloth, index) =>
    layCut(cornice, cloth, index, cloth.role === 'face' ? faceCut(cornice) : layerCut(cornice, cloth), massOf),
  );
  const [first] = laid;
  if (!first) throw new Error('a cornice has a face');
  const cover = coverBoard(box.dustBoard, practice.cornice, face, behind);
  const runs = weltRuns(cornice);
  let parcels = laid.map(({ parcel }) => parcel);
  if (cover) parcels = addPieces(parcels, cover.cloth, [coverPiece(cover, quantity)]);
  const welts = weltCloths(cornice, runs, given.clothOf);
  for (const { cloth, run } of welts) parcels = addPieces(parcels, cloth, [cutWelt(run, cloth, practice.cornice)]);
  const taken = finishTop(parcels, practice, say, massOf);
  const finished = { width: finishedWidthOf(cornice), length: cornice.finishedLength };
  const sheet: CorniceSheet = {
    box,
    face: sizeOf(first, faceCut(cornice)),
    layers: laid.slice(1).map((each, index) => {
      const layer = behind[index];
      return sizeOf(each, layer ? layerCut(cornice, layer) : faceCut(cornice));
    }),
    padding: { width: finished.width, height: finished.length },
    welts: runs,
    cover,
  };
  return {
    finished,
    halfWidths: halvesOf(first.widths),
    fullnessMade: null,
    madeWidth: finished.width,
    ...taken.figures,
    pleats: null,
    stackback: null,
    seamsLineUp: behind.every((layer) => layer.usableWidth === face.usableWidth),
    parts: partsOf(cornice, sheet),
    labour: labourOf(cornice, face, behind, taken.main, given.billableWidth),
    offer: null,
    sheet,
    advice: adviseCornice(cornice, face, first, behind, given),
    working: [...workCornice(cornice, [face, ...behind], laid, sheet, welts, say), ...taken.working],
  };
}

function layCut(
  cornice: CorniceTreatment,
  cloth: Cloth,
  layer: number,
  cut: CorniceCut,
  massOf: (cloth: Cloth) => number,
): LaidLayer {
  const { practice, quantity } = cornice;
  const asked = ticks(addUp(cut.length));
  const plain = layer === 0 ? upForShrinkage(asked, practice.shrinkage) : asked;
  const run = ticks(addUp(cut.width));
  const name = layer === 0 ? 'cornice' : cloth.role;
  const starts = layer === 0 ? (placePattern(cornice, cloth, true)?.phase ?? null) : null;
  const upright =
    layer === 0
      ? layFlat(flatFace(cornice), cloth, cornice.pattern, practice.seam)
      : { by: 'seams' as const, total: run, seamed: seamWidths(run, cloth.usableWidth, practice.seam) };
  const of = { name, layer, plain, upright, run, count: quantity, starts };
  const laid = layWidths(cloth, of, practice);
  return { ...laid, parcel: { ...laid.parcel, grams: areaOf(run, asked) * massOf(cloth) * quantity } };
}

function sizeOf({ plain, widths }: LaidLayer, cut: CorniceCut): CutSize {
  const seamed = widths.by === 'seams' ? { whole: widths.seamed.whole, side: widths.seamed.side } : null;
  return { width: ticks(addUp(cut.width)), length: plain, seamed };
}

/** Welt of one cornice; null along an edge without one. */
function weltRuns(cornice: CorniceTreatment): CorniceSheet['welts'] {
  const run = (edge: 'top' | 'bottom'): Ticks | null =>
    cornice.welts[edge] === null ? null : ticks(addUp(weltAddends(cornice, edge)));
  return { top: run('top'), bottom: run('bottom') };
}

/** Welts by their cloth: two edges of one cloth are cut together. */
function weltCloths(
  cornice: CorniceTreatment,
  runs: CorniceSheet['welts'],
  clothOf: (id: string) => Cloth | null,
): { readonly cloth: Cloth; readonly run: Ticks }[] {
  const byCloth = new Map<string, number>();
  for (const edge of ['top', 'bottom'] as const) {
    const id = cornice.welts[edge];
    if (id !== null) byCloth.set(id, (byCloth.get(id) ?? 0) + (runs[edge] ?? 0) * cornice.quantity);
  }
  return [...byCloth].flatMap(([id, run]) => {
    const cloth = clothOf(id);
    return cloth ? [{ cloth, run: ticks(run) }] : [];
  });
}

function partsOf(cornice: CorniceTreatment, { box, welts, padding }: CorniceSheet): Part[] {
  const { quantity, practice } = cornice;
  const boards = box.face.width + box.ends.left + box.ends.right + box.dustBoard.length;
  const welt = (welts.top ?? 0) + (welts.bottom ?? 0);
  return [
    { part: 'board', length: boards * quantity },
    { part: 'bracket', count: countBoardBrackets(cornice.width, practice) * quantity },
    { part: 'padding', length: padding.width * quantity },
    ...(welt > 0 ? [{ part: 'welt', length: welt * quantity } as const] : []),
  ];
}

function labourOf(
  cornice: CorniceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  line: TakeoffLine,
  billableWidth: Ticks,
): Labour[] {
  const { quantity } = cornice;
  const widths = billableWidths(face, line, billableWidth) * quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'cornicePerFoot', count: upToWhole(cornice.width, 12 * TICKS_PER_INCH) * quantity },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: widths * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths }] : []),
    { work: 'installPerBoard', count: quantity },
  ];
}

function adviseCornice(
  cornice: CorniceTreatment,
  face: FaceCloth,
  laid: LaidLayer,
  behind: readonly BackCloth[],
  { say }: EstimateGiven,
): Advice[] {
  const { practice } = cornice;
  return [
    ...adviseDepth('cornice', cornice.finishedLength, cornice.dropOf, practice.cornice, say),
    ...adviseSideways(face, laid, say),
    ...adviseOver(cornice.returns, cornice.over, practice.cornice.overClearance, say),
    ...(behind.some((layer) => layer.role === 'lining')
      ? []
      : [
          {
            rule: 'cornice-unlined',
            level: 'note' as const,
            says: 'Nothing lines the inside of the box: bare board shows from the street and from below.',
            rests: 'common practice: a cornice is lined',
          },
        ]),
  ];
}
