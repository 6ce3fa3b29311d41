/** What only some panels have, under the lines that every pair has. */
import { lengthFrom } from '#shared/length.ts';
import type { TicksForm } from '#shared/records/treatment-make.ts';
import { HANG_ENDS, HANG_SETTINGS, piecesOf } from '#shared/treatments/panels.ts';
import type { HangEnd } from '#shared/treatments/panels.ts';
import { HOOKED, RODS } from '#shared/treatments/rods.ts';
import { fixingOf } from './fixing.ts';
import { patternGroup } from './pattern.ts';
import { choicesOf } from './sheet.ts';
import type { Asked, KindSheet } from './sheet.ts';

const TO_WORDS = {
  sill: 'the sill',
  apron: 'below the sill',
  floor: 'the floor',
  break: 'the floor, with a break',
  puddle: 'a puddle',
  'full-puddle': 'a full puddle',
} as const satisfies Readonly<Record<HangEnd, string>>;
const BY_WORDS = {
  sill: 'off the sill by',
  apron: 'below it by',
  floor: 'off the floor by',
  break: 'longer by',
  puddle: 'lying on the floor',
  'full-puddle': 'lying in folds',
} as const satisfies Readonly<Record<HangEnd, string>>;

function hangOf(form: TicksForm): Readonly<Record<string, unknown>> {
  return (form['hang'] ?? {}) as Readonly<Record<string, unknown>>;
}
function toOf(form: TicksForm): HangEnd {
  const to = hangOf(form)['to'];
  return HANG_ENDS.find((end) => end === to) ?? 'floor';
}
function runsOf(form: TicksForm): number {
  const runs = (form['bay'] as { readonly runs?: readonly unknown[] } | null | undefined)?.runs;
  return runs?.filter((run) => run !== null && run !== undefined).length ?? 0;
}
function headingIs(...headings: readonly string[]) {
  return ({ make }: Asked): boolean => make.kind === 'panels' && headings.includes(make.heading);
}
const ordinals = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Top of the heading from the fixing (common practice): about an inch over a pole, half an inch over a track. */
function usualHeading({ make, unit, practice }: Asked): TicksForm {
  if (make.kind !== 'panels') return {};
  const inch = unit === 'in';
  switch (fixingOf(make.heading, make.mountWhere)) {
    case 'pole':
      return { headingAbove: inch ? lengthFrom(1.25, 'in') : lengthFrom(3, 'cm') };
    case 'tab':
      return { headingBelow: practice.tab.drop };
    case 'track':
      return { headingAbove: inch ? lengthFrom(0.5, 'in') : lengthFrom(1, 'cm') };
    case 'ring':
    case 'pocket':
      return {};
  }
}

/** From the fixing the program finds it itself; else over the frame, where the rod is. */
function topOfPanels({ form, make, opening }: Asked): number | null {
  const { sill, height } = opening;
  if (make.kind !== 'panels' || form['hang'] || make.mountWhere === 'ceiling') return null;
  return sill === null || height === null ? null : sill + height + (make.mountAbove ?? 0);
}

