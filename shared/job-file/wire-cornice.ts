/** A cornice and its practice as a job file writes them. The fields that every treatment has are the caller's. */
import * as z from 'zod';
import type { TreatmentBase } from '../treatments/treatment-base.ts';
import type { LengthUnit } from '../length.ts';
import { ticks } from '../length.ts';
import { CORNICE_LENGTHS } from '../treatments/cornice-practice.ts';
import type { CornicePractice } from '../treatments/cornice-practice.ts';
import type { CorniceTreatment } from '../treatments/cornice.ts';
import { readLength } from './read-length.ts';
import { wireLength, wireName } from './wire-fields.ts';
import { patternField } from './wire-pattern.ts';
import { readLengths, wireLengths } from './wire-settings.ts';
import { boardChoices, optionalLength, readBoardChoices, readTop, topFields } from './wire-top-treatment.ts';

export const wireCornicePractice = z.strictObject({ ...wireLengths(CORNICE_LENGTHS), ...boardChoices }).partial();
export type WireCornicePractice = z.infer<typeof wireCornicePractice>;

/** The fields of a cornice besides those of every treatment. */
export const corniceFields = {
  kind: z.literal('cornice'),
  ...topFields,
  finishedLength: wireLength.describe('Height of the box at its longest.'),
  shapedEdge: wireLength
    .nullish()
    .describe('Length of a shaped lower edge of the face along its template. Not given: straight.'),
  topWelt: wireName.nullish().describe('Cloth id of a welt along the top edge.'),
  ...patternField,
};
export type WireCorniceFields = z.infer<z.ZodObject<typeof corniceFields>>;

/** The whole treatment: `base` has name, face, quantity, practice and stacks. */
export function wireCornice<Base extends z.ZodRawShape>(base: Base) {
  return z.strictObject({ ...base, ...corniceFields });
}

/** A section of the practice, laid over the one under it. */
export function readCornicePractice(
  given: WireCornicePractice | undefined,
  under: CornicePractice,
  unit: LengthUnit,
): CornicePractice {
  if (!given) return under;
  return { ...readLengths(CORNICE_LENGTHS, given, under, unit), ...readBoardChoices(given, under) };
}

/**
 * The treatment parsed. `practice` is its resolved section. A box outside the frame has ends: where neither return nor
 * `over` is given they are as deep as the practice's board.
 */
export function readCornice(
  wire: WireCorniceFields,
  base: TreatmentBase,
  practice: CornicePractice,
  unit: LengthUnit,
): CorniceTreatment {
  const top = readTop(wire, practice.overClearance, unit);
  const bare = wire.return === undefined && top.over === null;
  const end = top.mount.where === 'inside' ? ticks(0) : practice.boardDepth;
  return {
    ...base,
    ...top,
    returns: bare ? { left: end, right: end } : top.returns,
    kind: 'cornice',
    practice: { ...base.practice, cornice: practice },
    finishedLength: readLength(wire.finishedLength, unit),
    shapedEdge: optionalLength(wire.shapedEdge, unit),
    welts: { top: wire.topWelt ?? null, bottom: wire.welt ?? null },
  };
}
