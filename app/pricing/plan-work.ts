/** Which work of a job is laid together, and the joint plan of each of its cloths. */
import type { Cloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Fault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { TreatmentResult } from '#shared/result.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import type { Say } from '#app/estimating/say.ts';
import { resolveCloth } from '#app/lining/cloth/resolve-cloth.ts';
import type { ClothPlan, ClothPlanOutcome } from '#app/plan/plan-cloth.ts';
import { planCloth } from '#app/plan/plan-cloth.ts';
import type { PlanWatch } from '#app/plan/plan-input.ts';
import type { PlannedTreatment } from '#app/plan/planned-treatment.ts';

/**
 * An option: all work but what was declined. `accepted`: what the client accepted, in the options accepted. `likely`: that,
 * and what nothing is said of in the option that is advised.
 */
export const WORKS_LAID = [...TIERS, 'accepted', 'likely'] as const;
export type WorkLaid = (typeof WORKS_LAID)[number];

/** What an order is laid from: accepted work; until there is any, what is likely, for reference. */
export function workToOrder(job: Job): WorkLaid {
  const isAccepted = job.rooms.some(({ openings }) =>
    openings.some(({ treatments }) =>
      treatments.some(({ decision }) => decision !== undefined && decision !== null && decision !== 'declined'),
    ),
  );
  return isAccepted ? 'accepted' : 'likely';
}

/** Every treatment that could be made, in each option. */
export type PlannedWork = Readonly<Record<Tier, readonly PlannedTreatment[]>>;

/** What is laid of a job, in the order of its rooms. */
export function pickWork(
  job: Job,
  planned: PlannedWork,
  treatments: readonly Pick<TreatmentResult, 'key' | 'advised'>[],
  of: WorkLaid,
): PlannedTreatment[] {
  const decisions = new Map(
    job.rooms.flatMap((room) =>
      room.openings.flatMap((opening) =>
        opening.treatments.map(({ key, decision }) => [key, decision ?? null] as const),
      ),
    ),
  );
  const tierOf = (key: string): Tier | null => {
    const decision = decisions.get(key) ?? null;
    if (decision === 'declined') return null;
    if (of !== 'accepted' && of !== 'likely') return of;
    if (decision !== null || of === 'accepted') return decision;
    return treatments.find((each) => each.key === key)?.advised.tier ?? null;
  };
  return planned.good.flatMap(({ key }) => {
    const tier = tierOf(key);
    return tier === null ? [] : planned[tier].filter((each) => each.key === key);
  });
}

export interface PlannedCloths {
  /** In the order in which cloth first appears. */
  readonly plans: readonly ClothPlan[];
  /** Of the cloth that could not be laid. */
  readonly faults: readonly Fault[];
}

/** Plans laid before, by cloth and what is cut from it: the face is often the same in every option. */
export type PlanMemo = Map<string, ClothPlanOutcome>;

/** What a plan needs of a job besides its work. */
export type ClothOfJob = Pick<Job, 'cloth' | 'cutting' | 'practice'>;

export interface PlanOptions {
  readonly memo?: PlanMemo;
  /** Layouts weighed for each cloth, at the most; absent: `USUAL_BUDGET`. */
  readonly budget?: number;
  readonly watch?: PlanWatch;
  /** One cloth alone. */
  readonly cloth?: string;
}

/** The joint plan of each cloth that the treatments take. Once cancelled, the rest is laid as far as the first quick look. */
export function planWork(
  job: ClothOfJob,
  treatments: readonly PlannedTreatment[],
  say: Say,
  { budget, watch = {}, cloth: only, memo = new Map() }: PlanOptions = {},
): PlannedCloths {
  const ids = new Set(treatments.flatMap(({ takeoff }) => takeoff.map((line) => line.cloth)));
  const cloths = [...ids].flatMap((id): Cloth[] => {
    const cloth = resolveCloth(id, job.cloth);
    return cloth === null || (only !== undefined && only !== id) ? [] : [cloth];
  });
  const outcomes = cloths.map((cloth, index) => {
    const own = treatments.map((each) => takingOf(each, cloth)).filter((each) => each !== null);
    const key = JSON.stringify([cloth.id, own]);
    const known = memo.get(key);
    if (known) return known;
    const outcome = planCloth(
      {
        cloth,
        treatments: own,
        cutting: job.cutting,
        practice: job.practice,
        path: pathOf(cloth, job),
        ...(budget === undefined ? {} : { budget }),
      },
      say,
      watchPart(watch, index, cloths.length),
    );
    memo.set(key, outcome);
    return outcome;
  });
  return {
    plans: outcomes.flatMap((outcome) => (outcome.ok ? [outcome.planned] : [])),
    faults: outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.faults)),
  };
}

/** A treatment with what it takes of one cloth; null where it takes none. */
function takingOf(treatment: PlannedTreatment, cloth: Cloth): PlannedTreatment | null {
  const takeoff = treatment.takeoff.filter((line) => line.cloth === cloth.id);
  const cuts = treatment.cuts.filter((group) => group.cloth === cloth.id);
  return takeoff.length === 0 ? null : { ...treatment, takeoff, cuts };
}

function pathOf(cloth: Cloth, job: ClothOfJob): string {
  const index = job.cloth.findIndex(({ id }) => id === cloth.id);
  return index < 0 ? `cloth "${cloth.id}"` : at('cloth', index);
}

/** Progress of one cloth as a share of all. */
function watchPart({ progress, cancelled }: PlanWatch, index: number, count: number): PlanWatch {
  return {
    ...(progress === undefined ? {} : { progress: (share: number) => progress((index + share) / count) }),
    ...(cancelled === undefined ? {} : { cancelled }),
  };
}
