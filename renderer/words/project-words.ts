/** Words of the project: rooms, openings, treatments, stacks, working. */
export const NEW_NAMES = {
  room: 'Room',
  opening: (count: number) => (count === 1 ? 'Window' : `Window ${count}`),
  treatment: (count: number) => (count === 1 ? 'Panels' : `Panels ${count}`),
  addedRoom: (name: string) => `${name} added`,
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

export const HOUR_WORDS = { overcast: 'overcast', noon: 'noon', dusk: 'dusk', lamplight: 'lamplight' } as const;

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
  'The new window is made like the one before: heading, draw, returns, overlap, fullness and cloth. Change what differs.';
