/** What the worksheet asks of a bed skirt: the platform, not the mattress. */
import { BED_SKIRT_STYLES, STRIP_RUNS, WALL_SIDES } from '#shared/treatments/bed-skirt.ts';
import { patternGroup } from './pattern.ts';
import { choicesOf } from './sheet.ts';
import type { Asked, KindSheet } from './sheet.ts';

const STYLE_WORDS = {
  gathered: 'gathered',
  tailored: 'tailored, corner pleats',
  'box-pleated': 'box-pleated',
} as const;
const SIDE_WORDS = { head: 'the head', 'long-side': 'a long side' } as const;
const RUN_WORDS = { least: 'what takes least', upright: 'upright', sideways: 'sideways, few seams' } as const;

const isTailored = ({ form }: Asked): boolean => form['style'] === 'tailored';

export const BED_SKIRT_SHEET: KindSheet = {
  kind: 'bed-skirt',
  start: () => ({ style: 'gathered', bed: {} }),
  measured: ['bed.width', 'bed.length', 'drop', 'pattern.topAt'],
  groups: [
    {
      id: 'make',
      lines: [
        { type: 'length', path: 'bed.width', label: 'platform wide' },
        { type: 'length', path: 'bed.length', label: 'platform long' },
        { type: 'length', path: 'drop', label: 'drop to the hem' },
        { type: 'choice', path: 'style', label: 'style', choices: choicesOf(BED_SKIRT_STYLES, STYLE_WORDS) },
        {
          type: 'ratio',
          path: 'fullness',
          label: 'fullness',
          applies: (asked) => !isTailored(asked),
          usual: ({ form, practice }) =>
            form['style'] === 'gathered' ? practice.bedSkirt.gatheredFullness : practice.bedSkirt.boxFullness,
        },
        {
          type: 'count',
          path: 'middlePleats',
          label: 'pleats besides corners',
          least: 0,
          most: 60,
          applies: isTailored,
          usual: () => 'none',
        },
        { type: 'choice', path: 'against', label: 'no skirt at', choices: choicesOf(WALL_SIDES, SIDE_WORDS) },
        { type: 'choice', path: 'strips', label: 'strips run', choices: choicesOf(STRIP_RUNS, RUN_WORDS) },
        { type: 'flag', path: 'splitCorners', label: 'open corners, for posts' },
        { type: 'cloth', path: 'deck', label: 'deck', none: 'none, hook tape' },
      ],
    },
    patternGroup({ top: () => null }),
  ],
};
