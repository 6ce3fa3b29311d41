/**
 * The thread that lays and draws one cut plan, so that the desk answers meanwhile. It is started with its question, tells
 * how far it is and then the paper, and ends; whoever does not want it any more ends it.
 */
import { parentPort, workerData } from 'node:worker_threads';
import type { DrawnDocument } from '#app/documents/document-given.ts';
import { drawCutPages } from '#app/documents/draw-cut-pages.ts';
import { MissingLetter } from '#app/documents/missing-letter.ts';
import type { PlanWatch } from '#app/plan/plan-input.ts';
import { planJob } from '#app/pricing/plan-job.ts';
import { planTogether } from '#app/pricing/plan-together.ts';
import { assembleCutPlan } from '#app/proposal/assemble-cut-plan.ts';
import type { CutPlanPaper } from '#app/proposal/cut-plan-paper.ts';
import { LAYING_LIMIT } from './cut-paper-messages.ts';
import type { CutPaperQuestion, CutPaperTold } from './cut-paper-messages.ts';

/** Progress is told at steps of this share. */
const TOLD_STEP = 0.02;

function tell(told: CutPaperTold): void {
  parentPort?.postMessage(told);
}

function watchLaying(): PlanWatch {
  const end = performance.now() + LAYING_LIMIT;
  let told = 0;
  return {
    progress: (share) => {
      if (share < told + TOLD_STEP || share >= 1) return;
      told = share;
      tell({ tell: 'progress', share });
    },
    cancelled: () => performance.now() > end,
  };
}

function assemble({ work, date }: CutPaperQuestion): CutPlanPaper {
  const watch = watchLaying();
  switch (work.is) {
    case 'one job':
      return assembleCutPlan(work.job, planJob(work.job, work.of, { watch }), { date, of: work.of });
    case 'several jobs': {
      const names = work.jobs.map(({ name }) => name);
      return assembleCutPlan(work.jobs[0].job, planTogether(work.jobs, { watch }), { date, of: 'accepted', names });
    }
  }
}

async function draw(question: CutPaperQuestion): Promise<DrawnDocument> {
  const paper = assemble(question);
  tell({ tell: 'progress', share: 1 });
  return drawCutPages(paper, question.given);
}

draw(workerData as CutPaperQuestion).then(
  (drawn) => tell({ tell: 'drawn', drawn }),
  (error: unknown) => {
    if (error instanceof MissingLetter) tell({ tell: 'missing letter', letter: error.letter, field: error.field });
    else tell({ tell: 'broken', says: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  },
);