export const PANELS_EXTRAS_SHEET: KindSheet = {
  kind: 'panels',
  start: () => ({}),
  measured: ['hang.fixing', 'bay', 'arch', 'pattern.topAt'],
  groups: [
    {
      id: 'hang',
      title: 'Where the length starts',
      drawing: 'hang',
      optional: {
        path: 'hang',
        add: 'Find the length from the fixing',
        takeOff: 'Write the length itself instead',
        start: (asked) => ({ to: 'floor', ...usualHeading(asked) }),
      },
      lines: [
        {
          type: 'readings',
          of: 'length',
          path: 'hang.fixing',
          label: 'fixing above floor',
          names: ['fixing, left', 'fixing, middle', 'fixing, right'],
        },
        { type: 'length', path: 'hang.headingAbove', label: 'heading above it' },
        { type: 'length', path: 'hang.headingBelow', label: 'heading below it' },
        {
          type: 'choice',
          path: 'hang.to',
          label: 'hem at',
          choices: HANG_ENDS.map((value) => ({ value, name: TO_WORDS[value] })),
        },
        ...HANG_ENDS.map((to) => ({
          type: 'length' as const,
          path: 'hang.by',
          label: BY_WORDS[to],
          applies: ({ form }: Asked) => toOf(form) === to,
          usual: ({ practice }: Asked) => practice.hang[HANG_SETTINGS[to]],
        })),
      ],
    },
    {
      id: 'bay',
      title: 'Bay',
      optional: { path: 'bay', add: 'It goes round a bay', takeOff: 'Straight rod instead', start: () => ({}) },
      lines: [
        {
          type: 'readings',
          of: 'length',
          path: 'bay.runs',
          label: 'run',
          names: ordinals.map((each) => `run ${each}`),
          shown: (form) => Math.max(2, runsOf(form) + 1),
        },
        {
          type: 'readings',
          of: 'degrees',
          path: 'bay.turns',
          label: 'turn',
          names: ordinals.slice(0, -1).map((each) => `turn after ${each}, °`),
          shown: (form) => Math.max(1, runsOf(form) - 1),
        },
        { type: 'length', path: 'bay.projection', label: 'wall to rod' },
      ],
    },
    {
      id: 'heading',
      applies: headingIs('pinch-pleat', 'rod-pocket', 'tab', 'grommet'),
      lines: [
        {
          type: 'choice',
          path: 'fingers',
          label: 'fingers',
          applies: headingIs('pinch-pleat'),
          choices: [
            { value: '3', name: 'three' },
            { value: '2', name: 'two' },
          ],
          read: (form) => (form['fingers'] === 2 ? '2' : '3'),
          write: (form, value) => ({ ...form, fingers: Number(value) }),
        },
        {
          type: 'length',
          path: 'rodDiameter',
          label: 'rod diameter',
          applies: headingIs('rod-pocket', 'tab', 'grommet'),
        },
        { type: 'length', path: 'header', label: 'header above pocket', applies: headingIs('rod-pocket') },
      ],
    },
    {
      id: 'several',
      applies: ({ make }) =>
        make.kind === 'panels' && (make.arrangement === 'single' || make.arrangement === 'pair-stationary'),
      lines: [
        {
          type: 'count',
          path: 'panelsOnRod',
          label: 'panels on the rod',
          least: 1,
          most: 500,
          usual: ({ make }) => (make.kind === 'panels' ? String(piecesOf(make.arrangement)) : ''),
        },
      ],
    },
    { id: 'cafe', lines: [{ type: 'flag', path: 'cafe', label: 'café, lower part alone' }] },
    { id: 'edge', lines: [{ type: 'flag', path: 'weightedEdge', label: 'weighted edge is the hem' }] },
    {
      id: 'rod',
      applies: headingIs(...HOOKED),
      lines: [
        {
          type: 'choice',
          path: 'rod',
          label: 'hangs on',
          choices: [
            { value: '', name: 'not said yet' },
            ...choicesOf(RODS, { rings: 'rings on a pole', track: 'a track, master arm' }),
          ],
          read: (form) => RODS.find((rod) => rod === form['rod']) ?? '',
          write: ({ rod: _, ...others }, value) => (value === '' ? others : { ...others, rod: value }),
        },
      ],
    },
    {
      id: 'motor',
      title: 'Motor',
      applies: headingIs(...HOOKED, 'wave'),
      optional: {
        path: 'motor',
        add: 'A motor draws it',
        takeOff: 'Draw it by hand instead',
        start: () => ({ at: 'left' }),
      },
      lines: [
        {
          type: 'choice',
          path: 'motor.at',
          label: 'motor at',
          choices: [
            { value: 'left', name: 'the left end' },
            { value: 'right', name: 'the right end' },
          ],
        },
      ],
    },
    {
      id: 'arch',
      title: 'Arched top',
      optional: { path: 'arch', add: 'The top is arched', takeOff: 'Straight top instead', start: () => ({}) },
      lines: [{ type: 'length', path: 'arch.rise', label: 'rise of the arch' }],
    },
    {
      id: 'bands',
      title: 'Bands',
      list: {
        path: 'bands',
        add: 'Add a band',
        takeOff: 'Take this band off',
        most: 6,
        start: ({ unit, face }) => ({
          edge: 'leading',
          cloth: face,
          width: unit === 'in' ? lengthFrom(3, 'in') : lengthFrom(8, 'cm'),
        }),
      },
      lines: [
        {
          type: 'choice',
          path: 'edge',
          label: 'along',
          choices: [
            { value: 'leading', name: 'the leading edge' },
            { value: 'both-sides', name: 'both sides' },
            { value: 'hem', name: 'the hem' },
          ],
        },
        { type: 'cloth', path: 'cloth', label: 'band cloth', none: 'choose a cloth' },
        { type: 'length', path: 'width', label: 'band width' },
      ],
    },
    patternGroup({ top: topOfPanels }),
    {
      id: 'pleat-to-pattern',
      applies: headingIs('pinch-pleat', 'goblet', 'box-pleat'),
      lines: [{ type: 'flag', path: 'pleatToPattern', label: 'pleat to the pattern' }],
    },
  ],
};
