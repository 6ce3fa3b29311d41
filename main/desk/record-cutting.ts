/** The cutting of a job file as records: ids instead of names, one record a cloth. */
import { readCutting } from '#shared/job-file/wire-cutting.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import type { CuttingRecord, RemnantRecord } from '#shared/records/cutting-records.ts';
import type { RoomDocument } from '#shared/records/records.ts';
import { newCutting, newRemnant } from './new-records.ts';
import type { Birth } from './new-records.ts';

export interface RecordedCutting {
  readonly remnants: readonly RemnantRecord[];
  readonly cuttings: readonly CuttingRecord[];
}

export function recordCutting(
  wire: WireJob,
  projectId: string,
  rooms: readonly RoomDocument[],
  birth: () => Birth,
): RecordedCutting {
  const { bolts, remnants, flaws, fixed } = readCutting(wire.cutting, wire.units);
  const kept = remnants.map(({ cloth, name, length, width, dyeLot, startsAt }): RemnantRecord => ({
    ...newRemnant(birth(), projectId, cloth),
    ...{ name, length, width, dyeLot: dyeLot ?? '', startsAt },
  }));
  const onOf = (cloth: string, on: string): string =>
    kept.find((remnant) => remnant.cloth === cloth && remnant.name === on)?.id ?? on;
  const treatments = new Map(
    rooms.flatMap((room) =>
      room.openings.flatMap((opening) =>
        opening.treatments.map((treatment): [string, string] => [
          `${room.name}/${opening.name}/${treatment.name}`,
          treatment.id,
        ]),
      ),
    ),
  );
  const cloths = [...new Set([...bolts, ...flaws, ...fixed].map(({ cloth }) => cloth))];
  const cuttings = cloths.map((cloth) => ({
    ...newCutting(birth(), projectId, cloth),
    bolts: bolts
      .filter((each) => each.cloth === cloth)
      .map(({ name, length, dyeLot, startsAt }) => ({ name, length, dyeLot: dyeLot ?? '', startsAt })),
    flaws: flaws.filter((each) => each.cloth === cloth).map(({ on, from, to }) => ({ on: onOf(cloth, on), from, to })),
    fixed: fixed
      .filter((each) => each.cloth === cloth)
      .flatMap(({ treatment, cut, on, at, x }) => {
        const treatmentId = treatments.get(treatment);
        return treatmentId === undefined ? [] : [{ treatmentId, cut, on: onOf(cloth, on), at, x }];
      }),
  }));
  return { remnants: kept, cuttings };
}
