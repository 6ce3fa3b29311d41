/** What was priced and yet may not hang as it was meant: told once for a treatment, whatever lies behind it. */
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { countPoints } from './heading-points.ts';
import { flatAsked } from './count-widths.ts';
import type { Estimate } from '../estimate.ts';
import { toNearestTick } from '../round.ts';
import type { Say } from '../say.ts';
import { coveredWidth } from './covered-width.ts';
import { wavePiece } from './wave.ts';

export function warnPanels(panels: PanelsTreatment, estimate: Estimate, say: Say): Warning[] {
  return [
    ...warnWave(panels, estimate, say),
    ...warnUnclosed(panels, estimate, say),
    ...warnGrommets(panels, estimate, say),
  ];
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

/** Flat cloth that is narrower than what it hangs over: what draws does not close, still panels cover a part. */
function warnUnclosed(panels: PanelsTreatment, { halfWidths, madeWidth, finished }: Estimate, say: Say): Warning[] {
  if (halfWidths === null || madeWidth >= finished.width) return [];
  const draws = panels.arrangement === 'pair' || panels.arrangement === 'one-way';
  const covers = `${say.length(toNearestTick(coveredWidth(panels, 2 * madeWidth)))} ${say.unit}`;
  const hangs = draws
    ? `it cannot close, and covers ${covers} at the usual fullness`
    : `still panels stand at the ends, and cover ${covers} together at the usual fullness`;
  return [
    {
      path: at(panels.key, panels.halfWidths === null ? 'fullness' : 'widths'),
      says: `${sayMade(halfWidths, madeWidth, say)} for ${say.length(finished.width)} ${say.unit}: ${hangs}.`,
    },
  ];
}

function sayMade(halfWidths: number, madeWidth: number, say: Say): string {
  const widths = halfWidths <= 2 ? `${say.widths(halfWidths)} width makes` : `${say.widths(halfWidths)} widths make`;
  return `${widths} ${say.length(madeWidth)} ${say.unit} of flat cloth after hems`;
}

/** A ring is set through one thickness alike: on a seam it works loose. Told where neither number nor trim clears it. */
function warnGrommets(panels: PanelsTreatment, { halfWidths, madeWidth }: Estimate, say: Say): Warning[] {
  if (panels.heading !== 'grommet' || halfWidths === null) return [];
  const { grommets } = countPoints(panels, 2 * madeWidth, halfWidths);
  if (!grommets || grommets.clear || grommets.nearest === null) return [];
  const { grommetRing, grommetLeast, grommetTrim } = panels.practice.spacing;
  const length = (value: number): string => `${say.length(toNearestTick(value))} ${say.unit}`;
  return [
    {
      path: at(panels.key, 'heading'),
      says: `A seam lies ${length(grommets.nearest)} from the middle of a grommet ${length(grommetRing)} wide; ${grommets.count} of them ${length(grommets.space)} apart, two more no closer than ${length(grommetLeast)}, and up to ${length(grommetTrim)} trimmed at the wall side do not clear it: take another fullness or number of widths, or move the seam.`,
    },
  ];
}
