/** What hangs at no window: a bed or a bath stands in a room by itself. */
import type { TreatmentKind } from './treatment.ts';

const AWAY_KINDS: readonly TreatmentKind[] = ['bed-skirt', 'shower-curtain'];

export function hangsAway(kind: TreatmentKind): boolean {
  return AWAY_KINDS.includes(kind);
}

/** True of an opening that is no window: only such things hang at it, and its sizes are neither asked nor needed. */
export function isNoWindow(kinds: readonly TreatmentKind[]): boolean {
  return kinds.length > 0 && kinds.every(hangsAway);
}
