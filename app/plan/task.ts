/**
 * The plan's question as the engine works on it: plain numbers, equal cuts counted together, cloth as free stretches
 * between flaws and cuts that lie fast. Everything is put into one order first, so that the order in which cuts and bolts
 * were given changes nothing.
 */
import type { FixedCut, PlanInput, PlannedCut } from './plan-input.ts';
import { placeAfter } from './repeat-circle.ts';
import { halfDown } from './round-plan.ts';

/** How a cut may lie: along the bolt and across it. */
export interface Shape {
  readonly length: number;
  readonly across: number;
  readonly turned: boolean;
}

/** Cuts that are alike in everything but their name; of one set, where there is more than one dye lot. */
export interface Kind {
  readonly set: number;
  /** -1: anywhere. */
  readonly phase: number;
  readonly side: 'left' | 'right' | null;
  /** The first as given, the second turned sideways where it may be. */
  readonly shapes: readonly Shape[];
  /** Ids in order; as many as there are cuts of the kind. */
  readonly ids: readonly string[];
}

/** A bolt or a remnant. */
export interface Reel {
  readonly id: string;
  readonly kind: 'bolt' | 'remnant';
  /** Reels of one number are of one dye lot. */
  readonly lot: number;
  readonly dyeLot: string | null;
  /** To where cuts may lie; Infinity: unlimited. */
  readonly limit: number;
  /** What there is to buy of it: `limit` and the repeat set aside where its start is unknown. */
  readonly whole: number;
  readonly width: number;
  readonly hasSelvages: boolean;
  readonly step: number;
  /** Place in the repeat at its start; null: where the first cut wants it. 0 on plain cloth. */
  readonly start: number | null;
  /** To the end of the last cut that lies fast: at least this is used. */
  readonly base: number;
  readonly fixed: readonly FastCut[];
  readonly flaws: readonly { readonly from: number; readonly to: number }[];
}

export interface FastCut {
  readonly cut: PlannedCut;
  readonly at: number;
  readonly x: number;
  readonly length: number;
  readonly across: number;
}

/** Cloth to lay on. */
export interface Stretch {
  readonly reel: number;
  readonly from: number;
  /** Infinity: unlimited. */
  readonly to: number;
  readonly x: number;
  readonly width: number;
  readonly left: boolean;
  readonly right: boolean;
  /** Place in the repeat at `from`; null: where its first cut wants it. */
  readonly start: number | null;
}

export interface Task {
  /** The repeat; 0 on plain cloth. */
  readonly size: number;
  readonly width: number;
  readonly kinds: readonly Kind[];
  readonly reels: readonly Reel[];
  readonly stretches: readonly Stretch[];
  readonly lots: number;
  /** The lot that a set must come from, since a cut of it lies there fast; null: any. */
  readonly setLots: readonly (number | null)[];
}

export function widthOf(cut: PlannedCut, width: number): number {
  if (cut.across === 'whole') return width;
  return cut.across === 'half' ? halfDown(width) : cut.across;
}

