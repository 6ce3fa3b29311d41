/**
 * The sound part of a job file that has faults: its treatments without one, with what they hang on, read as a job, so
 * that what no cloth could make in them is told beside what no schema could read elsewhere. Nothing of it is priced.
 */
import type { Fault } from '../fault.ts';
import type { Job } from '../job.ts';
import { readJob } from './read-job.ts';
import { LOOSE } from './readable.ts';
import type { Loose } from './readable.ts';

export interface SoundPart {
  readonly job: Job;
  /** A path in `job` as it stands in the file. */
  readonly pathInFile: (path: string) => string;
}

/** Whatever these are, they change nothing in what can be made. */
const BESIDES: Readonly<Record<string, unknown>> = {
  linenfold: 1,
  currency: 'USD',
  locale: undefined,
  client: { name: '-' },
  letterhead: undefined,
  proposal: undefined,
  priceBook: undefined,
  cutting: undefined,
};

/** Leaving a place out can only bring out faults of what hung on it, so few rounds are enough. */
const MOST_ROUNDS = 4;

/** Null where a fault lies in what everything hangs on, such as the units or the practice. */
export function readSoundPart(given: unknown, faults: readonly Fault[]): SoundPart | null {
  const job = LOOSE.safeParse(given);
  if (!job.success) return null;
  const wrong = new Set<string>();
  let found = faults.map(({ path }) => path);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    if (!found.every((path) => leaveOut(path, wrong))) return null;
    const part = takePart(job.data, wrong);
    const read = readJob(part.job);
    if (read.ok) return { job: read.job, pathInFile: part.pathInFile };
    found = read.faults.map(({ path }) => part.pathInFile(path));
  }
  return null;
}

const PLACE = /^(?:cloth\[\d+\]|rooms\[\d+\](?:\.openings\[\d+\](?:\.treatments\[\d+\])?)?)/;

/** Marks the smallest place that holds the fault; false where there is none that can be left out. */
function leaveOut(path: string, wrong: Set<string>): boolean {
  const place = PLACE.exec(path)?.[0];
  if (place !== undefined) {
    // A name is given again: whose it is may be sound.
    if (!(place.startsWith('rooms') && path === `${place}.name`)) wrong.add(place);
    return true;
  }
  const [top = ''] = path.split(/[.[]/);
  return Object.hasOwn(BESIDES, top);
}

interface Part {
  readonly job: Loose;
  readonly pathInFile: (path: string) => string;
}

function takePart(job: Loose, wrong: ReadonlySet<string>): Part {
  const places = new Map<string, string>();
  const cloth = keep(job['cloth'], 'cloth', 'cloth', wrong, places, (each) => each);
  const rooms = keep(job['rooms'], 'rooms', 'rooms', wrong, places, (room, from, to) => ({
    ...named(room, from),
    openings: keep(room['openings'], `${from}.openings`, `${to}.openings`, wrong, places, (opening, out, into) => ({
      ...named(opening, out),
      treatments: keep(opening['treatments'], `${out}.treatments`, `${into}.treatments`, wrong, places, named),
    })),
  }));
  return {
    job: { ...job, ...BESIDES, cloth, rooms },
    pathInFile: (path) => {
      const place = PLACE.exec(path)?.[0];
      const from = place === undefined ? undefined : places.get(place);
      return place === undefined || from === undefined ? path : from + path.slice(place.length);
    },
  };
}

/** The items of a list that are not wrong, with where each stood and stands. */
function keep(
  list: unknown,
  from: string,
  to: string,
  wrong: ReadonlySet<string>,
  places: Map<string, string>,
  take: (item: Loose, from: string, to: string) => Loose,
): Loose[] {
  const kept: Loose[] = [];
  for (const [index, each] of (Array.isArray(list) ? (list as unknown[]) : []).entries()) {
    const item = LOOSE.safeParse(each);
    const place = `${from}[${index}]`;
    if (!item.success || wrong.has(place)) continue;
    const here = `${to}[${kept.length}]`;
    places.set(here, place);
    kept.push(take(item.data, place, here));
  }
  return kept;
}

/** Under a name of its own, so that two of one name are no fault here. */
function named(item: Loose, from: string): Loose {
  return { ...item, name: from };
}
