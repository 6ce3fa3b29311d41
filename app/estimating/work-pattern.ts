/** The working of a placed pattern: where the motif comes to stand, and so where in the repeat the cuts begin. */
import type { FaceCloth } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { placePattern } from './place-pattern.ts';
import type { PlacedPattern } from './place-pattern.ts';
import { step } from './say.ts';
import type { Say } from './say.ts';

const PLACES: Readonly<Record<PlacedPattern['place'], string>> = {
  top: 'a whole motif below the heading',
  hem: 'a whole motif above the hem',
  middle: 'a motif in the middle of the drop',
  level: 'one level a room, so that the pattern runs on from window to window',
};

/** Cloth used sideways has its repeat across the panel: nothing is placed along it. */
export function workPattern(
  panels: PanelsTreatment,
  face: FaceCloth,
  lined: boolean,
  sideways: boolean,
  say: Say,
): WorkingStep[] {
  const placed = sideways ? null : placePattern(panels, face, lined);
  if (placed === null || face.repeat === null) return [];
  const { pattern, practice } = panels;
  const level = pattern?.level ?? null;
  const top = pattern?.top ?? null;
  const way =
    placed.place === 'level' && level !== null && top !== null
      ? `${say.length(top)} − ${say.length(level)} = ${say.length(placed.below)}`
      : say.length(placed.below);
  const washed = practice.shrinkage > 0 ? `, ÷ (1 − ${say.number(practice.shrinkage / 1e6, 6)})` : '';
  const { match } = face.repeat;
  const steps = [
    step(
      'motif-below',
      'motif below the top',
      way,
      say.length(placed.below),
      `${PLACES[placed.place]} (common practice)${placed.assumed ? '; where the motif lies in the repeat is not given: its middle is taken' : ''}`,
    ),
    step(
      'pattern-start',
      'cuts begin in the repeat at',
      `${say.length(placed.motif)} − (${say.length(placed.below)} + ${say.length(placed.turn)}${washed}), by whole repeats of ${say.length(face.repeat.vertical)}`,
      say.length(placed.phase),
      match === 'half-drop' ? 'level widths; the others half a repeat further' : 'every width alike',
    ),
  ];
  return [...steps, ...workLeadingEdges(panels, face.repeat.horizontal, say)];
}

/**
 * A pair that closes reads on where the right panel's cut edge begins as far back in the repeat across as the overlap hides
 * and both side hems turn under. The overlap hangs flat, so lengths of cloth and of rod are the same there.
 */
function workLeadingEdges(panels: PanelsTreatment, across: Ticks | null, say: Say): WorkingStep[] {
  const { sideHem } = panels.practice;
  if (panels.arrangement !== 'pair' || across === null || across === 0) return [];
  const back = ticks((panels.overlap + 2 * sideHem) % across);
  return [
    step(
      'leading-edges',
      'right panel begins back in the repeat across by',
      `${say.length(panels.overlap)} + 2 × ${say.length(sideHem)}, less whole repeats of ${say.length(across)}`,
      say.length(back),
      'from where the left panel is cut at its leading edge: closed, the pattern then reads on over the overlap (common practice)',
    ),
  ];
}
