/** Lines that valances, cornices and swags share: where they hang, their face, their ends, what hangs underneath. */
import { MOUNTS } from '#shared/words.ts';
import { lengthFrom } from '#shared/length.ts';
import { MOUNT_WORDS } from '../choices.ts';
import { choicesOf } from './sheet.ts';
import type { Asked, ChoiceLine, ClothLine, LengthLine, SheetGroup, SheetLine } from './sheet.ts';

type TopKind = 'valance' | 'cornice' | 'swags';

export const MOUNT_LINE: ChoiceLine = {
  type: 'choice',
  path: 'mount.where',
  label: 'hung',
  choices: choicesOf(MOUNTS, MOUNT_WORDS),
};

/** True unless it hangs inside the frame. */
export function isOutside({ form }: Asked): boolean {
  return mountOf(form) !== 'inside';
}
function mountOf(form: Asked['form']): unknown {
  const mount = form['mount'];
  return typeof mount === 'object' && mount !== null ? (mount as { readonly where?: unknown }).where : 'wall';
}

export function aboveLine(label: string): LengthLine {
  return { type: 'length', path: 'mount.above', label, applies: ({ form }) => mountOf(form) === 'wall' };
}

export function topLines(kind: TopKind, face: string): readonly SheetLine[] {
  return [
    MOUNT_LINE,
    aboveLine('top above frame'),
    { type: 'length', path: 'width', label: face },
    {
      type: 'sides',
      path: 'return',
      label: 'return',
      applies: isOutside,
      usual: ({ form, practice }) => {
        const over = form['over'];
        if (typeof over === 'number') return over + practice[kind].overClearance;
        return kind === 'cornice' ? practice.cornice.boardDepth : null;
      },
    },
  ];
}

/** What hangs underneath, and the whole drop, by which its depth looks right. */
export const UNDER_GROUP: SheetGroup = {
  id: 'under',
  title: 'Over what',
  lines: [
    { type: 'length', path: 'over', label: 'return underneath', applies: isOutside },
    { type: 'length', path: 'dropOf', label: 'whole drop it tops' },
  ],
};

export const WELT_LINE: ClothLine = { type: 'cloth', path: 'welt', label: 'welt', none: 'none' };

/** From memory: a rod that is usual in the trade. */
export function usualRod(unit: Asked['unit']): number {
  return unit === 'in' ? lengthFrom(1, 'in') : lengthFrom(2.5, 'cm');
}
