/** In words what the slider shows: the hour, how much light comes through the face, and what it does to its colours. */
import type { FaceAppearance, Sky } from '../light-and-heat/show-light.ts';
import { DEEP_SHIFT } from './say-readings.ts';
import { sayHidden } from './say-why.ts';

interface Step {
  readonly from: number;
  readonly words: string;
}

const SKIES: readonly Step[] = [
  { from: 0.85, words: 'noon sun' },
  { from: 0.55, words: 'hazy sun' },
  { from: 0.2, words: 'thin cloud' },
  { from: 0, words: 'overcast' },
];

/** `noon sun`, `overcast`; `lamplight` by night. */
export function saySky(sky: Sky): string {
  if (sky === null) return 'lamplight';
  return SKIES.find((step) => sky >= step.from)?.words ?? 'overcast';
}

/** By the share of what is seen of the face that has come through it. */
const THROUGH: readonly Step[] = [
  { from: 0.6, words: 'lit mostly from behind' },
  { from: 0.25, words: 'the light behind it shows' },
  { from: 0.04, words: 'a little light shows through' },
  { from: 0, words: 'no light shows through' },
];

/** What is seen at once: daylight and room light together, so less than the daylight reading alone. */
const SHIFTS: readonly (Step & { readonly cooler: string })[] = [
  { from: 11, words: 'clearly yellower than by lamplight', cooler: 'clearly cooler than by lamplight' },
  { from: 7, words: 'warmer than by lamplight', cooler: 'cooler than by lamplight' },
  { from: DEEP_SHIFT, words: 'a touch warmer than by lamplight', cooler: 'a touch cooler than by lamplight' },
  { from: 1, words: 'hardly warmer than by lamplight', cooler: 'hardly cooler than by lamplight' },
  { from: 0, words: 'coloured as by lamplight', cooler: 'coloured as by lamplight' },
];

/** `lit mostly from behind, hardly warmer than by lamplight`; by night `lit from the room alone`, and what the street sees. */
export function sayAppearance(seen: FaceAppearance, sky: Sky, closes: number | null): string {
  if (sky === null) return `lit from the room alone${closes === null ? '' : `; ${sayHidden(closes)}`}`;
  const through = THROUGH.find((step) => seen.through >= step.from)?.words ?? '';
  const shift = SHIFTS.find((step) => seen.shift >= step.from);
  return `${through}, ${(seen.warmer ? shift?.words : shift?.cooler) ?? ''}`;
}
