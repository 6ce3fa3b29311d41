/** One cloth of a Roman shade laid out: upright in full-width cuts, or sideways where it may run so and takes less. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { areaOf } from '#shared/weight.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { CutGroup } from '../cut-group.ts';
import { layRows, layRun, lineOfRows, lineOfRun } from '../lay-rows.ts';
import type { CutRow, LaidRows } from '../lay-rows.ts';
import { downToWhole } from '../round-down.ts';
import { piecesAcross, widthTaken } from '../pieces-across.ts';
import { halvesUpToTick, upToWhole } from '../round.ts';
import type { ReturnPieces, ShadeCut, ShadePiece } from './cut-shade.ts';
import { cutPieces, shadesAcross } from './piece-width.ts';
import type { PiecedWidth } from './piece-width.ts';

export interface LaidShade {
  readonly line: TakeoffLine;
  /** Null when it runs sideways. */
  readonly rows: LaidRows | null;
  /** Side returns of all quantity that come from cloth beside the shades and add nothing. */
  readonly returnsBeside: number;
  readonly cuts: readonly CutGroup[];
}

export function layShade(shade: RomanShadeTreatment, cut: ShadeCut, mass: number): LaidShade {
  const { quantity, practice } = shade;
  const { cloth } = cut;
  const beside = cut.returns ? fitBeside(cut, cut.returns, quantity) : 0;
  const rows = layRows(cloth, rowsOf(cut, quantity, beside), practice);
  const grams = gramsOf(cut) * mass * quantity;
  const run = runSideways(cut);
  const sideways = run === null ? null : layRun(cloth, run, quantity, practice);
  if (run !== null && sideways && sideways.plan < rows.plan) {
    const pieces = (1 + (cut.valance ? 1 : 0) + (cut.returns?.count ?? 0)) * quantity;
    const line = lineOfRun(cloth, cut.layer, sideways, {
      across: cut.shade.plain,
      run,
      pieces,
      grams,
      fullnessMade: null,
    });
    return { line, rows: null, returnsBeside: 0, cuts: groupsOf(cut, quantity, true) };
  }
  const halfWidths = 2 * cutPieces(cloth, cut.shade.pieced, 1).each;
  const line = lineOfRows(cloth, cut.layer, rows, { halfWidths, grams, fullnessMade: null });
  return { line, rows, returnsBeside: beside, cuts: groupsOf(cut, quantity, false) };
}

function rowsOf(cut: ShadeCut, quantity: number, beside: number): CutRow[] {
  const { cloth, returns } = cut;
  const row = (name: string, piece: ShadePiece): CutRow => {
    const cuts = cutPieces(cloth, piece.pieced, quantity);
    const starts = piece.starts === undefined ? {} : { starts: piece.starts };
    return { name, plain: piece.plain, cuts: cuts.all, dropped: cuts.dropped, matched: true, ...starts };
  };
  return [
    row('shade', cut.shade),
    ...(cut.valance ? [row('valance', cut.valance)] : []),
    ...(returns
      ? [
          {
            name: 'side returns',
            plain: returns.plain,
            cuts: upToWhole(returns.count * quantity - beside, Math.max(1, piecesAcross(cloth, returns.width, true))),
            dropped: 0,
            matched: false,
          },
        ]
      : []),
  ];
}

/** How many returns come out of what the shades leave at the side of their one width; none beside joined ones. */
function fitBeside(cut: ShadeCut, returns: ReturnPieces, quantity: number): number {
  const { cloth } = cut;
  const { pieced, plain } = cut.shade;
  // About a motif the shade lies in the middle of its width: what is left beside it is two strips.
  if (pieced.side !== 0 || pieced.centred !== undefined) return 0;
  const across = Math.max(1, piecesAcross(cloth, pieced.cutWidth));
  const along = downToWhole(plain, returns.plain);
  const beside = (shades: number): number => {
    const left = Math.max(0, cloth.usableWidth - widthTaken(cloth, pieced.cutWidth, shades));
    return along * downToWhole(left, returns.width);
  };
  const full = downToWhole(quantity, across);
  const rest = quantity - full * across;
  const room = full * beside(across) + (rest > 0 ? beside(rest) : 0);
  return Math.min(room, returns.count * quantity);
}

/** The run of one shade sideways; null unless the cloth may run so and every piece fits across it. */
function runSideways(cut: ShadeCut): Ticks | null {
  const { cloth, shade, valance, returns } = cut;
  const across = Math.max(shade.plain, valance?.plain ?? 0, returns?.plain ?? 0);
  if (!cloth.railroad || across > cloth.usableWidth) return null;
  const returnsRun = returns ? returns.count * returns.width : 0;
  return ticks(shade.pieced.cutWidth + (valance?.pieced.cutWidth ?? 0) + returnsRun);
}

