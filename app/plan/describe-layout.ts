/** A layout as the bolts that people see: cuts with their names in their places, waste, and what is worth keeping. */
import { ticks } from '#shared/length.ts';
import type { FreeCloth, KeptRemnant, LaidBolt, LaidCut } from './cut-plan.ts';
import type { Layout } from './layout.ts';
import { orderedOf } from './layout.ts';
import type { PlanInput } from './plan-input.ts';
import { placeAfter } from './repeat-circle.ts';
import { placeRows } from './rows.ts';
import type { Reel, Task } from './task.ts';

export function describeLayout(input: PlanInput, task: Task, layout: Layout): LaidBolt[] {
  const cuts = new Map(input.cuts.map((cut) => [cut.id, cut]));
  const used = task.kinds.map(() => 0);
  const laid: LaidCut[][] = task.reels.map((reel) =>
    reel.fixed.map((fast) => ({
      id: fast.cut.id,
      set: fast.cut.set,
      label: fast.cut.label ?? fast.cut.id,
      at: ticks(fast.at),
      x: ticks(fast.x),
      length: ticks(fast.length),
      across: ticks(fast.across),
      phase: task.size === 0 ? null : fast.cut.phase,
      laid: 'up',
      fixed: true,
    })),
  );
  const starts = task.reels.map((reel) => reel.start);
  task.stretches.forEach((stretch, index) => {
    const rows = layout[index] ?? [];
    if (rows.length === 0) return;
    const { placed, start } = placeRows(task, rows, stretch);
    starts[stretch.reel] = starts[stretch.reel] ?? start;
    for (const each of placed) {
      const kind = task.kinds[each.kind];
      const shape = kind?.shapes[each.shape];
      const id = kind?.ids[used[each.kind] ?? 0];
      const cut = id === undefined ? undefined : cuts.get(id);
      if (shape === undefined || cut === undefined) throw new Error('a cut was laid that nobody asked for');
      used[each.kind] = (used[each.kind] ?? 0) + 1;
      laid[stretch.reel]?.push({
        id: cut.id,
        set: cut.set,
        label: cut.label ?? cut.id,
        at: ticks(each.at),
        x: ticks(each.x),
        length: ticks(shape.length),
        across: ticks(shape.across),
        phase: task.size === 0 ? null : cut.phase,
        laid: shape.turned ? 'sideways' : 'up',
        fixed: false,
      });
    }
  });
  return task.reels.flatMap((reel, index) => {
    const own = (laid[index] ?? []).sort((a, b) => a.at - b.at || a.x - b.x);
    return own.length === 0 ? [] : [describeReel(input, task, reel, own, starts[index] ?? 0)];
  });
}

function describeReel(input: PlanInput, task: Task, reel: Reel, cuts: readonly LaidCut[], start: number): LaidBolt {
  const used = cuts.reduce((end, cut) => Math.max(end, cut.at + cut.length), 0);
  const ordered = orderedOf(reel, used);
  const supply = [...input.bolts, ...input.remnants].find((each) => each.id === reel.id);
  const end = reel.kind === 'remnant' ? reel.limit : ordered;
  return {
    id: reel.id,
    kind: reel.kind,
    dyeLot: reel.dyeLot,
    length: supply?.length ?? null,
    width: ticks(reel.width),
    startPhase: task.size === 0 ? null : ticks(start),
    cuts,
    waste: listFree(cuts, reel, end),
    flaws: reel.flaws.map(({ from, to }) => ({ from: ticks(from), to: ticks(to) })),
    used: ticks(used),
    ordered: ticks(ordered),
  };
}

/** The cloth between cuts, flaws and end as rectangles, each as long as it can be. */
function listFree(cuts: readonly LaidCut[], reel: Reel, end: number): FreeCloth[] {
  const taken = [
    ...cuts.map((cut) => ({
      from: Number(cut.at),
      to: cut.at + cut.length,
      x: Number(cut.x),
      right: cut.x + cut.across,
    })),
    ...reel.flaws.map((flaw) => ({ ...flaw, x: 0, right: reel.width })),
  ];
  const marks = [...new Set([0, end, ...taken.flatMap((each) => [each.from, each.to])])]
    .filter((mark) => mark >= 0 && mark <= end)
    .sort((a, b) => a - b);
  const open: { from: number; to: number; x: number; right: number }[] = [];
  const done: typeof open = [];
  marks.slice(0, -1).forEach((from, index) => {
    const to = marks[index + 1] ?? end;
    const spans = freeAcross(
      taken.filter((each) => each.from <= from && each.to >= to),
      reel.width,
    );
    for (const before of open.splice(0)) {
      const same = spans.find((span) => span.x === before.x && span.right === before.right);
      if (same === undefined) done.push(before);
      else open.push({ ...before, to });
    }
    for (const span of spans)
      if (!open.some((each) => each.x === span.x && each.right === span.right)) open.push({ ...span, from, to });
  });
  return [...done, ...open]
    .sort((a, b) => a.from - b.from || a.x - b.x)
    .map((each) => ({
      from: ticks(each.from),
      to: ticks(each.to),
      x: ticks(each.x),
      across: ticks(each.right - each.x),
    }));
}

function freeAcross(taken: readonly { x: number; right: number }[], width: number): { x: number; right: number }[] {
  const spans: { x: number; right: number }[] = [];
  let x = 0;
  for (const each of [...taken].sort((a, b) => a.x - b.x)) {
    if (each.x > x) spans.push({ x, right: each.x });
    x = Math.max(x, each.right);
  }
  if (x < width) spans.push({ x, right: width });
  return spans;
}

/** What is left and worth keeping, largest first; named A, B, C in that order. */
export function listRemnants(bolts: readonly LaidBolt[], input: PlanInput): KeptRemnant[] {
  const { keepLength, keepWidth } = input.settings;
  return bolts
    .flatMap((bolt) => bolt.waste.map((free) => ({ bolt, free })))
    .filter(({ free }) => free.to - free.from >= Math.max(1, keepLength) && free.across >= Math.max(1, keepWidth))
    .sort((a, b) => sizeOf(b.free) - sizeOf(a.free))
    .map(({ bolt, free }, index) => ({
      ...free,
      name: nameAt(index),
      on: bolt.id,
      dyeLot: bolt.dyeLot,
      startPhase:
        bolt.startPhase === null || input.repeat === null
          ? null
          : ticks(placeAfter(bolt.startPhase, free.from, input.repeat.vertical)),
    }));
}

function sizeOf(free: FreeCloth): number {
  return (free.to - free.from) * free.across;
}

/** A to Z, then A2 to Z2, and so on. */
function nameAt(index: number): string {
  const letter = index % 26;
  const round = (index - letter) / 26;
  return `${'ABCDEFGHIJKLMNOPQRSTUVWXYZ'.charAt(letter)}${round === 0 ? '' : round + 1}`;
}
