/** Drawings in words, for those who cannot see them. */
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { Arrangement, Heading } from '#shared/words.ts';
import type { DrawnOpening, DrawnPanels, DrawnRoom, DrawnTreatment, Given } from './drawn-room.ts';
import type { Wording } from './dimension-opening.ts';

const HEADING_WORDS: Readonly<Record<Heading, string>> = {
  'pinch-pleat': 'pinch-pleated',
  goblet: 'goblet-pleated',
  'box-pleat': 'box-pleated',
  'pencil-pleat': 'pencil-pleated',
  'rod-pocket': 'rod-pocket',
  tab: 'tab-top',
  grommet: 'grommet',
  wave: 'wave',
  flat: 'flat',
};

const ARRANGEMENT_WORDS: Readonly<Record<Arrangement, string>> = {
  pair: 'pair of panels',
  'one-way': 'one-way panel',
  single: 'single panel',
  'pair-stationary': 'stationary pair of panels',
};

function say(length: Given, wording: Wording): string {
  return length === null
    ? 'not measured'
    : formatLengthWithUnit(length, wording.units, { fractions: 'set', decimal: wording.decimal });
}

export function nameTreatment(treatment: DrawnTreatment, wording: Wording): string {
  return NAMES[treatment.kind](treatment, wording);
}

/** Who names which kind of treatment; a new kind is one more line. */
const NAMES = { panels: namePanels } as const satisfies Record<DrawnTreatment['kind'], unknown>;

function namePanels(panels: DrawnPanels, wording: Wording): string {
  return (
    `${HEADING_WORDS[panels.heading]} ${ARRANGEMENT_WORDS[panels.arrangement]}, ` +
    `${panels.drawn === 'open' ? 'open' : 'closed'}, rod face ${say(panels.rodWidth, wording)}, ` +
    `finished length ${say(panels.finishedLength, wording)}`
  );
}

export function nameOpening(opening: DrawnOpening, wording: Wording): string {
  const size = `${opening.name}: wide ${say(opening.width, wording)}, high ${say(opening.height, wording)}, sill ${say(opening.sill, wording)}`;
  const hung = opening.treatments.map((treatment) => nameTreatment(treatment, wording));
  return `${size}; ${hung.length === 0 ? 'no treatment' : hung.join('; ')}`;
}

export function nameRooms(rooms: readonly DrawnRoom[], wording: Wording): string {
  if (rooms.length === 0) return 'No rooms yet';
  const parts = rooms.map((room) => {
    const openings = room.openings.map((opening) => nameOpening(opening, wording));
    return `${room.name}, ceiling ${say(room.ceiling, wording)}. ${openings.length === 0 ? 'No openings yet' : openings.join('. ')}`;
  });
  return `Elevation to scale. ${parts.join('. ')}.`;
}
