/**
 * A project's document as the engines read it: what is impossible is left out with its faults, record by record, so that
 * the rest can still be priced and laid.
 */
import type { Fault, Warning } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { ReadAround } from '#shared/job-file/read-place.ts';
import { writeJob } from '#shared/job-file/write-job.ts';
import type { WrittenJob } from '#shared/job-file/write-job.ts';
import type { ProjectDocument } from '#shared/records/records.ts';

/** A fault or warning with the record and field that it is about; `id` null: about the project as a whole. */
export interface PlacedFault extends Fault {
  readonly id: string | null;
  readonly field: string;
}
export interface PlacedWarning extends Warning {
  readonly id: string | null;
  readonly field: string;
}

export type ReadDocument =
  | {
      readonly job: Job;
      readonly written: WrittenJob;
      readonly warnings: readonly Warning[];
      readonly faults: readonly PlacedFault[];
    }
  /** `written` is null where no end of leaving out was found. */
  | { readonly job: null; readonly written: WrittenJob | null; readonly faults: readonly PlacedFault[] };

/** Rounds of leaving out what is impossible; each leaves out at least one record. */
const MOST_ROUNDS = 20;

/** `around`: where not all of a room is given, what the rest of it says. */
export function readLeavingOut(document: ProjectDocument, around?: ReadAround): ReadDocument {
  const faults: PlacedFault[] = [];
  let left = document;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const written = writeJob(left);
    const read = readJob(written.wire, around);
    if (read.ok) return { job: read.job, written, warnings: read.warnings, faults };
    const placed = read.faults.map((fault) => ({ ...fault, ...placePath(fault.path, written.ids) }));
    faults.push(...placed);
    const bad = new Set(placed.map(({ id }) => id));
    const badCloth = new Set(
      placed.flatMap(({ path }) => {
        const index = /^cloth\[(\d+)\]/.exec(path)?.[1];
        return index === undefined ? [] : [written.wire.cloth?.[Number(index)]?.id ?? ''];
      }),
    );
    const badCutting = placed.some(({ path }) => path.startsWith('cutting'));
    const next = leaveOut(left, bad, badCloth) ?? (badCutting ? { ...left, cuttings: [], remnants: [] } : null);
    if (next === null) return { job: null, written, faults };
    left = next;
  }
  return { job: null, written: null, faults };
}

/** `rooms[0].openings[1].treatments[0].return.left` gives the treatment's id and `return.left`. */
export function placePath(path: string, ids: Readonly<Record<string, string>>): { id: string | null; field: string } {
  const steps = [
    /^rooms\[\d+\]\.openings\[\d+\]\.treatments\[\d+\]/,
    /^rooms\[\d+\]\.openings\[\d+\]/,
    /^rooms\[\d+\]/,
  ] as const;
  for (const step of steps) {
    const found = step.exec(path)?.[0];
    const id = found === undefined ? undefined : ids[found];
    if (found !== undefined && id !== undefined) return { id, field: path.slice(found.length).replace(/^\./, '') };
  }
  return { id: null, field: path };
}

/** Null when nothing that is faulty could be left out. */
function leaveOut(
  document: ProjectDocument,
  bad: ReadonlySet<string | null>,
  badCloth: ReadonlySet<string>,
): ProjectDocument | null {
  let left = 0;
  const keep = <T extends { readonly id: string }>(list: readonly T[]): T[] =>
    list.filter((each) => {
      if (!bad.has(each.id)) return true;
      left += 1;
      return false;
    });
  const rooms = keep(document.rooms).map((room) => ({
    ...room,
    openings: keep(room.openings).map((opening) => ({
      ...opening,
      treatments: keep(opening.treatments).map((treatment) => {
        if (treatment.face === null || !badCloth.has(treatment.face)) return treatment;
        left += 1;
        return { ...treatment, face: null };
      }),
    })),
  }));
  const cloth = document.cloth.filter((each) => {
    if (!badCloth.has(each.code)) return true;
    left += 1;
    return false;
  });
  return left === 0 ? null : { ...document, rooms, cloth };
}
