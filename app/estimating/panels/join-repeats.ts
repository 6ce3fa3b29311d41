/**
 * Seams against the repeat across: two widths read on only where the cloth between their seams is whole repeats (common
 * practice). What the cloth sheet gives as usable is taken as it stands, unless the practice joins on whole repeats: then a
 * joined width brings the greatest multiple of them that goes into it.
 */
import type { FaceCloth } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { countWidths, flatAsked } from './count-widths.ts';
import { downToWhole } from '../round-down.ts';
import { MOST_WIDTHS } from '../most-widths.ts';
import { seamsMatch, wholeRepeats } from '../repeats-across.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

/** More than one width in a piece: `halves` of all of them. */
export function hasSeams({ pieces }: Pick<PanelsTreatment, 'pieces'>, halves: number): boolean {
  return halves > 2 * pieces;
}

/** Widths in halves on this joined width; null where seams leave too little of it to count on. */
export function countJoined(panels: PanelsTreatment, joined: Ticks): number | null {
  const left = joined - 2 * panels.practice.seam;
  if (left <= 0 || MOST_WIDTHS * left <= flatAsked(panels)) return null;
  return countWidths(panels, joined).halves;
}

/**
 * The face as wide as it is joined. The cloth itself where the practice takes it as it stands, where its seams match anyway
 * or cannot, and where there is no seam. Its counts must have been found without fault.
 */
export function joinedFace(panels: PanelsTreatment, face: FaceCloth): FaceCloth {
  const across = face.repeat?.horizontal ?? null;
  const { seam, seamMatch } = panels.practice;
  if (seamMatch === 'usable' || across === null || across === 0) return face;
  if (seamsMatch(face.usableWidth, across, seam)) return face;
  const joined = wholeRepeats(face.usableWidth, across, seam);
  if (joined === null || countJoined(panels, joined) === null) return face;
  return hasSeams(panels, countWidths(panels, face.usableWidth).halves) ? { ...face, usableWidth: joined } : face;
}

export function workJoined(panels: PanelsTreatment, face: FaceCloth, joined: FaceCloth, say: Say): WorkingStep[] {
  const across = face.repeat?.horizontal ?? null;
  if (joined.usableWidth === face.usableWidth || across === null) return [];
  const { seam } = panels.practice;
  const between = face.usableWidth - 2 * seam;
  const lost = seam > 0 ? ` + 2 × ${say.length(seam)}` : '';
  const times = downToWhole(between, across);
  return [
    step(
      'joined-width',
      'each joined width brings',
      `${say.length(between)} ÷ ${say.length(across)} = ${say.number(between / across)}, down: ${times} × ${say.length(across)}${lost}`,
      say.length(joined.usableWidth),
      'practice: seams on whole repeats across, so that joined widths read on (common practice)',
    ),
  ];
}
