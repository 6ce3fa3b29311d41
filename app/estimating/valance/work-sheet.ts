/** The working of what the worktable marks: pleats, scallops, puffs, folds, and of board and rod. */
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import { isFull } from '#shared/treatments/valance.ts';
import type { ValanceTreatment } from '#shared/treatments/valance.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { workCover } from '../top-treatment/cover-board.ts';
import { finishedWidthOf, flatHem, scallopedWidth } from './measure-valance.ts';
import { markScallops } from './sheet-valance.ts';
import type { FoldLine, ValanceSheet } from './sheet-valance.ts';

const FOLD_NAMES: Readonly<Record<FoldLine['name'], string>> = {
  turn: 'turn',
  'pocket-stitch': 'stitch under the pocket',
  'header-stitch': 'stitch over the pocket',
  top: 'top edge',
  bottom: 'bottom edge',
};

export function workSheet(valance: ValanceTreatment, sheet: ValanceSheet, say: Say): WorkingStep[] {
  return [
    ...workPleats(sheet, valance, say),
    ...workScallops(sheet, valance, say),
    ...workPuffs(sheet, valance, say),
    step(
      'folds',
      'lines from the top of the cut',
      sheet.folds.map(({ name, at }) => `${FOLD_NAMES[name]} ${say.length(at)}`).join(', '),
      sheet.folds.map(({ at }) => say.length(at)).join(', '),
      'from the sum of the cut',
    ),
    ...(sheet.board
      ? [
          step(
            'board',
            'board',
            `face ${say.length(sheet.board.length)}`,
            `${say.length(sheet.board.length)} × ${say.length(sheet.board.depth)} × ${say.length(sheet.board.thickness)}`,
            'face end to end, wall to front; practice: thickness',
          ),
          ...(sheet.board.cover ? workCover(sheet.board.cover, sheet.board, valance.practice.valance, say) : []),
        ]
      : []),
    ...(sheet.rod
      ? [
          step(
            'pocket',
            'pocket, finished',
            `${say.length(valance.hang.by === 'rod' ? valance.hang.diameter : 0)} + ${say.length(valance.practice.pocket.ease)}`,
            say.length(sheet.rod.pocket),
            'rod diameter; practice: ease',
          ),
        ]
      : []),
  ];
}

function workPleats({ pleats }: ValanceSheet, valance: ValanceTreatment, say: Say): WorkingStep[] {
  if (!pleats) return [];
  const corners = valance.style === 'box-pleated' && valance.pleatsAt === 'corners';
  const parts = corners ? Math.max(1, pleats.count - 1) : pleats.count + 1;
  return [
    step(
      'pleat-spaces',
      'between the middles of two pleats',
      `${say.length(valance.width)} ÷ ${parts}`,
      say.length(pleats.space),
      corners ? 'the outer pleats stand at the corners' : 'none at a corner: one space more than pleats',
    ),
    step(
      'pleat-centres',
      'middles of the pleats, from the left end',
      pleats.centres.map(say.length).join(', '),
      String(pleats.count),
      `each takes ${say.length(pleats.takeUp)}: as given, or practice`,
    ),
  ];
}

function workScallops({ scallops }: ValanceSheet, valance: ValanceTreatment, say: Say): WorkingStep[] {
  if (!scallops) return [];
  const given = valance.style === 'scalloped' && valance.scallops !== null;
  const width = scallopedWidth(valance);
  const steps = [
    step(
      'scallop-width',
      'finished width of a scallop',
      `${say.length(width)} ÷ ${scallops.count}`,
      say.length(scallops.width),
      given
        ? 'number as given'
        : `practice: whole number nearest to ${say.length(valance.practice.valance.scallopWidth)} each`,
    ),
  ];
  if (isFull(valance))
    steps.push(
      step(
        'scallop-flat',
        'the same in the flat cloth',
        `${say.length(scallops.flatWidth * scallops.count)} ÷ ${scallops.count}`,
        say.length(scallops.flatWidth),
        'flat width made, hems off',
      ),
    );
  return steps;
}

function workPuffs({ puffs }: ValanceSheet, valance: ValanceTreatment, say: Say): WorkingStep[] {
  if (!puffs) return [];
  const given = valance.style === 'balloon' && valance.puffs !== null;
  return [
    step(
      'puff-width',
      'finished width of a puff',
      `${say.length(finishedWidthOf(valance))} ÷ ${puffs.count}`,
      say.length(puffs.width),
      given
        ? 'number as given'
        : `practice: whole number nearest to ${say.length(valance.practice.valance.puffWidth)} each`,
    ),
    step(
      'puff-rings',
      'columns × rows of rings',
      `(${puffs.count} + 1) × (1 + ${say.length(valance.practice.valance.balloonTakeUp)} ÷ ${say.length(puffs.ringSpacing)}, up)`,
      String(puffs.columns.length * puffs.rows),
      'practice: spacing up the length that is drawn up; a column at each edge',
    ),
  ];
}

/** How long the welt is, of all quantity. */
export function workWeltRun(valance: ValanceTreatment, made2: number, run: Ticks, say: Say): WorkingStep {
  const ends = say.length(valance.practice.valance.weltEnds);
  const flat = say.length(isFull(valance) ? made2 / 2 : flatHem(valance));
  const scallops = markScallops(valance, made2);
  const straight = isFull(valance) ? 0 : valance.returns.left + valance.returns.right;
  const curve = scallops
    ? `${scallops.count} × √(${say.length(scallops.flatWidth)}² + 16/3 × ${say.length(scallops.depth)}²)${straight > 0 ? ` + ${say.length(straight)}` : ''}`
    : flat;
  return step(
    'welt-run',
    'welt along the lower edge',
    valance.quantity > 1 ? `${valance.quantity} × (${curve} + ${ends})` : `${curve} + ${ends}`,
    say.length(run),
    `${scallops ? 'a curve by its width and depth' : 'the hem spread flat'}; practice: ends of a welt`,
  );
}
