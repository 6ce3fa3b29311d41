/**
 * The best order of cuts one after another on patterned cloth: exact.
 *
 * Problem. Every cut must start at its place a in the repeat and ends at b = a + length (mod R). From the end of one to
 * the start of the next the cloth between is waste: the way forwards round the circle of the repeat, in [0, R). The first
 * cut is reached from the bolt's start s, the last one ends the use of the bolt. Which order wastes least?
 * It is the travelling salesman problem with start and end states on a circle, of the kind that P. C. Gilmore and R. E.
 * Gomory solved (Operations Research 12, 1964, 655-679, for a line and two-way costs). Here travel is forwards only, which
 * makes it simpler still:
 *
 * Proof. Cut the circle at all places a, b, s into arcs. An order is an Eulerian path from s to the last cut's end t that
 * runs through every cut (a -> b) once, and through arc v some number x(v) >= 0 of times; its waste is the sum of
 * length(v) x(v). Conversely each x that keeps every place balanced (in = out, but one more out of s and one more into t)
 * and leaves all cuts connected with s gives an Eulerian path, hence an order with that waste (Euler; Hierholzer). For a
 * given t the balance settles x along the circle up to one number k: x = z + k. So the least waste for t is reached with
 * the least k for which every x >= 0, if that is connected; else with k + 1, where every arc is passed and everything is
 * connected. Trying every end t that a cut can have (and, where the bolt may start anywhere, every start) is exact.
 */
import { forward, placeAfter } from './repeat-circle.ts';

/** A kind of cut, or of row of cuts beside one another: where in the repeat it starts, and how long it is. */
export interface Run {
  readonly phase: number;
  readonly length: number;
}

export interface Sequencer {
  /** Least waste between the cuts of these counts a kind, from place `start`; null: the bolt starts where it is best. */
  readonly leastWaste: (counts: ArrayLike<number>, start: number | null) => number;
  /** The kinds in an order of least waste. Empty when there are none. */
  readonly bestOrder: (counts: ArrayLike<number>, start: number | null) => number[];
}

interface Choice {
  readonly waste: number;
  readonly start: number;
  readonly end: number;
  /** Times that each arc is passed, without the full turns; then the turns to add. */
  readonly turns: number;
}