/** Square metres of one shade as it hangs times one gram: hems stay in, repeat waste is trimmed off. */
function gramsOf(cut: ShadeCut): number {
  const pieces = [cut.shade, ...(cut.valance ? [cut.valance] : [])];
  const flat = pieces.reduce((sum, piece) => sum + areaOf(piece.pieced.cutWidth, piece.asked), 0);
  return flat + (cut.returns ? cut.returns.count * areaOf(cut.returns.width, cut.returns.asked) : 0);
}

/** Plain cloth that may run sideways has neither nap nor pattern to keep. */
function turnable(cloth: Cloth): boolean {
  return cloth.railroad && cloth.repeat === null;
}

function groupsOf(cut: ShadeCut, quantity: number, sideways: boolean): CutGroup[] {
  const { cloth, layer } = cut;
  const base = { cloth: cloth.id, layer, turnable: turnable(cloth) };
  const pieceGroups = (name: string, piece: ShadePiece): CutGroup[] => {
    const { pieced, plain } = piece;
    // Sideways, the bolt's length runs along the width of the piece, and no seam is needed.
    if (sideways)
      return [{ ...base, name, count: quantity, length: pieced.cutWidth, width: plain, phase: 'any', turnable: false }];
    if (pieced.side === 0)
      return [
        {
          ...{ ...base, name, count: quantity, length: plain, width: widthOfOne(cloth, pieced) },
          phase: cloth.repeat ? (piece.starts ?? null) : 'any',
        },
      ];
    return splitGroups(cut, piece, name, quantity);
  };
  const returns = cut.returns;
  return [
    ...pieceGroups('shade', cut.shade),
    ...(cut.valance ? pieceGroups('valance', cut.valance) : []),
    ...(returns
      ? [
          {
            ...base,
            name: 'side return',
            count: returns.count * quantity,
            length: sideways ? returns.width : returns.plain,
            width: sideways ? returns.plain : returns.width,
            phase: 'any' as const,
          },
        ]
      : []),
  ];
}

/** Of the width of the cloth, so that as many lie side by side as the pattern lets: about a motif they take more than they are wide. */
function widthOfOne(cloth: Cloth, pieced: PiecedWidth): Ticks | null {
  if (pieced.centred === undefined) return pieced.cutWidth;
  const across = shadesAcross(cloth, pieced);
  return across === 1 ? null : ticks(downToWhole(cloth.usableWidth, across));
}

function sideWidth(cloth: Cloth, pieced: PiecedWidth): Ticks | null {
  if (pieced.centred === undefined) return pieced.side;
  return cutPieces(cloth, pieced, 1).each > pieced.centres + 1 ? null : ticks(downToWhole(cloth.usableWidth, 2));
}

/** Centre widths and side pieces, those that are dropped apart from those that are level. */
function splitGroups(cut: ShadeCut, piece: ShadePiece, name: string, quantity: number): CutGroup[] {
  const { cloth, layer } = cut;
  const { pieced, plain } = piece;
  const half = cloth.repeat?.match === 'half-drop' ? halvesUpToTick(cloth.repeat.vertical) : 0;
  const arms = (pieced.centres - 1) / 2;
  const droppedCentres = half === 0 ? 0 : 2 * upToWhole(arms, 2);
  const phase = (dropped: boolean): CutGroup['phase'] => {
    if (cloth.repeat === null) return 'any';
    const starts = piece.starts ?? 0;
    return dropped ? (starts + half) % cloth.repeat.vertical : starts;
  };
  const base = { cloth: cloth.id, layer, length: plain, turnable: turnable(cloth) };
  // Where a motif decides, nothing else fits beside the middle width: the cut has its place across the cloth.
  const width = pieced.centre === cloth.usableWidth || pieced.centred !== undefined ? null : pieced.centre;
  const centres = (count: number, dropped: boolean): CutGroup[] =>
    count === 0 ? [] : [{ ...base, name: `${name}, centre`, count: count * quantity, width, phase: phase(dropped) }];
  return [
    ...centres(pieced.centres - droppedCentres, false),
    ...centres(droppedCentres, true),
    {
      ...base,
      name: `${name}, side piece`,
      count: 2 * quantity,
      width: sideWidth(cloth, pieced),
      phase: phase(half > 0 && (arms + 1) % 2 === 1),
    },
  ];
}
