/** The joint plan of one cloth over the treatments that take it: the engine's question put together, and its answer. */
import type { Cloth } from '#shared/cloth.ts';
import { isUnlistedBolt } from '#shared/cutting.ts';
import type { Cutting } from '#shared/cutting.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { Practice } from '#shared/practice.ts';
import type { TakeoffLine } from '#shared/result.ts';
import { lostAtStart } from '#app/estimating/order-cloth.ts';
import type { Say } from '#app/estimating/say.ts';
import type { CutPlan } from './cut-plan.ts';
import { orderPlan, workPlanOrder } from './order-plan.ts';
import type { PlanInput, PlannedCut, PlanWatch } from './plan-input.ts';
import { planCuts } from './plan-cuts.ts';
import type { PlannedTreatment } from './planned-treatment.ts';
import { labelTreatments, listTreatmentCuts, nameCut } from './planned-treatment.ts';
import { upToWholePieces } from './round-plan.ts';
import { sayAlone } from './say-plan.ts';
import { supplyCloth } from './supply-cloth.ts';

export interface ClothPlanAsked {
  readonly cloth: Cloth;
  /** Those whose work is laid, with what they take of this cloth alone. */
  readonly treatments: readonly PlannedTreatment[];
  readonly cutting: Cutting;
  readonly practice: Pick<Practice, 'orderFrom' | 'orderExtra' | 'orderStep' | 'remnant'>;
  /** Path of the cloth in the job file: `cloth[2]`; for generic cloth its id in quotes. */
  readonly path: string;
  /** Layouts weighed, at the most; absent: `USUAL_BUDGET`. */
  readonly budget?: number;
}

export interface ClothPlan {
  readonly cloth: Cloth;
  /** The engine's question: what `marginalCloth` is asked with. */
  readonly input: PlanInput;
  readonly plan: CutPlan;
  /** By the handbook, and each treatment laid out alone: added up. */
  readonly handbook: Ticks;
  readonly alone: Ticks;
  /** What the treatments would order each by itself. */
  readonly orderAlone: Ticks;
  readonly order: Ticks;
  /** True where a treatment is longer than a whole piece: all pieces have to come from one dye lot. */
  readonly oneLot: boolean;
}

export type ClothPlanOutcome =
  { readonly ok: true; readonly planned: ClothPlan } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Faults carry the paths of the job file. */
export function planCloth(asked: ClothPlanAsked, say: Say, watch: PlanWatch = {}): ClothPlanOutcome {
  const { cloth, treatments, practice } = asked;
  const lines = treatments.flatMap(({ takeoff }) => takeoff);
  const sum = (of: (line: TakeoffLine) => number): Ticks => ticks(lines.reduce((total, line) => total + of(line), 0));
  const handbook = sum((line) => line.handbook);
  const labels = labelTreatments(treatments);
  const cuts = treatments.flatMap((treatment) =>
    listTreatmentCuts(treatment, cloth, labels.get(treatment.path) ?? { place: treatment.opening, isShared: false }),
  );
  const gone = findGone(asked, cuts);
  if (gone.length > 0) return { ok: false, faults: gone };
  const laid = layOnEnough(asked, cuts, handbook, say, watch);
  if (!laid.ok) return { ok: false, faults: laid.faults };
  const { plan, input, oneLot } = laid;
  const alone = sum((line) => line.plan);
  const ordered = orderPlan(cloth, plan, input, handbook, practice);
  const working = [
    ...plan.working,
    sayAlone(input, plan.ordered, alone, say),
    workPlanOrder(cloth, ordered, handbook, practice, say),
  ];
  return {
    ok: true,
    planned: {
      cloth,
      input,
      plan: withOwnLots({ ...plan, working }, asked),
      handbook,
      alone,
      orderAlone: sum((line) => line.order),
      order: ordered.order,
      oneLot,
    },
  };
}

type LaidOn =
  | { readonly ok: true; readonly plan: CutPlan; readonly input: PlanInput; readonly oneLot: boolean }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * On what is listed; else on one bolt as long as one likes, and where that is more than a whole piece on as few pieces as
 * hold it: one piece more costs another repeat and saves less. Two pieces hold more than one, so twice what the length
 * asks, and one, always suffice, unless a treatment is longer than a piece.
 */
function layOnEnough(
  asked: ClothPlanAsked,
  cuts: readonly PlannedCut[],
  handbook: Ticks,
  say: Say,
  watch: PlanWatch,
): LaidOn {
  const lay = (pieces: number, oneLot: boolean): LaidOn => {
    const input = putQuestion(asked, cuts, handbook, pieces, oneLot);
    const outcome = planCuts(input, say, watch);
    if (!outcome.ok) return { ok: false, faults: outcome.faults.map((fault) => tellPlace(fault, asked, cuts)) };
    return { ok: true, plan: outcome.plan, input, oneLot };
  };
  const { cloth, cutting } = asked;
  const isListed = cutting.bolts.some((bolt) => bolt.cloth === cloth.id);
  const single = lay(countNamed(asked), false);
  const whole = cloth.supply?.bolt ?? null;
  if (isListed || whole === null || !single.ok) return single;
  const room = roomOf(cloth, whole, cuts);
  if (single.plan.ordered <= room) return single;
  const fewest = upToWholePieces(single.plan.ordered, room);
  const tries = [fewest, fewest + 1, fewest + 2, 2 * fewest + 1];
  for (const oneLot of [false, true])
    for (const pieces of tries) {
      const laid = lay(pieces, oneLot);
      if (!laid.ok || laid.plan.unlaid.length === 0) return laid;
    }
  return lay(2 * fewest + 1, true);
}

