/** The order of rooms, of windows and of treatments, changed by hand: a place is a whole number, the lower the earlier. */
export interface Placed {
  readonly id: string;
  readonly position: number;
  readonly createdAt: string;
}

export interface Moved {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** The place after all that are there. */
export function placeAfter(siblings: readonly Placed[]): number {
  return Math.max(-1, ...siblings.map(({ position }) => position)) + 1;
}

/** As the portfolio orders them. */
export function byPosition(a: Placed, b: Placed): number {
  if (a.position !== b.position) return a.position - b.position;
  if (a.createdAt !== b.createdAt) return a.createdAt < b.createdAt ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}

/**
 * Moves one before or after its neighbour. Those whose place changes, each with the old and the new one; none at either
 * end. Two that stood on one place are set apart.
 */
export function moveBy(siblings: readonly Placed[], id: string, by: -1 | 1): readonly Moved[] {
  const before = [...siblings].sort(byPosition);
  const at = before.findIndex((each) => each.id === id);
  const one = before[at];
  const other = before[at + by];
  if (!one || !other) return [];
  const after = before.map((each, index) => {
    if (index === at) return other;
    return index === at + by ? one : each;
  });
  let last = -1;
  return after.flatMap((each, index) => {
    // The places that were there are kept, so that one that was taken away still finds its own.
    const to = Math.max(before[index]?.position ?? 0, last + 1);
    last = to;
    return to === each.position ? [] : [{ id: each.id, from: each.position, to }];
  });
}
