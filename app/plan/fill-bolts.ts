/**
 * Plain cloth on bolts that are all alike and sold whole: the classical cutting-stock problem. Bolts are filled one after
 * another, each with the longest cut that is left and the others that leave least, within the waste that so many bolts
 * allow; when that leads nowhere it goes back (bin completion, after R. E. Korf, AAAI 2002). Bounded by the meter.
 */
import type { Meter } from './meter.ts';
import { relaxBolts } from './relax-bolts.ts';
import { downToWhole, wholeTimes } from './round-plan.ts';
import { makeStream } from './seeded.ts';

/** Looks at so many bolts before it begins anew with another taste for fillings. */
const NODES = 400;
/** Ways to fill one bolt that are looked at, and that are tried. */
const LOOKS = 2_000;
const KEPT = 24;

/** Kinds of each bolt, or null when no way was found to do with `bolts` bolts. `lengths` in falling order. */
export function fillBolts(
  lengths: readonly number[],
  counts: readonly number[],
  limit: number,
  bolts: number,
  meter: Meter,
): number[][] | null {
  const total = lengths.reduce((sum, length, kind) => sum + length * (counts[kind] ?? 0), 0);
  const spare = bolts * limit - total;
  if (spare < 0) return null;
  const first = fillOnce(lengths, counts, limit, spare, 0, meter);
  if (first !== null) return first === 'none' ? null : first;
  const rounded = fillByRelaxation(lengths, counts, limit, bolts, meter);
  if (rounded !== null) return rounded;
  for (let start = 1; !meter.isOver(); start += 1) {
    const filled = fillOnce(lengths, counts, limit, spare, start, meter);
    if (filled === 'none') return null;
    if (filled !== null) return filled;
  }
  return null;
}

/**
 * The fillings of the relaxed problem as often as they are used in whole, and what is left by bin completion; then one
 * whole filling fewer, from the one used least, and so on, so that more is left to complete.
 */
function fillByRelaxation(
  lengths: readonly number[],
  counts: readonly number[],
  limit: number,
  bolts: number,
  meter: Meter,
): number[][] | null {
  const relaxed = relaxBolts(lengths, counts, limit, meter);
  if (relaxed === null) return null;
  const ways = relaxed.map((filling) => ({ ...filling, whole: downToWhole(filling.times) }));
  ways.sort((a, b) => a.whole - b.whole);
  for (let round = 0; round < 6 && !meter.isOver(); round += 1) {
    const left = [...counts];
    const filled: number[][] = [];
    for (const way of ways)
      for (let time = 0; time < way.whole; time += 1) {
        filled.push(way.counts.flatMap((count, kind) => Array.from({ length: count }, () => kind)));
        way.counts.forEach((count, kind) => (left[kind] = (left[kind] ?? 0) - count));
      }
    const rest = lengths.reduce((sum, length, kind) => sum + length * (left[kind] ?? 0), 0);
    const spare = (bolts - filled.length) * limit - rest;
    for (let start = 0; start < 12 && spare >= 0 && !meter.isOver(); start += 1) {
      const more = fillOnce(lengths, left, limit, spare, start, meter);
      if (more === 'none') break;
      if (more !== null) return [...filled, ...more];
    }
    const next = ways.find((way) => way.whole > 0);
    if (next === undefined) return null;
    next.whole -= 1;
  }
  return null;
}

