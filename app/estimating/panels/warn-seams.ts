/** Seams of a pattern that cannot meet: told, with what would match and what it takes. */
import type { FaceCloth } from '#shared/cloth.ts';
import { at } from '#shared/fault.ts';
import type { Warning } from '#shared/fault.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Estimate } from '../estimate.ts';
import { countJoined, hasSeams, joinedFace } from './join-repeats.ts';
import { seamsMatch, wholeRepeats } from '../repeats-across.ts';
import type { Say } from '../say.ts';

export function warnSeams(panels: PanelsTreatment, estimate: Estimate, face: FaceCloth, say: Say): Warning[] {
  const across = face.repeat?.horizontal ?? null;
  const { halfWidths } = estimate;
  const { seam } = panels.practice;
  if (across === null || across === 0 || halfWidths === null || !hasSeams(panels, halfWidths)) return [];
  if (seamsMatch(face.usableWidth, across, seam) || joinedFace(panels, face) !== face) return [];
  const usable = `${say.length(face.usableWidth - 2 * seam)} ${say.unit}`;
  const repeat = `${say.length(across)} ${say.unit}`;
  const path = at(panels.key, 'face');
  const joined = wholeRepeats(face.usableWidth, across, seam);
  if (joined === null)
    return [
      {
        path,
        says: `One repeat across of ${face.name} (${repeat}) is wider than the cloth between its seams (${usable}): joined widths cannot read on.`,
      },
    ];
  const takes = panels.halfWidths === null ? countJoined(panels, joined) : null;
  const more = takes === null ? '' : `; it takes ${say.widths(takes)} widths instead of ${say.widths(halfWidths)}`;
  return [
    {
      path,
      says: `Seams of ${face.name} cannot match: ${usable} between them is not whole repeats of ${repeat} across. Joined on whole repeats, as the practice may say, each width brings ${say.length(joined)} ${say.unit}${more}.`,
    },
  ];
}
