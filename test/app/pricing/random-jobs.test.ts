/** Ten thousand random job files (seeded): each is priced or refused by name, and none hangs or breaks the program. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { priceJob } from '#app/pricing/price-job.ts';
import { writeResult } from '#app/pricing/write-result.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';

const HOUSE = JSON.parse(
  readFileSync(new URL('../../reference/every-kind.job.json', import.meta.url), 'utf8'),
) as WireJob;
const TREATMENTS = HOUSE.rooms.flatMap((room) => room.openings.flatMap((opening) => opening.treatments));

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** Every place in a value at which something may be changed. */
function placesIn(value: Json, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (Array.isArray(value)) return [path, ...value.flatMap((each, index) => placesIn(each, [...path, index]))];
  if (typeof value === 'object' && value !== null)
    return [path, ...Object.entries(value).flatMap(([key, each]) => placesIn(each, [...path, key]))];
  return [path];
}

function changeAt(value: Json, path: readonly (string | number)[], to: Json): Json {
  const [step, ...rest] = path;
  if (step === undefined) return to;
  if (Array.isArray(value)) return value.map((each, index) => (index === step ? changeAt(each, rest, to) : each));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, key === step ? changeAt(each, rest, to) : each]),
  );
}

/** Sizes from a hair to the moon, text as people write it, and what does not belong there at all. */
const anything: fc.Arbitrary<Json> = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 400 }).map((value) => value / 4) },
  { weight: 2, arbitrary: fc.double({ min: 0, max: 4000, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom<Json>(0, -1, 1e9, 1e-9, 1e300) },
  { weight: 2, arbitrary: fc.constantFrom<Json>('84 1/2', `7' 0 1/2"`, '2.146 m', '1 mm', '99 m', 'none', '') },
  { weight: 1, arbitrary: fc.constantFrom<Json>(null, true, [], {}, [1, 2, 3]) },
);

interface Drawn {
  readonly treatment: number;
  readonly quantity: number;
  readonly changes: readonly { readonly place: number; readonly to: Json }[];
  readonly practice: Json;
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
  treatment: fc.nat({ max: TREATMENTS.length - 1 }),
  quantity: fc.integer({ min: 1, max: 4 }),
  changes: fc.array(fc.record({ place: fc.nat({ max: 1000 }), to: anything }), { maxLength: 3 }),
  practice: fc.oneof(
    fc.constant({}),
    fc.record({
      seam: anything,
      sideHem: anything,
      hemsInWidth: fc.boolean(),
      shrinkage: fc.double({ min: 0, max: 0.5, noNaN: true }),
    }),
  ),
});

function jobOf({ treatment, quantity, changes, practice }: Drawn): Json {
  let changed = { ...TREATMENTS[treatment], quantity } as unknown as Json;
  for (const { place, to } of changes) {
    const places = placesIn(changed);
    changed = changeAt(changed, places[place % places.length] ?? [], to);
  }
  const opening = { name: 'Window', width: 60, height: 54, sill: 30, treatments: [changed] };
  const rooms = [{ name: 'Room', use: 'bedroom', openings: [opening] }];
  return { ...(HOUSE as unknown as { [key: string]: Json }), practice, rooms };
}

describe('ten thousand random job files', () => {
  it('each is priced or refused by name', { timeout: 240_000 }, () => {
    const counts = { refusedReading: 0, refusedMaking: 0, priced: 0 };
    for (const each of fc.sample(drawn, { seed: 2026, numRuns: 10_000 })) {
      const wire = jobOf(each);
      const read = readJob(wire);
      if (!read.ok) {
        expect(read.faults.length).toBeGreaterThan(0);
        for (const fault of read.faults)
          expect(fault.wrong !== '' && fault.right !== '', JSON.stringify(fault)).toBe(true);
        counts.refusedReading += 1;
        continue;
      }
      const result = priceJob(read.job, read.warnings);
      if (result.faults.length > 0) {
        counts.refusedMaking += 1;
        expect(result.totals).toBeNull();
        continue;
      }
      const written = writeResult(read.job, result);
      counts.priced += 1;
      for (const line of written.treatments.flatMap(({ tiers }) => tiers.good.takeoff)) {
        expect(Number.isFinite(line.orderYards) && line.orderYards >= line.planYards - 1e-4, JSON.stringify(wire)).toBe(
          true,
        );
      }
      expect(JSON.stringify(written)).not.toMatch(/NaN|Infinity|null,"yards"/);
    }
    expect(counts.priced).toBeGreaterThan(2000);
    expect(counts.refusedReading).toBeGreaterThan(2000);
    expect(counts.refusedMaking).toBeGreaterThan(20);
  });
});
