/** Panels reckoned: the top of their heading, their length, how far they stand back when they are open. */
import { piecesOf } from '#shared/treatments/panels.ts';
import type { DrawnHung, DrawnPanels } from './drawn-room.ts';
import { BOUNDS, FINIAL, INCH, RING_DROP, take, takeCount } from './measure-given.ts';
import type { Measure } from './measure-given.ts';
import { countPleats, countWidths } from './pleats.ts';
import type { Hole, ReckonedPanels } from './reckoned.ts';

/** Under the ceiling, by what is known of it. */
export function underCeiling(hole: Hole): number {
  return hole.ceiling.given === null ? hole.head + 12 * INCH : hole.ceiling.ticks - INCH / 2;
}

export function reckonPanels(panels: DrawnPanels, hole: Hole): ReckonedPanels {
  const { where } = panels.mount;
  const inside = where === 'inside';
  const rod = take(panels.rodWidth, 'rodWidth', inside ? hole.width.ticks - INCH / 4 : hole.width.ticks + 12 * INCH);
  const above = take(panels.mount.above, 'above', inside ? 0 : undefined);
  const top = topOfPanels(panels, hole, above);
  const usualHem = panels.cafe === true ? hole.sill : INCH / 2;
  const length = take(panels.finishedLength, 'length', Math.max(2 * INCH, top - usualHem));
  const returns = reckonReturns(panels.returns);
  const overlap = take(panels.overlap, 'overlap').ticks;
  const finishedWidth = rod.ticks + overlap + returns.left + returns.right;
  const { fullness, halfWidths, pleats, heading } = panels;
  const pieces = takeCount(panels.pieces, piecesOf(panels.arrangement), 1, 12);
  const folds = countPleats({ heading, pieces, pleats, halfWidths, fullness, finishedWidth });
  return {
    kind: 'panels',
    source: panels,
    rod,
    above,
    top,
    length,
    hem: top - length.ticks,
    returns,
    overlap,
    pieces,
    stack: reckonStack(panels, pieces, rod.ticks, countWidths({ halfWidths, fullness, finishedWidth })),
    folds,
    arch: Math.min(
      length.ticks * 0.8,
      panels.arch === undefined || panels.arch === null ? 0 : take(panels.arch, 'part').ticks,
    ),
    reach: rod.ticks / 2 + (inside ? 0 : FINIAL),
    over: RING_DROP + 2 * INCH,
  };
}

function topOfPanels(panels: DrawnPanels, hole: Hole, above: Measure): number {
  const { where } = panels.mount;
  if (panels.topFromFloor !== undefined && panels.topFromFloor !== null && Number.isFinite(panels.topFromFloor))
    return Math.max(2 * INCH, Math.min(BOUNDS.ceiling.high * INCH, panels.topFromFloor));
  if (panels.cafe === true && panels.finishedLength !== null) {
    // A café tier covers the lower part: its hem hangs at the sill, whatever is said about the head of the frame.
    return Math.max(2 * INCH, hole.sill + take(panels.finishedLength, 'length').ticks);
  }
  const tops = { wall: hole.head + above.ticks, ceiling: underCeiling(hole), inside: hole.head - INCH } as const;
  return Math.max(2 * INCH, tops[where]);
}

/** Cloth stacks to about 5 1/2 in a width (common practice: 5 to 6). */
const STACK_PER_WIDTH = 5.5 * INCH;

function reckonStack(
  panels: DrawnPanels,
  pieces: number,
  rod: number,
  widths: number,
): { left: number; right: number } {
  const given = { left: panels.stackback?.left ?? null, right: panels.stackback?.right ?? null };
  const most = (rod / pieces) * 0.98;
  const least = Math.min(2 * INCH, most);
  const fit = (value: number | null, usual: number) =>
    Math.max(least, Math.min(most, value !== null && Number.isFinite(value) && value > 0 ? value : usual));
  if (pieces >= 2) {
    const usual = (widths / pieces) * STACK_PER_WIDTH;
    return { left: fit(given.left, usual), right: fit(given.right, usual) };
  }
  const usual = widths * STACK_PER_WIDTH;
  const toRight = (given.right ?? 0) > (given.left ?? 0);
  return toRight ? { left: 0, right: fit(given.right, usual) } : { left: fit(given.left, usual), right: 0 };
}

export function reckonReturns(returns: DrawnHung['returns']): { left: number; right: number } {
  return { left: take(returns.left, 'side').ticks, right: take(returns.right, 'side').ticks };
}
