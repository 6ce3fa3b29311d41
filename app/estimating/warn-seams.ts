/**
 * Seams against the repeat across: two widths read on only where the cloth between their seams is whole repeats (common
 * practice). What the cloth sheet gives as usable is taken as it stands; where it cannot match, what would is told.
 */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import { TICKS_PER_INCH, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { MOST_WIDTHS } from './check-panels.ts';
import { countWidths, flatAsked } from './count-widths.ts';
import type { Estimate } from './estimate.ts';
import { downToWhole } from './round-down.ts';
import { toNearestWhole } from './round.ts';
import type { Say } from './say.ts';

/** Repeats are printed to an eighth of an inch or a few millimetres: this much is eased in at the seam. */
const EASED = ticks(TICKS_PER_INCH / 8);

/** The most cloth between two seams that is whole repeats across; null where not one goes into the width. */
export function seamWidth(usable: Ticks, across: Ticks): Ticks | null {
  const times = downToWhole(usable, across);
  return times === 0 ? null : ticks(times * across);
}

/** True when the usable width is whole repeats across, give or take what a seam eases in. */
export function seamsMatch(usable: Ticks, across: Ticks): boolean {
  const times = toNearestWhole(usable, across);
  return times > 0 && Math.abs(usable - times * across) <= EASED;
}

export function warnSeams(panels: PanelsTreatment, estimate: Estimate, face: FaceCloth, say: Say): Warning[] {
  const across = face.repeat?.horizontal ?? null;
  const { halfWidths } = estimate;
  // One width or less in a piece has no seam.
  if (across === null || across === 0 || halfWidths === null || halfWidths <= 2 * panels.pieces) return [];
  if (seamsMatch(face.usableWidth, across)) return [];
  const usable = `${say.length(face.usableWidth)} ${say.unit}`;
  const repeat = `${say.length(across)} ${say.unit}`;
  const path = at(panels.key, 'face');
  const matching = seamWidth(face.usableWidth, across);
  if (matching === null)
    return [
      {
        path,
        says: `One repeat across of ${face.name} (${repeat}) is wider than the cloth between its seams (${usable}): joined widths cannot read on.`,
      },
    ];
  const takes = wouldTake(panels, matching);
  const more = takes === null ? '' : `; it takes ${say.widths(takes)} widths instead of ${say.widths(halfWidths)}`;
  return [
    {
      path,
      says: `Seams of ${face.name} cannot match: ${usable} between them is not whole repeats of ${repeat} across. A usable width of ${say.length(matching)} ${say.unit} matches${more}.`,
    },
  ];
}

/** Widths in halves on the matching width; null where they are given, or where seams leave too little of it to count on. */
function wouldTake(panels: PanelsTreatment, matching: Ticks): number | null {
  const { halfWidths, practice } = panels;
  const left = matching - 2 * practice.seam;
  if (halfWidths !== null || MOST_WIDTHS * left <= flatAsked(panels)) return null;
  return countWidths(panels, matching).halves;
}
