/**
 * How a treatment closes over its window: sides by returns, top by mount, bottom by floor or sill. Winter warmth, edge
 * light and the advice all rest on it. Lengths in ticks.
 */
import { TICKS_PER_INCH } from '#shared/length.ts';
import { returnSides } from '#shared/job.ts';
import type { Heading } from '#shared/words.ts';
import type { JudgedOpening, JudgedTreatment } from './judge-input.ts';

export type ClosingClass = 'stationary' | 'open' | 'close' | 'sealed';

export interface Closing {
  readonly class: ClosingClass;
  readonly sides: boolean;
  readonly top: boolean;
  readonly bottom: boolean;
  /** Hem above the floor; null when the sill height is not known, below zero when it lies on the floor. */
  readonly floorClearance: number | null;
}

/** A hem within this of the floor or the sill closes the bottom (common practice: half an inch clears a floor). */
const CLOSED_WITHIN = 0.5 * TICKS_PER_INCH;
/** Headings that hang on an open pole: air goes through and over them. */
const POLE_HEADINGS: readonly Heading[] = ['rod-pocket', 'tab', 'grommet'];

/** Where the hem ends above the floor: rod height less finished length. */
export function floorClearance(opening: JudgedOpening, treatment: JudgedTreatment): number | null {
  if (opening.sill === null) return null;
  return opening.sill + opening.height + treatment.mount.above - treatment.finishedLength;
}

/** Classes of `light-and-heat` section 3; a pelmet is not known to panels yet and is given by the caller. */
export function classifyClosing(opening: JudgedOpening, treatment: JudgedTreatment, pelmet = false): Closing {
  const clearance = floorClearance(opening, treatment);
  const { left, right } = treatment.returns;
  const inside = treatment.mount.where === 'inside';
  const least = returnSides(treatment.arrangement) === 2 ? Math.min(left, right) : Math.max(left, right);
  const sides = inside || least > 0;
  const top = pelmet || treatment.mount.where !== 'wall';
  const bottom = inside
    ? treatment.finishedLength >= opening.height - CLOSED_WITHIN
    : clearance !== null && clearance <= CLOSED_WITHIN;
  return {
    class: closingClass(treatment, { sides, top, bottom, pelmet }),
    sides,
    top,
    bottom,
    floorClearance: clearance,
  };
}

function closingClass(
  treatment: JudgedTreatment,
  closed: { readonly sides: boolean; readonly top: boolean; readonly bottom: boolean; readonly pelmet: boolean },
): ClosingClass {
  if (treatment.arrangement === 'pair-stationary') return 'stationary';
  if (POLE_HEADINGS.includes(treatment.heading) && !closed.pelmet) return 'open';
  if (!closed.sides) return 'open';
  if (closed.pelmet && closed.bottom) return 'sealed';
  return closed.top || closed.bottom ? 'close' : 'open';
}
