/** What the workroom is handed, as finished text and drawings: a sheet a treatment. Plain JSON, like the proposal's paper. */
import type { Drawing } from '#app/drawing/shape.ts';
import type { WorkingStepText, WorkingTable } from './proposal-paper.ts';
import type { WorkshopPaper } from './workshop-paper.ts';

export interface WorkPage {
  readonly key: string;
  readonly room: string;
  readonly opening: string;
  /** `sheet 1 of 6`. */
  readonly count: string;
  /** `Flat Roman shade in Larch stripe, inside the frame, 34¼ in wide, 58 in long, cordless.` */
  readonly words: string;
  /** `best: Soft blackout`. */
  readonly option: string;
  /** Cloth of the stack by its place: `face`, `lining`, `interlining`. */
  readonly stack: readonly { readonly place: string; readonly cloth: string }[];
  /** The work drawing, row by row, so that a page can break between two. */
  readonly drawings: readonly Drawing[];
  readonly takeoff: WorkingTable;
  /** `Brackets, 3`: hardware and notions. Empty where nothing is priced yet. */
  readonly parts: readonly string[];
  /** The working as a checklist: what readings rest on is left out. */
  readonly steps: readonly WorkingStepText[];
  /** What to heed: stops and cautions, cords, weight, what is unlikely. */
  readonly notes: readonly string[];
}

export interface WorkPaper extends WorkshopPaper {
  readonly pages: readonly WorkPage[];
}