/** One start; `none` when every way was tried. */
function fillOnce(
  lengths: readonly number[],
  counts: readonly number[],
  limit: number,
  spare: number,
  start: number,
  meter: Meter,
): number[][] | 'none' | null {
  const left = [...counts];
  const next = makeStream(start);
  const filled: number[][] = [];
  const dead = new Set<string>();
  let nodes = 0;
  const seen = { all: true };
  const fill = (over: number): boolean => {
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return true;
    nodes += 1;
    if (nodes > NODES || meter.isOver()) {
      seen.all = false;
      return false;
    }
    const name = left.join(',');
    if (dead.has(name)) return false;
    const { found, isAll } = listFillings(lengths, left, first, limit, over);
    meter.count();
    seen.all = seen.all && isAll;
    // The fullest first, and of these the one with the fewest, longest cuts; later starts prefer somewhat at random.
    const taste = start === 0 ? 0 : (TASTES[start % TASTES.length] ?? 0);
    const ranked = found
      .map((part) => ({ ...part, rank: part.over + limit * (0.01 * part.kinds.length + taste * next()) }))
      .sort((a, b) => (start === 0 ? a.over - b.over || a.kinds.length - b.kinds.length : a.rank - b.rank));
    if (ranked.length > KEPT) seen.all = false;
    for (const part of ranked.slice(0, KEPT)) {
      for (const kind of part.kinds) left[kind] = (left[kind] ?? 0) - 1;
      filled.push(part.kinds);
      if (fill(over - part.over)) return true;
      filled.pop();
      for (const kind of part.kinds) left[kind] = (left[kind] ?? 0) + 1;
      if (nodes > NODES) return false;
    }
    dead.add(name);
    return false;
  };
  if (fill(spare)) return filled;
  return seen.all ? 'none' : null;
}

/** How much chance weighs against waste, as a share of the bolt, by turns. */
const TASTES = [0.005, 0.02, 0.06] as const;

interface Filling {
  readonly kinds: number[];
  /** What it leaves of the bolt. */
  readonly over: number;
}

/** Ways to fill one bolt with the first kind and others so that no more than `spare` is left; `isAll`: every way was seen. */
function listFillings(
  lengths: readonly number[],
  left: readonly number[],
  first: number,
  limit: number,
  spare: number,
): { found: Filling[]; isAll: boolean } {
  const found: Filling[] = [];
  const kinds = [first];
  const rest = [...left];
  rest[first] = (rest[first] ?? 0) - 1;
  let looked = 0;
  const add = (from: number, room: number): void => {
    looked += 1;
    let fitted = false;
    for (let kind = from; kind < lengths.length && looked <= LOOKS; kind += 1) {
      const length = lengths[kind] ?? 0;
      if (length > room || (rest[kind] ?? 0) <= 0) continue;
      fitted = true;
      kinds.push(kind);
      rest[kind] = (rest[kind] ?? 0) - 1;
      add(kind, room - length);
      rest[kind] = (rest[kind] ?? 0) + 1;
      kinds.pop();
    }
    if (!fitted && room <= spare && looked <= LOOKS) found.push({ kinds: [...kinds], over: room });
  };
  add(first, limit - (lengths[first] ?? 0));
  return { found, isAll: looked <= LOOKS };
}

/** The fewest bolts that could hold the cuts: L2 of Martello and Toth (Discrete Applied Mathematics 28, 1990, 59-70). */
export function fewestBolts(lengths: readonly number[], counts: readonly number[], limit: number): number {
  const up = (length: number): number => wholeTimes(length, limit) + (length % limit === 0 ? 0 : 1);
  const sum = (keep: (length: number) => boolean): number =>
    lengths.reduce((total, length, kind) => total + (keep(length) ? length * (counts[kind] ?? 0) : 0), 0);
  const many = (keep: (length: number) => boolean): number =>
    lengths.reduce((total, length, kind) => total + (keep(length) ? (counts[kind] ?? 0) : 0), 0);
  let best = up(sum(() => true));
  // Cuts longer than limit - small lie alone among those of at least `small`; those over half never share a bolt.
  for (const small of [...new Set([...lengths, ...lengths.map((length) => limit - length)])]) {
    if (2 * small > limit || small < 0) continue;
    const huge = (length: number): boolean => length > limit - small;
    const large = (length: number): boolean => !huge(length) && 2 * length > limit;
    const medium = (length: number): boolean => 2 * length <= limit && length >= small;
    const spare = many(large) * limit - sum(large);
    best = Math.max(best, many(huge) + many(large) + Math.max(0, up(Math.max(0, sum(medium) - spare))));
  }
  return best;
}
