/** What the worksheet asks of swags and their tails. */
import { SWAG_STYLES } from '#shared/treatments/swags.ts';
import type { TicksForm } from '#shared/records/treatment-make.ts';
import { patternGroup } from './pattern.ts';
import { choicesOf } from './sheet.ts';
import type { KindSheet, SheetLine } from './sheet.ts';
import { UNDER_GROUP, WELT_LINE, topLines } from './top.ts';

const STYLE_WORDS = { overlapped: 'overlapped', separate: 'side by side' } as const;

function tailLines(path: string): readonly SheetLine[] {
  return [
    { type: 'length', path: `${path}.longest`, label: 'longest point' },
    { type: 'length', path: `${path}.shortest`, label: 'shortest point' },
    { type: 'length', path: `${path}.width`, label: 'finished face' },
    { type: 'count', path: `${path}.pleats`, label: 'knife pleats', least: 1, most: 100, usual: () => 'by usual face' },
  ];
}

function hasTails(form: TicksForm): boolean {
  return Boolean(form['cascades']) || Boolean(form['jabots']);
}

export const SWAGS_SHEET: KindSheet = {
  kind: 'swags',
  start: () => ({ style: 'overlapped', mount: { where: 'wall', above: null } }),
  measured: ['width', 'finishedLength', 'over', 'dropOf', 'swags'],
  groups: [
    {
      id: 'make',
      lines: [
        { type: 'choice', path: 'style', label: 'they hang', choices: choicesOf(SWAG_STYLES, STYLE_WORDS) },
        ...topLines('swags', 'board, end to end'),
        { type: 'length', path: 'finishedLength', label: 'depth in the middle' },
        { type: 'count', path: 'swags', label: 'swags', least: 1, most: 100, usual: () => 'by widest' },
        {
          type: 'choice',
          path: 'onBias',
          label: 'cut',
          choices: [
            { value: '', name: 'bias where it fits' },
            { value: 'bias', name: 'on the bias' },
            { value: 'straight', name: 'on straight grain' },
          ],
          read: (form) => ({ true: 'bias', false: 'straight' })[String(form['onBias'])] ?? '',
          write: (form, value) => ({ ...form, onBias: value === '' ? null : value === 'bias' }),
        },
        WELT_LINE,
      ],
    },
    {
      id: 'cascades',
      title: 'Cascades, a pair',
      optional: { path: 'cascades', add: 'Add cascades', takeOff: 'Take the cascades off', start: () => ({}) },
      lines: tailLines('cascades'),
    },
    {
      id: 'jabots',
      title: 'Jabots',
      optional: { path: 'jabots', add: 'Add jabots', takeOff: 'Take the jabots off', start: () => ({ count: 1 }) },
      lines: [{ type: 'count', path: 'jabots.count', label: 'how many', least: 1, most: 200 }, ...tailLines('jabots')],
    },
    {
      id: 'contrast',
      applies: ({ form }) => hasTails(form),
      lines: [{ type: 'cloth', path: 'contrast', label: 'tails lined in', none: 'their lining' }],
    },
    UNDER_GROUP,
    patternGroup({
      places: ['middle'],
      words: { middle: 'in the middle of each swag' },
      centred: () => true,
    }),
  ],
};
