/** What the worksheet asks of a valance. */
import { PLEAT_PLACES, VALANCE_STYLES } from '#shared/treatments/valance.ts';
import type { TicksForm } from '#shared/records/treatment-make.ts';
import { countedSides } from '../../state/write-sides.ts';
import { patternGroup } from './pattern.ts';
import { choicesOf } from './sheet.ts';
import type { Asked, KindSheet } from './sheet.ts';
import { UNDER_GROUP, WELT_LINE, topLines, usualRod } from './top.ts';

const STYLE_WORDS = {
  tailored: 'tailored, flat',
  'box-pleated': 'box-pleated',
  gathered: 'gathered',
  scalloped: 'scalloped',
  balloon: 'balloon',
} as const;
const PLACE_WORDS = { between: 'shared evenly', corners: 'at the corners too' } as const;

function styled(...styles: readonly string[]) {
  return ({ form }: Asked): boolean => styles.includes(String(form['style']));
}
function onRod({ form }: Asked): boolean {
  return typeof form['rod'] === 'object' && form['rod'] !== null;
}
/** Flat on its board: gathers break up what stands in the middle. */
function showsMiddle(asked: Asked): boolean {
  return styled('tailored', 'box-pleated')(asked) || (styled('scalloped')(asked) && !onRod(asked));
}
const soft = styled('gathered', 'scalloped', 'balloon');

export const VALANCE_SHEET: KindSheet = {
  kind: 'valance',
  start: () => ({ style: 'tailored', mount: { where: 'wall', above: null } }),
  measured: ['width', 'finishedLength', 'over', 'dropOf', 'pleats', 'scallops', 'puffs', 'pattern.topAt'],
  groups: [
    {
      id: 'make',
      lines: [
        { type: 'choice', path: 'style', label: 'style', choices: choicesOf(VALANCE_STYLES, STYLE_WORDS) },
        ...topLines('valance', 'face, end to end'),
        { type: 'length', path: 'finishedLength', label: 'finished length' },
        {
          type: 'choice',
          path: 'rod',
          label: 'hangs from',
          applies: soft,
          choices: [
            { value: 'board', name: 'a board' },
            { value: 'rod', name: 'a rod pocket' },
          ],
          read: (form) => (form['rod'] ? 'rod' : 'board'),
          write: (form, value, { unit }): TicksForm =>
            value === 'rod'
              ? { ...form, board: null, rod: { diameter: usualRod(unit) } }
              : { ...form, rod: null, board: {} },
        },
        {
          type: 'length',
          path: 'rod.diameter',
          label: 'rod diameter',
          applies: (asked) => soft(asked) && onRod(asked),
        },
        {
          type: 'length',
          path: 'rod.header',
          label: 'header above the pocket',
          applies: (asked) => soft(asked) && onRod(asked),
        },
        {
          type: 'length',
          path: 'board.depth',
          label: 'board depth',
          applies: (asked) => !soft(asked) || !onRod(asked),
          usual: ({ form, practice }) => {
            const sides = countedSides(form['return']);
            return sides ? Math.max(sides.left, sides.right) : practice.valance.boardDepth;
          },
        },
        { type: 'flag', path: 'stiffened', label: 'held flat by buckram', applies: styled('tailored') },
        { type: 'count', path: 'pleats', label: 'box pleats', least: 1, most: 500, applies: styled('box-pleated') },
        {
          type: 'choice',
          path: 'pleatsAt',
          label: 'pleats stand',
          applies: styled('box-pleated'),
          choices: choicesOf(PLEAT_PLACES, PLACE_WORDS),
        },
        {
          type: 'length',
          path: 'pleatTakeUp',
          label: 'cloth in one pleat',
          applies: styled('box-pleated'),
          usual: ({ practice }) => practice.valance.pleatTakeUp,
        },
        {
          type: 'ratio',
          path: 'fullness',
          label: 'fullness',
          applies: (asked) => styled('gathered', 'balloon')(asked) || (styled('scalloped')(asked) && onRod(asked)),
          usual: ({ form, practice }) =>
            ({
              gathered: practice.valance.gatheredFullness,
              scalloped: practice.valance.scallopedFullness,
              balloon: practice.valance.balloonFullness,
            })[String(form['style'])] ?? null,
        },
        {
          type: 'count',
          path: 'scallops',
          label: 'scallops',
          least: 1,
          most: 500,
          applies: styled('scalloped'),
          usual: () => 'by usual width',
        },
        { type: 'length', path: 'scallopDepth', label: 'cut up between them', applies: styled('scalloped') },
        {
          type: 'count',
          path: 'puffs',
          label: 'puffs',
          least: 1,
          most: 500,
          applies: styled('balloon'),
          usual: () => 'by usual width',
        },
        WELT_LINE,
      ],
    },
    UNDER_GROUP,
    patternGroup({ centred: showsMiddle }),
  ],
};
