import { CORNICE_LENGTHS } from '#shared/treatments/cornice-practice.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const CORNICE_HELP: KindHelp<'cornice'> = {
  kind: 'cornice',
  is: [
    'A box of board across the head of a window: a face, two ends and a dust board on top, padded and covered with cloth, lined inside.',
  ],
  measured: [
    { term: 'top above frame', says: 'From the top of the frame up to the top of the box.' },
    {
      term: 'face of the box',
      says: 'The outside of the box, end to end. Inside, it has to clear rod, finials and the stacked panels.',
    },
    {
      term: 'return',
      says: 'The outside depth of each end, from the wall to the front. At a corner wall that end is left out.',
    },
    { term: 'height at its longest', says: 'From the top of the box to its lowest point.' },
    {
      term: 'shaped edge, along it',
      says: 'For a shaped lower edge only: its length measured along a paper template, for the welt.',
    },
  ],
  shown: 'straight',
  styles: {
    straight: { name: 'Straight', says: 'A level lower edge. Pattern runs on across face and ends.' },
    shaped: {
      name: 'Shaped',
      says: 'A lower edge cut to a template, which goes to the workroom at full size. The box is cut from its greatest height.',
    },
  },
  reckoned: [
    'Boards: the face covers the ends; the ends are as deep as the return less one thickness; the dust board lies between them.',
    'Cut width: face and both ends, what the padding takes and what is turned to the back, both sides.',
    'Widths: one whole width in the middle and the rest in two equal side pieces, never a seam in the middle.',
    'Cut: height, padding and turns above and below; up to whole repeats where the cloth has one.',
    'Pattern: a motif is placed from the top of the box; padding and turn come off before it.',
    'Lining inside the box, the cover of its boards, and the welts are cut besides.',
  ],
  settings: settingsOf('cornice', CORNICE_LENGTHS, [
    'boardDepth',
    'boardThickness',
    'wrap',
    'padding',
    'liningTurn',
    'weltStrip',
    'weltEnds',
  ]),
  sentBack: [
    'Inside sizes given as outside sizes: the thickness of the board is then taken twice, or not at all.',
    'A shaped edge without its template.',
    'A depth that leaves no room for the rod, its rings or a raised shade underneath.',
  ],
  cautions: [
    'Box, padding and cloth are heavy and hang overhead: brackets into structure, and two people to hang it.',
    'The program weighs the cloth, not the box: ask whoever builds it.',
    'Cloth and padding near a lamp or a heater must stay clear of it; a public room needs the whole made piece to comply with its code.',
  ],
};
