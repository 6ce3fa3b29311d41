import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HistoryRecord } from '#shared/records/records.ts';
import { coalesceHistory } from '#main/portfolio/coalesce-history.ts';
import { findChanges } from '#main/portfolio/history.ts';

let lastId = 0;
function entry(
  at: string,
  field: string,
  before: unknown,
  after: unknown,
  more: Partial<HistoryRecord> = {},
): HistoryRecord {
  return {
    id: (lastId += 1),
    at: `2026-11-25T${at}.000Z`,
    projectId: 'p',
    clientId: 'c',
    entity: 'opening',
    entityId: 'o',
    verb: 'edited',
    changes: { [field]: { before, after } },
    ...more,
  };
}

const shown = (entries: HistoryRecord[]) =>
  coalesceHistory([...entries].reverse(), 100)
    .reverse()
    .map(({ changes }) =>
      Object.entries(changes)
        .map(([field, { before, after }]) => `${field} ${String(before)}>${String(after)}`)
        .join(),
    );

describe('edits become one', () => {
  test.each<[string, HistoryRecord[], string[]]>([
    ['when they follow within a minute', [entry('10:00:00', 'w', 1, 2), entry('10:00:59', 'w', 2, 3)], ['w 1>3']],
    [
      'when each follows the last within a minute',
      [entry('10:00:00', 'w', 1, 2), entry('10:00:50', 'w', 2, 3), entry('10:01:40', 'w', 3, 4)],
      ['w 1>4'],
    ],
    ['not after more than a minute', [entry('10:00:00', 'w', 1, 2), entry('10:01:01', 'w', 2, 3)], ['w 1>2', 'w 2>3']],
    ['not of another field', [entry('10:00:00', 'w', 1, 2), entry('10:00:01', 'h', 1, 2)], ['w 1>2', 'h 1>2']],
    [
      'not of another record',
      [entry('10:00:00', 'w', 1, 2), entry('10:00:01', 'w', 1, 2, { entityId: 'q' })],
      ['w 1>2', 'w 1>2'],
    ],
    [
      'not with something between',
      [entry('10:00:00', 'w', 1, 2), entry('10:00:01', 'h', 1, 2), entry('10:00:02', 'w', 2, 3)],
      ['w 1>2', 'h 1>2', 'w 2>3'],
    ],
    [
      'not of other verbs',
      [entry('10:00:00', 'w', 1, 2, { verb: 'removed' }), entry('10:00:01', 'w', 1, 2, { verb: 'removed' })],
      ['w 1>2', 'w 1>2'],
    ],
    [
      'and vanish when all was taken back',
      [entry('10:00:00', 'w', 1, 2), entry('10:00:05', 'w', 2, 1), entry('10:00:06', 'h', 5, 6)],
      ['h 5>6'],
    ],
  ])('%s', (_name, entries, expected) => {
    expect(shown(entries)).toEqual(expected);
  });

  test('no more than asked for, the newest', () => {
    const entries = [entry('10:00:00', 'w', 1, 2), entry('10:10:00', 'w', 2, 3), entry('10:20:00', 'w', 3, 4)];
    expect(coalesceHistory([...entries].reverse(), 2).map(({ id }) => id)).toEqual([entries[2]!.id, entries[1]!.id]);
  });
});

test('coalescing keeps what the first had and the last left, whatever the pace', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ wait: fc.integer({ min: 0, max: 200 }), value: fc.nat(5) }), {
        minLength: 1,
        maxLength: 40,
      }),
      (steps) => {
        let moment = Date.parse('2026-11-25T10:00:00Z');
        let value = -1;
        const entries = steps.map((step) => {
          moment += step.wait * 1000;
          const made = { ...entry('10:00:00', 'w', value, step.value), at: new Date(moment).toISOString() };
          value = step.value;
          return made;
        });
        const told = coalesceHistory([...entries].reverse(), 1000).reverse();
        expect(told[0]?.changes['w']?.before ?? -1).toBe(-1);
        let at: unknown = -1;
        for (const each of told) {
          expect(each.changes['w']?.before).toBe(at);
          at = each.changes['w']?.after;
        }
        expect(at).toBe(value);
      },
    ),
  );
});

test('only fields that differ are changes, however deep', () => {
  expect(findChanges({ a: 1, b: { c: [1, 2] }, d: null }, { a: 1, b: { c: [1, 2] }, d: undefined })).toEqual({});
  expect(findChanges({ a: 1, b: { c: [1] } }, { b: { c: [2] }, e: 3 })).toEqual({
    b: { before: { c: [1] }, after: { c: [2] } },
    e: { before: null, after: 3 },
  });
});
