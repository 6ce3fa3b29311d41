/** The working of a placed pattern: where the motif comes to stand, and so where in the repeat the cuts begin. */
import type { FaceCloth, Repeat } from '#shared/cloth.ts';
import { ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { hungCloth } from './panels/hung-cloth.ts';
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

/** Cloth used sideways has its repeat across: nothing is placed along it. */
export function workPattern(
  treatment: Treatment,
  face: FaceCloth,
  lined: boolean,
  sideways: boolean,
  say: Say,
): WorkingStep[] {
  const placed = sideways ? null : placePattern(treatment, face, lined);
  if (placed === null || face.repeat === null) return [];
  return [
    step(
      'motif-below',
      'motif below the top',
      `${sayWay(treatment, placed, say)}${sayFolds(treatment, placed, lined, say)}`,
      say.length(placed.below),
      `${PLACES[placed.place]} (common practice)${placed.assumed ? '; where the motif lies in the repeat is not given: its middle is taken' : ''}`,
    ),
    workStart('pattern-start', 'cuts begin in the repeat at', placed, face.repeat, treatment.practice.shrinkage, say),
    ...(treatment.kind === 'panels' ? workLeadingEdges(treatment, face.repeat.horizontal, say) : []),
  ];
}

function sayWay({ pattern }: Treatment, placed: PlacedPattern, say: Say): string {
  const level = pattern?.level ?? null;
  const top = pattern?.top ?? null;
  return placed.place === 'level' && level !== null && top !== null
    ? `${say.length(top)} − ${say.length(level)} = ${say.length(placed.below)}`
    : say.length(placed.below);
}

/** Where cloth hangs in folds, the way along it is longer than the way down. */
function sayFolds(treatment: Treatment, placed: PlacedPattern, lined: boolean, say: Say): string {
  const { fullness } = hungCloth(treatment, lined);
  if (fullness === 1000) return '';
  return `, along the folds × ${say.number(fullness / 1000, 3)} = ${say.length(placed.along)}`;
}

/** Where in the repeat the level cuts of one piece begin. */
export function workStart(
  id: string,
  label: string,
  placed: PlacedPattern,
  repeat: Repeat,
  shrinkage: number,
  say: Say,
): WorkingStep {
  const washed = shrinkage > 0 ? `, ÷ (1 − ${say.number(shrinkage / 1e6, 6)})` : '';
  return step(
    id,
    label,
    `${say.length(placed.motif)} − (${say.length(placed.along)} + ${say.length(placed.turn)}${washed}), by whole repeats of ${say.length(repeat.vertical)}`,
    say.length(placed.phase),
    repeat.match === 'half-drop' ? 'level widths; the others half a repeat further' : 'every width alike',
  );
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
