/** What the worksheet asks of a shower curtain. */
import type { TicksForm } from '#shared/records/treatment-make.ts';
import { patternGroup } from './pattern.ts';
import type { KindSheet } from './sheet.ts';

function linerOf(form: TicksForm): string {
  const { liner } = form;
  if (liner === null || liner === undefined) return 'none';
  return liner === 'bought' ? 'bought' : 'made';
}
const LINERS: Readonly<Record<string, unknown>> = { none: null, bought: 'bought', made: { cloth: 'std-white' } };

export const SHOWER_CURTAIN_SHEET: KindSheet = {
  kind: 'shower-curtain',
  start: () => ({ arrangement: 'one-piece' }),
  measured: ['finishedWidth', 'finishedLength', 'eyelets', 'pattern.topAt'],
  groups: [
    {
      id: 'make',
      lines: [
        { type: 'length', path: 'finishedWidth', label: 'finished width' },
        { type: 'length', path: 'finishedLength', label: 'finished length' },
        {
          type: 'choice',
          path: 'arrangement',
          label: 'hangs as',
          choices: [
            { value: 'one-piece', name: 'one piece' },
            { value: 'pair', name: 'a pair' },
          ],
        },
        { type: 'count', path: 'eyelets', label: 'eyelets a piece', least: 2, most: 500, usual: () => 'by spacing' },
        {
          type: 'choice',
          path: 'liner',
          label: 'liner',
          choices: [
            { value: 'none', name: 'none' },
            { value: 'bought', name: 'bought ready' },
            { value: 'made', name: 'made' },
          ],
          read: linerOf,
          write: (form, value) => ({ ...form, liner: LINERS[value] ?? null }),
        },
        {
          type: 'cloth',
          path: 'liner.cloth',
          label: 'liner cloth',
          none: '',
          applies: ({ form }) => linerOf(form) === 'made',
        },
      ],
    },
    patternGroup({ top: () => null }),
  ],
};
