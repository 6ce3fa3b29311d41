/**
 * What to heed. Stops and cautions of the engine stand at each window they are about, and so does what a client has to know of
 * one window alone; a note about several stands among those for all. Then what every proposal says, whatever was found.
 */
import type { Job } from '#shared/job.ts';
import type { Advice } from '#shared/result.ts';
import { isForClient } from '#app/lining/rules/index.ts';
import { TIERS } from '#shared/words.ts';
import type { Tier } from '#shared/words.ts';
import { hangsAtWindow } from './hangs-at-window.ts';
import { cordNote } from './kind-notes.ts';
import type { ListedWindow } from './listed-window.ts';
import type { PaperNote } from './proposal-paper.ts';
import { sayList, typeset } from './speak.ts';

export type NotesByWindow = ReadonlyMap<string, readonly PaperNote[]>;

export interface CollectedNotes {
  /** By the treatment's key. */
  readonly own: NotesByWindow;
  readonly shared: readonly PaperNote[];
}

interface Heeded {
  readonly advice: Advice;
  /** Options it is about, by window. */
  readonly at: Map<ListedWindow, Tier[]>;
}

export function collectNotes(job: Job, windows: readonly ListedWindow[]): CollectedNotes {
  const heeded = gather(windows);
  const own = new Map<string, PaperNote[]>();
  const shared: PaperNote[] = [];
  for (const { advice, at } of heeded) {
    // Before she signs a client reads a caution beside the options it is about; a note of many windows is said once.
    if (advice.level === 'note' && at.size > 1) {
      shared.push({ about: aboutSeveral(job, windows, at), says: typeset(advice.says) });
      continue;
    }
    for (const [window, tiers] of at) {
      const note: PaperNote = { about: sayTiers(job, tiers), says: typeset(advice.says) };
      const { level } = advice;
      const marked = level === 'stop' || level === 'caution' ? { ...note, level } : note;
      own.set(window.treatment.key, addNote(own.get(window.treatment.key) ?? [], marked));
    }
  }
  return { own, shared: [...shared, ...alwaysSaid(job, windows, heeded)] };
}

/** Notes about the same options stand in one. */
function addNote(notes: readonly PaperNote[], note: PaperNote): PaperNote[] {
  const same = notes.findIndex(({ about, level }) => about === note.about && level === note.level);
  if (same < 0) return [...notes, note];
  return notes.map((each, i) => {
    if (i !== same) return each;
    return { ...each, says: `${each.says} ${note.says}`, parts: [...(each.parts ?? [each.says]), note.says] };
  });
}

/** Stops first, then cautions, then what a client has to know, in the order of the windows. */
function gather(windows: readonly ListedWindow[]): readonly Heeded[] {
  const found = new Map<string, Heeded>();
  for (const window of windows) {
    for (const tier of TIERS) {
      for (const advice of window.result.tiers[tier].judgement.advice) {
        if (advice.level === 'praise' || (advice.level === 'note' && !isForClient(advice.rule))) continue;
        const heeded = found.get(advice.says) ?? { advice, at: new Map<ListedWindow, Tier[]>() };
        heeded.at.set(window, [...(heeded.at.get(window) ?? []), tier]);
        found.set(advice.says, heeded);
      }
    }
  }
  const all = [...found.values()];
  const level = (wanted: Advice['level']) => all.filter(({ advice }) => advice.level === wanted);
  return [...level('stop'), ...level('caution'), ...level('note')];
}

/** Empty when it is about all three. */
function sayTiers(job: Job, tiers: readonly Tier[]): string {
  if (tiers.length === TIERS.length) return '';
  return sayList(TIERS.filter((tier) => tiers.includes(tier)).map((tier) => job.proposal.tierNames[tier]));
}

/** The windows a note is about: a room by its name alone when it is about all of the room's windows. */
function aboutSeveral(job: Job, windows: readonly ListedWindow[], at: Heeded['at']): string {
  const words = new Map([...at.entries()].map(([window, tiers]) => [window, sayTiers(job, tiers)]));
  const all = [...words.values()];
  const same = all.every((each) => each === all[0]);
  const tail = (tiers: string) => (tiers === '' ? '' : ` (${tiers})`);
  if (at.size === windows.length && same) return all[0] ?? '';
  const places: string[] = [];
  for (const room of new Set([...words.keys()].map((window) => window.room))) {
    const inRoom = windows.filter((window) => window.room === room);
    const tiers = inRoom.map((window) => words.get(window));
    const whole = inRoom.length > 1 && tiers.every((each) => each !== undefined && each === tiers[0]);
    if (whole) places.push(room.name + (same ? '' : tail(tiers[0] ?? '')));
    else
      for (const window of inRoom.filter((each) => words.has(each)))
        places.push(`${room.name}, ${window.name}${same ? '' : tail(words.get(window) ?? '')}`);
  }
  return `${places.join('; ')}${same ? tail(all[0] ?? '') : ''}`;
}

