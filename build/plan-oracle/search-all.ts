/**
 * Every way to lay a few cuts, tried one after another: the oracle of small plans. It shares nothing with the engine but
 * the question, works cut by cut, and knows no dominance: rows are put on the bolts in every order, in every arrangement
 * of columns, from every starting place on the grid. Only positions that were reached before are not searched twice.
 */
import type { PlanInput, PlannedCut } from '#app/plan/plan-input.ts';
import { CM, GRID } from './seeded-plans.ts';

interface Piece {
  readonly index: number;
  readonly set: string;
  readonly phase: number | null;
  readonly side: 'left' | 'right' | undefined;
  readonly length: number;
  readonly across: number;
}

interface Reel {
  readonly isRemnant: boolean;
  readonly lot: string;
  readonly limit: number;
  readonly whole: number;
  readonly width: number;
  readonly edges: boolean;
  readonly step: number;
  readonly starts: readonly number[];
  /** Closed to cuts: flaws and fixed cuts, in order. */
  readonly closed: readonly (readonly [number, number])[];
  readonly base: number;
}

/** The least order, in ticks; Infinity when the cuts cannot all be laid. Cuts fixed by hand must be whole widths. */
export function searchAll(input: PlanInput): number {
  const repeat = input.repeat?.vertical ?? 0;
  const reels = listReels(input, repeat);
  const fixedIds = new Set(input.fixed.map((fixed) => fixed.cut));
  const free = input.cuts.filter((cut) => !fixedIds.has(cut.id));
  const ways = free.map((cut, index) => waysOf(cut, index, input.width));
  const lotsOfFixed = new Map<string, string>();
  for (const fixed of input.fixed) {
    const cut = input.cuts.find((each) => each.id === fixed.cut);
    const supply = [...input.remnants, ...input.bolts].find((each) => each.id === fixed.on);
    if (cut && supply) lotsOfFixed.set(cut.set, supply.dyeLot ?? `?${supply.id}`);
  }
  const all = 2 ** free.length - 1;
  const known = new Map<string, number>();
  const arrangements = new Map<string, readonly (readonly Piece[])[][]>();
  const lengths = new Map<string, number>();

  /** How long a row of these cuts is at the least from a place in the repeat; Infinity when they do not fit side by side. */
  const rowLength = (part: number, reel: Reel, place: number): number => {
    const group = `${part}/${reel.width}/${reel.edges}`;
    const key = `${group}/${place}`;
    const before = lengths.get(key);
    if (before !== undefined) return before;
    const rows = arrangements.get(group) ?? arrange(part, ways, reel);
    arrangements.set(group, rows);
    let least = Infinity;
    for (const columns of rows) {
      let end = 0;
      for (const column of columns) {
        let at = 0;
        for (const piece of column) {
          if (repeat > 0 && piece.phase !== null) while ((place + at) % repeat !== piece.phase) at += GRID * CM;
          at += piece.length;
        }
        end = Math.max(end, at);
      }
      least = Math.min(least, end);
    }
    lengths.set(key, least);
    return least;
  };

  const fromReel = (reel: number, left: number, lots: ReadonlyMap<string, string>): number => {
    const here = reels[reel];
    if (here === undefined) return left === 0 ? 0 : Infinity;
    const key = `${reel}/${left}/${nameLots(lots)}`;
    let best = known.get(key) ?? Infinity;
    if (known.has(key)) return best;
    for (const start of here.starts) best = Math.min(best, along(reel, start, 0, here.base, left, lots));
    known.set(key, best);
    return best;
  };
  /** `pos`: where the next row may begin; `end`: to where the reel is used. */
  const along = (
    reel: number,
    start: number,
    pos: number,
    end: number,
    left: number,
    lots: ReadonlyMap<string, string>,
  ): number => {
    const here = reels[reel];
    if (here === undefined) return Infinity;
    const key = `${reel}/${start}/${pos}/${end}/${left}/${nameLots(lots)}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = orderOf(here, end) + fromReel(reel + 1, left, lots);
    const next = here.closed.find(([from, to]) => from >= pos && to > pos);
    if (next !== undefined) best = Math.min(best, along(reel, start, next[1], end, left, lots));
    const limit = Math.min(here.limit, next?.[0] ?? Infinity);
    for (let part = left; part > 0; part = (part - 1) & left) {
      const sets = setsOf(part, free);
      if (sets.some((set) => (lots.get(set) ?? here.lot) !== here.lot)) continue;
      const now = new Map(lots);
      for (const set of sets) now.set(set, here.lot);
      const least = pos + rowLength(part, here, repeat === 0 ? 0 : (start + pos) % repeat);
      if (least > limit) continue;
      if (least < Infinity) best = Math.min(best, along(reel, start, least, Math.max(end, least), left & ~part, now));
    }
    known.set(key, best);
    return best;
  };
  return fromReel(0, all, lotsOfFixed);
}

function nameLots(lots: ReadonlyMap<string, string>): string {
  return [...lots]
    .map((each) => each.join('='))
    .sort()
    .join(',');
}

function orderOf(reel: Reel, end: number): number {
  if (reel.isRemnant) return 0;
  return Math.min(reel.whole, reel.step > 0 ? Math.ceil(end / reel.step) * reel.step : end);
}

function waysOf(cut: PlannedCut, index: number, width: number): Piece[] {
  const across = { whole: width, half: Math.floor(width / 2) }[String(cut.across)] ?? Number(cut.across);
  const piece = { index, set: cut.set, phase: cut.phase, side: cut.side, length: cut.length, across };
  if (!cut.mayTurn || cut.length > width) return [piece];
  return [piece, { ...piece, length: across, across: cut.length }];
}

function setsOf(part: number, cuts: readonly PlannedCut[]): string[] {
  return [...new Set(cuts.filter((_, index) => (part >> index) & 1).map((cut) => cut.set))];
}

/** Every way to set a group of cuts side by side in columns, each column in every order; none where they do not fit. */
function arrange(part: number, ways: readonly (readonly Piece[])[], reel: Reel): (readonly Piece[])[][] {
  const [first, ...rest] = ways.flatMap((each, index) => ((part >> index) & 1 ? [each] : []));
  if (first === undefined) return [];
  let found: Piece[][][] = first.map((piece) => [[piece]]);
  const widthOf = (columns: readonly (readonly Piece[])[]): number =>
    columns.reduce((sum, column) => sum + Math.max(...column.map((piece) => piece.across)), 0);
  // More cuts never make columns narrower; one column that fills the width with several cuts is no row.
  const mayGrow = (columns: readonly (readonly Piece[])[]): boolean => {
    const across = widthOf(columns);
    return across < reel.width || (across === reel.width && columns.length > 1);
  };
  for (const options of rest)
    found = found
      .flatMap((columns) =>
        options.flatMap((piece) => [
          ...columns.flatMap((column, at) =>
            Array.from({ length: column.length + 1 }, (_, place) =>
              columns.map((each, index) =>
                index === at ? [...each.slice(0, place), piece, ...each.slice(place)] : each,
              ),
            ),
          ),
          [...columns, [piece]],
        ]),
      )
      .filter(mayGrow);
  return found.filter((columns) => {
    if (widthOf(columns) > reel.width) return false;
    // Several cuts behind one another over the whole width are several rows, and searched as such.
    if (columns.length === 1 && (columns[0]?.length ?? 0) > 1) return false;
    const sides = columns.map((column) => new Set(column.flatMap((piece) => piece.side ?? [])));
    if (sides.some((each) => each.size > 1)) return false;
    const flat = sides.flatMap((each) => [...each]);
    return new Set(flat).size === flat.length && (flat.length === 0 || reel.edges);
  });
}

function listReels(input: PlanInput, repeat: number): Reel[] {
  const everywhere = Array.from({ length: Math.max(1, repeat / (GRID * CM)) }, (_, at) => at * GRID * CM);
  return [...input.remnants, ...input.bolts].map((supply): Reel => {
    const isRemnant = !('step' in supply);
    const width = 'width' in supply ? (supply.width ?? input.width) : input.width;
    const fixed = input.fixed
      .filter((each) => each.on === supply.id)
      .map((each) => [each.at, each.at + (input.cuts.find((cut) => cut.id === each.cut)?.length ?? 0)] as const);
    const flaws = input.flaws.filter((flaw) => flaw.on === supply.id).map((flaw) => [flaw.from, flaw.to] as const);
    const isUnknown = repeat > 0 && supply.startPhase === null;
    const knownStart = repeat === 0 ? 0 : (supply.startPhase ?? 0);
    return {
      isRemnant,
      lot: supply.dyeLot ?? `?${supply.id}`,
      limit: supply.length === null ? Infinity : supply.length - (isUnknown ? repeat : 0),
      whole: supply.length ?? Infinity,
      width,
      edges: width === input.width,
      step: 'step' in supply ? supply.step : 0,
      starts: isUnknown ? everywhere : [knownStart],
      closed: [...fixed, ...flaws].sort((a, b) => a[0] - b[0]),
      base: Math.max(0, ...fixed.map(([, to]) => to)),
    };
  });
}
