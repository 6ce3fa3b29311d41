/**
 * How a treatment closes over its window: sides by returns, top by mount, bottom by floor or sill. Winter warmth, edge
 * light and the advice all rest on it. Lengths in ticks.
 */
import { TICKS_PER_INCH } from '#shared/length.ts';
import { returnSides } from '#shared/treatments/panels.ts';
import type { Heading } from '#shared/words.ts';
import type { JudgedOpening, JudgedTreatment } from '../judge-input.ts';
import { placeOf } from '../place-of-kind.ts';

/** `stationary` panels do not draw; `top` covers the head alone; `away` is not at a window. */
export type ClosingClass = 'stationary' | 'top' | 'away' | 'open' | 'close' | 'sealed';

/** Closes over the window when it is drawn. */
export function draws(closing: ClosingClass): closing is 'open' | 'close' | 'sealed' {
  return closing === 'open' || closing === 'close' || closing === 'sealed';
}

export interface Closing {
  readonly class: ClosingClass;
  readonly sides: boolean;
  readonly top: boolean;
  readonly bottom: boolean;
  /** Hem above the floor; null when the sill height is not known, below zero when it lies on the floor. */
  readonly floorClearance: number | null;
}

/**
 * A hem within this of the floor or the sill closes the bottom: half an inch clears a floor in an inch household, a
 * centimetre and a half in a metric one (common practice), and both are meant as closed.
 */
const CLOSED_WITHIN = 0.75 * TICKS_PER_INCH;
/** Headings that hang on an open pole: air goes through and over them. */
const POLE_HEADINGS: readonly Heading[] = ['rod-pocket', 'tab', 'grommet'];

/** Where the hem ends above the floor: rod height less finished length. */
export function floorClearance(opening: JudgedOpening, treatment: JudgedTreatment): number | null {
  if (opening.sill === null) return null;
  return opening.sill + opening.height + treatment.mount.above - treatment.finishedLength;
}

/**
 * It closes over the window and hangs below the sill, where a heat source stands: the heat is shut behind the cloth, and no
 * clearance in front of it can be kept.
 */
export function hangsBeforeHeat(opening: JudgedOpening, treatment: JudgedTreatment): boolean {
  if (!opening.heatSourceBelow || treatment.arrangement === 'pair-stationary') return false;
  const belowSill = treatment.finishedLength - treatment.mount.above - opening.height;
  return placeOf(treatment.kind) === 'window' && belowSill > CLOSED_WITHIN;
}

/** Classes of `light-and-heat` section 3. `pelmet`: another treatment's board or box closes the top. */
export function classifyClosing(opening: JudgedOpening, treatment: JudgedTreatment, pelmet = false): Closing {
  const clearance = floorClearance(opening, treatment);
  const { left, right } = treatment.returns;
  const inside = treatment.mount.where === 'inside';
  const least = returnSides(treatment.arrangement) === 2 ? Math.min(left, right) : Math.max(left, right);
  const sides = inside || least > 0;
  const top = pelmet || treatment.onBoard === true || treatment.mount.where !== 'wall';
  const bottom = inside || treatment.kind === 'roman-shade' ? reachesSill(opening, treatment) : clearsFloor(clearance);
  return {
    class: closingClass(treatment, { sides, top, bottom, pelmet }),
    sides,
    top,
    bottom,
    floorClearance: clearance,
  };
}

/** A shade hangs close before frame or wall, so its hem closes wherever it covers the glass. */
function reachesSill(opening: JudgedOpening, treatment: JudgedTreatment): boolean {
  return treatment.finishedLength - treatment.mount.above >= opening.height - CLOSED_WITHIN;
}

function clearsFloor(clearance: number | null): boolean {
  return clearance !== null && clearance <= CLOSED_WITHIN;
}

function closingClass(
  treatment: JudgedTreatment,
  closed: { readonly sides: boolean; readonly top: boolean; readonly bottom: boolean; readonly pelmet: boolean },
): ClosingClass {
  const place = placeOf(treatment.kind);
  if (place === 'top' || place === 'board') return 'top';
  if (place === 'away') return 'away';
  if (treatment.arrangement === 'pair-stationary') return 'stationary';
  if (treatment.cafe === true) return 'open';
  if (POLE_HEADINGS.includes(treatment.heading) && !closed.pelmet) return 'open';
  if (!closed.sides) return 'open';
  if (closed.pelmet && closed.bottom) return 'sealed';
  return closed.top || closed.bottom ? 'close' : 'open';
}
