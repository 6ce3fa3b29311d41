/** One cloth of a shower curtain laid out: in widths, or sideways without a seam; the liner with it where it is the same. */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { ShowerCurtainTreatment } from '#shared/treatments/shower-curtain.ts';
import { areaOf } from '#shared/weight.ts';
import { countPhases } from '../cut-cloth.ts';
import type { CutGroup } from '../cut-group.ts';
import { layRows, layRun, lineOfRows, lineOfRun } from '../lay-rows.ts';
import type { CutRow, LaidRows } from '../lay-rows.ts';
import { placePattern } from '../place-pattern.ts';
import { upToWhole } from '../round.ts';
import { countShowerWidths, curtainPieces } from './count-shower-widths.ts';

/** What is cut from a cloth: the curtain, a lining, or a liner. */
export interface ShowerPart {
  readonly name: 'curtain' | 'lining' | 'interlining' | 'liner';
  /** Flat width of all pieces, and cut length as it hangs and before any repeat. */
  readonly width: Ticks;
  readonly asked: Ticks;
  readonly plain: Ticks;
}

export interface ShowerCloth {
  readonly cloth: Cloth;
  readonly layer: number;
  /** The first is what the layer is for; a liner of the same cloth comes after it. */
  readonly parts: readonly ShowerPart[];
}

export interface LaidShower {
  readonly line: TakeoffLine;
  /** Of the first part of one curtain; null sideways. */
  readonly widths: number | null;
  readonly rows: LaidRows | null;
  readonly cuts: readonly CutGroup[];
}

export function layShower(curtain: ShowerCurtainTreatment, given: ShowerCloth, mass: number): LaidShower {
  const { quantity, practice } = curtain;
  const { cloth, layer, parts } = given;
  const rows = layRows(
    cloth,
    parts.map((part, index) => rowOf(curtain, cloth, part, index === 0)),
    practice,
  );
  const grams = parts.reduce((sum, part) => sum + areaOf(part.width, part.asked), 0) * mass * quantity;
  const fits = cloth.railroad && parts.every((part) => part.plain <= cloth.usableWidth);
  const run = ticks(parts.reduce((sum, part) => sum + part.width, 0));
  // Sideways has no seams, so it also wins where both take the same.
  if (fits && run * quantity <= rows.plan) {
    const laid = layRun(cloth, run, quantity, practice);
    const pieces = curtainPieces(curtain) * parts.length * quantity;
    const across = parts[0]?.plain ?? ticks(0);
    return {
      line: lineOfRun(cloth, layer, laid, { across, run, pieces, grams, fullnessMade: null }),
      widths: null,
      rows: null,
      cuts: parts.map((part) => ({
        name: `${part.name}, sideways`,
        cloth: cloth.id,
        layer,
        count: curtainPieces(curtain) * quantity,
        length: ticks(upToWhole(part.width, curtainPieces(curtain))),
        width: part.plain,
        phase: 'any',
        turnable: false,
      })),
    };
  }
  const first = parts[0];
  const widths = first ? widthsOf(curtain, cloth, first) : 0;
  return {
    line: lineOfRows(cloth, layer, rows, { halfWidths: 2 * widths, grams, fullnessMade: null }),
    widths,
    rows,
    cuts: rows.rows.flatMap((row) => groupsOf(curtain, given, row)),
  };
}

function widthsOf(curtain: ShowerCurtainTreatment, cloth: Cloth, part: ShowerPart): number {
  return countShowerWidths(curtainPieces(curtain), part.width, cloth.usableWidth, curtain.practice.seam);
}

/** A liner hangs unseen behind the curtain: it takes no notice of a pattern. */
function rowOf(curtain: ShowerCurtainTreatment, cloth: Cloth, part: ShowerPart, first: boolean): CutRow {
  const widths = widthsOf(curtain, cloth, part);
  const { quantity } = curtain;
  const halfDrop = cloth.repeat?.match === 'half-drop' && first;
  const phases = countPhases(2 * widths, curtainPieces(curtain), quantity);
  return {
    name: part.name,
    plain: part.plain,
    cuts: widths * quantity,
    dropped: halfDrop ? phases.dropped : 0,
    matched: first,
  };
}

function groupsOf(curtain: ShowerCurtainTreatment, given: ShowerCloth, row: CutRow): CutGroup[] {
  const { cloth, layer } = given;
  const base = { cloth: cloth.id, layer, length: row.plain, width: null, turnable: false };
  if (cloth.repeat === null || !row.matched) return [{ ...base, name: row.name, count: row.cuts, phase: 'any' }];
  const placed = layer === 0 ? placePattern(curtain, cloth, true) : null;
  if (cloth.repeat.match === 'straight')
    return [{ ...base, name: row.name, count: row.cuts, phase: placed?.phase ?? null }];
  const { vertical } = cloth.repeat;
  const starts = placed?.phase ?? 0;
  const groups: CutGroup[] = [
    { ...base, name: `${row.name}, level`, count: row.cuts - row.dropped, phase: starts },
    {
      ...{ ...base, name: `${row.name}, dropped`, count: row.dropped },
      phase: (starts + upToWhole(vertical, 2)) % vertical,
    },
  ];
  return groups.filter((group) => group.count > 0);
}
