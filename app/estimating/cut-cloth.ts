/** Cut lengths, the handbook's length, the treatment laid out alone, and the order: for one cloth of one treatment. */
import type { Cloth, Repeat } from '#shared/cloth.ts';
import { TICKS_PER_YARD, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import { halvesUpToTick, upToOrderStep, upToWhole, upToWholeRepeat } from './round.ts';

export interface Cut {
  readonly plain: Ticks;
  readonly length: Ticks;
  /** Null without a repeat, or where a repeat is added instead of rounding. */
  readonly repeats: number | null;
}

/** From the plain cut to the cut length: up to whole repeats, or one repeat added. */
export function cutToRepeat(plain: Ticks, repeat: Repeat | null, rule: Practice['repeatRule']): Cut {
  if (!repeat) return { plain, length: plain, repeats: null };
  if (rule === 'add-one') return { plain, length: ticks(plain + repeat.vertical), repeats: null };
  const length = upToWholeRepeat(plain, repeat.vertical);
  return { plain, length, repeats: length / repeat.vertical };
}

/**
 * All cuts end to end. Half-drop by the printed rule (Encyclopaedia of Curtains, p. 119): each cut half a repeat
 * longer, and one further repeat when the cuts are odd.
 */
export function handbookLength(cut: Cut, cuts: number, repeat: Repeat | null): Ticks {
  if (repeat?.match !== 'half-drop') return ticks(cuts * cut.length);
  const odd = cuts % 2 === 1 ? 2 * repeat.vertical : 0;
  return halvesUpToTick(cuts * (2 * cut.length + repeat.vertical) + odd);
}

/** Cuts of each phase of a half-drop: widths alternate from the leading edge; halves of a split cut share a phase. */
export interface Phases {
  readonly level: number;
  readonly dropped: number;
}

/**
 * The phases of `quantity` treatments of `pieces` pieces with `halves` half widths in all. Both leading edges start
 * level; the half width of a piece is its last, at the return.
 */
export function countPhases(halves: number, pieces: number, quantity: number): Phases {
  const each = halves / pieces;
  const whole = (each - (each % 2)) / 2;
  const droppedEach = (whole - (whole % 2)) / 2;
  const levelEach = whole - droppedEach;
  const split = each % 2 === 1 ? upToWhole(pieces * quantity, 2) : 0;
  const lastIsLevel = whole % 2 === 0;
  return {
    level: levelEach * pieces * quantity + (lastIsLevel ? split : 0),
    dropped: droppedEach * pieces * quantity + (lastIsLevel ? 0 : split),
  };
}

/**
 * The treatment laid out alone, the first cut in phase at 0. Without a repeat or straight: every cut but the last takes
 * its cut length. Half-drop: the waste between two cuts is the way to the next right phase, so the better of alternating
 * and grouped is taken; any mixture lies between the two, so this is the best order.
 */
export function planAlone(cut: Cut, cuts: number, repeat: Repeat | null, phases: Phases): Ticks {
  if (cuts === 0) return ticks(0);
  if (repeat?.match !== 'half-drop') return ticks((cuts - 1) * cut.length + cut.plain);
  const { changes, same2, other2 } = orderHalfDrop(cut, cuts, repeat, phases);
  return halvesUpToTick(changes * other2 + (cuts - 1 - changes) * same2 + 2 * cut.plain);
}

/** The better order of a half-drop's cuts: how often the phase changes, and the way to the next cut, twice, in ticks. */
export interface HalfDropOrder {
  readonly changes: number;
  readonly same2: number;
  readonly other2: number;
}

export function orderHalfDrop(cut: Cut, cuts: number, { vertical: size }: Repeat, phases: Phases): HalfDropOrder {
  const same2 = 2 * upToWhole(cut.plain, size) * size;
  const other2 = (2 * Math.max(0, upToWhole(2 * cut.plain - size, 2 * size)) + 1) * size;
  const { level, dropped } = phases;
  const fewer = Math.min(level, dropped);
  const mostChanges = level === dropped ? Math.max(0, 2 * fewer - 1) : 2 * fewer;
  const leastChanges = Math.min(1, fewer);
  const length2 = (changes: number): number => changes * other2 + (cuts - 1 - changes) * same2;
  return { changes: length2(mostChanges) < length2(leastChanges) ? mostChanges : leastChanges, same2, other2 };
}

/** Extra on the order, once for each piece of cloth supplied: no bolt starts at our place in the repeat. */
export function orderExtra(cloth: Pick<Cloth, 'repeat'>, rule: Practice['orderExtra']): Ticks {
  const repeat = cloth.repeat && !cloth.repeat.cutOnRepeat ? cloth.repeat.vertical : ticks(0);
  switch (rule) {
    case 'none':
      return ticks(0);
    case 'one-repeat':
      return repeat;
    case 'repeat-or-yard':
      return ticks(Math.max(repeat, TICKS_PER_YARD));
  }
}

/** Up to the supplier's step, else the practice's; never less than the supplier sells. */
export function orderLength(cloth: Pick<Cloth, 'supply'>, base: Ticks, extra: Ticks, orderStep: Ticks): Ticks {
  const { supply } = cloth;
  const wanted = upToOrderStep(ticks(base + extra), supply?.orderStep ?? orderStep);
  return ticks(Math.max(wanted, supply?.leastOrder ?? 0));
}
