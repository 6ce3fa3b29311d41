/** Treatments of every kind but panels, invented, to judge stacks in: 36 to 220 in, at the window of `window-case.ts`. */
import type { BackCloth } from '#shared/cloth.ts';
import { lengthFrom } from '#shared/length.ts';
import type { GenericClothId } from '#shared/words.ts';
import type { JudgedTreatment, JudgeInput } from '#app/lining/judge-input.ts';
import { judgeStack } from '#app/lining/judge-stack.ts';
import { inputOf, starters } from './window-case.ts';
import type { Told } from './window-case.ts';

export const inches = (value: number) => lengthFrom(value, 'in');
const NO_RETURNS = { left: inches(0), right: inches(0) };

/** Invented treatments of 36 to 80 in. */
export const KINDS = {
  'flat shade': {
    kind: 'roman-shade',
    heading: 'flat',
    make: 'flat',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(3) },
    onBoard: true,
    rodWidth: inches(66),
    finishedLength: inches(57),
    returns: { left: inches(2), right: inches(2) },
    overlap: inches(0),
    shade: { style: 'flat', lift: 'cordless', rings: 48, ribs: 9 },
  },
  'soft-fold shade': {
    kind: 'roman-shade',
    heading: 'flat',
    make: 'folded',
    arrangement: 'single',
    mount: { where: 'inside', above: inches(0) },
    onBoard: true,
    rodWidth: inches(59.75),
    finishedLength: inches(54),
    returns: NO_RETURNS,
    overlap: inches(0),
    shade: { style: 'soft-fold', lift: 'cordless', rings: 48, ribs: 0 },
  },
  'tailored valance': {
    kind: 'valance',
    heading: 'flat',
    make: 'flat',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(8) },
    onBoard: true,
    rodWidth: inches(70),
    finishedLength: inches(16),
    returns: { left: inches(5), right: inches(5) },
    overlap: inches(0),
  },
  'gathered valance': {
    kind: 'valance',
    heading: 'rod-pocket',
    make: 'gathered',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(8) },
    rodWidth: inches(70),
    finishedLength: inches(16),
    returns: NO_RETURNS,
    overlap: inches(0),
  },
  cornice: {
    kind: 'cornice',
    heading: 'flat',
    make: 'flat',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(8) },
    onBoard: true,
    rodWidth: inches(70),
    finishedLength: inches(16),
    returns: { left: inches(5), right: inches(5) },
    overlap: inches(0),
  },
  swags: {
    kind: 'swags',
    heading: 'pencil-pleat',
    make: 'swagged',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(8) },
    onBoard: true,
    rodWidth: inches(88),
    finishedLength: inches(18),
    returns: { left: inches(5), right: inches(5) },
    overlap: inches(0),
    tails: { lining: null },
  },
  'bed skirt': {
    kind: 'bed-skirt',
    heading: 'pencil-pleat',
    make: 'gathered',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(0) },
    rodWidth: inches(220),
    finishedLength: inches(14),
    returns: NO_RETURNS,
    overlap: inches(0),
  },
  'shower curtain': {
    kind: 'shower-curtain',
    heading: 'grommet',
    make: 'flat',
    arrangement: 'single',
    mount: { where: 'wall', above: inches(0) },
    rodWidth: inches(72),
    finishedLength: inches(72),
    returns: NO_RETURNS,
    overlap: inches(0),
    liner: false,
  },
} as const satisfies Readonly<Record<string, JudgedTreatment>>;
export type KindName = keyof typeof KINDS;

export function caseOf(
  name: KindName,
  behind: readonly BackCloth[],
  told: Told = {},
  over: Partial<JudgeInput> = {},
): JudgeInput {
  const input = inputOf(behind, { made: { fullnessMade: 1 }, ...told });
  const treatment: JudgedTreatment = { ...KINDS[name], ...told.treatment };
  return { ...input, treatment, ...over };
}

export const judgeKind = (
  name: KindName,
  ids: readonly GenericClothId[],
  told: Told = {},
  over: Partial<JudgeInput> = {},
) => judgeStack(caseOf(name, starters(...ids), told, over));
