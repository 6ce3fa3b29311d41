/** From a job file to a job that the engines take: every fault told, or lengths in ticks and rates exact. */
import type { Fault, Warning } from '../fault.ts';
import { at } from '../fault.ts';
import type { Job, ProposalHead, Room } from '../job.ts';
import type { LengthUnit } from '../length.ts';
import type { Practice } from '../practice.ts';
import { defaultPractice } from '../practice-defaults.ts';
import type { PriceBook } from '../price-book.ts';
import type { FaceFamily, Tier } from '../words.ts';
import { checkJob } from './check-job.ts';
import { EXAMPLE_RATES } from './example-rates.ts';
import { toCloth } from './read-cloth.ts';
import { EMPTY_PRICE_BOOK, readPractice, readPriceBook } from './read-practice.ts';
import { optionalLength } from './read-length.ts';
import { READ_ALONE, readPlace } from './read-place.ts';
import type { ReadAround } from './read-place.ts';
import { readTreatment } from './read-treatment.ts';
import { tellFaults } from './tell-faults.ts';
import { readCutting } from './wire-cutting.ts';
import { wireJob } from './wire-job.ts';
import type { WireJob, WireRoom } from './wire-job.ts';

export type ReadJob =
  | { readonly ok: true; readonly job: Job; readonly warnings: readonly Warning[] }
  /** `given` is what was read, unless it was no object: its sound part may have faults of another kind. */
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly given?: unknown };

/** Reads the text of a job file. Text that is no JSON is one fault with its line and column. */
export function readJobText(text: string): ReadJob {
  let given: unknown;
  try {
    given = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    return { ok: false, faults: [tellSyntax(text, error instanceof Error ? error.message : '')] };
  }
  return readJob(given);
}

/**
 * Reads a parsed job file. On failure every fault is told, in the order of the file's schema and then of its sense. `around`
 * is of one room alone, where not all of it is given.
 */
export function readJob(given: unknown, around: ReadAround = READ_ALONE): ReadJob {
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    return {
      ok: false,
      faults: [
        { path: '', wrong: 'is not a job file', right: 'give one JSON object that begins { "linenfold": 1, … }' },
      ],
    };
  const structure = wireJob.safeParse(given);
  const sense = checkJob(given, around);
  const faults = [...(structure.success ? [] : tellFaults(structure.error, wireJob, given)), ...sense.faults];
  if (!structure.success || faults.length > 0) return { ok: false, faults: withoutTwins(faults), given };
  return { ok: true, job: toJob(structure.data, around), warnings: sense.warnings };
}

/** One place may be wrong by the schema and by its sense: it is told once. */
function withoutTwins(faults: readonly Fault[]): Fault[] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    const line = `${fault.path}\n${fault.wrong}`;
    if (seen.has(line)) return false;
    seen.add(line);
    return true;
  });
}

function tellSyntax(text: string, message: string): Fault {
  const place = /position (\d+)/.exec(message);
  const offset = place ? Number(place[1]) : text.length;
  const before = text.slice(0, offset).split('\n');
  const line = before.length;
  const column = (before.at(-1)?.length ?? 0) + 1;
  return {
    path: '',
    wrong: `is not JSON at line ${line}, column ${column}`,
    right: 'give plain JSON: keys and text in double quotes, no comments, no comma after the last item',
  };
}

function toJob(wire: WireJob, around: ReadAround): Job {
  const unit = wire.units;
  const practice = readPractice(wire.practice, defaultPractice(unit), unit);
  const cloth = (wire.cloth ?? []).map((each) => toCloth(each, unit));
  const families = new Map(cloth.flatMap((each) => (each.role === 'face' ? [[each.id, each.family] as const] : [])));
  return {
    units: unit,
    currency: wire.currency,
    locale: wire.locale ?? 'en-US',
    client: { name: wire.client.name, email: wire.client.email ?? null, address: wire.client.address ?? null },
    letterhead: { name: wire.letterhead?.name ?? '', lines: wire.letterhead?.lines ?? [] },
    proposal: toHead(wire.proposal ?? {}),
    practice,
    priceBook: toPriceBook(wire.priceBook, unit),
    cloth,
    cutting: readCutting(wire.cutting, unit),
    rooms: wire.rooms.map((room, index) => toRoom(room, at('rooms', index), practice, unit, families, around)),
  };
}

/** The price book of the wire form over what is under it; `"example"` takes the program's example rates. */
export function toPriceBook(wire: WireJob['priceBook'], unit: LengthUnit): PriceBook {
  if (wire === 'example') return { ...readPriceBook(EXAMPLE_RATES, EMPTY_PRICE_BOOK, unit), example: true };
  return readPriceBook(wire, EMPTY_PRICE_BOOK, unit);
}

const TIER_NAMES: Readonly<Record<Tier, string>> = { good: 'Good', better: 'Better', best: 'Best' };

function toHead(wire: NonNullable<WireJob['proposal']>): ProposalHead {
  return {
    number: wire.number ?? null,
    date: wire.date ?? null,
    validUntil: wire.validUntil ?? null,
    terms: wire.terms ?? null,
    cancellation: wire.cancellation ?? null,
    tierNames: {
      good: wire.tierNames?.good ?? TIER_NAMES.good,
      better: wire.tierNames?.better ?? TIER_NAMES.better,
      best: wire.tierNames?.best ?? TIER_NAMES.best,
    },
  };
}

function toRoom(
  wire: WireRoom,
  path: string,
  practice: Practice,
  unit: LengthUnit,
  families: ReadonlyMap<string, FaceFamily>,
  around: ReadAround,
): Room {
  return {
    name: wire.name,
    key: path,
    use: wire.use,
    facing: wire.facing ?? null,
    climate: wire.climate ?? 'mixed',
    privacy: wire.privacy ?? null,
    budget: wire.budget ?? null,
    ceiling: optionalLength(wire.ceiling, unit),
    openings: wire.openings.map((opening, index) => {
      const here = at(at(path, 'openings'), index);
      return {
        name: opening.name,
        key: here,
        width: optionalLength(opening.width, unit),
        height: optionalLength(opening.height, unit),
        sill: optionalLength(opening.sill, unit),
        at: optionalLength(opening.at, unit),
        glazing: opening.glazing ?? 'double',
        heatSourceBelow: opening.heatSourceBelow ?? false,
        treatments: opening.treatments.map((treatment, order) =>
          readTreatment(
            treatment,
            at(at(here, 'treatments'), order),
            practice,
            unit,
            readPlace(wire, opening, unit, around),
            families.get(treatment.face) ?? null,
          ),
        ),
      };
    }),
  };
}
