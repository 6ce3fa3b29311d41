/** What every treatment has, whatever its kind. */
import type { Decision } from '../cutting.ts';
import type { Ticks } from '../length.ts';
import type { Practice } from '../practice.ts';
import type { MountPlace, Tier } from '../words.ts';
import type { PatternPlace } from './pattern-place.ts';

/** One stack: the face and the layers behind it, room to street. `behind` empty is unlined. */
export interface StackIds {
  readonly face: string;
  readonly behind: readonly string[];
}

export interface Mount {
  readonly where: MountPlace;
  /** Rod above the top of the frame; 0 for inside mounts. */
  readonly above: Ticks;
}

export interface TreatmentBase {
  readonly name: string;
  /** Stable key of the treatment: the portfolio's id, or the path in a job file. */
  readonly key: string;
  readonly quantity: number;
  /** Resolved for this treatment alone: defaults, the decorator's, the job's, the treatment's. */
  readonly practice: Practice;
  /** Tiers that were given; absent ones are chosen by the lining engine. */
  readonly stacks: Readonly<Partial<Record<Tier, StackIds>>>;
  /** Cloth id of the face unless a stack names another. */
  readonly face: string;
  /** Where a whole motif stands; null lets the pattern fall as it falls, all widths alike. */
  readonly pattern: PatternPlace | null;
  /** What the client accepted; null while nothing is said. */
  readonly decision?: Decision | null;
}
