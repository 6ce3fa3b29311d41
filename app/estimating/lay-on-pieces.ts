/**
 * Cuts laid on whole pieces of cloth, none over two of them: on as few pieces as can be, then in as little cloth. Few cuts
 * are shared out in every way there is; many as at the table (common practice): the longest first, each on the first
 * piece that still holds it, cuts that are as long by turns or one kind after another, whichever takes less.
 */
import type { Ticks } from '#shared/length.ts';

/** Cuts by kind, and what any number of each takes laid together: more cuts never take less. */
export interface CutKinds {
  readonly counts: readonly number[];
  readonly lay: (counts: readonly number[]) => LaidLength;
}

export interface LaidLength {
  readonly plan: Ticks;
  /** By the chart: all cuts end to end. */
  readonly handbook: Ticks;
}

/** Ways to share cuts out that are tried one by one, at the most: of two kinds eleven each. */
const MOST_STATES = 144;

type Counts = readonly number[];

interface Shared {
  readonly pieces: readonly Counts[];
  readonly length: number;
}

/** A piece that holds nothing else where one cut alone is longer than `room`. Counts by kind, one entry a piece. */
export function layOnPieces(kinds: CutKinds, room: number): readonly Counts[] {
  const states = kinds.counts.reduce((product, count) => product * (count + 1), 1);
  if (states <= MOST_STATES) return shareBest(kinds, room).pieces;
  const [grouped, mixed] = [false, true].map((turns) => measure(kinds, fill(kinds, orderUnits(kinds, turns), room)));
  return grouped && mixed && isBetter(mixed, grouped) ? mixed.pieces : (grouped?.pieces ?? []);
}

function measure({ lay }: CutKinds, pieces: readonly Counts[]): Shared {
  return { pieces, length: pieces.reduce((sum, counts) => sum + lay(counts).plan, 0) };
}

function isBetter(one: Shared, other: Shared): boolean {
  if (one.pieces.length !== other.pieces.length) return one.pieces.length < other.pieces.length;
  return one.length < other.length;
}

/** Every way: the best for what is left once any piece is filled. The piece always takes a cut of the first kind left. */
function shareBest({ counts: all, lay }: CutKinds, room: number): Shared {
  const known = new Map<string, Shared>();
  const best = (left: Counts): Shared => {
    const first = left.findIndex((count) => count > 0);
    if (first < 0) return { pieces: [], length: 0 };
    const key = left.join(' ');
    const found = known.get(key) ?? tryAll(left, first);
    known.set(key, found);
    return found;
  };
  const tryAll = (left: Counts, first: number): Shared => {
    let found: Shared | null = null;
    for (const counts of partsOf(left)) {
      if ((counts[first] ?? 0) === 0) continue;
      const { plan } = lay(counts);
      const isAlone = counts.reduce((sum, count) => sum + count, 0) === 1;
      if (plan > room && !isAlone) continue;
      const rest = best(left.map((count, kind) => count - (counts[kind] ?? 0)));
      const tried = { pieces: [counts, ...rest.pieces], length: plan + rest.length };
      if (found === null || isBetter(tried, found)) found = tried;
    }
    return found ?? { pieces: [], length: 0 };
  };
  return best(all);
}

/** Every choice of cuts, the fullest first. */
function partsOf(counts: Counts): Counts[] {
  return counts.reduce<Counts[]>(
    (parts, count) =>
      parts.flatMap((part) => Array.from({ length: count + 1 }, (_, less): Counts => [...part, count - less])),
    [[]],
  );
}

/** The kinds of every cut, the longest first. `mixed`: those that are as long by turns. */
function orderUnits({ counts, lay }: CutKinds, mixed: boolean): number[] {
  const single = counts.map((_, kind) => lay(oneOf(counts, kind)).plan);
  const left = [...counts];
  const kinds = counts.map((_, kind) => kind).sort((a, b) => (single[b] ?? 0) - (single[a] ?? 0) || a - b);
  return kinds.flatMap((kind) => {
    const turns = mixed ? kinds.filter((each) => single[each] === single[kind]) : [kind];
    const units: number[] = [];
    while (turns.some((each) => (left[each] ?? 0) > 0))
      for (const each of turns) {
        if ((left[each] ?? 0) <= 0) continue;
        left[each] = (left[each] ?? 0) - 1;
        units.push(each);
      }
    return units;
  });
}

function fill({ counts, lay }: CutKinds, units: readonly number[], room: number): number[][] {
  const pieces: number[][] = [];
  // What once did not fit a piece never will: pieces only fill up.
  const from = counts.map(() => 0);
  for (const kind of units) {
    let at = from[kind] ?? 0;
    while (at < pieces.length && lay(withOne(pieces[at] ?? [], kind)).plan > room) at += 1;
    from[kind] = at;
    pieces[at] = withOne(pieces[at] ?? counts.map(() => 0), kind);
  }
  return pieces;
}

function oneOf(counts: readonly number[], kind: number): number[] {
  return counts.map((_, each) => (each === kind ? 1 : 0));
}

function withOne(counts: readonly number[], kind: number): number[] {
  return counts.map((count, each) => (each === kind ? count + 1 : count));
}
