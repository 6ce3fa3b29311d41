/** From the names of the joint plan back to the records that it is about. */
import { nameCut } from '#app/plan/planned-treatment.ts';
import type { Fault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { Cutting } from '#shared/cutting.ts';

/** A fault of the plan; `cut` is the plan's id of the fixed cut that it is about. */
export interface PlanFault extends Fault {
  readonly cut: string | null;
}

/** Treatment ids by `Nursery/East window/Panels`; `ids` gives them by the path in the job file. */
export function pathsOf(job: Job, ids: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  return new Map(
    job.rooms.flatMap((room) =>
      room.openings.flatMap((opening) =>
        opening.treatments.flatMap(({ key, name }): [string, string][] => {
          const id = ids[key];
          return id === undefined ? [] : [[`${room.name}/${opening.name}/${name}`, id]];
        }),
      ),
    ),
  );
}

/** Id in the plan of the fixed cut that a fault is about; null where it is about something else. */
export function cutOfFault(fault: Fault, job: Job): string | null {
  const index = /^cutting\.fixed\[(\d+)\]/.exec(fault.path)?.[1];
  const fixed = index === undefined ? undefined : job.cutting.fixed[Number(index)];
  return fixed === undefined ? null : nameCut(fixed.treatment, fixed.cut);
}

/** The cloth that a fault of the plan is about; null where its path names none. */
export function clothOfFault(fault: Fault, job: Job): string | null {
  const generic = /^cloth "(.+)"/.exec(fault.path)?.[1];
  if (generic !== undefined) return generic;
  const listed = /^cloth\[(\d+)\]/.exec(fault.path)?.[1];
  if (listed !== undefined) return job.cloth[Number(listed)]?.id ?? null;
  const settled = /^cutting\.(bolts|remnants|flaws|fixed)\[(\d+)\]/.exec(fault.path);
  const kind = settled?.[1] as keyof Cutting | undefined;
  if (kind !== undefined) return job.cutting[kind][Number(settled?.[2])]?.cloth ?? null;
  const treatment = job.rooms
    .flatMap((room) => room.openings.flatMap((opening) => opening.treatments))
    .find(({ key }) => fault.path.startsWith(key));
  return treatment?.face ?? null;
}
