/** The working of panels drawn back: how much wall they take, with its range, and the rod that would clear the glass. */
import type { BackCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { ClearingRod } from './rod-to-clear.ts';
import { stacksOnWall } from './rod-to-clear.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';
import { backing } from './stackback.ts';
import type { Stackback } from './stackback.ts';

export function workStackback(
  panels: PanelsTreatment,
  made: { readonly halfWidths: number; readonly stackback: Stackback; readonly clearing: ClearingRod | null },
  behind: readonly BackCloth[],
  glass: Ticks | null,
  say: Say,
): WorkingStep[] {
  if (panels.arrangement !== 'pair' && panels.arrangement !== 'one-way') return [];
  const { stackback, clearing } = made;
  const kind = backing(behind);
  const range = panels.practice.stackback[kind];
  const shared = panels.pieces > 1 ? ` ÷ ${panels.pieces}` : '';
  const steps = [
    step(
      'stackback',
      panels.pieces > 1 ? 'stackback, each' : 'stackback',
      `${say.widths(made.halfWidths)} × ${say.length(range.least)} to ${say.length(range.most)}${shared}`,
      `${say.length(stackback.usual)} (${say.length(stackback.least)} to ${say.length(stackback.most)})`,
      `practice: wall that a width takes drawn back, ${kind}; sources differ threefold, so the range is told`,
    ),
  ];
  if (glass === null || glass === 0 || !stacksOnWall(panels)) return steps;
  const left = panels.rodWidth - panels.pieces * stackback.usual;
  steps.push(
    step(
      'glass-clear',
      'clear between the stacks',
      `${say.length(panels.rodWidth)} − ${panels.pieces} × ${say.length(stackback.usual)}`,
      left > 0 ? say.length(left) : '0',
      left >= glass
        ? `the opening is ${say.length(glass)}: drawn back, the panels clear it`
        : `the opening is ${say.length(glass)}: drawn back, the panels cover ${say.length(glass - Math.max(0, left))} of it`,
    ),
  );
  if (clearing !== null)
    steps.push(
      step(
        'rod-to-clear',
        'rod that clears the opening',
        `${say.length(glass)} + ${panels.pieces} × ${say.length(clearing.stack)}, with ${say.widths(clearing.halfWidths)} widths`,
        say.length(clearing.rod),
        'solved: a longer rod takes more widths, and they stack deeper',
      ),
    );
  return steps;
}
