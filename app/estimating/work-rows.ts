/** The working of a cloth laid in rows: cut lengths to the repeat, the layout and the order, in figures. */
import type { Cloth } from '#shared/cloth.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine, WorkingStep } from '#shared/result.ts';
import { GRAMS_PER_OUNCE } from '#shared/weight.ts';
import type { LaidRow, LaidRows } from './lay-rows.ts';
import { workOrderOf } from './say-order.ts';
import { step } from './say.ts';
import type { Say } from './say.ts';

const GRAMS_PER_POUND = 16 * GRAMS_PER_OUNCE;

/** `ids` begin with `key`: empty for the face, `layer-1-` and so on behind it. */
export function workRows(
  key: string,
  cloth: Cloth,
  laid: LaidRows,
  line: TakeoffLine,
  practice: Practice,
  say: Say,
): WorkingStep[] {
  return [
    ...laid.rows.flatMap((row, index) => workRepeat(index === 0 ? key : `${key}${index}-`, cloth, row, say)),
    step(
      `${key}laid-out`,
      `${cloth.name}, laid out`,
      `${sayRows(cloth, laid, say)}; by the chart ${say.cloth(line.handbook)}`,
      say.cloth(line.plan),
      laid.rows.map((row) => `${row.cuts} full-width ${row.cuts === 1 ? 'cut' : 'cuts'}: ${row.name}`).join('; '),
    ),
    workOrder(key, cloth, line, practice, say),
  ];
}

function workRepeat(key: string, cloth: Cloth, row: LaidRow, say: Say): WorkingStep[] {
  const repeat = row.matched ? cloth.repeat : null;
  if (repeat === null) return [];
  if (row.cut.repeats === null)
    return [
      step(
        `${key}cut-length`,
        `${row.name}, cut length`,
        `${say.length(row.plain)} + ${say.length(repeat.vertical)}`,
        say.length(row.cut.length),
        'practice: one repeat added to each cut',
      ),
    ];
  return [
    step(
      `${key}cut-length`,
      `${row.name}, cut length`,
      `${say.length(row.plain)} ÷ ${say.length(repeat.vertical)} = ${say.number(row.plain / repeat.vertical)}, up to ${row.cut.repeats}; ${row.cut.repeats} × ${say.length(repeat.vertical)}`,
      say.length(row.cut.length),
      `practice: up to whole repeats; ${repeat.match === 'half-drop' ? 'half-drop' : 'straight'} match`,
    ),
  ];
}

function sayRows(cloth: Cloth, laid: LaidRows, say: Say): string {
  const sum = laid.rows.map((row) => `${row.cuts} × ${say.length(row.cut.length)}`).join(' + ');
  if (cloth.repeat === null) return sum;
  if (cloth.repeat.match === 'half-drop')
    return `${sum}, half a repeat between phases in the better of two orders, last tail left off`;
  const tail = laid.handbook - laid.plan;
  return tail === 0 ? sum : `${sum} − ${say.length(tail)}, the tail of the last cut`;
}

/** The order of a line: its base, the extra, the step. */
export function workOrder(
  key: string,
  cloth: Cloth,
  line: Pick<TakeoffLine, 'plan' | 'handbook' | 'order' | 'pieces'>,
  practice: Practice,
  say: Say,
): WorkingStep {
  return workOrderOf(`${key}order`, `${cloth.name}, order`, cloth, line, practice, say);
}

/** A plain cut in figures, made longer for what washing takes. */
export function sayCut(parts: readonly string[], shrinkage: number, say: Say): string {
  const sum = parts.join(' + ');
  return shrinkage > 0 ? `(${sum}) ÷ (1 − ${say.number(shrinkage / 1e6, 6)})` : sum;
}

export function workGrams(
  cloths: readonly Cloth[],
  takeoff: readonly TakeoffLine[],
  massOf: (cloth: Cloth) => number,
  say: Say,
): WorkingStep {
  const grams = takeoff.reduce((sum, line) => sum + line.grams, 0);
  const parts = takeoff.map((line) => {
    const cloth = cloths.find((each) => each.id === line.cloth);
    return `${cloth?.name ?? line.cloth} ${say.number(line.grams, 0)} g${cloth ? ` at ${say.number(massOf(cloth), 0)} g/m²` : ''}`;
  });
  const value =
    say.unit === 'in' ? `${say.number(grams / GRAMS_PER_POUND, 1)} lb` : `${say.number(grams / 1000, 1)} kg`;
  return step('weight', 'weight of cloth', parts.join(' + '), value, 'cut sizes with their hems; hardware left out');
}
