/** What the height of a panel's fixing is read at, by its heading and where it hangs (common practice). */
import type { Heading, MountPlace } from '#shared/words.ts';

export type Fixing = 'ring' | 'track' | 'pole' | 'pocket' | 'tab';

const FIXINGS: Readonly<Record<Heading, Fixing>> = {
  'pinch-pleat': 'ring',
  goblet: 'ring',
  'box-pleat': 'track',
  'pencil-pleat': 'track',
  wave: 'track',
  flat: 'ring',
  grommet: 'pole',
  'rod-pocket': 'pocket',
  tab: 'tab',
};

export const FIXING_WORDS: Readonly<Record<Fixing, string>> = {
  ring: 'eye of the ring',
  track: 'underside of the track',
  pole: 'top of the pole',
  pocket: 'top of the pole in its pocket',
  tab: 'top of the pole',
};

/** A pleated heading hangs from rings on a pole, or from a track under a ceiling or inside a frame. */
export function fixingOf(heading: Heading, where: MountPlace): Fixing {
  const fixing = FIXINGS[heading];
  return fixing === 'ring' && where !== 'wall' ? 'track' : fixing;
}
