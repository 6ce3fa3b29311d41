/**
 * Lays a task: few cuts exactly, more by search, with the bound beside the layout. Sets are shared out over dye lots: in
 * every way where these are few, so that the least bound of all ways is a bound of the whole; else by descent.
 */
import { boundPlan } from './bound-plan.ts';
import { layBySearch } from './lay-by-search.ts';
import { layExactly } from './lay-exactly.ts';
import type { Cost, Layout } from './layout.ts';
import { costOf, isLess } from './layout.ts';
import type { Meter } from './meter.ts';
import type { Task } from './task.ts';
import { taskOfLot } from './task-of-lot.ts';

/** Within these, the best layout of all is found (`lay-exactly.ts`) and is its own bound. */
const EXACT = { states: 5_000, rows: 60_000, steps: 600_000 };
/** Ways to give sets to dye lots that are all looked at. */
const MOST_SHARINGS = 1_024;
/**
 * The most promising ways that are searched, round by round, each round with its share of what is left: first those that
 * could be best by their bounds, then those that are best so far.
 */
const ROUNDS = [
  { kept: 24, by: 'bound', part: 0.4 },
  { kept: 12, by: 'cost', part: 0.4 },
  { kept: 6, by: 'bound', part: 0.6 },
  { kept: 2, by: 'cost', part: 1 },
] as const;

export interface Found {
  readonly layout: Layout;
  readonly cost: Cost;
  /** No layout orders less. */
  readonly bound: number;
}

export function isProved(found: Found): boolean {
  return found.cost.unlaid === 0 && found.cost.ordered <= found.bound;
}

export function layTask(task: Task, meter: Meter): Found {
  const bound = boundPlan(task);
  if (task.kinds.length === 0) return withCost(task, emptyLayout(task), bound);
  if (task.lots <= 1) return layOneLot(task, bound, meter);
  const exact = layExactly(task, EXACT);
  if (exact) {
    const found = withCost(task, exact.layout, bound);
    return { ...found, bound: found.cost.ordered };
  }
  return shareLots(task, bound, meter);
}

function emptyLayout(task: Task): Layout {
  return task.stretches.map(() => []);
}

function withCost(task: Task, layout: Layout, bound: number): Found {
  return { layout, cost: costOf(task, layout), bound };
}

function layOneLot(task: Task, bound: number, meter: Meter, seed = 0): Found {
  const quick = withCost(task, layBySearch(task, Infinity, meter.share(0.02)), bound);
  if (isProved(quick)) return quick;
  const exact = layExactly(task, EXACT);
  if (exact) {
    const found = withCost(task, exact.layout, bound);
    return { ...found, bound: found.cost.ordered };
  }
  const found = withCost(task, layBySearch(task, bound, meter, seed), bound);
  return isLess(found.cost, quick.cost) ? found : quick;
}

/** One lot with some of the sets: laid better each time it is asked for again, from other starts. */
interface LotPart {
  readonly best: () => Found;
  readonly bound: () => number;
  readonly lay: (meter: Meter) => void;
  readonly lift: (layout: Layout) => Layout;
}

interface Way {
  readonly parts: readonly LotPart[];
}

function shareLots(task: Task, bound: number, meter: Meter): Found {
  const sets = [...new Set(task.kinds.map((kind) => kind.set))];
  const known = new Map<string, LotPart>();
  const partOf = (lot: number, sharing: readonly number[]): LotPart => {
    const own = sets.filter((_, at) => sharing[at] === lot);
    const name = `${lot}:${own.join(',')}`;
    const part = known.get(name) ?? makePart(task, lot, own, meter);
    known.set(name, part);
    return part;
  };
  const lots = Array.from({ length: task.lots }, (_, lot) => lot);
  const wayOf = (sharing: readonly number[]): Way => ({ parts: lots.map((lot) => partOf(lot, sharing)) });
  const allowed = sets.map((set) => {
    const must = task.setLots[set];
    return must === null || must === undefined ? lots : [must];
  });
  const many = allowed.reduce((product, each) => product * each.length, 1);
  const isAll = many <= MOST_SHARINGS;
  const ways = isAll ? everySharing(allowed).map(wayOf) : descend(allowed, alikeLots(task), wayOf, meter);
  const least = Math.max(bound, isAll ? Math.min(...ways.map(boundOfWay)) : 0);
  for (const { kept, by, part } of ROUNDS) {
    const best = (): Way => bestOf(ways);
    const open = ways.filter((way) => costOfWay(best()).unlaid > 0 || boundOfWay(way) < costOfWay(best()).ordered);
    open.sort((a, b) => (by === 'bound' ? boundOfWay(a) - boundOfWay(b) : 0) || compareWays(a, b));
    const round = meter.share(part);
    for (const [rank, way] of open.slice(0, kept).entries()) {
      if (round.isOver() || isReached(best(), least)) break;
      if (boundOfWay(way) >= costOfWay(best()).ordered && costOfWay(best()).unlaid === 0) continue;
      const share = round.share(1 / (Math.min(kept, open.length) - rank));
      way.parts.forEach((each, at) => each.lay(share.share(1 / (way.parts.length - at))));
    }
  }
  const best = bestOf(ways);
  const layouts = best.parts.map((part) => part.lift(part.best().layout));
  const layout = task.stretches.map((_, at) => layouts.flatMap((each) => each[at] ?? []));
  return withCost(task, layout, least);
}

