/** A length shared out at the table: whole pieces, the remainder spread over them in eighths of an inch or whole millimetres. */
import { TICKS_PER_INCH, TICKS_PER_MM, ticks } from '#shared/length.ts';
import type { LengthUnit, Ticks } from '#shared/length.ts';
import { downToWhole } from './round-down.ts';

export interface Shares {
  /** Of most pieces. */
  readonly each: Ticks;
  /** So many pieces are one grain wider. */
  readonly wider: number;
  readonly grain: Ticks;
  /** Less than a grain that is left over, eased in by hand. */
  readonly rest: Ticks;
}

/** `each` × count + `wider` × grain + `rest` = total. */
export function shareOut(total: Ticks, count: number, unit: LengthUnit): Shares {
  const grain = ticks(unit === 'in' ? TICKS_PER_INCH / 8 : TICKS_PER_MM);
  const each = ticks(downToWhole(total, count * grain) * grain);
  const over = total - each * count;
  const wider = downToWhole(over, grain);
  return { each, wider, grain, rest: ticks(over - wider * grain) };
}
