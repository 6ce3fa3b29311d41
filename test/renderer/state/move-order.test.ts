import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byPosition, moveBy } from '../../../renderer/state/move-order.ts';
import type { Placed } from '../../../renderer/state/move-order.ts';

const three: readonly Placed[] = [
  { id: 'a', position: 0, createdAt: '2026-01-01' },
  { id: 'b', position: 2, createdAt: '2026-01-02' },
  { id: 'c', position: 5, createdAt: '2026-01-03' },
];

function moved(list: readonly Placed[], id: string, by: -1 | 1): readonly Placed[] {
  const to = new Map(moveBy(list, id, by).map((each) => [each.id, each.to]));
  return list.map((each) => ({ ...each, position: to.get(each.id) ?? each.position })).sort(byPosition);
}
const order = (list: readonly Placed[]): string => list.map(({ id }) => id).join('');

describe('the order changed by hand', () => {
  it.each([
    ['b', -1, 'bac'],
    ['b', 1, 'acb'],
    ['a', 1, 'bac'],
    ['c', -1, 'acb'],
    ['a', -1, 'abc'],
    ['c', 1, 'abc'],
    ['nobody', 1, 'abc'],
  ] as const)('%s by %i gives %s', (id, by, wanted) => {
    expect(order(moved(three, id, by))).toBe(wanted);
  });

  it('two neighbours change places, and nothing else is touched', () => {
    expect(moveBy(three, 'b', 1)).toEqual([
      { id: 'c', from: 5, to: 2 },
      { id: 'b', from: 2, to: 5 },
    ]);
  });

  it('two on one place are set apart', () => {
    const tied = three.map((each) => ({ ...each, position: 0 }));
    expect(order(moved(tied, 'c', -1))).toBe('acb');
  });

  it('there and back is the order as it was, whatever the places', () => {
    const lists = fc
      .uniqueArray(fc.integer({ min: 0, max: 40 }), { minLength: 2, maxLength: 9 })
      .chain((ids) =>
        fc
          .array(fc.nat(6), { minLength: ids.length, maxLength: ids.length })
          .map((places) => ids.map((id, i): Placed => ({ id: `i${id}`, position: places[i] ?? 0, createdAt: `${i}` }))),
      );
    fc.assert(
      fc.property(lists, fc.nat(8), (list, pick) => {
        const sorted = [...list].sort(byPosition);
        const id = sorted[pick % (sorted.length - 1)]?.id ?? '';
        expect(order(moved(moved(list, id, 1), id, -1))).toBe(order(sorted));
      }),
    );
  });
});
