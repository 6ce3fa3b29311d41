/** What the joint cut plan returns: every cut in its place, what is left, and how good the plan is proved to be. */
import type { Fault } from '#shared/fault.ts';
import type { Ticks } from '#shared/length.ts';
import type { WorkingStep } from '#shared/result.ts';

export interface LaidCut {
  readonly id: string;
  readonly set: string;
  readonly label: string;
  /** Along the bolt, from its start. */
  readonly at: Ticks;
  /** Across it, from the left selvage. */
  readonly x: Ticks;
  /** As it lies: along the bolt, and across it. */
  readonly length: Ticks;
  readonly across: Ticks;
  readonly phase: Ticks | null;
  /** `up`: its top towards the bolt's start; `sideways`: a quarter turn. */
  readonly laid: 'up' | 'sideways';
  readonly fixed: boolean;
}

/** A rectangle of cloth that no cut uses. */
export interface FreeCloth {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly x: Ticks;
  readonly across: Ticks;
}

/** What is left and large enough to go back on the shelf. */
export interface KeptRemnant extends FreeCloth {
  readonly name: string;
  readonly on: string;
  readonly dyeLot: string | null;
  /** Place in the repeat at its start; null on plain cloth. */
  readonly startPhase: Ticks | null;
}

export interface LaidBolt {
  readonly id: string;
  readonly kind: 'bolt' | 'remnant';
  readonly dyeLot: string | null;
  /** Null: unlimited. */
  readonly length: Ticks | null;
  readonly width: Ticks;
  /** Place in the repeat at its start, known or assumed; null on plain cloth. */
  readonly startPhase: Ticks | null;
  /** In order along the bolt, then across it. */
  readonly cuts: readonly LaidCut[];
  readonly waste: readonly FreeCloth[];
  readonly flaws: readonly { readonly from: Ticks; readonly to: Ticks }[];
  /** To the end of the last cut. */
  readonly used: Ticks;
  /** `used` up to the bolt's step; 0 of a remnant. */
  readonly ordered: Ticks;
}

export interface CutPlan {
  /** Those with cuts on them: remnants first. */
  readonly bolts: readonly LaidBolt[];
  /** Sum over the bolts: the cloth to buy. */
  readonly ordered: Ticks;
  readonly handbook: Ticks | null;
  /**
   * No plan of these cuts on this cloth orders less: proved by `bound-plan.ts` for every layout, or, where few cuts were laid
   * exactly (`lay-exactly.ts`), for every layout that is cut in rows.
   */
  readonly bound: Ticks;
  /** `ordered` less `bound`: 0 is proved best. */
  readonly gap: Ticks;
  /** Cuts that found no place; empty but where the cloth on hand runs out. */
  readonly unlaid: readonly string[];
  readonly remnants: readonly KeptRemnant[];
  /** What each cut fixed by hand adds to the order, the others staying where they are. */
  readonly fixedCosts: readonly { readonly cut: string; readonly costs: Ticks }[];
  readonly working: readonly WorkingStep[];
  /** Layouts weighed. */
  readonly steps: number;
  readonly cancelled: boolean;
}

export type PlanOutcome =
  { readonly ok: true; readonly plan: CutPlan } | { readonly ok: false; readonly faults: readonly Fault[] };
