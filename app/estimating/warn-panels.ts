/** What was priced and yet may not hang as it was meant: told once for a treatment, whatever lies behind it. */
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { flatAsked } from './count-widths.ts';
import type { Estimate } from './estimate.ts';
import type { Say } from './say.ts';
import { wavePiece } from './wave.ts';

export function warnPanels(panels: PanelsTreatment, estimate: Estimate, say: Say): Warning[] {
  return [...warnWave(panels, estimate, say)];
}

/** A wave tape has a fixed pitch: its gliders take the flat width that they ask, and no less. */
function warnWave(panels: PanelsTreatment, { halfWidths, madeWidth }: Estimate, say: Say): Warning[] {
  const asked = flatAsked(panels);
  if (panels.heading !== 'wave' || halfWidths === null || madeWidth >= asked) return [];
  const gliders = wavePiece(panels).gliders * panels.pieces;
  const made = `${say.widths(halfWidths)} widths make ${say.length(madeWidth)} ${say.unit} of flat cloth after hems`;
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
