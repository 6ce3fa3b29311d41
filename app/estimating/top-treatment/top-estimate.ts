/** What the estimators of valances, cornices and swags return besides every estimator's answer. */
import type { Advice } from '#shared/result.ts';
import type { CutGroup } from '../cut-group.ts';
import type { Estimate } from '../estimate.ts';

export interface TopEstimate<Sheet> extends Estimate {
  readonly cuts: readonly CutGroup[];
  /** Measures that the workroom makes it by; each stands in the working too. */
  readonly sheet: Sheet;
  /** Proportion and making, said to the decorator and never mended silently. */
  readonly advice: readonly Advice[];
}
