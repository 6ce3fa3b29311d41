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
import { cutToRepeat, handbookLength, planAlone } from './cut-cloth.ts';
import type { CutKinds, LaidLength } from './lay-on-pieces.ts';
import { alikeCuts, orderCloth } from './order-cloth.ts';
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
  /** Where in the repeat it begins, where its pattern is placed; else wherever the first row did. */
  readonly starts?: Ticks;
}

export interface LaidRow extends CutRow {
  readonly cut: Cut;
}

/** The order, and its pieces where it is more than a whole one. */
type Ordered = Pick<TakeoffLine, 'order' | 'pieces'>;

export interface LaidRows extends LaidLength, Ordered {
  readonly rows: readonly LaidRow[];
  readonly cuts: number;
}

type Rules = Pick<Practice, 'repeatRule' | 'orderFrom' | 'orderExtra' | 'orderStep'>;

/** Rows laid one after another; those without cuts are left out. */
export function layRows(cloth: Cloth, asked: readonly CutRow[], rules: Rules): LaidRows {
  const rows = asked
    .filter((row) => row.cuts > 0)
    .map((row) => ({ ...row, cut: cutToRepeat(row.plain, row.matched ? cloth.repeat : null, rules.repeatRule) }));
  const laid = measureRows(cloth, rows);
  return {
    rows,
    cuts: rows.reduce((sum, row) => sum + row.cuts, 0),
    ...laid,
    ...orderCloth(cloth, laid, rules, kindsOf(cloth, rows)),
  };
}

/**
 * The first in phase at 0. A matched row begins in phase, so the rows before it run on to whole repeats; the one with the
 * longest tail comes last, hidden pieces after it.
 */
function measureRows(cloth: Cloth, rows: readonly LaidRow[]): LaidLength {
  const repeatOf = (row: LaidRow) => (row.matched ? cloth.repeat : null);
  const handbook = rows.reduce((sum, row) => sum + handbookLength(row.cut, row.cuts, repeatOf(row)), 0);
  if (rows.some(({ starts }) => starts !== undefined)) return layPlaced(cloth, rows, handbook);
  let laid = 0;
  let longestTail = 0;
  for (const row of rows) {
    const repeat = repeatOf(row);
    const alone = planAlone(row.cut, row.cuts, repeat, { level: row.cuts - row.dropped, dropped: row.dropped });
    const whole = repeat === null ? alone : endInPhase(alone, row.cut, repeat.vertical, repeat.match);
    laid += whole;
    longestTail = Math.max(longestTail, whole - alone);
  }
  return { handbook: ticks(handbook), plan: ticks(Math.min(laid - longestTail, handbook)) };
}

/** Level and dropped cuts of every row, two kinds each. */
function kindsOf(cloth: Cloth, rows: readonly LaidRow[]): CutKinds {
  return {
    counts: rows.flatMap(({ cuts, dropped }) => [cuts - dropped, dropped]),
    lay: (counts) => {
      const own = rows.map((row, index) => {
        const dropped = counts[2 * index + 1] ?? 0;
        return { ...row, cuts: (counts[2 * index] ?? 0) + dropped, dropped };
      });
      return measureRows(
        cloth,
        own.filter(({ cuts }) => cuts > 0),
      );
    },
  };
}

/**
 * Rows whose pattern is placed begin each at its own place in the repeat: what lies between the end of one and the start of
 * the next is waste of the layout. The better of both orders; hidden pieces fill in after them.
 */
function layPlaced(cloth: Cloth, rows: readonly LaidRow[], byChart: number): LaidLength {
  const matched = rows.filter((row) => row.matched);
  const hidden = rows.filter((row) => !row.matched);
  const after = hidden.reduce((sum, row) => sum + row.cuts * row.plain, 0);
  const plan = ticks(Math.min(...[matched, [...matched].reverse()].map((order) => runOn(cloth, order))) + after);
  return { handbook: ticks(Math.max(byChart, plan)), plan };
}

/** Length of matched rows in this order, each begun at the first right place after the one before it. */
function runOn(cloth: Cloth, rows: readonly LaidRow[]): number {
  const size = cloth.repeat?.vertical ?? 0;
  const first = rows[0]?.starts ?? 0;
  return rows.reduce((end, row) => {
    const alone = planAlone(row.cut, row.cuts, cloth.repeat, { level: row.cuts - row.dropped, dropped: row.dropped });
    if (size === 0 || end === 0) return end + alone;
    const from = ((row.starts ?? first) - first + size) % size;
    return upToWhole(Math.max(0, end - from), size) * size + from + alone;
  }, 0);
}

/** Where the next matched piece may begin: the last cut run out to its cut length, or to the next whole repeat. */
function endInPhase(alone: Ticks, cut: Cut, repeat: Ticks, match: 'straight' | 'half-drop'): number {
  return match === 'straight' ? alone - cut.plain + cut.length : upToWhole(alone, repeat) * repeat;
}

/** Cloth used sideways: `runs` lengths of `each`, which have no cuts to match along them. */
export function layRun(cloth: Cloth, each: Ticks, runs: number, rules: Rules): LaidLength & Ordered {
  const lay = (count: number): LaidLength => {
    const length = ticks(count * each);
    return { handbook: length, plan: length };
  };
  const laid = lay(runs);
  return { ...laid, ...orderCloth(cloth, laid, rules, alikeCuts(runs, lay)) };
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
    ...orderedOf(laid),
    ...made,
  };
}

/** The take-off of a cloth used sideways: `run` of one treatment, `across` the width that the pieces take. */
export function lineOfRun(
  cloth: Cloth,
  layer: number,
  laid: LaidLength & Ordered,
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
    ...orderedOf(laid),
    grams: made.grams,
    fullnessMade: made.fullnessMade,
  };
}

function orderedOf({ order, pieces }: Ordered): Ordered {
  return pieces === undefined ? { order } : { order, pieces };
}
