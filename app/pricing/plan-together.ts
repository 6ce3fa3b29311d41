/**
 * The accepted work of several projects laid together: one order of each cloth, cut for more than one client. Prices are
 * not touched, and neither is what the projects order each by itself.
 */
import type { Cloth } from '#shared/cloth.ts';
import type { Cutting } from '#shared/cutting.ts';
import { isUnlistedBolt } from '#shared/cutting.ts';
import type { Job } from '#shared/job.ts';
import { speaker } from '#app/estimating/say.ts';
import type { PlannedTreatment } from '#app/plan/planned-treatment.ts';
import type { ClothOfJob, PlannedCloths, PlanOptions } from './plan-work.ts';
import { pickWork, planWork } from './plan-work.ts';
import { takeOffJob } from './price-job.ts';

export interface NamedJob {
  /** Unique: where there are several it stands before the name of each window. */
  readonly name: string;
  readonly job: Job;
}

/** Units, locale and how cloth is ordered are those of the first. No jobs: no plans. */
export function planTogether(jobs: readonly NamedJob[], options: PlanOptions = {}): PlannedCloths {
  const [first] = jobs;
  if (first === undefined) return { plans: [], faults: [] };
  const joined = joinCloth(jobs);
  const treatments = jobs.flatMap((each, index) => acceptedOf(each, joined.idsOf[index] ?? new Map(), jobs.length > 1));
  const given: ClothOfJob = {
    cloth: joined.cloth,
    cutting: joinCutting(jobs, joined.idsOf),
    practice: first.job.practice,
  };
  return planWork(given, treatments, speaker(first.job.units, first.job.locale), options);
}

type Ids = ReadonlyMap<string, string>;

/** Cloth that is the same to the letter, whatever it costs, is one cloth; another of the same id keeps apart under an id of its own. */
function joinCloth(jobs: readonly NamedJob[]): { readonly cloth: readonly Cloth[]; readonly idsOf: readonly Ids[] } {
  const found = new Map<string, Cloth>();
  const idsOf = jobs.map(({ name, job }) => {
    const ids = new Map<string, string>();
    for (const cloth of job.cloth) {
      const known = found.get(cloth.id);
      const id = known === undefined || isSame(known, cloth) ? cloth.id : `${name}: ${cloth.id}`;
      ids.set(cloth.id, id);
      if (!found.has(id)) found.set(id, { ...cloth, id });
    }
    return ids;
  });
  return { cloth: [...found.values()], idsOf };
}

function isSame(one: Cloth, other: Cloth): boolean {
  const write = (cloth: Cloth): string => JSON.stringify({ ...cloth, price: null });
  return write(one) === write(other);
}

/** Of one project alone nobody has to be told whose window it is. */
function acceptedOf({ name, job }: NamedJob, ids: Ids, isOneOfSeveral: boolean): PlannedTreatment[] {
  const { planned, treatments } = takeOffJob(job);
  const idOf = (cloth: string): string => ids.get(cloth) ?? cloth;
  return pickWork(job, planned, treatments, 'accepted').map((each) => ({
    ...each,
    path: `${name}/${each.path}`,
    opening: isOneOfSeveral ? `${name}, ${each.opening}` : each.opening,
    takeoff: each.takeoff.map((line) => ({ ...line, cloth: idOf(line.cloth) })),
    cuts: each.cuts.map((group) => ({ ...group, cloth: idOf(group.cloth) })),
  }));
}

/**
 * Bolts keep the name of their project. A remnant on the shelf is there once, however many projects know of it. What was
 * settled on a bolt that nobody listed holds for that project alone and is left out.
 */
function joinCutting(jobs: readonly NamedJob[], idsOf: readonly Ids[]): Cutting {
  const remnants = new Map<string, Cutting['remnants'][number]>();
  const all = jobs.map(({ name, job }, index) => {
    const ids = idsOf[index];
    const { cutting } = job;
    const own = <T extends { readonly cloth: string }>(each: T): T => ({
      ...each,
      cloth: ids?.get(each.cloth) ?? each.cloth,
    });
    for (const each of cutting.remnants.map(own)) remnants.set(JSON.stringify(each), each);
    const isBolt = (cloth: string, on: string): boolean =>
      cutting.bolts.some((bolt) => bolt.cloth === cloth && bolt.name === on);
    const placed = <T extends { readonly cloth: string; readonly on: string }>(list: readonly T[]): T[] =>
      list
        .filter((each) => isBolt(each.cloth, each.on) || !isUnlistedBolt(each.on))
        .map((each) => own({ ...each, on: isBolt(each.cloth, each.on) ? `${name}: ${each.on}` : each.on }));
    return {
      bolts: cutting.bolts.map((bolt) => own({ ...bolt, name: `${name}: ${bolt.name}` })),
      flaws: placed(cutting.flaws),
      fixed: placed(cutting.fixed).map((each) => ({ ...each, treatment: `${name}/${each.treatment}` })),
    };
  });
  const flaws = new Map(all.flatMap((each) => each.flaws).map((flaw) => [JSON.stringify(flaw), flaw]));
  return {
    bolts: all.flatMap((each) => each.bolts),
    remnants: [...remnants.values()],
    flaws: [...flaws.values()],
    fixed: all.flatMap((each) => each.fixed),
  };
}
