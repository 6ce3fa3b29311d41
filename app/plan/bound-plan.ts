/**
 * How short the order could be at the very best: a proved lower bound on every layout of these cuts on this cloth, made of
 * rows or not. Where a bolt's start is assumed, the bound assumes the same.
 *
 * 1. Lanes. Follow one line along the cloth, `x` from the selvage: the cuts that it meets lie one behind another, so it is a
 *    sequence of cuts, and what it passes between them is waste. The mean over all lines of a cut's length is length x
 *    across / width; the mean of the waste over arc v of the repeat is x(v) >= 0 and balances: what arrives at a place
 *    (cuts that end there, bolts that start there) and is not needed to start cuts there travels on or stops. So x(v) is at
 *    least what the places ahead need more than they have: the largest, over all w, of (starts - ends - bolts' starts) over
 *    the places after v up to w. Hence cloth used >= sum(length x across)/width + sum(arc x need). Counting the start of
 *    every bolt there is, used or not, only lowers it.
 * 2. One line. Cuts wider than half the cloth all lie one behind another. With those that are wider than a third two lines
 *    suffice: at no place do more than two lie beside one another, so they fall into two sequences, each of which also holds
 *    every cut that leaves no room for another. Whichever cuts the first sequence takes, the second takes the rest; on one
 *    bolt the longer of the two, each in its best order (exact, `sequence-cuts.ts`), bounds the bolt from below; on several
 *    the sequence that takes at least half of the cuts does, by its needs as in 1. The least over all divisions holds.
 * 3. Cloth that costs nothing. Remnants, and stretches before the last cut that lies fast, take at most their length of what
 *    1 and 2 ask, and no more than to the furthest end that a cut can have there (`fillable-length.ts`). Of a bolt with several stretches one is the last in use: up to where it begins all is paid, and the
 *    stretches before it are then such cloth; the least over all choices holds. Of a bolt sold whole all is paid once
 *    anything lies on it, and all of it is such cloth.
 *    A choice whose stretches are shorter than that is none.
 * 4. Steps. An order is a sum of whole steps and whole bolts, so a bound goes up to the next multiple of their common
 *    divisor. On plain cloth in equal whole bolts L2 of Martello and Toth counts bolts.
 */
import { fewestBolts } from './fill-bolts.ts';
import { fillableLength } from './fillable-length.ts';
import { baseOrder, isSoldWhole, orderedOf } from './layout.ts';
import { forward, placeAfter } from './repeat-circle.ts';
import { upToStep, upToWholeTick } from './round-plan.ts';
import { makeSequencer } from './sequence-cuts.ts';
import type { Kind, Stretch, Task } from './task.ts';

/** Most divisions into two sequences that are tried. */
const DIVISIONS = 4_000;
/** Most choices of the stretches that are the last in use. */
const CHOICES = 512;

/** In ticks; 0 when there is nothing to lay. */
export function boundPlan(task: Task): number {
  const base = baseOrder(task);
  if (task.kinds.length === 0) return base;
  let best = Infinity;
  const choices = chooseLast(task);
  for (const last of choices) best = Math.min(best, boundFor(task, last, DIVISIONS / choices.length));
  return Math.max(base, upToStep(best, commonStep(task)), boundByCount(task));
}

interface Last {
  /** Stretches that the choice allows to be used. */
  readonly open: readonly Stretch[];
  /** Paid whatever lies there: to the start of each bolt's last stretch, to the end of what lies fast, or a whole bolt. */
  readonly paid: number;
  /** Cloth on the open stretches that adds nothing. */
  readonly free: number;
}

