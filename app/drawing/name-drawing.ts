/** Drawings in words, for those who cannot see them. */
import { formatLengthWithUnit } from '#shared/format-length.ts';
import type { Arrangement, Heading } from '#shared/words.ts';
import { exhaustive } from '#shared/fault.ts';
import type {
  DrawnOpening,
  DrawnPanels,
  DrawnRoom,
  DrawnRomanShade,
  DrawnTreatment,
  DrawnValance,
  Given,
} from './drawn-room.ts';
import { levelOfRoom } from './draw-level.ts';
import { isFurniture } from './drawn-treatment.ts';
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

/** Who names which kind of treatment; a new kind is one more line. */
export function nameTreatment(treatment: DrawnTreatment, wording: Wording): string {
  const size = (width: Given, length: Given) => `${say(width, wording)} wide, ${say(length, wording)} long`;
  switch (treatment.kind) {
    case 'panels':
      return namePanels(treatment, wording);
    case 'valance':
      return `${VALANCE_WORDS[treatment.style]} valance, ${size(treatment.width, treatment.finishedLength)}`;
    case 'cornice':
      return `padded cornice, ${size(treatment.width, treatment.finishedLength)}`;
    case 'swags':
      return (
        `${treatment.style} swags${treatment.cascades === null ? '' : ' with cascades'}` +
        `${treatment.jabots === null ? '' : ' and jabots'}, ${size(treatment.width, treatment.finishedLength)}`
      );
    case 'roman-shade':
      return (
        `${ROMAN_WORDS[treatment.style]} Roman shade ${treatment.mount.where === 'inside' ? 'inside' : 'in front of'} the frame, ` +
        `${treatment.drawn === 'lowered' ? 'let down' : 'half raised'}, ${size(treatment.width, treatment.finishedLength)}`
      );
    case 'bed-skirt':
      return (
        `${treatment.style} bed skirt, bed ${say(treatment.bed.width, wording)} by ${say(treatment.bed.length, wording)}, ` +
        `drop ${say(treatment.drop, wording)}`
      );
    case 'shower-curtain':
      return `shower curtain, ${size(treatment.finishedWidth, treatment.finishedLength)}`;
    default:
      return exhaustive(treatment);
  }
}

const VALANCE_WORDS: Readonly<Record<DrawnValance['style'], string>> = {
  tailored: 'tailored',
  'box-pleated': 'box-pleated',
  gathered: 'gathered',
  scalloped: 'scalloped',
  balloon: 'balloon',
};

const ROMAN_WORDS: Readonly<Record<DrawnRomanShade['style'], string>> = {
  flat: 'flat',
  'soft-fold': 'soft-fold',
  relaxed: 'relaxed',
};

function namePanels(panels: DrawnPanels, wording: Wording): string {
  return (
    `${HEADING_WORDS[panels.heading]} ${ARRANGEMENT_WORDS[panels.arrangement]}, ` +
    `${panels.drawn === 'open' ? 'open' : 'closed'}, rod face ${say(panels.rodWidth, wording)}, ` +
    `finished length ${say(panels.finishedLength, wording)}`
  );
}

export function nameOpening(opening: DrawnOpening, wording: Wording): string {
  const hungAt = opening.treatments.some((treatment) => !isFurniture(treatment)) || opening.treatments.length === 0;
  if (!hungAt) return `${opening.name}: ${opening.treatments.map((each) => nameTreatment(each, wording)).join('; ')}`;
  const size = `${opening.name}: wide ${say(opening.width, wording)}, high ${say(opening.height, wording)}, sill ${say(opening.sill, wording)}`;
  const hung = opening.treatments.map((treatment) => nameTreatment(treatment, wording));
  return `${size}; ${hung.length === 0 ? 'no treatment' : hung.join('; ')}`;
}

/** `detail`: on paper the level of a room is not drawn, and so not told. */
export function nameRooms(rooms: readonly DrawnRoom[], wording: Wording, detail: 'screen' | 'paper' = 'paper'): string {
  if (rooms.length === 0) return 'No rooms yet';
  const parts = rooms.map((room) => {
    const openings = room.openings.map((opening) => nameOpening(opening, wording));
    const level = detail === 'screen' ? levelOfRoom(room) : null;
    const motifs = level === null ? '' : `, motifs at one level, ${say(level, wording)} above the floor`;
    return `${room.name}, ceiling ${say(room.ceiling, wording)}${motifs}. ${openings.length === 0 ? 'No openings yet' : openings.join('. ')}`;
  });
  return `Elevation to scale. ${parts.join('. ')}.`;
}
