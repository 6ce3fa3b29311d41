/**
 * What the joint cut plan is asked: all cuts of one cloth, the cloth there is to lay them on, and what is settled already.
 * All lengths in ticks. Positions run along a bolt from its start; `x` runs across it from the left selvage.
 */
import type { Repeat } from '#shared/cloth.ts';
import type { Ticks } from '#shared/length.ts';

export interface PlannedCut {
  /** Unique among the cuts. */
  readonly id: string;
  /** The treatment it belongs to: a set is never split over dye lots. */
  readonly set: string;
  /** What a person reads on the drawing; the id when absent. */
  readonly label?: string;
  readonly length: Ticks;
  /** How much of the width it takes: two halves, or any pieces that fit, may lie beside one another. */
  readonly across: 'whole' | 'half' | Ticks;
  /**
   * Where in the repeat its start must lie, from 0 up to the repeat. All widths of a set start at one place, half-drop
   * widths alternate by half a repeat. Null: anywhere (always on plain cloth; a hidden piece on patterned cloth).
   */
  readonly phase: Ticks | null;
  /** Which selvage it must lie along: the half widths of a pair are one of each, so that the pattern runs on. */
  readonly side?: 'left' | 'right';
  /** `one-way`: nap or pattern, its top towards the bolt's start; `either`: it may also lie head to foot. */
  readonly direction: 'one-way' | 'either';
  /** It may be turned sideways: its length across the cloth. Only without phase, side and `one-way`. */
  readonly mayTurn: boolean;
}

/** A piece of cloth that can be bought, or lies on hand. */
interface Supply {
  /** Unique among bolts and remnants. */
  readonly id: string;
  /** Null: nobody knows, so it matches only itself. */
  readonly dyeLot: string | null;
  /**
   * The place in the repeat at its very start. Null: nobody knows. An unlimited bolt is then taken to start where the
   * first cut wants it (what the order's extra repeat pays for); of a limited piece one whole repeat is set aside.
   */
  readonly startPhase: Ticks | null;
  /** The supplier cuts it where the first cut wants it: of a limited piece, too, nothing is set aside. */
  readonly startsAsAsked?: boolean;
}

export interface Bolt extends Supply {
  /** Null: as long as one likes. */
  readonly length: Ticks | null;
  /** It is sold in whole steps of this, from its start: the whole length for a bolt that is not cut; 0 sells to the tick. */
  readonly step: Ticks;
}

/** Cloth already paid for: whatever is laid on it adds nothing to the order. */
export interface Remnant extends Supply {
  readonly length: Ticks;
  /** Null: the cloth's whole width. A narrower one is taken to have kept neither selvage. */
  readonly width: Ticks | null;
}

/** A cut that the decorator has placed by hand. */
export interface FixedCut {
  readonly cut: string;
  /** Id of a bolt or remnant. */
  readonly on: string;
  readonly at: Ticks;
  /** Its left edge from the left selvage; absent: along its own side, else along the left selvage. */
  readonly x?: Ticks;
}

/** A stretch that is bad over the whole width: no cut may touch it. */
export interface Flaw {
  readonly on: string;
  readonly from: Ticks;
  readonly to: Ticks;
}

export interface PlanSettings {
  /** What is left over is worth keeping from this size on. */
  readonly keepLength: Ticks;
  readonly keepWidth: Ticks;
  /**
   * How many layouts a search may weigh before the best one so far is taken; absent: `USUAL_BUDGET`. Where the first search
   * proves nothing, choices of remnants are searched as well (seven times as much at the most), and what each cut fixed by
   * hand costs is found by searches of their own (four times as much at the most).
   */
  readonly budget?: number;
}

export interface PlanInput {
  readonly cuts: readonly PlannedCut[];
  readonly bolts: readonly Bolt[];
  readonly remnants: readonly Remnant[];
  readonly repeat: Pick<Repeat, 'vertical' | 'match'> | null;
  /** The usable width of the cloth. */
  readonly width: Ticks;
  readonly settings: PlanSettings;
  readonly fixed: readonly FixedCut[];
  readonly flaws: readonly Flaw[];
  /** The handbook's length for the same cuts, for comparison; null when there is none. */
  readonly handbook: Ticks | null;
}

/** Layouts weighed unless told otherwise: a house is done within it, a thousand cuts get an honest best effort. */
export const USUAL_BUDGET = 300_000;

/** Told as the plan goes, so that a screen can show it and stop it. */
export interface PlanWatch {
  /** Share of the budget that is spent, 0 to 1. */
  readonly progress?: (share: number) => void;
  /** True ends the search; the best plan so far is returned. */
  readonly cancelled?: () => boolean;
}
