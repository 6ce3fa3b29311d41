/** Settings of the practice by kind of treatment: their lengths as the tables declare them, and what is chosen. */
import { BED_SKIRT_LENGTHS } from '#shared/treatments/bed-skirt.ts';
import { BOARD_COVERS, BOARD_FIXINGS, WELT_GRAINS } from '#shared/treatments/board-practice.ts';
import { CORNICE_LENGTHS } from '#shared/treatments/cornice-practice.ts';
import type { LengthTable } from '#shared/treatments/length-settings.ts';
import {
  INSIDE_LENGTHS,
  RETURN_DROPS,
  ROMAN_LENGTHS,
  ROW_RULES,
  SOFT_FOLD_LININGS,
} from '#shared/treatments/roman-shade.ts';
import { SHOWER_LENGTHS } from '#shared/treatments/shower-curtain.ts';
import { SWAGS_LENGTHS } from '#shared/treatments/swags-practice.ts';
import { BOARD_TURNS, VALANCE_LENGTHS } from '#shared/treatments/valance-practice.ts';
import { choicesOf } from './kind-sheets/sheet.ts';

export interface ChosenSetting {
  readonly name: string;
  readonly label: string;
  readonly choices: readonly { readonly value: string; readonly name: string }[];
}
export interface NumberSetting {
  readonly name: string;
  readonly label: string;
  /** `fullness` and `share` are kept as ratios, `part` as it is. */
  readonly is: 'fullness' | 'share' | 'part';
}
export interface KindSettings {
  readonly section: 'valance' | 'cornice' | 'swags' | 'romanShade' | 'bedSkirt' | 'showerCurtain';
  readonly title: string;
  readonly lengths: LengthTable;
  readonly chosen: readonly ChosenSetting[];
  readonly numbers: readonly NumberSetting[];
}

const BOARD_CHOSEN: readonly ChosenSetting[] = [
  {
    name: 'boardCover',
    label: 'the board is covered with',
    choices: choicesOf(BOARD_COVERS, { lining: 'the lining', face: 'the face cloth', none: 'nothing' }),
  },
  {
    name: 'boardFixing',
    label: 'it is held to its board by',
    choices: choicesOf(BOARD_FIXINGS, { 'hook-tape': 'hook and loop tape', staples: 'staples' }),
  },
  {
    name: 'weltGrain',
    label: 'welts are cut on',
    choices: choicesOf(WELT_GRAINS, { bias: 'the bias', straight: 'the straight grain' }),
  },
];
const BOARD_NUMBERS: readonly NumberSetting[] = [
  { name: 'shallowestPart', label: 'Looks mean below one part of the whole drop in', is: 'part' },
  { name: 'deepestPart', label: 'Looks heavy above one part of the whole drop in', is: 'part' },
];

/** In the order of the kinds. */
export const KIND_SETTINGS: readonly KindSettings[] = [
  {
    section: 'valance',
    title: 'Valances',
    lengths: VALANCE_LENGTHS,
    chosen: [
      ...BOARD_CHOSEN,
      {
        name: 'boardTurnFrom',
        label: 'cloth on top of the board',
        choices: choicesOf(BOARD_TURNS, { 'board-depth': 'as deep as the board', given: 'the length below' }),
      },
    ],
    numbers: [
      ...BOARD_NUMBERS,
      { name: 'gatheredFullness', label: 'Fullness of a gathered one', is: 'fullness' },
      { name: 'scallopedFullness', label: 'Fullness of scallops on a rod', is: 'fullness' },
      { name: 'balloonFullness', label: 'Fullness of a balloon', is: 'fullness' },
    ],
  },
  { section: 'cornice', title: 'Cornices', lengths: CORNICE_LENGTHS, chosen: BOARD_CHOSEN, numbers: BOARD_NUMBERS },
  {
    section: 'swags',
    title: 'Swags',
    lengths: SWAGS_LENGTHS,
    chosen: BOARD_CHOSEN,
    numbers: [
      ...BOARD_NUMBERS,
      { name: 'flatWidth', label: 'Flat cloth along the lower edge, over the finished width', is: 'fullness' },
      { name: 'flatDepth', label: 'Flat cloth down the middle, over the finished depth', is: 'fullness' },
      { name: 'topShare', label: 'Top between the folds, of the finished width', is: 'share' },
    ],
  },
  {
    section: 'romanShade',
    title: 'Roman shades',
    lengths: ROMAN_LENGTHS,
    chosen: [
      {
        name: 'rowRule',
        label: 'rows are counted',
        choices: choicesOf(ROW_RULES, {
          'board-line': 'with the board line as a row',
          'head-room': 'as rings under the head room',
        }),
      },
      {
        name: 'insideLength',
        label: 'inside a frame the length is',
        choices: choicesOf(INSIDE_LENGTHS, {
          longest: 'the longest reading',
          'shortest-less': 'the shortest, less a little',
        }),
      },
      {
        name: 'softFoldLining',
        label: 'the lining of soft folds',
        choices: choicesOf(SOFT_FOLD_LININGS, { 'with-face': 'folds with the face', flat: 'hangs flat' }),
      },
      {
        name: 'returnDrop',
        label: 'side returns hang',
        choices: choicesOf(RETURN_DROPS, { length: 'over the whole length', stack: 'as deep as the raised stack' }),
      },
    ],
    numbers: [{ name: 'softFoldFullness', label: 'Cloth of soft folds, over the finished length', is: 'fullness' }],
  },
  {
    section: 'bedSkirt',
    title: 'Bed skirts',
    lengths: BED_SKIRT_LENGTHS,
    chosen: [],
    numbers: [
      { name: 'gatheredFullness', label: 'Fullness of a gathered one', is: 'fullness' },
      { name: 'boxFullness', label: 'Fullness of a box-pleated one', is: 'fullness' },
    ],
  },
  { section: 'showerCurtain', title: 'Shower curtains', lengths: SHOWER_LENGTHS, chosen: [], numbers: [] },
];
