/** The cut plans of a job as finished text and drawings, a section a cloth. Plain JSON, like the other papers. */
import type { Drawing } from '#app/drawing/shape.ts';
import type { WorkshopPaper } from './workshop-paper.ts';

/** One figure with its name, `ordered` and `12¾ yd`. */
export interface PlanFigure {
  readonly label: string;
  readonly value: string;
  readonly rests: string;
}

export interface ListedCut {
  /** Counts over the bolt. */
  readonly number: string;
  /** From the start of the bolt. */
  readonly from: string;
  readonly to: string;
  readonly length: string;
  readonly across: string;
  readonly label: string;
  /** What is particular: half width, sideways, half a repeat lower, fixed by hand. Empty: nothing. */
  readonly note: string;
}

export interface ListedBoltCuts {
  readonly title: string;
  readonly says: string;
  readonly cuts: readonly ListedCut[];
}

export interface CutPlanSection {
  /** Cloth id. */
  readonly cloth: string;
  readonly title: string;
  /** `face, 54 in wide, 27 in half-drop repeat`. */
  readonly words: string;
  readonly figures: readonly PlanFigure[];
  /** Line by line, so that a page can break between two. */
  readonly drawings: readonly Drawing[];
  /** Flaws, what is kept, what fixed cuts cost, what found no place. */
  readonly notes: readonly string[];
  readonly bolts: readonly ListedBoltCuts[];
}

export interface CutPlanPaper extends WorkshopPaper {
  /** Which work is laid, and what the plan does not promise. */
  readonly opening: string;
  /** What to do before the first cut. */
  readonly cautions: readonly string[];
  readonly sections: readonly CutPlanSection[];
  /** Cloth that could not be laid, and why. */
  readonly faults: readonly string[];
}
