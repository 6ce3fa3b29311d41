/** What the worksheet asks of a cornice. */
import { patternGroup } from './pattern.ts';
import type { KindSheet } from './sheet.ts';
import { UNDER_GROUP, WELT_LINE, topLines } from './top.ts';

export const CORNICE_SHEET: KindSheet = {
  kind: 'cornice',
  start: () => ({ mount: { where: 'wall', above: null } }),
  measured: ['width', 'finishedLength', 'over', 'dropOf', 'shapedEdge', 'pattern.topAt'],
  groups: [
    {
      id: 'make',
      lines: [
        ...topLines('cornice', 'face of the box'),
        { type: 'length', path: 'finishedLength', label: 'height at its longest' },
        { type: 'length', path: 'shapedEdge', label: 'shaped edge, along it' },
        { type: 'cloth', path: 'topWelt', label: 'welt, top edge', none: 'none' },
        { ...WELT_LINE, label: 'welt, lower edge' },
      ],
    },
    UNDER_GROUP,
    patternGroup({ centred: () => true }),
  ],
};
