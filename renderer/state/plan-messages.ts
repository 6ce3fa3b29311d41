/** What the page and its planning worker say to each other. */
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import type { WorkLaid } from '#app/pricing/plan-work.ts';
import type { Fault } from '#shared/fault.ts';
import type { Job } from '#shared/job.ts';
import type { Ticks } from '#shared/length.ts';

/** What one treatment adds to the cloth of the whole house. */
export interface AddedCloth {
  readonly cloth: string;
  readonly name: string;
  /** More cloth laid than without it. */
  readonly adds: Ticks;
  /** What it would order by itself, extra and step counted. */
  readonly order: Ticks;
  /** Other treatments are cut from the same cloth. */
  readonly shared: boolean;
}

export type PlanQuestion =
  | { readonly ask: 'plans'; readonly job: Job; readonly of: WorkLaid }
  /** `treatment` is its path: `Nursery/East window/Panels`. */
  | { readonly ask: 'added'; readonly job: Job; readonly of: WorkLaid; readonly treatment: string }
  /** The accepted work of several projects. */
  | { readonly ask: 'together'; readonly jobs: readonly NamedJob[] };

export type PlanAnswer =
  | { readonly tell: 'progress'; readonly share: number }
  /** `rough`: from a first quick look; a better one follows. */
  | {
      readonly tell: 'plans';
      readonly plans: readonly ClothPlan[];
      readonly faults: readonly Fault[];
      readonly rough: boolean;
    }
  | { readonly tell: 'added'; readonly added: readonly AddedCloth[] }
  | { readonly tell: 'broken'; readonly says: string };
