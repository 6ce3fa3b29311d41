/** How panels are made, where a figure alone says too little: the half width and its side, the pocket of a rod. */
import type { WorkingStep } from '#shared/result.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { headingTurn } from './heading-turn.ts';
import type { LaidFace } from './laid-face.ts';
import { step } from '../say.ts';
import type { Say } from '../say.ts';

/** Where half a width hangs, and what it is cut from (common practice). */
export function workHalfWidth({ pieces }: PanelsTreatment, { counted }: LaidFace, say: Say): WorkingStep[] {
  const each = (counted?.halves ?? 0) / pieces;
  if (each % 2 !== 1 || each < 2) return [];
  const split =
    pieces === 1
      ? 'the rest of its cut is left over'
      : 'two from one cut, split down the middle: its right half to the left panel, its left half to the right one';
  return [
    step(
      'half-widths',
      'half width',
      `${say.widths(each)} in each panel`,
      'at the return side',
      `common practice: ${split}`,
    ),
  ];
}

/** A rod pocket's heading in figures; of other headings the setting is the figure. */
export function workPocket(panels: PanelsTreatment, say: Say): WorkingStep[] {
  const { heading, rodDiameter, header, practice } = panels;
  if (heading !== 'rod-pocket' || rodDiameter === null) return [];
  const { turn, ease } = practice.pocket;
  return [
    step(
      'pocket',
      'heading of the pocket',
      `${say.length(rodDiameter)} + ${say.length(turn)} + ${say.length(ease)}${header > 0 ? ` + ${say.length(header)}` : ''}`,
      say.length(headingTurn(panels, false)),
      `rod diameter; practice: turn and ease of a pocket${header > 0 ? '; the header once more, since it stands double' : ''}`,
    ),
  ];
}
