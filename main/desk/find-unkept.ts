/** Guards an import against silent loss: what the records would write back has to be the very job that was read. */
import { isDeepStrictEqual } from 'node:util';
import type { Fault } from '#shared/fault.ts';
import { at } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import type { ProjectDocument } from '#shared/records/records.ts';

const RIGHT = 'take it out, or price the file with the command "job" instead';

/** What `wire` holds of treatments and cloth that would be another thing, or nothing, once it comes out of the portfolio. */
export function findUnkept(wire: WireJob, document: ProjectDocument): Fault[] {
  const written = writeJob(document).wire;
  const [before, after] = [readJob(wire), readJob(written)];
  if (!before.ok || !after.ok) return [];
  return [
    ...findInRooms(wire, written, before.job, after.job),
    ...findInCloth(wire, written, before.job, after.job),
    ...findInCutting(before.job, after.job),
  ];
}

function findInRooms(wire: WireJob, written: WireJob, before: Job, after: Job): Fault[] {
  return before.rooms.flatMap((room, roomIndex) =>
    room.openings.flatMap((opening, openingIndex) =>
      opening.treatments.flatMap((treatment, index) => {
        const path = at(at(at(at(at('rooms', roomIndex), 'openings'), openingIndex), 'treatments'), index);
        const other = after.rooms[roomIndex]?.openings[openingIndex]?.treatments[index];
        if (isDeepStrictEqual(treatment, other)) return [];
        const [given, kept] = [wire, written].map(
          (job) => job.rooms[roomIndex]?.openings[openingIndex]?.treatments[index],
        );
        return tellKeys(given, kept, path);
      }),
    ),
  );
}

function findInCloth(wire: WireJob, written: WireJob, before: Job, after: Job): Fault[] {
  return before.cloth.flatMap((cloth, index) => {
    const path = at('cloth', index);
    const other = after.cloth.find(({ id }) => id === cloth.id);
    if (isDeepStrictEqual(cloth, other)) return [];
    if (other === undefined)
      return [{ path, wrong: `"${cloth.id}" would not be kept`, right: 'give it an id of its own' }];
    const kept = written.cloth?.find(({ id }) => id === cloth.id);
    return tellKeys(wire.cloth?.[index], kept, path);
  });
}

function findInCutting(before: Job, after: Job): Fault[] {
  const byCloth = (list: readonly { readonly cloth: string }[]): readonly unknown[] =>
    [...list].sort((a, b) => (a.cloth < b.cloth ? -1 : Number(a.cloth > b.cloth)));
  return (['bolts', 'remnants', 'flaws', 'fixed'] as const).flatMap((kind) =>
    isDeepStrictEqual(byCloth(before.cutting[kind]), byCloth(after.cutting[kind]))
      ? []
      : [{ path: at('cutting', kind), wrong: 'cannot be kept in a portfolio by this version', right: RIGHT }],
  );
}

/** Names the keys that are gone; the whole where none is. */
function tellKeys(given: object | undefined, kept: object | undefined, path: string): Fault[] {
  const gone = Object.entries(given ?? {})
    .filter(([key, value]) => value !== null && value !== undefined && !Object.hasOwn(kept ?? {}, key))
    .map(([key]) => at(path, key));
  return (gone.length > 0 ? gone : [path]).map((where) => ({
    path: where,
    wrong: 'cannot be kept in a portfolio by this version',
    right: RIGHT,
  }));
}
