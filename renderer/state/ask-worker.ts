/** One question to a planning worker of its own. Returns the function that ends it; after that nothing more is told. */
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';

export function askWorker(question: PlanQuestion, tell: (answer: PlanAnswer) => void): () => void {
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  let ended = false;
  worker.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
    if (!ended) tell(data);
  });
  worker.addEventListener('error', (event) => {
    if (!ended) tell({ tell: 'broken', says: event.message });
  });
  worker.postMessage(question);
  return () => {
    ended = true;
    worker.terminate();
  };
}
