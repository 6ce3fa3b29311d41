import { ROMAN_LENGTHS } from '#shared/treatments/roman-shade.ts';
import { settingsOf } from './help-text.ts';
import type { KindHelp } from './help-text.ts';

export const ROMAN_SHADE_HELP: KindHelp<'roman-shade'> = {
  kind: 'roman-shade',
  is: ['One piece of cloth on a board that is raised from below in folds, inside the frame or in front of it.'],
  measured: [
    {
      term: 'sizes are',
      says: 'Of the opening: readings of the frame, and the workroom deducts. Finished, deducted: the shade as it shall be. Deducting twice is a classic remake, so this is asked first.',
    },
    { term: 'width', says: 'Inside a frame, from side to side at top, middle and bottom. The narrowest counts.' },
    {
      term: 'length',
      says: 'Inside a frame, from the head to the sill at left, middle and right. Your practice says which counts.',
    },
    {
      term: 'diagonal',
      says: 'Corner to corner, both ways. Further apart than the setting, the frame is out of square: mount it outside.',
    },
    {
      term: 'frame depth, free',
      says: 'From the front edge to the first handle, tile or lip. The board has to fit into it.',
    },
    {
      term: 'raised, worked at',
      says: 'How it is raised and at which end. A motor takes some inches of the board there, and no cord can be wound in them.',
    },
    {
      term: 'board above frame, return',
      says: 'In front of the wall: from the frame up to the top of the board, and from the board back to the wall.',
    },
  ],
  shown: 'flat',
  styles: {
    flat: {
      name: 'Flat',
      says: 'Smooth when down, in level folds when raised. Ribs in the rows keep it square. Pattern reads whole.',
      settings: settingsOf('romanShade', ROMAN_LENGTHS, ['rowSpacing', 'columnSpacing']),
    },
    'soft-fold': {
      name: 'Soft folds',
      says: 'Folds that stay when it is down, one over the next. It takes about twice the length in cloth.',
      settings: [
        { name: 'cloth over the finished length', of: ({ romanShade }, say) => say.times(romanShade.softFoldFullness) },
        ...settingsOf('romanShade', ROMAN_LENGTHS, ['softFoldAdded']),
      ],
    },
    relaxed: {
      name: 'Relaxed',
      says: 'Two columns of rings alone, no ribs: the hem dips in the middle. For narrow windows and light cloth.',
      settings: settingsOf('romanShade', ROMAN_LENGTHS, ['relaxedExtra', 'relaxedInset']),
    },
  },
  reckoned: [
    'Finished size: inside a frame the narrowest width less its deduction, more for thick cloth; the length by the rule of your practice.',
    'Cut: finished width and length with what is turned at the sides, the top and the hem; more when it is lined. Cloth wide enough makes it in one piece; else a whole width in the middle and two equal sides.',
    'Pattern: a motif is placed from the board down. Soft folds take twice the cloth, so the way along them is doubled, and a motif larger than a fold is broken up. A valance of its own carries the pattern as far below the board as the shade.',
    'Rows of rings: the length by the usual spacing, to a whole number, then spaced again evenly. With the board line counted as a row, spacing is the length divided by the rows less a half; with head room, the rest divided by the ring rows and a half. The first row stands half a space up in both.',
    'Columns: one near each edge, one on every seam, and more so that none are too far apart.',
    'Height when raised: to the top row, each gathered row by its thickness, and half a fold below. Read it against the glass that is to stay free.',
  ],
  settings: settingsOf('romanShade', ROMAN_LENGTHS, [
    'insideDeduction',
    'thickDeduction',
    'diagonalTolerance',
    'unlinedWidth',
    'unlinedLength',
    'unlinedTop',
    'linedWidth',
    'linedLength',
    'linedTop',
    'largeRowSpacing',
    'edgeInset',
    'linedStack',
    'boardDepth',
  ]),
  sentBack: [
    'Sizes without their basis: opening or finished.',
    'One reading of the width instead of three; a frame out of square for an inside mount.',
    'A handle, a tile or a sill lip that the shade meets on its way down.',
    'No side returns on an outside mount, so that board and lift show from the side.',
    'No word on how it is raised and at which end.',
  ],
  cautions: [
    'Cords can strangle small children and pets. Cordless or with cords that cannot be reached is the default; in a nursery or a child’s room a cord within reach is a stop. Those behind have to be shrouded, or held so that none can be drawn into a loop. Local product-safety law and certified parts decide.',
    'Every ring is sewn through: a coated three-pass blackout shows each stitch as a point of daylight, and nothing mends that.',
    'A tight heavy shade over cold glass can gather damp and mould behind it, and some glass cracks from the heat in sun: the reading of warmth says when.',
    'The button cell of a remote is locked in: swallowed, it burns within hours. Motors are wired by licensed people.',
  ],
};