/** Every choice of the last stretch in use of each bolt; one loose choice where there are too many. */
function chooseLast(task: Task): Last[] {
  const lengths = task.kinds.flatMap((kind) => kind.shapes.map((shape) => shape.length));
  const least = Math.min(...lengths);
  // A narrower stretch takes its share of the width: argument 2 is not used beside one.
  const worth = (stretch: Stretch): number =>
    stretch.to - stretch.from < least ? 0 : (fillableLength(task, stretch) * stretch.width) / task.width;
  let found: Last[] = [{ open: [], paid: 0, free: 0 }];
  const counted = task.reels.reduce((product, reel, index) => {
    const own = task.stretches.filter((each) => each.reel === index && reel.kind === 'bolt' && each.from >= reel.base);
    return product * (own.length + 1);
  }, 1);
  for (const [index, reel] of task.reels.entries()) {
    const own = task.stretches.filter((each) => each.reel === index);
    const costless = own.filter((each) => reel.kind === 'remnant' || each.to <= reel.base);
    const costly = own.filter((each) => !costless.includes(each));
    const given: Last = {
      open: costless,
      paid: orderedOf(reel, reel.base),
      free: costless.reduce((sum, each) => sum + worth(each), 0),
    };
    const choices =
      counted > CHOICES
        ? [{ ...given, open: own }]
        : [
            given,
            ...costly.map((last, at) => {
              const before = costly.slice(0, at);
              const paidFor = isSoldWhole(reel) ? [...before, last] : before;
              return {
                open: [...costless, ...before, last],
                paid: isSoldWhole(reel) ? reel.whole : last.from,
                free: given.free + paidFor.reduce((sum, each) => sum + worth(each), 0),
              };
            }),
          ];
    found = found.flatMap((so) =>
      choices.map((each) => ({
        open: [...so.open, ...each.open],
        paid: so.paid + each.paid,
        free: so.free + each.free,
      })),
    );
  }
  return found;
}

function boundFor(task: Task, last: Last, divisions: number): number {
  const used = leastUse(task, last.open, divisions);
  return used === Infinity ? Infinity : last.paid + Math.max(0, upToWholeTick(used - last.free));
}

/** Cloth that all cuts take on these stretches at the least, as a length of full width; Infinity: they cannot hold them. */
export function leastUse(task: Task, open: readonly Stretch[], divisions = DIVISIONS): number {
  if (open.length === 0) return task.kinds.length === 0 ? 0 : Infinity;
  const room = open.reduce((sum, each) => sum + ((each.to - each.from) * each.width) / task.width, 0);
  const isWide = open.every((each) => each.width === task.width);
  const used = Math.max(boundByLanes(task, open), isWide ? boundByLines(task, open, divisions) : 0);
  return used > room * (1 + 1e-12) ? Infinity : used;
}

interface Weighed {
  readonly phase: number;
  readonly length: number;
  readonly weight: number;
}

/** Argument 1. */
function boundByLanes(task: Task, open: readonly Stretch[]): number {
  const weighed = task.kinds.flatMap((kind): Weighed[] => {
    const [shape] = kind.shapes;
    if (shape === undefined) return [];
    return [{ phase: kind.phase, length: shape.length, weight: (kind.ids.length * shape.across) / task.width }];
  });
  const all = weighed.reduce((sum, each) => sum + each.length * each.weight, 0);
  const phased = weighed.filter((each) => each.phase >= 0);
  const own = phased.reduce((sum, each) => sum + each.length * each.weight, 0);
  return Math.max(all, own + leastTravel(phased, open, task.size));
}

/** The waste that the needs of places ahead force on cuts of these weights. */
function leastTravel(cuts: readonly Weighed[], open: readonly Stretch[], size: number): number {
  if (cuts.length === 0 || size === 0) return 0;
  const known = open.flatMap((stretch) => stretch.start ?? []);
  const anywhere = open.length - known.length;
  const firsts = [...new Set(cuts.map((cut) => cut.phase))];
  if (anywhere === 0) return travelFrom(cuts, known, size);
  if (anywhere === 1) return Math.min(...firsts.map((first) => travelFrom(cuts, [...known, first], size)));
  // Several bolts may start anywhere: each is counted at every place at once.
  const many = firsts.flatMap((first) => Array.from({ length: anywhere }, () => first));
  return travelFrom(cuts, [...known, ...many], size);
}

function travelFrom(cuts: readonly Weighed[], starts: readonly number[], size: number): number {
  const net = new Map<number, number>();
  const add = (place: number, amount: number): void => void net.set(place, (net.get(place) ?? 0) + amount);
  for (const cut of cuts) {
    add(cut.phase, cut.weight);
    add(placeAfter(cut.phase, cut.length, size), -cut.weight);
  }
  for (const start of starts) add(start, -1);
  const places = [...net.keys()].sort((a, b) => a - b);
  let sum = 0;
  places.forEach((place, index) => {
    let need = 0;
    let running = 0;
    for (let ahead = 1; ahead <= places.length; ahead += 1) {
      running += net.get(places[(index + ahead) % places.length] ?? 0) ?? 0;
      need = Math.max(need, running);
    }
    const next = places[(index + 1) % places.length] ?? place;
    sum += need * (places.length === 1 ? size : forward(place, next, size));
  });
  // Floating sums of weights: a hair less keeps the bound below the truth.
  return sum * (1 - 1e-12);
}

