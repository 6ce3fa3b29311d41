/** Panels under a heading: drawn as a pair or one way, or still. */
import type { Ticks } from '../length.ts';
import type { HangAllowances, Thousandths } from '../practice.ts';
import type { Arrangement, Heading } from '../words.ts';
import type { RodKind } from './rods.ts';
import type { Mount, TreatmentBase } from './treatment-base.ts';

export interface PanelsTreatment extends TreatmentBase {
  readonly kind: 'panels';
  readonly heading: Heading;
  readonly arrangement: Arrangement;
  readonly mount: Mount;
  /** Rod face, bracket to bracket, before returns and overlap. */
  readonly rodWidth: Ticks;
  /** Top of the heading to the hem. */
  readonly finishedLength: Ticks;
  readonly fullness: Thousandths;
  /** False when the fullness is the practice's, not the treatment's own. */
  readonly fullnessGiven: boolean;
  readonly returns: { readonly left: Ticks; readonly right: Ticks };
  /** The whole overlap at the centre, of a pair alone. */
  readonly overlap: Ticks;
  /** Widths of each piece, in halves (3 is 1.5 widths), given instead of fullness; else null. */
  readonly halfWidths: number | null;
  /** Panels that hang side by side on the rod: 1 or 2 by the arrangement, or more still panels. */
  readonly pieces: number;
  /** Fingers of a pinch pleat. */
  readonly fingers: 2 | 3;
  /** How the finished length was found; null when it was given. */
  readonly hang: Hang | null;
  /** The runs of a bay whose rod face was reckoned; null when it was given. */
  readonly bay: Bay | null;
  /** Rise of an arched top above its springing, within the finished length; null for a straight rod. */
  readonly arch: Ticks | null;
  readonly bands: readonly Band[];
  readonly rodDiameter: Ticks | null;
  /** Stands above a rod pocket, within the finished length. */
  readonly header: Ticks;
  /** Covers the lower part of the window alone. */
  readonly cafe: boolean;
  /** Pleat and space together are a whole part of the repeat across. */
  readonly pleatToPattern: boolean;
  /** What hooks hang on; null where nobody said: rings, on a wall. */
  readonly rod: RodKind | null;
  /** The end of the track that a motor stands at; null without one. */
  readonly motor: 'left' | 'right' | null;
  /** The selvage of the cloth is weighted and hangs as the hem: it runs sideways and has no other. */
  readonly weightedEdge: boolean;
}

/** Where the hem ends; the last three are on the floor, deeper and deeper. */
export const HANG_ENDS = ['sill', 'apron', 'floor', 'break', 'puddle', 'full-puddle'] as const;
export type HangEnd = (typeof HANG_ENDS)[number];

/** How much of it lies on the floor, or how far it keeps off: the practice's setting for each end. */
export const HANG_SETTINGS = {
  sill: 'sill',
  apron: 'apron',
  floor: 'floor',
  break: 'break',
  puddle: 'puddle',
  'full-puddle': 'fullPuddle',
} as const satisfies Readonly<Record<HangEnd, keyof HangAllowances>>;

/** Where the length starts and ends: the commonest remake, so the working says it. */
export interface Hang {
  /** Height of the fixing (ring eye, track, pole) above the floor: the shortest of the readings. */
  readonly fixing: Ticks;
  /** Readings of that height at left, centre and right; one where it was read once. */
  readonly readings: readonly Ticks[];
  /** From the fixing down to the top of the heading; below zero where the heading stands above it. */
  readonly headingBelow: number;
  readonly to: HangEnd;
  /** Clear of floor or sill, below the sill, or lying on the floor. */
  readonly by: Ticks;
  readonly sill: Ticks;
}

export interface Bay {
  readonly runs: readonly Ticks[];
  /** Degrees that the rod turns between two runs. */
  readonly turns: readonly number[];
  /** From the wall to the rod. */
  readonly projection: Ticks;
}

/** More than a break: cloth lies on the floor. */
export function liesOnFloor({ to }: Pick<Hang, 'to'>): boolean {
  return to === 'puddle' || to === 'full-puddle';
}

/** A strip of another cloth along an edge. */
export interface Band {
  readonly edge: 'leading' | 'hem' | 'both-sides';
  readonly cloth: string;
  /** Finished width of the strip. */
  readonly width: Ticks;
}

/** Sides that have a return: a pair has its two outer edges, a one-way draw both ends, a single panel one. */
export function returnSides(arrangement: Arrangement): 1 | 2 {
  return arrangement === 'single' ? 1 : 2;
}

/** Pieces that hang side by side: a pair, stationary or not, is two. */
export function piecesOf(arrangement: Arrangement): 1 | 2 {
  return arrangement === 'pair' || arrangement === 'pair-stationary' ? 2 : 1;
}
