/** Words of the project: rooms, openings, treatments, stacks, working. */
import type { Place } from '#app/lining/place-of-kind.ts';
import type { TreatmentKind } from '#shared/treatments/treatment.ts';

export const NEW_NAMES = {
  room: 'Room',
  opening: (count: number) => (count === 1 ? 'Window' : `Window ${count}`),
  addedRoom: (name: string) => `${name} added`,
  bed: 'Bed',
  bath: 'Bath',
  addedOpening: (name: string) => `${name} added`,
  addedTreatment: (opening: string) => `treatment added to ${opening}`,
} as const;

/** Names of fields, as labels and in what is said about them. */
export const FIELD_WORDS: Readonly<Record<string, string>> = {
  width: 'opening wide',
  height: 'opening high',
  sill: 'sill from the floor',
  at: 'from the left wall',
  glazing: 'glass',
  heatSourceBelow: 'heat source below',
  measured: 'measured',
  notes: 'notes',
  ceiling: 'ceiling',
  mountWhere: 'hung',
  mountAbove: 'rod above frame',
  rodWidth: 'rod face',
  finishedLength: 'finished length',
  clearance: 'floor clearance',
  returnLeft: 'return, left',
  returnRight: 'return, right',
  overlap: 'overlap, in all',
  fullness: 'fullness',
  halfWidths: 'widths each, instead',
  heading: 'heading',
  arrangement: 'draw',
  quantity: 'how many alike',
  face: 'cloth',
};

export const READING_LABELS = {
  light: 'light',
  colour: 'by day',
  warmth: 'warmth',
  fade: 'fading',
  body: 'body',
} as const;

/** What each of the five readings is made of, by the ids of `app/lining/say/list-readings.ts`. */
export const READING_PARTS: Readonly<Record<keyof typeof READING_LABELS, readonly string[]>> = {
  light: ['light', 'lightWithGlass', 'lightInRoom'],
  colour: ['colourShift'],
  warmth: ['warmth', 'windowU', 'heatSaved', 'glassTemperature', 'sunGain'],
  fade: ['fade'],
  body: ['body', 'weight'],
};

/** What is worth reading of a stack, by where it hangs: nothing of light where no window is behind it. */
export const READINGS_OF = {
  window: ['light', 'colour', 'warmth', 'fade', 'body'],
  top: ['colour', 'fade', 'body'],
  board: ['body'],
  away: ['body'],
} as const satisfies Readonly<Record<Place, readonly (keyof typeof READING_LABELS)[]>>;

export const WEIGHT_WORDS: Readonly<Record<TreatmentKind, string>> = {
  panels: 'on the rod',
  valance: 'its weight',
  cornice: 'its cloth weighs',
  swags: 'its weight',
  'roman-shade': 'on the board',
  'bed-skirt': 'its weight',
  'shower-curtain': 'on the rod',
};

/** Of what stands in no window, instead of its picture by day and night. */
export const NO_WINDOW = 'It stands in no window: no daylight is behind it, and it looks alike by day and by night.';

/** What hangs where at one window: the tabs run from the room to the glass, as the engine reckons. */
export const ORDER_WORDS = {
  room: 'room',
  glass: 'glass',
  towardsRoom: 'Towards the room',
  towardsGlass: 'Towards the glass',
  before: (name: string) => `Move before ${name}`,
  after: (name: string) => `Move after ${name}`,
  moved: (name: string) => `${name} moved`,
} as const;

export const SAMPLE_MARK = 'sample, invented';

/** What "fill in what is usual" writes: the numbers of state/suggest-make.ts. */
export function usualWords(unit: 'in' | 'cm' | 'mm'): string {
  const rod =
    unit === 'in'
      ? 'The rod goes 6 in past the window on each side and 4 in above it, returns and overlap are 3½ in, the hem hangs ½ in off the floor'
      : 'The rod goes 15 cm past the window on each side and 10 cm above it, returns and overlap are 9 cm, the hem hangs 1.5 cm off the floor';
  return `${rod} (common practice). Only empty lines are filled, and undo takes it back.`;
}

export const MADE_ALIKE =
  'The new window is made like the one before, in the same cloth; only its sizes are open. Change what differs.';

/** The same of other kinds: the numbers of state/suggest-form.ts. */
export const USUAL_KIND =
  'From the window, and from what hangs beside it (common practice). Only empty lines are filled, and undo takes it back.';
