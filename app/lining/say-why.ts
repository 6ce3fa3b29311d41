/** Why a stack, in the words of its readings; the needs of the room decide which readings are told first. */
import { exhaustive } from '#shared/fault.ts';
import type { Judgement } from '#shared/result.ts';
import type { Heading, RoomUse } from '#shared/words.ts';
import { sayAbout, sayList } from './say-number.ts';
import { NEARLY_DARK } from './say-readings.ts';
import { meetNeeds, NEED_NAMES } from './weigh-needs.ts';
import type { NeedName, Needs } from './weigh-needs.ts';

const ROOM_NAMES: Readonly<Record<RoomUse, string>> = {
  living: 'living room',
  dining: 'dining room',
  bedroom: 'bedroom',
  nursery: 'nursery',
  child: "child's room",
  bath: 'bathroom',
  kitchen: 'kitchen',
  study: 'study',
  media: 'media room',
  hall: 'hall',
  sunroom: 'sunroom',
  public: 'public room',
};

export function nameRoom(use: RoomUse): string {
  return ROOM_NAMES[use];
}

/** The two things this stack does most of what the room asks for: `nearly dark by day and about 98 % of the fading kept off`. */
export function sayStrengths(judgement: Judgement, needs: Needs, heading: Heading): string {
  const met = meetNeeds(judgement, heading);
  const told = [...NEED_NAMES]
    // Where no daylight comes through, that its colour is kept is no merit.
    .filter((name) => needs[name] > 0 && !(name === 'colour' && judgement.readings.light < NEARLY_DARK))
    .sort((a, b) => needs[b] * met[b] - needs[a] * met[a] || NEED_NAMES.indexOf(a) - NEED_NAMES.indexOf(b))
    .map((name) => sayNeed(name, judgement));
  return sayList(told.filter((text, i) => told.indexOf(text) === i).slice(0, 2));
}

function sayNeed(name: NeedName, { readings, words }: Judgement): string {
  switch (name) {
    case 'dark':
    case 'daylight':
      return `${words.light.words} by day`;
    case 'colour':
      return `colours ${words.colour.words} by day`;
    case 'warmth':
      return words.warmth.words === 'hardly' ? 'hardly any warmth' : `${words.warmth.words} warmth`;
    case 'fade':
      return readings.fade > 0 ? `${sayAbout(readings.fade)} of the fading kept off` : 'fading not slowed';
    case 'body':
      return `${words.body.words} folds`;
    default:
      return exhaustive(name);
  }
}
