/**
 * Several pieces of one cloth in one treatment: every row of full-width cuts is reckoned by itself, summed, and only then
 * rounded to an order.
 */
import type { Cloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine } from '#shared/result.ts';
import type { Cut } from './cut-cloth.ts';
import { cutToRepeat, handbookLength, orderExtra, orderLength, planAlone } from './cut-cloth.ts';
import { upToWhole } from './round.ts';

/** Full-width cuts of one plain length, of all quantity. */
export interface CutRow {
  readonly name: string;
  readonly plain: Ticks;
  readonly cuts: number;
  /** Of these, cuts that begin half a repeat lower: in half-drop cloth alone. */
  readonly dropped: number;
  /** False for hidden pieces, which begin anywhere in the pattern. */
  readonly matched: boolean;
}

export interface LaidRow extends CutRow {
  readonly cut: Cut;
}

export interface LaidRows {
  readonly rows: readonly LaidRow[];
  readonly cuts: number;
  readonly handbook: Ticks;
  readonly plan: Ticks;
  readonly order: Ticks;
}

type Rules = Pick<Practice, 'repeatRule' | 'orderFrom' | 'orderExtra' | 'orderStep'>;

/**
 * Rows laid one after another, the first in phase at 0. A matched row begins in phase, so the rows before it run on to
 * whole repeats; the one with the longest tail comes last, hidden pieces after it. Rows without cuts are left out.
 */
export function layRows(cloth: Cloth, asked: readonly CutRow[], rules: Rules): LaidRows {
  const rows = asked
    .filter((row) => row.cuts > 0)
    .map((row) => ({ ...row, cut: cutToRepeat(row.plain, row.matched ? cloth.repeat : null, rules.repeatRule) }));
  const repeatOf = (row: LaidRow) => (row.matched ? cloth.repeat : null);
  const handbook = rows.reduce((sum, row) => sum + handbookLength(row.cut, row.cuts, repeatOf(row)), 0);
  let laid = 0;
  let longestTail = 0;
  for (const row of rows) {
    const repeat = repeatOf(row);
    const alone = planAlone(row.cut, row.cuts, repeat, { level: row.cuts - row.dropped, dropped: row.dropped });
    const whole = repeat === null ? alone : endInPhase(alone, row.cut, repeat.vertical, repeat.match);
    laid += whole;
    longestTail = Math.max(longestTail, whole - alone);
  }
  const plan = ticks(Math.min(laid - longestTail, handbook));
  return {
    rows,
    cuts: rows.reduce((sum, row) => sum + row.cuts, 0),
    handbook: ticks(handbook),
    plan,
    order: orderOf(cloth, plan, ticks(handbook), rules),
  };
}

/** Where the next matched piece may begin: the last cut run out to its cut length, or to the next whole repeat. */
function endInPhase(alone: Ticks, cut: Cut, repeat: Ticks, match: 'straight' | 'half-drop'): number {
  return match === 'straight' ? alone - cut.plain + cut.length : upToWhole(alone, repeat) * repeat;
}

/** A run of cloth used sideways, of all quantity: it has no cuts to match along its length. */
export function layRun(cloth: Cloth, run: Ticks, rules: Rules): Pick<LaidRows, 'handbook' | 'plan' | 'order'> {
  return { handbook: run, plan: run, order: orderOf(cloth, run, run, rules) };
}

function orderOf(cloth: Cloth, plan: Ticks, handbook: Ticks, rules: Rules): Ticks {
  const base = rules.orderFrom === 'plan' ? plan : handbook;
  return orderLength(cloth, base, orderExtra(cloth, rules.orderExtra), rules.orderStep);
}

/** The take-off of a cloth in upright cuts: `cutLength` is that of the first row, its main piece. */
export function lineOfRows(
  cloth: Cloth,
  layer: number,
  laid: LaidRows,
  made: { readonly halfWidths: number; readonly grams: number; readonly fullnessMade: number | null },
): TakeoffLine {
  const main = laid.rows[0]?.cut ?? { plain: ticks(0), length: ticks(0), repeats: null };
  return {
    cloth: cloth.id,
    role: cloth.role,
    layer,
    railroaded: false,
    cuts: laid.cuts,
    plainCut: main.plain,
    cutLength: main.length,
    repeatsPerCut: main.repeats,
    handbook: laid.handbook,
    plan: laid.plan,
    order: laid.order,
    ...made,
  };
}

/** The take-off of a cloth used sideways: `run` of one treatment, `across` the width that the pieces take. */
export function lineOfRun(
  cloth: Cloth,
  layer: number,
  laid: Pick<LaidRows, 'handbook' | 'plan' | 'order'>,
  made: {
    readonly across: Ticks;
    readonly run: Ticks;
    readonly pieces: number;
    readonly grams: number;
    readonly fullnessMade: number | null;
  },
): TakeoffLine {
  return {
    cloth: cloth.id,
    role: cloth.role,
    layer,
    halfWidths: null,
    railroaded: true,
    cuts: made.pieces,
    plainCut: made.across,
    cutLength: made.run,
    repeatsPerCut: null,
    handbook: laid.handbook,
    plan: laid.plan,
    order: laid.order,
    grams: made.grams,
    fullnessMade: made.fullnessMade,
  };
}
