/**
 * How high the shade stands when raised, and the cord that raises it. From memory: the rings gather at the top row, each
 * row adds its thickness, and the lowest fold hangs below.
 */
import type { BackCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { RomanShadeTreatment } from '#shared/treatments/roman-shade.ts';
import { upToWhole } from '../round.ts';
import type { RingRows } from './place-rings.ts';
import type { ShadeSize } from './size-shade.ts';

/** Height that one gathered row adds, by what hangs behind the face. */
export function rowThickness(shade: RomanShadeTreatment, behind: readonly BackCloth[]): Ticks {
  const practice = shade.practice.romanShade;
  if (behind.some((layer) => layer.role === 'interlining')) return practice.interlinedStack;
  return behind.length > 0 ? practice.linedStack : practice.unlinedStack;
}

/** Head room, the space under it, the gathered rows, and half a fold of cloth that hangs below; up to a tick. */
export function raisedStack(
  shade: RomanShadeTreatment,
  rows: RingRows,
  length: Ticks,
  behind: readonly BackCloth[],
): Ticks {
  const practice = shade.practice.romanShade;
  const run = length - rows.headRoom;
  const halves = 2 * rows.sewn + 1;
  const fullness = shade.style === 'soft-fold' ? practice.softFoldFullness : 1000;
  const dip = shade.style === 'relaxed' ? practice.relaxedExtra : 0;
  const spaces = upToWhole(run * (2000 + fullness), 1000 * halves);
  return ticks(rows.headRoom + spaces + Math.max(0, rows.sewn - 1) * rowThickness(shade, behind) + dip);
}

export interface ShadeCords {
  /** One for each column, left to right; of one shade. */
  readonly each: readonly Ticks[];
  readonly total: Ticks;
}

/** Each cord is wound above its own column: nothing runs along the board. */
export function isWoundAbove(lift: RomanShadeTreatment['lift']): boolean {
  return lift === 'cordless' || lift === 'motor';
}

/** Up the shade; on to the control end unless each is wound above its own column; and down again where it is pulled. */
export function measureCords(shade: RomanShadeTreatment, size: ShadeSize, columns: readonly Ticks[]): ShadeCords {
  const { cordExtra } = shade.practice.romanShade;
  const each = columns.map((column) => {
    const toControl = shade.control === 'left' ? column : size.width - column;
    const along = isWoundAbove(shade.lift) ? 0 : toControl;
    const pull = shade.lift === 'cords' ? size.length : 0;
    return ticks(size.length + along + pull + cordExtra);
  });
  return { each, total: ticks(each.reduce((sum, cord) => sum + cord, 0)) };
}
