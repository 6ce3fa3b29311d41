/**
 * From what somebody has typed so far to what can be drawn: missing measurements are assumed, absurd ones are brought
 * within bounds, and both are remembered, so that the drawing shows them dashed or underlined and never passes them off.
 */
import { TICKS_PER_INCH } from '#shared/length.ts';
import { piecesOf } from '#shared/job.ts';
import type { DrawnOpening, DrawnPanels, DrawnRoom, DrawnTreatment, Given } from './drawn-room.ts';
import { countPleats, countWidths } from './pleats.ts';

export const INCH = TICKS_PER_INCH;
/** Drawn round every opening: what usual casing measures. */
export const CASING = 3 * INCH;
export const SILL_HORN = 1.5 * INCH;
/** From the rod's end to the tip of its finial. */
export const FINIAL = 3.6 * INCH;
/** From the eye of the ring, where the length starts, up to the middle of the rod. */
export const RING_DROP = 1.5 * INCH;

/** Bounds within which a measurement is drawn as it is, and what is drawn while it is missing. In inches. */
const BOUNDS = {
  width: { low: 4, high: 480, usual: 48 },
  height: { low: 4, high: 240, usual: 54 },
  sill: { low: 0, high: 240, usual: 30 },
  at: { low: 0, high: 600, usual: 0 },
  ceiling: { low: 48, high: 360, usual: 96 },
  above: { low: -60, high: 120, usual: 4 },
  rodWidth: { low: 4, high: 600, usual: 0 },
  length: { low: 1, high: 400, usual: 0 },
  side: { low: 0, high: 24, usual: 3.5 },
  overlap: { low: 0, high: 24, usual: 0 },
} as const;

export interface Measure {
  /** What is drawn. */
  readonly ticks: number;
  /** What was given, shown on dimension lines; null when missing. */
  readonly given: Given;
  /** True when it is drawn as given. */
  readonly sure: boolean;
}

export interface ReckonedPanels {
  readonly kind: 'panels';
  readonly source: DrawnPanels;
  readonly rod: Measure;
  readonly above: Measure;
  /** Top of the heading from the floor. */
  readonly top: number;
  readonly length: Measure;
  /** Hem from the floor; below 0 the cloth lies on it. */
  readonly hem: number;
  readonly returns: { readonly left: number; readonly right: number };
  readonly overlap: number;
  readonly stack: { readonly left: number; readonly right: number };
  /** Folds of one piece. */
  readonly folds: number;
}
export type ReckonedTreatment = ReckonedPanels;

export interface ReckonedOpening {
  readonly source: DrawnOpening;
  readonly width: Measure;
  readonly height: Measure;
  readonly sill: Measure;
  readonly at: number | null;
  readonly treatments: readonly ReckonedTreatment[];
  /** How far the drawing reaches from the opening's left edge, and how high above the floor. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

export interface ReckonedRoom {
  readonly source: DrawnRoom;
  readonly ceiling: Measure;
  readonly openings: readonly ReckonedOpening[];
  /** Ceiling, or what stands highest. */
  readonly top: number;
}

function take(given: Given | undefined, name: keyof typeof BOUNDS, usual?: number): Measure {
  const { low, high } = BOUNDS[name];
  const missing = given === null || given === undefined || !Number.isFinite(given);
  const wanted = missing ? (usual ?? BOUNDS[name].usual * INCH) : given;
  const drawn = Math.max(low * INCH, Math.min(high * INCH, wanted));
  return { ticks: drawn, given: missing ? null : given, sure: !missing && drawn === given };
}

export function reckonRoom(room: DrawnRoom): ReckonedRoom {
  const ceiling = take(room.ceiling, 'ceiling');
  const openings = room.openings.map((opening) => reckonOpening(opening, ceiling));
  const highest = Math.max(0, ...openings.map((opening) => opening.top));
  const top = ceiling.given === null ? Math.max(ceiling.ticks, highest + 8 * INCH) : Math.max(ceiling.ticks, highest);
  return { source: room, ceiling, openings, top };
}

