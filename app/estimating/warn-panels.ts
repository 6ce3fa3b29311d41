/** What was priced and yet may not hang as it was meant: told once for a treatment, whatever lies behind it. */
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { flatAsked } from './count-widths.ts';
import type { Estimate } from './estimate.ts';
import { toNearestTick } from './round.ts';
import type { Say } from './say.ts';
import { coveredWidth } from './still-panels.ts';
import { wavePiece } from './wave.ts';

export function warnPanels(panels: PanelsTreatment, estimate: Estimate, say: Say): Warning[] {
  return [...warnWave(panels, estimate, say), ...warnUnclosed(panels, estimate, say)];
}

/** A wave tape has a fixed pitch: its gliders take the flat width that they ask, and no less. */
function warnWave(panels: PanelsTreatment, { halfWidths, madeWidth }: Estimate, say: Say): Warning[] {
  const asked = flatAsked(panels);
  if (panels.heading !== 'wave' || halfWidths === null || madeWidth >= asked) return [];
  const gliders = wavePiece(panels).gliders * panels.pieces;
  const made = sayMade(halfWidths, madeWidth, say);
  const remedy =
    panels.halfWidths === null
      ? 'count hems in the width, or leave gliders out'
      : 'give more widths, or a shorter track';
  return [
    {
      path: at(panels.key, panels.halfWidths === null ? 'heading' : 'widths'),
      says: `${made}; ${gliders} gliders ask ${say.length(asked)} ${say.unit}: ${remedy}.`,
    },
  ];
}

/** Flat cloth that is narrower than what it hangs over: still panels cover a part, counted ones have hems too many. */
function warnUnclosed(panels: PanelsTreatment, { halfWidths, madeWidth, finished }: Estimate, say: Say): Warning[] {
  if (halfWidths === null || madeWidth >= finished.width) return [];
  const made = sayMade(halfWidths, madeWidth, say);
  const over = `${say.length(finished.width)} ${say.unit}`;
  if (panels.halfWidths === null)
    return [
      {
        path: at(panels.key, 'fullness'),
        says: `${made}, less than the ${over} that it hangs over: give more fullness.`,
      },
    ];
  const covers = say.length(toNearestTick(coveredWidth(panels, 2 * madeWidth)));
  return [
    {
      path: at(panels.key, 'widths'),
      says: `${made} for ${over}: the panels stand still at the ends, pleated to cover ${covers} ${say.unit} together.`,
    },
  ];
}

function sayMade(halfWidths: number, madeWidth: number, say: Say): string {
  const widths = halfWidths <= 2 ? `${say.widths(halfWidths)} width makes` : `${say.widths(halfWidths)} widths make`;
  return `${widths} ${say.length(madeWidth)} ${say.unit} of flat cloth after hems`;
}
