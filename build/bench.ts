/**
 * Speed as ratios within one run, so that a slow machine and a fast one print the same: how pricing grows with the
 * house, and what one keystroke costs against reading its job file. Prints a table; asserts nothing.
 */
import { readFileSync } from 'node:fs';
import { priceJob } from '#app/pricing/price-job.ts';
import { sayFault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import { readJob } from '#shared/job-file/read-job.ts';
import { wireJob } from '#shared/job-file/wire-job.ts';
import type { WireJob } from '#shared/job-file/wire-job.ts';
import { benchPlan } from './bench-plan.ts';

const sample = wireJob.parse(
  JSON.parse(readFileSync(new URL('../test/reference/sample.job.json', import.meta.url), 'utf8')),
);

/** The sample's rooms over and over, until there are this many openings. */
function houseOf(openings: number): WireJob {
  const all = sample.rooms.flatMap((room) => room.openings.map((opening) => ({ room, opening })));
  const rooms = Array.from({ length: openings }, (_, index) => {
    const { room, opening } = all[index % all.length] ?? { room: sample.rooms[0], opening: undefined };
    if (!room || !opening) throw new Error('the sample has no openings');
    return { ...room, name: `${room.name} ${index}`, openings: [opening] };
  });
  return { ...sample, rooms };
}

function read(wire: WireJob): Job {
  const job = readJob(wire);
  if (!job.ok) throw new Error(job.faults.map(sayFault).join('\n'));
  return job.job;
}

/** Median milliseconds of `act` over enough rounds to fill about a third of a second. */
function time(act: () => unknown): number {
  act();
  const rounds: number[] = [];
  const end = performance.now() + 350;
  while (performance.now() < end || rounds.length < 5) {
    const start = performance.now();
    act();
    rounds.push(performance.now() - start);
  }
  rounds.sort((a, b) => a - b);
  return rounds[Math.floor(rounds.length / 2)] ?? 0;
}

const sizes = [1, 10, 100] as const;
const rows = sizes.map((size) => {
  const wire = houseOf(size);
  const job = read(wire);
  return { size, read: time(() => readJob(wire)), price: time(() => priceJob(job)) };
});
const [one, , hundred] = rows;

console.log('openings   read ms   price ms   price / read   price / opening, against one opening');
for (const row of rows) {
  const growth = row.price / row.size / (one?.price ?? 1);
  console.log(
    `${String(row.size).padStart(8)}${row.read.toFixed(2).padStart(10)}${row.price.toFixed(2).padStart(11)}${(row.price / row.read).toFixed(2).padStart(15)}${growth.toFixed(2).padStart(39)}`,
  );
}
console.log(
  `A hundred openings take ${((hundred?.price ?? 0) / (one?.price ?? 1)).toFixed(0)} times as long as one (100 would be even growth).`,
);

await benchPlan();
