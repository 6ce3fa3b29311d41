/** The checked-in results of the oracles: test/reference/plan-oracle.json. Lengths in ticks. */
import type { PlanFile } from './plan-file.ts';

export interface OracleFile {
  /** Up to nine cuts, by seed; the least order by exhaustive search, null where the cuts cannot all be laid. */
  readonly small: readonly { readonly seed: number; readonly ordered: number | null }[];
  /** Up to sixty cuts on several bolts, solved with HiGHS. */
  readonly large: readonly {
    readonly house: PlanFile;
    readonly proved: boolean;
    readonly ordered: number | null;
    readonly bound: number;
  }[];
}

export const SMALL_SEEDS: readonly number[] = Array.from({ length: 300 }, (_, seed) => seed);
export const LARGE_SEEDS: readonly number[] = Array.from({ length: 60 }, (_, seed) => seed);
/** Questions of growing size for the speed in `npm run bench`: test/reference/plan-growth.json. */
export interface GrowthFile {
  readonly growing: readonly PlanFile[];
}

export const GROWTH_FILE = new URL('../../test/reference/plan-growth.json', import.meta.url);
export const ORACLE_FILE = new URL('../../test/reference/plan-oracle.json', import.meta.url);
