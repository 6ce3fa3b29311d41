/** The joint plans of a project as its screen holds them: laid in a worker, with progress, stopped by whoever looks. */
import type { ClothPlan } from '#app/plan/plan-cloth.ts';
import type { Fault } from '#shared/fault.ts';
import { askWorker } from './ask-worker.ts';
import type { PlanQuestion } from './plan-messages.ts';

export class PlanBench {
  plans: readonly ClothPlan[] | null = $state.raw(null);
  /** Of cloth that could not be laid, with the paths of the job file. */
  faults: readonly Fault[] = $state.raw([]);
  /** Share of the work that is done; null at rest. */
  laying: number | null = $state(null);
  /** The search was ended before it was through: what is shown is the best so far. */
  stopped = $state(false);
  /** An engine failed: ours to mend. */
  broken: string | null = $state(null);
  #end: () => void = () => undefined;

  /** Lays anew; what was asked before is forgotten, and shown until the first answer. */
  lay(question: PlanQuestion): void {
    this.#end();
    this.laying = 0;
    this.stopped = false;
    this.broken = null;
    this.#end = askWorker(question, (answer) => {
      switch (answer.tell) {
        case 'progress':
          this.laying = answer.share;
          return;
        case 'plans':
          this.plans = answer.plans;
          this.faults = answer.faults;
          if (!answer.rough) this.#rest();
          return;
        case 'broken':
          this.broken = answer.says;
          this.#rest();
          return;
        case 'added':
      }
    });
  }

  /** Keeps the best plan so far. */
  stop(): void {
    this.stopped = this.laying !== null;
    this.#rest();
  }

  close(): void {
    this.#rest();
  }

  #rest(): void {
    this.#end();
    this.#end = () => undefined;
    this.laying = null;
  }
}
