/** A Roman shade, from measurement to order, each step with its working, and the sheet that its drawing is made from. */
import type { BackCloth, Cloth, FaceCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import { ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import type { CutGroup } from '../cut-group.ts';
import type { Estimate } from '../estimate.ts';
import type { Say } from '../say.ts';
import { cautionOf } from './cord-caution.ts';
import { cutFace, cutLayer, valanceWidth } from './cut-shade.ts';
import type { ShadeCut, ShadePiece } from './cut-shade.ts';
import { layShade } from './lay-shade.ts';
import type { LaidShade } from './lay-shade.ts';
import { labourOfShade, partsOfShade } from './parts-of-shade.ts';
import { placeColumns, placeRows } from './place-rings.ts';
import { measureCords, raisedStack } from './raise-shade.ts';
import type { LayerSheet, PieceSheet, RomanShadeSheet } from './roman-shade-sheet.ts';
import { sizeShade } from './size-shade.ts';
import { warnRomanShade } from './warn-roman-shade.ts';
import { warnMotor } from './work-motor.ts';
import { workRomanShade } from './work-roman-shade.ts';

export interface RomanShadeEstimate extends Estimate {
  readonly sheet: RomanShadeSheet;
  readonly cuts: readonly CutGroup[];
}

/**
 * The take-off of one shade under one stack. `massOf` gives grams a square metre of each cloth, known or typical.
 * `checkRomanShade` must have found no fault.
 */
export function estimateRomanShade(
  shade: RomanShadeTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  given: { readonly massOf: (cloth: Cloth) => number; readonly say: Say; readonly billableWidth: Ticks },
): RomanShadeEstimate {
  const { massOf, say } = given;
  const size = sizeShade(shade);
  const rows = placeRows(shade, size);
  const stack = raisedStack(shade, rows, size.length, behind);
  const cuts = [
    cutFace(shade, size, face, behind.length > 0, stack),
    ...behind.map((layer, index) => cutLayer(shade, size, layer, index + 1)),
  ];
  const laid = cuts.map((cut) => layShade(shade, cut, massOf(cut.cloth)));
  const takeoff = laid.map((each) => each.line);
  const layers = cuts.map((cut, index) => sheetOfLayer(cut, laid[index]));
  // Columns stand on seams; a face that runs sideways has none.
  const seams = layers[0]?.shade.seams ?? [];
  const columns = placeColumns(shade, size, seams);
  const fullness = shade.style === 'soft-fold' ? shade.practice.romanShade.softFoldFullness / 1000 : 1;
  const sheet = {
    kind: 'roman-shade' as const,
    style: shade.style,
    finished: size,
    layers,
    rings: {
      ...rows,
      rule: shade.practice.romanShade.rowRule,
      columns,
      count: rows.sewn * columns.length,
      clothBetween: rows.spacing * fullness,
    },
    ribs: shade.ribs === 'rows' ? rows.heights : [],
    bottomBar: shade.style !== 'relaxed',
    raisedStack: stack,
    valance: shade.valance ? { depth: shade.valance.depth, width: valanceWidth(shade, size) } : null,
    returns: sheetOfReturns(shade, cuts[0], laid[0]),
    board: { length: size.width, depth: boardDepth(shade) },
    cords: { ...measureCords(shade, size, columns), ...cautionOf(shade.lift) },
  };
  const cutWidth = ticks(size.width + (cuts[0]?.added ?? 0));
  return {
    finished: size,
    halfWidths: takeoff[0]?.halfWidths ?? null,
    fullnessMade: null,
    madeWidth: size.width,
    takeoff,
    grams: takeoff.reduce((sum, line) => sum + line.grams, 0),
    pleats: null,
    stackback: null,
    seamsLineUp: lineUp(layers),
    parts: partsOfShade(shade, sheet),
    labour: labourOfShade(shade, cutWidth, behind, given.billableWidth),
    offer: null,
    working: workRomanShade(shade, sheet, { cuts, laid, behind }, massOf, say),
    sheet: {
      ...sheet,
      warnings: [...warnRomanShade(shade, size, stack, behind, say), ...warnMotor(shade, size.width, columns, say)],
    },
    cuts: laid.flatMap((each) => each.cuts),
  };
}

/** An outside mount's board stands as far out as its returns. */
function boardDepth(shade: RomanShadeTreatment): Ticks {
  return ticks(Math.max(shade.practice.romanShade.boardDepth, shade.returns.left, shade.returns.right));
}

function sheetOfPiece(piece: ShadePiece, railroaded: boolean): PieceSheet {
  const { pieced, plain } = piece;
  const { cutWidth } = pieced;
  if (railroaded) return { cutWidth, cutLength: plain, centres: 1, centre: cutWidth, side: null, seams: [] };
  return {
    cutWidth,
    cutLength: plain,
    centres: pieced.centres,
    centre: pieced.centre,
    side: pieced.side === 0 ? null : pieced.side,
    seams: pieced.seams,
  };
}

function sheetOfLayer(cut: ShadeCut, laid: LaidShade | undefined): LayerSheet {
  const railroaded = laid?.line.railroaded ?? false;
  return {
    cloth: cut.cloth.id,
    layer: cut.layer,
    railroaded,
    shade: sheetOfPiece(cut.shade, railroaded),
    valance: cut.valance ? sheetOfPiece(cut.valance, railroaded) : null,
  };
}

function sheetOfReturns(
  shade: RomanShadeTreatment,
  cut: ShadeCut | undefined,
  laid: LaidShade | undefined,
): RomanShadeSheet['returns'] {
  if (!cut?.returns) return null;
  return {
    ...shade.returns,
    drop: cut.returns.drop,
    cutWidth: cut.returns.width,
    cutLength: cut.returns.plain,
    besideTheShade: laid?.returnsBeside ?? 0,
  };
}

/** Halves of ticks are shared out differently in two cloths; nobody sews to 1/320 mm. */
const SAME_PLACE = 2;

/** True when no layer behind has a seam that is not also one of the face. */
function lineUp(layers: readonly LayerSheet[]): boolean {
  const faceSeams = layers[0]?.shade.seams ?? [];
  const onFace = (seam: Ticks): boolean => faceSeams.some((each) => Math.abs(each - seam) <= SAME_PLACE);
  return layers.slice(1).every((layer) => layer.shade.seams.every(onFace));
}
