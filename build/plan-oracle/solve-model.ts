/**
 * The cut plan of whole widths as a mixed-integer model for HiGHS, the oracle of larger plans. For each bolt: how many cuts
 * of each kind lie on it, how often each arc of the repeat is passed as waste, and where its last cut ends; every place of
 * the repeat balances. What that leaves open, that all cuts of a bolt hang together, is added where a solution breaks it,
 * and the model is solved again (as subtours are in the travelling salesman's problem; Dantzig, Fulkerson, Johnson 1954).
 */
import type { Highs } from 'highs';
import type { PlanInput } from '#app/plan/plan-input.ts';

export interface Solved {
  readonly proved: boolean;
  /** Least order found, in ticks; null when none was. */
  readonly ordered: number | null;
  /** No layout orders less, in ticks. */
  readonly bound: number;
  readonly seconds: number;
}

interface Kind {
  readonly set: string;
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly count: number;
}
interface Reel {
  readonly isRemnant: boolean;
  readonly lot: string;
  readonly limit: number;
  readonly step: number;
  readonly start: number;
}
interface Shape {
  readonly kinds: readonly Kind[];
  readonly reels: readonly Reel[];
  readonly places: readonly number[];
  readonly size: number;
}

/** Whole widths on bolts with an end and a known start, without flaws or fixed cuts; throws on others. */
export function solveModel(highs: Highs, input: PlanInput, seconds: number): Solved {
  const shape = readShape(input);
  const rows: string[] = [];
  const began = performance.now();
  for (let round = 0; ; round += 1) {
    const spent = (performance.now() - began) / 1000;
    const answer = solveOnce(highs, writeModel(shape, rows), Math.max(1, seconds - spent));
    const cuts = answer.values === null ? [] : findLoose(shape, answer.values);
    const took = (performance.now() - began) / 1000;
    if (cuts.length === 0 || took > seconds || round > 60) {
      const isWhole = cuts.length === 0 && answer.values !== null;
      return {
        proved: isWhole && answer.proved,
        ordered: isWhole ? Math.round(answer.objective) : null,
        bound: Math.ceil(answer.bound - 1e-3),
        seconds: took,
      };
    }
    rows.push(...cuts);
  }
}

function readShape(input: PlanInput): Shape {
  const size = input.repeat?.vertical ?? 0;
  const groups = new Map<string, { set: string; phase: number; length: number; count: number }>();
  for (const cut of input.cuts) {
    if (cut.across !== 'whole' || cut.mayTurn) throw new Error('the model knows whole widths alone');
    const key = `${cut.set}/${cut.phase ?? ''}/${cut.length}`;
    const group = groups.get(key) ?? { set: cut.set, phase: cut.phase ?? 0, length: cut.length, count: 0 };
    groups.set(key, { ...group, count: group.count + 1 });
  }
  const supplies = [...input.remnants, ...input.bolts];
  if (input.fixed.length + input.flaws.length > 0 || supplies.some((each) => each.length === null))
    throw new Error('the model knows bolts with an end, without flaws and fixed cuts');
  if (size > 0 && supplies.some((each) => each.startPhase === null)) throw new Error('a bolt starts nowhere');
  const ends = [...groups.values()].flatMap(({ phase, length }) =>
    size === 0 ? [0] : [phase, (phase + length) % size],
  );
  const places = [...new Set([...ends, ...supplies.map((each) => (size === 0 ? 0 : (each.startPhase ?? 0)))])].sort(
    (a, b) => a - b,
  );
  const at = (place: number): number => places.indexOf(size === 0 ? 0 : place % size);
  return {
    size,
    places,
    kinds: [...groups.values()].map(({ set, phase, length, count }) => ({
      ...{ set, length, count, from: at(phase), to: at(phase + length) },
    })),
    reels: supplies.map((each) => ({
      isRemnant: !('step' in each),
      lot: each.dyeLot ?? `?${each.id}`,
      limit: each.length ?? 0,
      step: 'step' in each ? each.step : 0,
      start: at(each.startPhase ?? 0),
    })),
  };
}

