/**
 * Cuts laid on whole pieces of cloth, none over two of them: the longest first, each on the first piece that still holds
 * it (common practice at the table). Cuts of several kinds that are as long are laid by turns or one kind after another,
 * whichever takes fewer pieces, then less cloth.
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

/** A piece that holds nothing else where one cut alone is longer than `room`. Counts by kind, one entry a piece. */
export function layOnPieces(kinds: CutKinds, room: number): readonly (readonly number[])[] {
  const [grouped, mixed] = [orderUnits(kinds, false), orderUnits(kinds, true)].map((units) => fill(kinds, units, room));
  if (!grouped || !mixed) return [];
  const length = (pieces: readonly (readonly number[])[]): number =>
    pieces.reduce((sum, counts) => sum + kinds.lay(counts).plan, 0);
  if (mixed.length !== grouped.length) return mixed.length < grouped.length ? mixed : grouped;
  return length(mixed) < length(grouped) ? mixed : grouped;
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