function reckonOpening(opening: DrawnOpening, ceiling: Measure): ReckonedOpening {
  const width = take(opening.width, 'width');
  const height = take(opening.height, 'height');
  // Nobody has measured the sill: a tall opening is taken for a door, others keep a usual sill under the ceiling.
  const headroom = Math.max(0, ceiling.ticks - 6 * INCH - height.ticks);
  const usualSill = height.ticks >= 72 * INCH ? 0 : Math.min(BOUNDS.sill.usual * INCH, headroom);
  const sill = take(opening.sill, 'sill', usualSill);
  const at = opening.at === null || !Number.isFinite(opening.at) ? null : take(opening.at, 'at').ticks;
  const head = sill.ticks + height.ticks;
  const treatments = opening.treatments.map((treatment) => RECKONED[treatment.kind](treatment, width, head, ceiling));
  const reach = Math.max(...treatments.map((treatment) => reachOf(treatment)), width.ticks / 2 + CASING + SILL_HORN);
  return {
    source: opening,
    width,
    height,
    sill,
    at,
    treatments,
    left: width.ticks / 2 - reach,
    right: width.ticks / 2 + reach,
    top: Math.max(head + CASING, ...treatments.map((treatment) => treatment.top + RING_DROP + 2 * INCH)),
  };
}

/** Who reckons which kind of treatment; a new kind is one more line. */
const RECKONED = { panels: reckonPanels } as const satisfies Record<DrawnTreatment['kind'], unknown>;

function reckonPanels(panels: DrawnPanels, width: Measure, head: number, ceiling: Measure): ReckonedPanels {
  const { where } = panels.mount;
  const rod = take(panels.rodWidth, 'rodWidth', where === 'inside' ? width.ticks - INCH / 4 : width.ticks + 12 * INCH);
  const above = take(panels.mount.above, 'above', where === 'inside' ? 0 : undefined);
  const underCeiling = ceiling.given === null ? head + 12 * INCH : ceiling.ticks - INCH / 2;
  const tops = { wall: head + above.ticks, ceiling: underCeiling, inside: head - INCH } as const;
  const top = Math.max(2 * INCH, tops[where]);
  const length = take(panels.finishedLength, 'length', Math.max(2 * INCH, top - INCH / 2));
  const returns = {
    left: take(panels.returns.left, 'side').ticks,
    right: take(panels.returns.right, 'side').ticks,
  };
  const overlap = take(panels.overlap, 'overlap').ticks;
  const finishedWidth = rod.ticks + overlap + returns.left + returns.right;
  const { fullness, halfWidths, pleats, heading } = panels;
  const pieces = piecesOf(panels.arrangement);
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
    stack: reckonStack(panels, rod.ticks, countWidths({ halfWidths, fullness, finishedWidth })),
    folds,
  };
}

/** Cloth stacks to about 5 1/2 in a width (common practice: 5 to 6). */
const STACK_PER_WIDTH = 5.5 * INCH;

function reckonStack(panels: DrawnPanels, rod: number, widths: number): { left: number; right: number } {
  const pieces = piecesOf(panels.arrangement);
  const given = { left: panels.stackback?.left ?? null, right: panels.stackback?.right ?? null };
  const most = (rod / pieces) * 0.98;
  const least = Math.min(2 * INCH, most);
  const fit = (value: number | null, usual: number) =>
    Math.max(least, Math.min(most, value !== null && Number.isFinite(value) && value > 0 ? value : usual));
  if (pieces === 2) {
    const usual = (widths / 2) * STACK_PER_WIDTH;
    return { left: fit(given.left, usual), right: fit(given.right, usual) };
  }
  const usual = widths * STACK_PER_WIDTH;
  const toRight = (given.right ?? 0) > (given.left ?? 0);
  return toRight ? { left: 0, right: fit(given.right, usual) } : { left: fit(given.left, usual), right: 0 };
}

/** From the middle of the opening to the outermost part. */
function reachOf(treatment: ReckonedTreatment): number {
  const inside = treatment.source.mount.where === 'inside';
  return treatment.rod.ticks / 2 + (inside ? 0 : FINIAL);
}