/** Argument 2: all cuts wider than a third of the cloth, in two sequences. */
function boundByLines(task: Task, open: readonly Stretch[], most: number): number {
  const kinds = task.kinds.filter((kind) => kind.shapes.length === 1 && 3 * acrossOf(kind) > task.width);
  if (kinds.length === 0) return 0;
  const least = Math.min(...kinds.map(acrossOf));
  const both = kinds.map((kind) => acrossOf(kind) + least > task.width);
  const counts = kinds.map((kind) => kind.ids.length);
  const [only] = open;
  const single = open.length === 1 && only !== undefined;
  const runs = kinds.map((kind) => ({ phase: kind.phase, length: kind.shapes[0]?.length ?? 0 }));
  const phased = runs.map((run) => run.phase >= 0);
  const sequencer = makeSequencer(
    runs.map((run) => ({ ...run, phase: Math.max(0, run.phase) })),
    open.flatMap((stretch) => stretch.start ?? []),
    Math.max(1, task.size),
  );
  const lineOf = (many: readonly number[]): number => {
    const length = many.reduce((sum, count, at) => sum + count * (runs[at]?.length ?? 0), 0);
    if (task.size === 0) return length;
    const own = many.map((count, at) => (phased[at] === true ? count : 0));
    const cuts = runs.map((run, at) => ({ ...run, weight: own[at] ?? 0 })).filter((each) => each.weight > 0);
    const phasedLength = cuts.reduce((sum, each) => sum + each.length * each.weight, 0);
    const waste = single ? sequencer.leastWaste(own, only.start) : leastTravel(cuts, open, task.size);
    return Math.max(length, phasedLength + waste);
  };
  const halves = counts.reduce((sum, count, at) => sum + (both[at] === true ? 0 : count), 0);
  const divisions = counts.reduce((product, count, at) => (both[at] === true ? product : product * (count + 1)), 1);
  if (divisions > most) return lineOf(counts.map((count, at) => (both[at] === true ? count : 0)));
  let best = Infinity;
  const take = [...counts];
  const divide = (at: number, taken: number): void => {
    const count = counts[at];
    if (count === undefined) {
      if (2 * taken < halves) return;
      const first = lineOf(take);
      if (first >= best) return;
      const rest = counts.map((all, kind) => (both[kind] === true ? all : all - (take[kind] ?? 0)));
      best = Math.min(best, single ? Math.max(first, lineOf(rest)) : first);
      return;
    }
    if (both[at] === true) return divide(at + 1, taken);
    for (let many = 0; many <= count; many += 1) {
      take[at] = many;
      divide(at + 1, taken + many);
    }
    take[at] = count;
  };
  divide(0, 0);
  return best;
}

function acrossOf(kind: Kind): number {
  return kind.shapes[0]?.across ?? 0;
}

/** Argument 4: what every order is a multiple of; 1 when nothing is known. */
function commonStep(task: Task): number {
  const parts = task.reels.flatMap((reel) => {
    if (reel.kind === 'remnant') return [];
    const step = Math.max(1, reel.step);
    return reel.whole < Infinity && reel.whole % step !== 0 ? [step, reel.whole] : [step];
  });
  return parts.reduce((a, b) => commonDivisor(a, b), 0);
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Argument 4, equal whole bolts of plain cloth with nothing on them and whole widths only. */
function boundByCount(task: Task): number {
  const [reel] = task.reels;
  const alike = task.reels.every(
    (each) =>
      isSoldWhole(each) &&
      each.limit === reel?.limit &&
      each.whole === reel.whole &&
      each.flaws.length === 0 &&
      each.base === 0,
  );
  if (reel === undefined || !alike || task.kinds.some((kind) => acrossOf(kind) * 2 <= task.width)) return 0;
  if (task.kinds.some((kind) => kind.shapes.length > 1)) return 0;
  const lengths = task.kinds.map((kind) => kind.shapes[0]?.length ?? 0);
  return (
    fewestBolts(
      lengths,
      task.kinds.map((kind) => kind.ids.length),
      reel.limit,
    ) * reel.whole
  );
}