/** Reads a checked question. Throws nothing of its own: `check-plan.ts` has told what is wrong. */
export function readTask(input: PlanInput): Task {
  const size = input.repeat?.vertical ?? 0;
  const fixed = new Map(input.fixed.map((each) => [each.cut, each]));
  const sets = [...new Set(input.cuts.map((cut) => cut.set))].sort(compare);
  const free = input.cuts.filter((cut) => !fixed.has(cut.id));
  const oneLot = new Set([...input.remnants, ...input.bolts].map((each) => each.dyeLot ?? `?${each.id}`)).size <= 1;
  const kinds = groupKinds(free, (cut) => (oneLot ? 0 : sets.indexOf(cut.set)), input.width, size);
  const reels = listReels(input, size, kinds);
  const setLots = sets.map((set) => {
    const reel = reels.find((each) => each.fixed.some((fast) => fast.cut.set === set));
    return reel?.lot ?? null;
  });
  return {
    size,
    width: input.width,
    kinds,
    reels,
    stretches: reels.flatMap((reel, index) => listStretches(reel, index, size)),
    lots: new Set(reels.map((reel) => reel.lot)).size,
    setLots,
  };
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Long and wide first, then by place; the name decides only between equals. */
function groupKinds(
  cuts: readonly PlannedCut[],
  setOf: (cut: PlannedCut) => number,
  width: number,
  size: number,
): Kind[] {
  const groups = new Map<string, Kind & { ids: string[] }>();
  for (const cut of cuts) {
    const across = widthOf(cut, width);
    const phase = size === 0 ? -1 : (cut.phase ?? -1);
    const side = across === width ? null : (cut.side ?? null);
    const turns = cut.mayTurn && cut.length <= width && cut.length !== across;
    const key = [cut.length, across, phase, side ?? '', turns, setOf(cut)].join('\n');
    const shapes: Shape[] = [{ length: cut.length, across, turned: false }];
    if (turns) shapes.push({ length: across, across: cut.length, turned: true });
    const group = groups.get(key) ?? { set: setOf(cut), phase, side, shapes, ids: [] };
    group.ids.push(cut.id);
    groups.set(key, group);
  }
  const first = (kind: Kind): Shape => kind.shapes[0] ?? { length: 0, across: 0, turned: false };
  return [...groups.values()]
    .map((group) => ({ ...group, ids: [...group.ids].sort(compare) }))
    .sort(
      (a, b) =>
        first(b).length - first(a).length ||
        first(b).across - first(a).across ||
        a.phase - b.phase ||
        compare(a.side ?? '', b.side ?? '') ||
        b.shapes.length - a.shapes.length ||
        a.set - b.set,
    );
}

function listReels(input: PlanInput, size: number, kinds: readonly Kind[]): Reel[] {
  const lots: string[] = [];
  const lotOf = (dyeLot: string | null, id: string): number => {
    const name = dyeLot === null ? `?${id}` : `=${dyeLot}`;
    if (!lots.includes(name)) lots.push(name);
    return lots.indexOf(name);
  };
  const supplies = [
    ...[...input.remnants]
      .sort((a, b) => compare(a.id, b.id))
      .map((each) => ({ ...each, kind: 'remnant' as const, step: 0, width: each.width ?? input.width })),
    ...[...input.bolts]
      .sort((a, b) => compare(a.id, b.id))
      .map((each) => ({ ...each, kind: 'bolt' as const, width: input.width })),
  ];
  return supplies.map((each) => {
    const fixed = input.fixed
      .filter((one) => one.on === each.id)
      .map((one) => readFast(one, input))
      .sort((a, b) => a.at - b.at || a.x - b.x);
    const flaws = input.flaws
      .filter((flaw) => flaw.on === each.id)
      .map(({ from, to }) => ({ from, to }))
      .sort((a, b) => a.from - b.from || a.to - b.to);
    const isAnywhere = each.startPhase === null && each.startsAsAsked !== true;
    const setAside = size > 0 && isAnywhere && fixed.length === 0 ? size : 0;
    return {
      id: each.id,
      kind: each.kind,
      lot: lotOf(each.dyeLot, each.id),
      dyeLot: each.dyeLot,
      limit: each.length === null ? Infinity : each.length - setAside,
      whole: each.length ?? Infinity,
      width: each.width,
      hasSelvages: each.width === input.width,
      step: each.step,
      start: startOf(each.startPhase, fixed, flaws.length > 0, size, kinds),
      base: fixed.reduce((end, fast) => Math.max(end, fast.at + fast.length), 0),
      fixed,
      flaws,
    };
  });
}

/**
 * An unknown start follows from a cut that lies fast; with a flaw and nothing fast the bolt is taken to start where the
 * longest cut does, since a stretch behind a flaw needs one start for the whole bolt.
 */
function startOf(
  known: number | null,
  fixed: readonly FastCut[],
  hasFlaws: boolean,
  size: number,
  kinds: readonly Kind[],
): number | null {
  if (size === 0) return 0;
  if (known !== null) return known;
  const fast = fixed.find((each) => each.cut.phase !== null);
  if (fast) return placeAfter(fast.cut.phase ?? 0, -fast.at, size);
  if (hasFlaws || fixed.length > 0) return Math.max(0, kinds.find((kind) => kind.phase >= 0)?.phase ?? 0);
  return null;
}

function readFast(fixed: FixedCut, input: PlanInput): FastCut {
  const cut = input.cuts.find((each) => each.id === fixed.cut);
  if (cut === undefined) throw new Error(`no cut ${fixed.cut}`);
  const across = widthOf(cut, input.width);
  const x = fixed.x ?? (cut.side === 'right' ? input.width - across : 0);
  return { cut, at: fixed.at, x, length: cut.length, across };
}

/** Free cloth before, between and behind what lies fast, and beside a narrower cut that lies fast alone. */
function listStretches(reel: Reel, index: number, size: number): Stretch[] {
  const barriers = [
    ...reel.flaws.map((flaw) => ({ ...flaw, fast: [] as FastCut[] })),
    ...reel.fixed.map((fast) => ({ from: fast.at, to: fast.at + fast.length, fast: [fast] })),
  ].sort((a, b) => a.from - b.from || a.to - b.to);
  const merged: { from: number; to: number; fast: FastCut[] }[] = [];
  for (const barrier of barriers) {
    const last = merged.at(-1);
    if (last !== undefined && barrier.from < last.to) {
      last.to = Math.max(last.to, barrier.to);
      last.fast.push(...barrier.fast);
    } else merged.push({ from: barrier.from, to: barrier.to, fast: [...barrier.fast] });
  }
  const place = (at: number): number | null => {
    if (size === 0) return 0;
    return reel.start === null ? null : placeAfter(reel.start, at, size);
  };
  const whole = { reel: index, x: 0, width: reel.width, left: reel.hasSelvages, right: reel.hasSelvages };
  const stretches: Stretch[] = [];
  let from = 0;
  for (const barrier of merged) {
    if (barrier.from > from) stretches.push({ ...whole, from, to: barrier.from, start: place(from) });
    const [fast, more] = barrier.fast;
    if (fast !== undefined && more === undefined && barrier.to - barrier.from === fast.length) {
      const beside = { reel: index, from: barrier.from, to: barrier.to, start: place(barrier.from) };
      const right = fast.x + fast.across;
      if (fast.x > 0) stretches.push({ ...beside, x: 0, width: fast.x, left: reel.hasSelvages, right: false });
      if (right < reel.width)
        stretches.push({ ...beside, x: right, width: reel.width - right, left: false, right: reel.hasSelvages });
    }
    from = barrier.to;
  }
  if (reel.limit > from) stretches.push({ ...whole, from, to: reel.limit, start: place(from) });
  return stretches;
}
