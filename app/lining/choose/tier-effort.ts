/** How much cloth and labour each of the three options may take. */
import type { FaceCloth } from '#shared/cloth.ts';
import type { Tier } from '#shared/words.ts';
import type { Place } from '../place-of-kind.ts';
import type { Needs } from './weigh-needs.ts';

/** From, to, on the scale of `list-candidates.ts`. The bands overlap, and each tier is above the one before. */
export type TierEffort = Readonly<Record<Tier, readonly [number, number]>>;

const AT_WINDOW: TierEffort = { good: [0, 1.7], better: [1.4, 3.4], best: [2.9, 9] };
/** Where nobody wants it dark a sheer hangs alone or on a light lining; more is already much. */
const OF_SHEER: TierEffort = { good: [0, 0.5], better: [0.5, 1.7], best: [1.7, 9] };
/** A lining that hides the line of the glass is a step above the plain one. */
const AT_TOP: TierEffort = { good: [0, 1.4], better: [1.4, 3.4], best: [2.9, 9] };
/** And so where light does not matter. */
const AWAY: TierEffort = { good: [0, 0.5], better: [0.5, 1.2], best: [1.2, 9] };

export function effortsFor(face: FaceCloth, needs: Needs, place: Place): TierEffort {
  if (place === 'away') return AWAY;
  if (place === 'top') return AT_TOP;
  return face.family === 'sheer' && needs.dark === 0 ? OF_SHEER : AT_WINDOW;
}
