import { SHOWER_LENGTHS } from '#shared/treatments/shower-curtain.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const SHOWER_CURTAIN_HELP: KindHelp<'shower-curtain'> = {
  kind: 'shower-curtain',
  is: [
    'A flat curtain on rings through eyelets in front of a bath or a shower, with a liner of its own if wanted: one that is bought ready, or one that is made.',
  ],
  measured: [
    {
      term: 'finished width',
      says: 'Of all pieces together, as they hang flat: the rod and a little more, so that the edges close at the walls.',
    },
    {
      term: 'finished length',
      says: 'From the top edge to the hem. Outside the tub it clears the floor; the liner hangs inside and shorter.',
    },
    { term: 'eyelets a piece', says: 'As many as the rings you have; left empty, by the usual spacing.' },
  ],
  shown: 'one-piece',
  styles: {
    'one-piece': { name: 'One piece', says: 'Drawn to one side.' },
    pair: { name: 'A pair', says: 'Drawn to both sides, each with its own side hems and eyelets.' },
  },
  reckoned: [
    'Cut width: the finished width of a piece and both its side hems.',
    'Widths: by the usable width of the cloth, up. Seams keep clear of the eyelets.',
    'Cut: finished length, top turn and bottom hem; up to whole repeats where the cloth has one.',
    'Pattern: placed from the finished top. The level of the room asks how high the top hangs.',
    'Eyelets: one for each spacing, up; the outer ones stand in from the edge and the rest share what is between.',
    'A lining sewn in lies edge to edge inside the side hems; a liner is a curtain of its own on the same rings.',
  ],
  settings: settingsOf('showerCurtain', SHOWER_LENGTHS, [
    'topHem',
    'bottomHem',
    'sideHem',
    'eyeletSpacing',
    'eyeletInset',
    'linerShorter',
    'liningHem',
    'liningShorter',
  ]),
  sentBack: [
    'A width that is only as wide as the rod: it gapes at the walls.',
    'A number of eyelets that does not match the rings.',
    'Interlining or a cloth for dry cleaning in a damp room.',
  ],
  cautions: [
    'Damp rooms breed mould: cloth that can be washed, shrunk before it is cut, and a liner that keeps the water off.',
    'A long hem on a wet floor is a slip; it clears the floor.',
    'Nothing electric within reach of water: local code and licensed people decide.',
  ],
};
