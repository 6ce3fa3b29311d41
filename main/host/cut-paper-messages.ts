/** What the desk and the thread that draws its cut plans say to each other. */
import type { DocumentGiven, DrawnDocument } from '#app/documents/document-given.ts';
import type { NamedJob } from '#app/pricing/plan-together.ts';
import type { WorkLaid } from '#app/pricing/plan-work.ts';
import type { Job } from '#shared/job.ts';

/** Everything that the paper rests on: the same question gives the same bytes, unless it runs out of time. */
export interface CutPaperQuestion {
  readonly work:
    | { readonly is: 'one job'; readonly job: Job; readonly of: WorkLaid }
    /** Accepted work of several jobs; words and units of the first. */
    | { readonly is: 'several jobs'; readonly jobs: readonly [NamedJob, ...NamedJob[]] };
  /** ISO date. */
  readonly date: string;
  readonly given: DocumentGiven;
}

export type CutPaperTold =
  /** Of the laying; 1: all is laid, and the pages are being drawn. */
  | { readonly tell: 'progress'; readonly share: number }
  | { readonly tell: 'drawn'; readonly drawn: DrawnDocument }
  | { readonly tell: 'missing letter'; readonly letter: string; readonly field: string }
  | { readonly tell: 'broken'; readonly says: string };

/** Milliseconds of laying, over all cloths, after which the best layouts so far are drawn. */
export const LAYING_LIMIT = 60_000;
