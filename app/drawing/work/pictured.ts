/** The made piece as it hangs, drawn by the same code as the elevation, so that the workroom sees what the client saw. */
import type { TierResult } from '#shared/result.ts';
import { ticks } from '#shared/length.ts';
import type { Treatment } from '#shared/treatments/treatment.ts';
import { describeDrawn } from '../describe-drawn.ts';
import type { WorkGiven } from './work-given.ts';
import { drawHung } from '../draw-hung.ts';
import type { DrawnHung } from '../drawn-room.ts';
import { isFurniture } from '../drawn-treatment.ts';
import { INCH, take } from '../measure-given.ts';
import { reckonTreatment } from '../reckon-treatment.ts';
import type { ReckonedTreatment } from '../reckoned.ts';
import { SHEET_STYLES } from '../sheet-style.ts';
import type { WorkPiece } from './work-piece.ts';

export interface Pictured {
  readonly hung: ReckonedTreatment;
  readonly picture: NonNullable<WorkPiece['picture']>;
}

/** Null for what hangs at no window. A shade is let down. */
export function pictured(given: WorkGiven): Pictured | null {
  const drawn = drawnFor(given.treatment, given.made, given.clothOf);
  if (drawn === null) return null;
  const high = ticks(400 * INCH);
  const free = { given: null, sure: false, ticks: high };
  // A hole far above the floor, with its head where the piece begins: nothing of it is drawn.
  const hole = { width: take(null, 'width'), sill: 0, head: 300 * INCH, ceiling: free };
  const hung = reckonTreatment(drawn, hole);
  const style = SHEET_STYLES[given.detail];
  return {
    hung,
    picture: ({ x, y, scale }) =>
      drawHung(hung, { middle: x + (hung.rod.ticks / 2) * scale, floor: y + hung.top * scale, scale }, style),
  };
}

function drawnFor(treatment: Treatment, made: TierResult, clothOf: WorkGiven['clothOf']): DrawnHung | null {
  const drawn = describeDrawn(treatment, made, clothOf);
  if (isFurniture(drawn)) return null;
  return drawn.kind === 'roman-shade' ? { ...drawn, drawn: 'lowered' } : drawn;
}