/** A sequencer of these kinds on a repeat of `size` ticks; `starts` are the places at which bolts may start. */
export function makeSequencer(kinds: readonly Run[], starts: readonly number[], size: number): Sequencer {
  const places = [...new Set(kinds.flatMap((kind) => [kind.phase, placeAfter(kind.phase, kind.length, size)]))];
  for (const start of starts) if (!places.includes(start)) places.push(start);
  places.sort((a, b) => a - b);
  const at = new Map(places.map((place, index) => [place, index]));
  const count = places.length;
  const gaps = places.map((place, index) =>
    count === 1 ? size : forward(place, places[(index + 1) % count] ?? place, size),
  );
  const from = kinds.map((kind) => at.get(kind.phase) ?? 0);
  const to = kinds.map((kind) => at.get(placeAfter(kind.phase, kind.length, size)) ?? 0);
  const flow = new Array<number>(count).fill(0);
  const root = new Array<number>(count).fill(0);

  /** Net arrivals at each place, summed along the circle: what arc v carries but for s, t and full turns. */
  const sumFlow = (counts: ArrayLike<number>): void => {
    flow.fill(0);
    for (let kind = 0; kind < kinds.length; kind += 1) {
      const many = counts[kind] ?? 0;
      if (many === 0) continue;
      flow[to[kind] ?? 0] = (flow[to[kind] ?? 0] ?? 0) + many;
      flow[from[kind] ?? 0] = (flow[from[kind] ?? 0] ?? 0) - many;
    }
    for (let v = 1; v < count; v += 1) flow[v] = (flow[v] ?? 0) + (flow[v - 1] ?? 0);
  };
  const carried = (v: number, start: number, end: number): number =>
    (flow[v] ?? 0) + (v >= start ? 1 : 0) - (v >= end ? 1 : 0);
  const find = (place: number): number => {
    let top = place;
    while (root[top] !== top) top = root[top] ?? top;
    root[place] = top;
    return top;
  };
  const isConnected = (counts: ArrayLike<number>, start: number, end: number, turns: number): boolean => {
    for (let v = 0; v < count; v += 1) root[v] = v;
    for (let v = 0; v < count; v += 1) if (carried(v, start, end) + turns > 0) root[find(v)] = find((v + 1) % count);
    for (let kind = 0; kind < kinds.length; kind += 1)
      if ((counts[kind] ?? 0) > 0) root[find(from[kind] ?? 0)] = find(to[kind] ?? 0);
    const home = find(start);
    for (let kind = 0; kind < kinds.length; kind += 1)
      if ((counts[kind] ?? 0) > 0 && find(from[kind] ?? 0) !== home) return false;
    return true;
  };
  const chooseFrom = (counts: ArrayLike<number>, start: number, limit: number): Choice | null => {
    const ends = new Set<number>();
    for (let kind = 0; kind < kinds.length; kind += 1) if ((counts[kind] ?? 0) > 0) ends.add(to[kind] ?? 0);
    const choices: Choice[] = [];
    for (const end of ends) {
      let least = Infinity;
      let sum = 0;
      for (let v = 0; v < count; v += 1) {
        const here = carried(v, start, end);
        least = Math.min(least, here);
        sum += here * (gaps[v] ?? 0);
      }
      choices.push({ waste: sum - least * size, start, end, turns: -least });
    }
    choices.sort((a, b) => a.waste - b.waste || a.end - b.end);
    let best: Choice | null = null;
    let most = limit;
    for (const choice of choices) {
      if (choice.waste >= most) break;
      if (isConnected(counts, start, choice.end, choice.turns)) return choice;
      const turned = { ...choice, waste: choice.waste + size, turns: choice.turns + 1 };
      if (turned.waste < most) [best, most] = [turned, turned.waste];
    }
    return best;
  };
  const choose = (counts: ArrayLike<number>, start: number | null): Choice | null => {
    sumFlow(counts);
    if (start !== null) return chooseFrom(counts, at.get(start) ?? 0, Infinity);
    const firsts = new Set(from.filter((_, kind) => (counts[kind] ?? 0) > 0));
    return [...firsts].reduce<Choice | null>(
      (best, first) => chooseFrom(counts, first, best?.waste ?? Infinity) ?? best,
      null,
    );
  };

  return {
    leastWaste: (counts, start) => choose(counts, start)?.waste ?? 0,
    bestOrder: (counts, start) => {
      const chosen = choose(counts, start);
      if (chosen === null) return [];
      const arcs = gaps.map((_, v) => carried(v, chosen.start, chosen.end) + chosen.turns);
      const left = kinds.map((_, kind) => counts[kind] ?? 0);
      return walkEuler(chosen.start, arcs, left, from, to);
    },
  };
}

/** Hierholzer's walk: cuts before waste at each place, kinds in their order; uses up `arcs` and `left`. */
function walkEuler(
  start: number,
  arcs: number[],
  left: number[],
  from: readonly number[],
  to: readonly number[],
): number[] {
  const leaving = arcs.map(() => [] as number[]);
  from.forEach((place, kind) => leaving[place]?.push(kind));
  const waste = -1;
  const path: number[] = [];
  const stack: { place: number; by: number }[] = [{ place: start, by: waste }];
  for (let top = stack.at(-1); top !== undefined; top = stack.at(-1)) {
    const kind = leaving[top.place]?.find((each) => (left[each] ?? 0) > 0);
    if (kind !== undefined) {
      left[kind] = (left[kind] ?? 0) - 1;
      stack.push({ place: to[kind] ?? 0, by: kind });
    } else if ((arcs[top.place] ?? 0) > 0) {
      arcs[top.place] = (arcs[top.place] ?? 0) - 1;
      stack.push({ place: (top.place + 1) % arcs.length, by: waste });
    } else {
      stack.pop();
      if (top.by !== waste) path.push(top.by);
    }
  }
  return path.reverse();
}
