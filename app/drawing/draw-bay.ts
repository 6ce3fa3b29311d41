/** A bay shown unfolded: fine upright lines where the rod turns from one run to the next. */
import { strokes } from './make-shapes.ts';
import { take } from './measure-given.ts';
import type { ReckonedPanels } from './reckoned.ts';
import type { Shape } from './shape.ts';
import type { SheetStyle } from './sheet-style.ts';

export interface BayRun {
  /** From the left end of the rod, in ticks, as drawn. */
  readonly from: number;
  readonly to: number;
  /** True when it is drawn as long as it was measured along the wall, to 1 in 100. */
  readonly toScale: boolean;
}

/** The runs shared out over the rod: along the wall they are a little longer than the rod before it. */
export function placeRuns(panels: ReckonedPanels): readonly BayRun[] {
  const lengths = (panels.source.bay?.runs ?? []).map((run) => take(run, 'rodWidth', panels.rod.ticks / 3).ticks);
  const sum = lengths.reduce((all, run) => all + run, 0);
  if (sum <= 0) return [];
  const ratio = panels.rod.ticks / sum;
  let from = 0;
  return lengths.map((run) => {
    const placed = { from, to: from + run * ratio, toScale: Math.abs(ratio - 1) < 0.01 };
    from = placed.to;
    return placed;
  });
}

export function drawBayCorners(
  panels: ReckonedPanels,
  middle: number,
  half: number,
  rodY: number,
  floor: number,
  style: SheetStyle,
): readonly Shape[] {
  const runs = placeRuns(panels);
  if (runs.length < 2) return [];
  const scale = (half * 2) / panels.rod.ticks;
  const lines = runs.slice(1).map((run) => {
    const x = middle - half + run.from * scale;
    return [x, rodY - style.figure * 0.7, x, floor] as const;
  });
  return [
    strokes(lines, {
      stroke: 'pencil',
      strokeWidth: style.hair,
      dash: [style.hair * 7, style.hair * 3, style.hair * 1.5, style.hair * 3],
    }),
  ];
}
