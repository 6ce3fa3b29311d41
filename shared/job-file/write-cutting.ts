/**
 * Remnants, bolts, flaws and fixed cuts of a project as a job file writes them: names instead of ids, and only of cloth
 * that the file knows. What lies on a bolt, remnant or treatment that is gone, or not measured yet, is left out.
 */
import { isUnlistedBolt } from '../cutting.ts';
import { lengthIn } from '../length.ts';
import type { LengthUnit, Ticks } from '../length.ts';
import type { CuttingRecord, RemnantRecord } from '../records/cutting-records.ts';
import type { ProjectDocument } from '../records/records.ts';
import type { WireCutting } from './wire-cutting.ts';

export interface CuttingGiven {
  readonly unit: LengthUnit;
  /** Ids of the cloth that the file lists or that needs no listing. */
  readonly known: ReadonlySet<string>;
  /** Names of each treatment that is written, by its id: `Nursery/East window/Panels`. */
  readonly treatments: ReadonlyMap<string, string>;
}

/** Undefined when there is nothing to tell. */
export function writeCutting(document: ProjectDocument, given: CuttingGiven): WireCutting | undefined {
  const { unit, known, treatments } = given;
  const length = (value: Ticks): number => lengthIn(value, unit, 6);
  const own = new Set(
    document.cloth.filter(({ projectId }) => projectId === document.project.id).map(({ code }) => code),
  );
  // A project's own cloth hides one of the decorator's that goes by the same code, and so its remnants.
  const remnants = document.remnants.filter(
    (each) => known.has(each.cloth) && (each.projectId !== null || !own.has(each.cloth)),
  );
  const cuttings = document.cuttings.filter((each) => known.has(each.cloth));
  const named = nameRemnants(remnants, cuttings);
  const supplies = new Map<string, Map<string, string>>();
  const suppliesOf = (cloth: string): Map<string, string> => {
    const found = supplies.get(cloth) ?? new Map<string, string>();
    supplies.set(cloth, found);
    return found;
  };
  const wire = {
    bolts: cuttings.flatMap(({ cloth, bolts }) =>
      bolts.map((bolt) => {
        suppliesOf(cloth).set(bolt.name, bolt.name);
        return {
          cloth,
          name: bolt.name,
          ...(bolt.length === null ? {} : { length: length(bolt.length) }),
          ...(bolt.dyeLot === '' ? {} : { dyeLot: bolt.dyeLot }),
          ...(bolt.startsAt === null ? {} : { startsAt: length(bolt.startsAt) }),
        };
      }),
    ),
    remnants: remnants.flatMap((each) => {
      if (each.length === null || each.length === 0) return [];
      const name = named.get(each.id) ?? each.name;
      suppliesOf(each.cloth).set(each.id, name);
      return [
        {
          cloth: each.cloth,
          name,
          length: length(each.length),
          ...(each.width === null || each.width === 0 ? {} : { width: length(each.width) }),
          ...(each.dyeLot === '' ? {} : { dyeLot: each.dyeLot }),
          ...(each.startsAt === null ? {} : { startsAt: length(each.startsAt) }),
        },
      ];
    }),
  };
  const onOf = ({ cloth, bolts }: CuttingRecord, on: string): string | undefined =>
    suppliesOf(cloth).get(on) ?? (bolts.length === 0 && isUnlistedBolt(on) ? on : undefined);
  const flaws = cuttings.flatMap((cutting) =>
    cutting.flaws.flatMap((flaw) => {
      const on = onOf(cutting, flaw.on);
      if (on === undefined || flaw.to <= flaw.from) return [];
      return [{ cloth: cutting.cloth, on, from: length(flaw.from), to: length(flaw.to) }];
    }),
  );
  const fixed = cuttings.flatMap((cutting) =>
    cutting.fixed.flatMap((each) => {
      const on = onOf(cutting, each.on);
      const treatment = treatments.get(each.treatmentId);
      if (on === undefined || treatment === undefined) return [];
      const x = each.x === null ? {} : { x: length(each.x) };
      return [{ cloth: cutting.cloth, treatment, cut: each.cut, on, at: length(each.at), ...x }];
    }),
  );
  const filled = Object.entries({ ...wire, flaws, fixed }).filter(([, list]) => list.length > 0);
  return filled.length === 0 ? undefined : Object.fromEntries(filled);
}

/** Each by a name of its own among the bolts and remnants of its cloth, by id. */
function nameRemnants(
  remnants: readonly RemnantRecord[],
  cuttings: readonly CuttingRecord[],
): ReadonlyMap<string, string> {
  const taken = new Set(cuttings.flatMap(({ cloth, bolts }) => bolts.map(({ name }) => JSON.stringify([cloth, name]))));
  const named = new Map<string, string>();
  for (const { id, cloth, name } of remnants) {
    const base = name.trim() === '' || isUnlistedBolt(name) ? `Remnant ${name}`.trim() : name;
    let free = base;
    for (let count = 2; taken.has(JSON.stringify([cloth, free])); count += 1) free = `${base} ${count}`;
    taken.add(JSON.stringify([cloth, free]));
    named.set(id, free);
  }
  return named;
}