/** In the solver's LP text. Lengths in ticks; n cuts, x arcs, t ends, u used, y steps, z a set's dye lot, o order. */
function writeModel(shape: Shape, more: readonly string[]): string {
  const { kinds, reels, places, size } = shape;
  const rows: string[] = [...more];
  const whole: string[] = [];
  const binary: string[] = [];
  const bounds: string[] = [];
  const cost: string[] = [];
  const arc = (v: number): number =>
    places.length === 1 ? size : ((places[(v + 1) % places.length] ?? 0) - (places[v] ?? 0) + size) % size;
  const lots = [...new Set(reels.map((reel) => reel.lot))];
  const sets = [...new Set(kinds.map((kind) => kind.set))];
  kinds.forEach((kind, k) => rows.push(`${reels.map((_, b) => `n${k}_${b}`).join(' + ')} = ${kind.count}`));
  if (lots.length > 1) {
    sets.forEach((_, s) => rows.push(`${lots.map((__, l) => `z${s}_${l}`).join(' + ')} = 1`));
    sets.forEach((_, s) => lots.forEach((__, l) => binary.push(`z${s}_${l}`)));
  }
  reels.forEach((reel, b) => {
    binary.push(`u${b}`);
    const length = [
      ...kinds.map((kind, k) => `${kind.length} n${k}_${b}`),
      ...(size > 0 ? places.map((_, v) => `${arc(v)} x${v}_${b}`) : []),
    ].join(' + ');
    rows.push(`${length} - ${reel.limit} u${b} <= 0`);
    kinds.forEach((kind, k) => {
      whole.push(`n${k}_${b}`);
      bounds.push(`0 <= n${k}_${b} <= ${kind.count}`);
      rows.push(`n${k}_${b} - ${kind.count} u${b} <= 0`);
      if (lots.length > 1)
        rows.push(`n${k}_${b} - ${kind.count} z${sets.indexOf(kind.set)}_${lots.indexOf(reel.lot)} <= 0`);
    });
    if (size > 0) {
      places.forEach((_, v) => {
        whole.push(`x${v}_${b}`);
        binary.push(`t${v}_${b}`);
        const before = (v + places.length - 1) % places.length;
        const terms = [
          ...(places.length === 1 ? [] : [`x${v}_${b} - x${before}_${b}`]),
          ...kinds.flatMap((kind, k) => (kind.from === kind.to || kind.from !== v ? [] : [`+ n${k}_${b}`])),
          ...kinds.flatMap((kind, k) => (kind.from === kind.to || kind.to !== v ? [] : [`- n${k}_${b}`])),
          `+ t${v}_${b}`,
          ...(reel.start === v ? [`- u${b}`] : []),
        ];
        rows.push(`${terms.join(' ')} = 0`);
      });
    }
    if (reel.isRemnant) return;
    cost.push(`o${b}`);
    if (reel.step === 0) rows.push(`o${b} - ${length.replaceAll(' + ', ' - ')} >= 0`);
    else {
      whole.push(`y${b}`);
      rows.push(`${reel.step} y${b} - ${length.replaceAll(' + ', ' - ')} >= 0`);
      rows.push(`o${b} - ${reel.step} y${b} >= 0`);
    }
  });
  return [
    'Minimize',
    ` obj: ${cost.join(' + ')}`,
    'Subject To',
    ...rows.map((row, index) => ` r${index}: ${row}`),
    'Bounds',
    ...bounds.map((each) => ` ${each}`),
    'General',
    ` ${whole.join(' ')}`,
    'Binary',
    ` ${binary.join(' ')}`,
    'End',
    '',
  ].join('\n');
}

interface Answer {
  readonly proved: boolean;
  readonly objective: number;
  readonly bound: number;
  readonly values: ReadonlyMap<string, number> | null;
}

function solveOnce(highs: Highs, text: string, seconds: number): Answer {
  const model = highs.createModel({ format: 'lp', data: text });
  try {
    model.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    model.run();
    const status = model.getModelStatus();
    const bound = Number(model.info.get('mip_dual_bound'));
    const isFeasible = Number(model.info.get('primal_solution_status')) === 2;
    if (!isFeasible) return { proved: false, objective: Infinity, bound, values: null };
    const values = new Map<string, number>();
    model.getSolution().colValue.forEach((value: number, index: number) => {
      const name = model.getColName(index);
      values.set(name, value);
    });
    return {
      proved: status === highs.constants.modelStatus.optimal,
      objective: model.getObjectiveValue(),
      bound,
      values,
    };
  } finally {
    model.dispose();
  }
}

/** For each bolt a condition on every group of places that its start does not reach. */
function findLoose(shape: Shape, values: ReadonlyMap<string, number>): string[] {
  const { kinds, reels, places, size } = shape;
  if (size === 0) return [];
  const value = (name: string): number => Math.round(values.get(name) ?? 0);
  const found: string[] = [];
  reels.forEach((reel, b) => {
    if (value(`u${b}`) === 0) return;
    const reached = new Set([reel.start]);
    for (let grown = true; grown;) {
      const before = reached.size;
      places.forEach((_, v) => {
        const next = (v + 1) % places.length;
        if (value(`x${v}_${b}`) > 0 && (reached.has(v) || reached.has(next))) reached.add(v).add(next);
      });
      kinds.forEach((kind, k) => {
        if (value(`n${k}_${b}`) > 0 && (reached.has(kind.from) || reached.has(kind.to)))
          reached.add(kind.from).add(kind.to);
      });
      grown = reached.size > before;
    }
    const loose = kinds.flatMap((kind, k) => (value(`n${k}_${b}`) > 0 && !reached.has(kind.from) ? [k] : []));
    if (loose.length === 0) return;
    // Whatever lies on the bolt outside the places reached must be entered from one of them.
    const entering = [
      ...places.flatMap((_, v) => (reached.has(v) && !reached.has((v + 1) % places.length) ? [`x${v}_${b}`] : [])),
      ...kinds.flatMap((kind, k) => (reached.has(kind.from) && !reached.has(kind.to) ? [`n${k}_${b}`] : [])),
    ];
    for (const k of loose) {
      const count = kinds[k]?.count ?? 1;
      found.push(`${entering.map((each) => `${count} ${each}`).join(' + ')} - n${k}_${b} >= 0`);
    }
  });
  return found;
}
