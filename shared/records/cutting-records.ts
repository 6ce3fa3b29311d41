/** What the portfolio keeps for the cut plan: remnants on the shelf, and what is settled of the cloth of a project. */
import * as z from 'zod';
import { drafts, instant, longText, maybeTicks, recordId, runTicks, shortText } from './record-fields.ts';

const kept = { id: recordId, createdAt: instant, updatedAt: instant };
const clothCode = z.string().min(1).max(80);
/** Empty: nobody knows. */
const dyeLot = z.string().max(80);

/** A piece on the shelf. Of the decorator's own or generic cloth it is there for every project (project null). */
export const remnantRecord = z.object({
  ...kept,
  projectId: recordId.nullable(),
  /** Code of the cloth. */
  cloth: clothCode,
  name: shortText,
  length: maybeTicks,
  /** Null: the cloth's whole width. */
  width: maybeTicks,
  dyeLot,
  /** The place in the repeat at its very start; null: nobody knows. */
  startsAt: maybeTicks,
  notes: longText,
  drafts,
});
export type RemnantRecord = z.infer<typeof remnantRecord>;

const boltPart = z.object({
  name: z.string().min(1).max(80),
  /** Null: as long as one likes. */
  length: runTicks.nullable(),
  dyeLot,
  startsAt: maybeTicks,
});

/** Name of a bolt, or id of a remnant. */
const on = z.string().min(1).max(80);

const flawPart = z.object({ on, from: runTicks, to: runTicks });

const placedPart = z.object({
  treatmentId: recordId,
  /** Counts the treatment's cuts of this cloth from 1. */
  cut: z.int().min(1).max(9999),
  on,
  at: runTicks,
  /** Null: along its own side, else along the left selvage. */
  x: maybeTicks,
});

/** What is settled of one cloth of a project before its cuts are laid; one for a cloth. */
export const cuttingRecord = z.object({
  ...kept,
  projectId: recordId,
  /** Code of the cloth. */
  cloth: clothCode,
  /** Empty: as many as it takes, called `bolt 1`, `bolt 2`. */
  bolts: z.array(boltPart).max(200),
  flaws: z.array(flawPart).max(500),
  fixed: z.array(placedPart).max(2000),
});
export type CuttingRecord = z.infer<typeof cuttingRecord>;