function isReached(way: Way, least: number): boolean {
  const { unlaid, ordered } = costOfWay(way);
  return unlaid === 0 && ordered <= least;
}

function bestOf(ways: readonly Way[]): Way {
  return ways.reduce((best, way) => (isLess(costOfWay(way), costOfWay(best)) ? way : best));
}

function makePart(whole: Task, lot: number, sets: readonly number[], meter: Meter): LotPart {
  const { task, lift } = taskOfLot(whole, lot, sets);
  // Of the many sharings that are only looked at nobody asks how good they could be.
  let known: number | null = null;
  const bound = (): number => (known ??= boundPlan(task));
  let best = withCost(task, task.kinds.length === 0 ? emptyLayout(task) : layBySearch(task, Infinity, meter), 0);
  let tries = 0;
  return {
    best: () => best,
    bound: () => Math.max(bound(), best.bound),
    lay: (share) => {
      if (isProved({ ...best, bound: bound() })) return;
      const found = layOneLot(task, bound(), share, tries);
      tries += 1;
      if (isLess(found.cost, best.cost) || isProved(found)) best = found;
    },
    lift,
  };
}

function compareWays(a: Way, b: Way): number {
  if (isLess(costOfWay(a), costOfWay(b))) return -1;
  return isLess(costOfWay(b), costOfWay(a)) ? 1 : 0;
}

function costOfWay(way: Way): Cost {
  return way.parts.reduce<Cost>(
    (sum, part) => {
      const { cost } = part.best();
      return {
        unlaid: sum.unlaid + cost.unlaid,
        ordered: sum.ordered + cost.ordered,
        used: sum.used + cost.used,
      };
    },
    { unlaid: 0, ordered: 0, used: 0 },
  );
}

function boundOfWay(way: Way): number {
  return way.parts.reduce((sum, part) => sum + part.bound(), 0);
}

function everySharing(allowed: readonly (readonly number[])[]): number[][] {
  return allowed.reduce<number[][]>((found, lots) => found.flatMap((so) => lots.map((lot) => [...so, lot])), [[]]);
}

/**
 * Sets put one after another where they are laid first and cheapest, then moved one at a time while that helps. `alike`
 * gives the first lot that is the same cloth as each: of those that are empty one alone is looked at.
 */
function descend(
  allowed: readonly (readonly number[])[],
  alike: readonly number[],
  wayOf: (sharing: readonly number[]) => Way,
  meter: Meter,
): Way[] {
  const open = (sharing: readonly number[], at: number): number[] => {
    const seen = new Set<number>();
    return (allowed[at] ?? []).filter((lot) => {
      if (sharing.some((other, index) => other === lot && index !== at)) return true;
      const first = alike[lot] ?? lot;
      if (seen.has(first)) return false;
      seen.add(first);
      return true;
    });
  };
  let sharing: number[] = allowed.map(() => -1);
  let best = wayOf(sharing);
  const improve = (at: number): boolean => {
    const before = sharing;
    const fresh = sharing[at] === -1;
    for (const lot of open(before, at)) {
      if (!fresh && meter.isOver()) break;
      if (lot === before[at]) continue;
      const next = before.map((own, index) => (index === at ? lot : own));
      const way = wayOf(next);
      if (sharing[at] === -1 || isLess(costOfWay(way), costOfWay(best))) [sharing, best] = [next, way];
    }
    return sharing !== before;
  };
  allowed.forEach((_, at) => improve(at));
  for (let moved = true; moved && !meter.isOver();) {
    moved = false;
    for (let at = 0; at < allowed.length; at += 1) moved = improve(at) || moved;
  }
  return [best];
}

/** For each dye lot the first one of the same cloth: as many reels, alike in all but their names, with nothing on them. */
function alikeLots(task: Task): number[] {
  const lots = Array.from({ length: task.lots }, (_, lot) => lot);
  const looks = lots.map((lot) => {
    const reels = task.reels.filter((reel) => reel.lot === lot);
    if (reels.some((reel) => reel.fixed.length > 0)) return `own ${lot}`;
    return JSON.stringify(
      reels.map(({ kind, limit, whole, width, step, start, flaws }) => [
        kind,
        String(limit),
        String(whole),
        width,
        step,
        start,
        flaws,
      ]),
    );
  });
  return lots.map((lot) => looks.indexOf(looks[lot] ?? ''));
}
