/**
 * The rod that clears the glass when its panels are drawn back. A longer rod takes more widths, which stack deeper, so
 * it is solved for: adding the stack to the window once, or twice, gives a rod that does not clear it or that is too long.
 */
import type { BackCloth } from '#shared/cloth.ts';
import { LONGEST, ticks } from '#shared/length.ts';
import type { Ticks } from '#shared/length.ts';
import type { PanelsTreatment } from '#shared/treatments/panels.ts';
import { countWidths, flatAsked } from './count-widths.ts';
import { upToWhole } from '../round.ts';
import { measureStackback } from './stackback.ts';

export interface ClearingRod {
  readonly rod: Ticks;
  /** Half widths of all pieces on that rod. */
  readonly halfWidths: number;
  /** Of one piece, as it usually is. */
  readonly stack: Ticks;
}

/** Widths settle after a few rounds; a practice whose stack outgrows the rod never does. */
const MOST_ROUNDS = 200;

/** Panels that draw along a straight rod in front of the wall: the others have no wall to stack on, or stand still. */
export function stacksOnWall({ arrangement, mount, bay, arch }: PanelsTreatment): boolean {
  const draws = arrangement === 'pair' || arrangement === 'one-way';
  return draws && mount.where !== 'inside' && bay === null && arch === null;
}

/** Null where nothing draws clear of the glass, or no rod would do. */
export function solveRod(
  panels: PanelsTreatment,
  face: { readonly usable: Ticks; readonly sideways: boolean },
  behind: readonly BackCloth[],
  glass: Ticks,
): ClearingRod | null {
  if (glass === 0 || !stacksOnWall(panels)) return null;
  let rod = glass;
  for (let round = 0; round < MOST_ROUNDS && rod <= LONGEST; round += 1) {
    const wider = { ...panels, rodWidth: rod };
    const halfWidths = face.sideways
      ? upToWhole(2 * flatAsked(wider), face.usable)
      : countWidths(wider, face.usable).halves;
    const stack = measureStackback(wider, halfWidths, behind).usual;
    const needed = glass + panels.pieces * stack;
    if (needed <= rod) return { rod, halfWidths, stack };
    rod = ticks(needed);
  }
  return null;
}
