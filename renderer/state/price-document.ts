/**
 * A project's document priced where it stands: the same job file, the same engines as at the desk. What is half
 * written is left out and named; what is impossible is left out with its faults, so that the rest still has its prices.
 * Each opening is priced by itself and remembered, so that a keystroke costs one opening and not the whole house.
 */
import { priceJob } from '#app/pricing/price-job.ts';
import { totalPrices } from '#app/pricing/total-tiers.ts';
import type { Warning } from '#shared/fault.ts';
import type { Cloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { Job } from '#shared/job.ts';
import type { WrittenJob } from '#shared/job-file/write-job.ts';
import type { OpeningDocument, ProjectDocument, RoomDocument } from '#shared/records/records.ts';
import type { JobResult, MissingRate, TreatmentResult } from '#shared/result.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import type { Tier } from '#shared/words.ts';
import { placePath, readLeavingOut } from './read-document.ts';
import { levelOfRoom } from './room-level.ts';
import type { PlacedFault, PlacedWarning } from './read-document.ts';

export interface PricedDocument {
  /** By treatment id. */
  readonly treatments: ReadonlyMap<string, TreatmentResult>;
  /** The treatments as the engines read them, by id: what is drawn. */
  readonly parsed: ReadonlyMap<string, Treatment>;
  /** The job that each was priced in, by treatment id: what the engines are asked of. */
  readonly jobs: ReadonlyMap<string, Job>;
  /** Over all that could be priced; null while a rate is missing or something cannot be made. */
  readonly totals: JobResult['totals'];
  readonly missingRates: readonly MissingRate[];
  readonly exampleRates: boolean;
  /** The project's own cloth as the engines know it, as far as it is used. */
  readonly cloth: readonly Cloth[];
  /** Fields still missing, by treatment id, in measuring order. */
  readonly unfinished: ReadonlyMap<string, readonly string[]>;
  readonly faults: readonly PlacedFault[];
  readonly warnings: readonly PlacedWarning[];
  /** An engine failed: ours to mend. */
  readonly broken: string | null;
}

interface PricedOpening extends Pick<
  PricedDocument,
  'treatments' | 'parsed' | 'jobs' | 'unfinished' | 'faults' | 'warnings' | 'broken'
> {
  readonly job: Job | null;
  readonly result: JobResult | null;
}

interface Remembered {
  readonly document: ProjectDocument;
  readonly room: RoomDocument;
  /** Of the room's pattern: another opening may give it. */
  readonly level: Ticks | null;
  readonly priced: PricedOpening;
}
/** Openings are plain data that is never changed in place: the same object has the same prices. */
export type PriceMemo = WeakMap<OpeningDocument, Remembered>;

export function priceDocument(document: ProjectDocument, memo: PriceMemo): PricedDocument {
  const parts = document.rooms.flatMap((room) => {
    const level = levelOfRoom(room);
    return room.openings.map((opening) => {
      const before = memo.get(opening);
      if (before && before.level === level && restsOnTheSame(before, document, room)) return before.priced;
      const priced = priceOpening({ ...document, rooms: [{ ...room, openings: [opening] }] }, level);
      memo.set(opening, { document, room, level, priced });
      return priced;
    });
  });
  const results = parts.map(({ result }) => result).filter((result) => result !== null);
  const faults = unique(
    parts.flatMap((part) => part.faults),
    (fault) => `${fault.id ?? ''} ${fault.path} ${fault.wrong}`,
  );
  return {
    treatments: new Map(parts.flatMap((part) => [...part.treatments])),
    parsed: new Map(parts.flatMap((part) => [...part.parsed])),
    jobs: new Map(parts.flatMap((part) => [...part.jobs])),
    totals: faults.length > 0 ? null : totalOf(parts),
    missingRates: unique(
      results.flatMap((result) => result.missingRates),
      (missing) => missing.rate,
    ),
    exampleRates: results.some((result) => result.exampleRates),
    cloth: unique(
      parts.flatMap(({ job }) => job?.cloth ?? []),
      (cloth) => cloth.id,
    ),
    unfinished: new Map(parts.flatMap((part) => [...part.unfinished])),
    faults,
    warnings: unique(
      parts.flatMap((part) => part.warnings),
      (warning) => `${warning.id ?? ''} ${warning.field} ${warning.says}`,
    ),
    broken: parts.find((part) => part.broken !== null)?.broken ?? null,
  };
}

function restsOnTheSame(before: Remembered, document: ProjectDocument, room: RoomDocument): boolean {
  const { use, facing, climate, privacy, budget, ceiling } = before.room;
  return (
    before.document.project === document.project &&
    before.document.settings === document.settings &&
    before.document.cloth === document.cloth &&
    before.room.id === room.id &&
    use === room.use &&
    facing === room.facing &&
    climate === room.climate &&
    privacy === room.privacy &&
    budget === room.budget &&
    ceiling === room.ceiling
  );
}

function totalOf(parts: readonly PricedOpening[]): JobResult['totals'] {
  const treatments = parts.flatMap((part) => part.result?.treatments ?? []);
  const book = parts.find(({ job }) => job !== null)?.job?.priceBook;
  if (!book || treatments.length === 0) return null;
  const total = (tier: Tier) => {
    const prices = treatments.map((treatment) => treatment.tiers[tier].price).filter((price) => price !== null);
    return prices.length === treatments.length ? totalPrices(prices, book) : null;
  };
  const [good, better, best] = [total('good'), total('better'), total('best')];
  return good && better && best ? { good, better, best } : null;
}

function unique<T>(list: readonly T[], keyOf: (item: T) => string): T[] {
  const found = new Map<string, T>();
  for (const item of list) if (!found.has(keyOf(item))) found.set(keyOf(item), item);
  return [...found.values()];
}

const NOTHING: PricedOpening = {
  result: null,
  job: null,
  treatments: new Map(),
  parsed: new Map(),
  jobs: new Map(),
  unfinished: new Map(),
  faults: [],
  warnings: [],
  broken: null,
};

/** `document` holds one opening; `patternLevel` is of its whole room. */
function priceOpening(document: ProjectDocument, patternLevel: Ticks | null): PricedOpening {
  const read = readLeavingOut(document, { patternLevel });
  if (read.job === null) {
    const unfinished = read.written === null ? NOTHING.unfinished : unfinishedOf(read.written);
    return { ...NOTHING, unfinished, faults: read.faults };
  }
  return priceRead(read.written, read.job, read.warnings, read.faults);
}

function priceRead(
  written: WrittenJob,
  job: Job,
  warnings: readonly Warning[],
  before: readonly PlacedFault[],
): PricedOpening {
  const unfinished = unfinishedOf(written);
  const parsed = parsedOf(written, job);
  try {
    const result = priceJob(job, warnings, { plan: false });
    const treatments = new Map<string, TreatmentResult>();
    for (const treatment of result.treatments) {
      const id = written.ids[treatment.key];
      if (id !== undefined) treatments.set(id, treatment);
    }
    const place = <T extends { readonly path: string }>(list: readonly T[]) =>
      list.map((each) => ({ ...each, ...placePath(each.path, written.ids) }));
    return {
      job,
      result,
      treatments,
      parsed,
      jobs: new Map([...treatments.keys()].map((id) => [id, job])),
      unfinished,
      faults: [...before, ...place(result.faults)],
      warnings: place(result.warnings),
      broken: null,
    };
  } catch (error) {
    const broken = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { ...NOTHING, job, parsed, unfinished, faults: before, broken };
  }
}

function parsedOf(written: WrittenJob, job: Job): Map<string, Treatment> {
  const all = job.rooms.flatMap((room) => room.openings.flatMap((opening) => opening.treatments));
  const placed = all.flatMap((treatment): [string, Treatment][] => {
    const id = written.ids[treatment.key];
    return id === undefined ? [] : [[id, treatment]];
  });
  return new Map(placed);
}

function unfinishedOf(written: WrittenJob): Map<string, readonly string[]> {
  return new Map(written.unfinished.map((each) => [each.treatmentId, each.fields]));
}
