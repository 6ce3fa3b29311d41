/** Rod, brackets, rings, heading tape, hooks and weights of panels: common practice, each counted for all quantity. */
import { piecesOf } from '#shared/job.ts';
import type { PanelsTreatment } from '#shared/job.ts';
import type { Part } from '#shared/parts.ts';
import type { LaidFace } from './laid-face.ts';
import type { Pleats } from './pleats.ts';
import { halvesUpToTick, upToWhole } from './round.ts';

export function partsOf(panels: PanelsTreatment, laid: LaidFace, pleats: Pleats | null): Part[] {
  const { quantity, returns } = panels;
  const pieces = piecesOf(panels.arrangement);
  const joins = laid.counted?.joins ?? 0;
  // One for a pleat and one for each end; headings whose pleats are not counted carry none of their own.
  const hooks = pleats ? (pleats.count + 2) * pieces * quantity : 0;
  return [
    { part: 'rod', length: (panels.rodWidth + returns.left + returns.right) * quantity },
    { part: 'bracket', count: countBrackets(panels) * quantity },
    ...(hooks > 0
      ? ([
          { part: 'ring', count: hooks },
          { part: 'hook', count: hooks },
        ] as const)
      : []),
    { part: 'headingTape', length: halvesUpToTick(laid.made2) * quantity },
    // Two corners of each piece and one at every join, in pouches; never lead.
    { part: 'weight', count: (2 * pieces + joins) * quantity },
  ];
}

/** Two ends, and one more wherever a span would be too wide. */
export function countBrackets(panels: Pick<PanelsTreatment, 'rodWidth' | 'practice'>): number {
  const { bracketSpacing } = panels.practice;
  return 1 + (bracketSpacing === 0 ? 1 : Math.max(1, upToWhole(panels.rodWidth, bracketSpacing)));
}