/**
 * What of a whole piece is sure to hold cuts: nobody knows where in the repeat it starts. Where that is too short for a
 * cut, or the supplier cuts on the repeat, it is taken to start as asked.
 */
function roomOf(cloth: Cloth, whole: Ticks, cuts: readonly PlannedCut[]): number {
  const room = whole - lostAtStart(cloth);
  return cuts.some(({ length }) => length > room) ? whole : room;
}

/** Bolts that flaws and fixed cuts name where none is listed. */
function countNamed({ cloth, cutting }: ClothPlanAsked): number {
  const named = [...cutting.flaws, ...cutting.fixed]
    .filter((each) => each.cloth === cloth.id && isUnlistedBolt(each.on))
    .map(({ on }) => Number(on.slice('bolt '.length)));
  return Math.max(1, ...named);
}

function putQuestion(
  { cloth, cutting, practice, budget }: ClothPlanAsked,
  cuts: readonly PlannedCut[],
  handbook: Ticks,
  pieces: number,
  oneLot: boolean,
): PlanInput {
  const bolt = cloth.supply?.bolt ?? null;
  const startsAsAsked = bolt !== null && roomOf(cloth, bolt, cuts) === bolt;
  const supply = supplyCloth(cloth, cutting, { pieces, oneLot, startsAsAsked });
  const ids = new Set(cuts.map(({ id }) => id));
  return {
    cuts,
    bolts: supply.bolts,
    remnants: supply.remnants,
    repeat: cloth.repeat,
    width: cloth.usableWidth,
    settings: {
      keepLength: practice.remnant.length,
      keepWidth: practice.remnant.width,
      ...(budget === undefined ? {} : { budget }),
    },
    fixed: cutting.fixed
      .filter((each) => each.cloth === cloth.id && ids.has(nameCut(each.treatment, each.cut)))
      .map(({ treatment, cut, on, at: along, x }) => ({
        ...{ cut: nameCut(treatment, cut), on, at: along },
        ...(x === null ? {} : { x }),
      })),
    flaws: cutting.flaws.filter((each) => each.cloth === cloth.id).map(({ on, from, to }) => ({ on, from, to })),
    handbook,
  };
}

/** A cut placed by hand of a treatment that is laid, and that has not so many cuts any more. */
function findGone({ cloth, cutting, treatments }: ClothPlanAsked, cuts: readonly PlannedCut[]): Fault[] {
  const laid = new Set(treatments.map(({ path }) => path));
  return cutting.fixed.flatMap((each, index) => {
    if (each.cloth !== cloth.id || !laid.has(each.treatment)) return [];
    const count = cuts.filter(({ set }) => set === each.treatment).length;
    if (each.cut <= count) return [];
    const wrong = `cut ${each.cut} is placed by hand, but "${each.treatment}" has ${count === 1 ? 'one cut' : `${count} cuts`} of this cloth`;
    const right = count === 0 ? 'take it out' : `give 1 to ${count}, or take it out`;
    return [{ path: at(at('cutting.fixed', index), 'cut'), wrong, right }];
  });
}

/** From the engine's paths to those of the job file. */
function tellPlace(fault: Fault, asked: ClothPlanAsked, cuts: readonly PlannedCut[]): Fault {
  const { cloth, cutting, treatments, path } = asked;
  const found = /^(cuts|bolts|remnants|flaws|fixed)\[(\d+)\](.*)$/.exec(fault.path);
  if (found === null) return { ...fault, path: fault.path.startsWith('repeat') ? at(path, fault.path) : path };
  const [, kind, number, rest = ''] = found;
  if (kind === 'cuts') {
    const set = cuts[Number(number)]?.set;
    return { ...fault, path: treatments.find((each) => each.path === set)?.key ?? path };
  }
  const listed = kind === 'bolts' || kind === 'remnants' || kind === 'flaws' || kind === 'fixed' ? cutting[kind] : [];
  const own = listed.flatMap((each, index) => (each.cloth === cloth.id && isLaid(each, cuts) ? [index] : []));
  const index = own[Number(number)];
  return {
    ...fault,
    path:
      index === undefined ? path : `${at(at('cutting', kind ?? ''), index)}${rest.replace('.startPhase', '.startsAt')}`,
  };
}

function isLaid(each: object, cuts: readonly PlannedCut[]): boolean {
  if (!('treatment' in each) || !('cut' in each)) return true;
  return cuts.some(({ id }) => id === nameCut(String(each.treatment), Number(each.cut)));
}

/** The plan with the dye lots as they were listed, where the engine was told that they do not matter. */
function withOwnLots(plan: CutPlan, { cloth, cutting }: ClothPlanAsked): CutPlan {
  const lots = new Map(
    [...cutting.bolts, ...cutting.remnants]
      .filter((each) => each.cloth === cloth.id)
      .map((each): [string, string | null] => [each.name, each.dyeLot]),
  );
  return {
    ...plan,
    bolts: plan.bolts.map((bolt) => ({ ...bolt, dyeLot: lots.get(bolt.id) ?? null })),
    remnants: plan.remnants.map((remnant) => ({ ...remnant, dyeLot: lots.get(remnant.on) ?? null })),
  };
}
