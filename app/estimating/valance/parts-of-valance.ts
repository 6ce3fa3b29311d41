/** Board or rod, fixings, tapes, rings and welt cord of a valance, and its labour: each for all quantity. */
import { isBlackout } from '#shared/cloth.ts';
import type { BackCloth, FaceCloth } from '#shared/cloth.ts';
import { TICKS_PER_INCH } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Part } from '#shared/parts.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { billableWidths } from '../billable-widths.ts';
import type { Labour } from '../estimate.ts';
import { halvesUpToTick, toNearestTick, upToWhole } from '../round.ts';
import { countBoardBrackets } from '../top-treatment/cover-board.ts';
import type { LaidValance } from './lay-valance.ts';
import { finishedWidthOf, flatHem } from './measure-valance.ts';
import { markScallops } from './sheet-valance.ts';
import type { ValanceSheet } from './sheet-valance.ts';

/** A curve this flat is longer than its chord by nearly this: √(chord² + 16/3 depth²) (Huygens, from memory). */
const ARC_OF_DEPTH = 16 / 3;

/** Welt of one valance along its lower edge, both ends turned in; 0 without one. */
export function weltRun(valance: ValanceTreatment, made2: number): Ticks {
  if (valance.welt === null) return toNearestTick(0);
  const { weltEnds } = valance.practice.valance;
  const flat = isFull(valance) ? made2 / 2 : flatHem(valance);
  const scallops = markScallops(valance, made2);
  if (!scallops) return toNearestTick(flat + weltEnds);
  const arc = Math.sqrt(scallops.flatWidth ** 2 + ARC_OF_DEPTH * scallops.depth ** 2);
  const straight = isFull(valance) ? 0 : valance.returns.left + valance.returns.right;
  return toNearestTick(scallops.count * arc + straight + weltEnds);
}

export function partsOfValance(valance: ValanceTreatment, laid: LaidValance, sheet: ValanceSheet): Part[] {
  const { quantity, hang, practice } = valance;
  const making = valance.practice.valance;
  const width = finishedWidthOf(valance);
  const welt = weltRun(valance, laid.made2);
  const onBoard: Part[] =
    hang.by === 'board'
      ? [
          { part: 'board', length: valance.width * quantity },
          { part: 'bracket', count: countBoardBrackets(valance.width, practice) * quantity },
          ...(making.boardFixing === 'hook-tape' ? [{ part: 'hookTape', length: width * quantity } as const] : []),
          ...(isFull(valance) ? [{ part: 'headingTape', length: halvesUpToTick(laid.made2) * quantity } as const] : []),
        ]
      : [
          { part: 'rod', length: width * quantity },
          { part: 'bracket', count: countBoardBrackets(valance.width, practice) * quantity },
        ];
  const stiffened = valance.style === 'tailored' && valance.stiffened;
  const rings = sheet.puffs ? sheet.puffs.columns.length * sheet.puffs.rows : 0;
  const cord = sheet.puffs ? sheet.puffs.columns.length * making.balloonTakeUp : 0;
  return [
    ...onBoard,
    ...(stiffened ? [{ part: 'headingTape', length: width * quantity } as const] : []),
    ...(rings > 0
      ? [
          { part: 'shadeRing', count: rings * quantity } as const,
          { part: 'shadeCord', length: cord * quantity } as const,
        ]
      : []),
    ...(welt > 0 ? [{ part: 'welt', length: welt * quantity } as const] : []),
  ];
}

export function labourOfValance(
  valance: ValanceTreatment,
  face: FaceCloth,
  behind: readonly BackCloth[],
  line: TakeoffLine,
  billableWidth: Ticks,
): Labour[] {
  const { quantity } = valance;
  const feet = upToWhole(finishedWidthOf(valance), 12 * TICKS_PER_INCH) * quantity;
  const widths = billableWidths(face, line, billableWidth) * quantity;
  const interlinings = behind.filter((layer) => layer.role === 'interlining').length;
  return [
    { work: 'valancePerFoot', count: feet },
    ...(interlinings > 0 ? [{ work: 'interlining' as const, widths: widths * interlinings }] : []),
    ...(behind.some(isBlackout) ? [{ work: 'blackout' as const, widths }] : []),
    { work: valance.hang.by === 'board' ? 'installPerBoard' : 'installPerRod', count: quantity },
  ];
}
