/** Starts the thread that lays and draws one cut plan. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { DrawnDocument } from '#app/documents/document-given.ts';
import { MissingLetter } from '#app/documents/missing-letter.ts';
import type { CutPaperQuestion, CutPaperTold } from './cut-paper-messages.ts';

export interface CutPaperStarted {
  /** The paper; null when it was ended first. Rejects with `MissingLetter`, or with a fault of ours. */
  readonly drawn: Promise<DrawnDocument | null>;
  readonly end: () => void;
}

/** `progress` is told the share of the laying that is done; at 1 the pages are being drawn. */
export type StartCutPaper = (question: CutPaperQuestion, progress: (share: number) => void) => CutPaperStarted;

/** `threadFile`: absolute path of the built thread, or null to run it from the sources. */
export function cutPaperStarter(threadFile: string | null): StartCutPaper {
  return (question, progress) => {
    const worker = new Worker(threadFile ?? findThreadSource(), { workerData: question });
    let end = (): void => undefined;
    const drawn = new Promise<DrawnDocument | null>((resolve, reject) => {
      end = () => {
        resolve(null);
        void worker.terminate();
      };
      worker.on('message', (told: CutPaperTold) => {
        switch (told.tell) {
          case 'progress':
            return progress(told.share);
          case 'drawn':
            return resolve(told.drawn);
          case 'missing letter':
            return reject(new MissingLetter(told.letter, told.field));
          case 'broken':
            return reject(new Error(`drawing the cut plan: ${told.says}`));
        }
      });
      worker.on('error', reject);
      worker.on('exit', (code) => reject(new Error(`the thread of the cut plan ended with ${code}`)));
    });
    return { drawn, end: () => end() };
  };
}

function findThreadSource(): string {
  return path.join(path.dirname(fileURLToPath(import.meta.url)), 'cut-paper-thread.ts');
}
