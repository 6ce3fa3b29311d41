/** What of a room's wish for privacy falls to one treatment, by what else hangs at its window. */
import type { Privacy } from '#shared/words.ts';

export interface Hides {
  /** Covers the window when it is drawn or let down. */
  readonly closes: boolean;
  /** Lets the daylight in, and by night the lamps out. */
  readonly sheer: boolean;
}

/**
 * A sheer hides by day, a drapery or a shade by night (common practice): where both hang at a window each answers for its
 * own part. What does not close is asked for nothing where something beside it does.
 */
export function privacyFor(asked: Privacy | null, own: Hides, beside: readonly Hides[]): Privacy | null {
  if (asked === null) return null;
  const dense = beside.some((each) => each.closes && !each.sheer);
  const sheer = beside.some((each) => each.closes && each.sheer);
  if (!own.closes) return dense || sheer ? null : asked;
  if (own.sheer && dense) return asks(asked, 'day') ? 'day' : null;
  if (!own.sheer && sheer) return asks(asked, 'night') ? 'night' : null;
  return asked;
}

export function asks(privacy: Privacy | null, when: 'day' | 'night'): boolean {
  return privacy === when || privacy === 'always';
}
