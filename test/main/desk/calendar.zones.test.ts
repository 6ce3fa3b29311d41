import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { addDays, localDate } from '#main/desk/calendar.ts';
import { callDesk, makeTestDesk } from './test-desk.ts';
import type { TestDesk } from './test-desk.ts';

let desk: TestDesk;
beforeEach(() => {
  desk = makeTestDesk();
});
afterEach(() => desk.remove());

test.each([
  ['2026-11-25', 30, '2026-12-25'],
  ['2026-12-31', 1, '2027-01-01'],
  ['2028-02-28', 1, '2028-02-29'],
  ['2027-02-28', 1, '2027-03-01'],
  // Days on which clocks change in one place or another.
  ['2026-03-08', 1, '2026-03-09'],
  ['2026-10-31', 2, '2026-11-02'],
])('%s and %i days is %s in every time zone', (date, days, expected) => {
  expect(addDays(date, days)).toBe(expected);
});

test('days add up, in every time zone', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (a, b) => {
      expect(addDays(addDays('2026-11-25', a), b)).toBe(addDays('2026-11-25', a + b));
    }),
  );
});

test.each([
  [2026, 0, 1, 0, 0, '2026-01-01'],
  [2026, 11, 31, 23, 59, '2026-12-31'],
  [2026, 10, 25, 12, 0, '2026-11-25'],
])('a moment on the own clock is on the own calendar', (year, month, day, hour, minute, expected) => {
  expect(localDate(new Date(year, month, day, hour, minute))).toBe(expected);
});

test("a proposal made late on New Year's Eve is of the old year, wherever it is made", async () => {
  const client = callDesk(desk);
  const text = readFileSync(path.join(import.meta.dirname, '../../reference/sample.job.json'), 'utf8');
  const { projectId } = await client.jobs.importJob({ text });
  desk.setClock(new Date(2026, 11, 31, 23, 50).toISOString());
  const made = await client.proposals.makeProposal({ projectId });
  expect(made).toMatchObject({ number: '2026-001', date: '2026-12-31', validUntil: '2027-01-30' });
  // Instants stay in UTC: only what a person reads as a day is a day of hers.
  expect(made.createdAt).toMatch(/Z$/);
});
