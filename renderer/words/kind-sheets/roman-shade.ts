/** What the worksheet asks of a Roman shade: first what was measured, so that nothing is deducted twice. */
import { RIB_PLACES, ROMAN_STYLES, SHADE_LIFTS } from '#shared/treatments/roman-shade.ts';
import type { TicksForm } from '#shared/records/treatment-make.ts';
import { patternGroup } from './pattern.ts';
import { choicesOf } from './sheet.ts';
import type { Asked, KindSheet } from './sheet.ts';
import { MOUNT_LINE, aboveLine, isOutside } from './top.ts';

const STYLE_WORDS = { flat: 'flat', 'soft-fold': 'soft folds', relaxed: 'relaxed' } as const;
const LIFT_WORDS = {
  cordless: 'cordless',
  'inaccessible-cords': 'cords out of reach',
  motor: 'by a motor',
  cords: 'cords',
} as const;
const RIB_WORDS = { rows: 'in the rows', none: 'none' } as const;

function basisOf(form: TicksForm): string {
  const size = form['size'];
  return typeof size === 'object' && size !== null ? String((size as { readonly basis?: unknown }).basis) : 'opening';
}
const fromOpening = ({ form }: Asked): boolean => basisOf(form) === 'opening';
const fromFinished = ({ form }: Asked): boolean => basisOf(form) === 'finished';

export const ROMAN_SHADE_SHEET: KindSheet = {
  kind: 'roman-shade',
  start: () => ({ style: 'flat', mount: { where: 'inside' }, size: { basis: 'opening' } }),
  measured: [
    'size.widths',
    'size.lengths',
    'size.diagonals',
    'size.depth',
    'size.width',
    'size.length',
    'rows',
    'columns',
    'pattern.topAt',
  ],
  groups: [
    {
      id: 'size',
      lines: [
        { type: 'choice', path: 'style', label: 'style', choices: choicesOf(ROMAN_STYLES, STYLE_WORDS) },
        MOUNT_LINE,
        aboveLine('board above frame'),
        {
          type: 'choice',
          path: 'size.basis',
          label: 'sizes are',
          choices: [
            { value: 'opening', name: 'of the opening' },
            { value: 'finished', name: 'finished, deducted' },
          ],
        },
        {
          type: 'readings',
          of: 'length',
          path: 'size.widths',
          label: 'width',
          names: ['width, top', 'width, middle', 'width, bottom'],
          shown: () => 3,
          applies: fromOpening,
        },
        {
          type: 'readings',
          of: 'length',
          path: 'size.lengths',
          label: 'length',
          names: ['length, left', 'length, middle', 'length, right'],
          shown: () => 3,
          applies: fromOpening,
        },
        {
          type: 'readings',
          of: 'length',
          path: 'size.diagonals',
          label: 'diagonal',
          names: ['diagonal, one', 'diagonal, other'],
          shown: () => 2,
          applies: (asked) => fromOpening(asked) && !isOutside(asked),
        },
        {
          type: 'length',
          path: 'size.depth',
          label: 'frame depth, free',
          applies: (asked) => fromOpening(asked) && !isOutside(asked),
        },
        { type: 'length', path: 'size.width', label: 'finished width', applies: fromFinished },
        { type: 'length', path: 'size.length', label: 'finished length', applies: fromFinished },
        { type: 'flag', path: 'thick', label: 'thick cloth', applies: (asked) => !isOutside(asked) },
        {
          type: 'sides',
          path: 'return',
          label: 'return',
          applies: isOutside,
          usual: ({ practice }) => practice.romanShade.boardDepth,
        },
      ],
    },
    {
      id: 'make',
      title: 'Made with',
      lines: [
        { type: 'choice', path: 'lift', label: 'raised', choices: choicesOf(SHADE_LIFTS, LIFT_WORDS) },
        {
          type: 'choice',
          path: 'control',
          label: 'worked at',
          choices: [
            { value: 'right', name: 'the right' },
            { value: 'left', name: 'the left' },
          ],
        },
        { type: 'count', path: 'rows', label: 'rows', least: 2, most: 200, usual: () => 'by spacing' },
        { type: 'count', path: 'columns', label: 'columns of rings', least: 2, most: 200, usual: () => 'by spacing' },
        {
          type: 'choice',
          path: 'ribs',
          label: 'ribs',
          choices: choicesOf(RIB_PLACES, RIB_WORDS),
          usual: ({ form }) => (form['style'] === 'relaxed' ? 'none' : 'rows'),
        },
      ],
    },
    {
      id: 'own-valance',
      title: 'A valance of its own',
      optional: {
        path: 'valance',
        add: 'Add a valance of its own',
        takeOff: 'Take its valance off',
        start: () => ({}),
      },
      lines: [{ type: 'length', path: 'valance.depth', label: 'finished depth' }],
    },
    patternGroup({ centred: () => true }),
  ],
};