/** What every proposal says unless the engine has said it already (by its rule). */
function alwaysSaid(job: Job, windows: readonly ListedWindow[], heeded: readonly Heeded[]): readonly PaperNote[] {
  const isSaid = (word: string) => heeded.some(({ advice }) => advice.rule.includes(word));
  const general = (says: string): PaperNote => ({ about: '', says });
  const atWindows = windows.filter(({ treatment }) => hangsAtWindow(treatment));
  const notes: PaperNote[] = [...cordNotes(job, windows, heeded)];
  // Said of every house: a note of one window's radiator does not speak for the lamp of the next.
  notes.push(
    general(
      'Cloth hangs clear of heaters, radiators, stoves, lamps, floor vents and open flames; escape windows and exits stay free.',
    ),
  );
  if (windows.some(({ room }) => room.use === 'public') && !isSaid('flame')) {
    notes.push(
      general(
        'In a public room the finished stack, not each cloth alone, has to meet the flame test that the local code and the authority having jurisdiction ask for.',
      ),
    );
  }
  if (atWindows.length > 0)
    notes.push(...weightNotes(job, windows, atWindows, heeded), general(LADDERS), general(sayAbout(atWindows)));
  return notes;
}

/** Said of what hangs overhead, unless the engine has warned there that it is heavy whichever option is taken. */
function weightNotes(
  job: Job,
  windows: readonly ListedWindow[],
  atWindows: readonly ListedWindow[],
  heeded: readonly Heeded[],
): readonly PaperNote[] {
  const warned = warnedOf(heeded, 'heavy-hang', TIERS.length);
  const left = atWindows.filter((window) => !warned.has(window));
  if (left.length === 0) return [];
  const about =
    left.length === atWindows.length
      ? ''
      : aboutSeveral(job, windows, new Map(left.map((window) => [window, [...TIERS]])));
  return [{ about, says: WEIGHT }];
}

/** Windows that the engine has warned of, in so many options at the least, by rules whose name holds a word. */
function warnedOf(heeded: readonly Heeded[], word: string, options = 1): ReadonlySet<ListedWindow> {
  const said = heeded.filter(({ advice }) => advice.rule.includes(word)).flatMap(({ at }) => [...at.entries()]);
  return new Set(said.filter(([, tiers]) => tiers.length >= options).map(([window]) => window));
}

const WEIGHT =
  'Rods, boards and brackets carry real weight: the maker’s rating and a competent installer decide how and into what they are fixed.';
const LADDERS =
  'Work on ladders, drilling into old paint or plaster (which may hold lead or asbestos) and the wiring of an electric motor are for those whom the local code lets do it.';

/** Cords by kind: said once for all that are worked alike, unless the engine has warned of them there. */
function cordNotes(job: Job, windows: readonly ListedWindow[], heeded: readonly Heeded[]): readonly PaperNote[] {
  const warned = warnedOf(heeded, 'cord');
  const said = new Map<string, ListedWindow[]>();
  for (const window of windows) {
    if (warned.has(window)) continue;
    const says = cordNote(window.treatment, window.room);
    if (says !== null) said.set(says, [...(said.get(says) ?? []), window]);
  }
  const several = said.size > 1 || [...said.values()].some((at) => at.length < windows.length);
  return [...said.entries()].map(([says, at]) => ({
    about: several ? aboutSeveral(job, windows, new Map(at.map((window) => [window, [...TIERS]]))) : '',
    says,
  }));
}

function sayAbout(windows: readonly ListedWindow[]): string {
  const assumed = windows.some(({ result }) => TIERS.some((tier) => result.tiers[tier].judgement.assumed.length > 0));
  const rests = assumed
    ? 'Where a maker gives no measured value, one typical of that kind of cloth is assumed.'
    : 'They rest on the values given for each cloth.';
  return (
    `What is “about” is computed for your glass, this way of hanging and these cloths; no test was made in your room. ${rests} ` +
    'By light stands the share of the daylight at the glass that comes through the cloth; by warmth the share of the heat lost through the window that is kept in while the cloth is drawn; by fading, the share of the damage by light that is kept off the face. ' +
    'A sample held in your own window, by day and by lamplight, is always the best judge.'
  );
}
