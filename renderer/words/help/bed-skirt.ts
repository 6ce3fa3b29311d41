import { BED_SKIRT_LENGTHS } from '#shared/treatments/bed-skirt.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const BED_SKIRT_HELP: KindHelp<'bed-skirt'> = {
  kind: 'bed-skirt',
  is: [
    'Cloth round three sides of a bed, from the platform under the mattress to the floor: sewn to a deck that lies under the mattress, or held by hook and loop tape.',
  ],
  measured: [
    {
      term: 'platform wide, platform long',
      says: 'Of the box spring or platform, edge to edge, not of the mattress or the bed frame.',
    },
    {
      term: 'drop to the hem',
      says: 'From the top of the platform to the hem, the clearance to the floor already taken. Read it at both sides and the foot; rugs count.',
    },
    { term: 'no skirt at', says: 'The side at the wall: the head, or one long side of a day bed.' },
    {
      term: 'open corners, for posts',
      says: 'For a bed with posts or a footboard: three pieces, with a tongue of cloth behind each open corner.',
    },
  ],
  shown: 'gathered',
  styles: {
    gathered: {
      name: 'Gathered',
      says: 'Drawn up all round.',
      settings: [{ name: 'usual fullness', of: ({ bedSkirt }, say) => say.times(bedSkirt.gatheredFullness) }],
    },
    tailored: {
      name: 'Tailored',
      says: 'Flat sides with a pleat at each corner, and more between where you ask for them.',
      settings: settingsOf('bedSkirt', BED_SKIRT_LENGTHS, ['cornerPleat', 'middlePleat']),
    },
    'box-pleated': {
      name: 'Box-pleated',
      says: 'Boxes side by side all round, spaced again so that they come out whole at the corners.',
      settings: [
        { name: 'usual fullness', of: ({ bedSkirt }, say) => say.times(bedSkirt.boxFullness) },
        ...settingsOf('bedSkirt', BED_SKIRT_LENGTHS, ['boxPleat']),
      ],
    },
  },
  reckoned: [
    'Three sides: both long sides and the foot, or the long side and both ends of a day bed.',
    'Strip: the sides times the fullness, or with what the pleats take, and a hem at each open end.',
    'Cut drop: the drop, the bottom hem and the seam to the deck.',
    'Widths: upright, the strip by the usable width of the cloth, up, each as long as the cut drop and, with a pattern, up to whole repeats. Sideways, long strips along the selvage: fewer seams, as a rule more cloth. The program takes what takes less, unless told.',
    'Pattern: placed from the top of the platform on upright widths. The level of the room asks how high the platform stands.',
    'Deck: the platform with its seams and one hem, cut from the cloth you choose for it.',
  ],
  settings: settingsOf('bedSkirt', BED_SKIRT_LENGTHS, [
    'hem',
    'topSeam',
    'endHem',
    'underlay',
    'deckSeam',
    'deckHem',
    'liningHem',
    'liningShorter',
  ]),
  sentBack: [
    'The size of the mattress instead of the platform.',
    'A drop without saying whether the clearance is taken.',
    'Posts, a footboard or castors that nobody mentioned.',
  ],
  cautions: [
    'The hem stays off the floor so that nobody trips and air passes under the bed.',
    'Keep it clear of heaters, floor vents and the cables of an electric bed.',
  ],
};
