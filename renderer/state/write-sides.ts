/** A return of each side: one length stands for both until the other differs. */
export type Side = 'left' | 'right';
type Sides = { readonly left?: number | null; readonly right?: number | null };

function sidesOf(kept: unknown): Sides | number | null {
  if (typeof kept === 'number') return kept;
  return typeof kept === 'object' && kept !== null ? kept : null;
}

/** What stands on that side's line; null leaves the right one to be as the left. */
export function readSide(kept: unknown, side: Side): number | null {
  const sides = sidesOf(kept);
  if (typeof sides === 'number') return side === 'left' ? sides : null;
  return sides?.[side] ?? null;
}

export function writeSide(kept: unknown, side: Side, value: number | null): unknown {
  const left = side === 'left' ? value : readSide(kept, 'left');
  const right = side === 'right' ? value : readSide(kept, 'right');
  if (right === null) return left === null ? undefined : left;
  return { left: left ?? 0, right };
}

/** What counts on each side; null while nothing is written. */
export function countedSides(kept: unknown): { readonly left: number; readonly right: number } | null {
  const sides = sidesOf(kept);
  if (sides === null) return null;
  if (typeof sides === 'number') return { left: sides, right: sides };
  return { left: sides.left ?? 0, right: sides.right ?? 0 };
}
