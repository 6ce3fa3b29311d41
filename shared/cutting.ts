/** What is known of the cloth there is to cut, before it is laid: bolts, remnants, flaws, and cuts placed by hand. */
import type { Ticks } from './length.ts';
import { TIERS } from './words.ts';

/** What became of a treatment: the option that the client accepted, or that none was. */
export const DECISIONS = [...TIERS, 'declined'] as const;
export type Decision = (typeof DECISIONS)[number];

interface OnHand {
  /** Cloth id. */
  readonly cloth: string;
  /** Unique among the bolts and remnants of its cloth. */
  readonly name: string;
  /** Null: nobody knows, so it matches only itself. */
  readonly dyeLot: string | null;
  /** The place in the repeat at its very start; null: nobody knows. */
  readonly startsAt: Ticks | null;
}

export interface ListedBolt extends OnHand {
  /** Null: as long as one likes. */
  readonly length: Ticks | null;
}

/** Cloth that is paid for already. */
export interface ListedRemnant extends OnHand {
  readonly length: Ticks;
  /** Null: the cloth's whole width. */
  readonly width: Ticks | null;
}

/** A stretch that is bad over the whole width. */
export interface ListedFlaw {
  readonly cloth: string;
  /** Name of a bolt or remnant of that cloth. */
  readonly on: string;
  readonly from: Ticks;
  readonly to: Ticks;
}

/** A cut that the decorator has placed by hand. */
export interface PlacedCut {
  readonly cloth: string;
  /** `Nursery/East window/Panels`. */
  readonly treatment: string;
  /** Counts the cuts of that treatment in that cloth from 1. */
  readonly cut: number;
  readonly on: string;
  readonly at: Ticks;
  /** Its left edge from the left selvage; null: along its own side, else along the left selvage. */
  readonly x: Ticks | null;
}

export interface Cutting {
  readonly bolts: readonly ListedBolt[];
  readonly remnants: readonly ListedRemnant[];
  readonly flaws: readonly ListedFlaw[];
  readonly fixed: readonly PlacedCut[];
}

/** What a bolt that nobody has listed is called: a cloth without listed bolts has as many of these as it takes. */
export function nameBolt(index: number): string {
  return `bolt ${index + 1}`;
}

export function isUnlistedBolt(name: string): boolean {
  return /^bolt [1-9]\d{0,3}$/.test(name);
}
